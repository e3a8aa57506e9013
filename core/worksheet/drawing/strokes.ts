/** How lines and words are drawn on white paper: pencil solid for what is, dashed for what the plan makes, dotted for what goes; all of it works in grey. */

import type { Line, Spot } from './line-work.ts'
import { hundredths, type Shape } from './shapes.ts'
import type { LineRole } from './template.ts'

/** 6 3 and 1.5 4 of the pages, in steps of 0.4 mm. */
const DASHES: Partial<Record<LineRole, readonly number[]>> = { makes: [2.4, 1.2], goes: [0.6, 1.6], cut: [8, 1.2], fold: [4, 1, 0.8, 1] }
const WIDTHS: Record<LineRole, number> = { edge: 0.45, makes: 0.6, goes: 0.45, cut: 0.25, fold: 0.3, grain: 0.25, mark: 0.2 }
export const INK = '#000'
export const FAINT_INK = '#555'
const FACE = 'Helvetica, Arial, sans-serif'

/** A line in its role. `from`: how far along it begins, so that dashes go on. */
export function stroke(role: LineRole, line: Line, from = 0): Shape {
  const dashes = DASHES[role]
  const whole = dashes?.reduce((sum, mm) => sum + mm, 0) ?? 1
  return {
    tag: 'path',
    attributes: {
      'd': line.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${hundredths(x)} ${hundredths(y)}`).join(''),
      'fill': 'none',
      'stroke': INK,
      'stroke-width': WIDTHS[role],
      'stroke-linejoin': 'round',
      'stroke-linecap': role === 'goes' ? 'round' : 'butt',
      ...(dashes === undefined ? {} : { 'stroke-dasharray': dashes.join(' '), 'stroke-dashoffset': from % whole })
    }
  }
}

export interface Words {
  at: Spot
  text: string
  size: number
  anchor?: 'start' | 'middle' | 'end'
  bold?: boolean
  faint?: boolean
  upright?: boolean
}

/** Words, with a white edge so that a line under them does not strike them out. */
export function words({ at, text, size, anchor = 'start', bold = false, faint = false, upright = false }: Words): Shape {
  return {
    tag: 'text',
    attributes: {
      'x': at.x,
      'y': at.y,
      ...(upright ? { transform: `rotate(-90 ${hundredths(at.x)} ${hundredths(at.y)})` } : {}),
      'font-family': FACE,
      'font-size': size,
      ...(bold ? { 'font-weight': 'bold' } : {}),
      ...(anchor === 'start' ? {} : { 'text-anchor': anchor }),
      'fill': faint ? FAINT_INK : INK,
      'stroke': '#fff',
      'stroke-width': 0.8,
      'stroke-linejoin': 'round',
      'paint-order': 'stroke'
    },
    text
  }
}

/** The same in the ink of the page it stands on, light or dark; words without their white edge. */
export function inInk(shape: Shape): Shape {
  const attributes = Object.fromEntries(
    Object.entries(shape.attributes)
      .filter(([name]) => shape.tag !== 'text' || (!name.startsWith('stroke') && name !== 'paint-order'))
      .map(([name, value]) => [name, value === INK || value === FAINT_INK ? 'currentColor' : value])
  )
  return { ...shape, attributes, ...(shape.children === undefined ? {} : { children: shape.children.map(inInk) }) }
}

/** The left of the first sheet: two squares to measure before anything is laid, and what each kind of line says. */
import { INCH_MM } from '../../length.ts'
import { FIRST_COLUMN_MM, NOTE_MM, TITLE_MM } from './layout.ts'
import type { Box, Line, Spot } from './line-work.ts'
import type { Shape } from './shapes.ts'
import { INK, stroke, words } from './strokes.ts'
import type { Asked, LineRole, Untemplated } from './template.ts'
import { wrapped } from './text-size.ts'

export const CHECK_MM = 50
export const CHECK_INCHES = 2
const KEY: Exclude<LineRole, 'mark'>[] = ['edge', 'makes', 'goes', 'cut', 'fold', 'grain']
const LINE_TALL = 4
const KEY_MM = 14

/** A square of this size, ticked at every step, with its words inside. */
function square(at: Spot, size: number, steps: number, text: string): Shape[] {
  const ticks = Array.from({ length: steps - 1 }, (_, i) => {
    const along = (size * (i + 1)) / steps
    const long = (i + 1) % 2 === 0 ? 3 : 1.8
    return `M${at.x + along} ${at.y}v${long}M${at.x} ${at.y + along}h${long}`
  })
  return [
    { tag: 'rect', attributes: { x: at.x, y: at.y, width: size, height: size, fill: 'none', stroke: INK, 'stroke-width': 0.3 } },
    { tag: 'path', attributes: { d: ticks.join(''), fill: 'none', stroke: INK, 'stroke-width': 0.2 } },
    words({ at: { x: at.x + size / 2, y: at.y + size / 2 + 1 }, text, size: NOTE_MM + 0.3, anchor: 'middle' })
  ]
}

const level = (x: number, y: number): Line => [
  { x, y },
  { x: x + KEY_MM, y }
]
const arrow = (x: number, y: number): Line => [
  { x: x + 1.5, y: y - 0.8 },
  { x, y },
  { x: x + 1.5, y: y + 0.8 },
  { x, y },
  { x: x + KEY_MM, y },
  { x: x + KEY_MM - 1.5, y: y - 0.8 },
  { x: x + KEY_MM, y },
  { x: x + KEY_MM - 1.5, y: y + 0.8 }
]

/** Everything in the column, from its top; what has no template is told below, as far as the sheet goes. */
export function checkColumn(room: Box, { t, units }: Pick<Asked, 't' | 'units'>, without: readonly Untemplated[]): Shape[] {
  const left = room.left
  const shapes: Shape[] = [...square({ x: left, y: room.top }, CHECK_MM, 10, t('template.page.check'))]
  let y = room.top + CHECK_MM + 4
  shapes.push(...square({ x: left, y }, CHECK_INCHES * INCH_MM, 8, t('template.page.check-in')))
  y += CHECK_INCHES * INCH_MM + 7
  const write = (text: string, bold = false) => {
    for (const line of wrapped(text, NOTE_MM, FIRST_COLUMN_MM)) {
      shapes.push(words({ at: { x: left, y }, text: line, size: NOTE_MM, bold }))
      y += LINE_TALL
    }
    y += 1.5
  }
  write(t('template.page.check-first'), true)
  write(t(`template.page.units.${units}`))
  y += 2
  shapes.push(words({ at: { x: left, y }, text: t('template.page.key'), size: TITLE_MM }))
  y += 5
  for (const role of KEY) {
    shapes.push(stroke(role, role === 'grain' ? arrow(left, y - 1) : level(left, y - 1)))
    shapes.push(words({ at: { x: left + 17, y }, text: t(`template.key.${role}`), size: NOTE_MM }))
    y += LINE_TALL + 0.6
  }
  y += 3
  write(t('template.page.join'))
  for (const { because } of without) {
    const lines = wrapped(because.text, NOTE_MM, FIRST_COLUMN_MM).length
    if (y + lines * LINE_TALL <= room.bottom) write(because.text)
  }
  return shapes
}

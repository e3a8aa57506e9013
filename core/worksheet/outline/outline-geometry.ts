/** The outline of a garment with the lines of a plan, to scale, in mm. Pure. */
import type { GarmentKind } from '../../ids/kinds.ts'
import type { Job } from '../../plan/plan.ts'
import type { Line, Spot } from './curve.ts'
import { legsOutline } from './legs-outline.ts'
import type { OutlineDrawing, OutlineInput, View } from './outline-drawing.ts'
import { skirtOutline } from './skirt-outline.ts'
import type { UpperCut } from './upper-frame.ts'
import { upperOutline } from './upper-outline.ts'

type Draw = (input: OutlineInput, view: View) => OutlineDrawing
const upper =
  (cut: UpperCut): Draw =>
  (input, view) =>
    upperOutline(input, cut, view)

/** Kinds with no outline of their own yet are told in the table alone. */
const OUTLINES: Partial<Record<GarmentKind, Draw>> = {
  trousers: legsOutline,
  jeans: legsOutline,
  shorts: legsOutline,
  skirt: skirtOutline,
  dress: upper('dress'),
  shirt: upper('shirt'),
  'knit-top': upper('shirt'),
  jumper: upper('shirt'),
  jacket: upper('jacket'),
  coat: upper('jacket'),
  waistcoat: upper('sleeveless')
}

/** Lines that one side of the garment alone shows. */
function sideOf(job: Job, seam: Job['lines'][number]['seam']): View | null {
  if (seam === 'centre-back' || seam === 'seat') return 'back'
  if (seam === 'front-edge') return 'front'
  return seam === 'dart' ? (job.id === 'bust-darts' ? 'front' : 'back') : null
}

/** The views that show everything that moves: the front, the back, or both. */
export function viewsOf(jobs: readonly Job[]): View[] {
  const needed = new Set(jobs.flatMap((job) => job.lines.map(({ seam }) => sideOf(job, seam))))
  const views: View[] = []
  if (needed.has('front') || !needed.has('back')) views.push('front')
  if (needed.has('back')) views.push('back')
  return views
}

/** The drawing of a garment from one side; null for a kind that has none of its own. */
export function outlineOf(kind: GarmentKind, input: OutlineInput, view: View): OutlineDrawing | null {
  return OUTLINES[kind]?.(input, view) ?? null
}

export interface Box {
  left: number
  top: number
  right: number
  bottom: number
}

/** The smallest box around everything that is drawn. */
export function boxOf(drawing: OutlineDrawing): Box {
  const spots: Spot[] = [
    ...drawing.layers.flatMap(({ cloth, edges }) => [cloth, ...edges]),
    ...drawing.moved.map(({ comes }) => comes)
  ].flat()
  const xs = spots.map(({ x }) => x)
  const ys = spots.map(({ y }) => y)
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) }
}

/** A line as an SVG path at a scale. */
export const pathOf = (line: Line, scale: number, origin: Spot): string =>
  line.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${round((x - origin.x) * scale)} ${round((y - origin.y) * scale)}`).join('')
const round = (value: number): number => Math.round(value * 10) / 10

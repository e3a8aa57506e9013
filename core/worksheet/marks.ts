/** Figures of a job: how far to pinch, where the new line runs, what is folded and cut. All lengths mm. */
import { perOffsetOf } from '../alterations/row.ts'
import type { PointId } from '../ids/points.ts'
import type { JobOn, Mark } from './step.ts'
import { taperOffsets, taperShare } from './taper.ts'

/** A stitching line at one of its levels. */
export interface Level {
  /** Down the seam, mm. */
  atMm: number
  /** From the old line, mm; never negative: the sentence says in or out. */
  offsetMm: number
}

/** No figure finer than a thousandth, as the plan's own. */
const rounded = (mm: number): number => Math.round(mm * 1000) / 1000
export const mark = (is: string, mm: number, values?: Mark['values']): Mark =>
  values === undefined ? { is, mm: rounded(mm) } : { is, mm: rounded(mm), values }

export const amountOf = ({ job }: JobOn): number => job.amountMm
/** How far the job changes this point, mm, without its sign. */
export const changeAt = ({ job }: JobOn, point: PointId): number => Math.abs(job.amounts[point] ?? 0)
/** How far the stitching line moves at its deepest, mm, at either side of a seam. */
export const edgeOf = ({ job }: JobOn): number => Math.max(0, ...job.lines.map(({ offsetMm }) => Math.abs(offsetMm)))
/** How many mm around a mm of each line gives, for the amount meant for this point. */
function perOffset({ lines, job }: JobOn, point: PointId): number {
  const move = lines.find((line) => line.point === point)?.seams[0]
  return move === undefined ? 1 : perOffsetOf(move, job.amountMm)
}
type Side = 'left' | 'right'
/** The offset of the stitching line where this point is measured; of one side, where the two differ there. */
export function offsetAt(on: JobOn, point: PointId, side?: Side): number {
  const own = on.job.lines.find((one) => one.side === side)
  if (side !== undefined && own !== undefined && changeAt(on, point) === on.job.amountMm) return Math.abs(own.offsetMm)
  return changeAt(on, point) / perOffset(on, point)
}
/** What is taken around at each of these points, and how far the line lies from the old one there; then each side's, where they differ. */
export const atPoints = (on: JobOn, points: readonly PointId[]): Mark[] => [
  ...points
    .filter((point) => changeAt(on, point) > 0)
    .flatMap((point) => [mark('around', changeAt(on, point), { point }), mark('edge-at', offsetAt(on, point), { point })]),
  ...(on.job.lines.some(({ side }) => side !== undefined) ? edges(on) : [])
]
/** A line through levels, one a side where left and right differ. `levels` are told the offset at a point. */
export function lineThrough(on: JobOn, levels: (offset: (point: PointId) => number) => Level[]): Mark[] {
  const sides = new Set(on.job.lines.map(({ side }) => side))
  return [...sides].flatMap((side) =>
    line(levels((point) => offsetAt(on, point, side))).map((one) =>
      side === undefined ? one : { ...one, values: { ...one.values, side } }
    )
  )
}

export const amount = (on: JobOn): Mark[] => [mark('amount', amountOf(on))]
/** The whole amount, and how deep each stitching line moves: both sides apart where they differ. */
export const amountAndEdge = (on: JobOn): Mark[] => [...amount(on), ...edges(on)]
/** How deep each stitching line moves; left and right apart where they differ. */
export const edges = ({ job }: JobOn): Mark[] =>
  job.lines.map(({ seam, side, offsetMm }) => mark('edge', Math.abs(offsetMm), side === undefined ? { seam } : { seam, side }))

/** Figures of each side by its own amount, where left and right differ; else of the whole. */
export function bySide(on: JobOn, figures: (amountMm: number) => Mark[]): Mark[] {
  const sided = on.job.lines.filter(({ side }) => side !== undefined)
  if (sided.length === 0) return figures(on.job.amountMm)
  const perOffset = on.lines[0]?.seams[0]?.mmPerOffset ?? 1
  return sided.flatMap(({ side, offsetMm }) =>
    figures(Math.abs(offsetMm) * perOffset).map((one) => ({ ...one, values: { ...one.values, side: side ?? '' } }))
  )
}

/** Marks down a taper of this length, one set a side where left and right differ. */
export function taper(on: JobOn, lengthMm: number): Mark[] {
  const sides = new Map(on.job.lines.map(({ side, offsetMm }) => [side, Math.abs(offsetMm)]))
  return [...sides].flatMap(([side, deepest]) =>
    taperOffsets(deepest, lengthMm).map(({ atMm, offsetMm }) =>
      mark('down', offsetMm, side === undefined ? { at: atMm } : { at: atMm, side })
    )
  )
}

/** A curve is marked this often, a straight stretch between two levels no oftener than this: it is drawn with a ruler (common practice). */
const CURVE_STEP_MM = 50
const STRAIGHT_STEP_MM = 150
/** No mark stands so near to one of a level: it would say the same twice. */
const NEAR_MM = 10
/**
 * A line through levels, marked at each of them and between: straight from one to the next, and where it runs out to nothing, by the taper. What lies
 * beyond, where nothing moves, has no marks.
 */
export function line(levels: readonly Level[]): Mark[] {
  const moves = levels.map(({ offsetMm }) => offsetMm !== 0)
  const shown = levels.slice(Math.max(0, moves.indexOf(true) - 1), moves.lastIndexOf(true) + 2)
  if (!moves.includes(true)) return []
  const found = new Map<number, number>(shown.map(({ atMm, offsetMm }) => [rounded(atMm), offsetMm]))
  for (const [n, to] of shown.entries()) {
    const from = shown[n - 1]
    if (from === undefined || to.atMm <= from.atMm) continue
    const stepMm = from.offsetMm === 0 || to.offsetMm === 0 ? CURVE_STEP_MM : STRAIGHT_STEP_MM
    for (let atMm = (Math.floor(from.atMm / stepMm) + 1) * stepMm; atMm < to.atMm; atMm += stepMm)
      if (levels.every((level) => Math.abs(level.atMm - atMm) >= NEAR_MM))
        found.set(atMm, between(from, to, (atMm - from.atMm) / (to.atMm - from.atMm)))
  }
  return [...found].sort(([a], [b]) => a - b).map(([at, offsetMm]) => mark('down', offsetMm, { at }))
}
function between(from: Level, to: Level, share: number): number {
  if (to.offsetMm === 0) return from.offsetMm * taperShare(share)
  if (from.offsetMm === 0) return to.offsetMm * taperShare(1 - share)
  return from.offsetMm + share * (to.offsetMm - from.offsetMm)
}

/** A dart: how many, how wide each at its mouth, how far each leg lies from its middle, how long, and how long each leg is sewn. */
export interface Darts {
  count: number
  widthMm: number
  lengthMm: number
}
/** A dart steeper than one in this bowls: a wide one is sewn longer (CP). */
const LEAST_LENGTH_OF_HALF = 5
/** How an amount is shared by darts: four of them past `fourPastMm`; never steeper than one in five. */
export function dartsFor(amountMm: number, how: { fourPastMm: number; lengthMm: number }): Darts {
  const count = amountMm > how.fourPastMm ? 4 : 2
  const widthMm = amountMm / count
  return { count, widthMm, lengthMm: Math.max(how.lengthMm, (LEAST_LENGTH_OF_HALF * widthMm) / 2) }
}
export const dartLeg = (lengthMm: number, widthMm: number): number => Math.hypot(lengthMm, widthMm / 2)
export const darts = ({ count, widthMm, lengthMm }: Darts): Mark[] => [
  mark('dart-width', widthMm, { count }),
  mark('dart-half', widthMm / 2),
  mark('dart-length', lengthMm),
  mark('dart-leg', dartLeg(lengthMm, widthMm))
]

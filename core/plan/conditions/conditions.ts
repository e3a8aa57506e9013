/**
 * What the untold must be: for each key point that nobody told, and each body measure that was only worked out, the interval about its expected
 * figure in which some plan within the means, without a rescue, leaves at most one mark wrong. All else stands at its told or expected figure.
 * Its ends come from two exact solves (farthest.ts), each then settled by the planner itself with the figure told.
 */
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import type { Means } from '../means.ts'
import { HARDEST } from '../means.ts'
import { type Beside, leavesNothingWrong } from '../plan-alterations.ts'
import { ROUNDING } from '../rounding.ts'
import { partsOf } from '../solve/parts.ts'
import { pointsOf } from '../solve/problem.ts'
import { singlePointReach } from '../solve/single-point-reach.ts'
import { acceptedBy, withinLevel } from '../solve/within-means.ts'
import { ANY_MM, farthestEachWay } from './farthest.ts'

/** Ends in mm, around or along; null: open. */
export interface Interval {
  least: number | null
  most: number | null
}

/** The same request with one more figure told. */
export type Telling = (mm: number) => Beside

export interface Varied {
  /** The point whose gap the figure moves: the untold point itself, or the one that the body measure is set against. */
  point: PointId
  /** What it is thought to be, mm, give or take (sd). */
  expectedMm: number
  sdMm: number
  /** + the garment's own figure, − the body's: what is larger there leaves the garment smaller. */
  way: 1 | -1
  tell: Telling
}

/** So many marks are tried by themselves on either side of an end before it is sought by halves. */
const NEAR_MARKS = 3

/** So many sd from what is thought nothing is looked for. */
const OUT_OF_SIGHT_SD = 4

/** undefined: whatever it is, something stays wrong. */
export function intervalOf({ point, expectedMm, sdMm, way, tell: tellAnew }: Varied, means: Means, markMm: number): Interval | undefined {
  const onMarks = (mm: number): number => Math.round(mm / markMm) * markMm
  const tell = remembered(tellAnew)
  const fitsAt = remembered((mm: number): boolean => leavesNothingWrong(tell(mm), means))
  const start = onMarks(expectedMm)
  const spans = spansAt(tell(start), point, means, markMm)
  if (spans === undefined) return undefined
  const [below, above] = way === 1 ? [spans.below, spans.above] : [spans.above, spans.below]
  // where the expected figure itself does not do, the interval begins at the nearest that does
  const inside = fitsAt(start) ? start : nearest(fitsAt, start, { below, above }, markMm)
  if (inside === undefined) return undefined
  const end = (side: 1 | -1, span: number): number | null => {
    const farthest = onMarks(start + side * ANY_MM)
    if (span >= ANY_MM - ROUNDING && fitsAt(farthest)) return null
    const solved = onMarks(start + side * Math.min(span, ANY_MM))
    return lastThatFits(fitsAt, inside, solved, side, markMm)
  }
  // where no garment reaches is no end
  const orOpen = (mm: number | null): number | null => (mm !== null && Math.abs(mm - expectedMm) > OUT_OF_SIGHT_SD * sdMm ? null : mm)
  const interval = { least: orOpen(end(-1, below)), most: orOpen(end(1, above)) }
  return movesOthers(point, tell(start).garment.kind) ? withoutHoles(fitsAt, inside, interval, markMm) : interval
}

/** A wider shoulder shortens the sleeve that is wanted, a skirt cut off at its waist is wider there: between two figures that fit one may not. */
const movesOthers = (point: PointId, kind: GarmentKind): boolean => point === 'shoulderWidth' || (point === 'waist' && kind === 'skirt')
const HOLE_MARKS = 4
function withoutHoles(fitsAt: (mm: number) => boolean, inside: number, { least, most }: Interval, markMm: number): Interval {
  const upTo = (side: 1 | -1, end: number | null): number | null => {
    if (end === null) return null
    let last = inside
    for (let mm = inside; side * (end - mm) >= 0; mm += side * HOLE_MARKS * markMm) {
      if (!fitsAt(mm)) return lastThatFits(fitsAt, last, mm - side * markMm, side, markMm)
      last = mm
    }
    return end
  }
  return { least: upTo(-1, least), most: upTo(1, most) }
}

function remembered<T>(ask: (mm: number) => T): (mm: number) => T {
  const known = new Map<number, T>()
  return (mm) => {
    const answer = known.get(mm) ?? ask(mm)
    known.set(mm, answer)
    return answer
  }
}

/** The farthest by one's own hands or, at hand, a tailor's, whichever goes farther. */
function spansAt({ gaps, offer }: Beside, point: PointId, means: Means, markMm: number) {
  const allowed = acceptedBy(means, withinLevel(offer().options, means.tailor ? HARDEST : means.level))
  const points = pointsOf(gaps)
  const part = partsOf(
    points.map((one) => one.point),
    allowed
  ).find((one) => one.points.includes(point))
  if (part === undefined) return undefined
  const mine = allowed.filter(({ key }) => part.keys.has(key))
  const [only, ...more] = points.filter((one) => part.points.includes(one.point))
  const reach = only === undefined || more.length > 0 ? undefined : singlePointReach(point, mine)
  // a point by itself needs no solve
  if (only !== undefined && reach !== undefined)
    return {
      above: Math.min(ANY_MM, only.most + markMm + reach.down - only.mm),
      below: Math.min(ANY_MM, only.mm + reach.up + markMm - only.least)
    }
  return farthestEachWay(only === undefined ? [] : [only, ...more], mine, point, markMm)
}

/** The first mark beyond an edge that was solved for, on the nearer side. */
function nearest(
  fitsAt: (mm: number) => boolean,
  start: number,
  { below, above }: { below: number; above: number },
  markMm: number
): number | undefined {
  const candidates = [
    ...(below < 0 ? [start - Math.floor(below / markMm) * markMm] : []),
    ...(above < 0 ? [start + Math.floor(above / markMm) * markMm] : [])
  ].sort((one, other) => Math.abs(one - start) - Math.abs(other - start))
  for (const candidate of candidates) {
    const side = candidate > start ? 1 : -1
    for (let step = 0; step <= NEAR_MARKS; step++) if (fitsAt(candidate + side * step * markMm)) return candidate + side * step * markMm
  }
  return undefined
}

/**
 * The last mark that fits on one side: sought outwards from where it was solved for, in steps that double, as the seams' limits may grow with the
 * figure; or inwards from there; and then by halves.
 */
function lastThatFits(fitsAt: (mm: number) => boolean, inside: number, solved: number, side: 1 | -1, markMm: number): number {
  let good = inside
  let bad: number | undefined
  let at = side * (solved - inside) > 0 ? solved : inside
  if (fitsAt(at)) {
    good = at
    for (let step = markMm; bad === undefined && Math.abs(at - inside) < 2 * ANY_MM; step *= 2) {
      at = good + side * step
      if (fitsAt(at)) good = at
      else bad = at
    }
  } else {
    bad = at
    for (let step = markMm; side * (bad - step * side - inside) > 0; step *= 2) {
      at = bad - side * step
      if (fitsAt(at)) {
        good = at
        break
      }
      bad = at
    }
  }
  while (bad !== undefined) {
    const marks: number = Math.floor(Math.abs(bad - good) / 2 / markMm)
    if (marks === 0) break
    const middle: number = good + side * marks * markMm
    if (fitsAt(middle)) good = middle
    else bad = middle
  }
  return good
}

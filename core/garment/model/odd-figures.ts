/**
 * Told figures that do not go with the others of their garment: too far from what the others make one think, or with a half or a double that goes
 * with them far better, as of a girth measured flat and taken for one around. The oddest is named first and heard no more, so that one slip does
 * not throw doubt on the rest.
 */
import type { GarmentKind } from '../../ids/kinds.ts'
import { isGirth, type PointId } from '../../ids/points.ts'
import { type Belief, beliefOf, type GarmentBelief, type Observed } from './garment-belief.ts'
import { MODEL_ROWS } from './rows.ts'

export interface OddFigure {
  point: PointId
  mm: number
  /** The told point that tells most of it, and what all others together make one think. */
  beside: PointId
  likely: Belief
  how: 'flat-and-around' | 'larger' | 'smaller'
  /** So many steps from one size to the next would lie between; at least one. */
  sizes: number
}

/** Farther off, in sd, is one figure in two thousand of a bell. */
const FAR_SD = 3.5
/** One girth in a hundred is taken flat for around (from memory): its half or double must be that much likelier before it is worth a question. */
const FAR_NEARER = Math.log(100)
/** From size to size at chest, waist and hip: 2 in (US Commercial Standard CS135-46, shirts; casualindustrees.com's trousers). */
const STEP_MM = 50
const STEP_POINTS: ReadonlySet<PointId> = new Set<PointId>(['chest', 'waist', 'hip'])

/** A half or double that itself lies farther off than this, in sd, is no better. */
const NEAR_SD = 2.5

/** How long something is, how far a leg flares and a shoulder drops is style: such a figure speaks neither for nor against another. */
const STYLE: ReadonlySet<PointId> = new Set<PointId>([
  'inseam',
  'outseam',
  'sleeveLength',
  'sleeveFromCentreBack',
  'bodyLength',
  'skirtLength',
  'shoulderWidth',
  'legOpening',
  'calf'
])
/** So is the bottom edge of a coat, which may swing. Others are drawn in by a rib or hang wide: of those only a half or a double is odd. */
const isStyle = (point: PointId, kind: GarmentKind): boolean => STYLE.has(point) || (point === 'hem' && kind === 'coat')
const LOOSE: PointId = 'hem'

/** How much a point grows from one size to the next, mm: as its line follows the points before it. */
export function sizeStep(point: PointId, kind: GarmentKind): number {
  if (STEP_POINTS.has(point)) return STEP_MM
  const row = MODEL_ROWS[kind]?.find((one) => one.point === point)
  if (row === undefined) return 0
  return (Object.entries(row.from) as [PointId, number][]).reduce((sum, [other, slope]) => sum + slope * sizeStep(other, kind), 0)
}

interface Judged {
  one: Observed
  belief: GarmentBelief
  likely: Belief
  flatAndAround: boolean
  /** How much likelier the figure would be as it may have been meant (natural logarithm). */
  gain: number
}

/** What is odd of one figure beside the others of a belief: as a half or double, or else as far off. */
function judged(one: Observed, belief: GarmentBelief, as: 'flat-and-around' | 'elsewhere'): Judged | undefined {
  const likely = belief.without(one.point)
  if (likely === undefined || belief.told.size < 2) return undefined
  const lack = (mm: number): number => ((mm - likely.mm) / Math.hypot(likely.sdMm, one.sdMm)) ** 2 / 2
  const told = lack(one.mm)
  if (as === 'elsewhere') return told > FAR_SD ** 2 / 2 ? { one, belief, likely, flatAndAround: false, gain: told } : undefined
  const other = isGirth(one.point) ? Math.min(lack(one.mm / 2), lack(one.mm * 2)) : Number.POSITIVE_INFINITY
  const isNear = other < NEAR_SD ** 2 / 2 && told - other > FAR_NEARER
  return isNear ? { one, belief, likely, flatAndAround: true, gain: told - other } : undefined
}

/** The oddest of what is told; where a half or a double explains it, that is its reason. */
function oddest(told: readonly Observed[], all: GarmentBelief, points: ReadonlySet<PointId>): Judged | undefined {
  const asTold = (some: readonly Observed[]) => (some.length === all.told.size ? all : beliefOf(all.described, some))
  const strict = told.filter(({ point }) => point !== LOOSE)
  const [wide, narrow] = [asTold(told), asTold(strict)]
  const found = [
    ...told.map((one) => wide && judged(one, wide, 'flat-and-around')),
    ...strict.map((one) => narrow && judged(one, narrow, 'elsewhere'))
  ].filter((one) => one !== undefined && points.has(one.one.point))
  const [first] = found.sort((a, b) => Number(b?.flatAndAround) - Number(a?.flatAndAround) || (b?.gain ?? 0) - (a?.gain ?? 0))
  return first
}

/** Of the others the one that alone would tell most of the point. */
function besideOf(point: PointId, belief: GarmentBelief): PointId | undefined {
  const others = [...belief.told.values()].filter((other) => other.point !== point)
  const sds = others.map((other) => beliefOf(belief.described, [other])?.of(point)?.sdMm ?? Number.POSITIVE_INFINITY)
  return others[sds.indexOf(Math.min(...sds))]?.point
}

/** The odd among the figures of these points, the oddest first; none where nothing else is told. */
export function oddFigures(all: GarmentBelief, points: ReadonlySet<PointId>): OddFigure[] {
  const { kind } = all.described
  const rows = new Set((MODEL_ROWS[kind] ?? []).map(({ point }) => point))
  let told = [...all.told.values()].filter(({ point }) => rows.has(point) && !isStyle(point, kind))
  const odd: OddFigure[] = []
  while (told.length > 1) {
    const found = oddest(told, all, points)
    if (found === undefined) break
    const { one, belief, likely, flatAndAround } = found
    const { point, mm } = one
    const off = mm - likely.mm
    const beside = besideOf(point, belief)
    const how = flatAndAround ? 'flat-and-around' : off > 0 ? 'larger' : 'smaller'
    const sizes = Math.max(1, Math.round(Math.abs(off) / sizeStep(point, kind)))
    if (beside !== undefined) odd.push({ point, mm, beside, likely, how, sizes })
    told = told.filter((other) => other !== one)
  }
  return odd
}

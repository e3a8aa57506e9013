/** GarmentInput → Garment: every point once, what is missing worked out and marked, construction and cloth made whole. */

import type { GarmentKind } from '../ids/kinds.ts'
import { isGirth, POINTS, POINTS_OF, type PointId } from '../ids/points.ts'
import { isDepth, isLength } from '../length.ts'
import { type ClothTaken, clothTaken, type WornChange, wornChange } from './cloth.ts'
import { madeAs } from './construction.ts'
import { type CutRead, cutAs, knownCut } from './cut.ts'
import type { GarmentInput, GarmentMeasure, Made, Source, Use } from './garment-input.ts'
import { beliefOf, type GarmentBelief, type Observed } from './model/garment-belief.ts'
import { shareOfWomens } from './model/whose.ts'

export interface PointTaken {
  mm: number
  sdMm: number
  from: Source | 'inferred'
  /** So often was it measured by whoever measured it; not told: once. */
  readings?: number
  /** Told apart for left and right, where they differ; mm is then their mean. */
  sides?: { left: number; right: number }
}

export interface Garment {
  kind: GarmentKind
  /** Today, by tape. In the order of POINTS, so that the order of a request changes nothing. */
  points: ReadonlyMap<PointId, PointTaken>
  made: Made
  /** What was said of the make, as said. */
  told: Partial<Made>
  assumed: (keyof Made)[]
  cloth: ClothTaken
  /** As told, else as such a kind is usually cut; what shows on a body is seen later. */
  cut: CutRead
  worn(point: PointId): WornChange
  use: Use
  /** What is thought of every point, told or not; undefined where nothing is. */
  belief: GarmentBelief | undefined
}

/** How far a figure may be off, mm (sd), by who measured: from memory; around for girths (a flat tape's error is doubled). */
export const SD_MM: Record<Source, { girth: number; length: number }> = {
  seller: { girth: 12, length: 8 },
  own: { girth: 5, length: 4 },
  label: { girth: 25, length: 20 }
}

const TRUST: Record<Source, number> = { own: 0, seller: 1, label: 2 }

/** Is a point told, so that it may be judged? A size label is evidence, never certainty. */
export const isTold = (taken: PointTaken | undefined): taken is PointTaken =>
  taken !== undefined && (taken.from === 'own' || taken.from === 'seller')

/** `wearers`: whose sizes the person wears, as far as said: people look among their own. */
export function garmentAsWorn(input: GarmentInput, wearers?: string): Garment {
  const belongs = new Set(POINTS_OF[input.kind])
  const told = new Map<PointId, PointTaken>()
  for (const point of POINTS) {
    const taken = belongs.has(point) ? onePoint(input.measures.filter((measure) => measure.point === point)) : undefined
    if (taken !== undefined) told.set(point, taken)
  }
  const observed = [...told].map(observedAs)
  ofTwo(told, belongs)
  const cut = cutAs(input.kind, input.cut, input.made, input.use)
  const { made: plain, assumed } = madeAs(input.kind, input.made)
  const known = knownCut(cut)
  const described = {
    kind: input.kind,
    elasticWaist: plain.elasticWaist,
    // sleeves that are only said to be short are thought to be as short ones are
    cut: plain.shortSleeves ? { ...known, sleeve: known.sleeve ?? ('short' as const) } : known,
    womens: shareOfWomens(input.kind, input.whose, wearers)
  }
  const belief = observed.length === 0 ? undefined : beliefOf(described, observed)
  const points = withUntold(told, belief, belongs)
  const cloth = clothTaken(input.kind, input.cloth, known)
  const made = assumed.includes('waistStretchedMm') ? { ...plain, waistStretchedMm: stretchedAs(plain, points.get('waist')) } : plain
  const ordered = new Map<PointId, PointTaken>()
  for (const point of POINTS) {
    const taken = points.get(point)
    if (taken !== undefined) ordered.set(point, taken)
  }
  return {
    kind: input.kind,
    points: ordered,
    made,
    told: input.made ?? {},
    assumed,
    cloth,
    cut,
    worn: (point) => wornChange(input.kind, cloth, point),
    use: input.use ?? 'ordinary',
    belief
  }
}

/** How much of a seller's error is common to all of their figures; one's own tape and labels have errors of their own alone. */
const observedAs = ([point, { mm, sdMm, from, readings = 1 }]: [PointId, PointTaken]): Observed => ({
  point,
  mm,
  sdMm,
  commonShare: from === 'seller' ? COMMON_SHARE / (COMMON_SHARE + (1 - COMMON_SHARE) / readings) : 0
})

/** With every point that the model speaks of: what a label said and what nobody told, as it is thought of. */
function withUntold(
  told: ReadonlyMap<PointId, PointTaken>,
  belief: GarmentBelief | undefined,
  belongs: ReadonlySet<PointId>
): Map<PointId, PointTaken> {
  const points = new Map(told)
  for (const point of belief?.points ?? []) {
    const thought = belief?.of(point)
    if (thought !== undefined && belongs.has(point) && !points.has(point)) points.set(point, { ...thought, from: 'inferred' })
  }
  return points
}

/** An elastic waist goes so much further than it lies: a band with elastic at the back only a tenth, one all round a third (from memory). */
export const ELASTIC_GOES = 0.25
const stretchedAs = ({ elasticWaist }: Made, waist: PointTaken | undefined): number =>
  elasticWaist && waist !== undefined ? waist.mm * (1 + ELASTIC_GOES) : 0

/** What two told points make together: point = one + share × other (common practice). */
const OF_TWO: { point: PointId; one: PointId; other: PointId; share: number }[] = [
  { point: 'crotchLength', one: 'frontRise', other: 'backRise', share: 1 },
  // a sleeve from the centre back is half the shoulders and the sleeve, as shirts are measured
  { point: 'sleeveLength', one: 'sleeveFromCentreBack', other: 'shoulderWidth', share: -1 / 2 }
]
function ofTwo(told: Map<PointId, PointTaken>, belongs: ReadonlySet<PointId>): void {
  for (const { point, one: first, other: second, share } of OF_TWO) {
    const one = told.get(first)
    const other = told.get(second)
    if (one === undefined || other === undefined || told.has(point) || !belongs.has(point)) continue
    const mm = one.mm + share * other.mm
    if (mm <= 0) continue
    const from = isTold(one) && isTold(other) ? one.from : 'label'
    told.set(point, { mm, sdMm: Math.hypot(one.sdMm, share * other.sdMm), from })
  }
}

/** Of the variance of one person's figures so much is common to all of them: the same tape, the same habit (from memory). */
export const COMMON_SHARE = 0.3

/** One figure a point: the most trusted source; of several alike their mean. Left and right are no doubt. */
function onePoint(measures: GarmentMeasure[]): PointTaken | undefined {
  const usable = measures.filter((measure) => isLength(measure.mm))
  if (usable.length === 0) return undefined
  const best = Math.min(...usable.map((measure) => TRUST[measure.source]))
  const chosen = usable.filter((measure) => TRUST[measure.source] === best)
  if (chosen.length === 1) return together(chosen)
  const [left, right] = (['left', 'right'] as const).map((side) => chosen.filter((measure) => measure.side === side))
  if (left !== undefined && right !== undefined && left.length > 0 && right.length > 0) {
    const [one, other] = [together(left), together(right)]
    if (one === undefined || other === undefined) return undefined
    const both = { mm: (one.mm + other.mm) / 2, sdMm: Math.max(one.sdMm, other.sdMm), from: one.from }
    return one.mm === other.mm ? both : { ...both, sides: { left: one.mm, right: other.mm } }
  }
  return together(chosen)
}

/**
 * The mean of n readings: what is common to one tape stays, the rest is divided by n (the standard error of a mean), or is half of what they lie
 * apart where that is more.
 */
function together(measures: readonly GarmentMeasure[]): PointTaken | undefined {
  const first = measures[0]
  if (first === undefined) return undefined
  const all = measures.map(({ mm }) => mm)
  const usual = SD_MM[first.source][isGirth(first.point) ? 'girth' : 'length']
  const sdMm = Math.max(...measures.map(({ sdMm: told }) => (told !== undefined && isDepth(told) ? told : usual)))
  const taken = { mm: all.reduce((sum, mm) => sum + mm, 0) / all.length, from: first.source }
  if (all.length === 1) return { ...taken, sdMm }
  const apart = (Math.max(...all) - Math.min(...all)) / 2
  const own = Math.max(sdMm * Math.sqrt((1 - COMMON_SHARE) / all.length), apart)
  return { ...taken, sdMm: Math.hypot(sdMm * Math.sqrt(COMMON_SHARE), own), readings: all.length }
}

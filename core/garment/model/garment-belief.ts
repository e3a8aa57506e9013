/**
 * What is thought of every point of a garment once some were measured: the rows of its kind as one normal (joint-normal.ts), conditioned on what
 * was told. One mechanism for points that nobody told, for how odd a told one looks, and for how the doubts hang together.
 */
import type { Cut, Facet } from '../../ids/cut.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import { JointNormal, type LineOn, logEvidenceOf, mixedEvidence } from './joint-normal.ts'
import { CUT_FIGURES, CUT_SHIFTS, type CutFigure, MODEL_ROWS, type ModelRow, WIDENED } from './rows.ts'
import { WHOSE, type Whose } from './whose.ts'

/** One told figure: mm, sd, and which share of its variance is a habit that all of one seller's figures have in common. */
export interface Observed {
  point: PointId
  mm: number
  sdMm: number
  commonShare: number
}
export interface Described {
  kind: GarmentKind
  elasticWaist: boolean
  /** As told. */
  cut: Cut
  /** How likely it is cut for women, 0..1. */
  womens: number
}
export interface Belief {
  mm: number
  sdMm: number
}

/** A told point that no row speaks of stands alone, anywhere about its figure, mm (sd). */
const ANYWHERE_MM = 300

interface Part {
  belief: JointNormal
  prior: number
}

/** A told figure is the point's own and a share of the seller's habit, but for what of its error is its own. */
const asObservation = (
  { mm, sdMm, commonShare }: Observed,
  place: number,
  habit: number
): [weights: [number, number][], value: number, noiseSd: number] => [
  [
    [place, 1],
    [habit, sdMm * Math.sqrt(commonShare)]
  ],
  mm,
  sdMm * Math.sqrt(1 - commonShare)
]

export class GarmentBelief {
  /** The garment it is about, but for its figures. */
  readonly described: Described
  readonly points: readonly PointId[]
  /** Over the points in their order, and last the seller's habit, in sd. */
  readonly joint: JointNormal
  /** The figures it stands on. */
  readonly told: ReadonlyMap<PointId, Observed>
  private readonly places: ReadonlyMap<PointId, number>
  /** As cut for women and as cut for men. */
  private readonly parts: readonly Part[]

  constructor(described: Described, points: readonly PointId[], parts: readonly Part[], told: ReadonlyMap<PointId, Observed>) {
    this.described = described
    this.points = points
    this.parts = parts
    this.joint = JointNormal.mixed(parts)
    this.told = told
    this.places = new Map(points.map((point, place) => [point, place]))
  }

  placeOf(point: PointId): number | undefined {
    return this.places.get(point)
  }

  /** What is thought of a told point if its own figure is left out; women's and men's weighed anew by the others. */
  without(point: PointId): Belief | undefined {
    const [told, place] = [this.told.get(point), this.places.get(point)]
    if (told === undefined || place === undefined) return undefined
    const parts = this.parts.flatMap(({ belief, prior }) => {
      const left = belief.without(place, ...asObservation(told, place, belief.size - 1))
      return left === undefined ? [] : [{ ...left, log: Math.log(prior) + belief.logEvidence - left.logLikelihood }]
    })
    const most = Math.max(...parts.map(({ log }) => log))
    const all = parts.reduce((sum, { log }) => sum + Math.exp(log - most), 0)
    if (!(all > 0)) return undefined
    const mm = parts.reduce((sum, { mean, log }) => sum + (mean * Math.exp(log - most)) / all, 0)
    const variance = parts.reduce((sum, one) => sum + ((one.variance + (one.mean - mm) ** 2) * Math.exp(one.log - most)) / all, 0)
    return { mm, sdMm: Math.sqrt(variance) }
  }

  of(point: PointId): Belief | undefined {
    const place = this.places.get(point)
    return place === undefined ? undefined : { mm: this.joint.mean[place] ?? 0, sdMm: this.joint.sdOf(place) }
  }
}

const WIDENING: readonly string[] = ['bootcut', 'flared', 'palazzo']

/** The row of each point that speaks of this garment, in order; the more particular before the general. */
function rowsFor({ kind, elasticWaist, cut }: Described, whose: Whose): ModelRow[] {
  const found = new Map<PointId, ModelRow>()
  for (const row of MODEL_ROWS[kind] ?? []) {
    if (row.whose !== undefined && row.whose !== whose) continue
    if (row.elastic && !elasticWaist) continue
    if (row.longSleeve && cut.sleeve !== 'long') continue
    if (row.widensBelow && !WIDENING.includes(cut.leg ?? '')) continue
    if (row.silhouettes !== undefined && !row.silhouettes.includes(cut.silhouette ?? '')) continue
    const known = found.get(row.point)
    if (known === undefined || (known.whose === undefined && known.elastic === undefined && row.whose !== undefined))
      found.set(row.point, row)
  }
  return [...found.values()]
}

/** A kind's rows as one normal, nothing told of it yet. */
interface Start {
  points: readonly PointId[]
  lines: readonly LineOn[]
  /** The lines alone, and last the seller's habit. */
  joint: JointNormal
  leastSdMm: readonly number[]
}
const HABIT: LineOn = { at: 0, from: [], sd: 1 }

/** The same for every garment that is described alike: made once. */
const starts = new Map<string, Start>()
function startOf(described: Described, whose: Whose, figures: readonly CutFigure[]): Start {
  const { kind, elasticWaist, cut } = described
  const said = figures.map(({ point, value }) => point + value)
  const key = [kind, whose, elasticWaist, cut.sleeve === 'long', cut.leg, ...SHIFTING.map((facet) => cut[facet]), ...said].join()
  const known = starts.get(key) ?? startFrom(described, whose, figures)
  starts.set(key, known)
  return known
}
const SHIFTING = [...new Set<Facet>(['silhouette', ...CUT_SHIFTS.map(({ facet }) => facet)])]

function startFrom(described: Described, whose: Whose, figures: readonly CutFigure[]): Start {
  const rows = rowsFor(described, whose)
  const points = rows.map(({ point }) => point)
  const place = new Map(points.map((point, index) => [point, index]))
  const shiftsOf = (point: PointId) =>
    CUT_SHIFTS.filter(
      ({ kinds, facet, values, point: at }) => at === point && kinds.includes(described.kind) && values.includes(described.cut[facet] ?? '')
    )
  const lines = rows.map(({ point, at, from, useSdMm, standing }): LineOn => {
    // a short sleeve is no long one that is a little shorter: what the cut says of a point stands instead of its row
    const figure = figures.find((one) => one.point === point)
    if (figure !== undefined) return { at: figure.mm, from: [], sd: figure.sdMm }
    return {
      at: shiftsOf(point).reduce((sum, { shiftMm }) => sum + shiftMm, at),
      from: (Object.entries(from) as [PointId, number][]).flatMap(([other, slope]): [number, number][] => {
        const index = place.get(other)
        return index === undefined ? [] : [[index, slope]]
      }),
      sd: Math.hypot(useSdMm * WIDENED[standing], ...shiftsOf(point).map(({ doubtMm = 0 }) => doubtMm))
    }
  })
  return {
    points,
    lines,
    joint: JointNormal.fromLines([...lines, HABIT]),
    leastSdMm: rows.map(({ from, useSdMm }) => (Object.keys(from).length === 0 ? LEAST_OF_SIZE_MM : useSdMm))
  }
}

/** With a place for every told point that no row speaks of: each stands alone. */
function withAlone({ points, lines, joint }: Start, observed: readonly Observed[]): { points: readonly PointId[]; belief: JointNormal } {
  const alone = observed.filter(({ point }) => !points.includes(point))
  if (alone.length === 0) return { points, belief: joint.copy() }
  const anywhere = alone.map(({ mm }): LineOn => ({ at: mm, from: [], sd: ANYWHERE_MM }))
  return { points: [...points, ...alone.map(({ point }) => point)], belief: JointNormal.fromLines([...lines, ...anywhere, HABIT]) }
}
/** What a size can be known to from the other points (Joint: waist from hip, 58; chest from hem and shoulder, 46 and more). */
const LEAST_OF_SIZE_MM = 46

/** What is thought of the garment; undefined where its kind has no rows and nothing is told. */
export function beliefOf(described: Described, observed: readonly Observed[]): GarmentBelief | undefined {
  const told = new Map(observed.map((one) => [one.point, one]))
  // what the cut says of a point that was measured says nothing more
  const figures = CUT_FIGURES.filter(({ facet, value, point }) => described.cut[facet] === value && !told.has(point))
  const [instead, beside] = [figures.filter((one) => one.instead), figures.filter((one) => !one.instead)]
  const said = new Set(figures.map(({ point }) => point))
  let all: readonly PointId[] = []
  const beliefs = WHOSE.flatMap((whose) => {
    const prior = whose === 'women' ? described.womens : 1 - described.womens
    if (prior <= 0) return []
    const start = startOf(described, whose, instead)
    const { points, belief } = withAlone(start, observed)
    all = points
    for (const { point, mm, sdMm } of beside) {
      const place = points.indexOf(point)
      if (place >= 0) belief.observe([[place, 1]], mm, sdMm)
    }
    belief.logEvidence = 0
    for (const one of observed) belief.observe(...asObservation(one, points.indexOf(one.point), points.length))
    for (const [place, least] of start.leastSdMm.entries()) {
      const point = points[place] as PointId
      if (!told.has(point) && !said.has(point)) belief.widen(place, least)
    }
    return [{ belief, prior }]
  })
  return all.length === 0 ? undefined : new GarmentBelief(described, all, beliefs, told)
}

/**
 * How likely the figures are on such a garment of which no cut is told: the evidence of `beliefOf`, to the same bit. What is thought of the points
 * that were not told takes most of the work there, and no part in this.
 */
export function evidenceOf(described: Omit<Described, 'cut'>, observed: readonly Observed[]): number | undefined {
  const beliefs: { belief: { logEvidence: number }; prior: number }[] = []
  const told = observed.map(({ mm, sdMm, commonShare }) => ({
    value: mm,
    commonWeight: sdMm * Math.sqrt(commonShare),
    noiseSd: sdMm * Math.sqrt(1 - commonShare)
  }))
  for (const whose of WHOSE) {
    const prior = whose === 'women' ? described.womens : 1 - described.womens
    if (prior <= 0) continue
    const { points, joint } = uncutStart(described, whose)
    if (points.length + observed.length === 0) continue
    const places = observed.map(({ point }) => points.indexOf(point))
    beliefs.push({ belief: { logEvidence: logEvidenceOf(joint, points.length, told, places, ANYWHERE_MM) }, prior })
  }
  return beliefs.length === 0 ? undefined : mixedEvidence(beliefs)
}

/** A kind's rows where nothing is told of its cut. */
function uncutStart({ kind, elasticWaist, womens }: Omit<Described, 'cut'>, whose: Whose): Start {
  const known = UNCUT[whose][elasticWaist ? 'elastic' : 'plain']
  const start = known.get(kind) ?? startOf({ kind, elasticWaist, womens, cut: {} }, whose, [])
  known.set(kind, start)
  return start
}
type Starts = Map<GarmentKind, Start>
const UNCUT: Record<Whose, { elastic: Starts; plain: Starts }> = {
  women: { elastic: new Map(), plain: new Map() },
  men: { elastic: new Map(), plain: new Map() }
}

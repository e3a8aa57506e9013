/**
 * The simulated world put to the product: what is told becomes a request; what is true tells whether it works out. The only place that meets core.
 * With everything known the core is used as a solver alone: the person's own wants stand in as a favourite with its own tolerances, so that no ease,
 * no cut and no survey of the product decides what wears right.
 */
import type { GarmentInput, Made } from '../../core/garment/garment-input.ts'
import type { AlterationId } from '../../core/ids/alterations.ts'
import type { Cut } from '../../core/ids/cut.ts'
import { POINTS, type PointId } from '../../core/ids/points.ts'
import type { Means } from '../../core/plan/means.ts'
import { type Reckoning, type ReckonRequest, reckon } from '../../core/reckon.ts'
import { BODY_MEASURES, type Body, type Fit } from '../../core/wearer/body.ts'
import { answered, type Figures, type Grade, type Random, simplyWorks, type Told, type Truth, untoldOf } from './simulator.ts'

/** Fixed before they were run; everything was tried out on 1 to 99. `SEEDS=1,2` takes others. */
export const SEEDS: readonly number[] = process.env.SEEDS?.split(',').map(Number) ?? [5101, 5202, 5303]
/** What fit is asked for. The simulated tastes are of an ordinary fit. */
const FIT = (process.env.FIT ?? 'regular') as Fit
const MEANS: Means = { level: 3, tailor: false, hourWorth: 6, garmentWorth: 60 }
export const WORTH = 60
const RESCUES: AlterationId[] = [
  'waist-out-panel',
  'waist-in-elastic',
  'drawstring-add',
  'thigh-panel',
  'rise-shorten',
  'rise-deepen',
  'leg-lengthen-band',
  'hem-widen',
  'side-panels',
  'lace-back'
]
const meansOf = ({ acceptsRescues }: { acceptsRescues: boolean }): Means => (acceptsRescues ? { ...MEANS, acceptRescues: RESCUES } : MEANS)

export const MARK_MM = 2
const EXACT_MM = 0.01
const NO_WANT = { least: 0, ideal: 0, most: 0, beneath: 0 }
/** What stands for no edge. */
const FAR_MM = 2000

const bodyFrom = (figures: Figures): Body =>
  Object.fromEntries(BODY_MEASURES.flatMap((measure) => (figures[measure] === undefined ? [] : [[measure, { mm: figures[measure] }]])))
const pointsOf = (figures: Readonly<Record<string, unknown>>): PointId[] => POINTS.filter((point) => figures[point] !== undefined)
const measuresFrom = (figures: Figures, source: 'seller' | 'own', sdMm?: number): GarmentInput['measures'] =>
  pointsOf(figures).map((point) => ({ point, mm: figures[point] ?? 0, source, ...(sdMm === undefined ? {} : { sdMm }) }))

export const toldRequest = (told: Told, price?: GarmentInput['price']): ReckonRequest => ({
  garment: {
    kind: told.kind,
    measures: [...measuresFrom(told.garment, 'seller'), ...measuresFrom(told.again, 'seller')],
    made: told.made as Partial<Made>,
    cut: told.cut as Cut,
    cloth: told.cloth,
    ...(price === undefined ? {} : { price })
  },
  wearer: { fit: FIT, body: bodyFrom(told.body), ...(told.sizes === undefined ? {} : { sizes: told.sizes }) },
  means: meansOf(told)
})

/** Everything known: every point that touches the body, exact, the true make, and the person's own wants as a favourite's tolerances. */
export const trueRequest = (truth: Truth, price?: GarmentInput['price']): ReckonRequest => {
  const points = pointsOf(truth.wants)
  const cloth: GarmentInput['cloth'] = { structure: truth.cloth.structure, washed: true }
  return {
    garment: {
      kind: truth.kind,
      measures: measuresFrom(truth.garment, 'own', EXACT_MM),
      made: truth.made as Partial<Made>,
      cut: truth.cut as Cut,
      cloth,
      ...(price === undefined ? {} : { price })
    },
    favourite: {
      measures: points.map((point) => ({ point, mm: truth.wants[point]?.ideal ?? 0 })),
      cut: truth.cut as Cut,
      cloth,
      toleranceMm: Object.fromEntries(
        points.map((point) => {
          const { least, ideal, most } = truth.wants[point] ?? NO_WANT
          return [point, { under: ideal - least, over: Math.min(FAR_MM, most - ideal) }]
        })
      )
    },
    means: meansOf(truth)
  }
}

/**
 * A third judge: the person's ideal as an ease of their own, the widths of the bands and the rest as the product has them. Everything known; no rise is
 * told, for the girth where this band lies is given instead.
 */
const byOwnEase = (truth: Truth): ReckonRequest => {
  const points = pointsOf(truth.wants).filter((point) => !WITHOUT_EASE.has(point))
  const { frontRise: _front, backRise: _back, ...garment } = truth.garment
  const band = truth.kind === 'trousers' || truth.kind === 'jeans' || truth.kind === 'skirt' ? truth.wants.waist?.beneath : undefined
  const body: Figures = { ...truth.body, ...(band === undefined ? {} : { waistbandGirth: band }) }
  return {
    garment: { ...trueRequest(truth).garment, measures: measuresFrom(garment, 'own', EXACT_MM) },
    wearer: {
      fit: FIT,
      sizes: truth.sex,
      body: Object.fromEntries(
        BODY_MEASURES.flatMap((measure) => (body[measure] === undefined ? [] : [[measure, { mm: body[measure], sdMm: EXACT_MM }]]))
      ),
      ease: Object.fromEntries(
        points.map((point) => {
          const { ideal, beneath } = truth.wants[point] ?? NO_WANT
          return [point, { mm: ideal - beneath, sdMm: EXACT_MM, from: 'own' as const }]
        })
      )
    },
    means: meansOf(truth)
  }
}
const WITHOUT_EASE = new Set<PointId>(['legOpening', 'calf', 'knee'])

export const total = (misfit: readonly { mm: number }[]): number => misfit.reduce((sum, { mm }) => sum + Math.abs(mm), 0)
export type Known = Pick<Reckoning, 'asItIs' | 'plans' | 'gaps'>
export const known = (truth: Truth, price?: GarmentInput['price']): Known => reckon(trueRequest(truth, price), { outlook: false })
/** What one may do with it alone; with rescues only where they are accepted. */
export const ownPlans = ({ plans }: Pick<Known, 'plans'>, { acceptsRescues }: Pick<Truth, 'acceptsRescues'>): Known['plans'] =>
  plans.filter(({ aim, alterations }) => aim !== 'tailor' && (acceptsRescues || alterations.every(({ rescue }) => !rescue)))
const asItIsFits = (all: Known): boolean => total(all.asItIs.misfit) <= MARK_MM
export const worksOut = (all: Known, truth: Truth): boolean =>
  asItIsFits(all) || ownPlans(all, truth).some(({ misfit }) => total(misfit) <= MARK_MM)

export interface Trial {
  chance: number
  /** Every point that touches the body comes right, as it is or by a plan of one's own. */
  works: boolean
  /** The same by simple published limits, without the product's engine. */
  simplyWorks: boolean
  /** The same with the product's own bands around the person's own ideal, at the points that are wanted. */
  worksByOwnEase: boolean
  verdict: Reckoning['verdict']
  asItIsWorks: boolean
  /** Points that stay wrong in the best way, by how much. */
  failed: { point: string; mm: number; told: boolean }[]
  /** What it says stays wrong in the best way, and what was not told and was worked out as lying outside its band. */
  doubted: { point: string; mm: number; told: boolean }[]
  untold: number
}

/** Only what is wanted counts. */
const worksWithin = (all: Known, truth: Truth): boolean =>
  [all.asItIs.misfit, ...ownPlans(all, truth).map(({ misfit }) => misfit)].some(
    (misfit) => total(misfit.filter(({ point }) => truth.wants[point] !== undefined)) <= MARK_MM
  )

/** One listing: the chance that was given, and whether it worked out. null: no chance was given. */
export function trial(truth: Truth, told: Told): Trial | { chance: null } {
  const answer = reckon(toldRequest(told))
  if (answer.chance === null) return { chance: null }
  const all = known(truth)
  const ways = [all.asItIs.misfit, ...ownPlans(all, truth).map(({ misfit }) => misfit)]
  const best = ways.reduce((least, way) => (total(way) < total(least) ? way : least))
  return {
    chance: answer.chance,
    works: worksOut(all, truth),
    simplyWorks: simplyWorks(truth),
    worksByOwnEase: worksWithin(reckon(byOwnEase(truth), { outlook: false }), truth),
    verdict: answer.verdict,
    asItIsWorks: asItIsFits(all),
    failed: best.map(({ point, mm }) => ({ point, mm, told: told.garment[point] !== undefined })),
    doubted: doubtedIn(answer, told),
    untold: untoldOf(truth, told).length
  }
}

function doubtedIn(answer: Reckoning, { garment }: Told): Trial['doubted'] {
  const ways = [answer.asItIs.misfit, ...answer.plans.filter(({ aim }) => aim !== 'tailor').map(({ misfit }) => misfit)]
  const best = ways.reduce((least, way) => (total(way) < total(least) ? way : least))
  const wrong = best.map(({ point, mm }) => ({ point, mm, told: garment[point] !== undefined }))
  const untold = answer.gaps.filter(
    ({ point, from, gapMm }) => from === 'inferred' && Math.abs(gapMm) > MARK_MM && garment[point] === undefined
  )
  return [...wrong, ...untold.map(({ point, gapMm }) => ({ point, mm: gapMm, told: false }))]
}

/** Questions to the seller; what is asked of oneself is measured and not counted. */
const QUESTIONS = 3

/** What is told once the question worth most is asked, of the seller or of oneself, and so on up to three of the seller; and what it says then. */
export function askedThrough(
  random: Random,
  truth: Truth,
  toldFirst: Told,
  price?: GarmentInput['price']
): { told: Told; answer: Reckoning } {
  let told = toldFirst
  let answer = reckon(toldRequest(told, price))
  for (let asked = 0; asked < QUESTIONS; ) {
    let next: Told | null = null
    // what nobody can answer is passed over
    for (const { point, body, about, again } of answer.ask) {
      next = answered(random, { truth, told }, { point, body, made: about, again })
      if (next === null) continue
      if (body === undefined) asked++
      break
    }
    if (next === null) break
    told = next
    answer = reckon(toldRequest(told, price))
  }
  return { told, answer }
}

export type { Grade }

/** The simulated world put to the product: what is told becomes a request, what is true tells whether it works out. */

import type { GarmentInput, Made } from '../../core/garment/garment-input.ts'
import { POINTS, type PointId } from '../../core/ids/points.ts'
import type { Means } from '../../core/plan/means.ts'
import { type Reckoning, type ReckonRequest, reckon } from '../../core/reckon.ts'
import { BODY_MEASURES, type Body } from '../../core/wearer/body.ts'
import { answered, type Figures, type Random, type Seller, type Told, type Truth } from './simulator.ts'

/** Fixed before they were run. 11, 22, 33, 404, 505, 606, 1001 and 1002 were looked at while spreads, tails, priors and questions were chosen. */
export const SEEDS = [707, 808, 909] as const
export const PLAIN: Seller = { biasMm: 0 }
export const MEANS: Means = { level: 3, tailor: false, hourWorth: 6, garmentWorth: 60 }

export const MARK_MM = 2
const EXACT_MM = 0.01

const bodyFrom = (figures: Figures, sdMm?: number): Body =>
  Object.fromEntries(
    BODY_MEASURES.flatMap((measure) =>
      figures[measure] === undefined ? [] : [[measure, sdMm === undefined ? { mm: figures[measure] } : { mm: figures[measure], sdMm }]]
    )
  )
const measuresFrom = (figures: Figures, source: 'seller' | 'own', sdMm?: number): GarmentInput['measures'] =>
  POINTS.flatMap((point) => {
    const mm = figures[point]
    return mm === undefined ? [] : [sdMm === undefined ? { point, mm, source } : { point, mm, source, sdMm }]
  })

export const toldRequest = (told: Told, means: Means, price?: GarmentInput['price']): ReckonRequest => ({
  garment: {
    kind: told.kind,
    measures: [...measuresFrom(told.garment, 'seller'), ...measuresFrom(told.again, 'seller')],
    made: told.made as Partial<Made>,
    ...(price === undefined ? {} : { price })
  },
  wearer: { fit: 'regular', body: bodyFrom(told.body) },
  means
})

/** Everything known, of the points that are judged. */
export const trueRequest = (truth: Truth, points: readonly PointId[], means: Means, price?: GarmentInput['price']): ReckonRequest => ({
  garment: {
    kind: truth.kind,
    measures: measuresFrom(
      Object.fromEntries(points.flatMap((point) => (truth.garment[point] === undefined ? [] : [[point, truth.garment[point]]]))) as Figures,
      'own',
      EXACT_MM
    ),
    made: truth.made as Partial<Made>,
    ...(price === undefined ? {} : { price })
  },
  wearer: { fit: 'regular', body: bodyFrom(truth.body, EXACT_MM) },
  means
})

export const total = (misfit: readonly { mm: number }[]): number => misfit.reduce((sum, { mm }) => sum + Math.abs(mm), 0)
const asItIsFits = (reckoning: Reckoning): boolean => total(reckoning.asItIs.misfit) <= MARK_MM
const someOwnPlanFits = (reckoning: Reckoning): boolean =>
  asItIsFits(reckoning) || reckoning.plans.some((plan) => plan.aim !== 'tailor' && total(plan.misfit) <= MARK_MM)

export interface Trial {
  chance: number
  works: boolean
}

/** One listing: the chance that was given, and whether it worked out. null: too little told, or nothing to be unsure of. */
export function trial(truth: Truth, told: Told, means: Means): Trial | null {
  const answer = reckon(toldRequest(told, means))
  if (answer.chance === null) return null
  const points = answer.gaps.filter((gap) => gap.band !== null).map((gap) => gap.point)
  const unknown = points.filter((point) => truth.garment[point] === undefined)
  if (unknown.length > 0) throw new Error(`${truth.kind}: judged, but the simulated garment has none: ${unknown.join(', ')}`)
  const known = reckon(trueRequest(truth, points, means), { outlook: false })
  return { chance: answer.chance, works: answer.verdict === 'wears-as-is' ? asItIsFits(known) : someOwnPlanFits(known) }
}

/** Questions to the seller; what is asked of oneself is measured and not counted. */
const QUESTIONS = 3

/** What is told once the question worth most is asked, of the seller or of oneself, and so on up to three of the seller; and what it says then. */
export function askedThrough(
  random: Random,
  truth: Truth,
  toldFirst: Told,
  means: Means,
  price?: GarmentInput['price']
): { told: Told; answer: Reckoning } {
  let told = toldFirst
  let answer = reckon(toldRequest(told, means, price))
  for (let asked = 0; asked < QUESTIONS; ) {
    let next: Told | null = null
    // what nobody can answer is passed over
    for (const { point, body, about, again } of answer.ask) {
      next = answered(random, { truth, told }, { point, body, made: about, again }, PLAIN)
      if (next === null) continue
      if (body === undefined) asked++
      break
    }
    if (next === null) break
    told = next
    answer = reckon(toldRequest(told, means, price))
  }
  return { told, answer }
}

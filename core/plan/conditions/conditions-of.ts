/** The conditions of one request: which untold points and body measures decide, and what each must be. */
import { isTold } from '../../garment/garment-as-worn.ts'
import type { PointId } from '../../ids/points.ts'
import type { BodyMeasureId } from '../../wearer/body.ts'
import type { Gap } from '../../wearer/gaps.ts'
import type { Target } from '../../wearer/want.ts'
import { LIKELY, untoldKeys } from '../keys.ts'
import type { Means } from '../means.ts'
import { fits, isWrong } from '../misfit.ts'
import type { Outlook } from '../outlook/outlook.ts'
import type { Plan } from '../plan.ts'
import { type Beside, MARK_MM, type Plans } from '../plan-alterations.ts'
import type { ReckonRequest } from '../request.ts'
import { type Interval, intervalOf } from './conditions.ts'

export interface Condition extends Interval {
  /** What is not told: a point of the garment, or a measure of the person's own. */
  point?: PointId
  body?: BodyMeasureId
  /** That it lies there; null without the outlook. */
  chance: number | null
}

export interface Known extends Beside {
  target: Target
  plans: () => Plans
  outlook: Outlook
}

/** Nothing where something told stays wrong: no figure could mend that. */
export function conditionsOf(request: ReckonRequest, known: Known, tell: (changed: ReckonRequest) => Beside): Condition[] {
  const { garment, gaps, target, outlook } = known
  const { means } = request
  const markMm = means.markMm ?? MARK_MM
  if (isWrong(gaps, markMm) && !plansOf(known, means).some((plan) => fits(plan, markMm))) return []
  const conditionAt = (point: PointId): Condition[] => {
    const thought = garment.points.get(point)
    if (thought === undefined) return []
    const interval = intervalOf(
      { point, expectedMm: thought.mm, sdMm: thought.sdMm, way: 1, tell: (mm) => tell(withPoint(request, point, mm)) },
      means,
      markMm
    )
    return interval === undefined || isOpen(interval) ? [] : [{ point, ...interval, chance: outlook.chanceThat(point, interval) }]
  }
  const found = [...untoldKeys(garment, target).flatMap(conditionAt), ...ofBody(request, known, markMm, tell).filter((one) => !isOpen(one))]
  const others = othersThatDecide(known)
  if (others.length > 0 && likelyIf(outlook, found) < LIKELY) found.push(...others.flatMap(conditionAt))
  return found
}

const plansOf = ({ plans }: Known, { tailor }: Means): readonly Plan[] => {
  const { own, tailor: tailors } = plans()
  return tailor && tailors !== undefined ? [...own, tailors] : own
}

const isOpen = ({ least, most }: Interval): boolean => least === null && most === null
const likelyIf = (outlook: Outlook, conditions: readonly Condition[]): number => {
  const { own, tailor } = outlook.ifTheyHold(conditions)
  return tailor ?? own
}

/** Of the other untold points the two that most often lie outside, where it is not even likely that it works out: they say why. */
const MOST_OTHERS = 2
const OFTEN = 0.1
function othersThatDecide({ garment, gaps, target, outlook }: Known): PointId[] {
  const isAnyWrong = gaps.some(({ judged, gapMm }) => judged && gapMm !== 0)
  if ((isAnyWrong ? outlook.likely : outlook.asItIs) >= LIKELY) return []
  const keys = untoldKeys(garment, target)
  return gaps
    .filter(({ judged, band, point }) => !judged && band !== null && !keys.includes(point))
    .map(({ point }) => ({ point, outside: outlook.outside(point) }))
    .filter(({ outside }) => outside > OFTEN)
    .sort((one, other) => other.outside - one.outside)
    .slice(0, MOST_OTHERS)
    .map(({ point }) => point)
}

/** Measures of the body that were only worked out, under a told point that is not surely inside. */
function ofBody(
  request: ReckonRequest,
  { gaps, garment, outlook }: Known,
  markMm: number,
  tell: (changed: ReckonRequest) => Beside
): Condition[] {
  const asked = new Map<BodyMeasureId, Gap>()
  for (const gap of gaps) {
    const { want } = gap
    if (want?.measure === undefined || want.basedOn.length === 0 || !isTold(garment.points.get(gap.point))) continue
    if (outlook.outside(gap.point) < OFTEN) continue
    if (!asked.has(want.measure)) asked.set(want.measure, gap)
  }
  return [...asked].flatMap(([body, { point, want }]): Condition[] => {
    const bodyMm = want?.bodyMm
    if (bodyMm === undefined) return []
    const interval = intervalOf(
      { point, expectedMm: bodyMm, sdMm: want?.sdMm ?? 0, way: -1, tell: (mm) => tell(withBody(request, body, mm)) },
      request.means,
      markMm
    )
    return interval === undefined ? [] : [{ body, ...interval, chance: outlook.chanceOfBody(point, bodyMm, interval) }]
  })
}

const withPoint = (request: ReckonRequest, point: PointId, mm: number): ReckonRequest => ({
  ...request,
  garment: { ...request.garment, measures: [...request.garment.measures, { point, mm, source: 'seller' }] }
})

const withBody = (request: ReckonRequest, body: BodyMeasureId, mm: number): ReckonRequest => ({
  ...request,
  ...(request.wearer === undefined ? {} : { wearer: { ...request.wearer, body: { ...request.wearer.body, [body]: { mm } } } })
})

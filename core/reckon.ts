/**
 * The main path: GarmentInput → Garment → Target → Gap[] → Option[] → Plan[] → Outlook → Verdict. Each arrow is one function in one file.
 * Pure and deterministic: no clock, no chance; throws only on a programming error. All lengths mm, girths around.
 */
import { alterationsFor } from './alterations/alterations-for.ts'
import { garmentAsWorn } from './garment/garment-as-worn.ts'
import type { GarmentInput } from './garment/garment-input.ts'
import { answerFrom, type Reckoning } from './plan/answer.ts'
import type { Means, OwnLimits } from './plan/means.ts'
import { outlookOf } from './plan/outlook.ts'
import { MARK_MM, planAlterations } from './plan/plan-alterations.ts'
import { gapsBetween } from './wearer/gaps.ts'
import { targetFor } from './wearer/target.ts'
import type { Favourite, Tried, Wearer } from './wearer/wearer.ts'

export type { GapShown, Reckoning } from './plan/answer.ts'
export type { Ask } from './plan/ask.ts'
export type { Verdict } from './plan/verdict.ts'
export type { Worth } from './plan/worth.ts'
export type { Band } from './wearer/gaps.ts'

export interface ReckonRequest {
  garment: GarmentInput
  wearer?: Wearer
  favourite?: Favourite
  /** Pinched or gaping on the body. */
  tried?: Tried[]
  means: Means
  limits?: OwnLimits
}

export interface ReckonOptions {
  /** true by default; false: every chance null, ask empty, the verdict provisional. */
  outlook?: boolean
  /** Words only: no figure or verdict depends on these. */
  units?: 'cm' | 'in'
  language?: string
  /** ISO 4217. */
  currency?: string
}

export function reckon(
  request: ReckonRequest,
  { outlook: withOutlook = true, units = 'cm', language = 'en', currency }: ReckonOptions = {}
): Reckoning {
  const { garment: input, means, limits = {} } = request
  const wording = { units, language, currency }
  const markMm = means.markMm ?? MARK_MM

  const garment = garmentAsWorn(input)
  const target = targetFor(garment, request.wearer, request.favourite)
  const gaps = gapsBetween(garment, target)
  const { options, refusals } = alterationsFor(garment, limits)
  const plans = planAlterations({ garment, input, gaps, means, options, refusals, wording })
  const outlook = withOutlook ? outlookOf({ garment, gaps, means, limits, markMm }) : null

  return answerFrom({ input, garment, target, gaps, plans, means, outlook, markMm }, wording)
}

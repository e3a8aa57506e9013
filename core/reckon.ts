/**
 * The main path: GarmentInput → Garment → Target → Gap[] → Option[] → Plan[] → Outlook → Verdict. Each arrow is one function in one file.
 * Pure and deterministic: no clock, no chance; throws only on a programming error. All lengths mm, girths around.
 */
import { alterationsFor } from './alterations/alterations-for.ts'
import { garmentAsWorn } from './garment/garment-as-worn.ts'
import { once } from './once.ts'
import { answerFrom, type Reckoning, type ReckoningInProgress, standingFrom } from './plan/answer/answer.ts'
import { wouldChange } from './plan/answer/would-change.ts'
import { clothAnswers, type Ways } from './plan/ask/cloth-answers.ts'
import { conditionsOf } from './plan/conditions/conditions-of.ts'
import { outlookOf } from './plan/outlook/outlook.ts'
import { MARK_MM, planAlterations } from './plan/plan-alterations.ts'
import type { ReckonRequest } from './plan/request.ts'
import { gapsBetween } from './wearer/gaps.ts'
import { bodyOf, seenOn, targetFor } from './wearer/target.ts'
import { wearsAs } from './wearer/wears-as.ts'
import type { WholeBody } from './wearer/whole-body.ts'
import type { Reason } from './words/reason.ts'
import type { Wording } from './words/say.ts'

export type { Verdict } from './ids/verdicts.ts'
export type { BandShown, GapShown, Reckoning } from './plan/answer/answer.ts'
export type { NotTaken } from './plan/answer/not-taken.ts'
export type { Worth } from './plan/answer/worth.ts'
export type { Ask } from './plan/ask/ask.ts'
export type { ReckonRequest } from './plan/request.ts'
export type { Band } from './wearer/gaps.ts'

export interface ReckonOptions {
  /** true by default; false: every chance null, ask empty, the verdict provisional. */
  outlook?: boolean
  /** Words only: no figure or verdict depends on these. */
  units?: 'cm' | 'in'
  language?: string | undefined
  /** ISO 4217. */
  currency?: string | undefined
}

export function reckon(request: ReckonRequest, { outlook = true, units = 'cm', language = 'en', currency }: ReckonOptions = {}): Reckoning {
  const wording = { units, language, currency }
  return answerFrom(computePlans(request, outlook, wording), wording)
}

/** What would better the verdict: a level more, a tailor, another figure, more cloth at the seams, another fit. Empty: nothing would, or nothing need be. */
export function whatWouldChange(
  request: ReckonRequest,
  { units = 'cm', language = 'en', currency }: Omit<ReckonOptions, 'outlook'> = {}
): Reason[] {
  const wording = { units, language, currency }
  return wouldChange(request, (changed) => standingFrom(computePlans(changed, false, wording)), wording)
}

function computePlans(request: ReckonRequest, withOutlook: boolean, wording: Wording): ReckoningInProgress {
  const { garment: input, means } = request
  const prepared = prepare(request)
  const { garment, gaps, offer } = prepared
  const outlook = withOutlook ? prepared.outlook() : null
  const plans = once(() => planAlterations({ garment, input, gaps, means, ...offer(), wording }))
  const conditions = outlook === null ? [] : conditionsOf(request, { ...prepared, plans, outlook }, prepare)
  return {
    ...prepared,
    input,
    plans,
    means,
    outlook,
    conditions,
    clothAnswers: () => (outlook === null ? [] : clothAnswers(request, { garment, gaps }, outlook, inOtherCloth(prepared.body)))
  }
}

/** The garment beside what its wearer wants. */
function setBeside({ garment: input, wearer, favourite, tried, means }: ReckonRequest, body = bodyOf(wearer)) {
  const markMm = means.markMm ?? MARK_MM
  const garment = seenOn(garmentAsWorn(input, wearer?.sizes), body)
  const target = targetFor(garment, wearer, favourite, tried, body)
  const gaps = gapsBetween(garment, target)
  const wears = () => (wearer === undefined ? null : wearsAs(garment, gaps, { wearer, favourite, tried, markMm, target }, body))
  return { garment, body, target, gaps, markMm, wearsAs: wears }
}

/** Everything up to the options, and the outlook, when they are asked for. */
function prepare(request: ReckonRequest, body = bodyOf(request.wearer)) {
  const { wearer, means, limits = {} } = request
  const beside = setBeside(request, body)
  const offer = once(() => alterationsFor(beside.garment, limits))
  const outlook = () => outlookOf({ ...beside, wearer, options: offer().options, means, limits })
  return { ...beside, offer, outlook }
}

/** The same wearer beside the garment in another cloth. */
const inOtherCloth = (body: WholeBody | undefined): Ways => ({
  setBeside: (changed) => setBeside(changed, body),
  prepare: (changed) => prepare(changed, body)
})

/** What a popup and a panel are given: a listing as read, what the person set right, and the answer. Made by the page, drawn by the components. */
import type { CutRead } from '../core/garment/cut.ts'
import type { Made } from '../core/garment/garment-input.ts'
import type { AlterationId } from '../core/ids/alterations.ts'
import type { GarmentKind } from '../core/ids/kinds.ts'
import type { Status } from '../core/ids/listing-statuses.ts'
import type { Verdict } from '../core/ids/verdicts.ts'
import type { Aim, Plan } from '../core/plan/plan.ts'
import type { Correction, Reading } from '../core/reading/reading.ts'
import type { Ask, Reckoning } from '../core/reckon.ts'
import type { Reason } from '../core/words/reason.ts'

/** Why a page gave no text; each has its own sentence. */
export type PageProblem = 'browser-page' | 'store-page' | 'pdf' | 'empty' | 'other-origin-frame' | 'no-permission' | 'tab-gone' | 'failed'

/** Is the answer about the page in front? `none`: it came from pasted text, there is no page. */
export type Place = 'here' | 'elsewhere' | 'none'

export interface SellerAnswer {
  id: string
  text: string
  /** ISO date. */
  on: string
  reading: Reading
}

export interface Judged {
  title: string
  site: string
  price: { amount: number; currency: string } | null
  place: Place
  problem: PageProblem | null
  text: string
  /** The text's full length where it was longer than is kept. */
  textCutFrom: number | null
  reading: Reading
  answers: readonly SellerAnswer[]
  corrections: readonly Correction[]
  kind: GarmentKind | null
  /** All kinds, in the order in which they are offered. */
  kinds: readonly GarmentKind[]
  made: Made
  assumed: readonly (keyof Made)[]
  /** How it is cut: as told, as set, as seen in the figures on this body, or as such a kind usually is. */
  cut: CutRead
  /** The same without what the person set. */
  cutAsRead: CutRead
  /** null: nothing to reckon yet. */
  reckoning: Reckoning | null
  /** false while the chances are still being worked out. */
  settled: boolean
  /** What would better the verdict, once settled. */
  wouldChange: readonly Reason[]
  /** The plan chosen; null: the advised one. */
  aim: PlanChoice | null
  /** The hardest level of work that the person does alone, 1 to 5. */
  level: number
  /** Does work go to a tailor, and what does that one ask for a job? The person's own figures. */
  tailor: { atHand: boolean; prices: Readonly<Partial<Record<AlterationId, number>>> }
  money: { price: number | null; postage: number | null; worth: number | null }
  notes: string
  /** How it stands on the wishlist; null: it is not there. */
  kept: Status | null
  canUndo: boolean
  /** Text typed and not yet taken, by field. */
  drafts: Readonly<Record<string, string>>
}

/** What a plan is chosen by: its aim, and beside another of the same aim what tells it from that. */
export type PlanChoice = Aim | 'rescue' | 'fewer-jobs'
export function choiceOf(plan: Plan, plans: readonly Plan[]): PlanChoice {
  const alike = plans.filter(({ aim }) => aim === plan.aim)
  const plain = alike.filter((one) => !isRescue(one))
  if (isRescue(plan) && plain.length > 0) return 'rescue'
  return plain.length > 1 && plain[0] !== plan && !isRescue(plan) ? 'fewer-jobs' : plan.aim
}
const isRescue = ({ alterations }: Plan): boolean => alterations.some(({ rescue }) => rescue)

/** The plan that is looked at. */
export const chosenPlan = ({ reckoning, aim }: Pick<Judged, 'reckoning' | 'aim'>): Plan | null =>
  reckoning?.plans.find((plan) => choiceOf(plan, reckoning.plans) === aim) ?? reckoning?.plans[0] ?? null

/** Verdicts that sound like a yes. */
export const DOUBTED: ReadonlySet<Verdict> = new Set<Verdict>(['wears-as-is', 'alters-to-fit', 'needs-a-tailor'])

/** Reasons about money stand beside it, why the chance is low beside that, what the untold must be in a line of its own, all others under the verdict. */
const aboutMoney = ({ code }: { code: string }): boolean => code.startsWith('worth.')
const CONDITIONAL = 'verdict.if'
const WHY_LOW = 'verdict.doubts'
const standsUnderVerdict = (reason: { code: string }): boolean =>
  !aboutMoney(reason) && reason.code !== CONDITIONAL && reason.code !== WHY_LOW
export function verdictReasons({
  reckoning,
  reading,
  corrections,
  wouldChange
}: Pick<Judged, 'reckoning' | 'reading' | 'corrections' | 'wouldChange'>): string[] {
  const sizes = sizeToChoose({ reading, corrections })
  if (sizes !== null) return [sizes]
  // that a tailor could make it fit stands among what would better it, and says more
  const tailorFits = wouldChange.some(({ code }) => code === 'change.tailor')
  const isSaid = (reason: Reason) => standsUnderVerdict(reason) && !(tailorFits && reason.code === 'verdict.tailor-could')
  return reckoning === null ? [] : reckoning.because.filter(isSaid).map(({ text }) => text)
}
/** The reason that says what the untold must be; null: nothing hangs on it, or a size is still to be chosen. */
export function conditionalReason({
  reckoning,
  reading,
  corrections
}: Pick<Judged, 'reckoning' | 'reading' | 'corrections'>): Reason | null {
  if (sizeToChoose({ reading, corrections }) !== null) return null
  return reckoning?.because.find(({ code }) => code === CONDITIONAL) ?? null
}
/**
 * Why the chance is low, as a sentence, and what costs most of it as a clause; null: it is not low, or what the untold must be says it already, or a
 * size is still to be chosen.
 */
export function whyLow({ reckoning, reading, corrections }: Pick<Judged, 'reckoning' | 'reading' | 'corrections'>) {
  const [first, ...others] = reckoning?.doubts ?? []
  const isSaid = ({ point }: { point: string }): boolean => reckoning?.conditions.some((one) => one.point === point) ?? false
  if (first === undefined || [first, ...others].every(isSaid) || sizeToChoose({ reading, corrections }) !== null) return null
  return { sentence: reckoning?.because.find(({ code }) => code === WHY_LOW)?.text ?? '', most: first.because.text }
}
/** What to do where the text measures several sizes and the one for sale is not chosen yet; null: nothing. */
export const sizeToChoose = ({ reading, corrections }: Pick<Judged, 'reading' | 'corrections'>): string | null =>
  sizeChosen(corrections) === '' ? (severalSizes(reading)?.text ?? null) : null
export const severalSizes = ({ issues }: Judged['reading']) => issues.find(({ code }) => code === 'reading.several-sizes')
/** '': none. */
export const sizeChosen = (corrections: Judged['corrections']): string => corrections.findLast((one) => 'size' in one)?.size ?? ''
/** What to ask the seller first; with a size to choose nothing need be asked yet. */
export const questionForSeller = (judged: Pick<Judged, 'reckoning' | 'reading' | 'corrections'>): Ask | undefined =>
  sizeToChoose(judged) === null ? judged.reckoning?.ask.find(({ body }) => body === undefined) : undefined
export const moneyReasons = ({ because }: Reckoning): string[] => because.filter(aboutMoney).map(({ text }) => text)

/** What a find costs in all, as far as it can be said: in money where all of it is known, else the price and the work beside it. Pure. */
import type { Worth } from '../../core/reckon.ts'
import { chosenPlan, type Judged } from '../judged.ts'
import type { Words } from '../words.tsx'

export interface Cost {
  /** "£29.90", "£16.00 + 1 h 46", "not stated". */
  figure: string
  /** What the figure leaves out or stands for; '' where there is nothing to say. */
  note: string
}

/** Nothing to do, or a plan: what work there is. */
export const planOf = (judged: Pick<Judged, 'reckoning' | 'aim'>) => {
  const verdict = judged.reckoning?.verdict
  return verdict === undefined || verdict === 'wears-as-is' || verdict === 'too-little-told' ? null : chosenPlan(judged)
}

type Priced = Pick<Judged, 'reckoning' | 'aim' | 'money' | 'price' | 'kept'>

/** The price as it can be counted, or only told: in the person's own currency, or in another. */
export function priceOf({ money, price }: Pick<Judged, 'money' | 'price'>, own: string | undefined) {
  if (money.price !== null) return { amount: money.price, currency: own, isOwn: true }
  if (price === null) return null
  const isOwn = price.currency === '' || own === undefined || price.currency === own
  return { amount: price.amount, currency: price.currency === '' ? own : price.currency, isOwn }
}

export function costOf(judged: Priced, words: Words): Cost {
  const { t, wording } = words
  const { reckoning, money } = judged
  const worth = reckoning?.worth ?? null
  const plan = reckoning?.verdict === 'leave-it' ? null : planOf(judged)
  const price = priceOf(judged, wording.currency)
  if (worth !== null && price?.isOwn !== false && plan === planCosted(judged)) {
    return {
      figure: t('facts.money-figure', { spend: worth.spend }),
      note: sumOf((price?.amount ?? 0) + (money.postage ?? 0), worth, plan?.aim === 'tailor', words)
    }
  }
  const figure =
    price === null ? t('cost.not-stated') : words.money(price.isOwn ? price.amount + (money.postage ?? 0) : price.amount, price.currency)
  const work = workOf(plan, words)
  const note =
    price?.isOwn === false
      ? t('cost.other-currency')
      : work === ''
        ? ''
        : t(plan?.aim === 'tailor' ? (plan.cost === null ? 'cost.tailor-unpriced' : 'cost.with-tailor') : 'cost.your-time')
  if (work === '') return { figure, note }
  return { figure: t('cost.with-work', { price: price === null ? t('cost.price') : figure, work }), note }
}

/** What the sum is made of, where it is more than the price; and what such a garment is worth to the person. */
function sumOf(price: number, { spend, against }: Worth, byTailor: boolean, words: Words): string {
  const more = spend - price
  const sum =
    more < LEAST_SAID ? '' : words.t(byTailor ? 'cost.sum-tailor' : 'cost.sum-work', { price: words.money(price), more: words.money(more) })
  const worth = against === null ? '' : words.t('facts.worth', { against })
  return [sum, worth].filter(Boolean).join('; ')
}
/** Less than this is no part of a sum. */
const LEAST_SAID = 0.005

/** The plan that `worth` counts: the advised one. */
const planCosted = ({ reckoning }: Priced) =>
  reckoning === null || reckoning.verdict === 'wears-as-is' || reckoning.verdict === 'leave-it' ? null : (reckoning.plans[0] ?? null)

function workOf(plan: ReturnType<typeof planOf>, { t, inner }: Words): string {
  if (plan === null || plan.alterations.length === 0) return ''
  if (plan.aim === 'tailor') return plan.cost === null ? inner('cost.tailor') : t('facts.money-figure', { spend: plan.cost })
  return plan.cost === null ? t('facts.minutes', { minutes: plan.minutes }) : t('facts.money-figure', { spend: plan.cost })
}

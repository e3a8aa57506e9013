/** What a find costs in all, as far as it can be said: in money where all of it is known, else the price and the work beside it. Pure. */
import { capped } from '../../core/words/say.ts'
import { chosenPlan, type Judged } from '../judged.ts'
import type { Words } from '../words.tsx'

export interface Cost {
  /** "£29.90", "£16.00 + 1 h 46", "not stated". */
  figure: string
  /** What the figure leaves out or stands for; '' where there is nothing to say. */
  note: string
  /** What a tailor asks for it is not known. */
  isUnpriced?: true
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

/** Money that is paid out stands apart from one's own time: a price and an hour are no sum. What both come to is said beside them. */
export function costOf(judged: Priced, words: Words): Cost {
  const { t, inner, wording } = words
  const { reckoning, money } = judged
  // the work on what is to be left is not advised, and not counted
  const leave = reckoning?.verdict === 'leave-it'
  const plan = leave ? null : planOf(judged)
  const price = priceOf(judged, wording.currency)
  const worth = !leave && price?.isOwn !== false && plan === planCosted(judged) ? (reckoning?.worth ?? null) : null
  const paid = price === null ? 0 : price.amount + (price.isOwn ? (money.postage ?? 0) : 0)
  const figure = price === null ? t('cost.not-stated') : words.money(paid, price.currency)
  const before = price === null ? t('cost.price') : figure
  const isWork = plan !== null && plan.alterations.length > 0
  const notes = [
    price?.isOwn === false ? inner('cost.other-currency') : '',
    worth === null || worth.spend - paid < LEAST_SAID || plan?.aim === 'tailor' ? '' : inner('cost.sum-work', { spend: worth.spend }),
    worth === null || worth.against === null ? '' : inner('facts.worth', { against: worth.against })
  ]
  const note = (...more: string[]) => capped([...more, ...notes].filter(Boolean).join('; '))
  if (!isWork) return { figure, note: note() }
  if (plan.aim !== 'tailor')
    return { figure: t('cost.with-work', { price: before, work: unbroken(t('facts.minutes', { minutes: plan.minutes })) }), note: note() }
  if (plan.cost === null)
    return {
      figure: t('cost.with-work', { price: before, work: inner('cost.tailor') }),
      note: note(inner('cost.tailor-unpriced')),
      isUnpriced: true
    }
  const more = words.money(plan.cost)
  if (worth === null) return { figure: t('cost.with-work', { price: before, work: more }), note: note(inner('cost.with-tailor')) }
  return { figure: words.money(worth.spend), note: note(inner('cost.sum-tailor', { price: before, more })) }
}
/** A time stays in one line. */
const unbroken = (text: string): string => text.replaceAll(' ', '\u00a0')
/** Less than this is no part of a sum. */
const LEAST_SAID = 0.005

/** The plan that `worth` counts: the advised one. */
const planCosted = ({ reckoning }: Priced) =>
  reckoning === null || reckoning.verdict === 'wears-as-is' ? null : (reckoning.plans[0] ?? null)

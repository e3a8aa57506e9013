/** What a find costs, in every case: of price, currency, hours and tailor what is known, and no more. */
import { describe, expect, it } from 'vitest'
import { costOf } from '../../../components/answer/cost.ts'
import type { Judged } from '../../../components/judged.ts'
import { wordsFor } from '../../../components/words.tsx'
import type { Plan } from '../../../core/plan/plan.ts'
import { closestFit, leastWork, leaveIt, tailorPlan, trousersJudged, trousersReckoning, wearsAsIs } from './fixtures.ts'

const words = wordsFor({ units: 'in', language: 'en', currency: 'GBP' })
type Reckoned = NonNullable<Judged['reckoning']>

/** The trousers at £24: 70 minutes of own work with £1 of thread, or a tailor for £38. */
const asked = (reckoning: Partial<Reckoned>, over: Partial<Judged> = {}): Judged => ({
  ...trousersJudged,
  ...over,
  reckoning: { ...trousersReckoning, ...reckoning }
})
const costed = (judged: Judged) => costOf(judged, words)
const unpriced = (plan: Plan): Plan => ({ ...plan, cost: null })
const inDollars = { price: { amount: 24, currency: 'USD' } }
const unknownHour = { worth: null, plans: [unpriced(leastWork), unpriced(closestFit), tailorPlan] }

describe('where all of it is known', () => {
  const sum = (spend: number) => ({ spend, against: null, upTo: null, risk: null })
  it('money and time stand apart, with what both come to and what it is worth to the person', () => {
    expect(costed(asked({}))).toEqual({ figure: '£24.00 + 1\u00a0h\u00a010', note: '£29.90 with your time counted; worth £55.00 to you' })
  })
  it('says nothing of a worth that is not told', () => {
    expect(costed(asked({ worth: sum(29.9) }))).toEqual({ figure: '£24.00 + 1\u00a0h\u00a010', note: '£29.90 with your time counted' })
  })
  it('with nothing to do is the price, and with mending what that adds', () => {
    expect(costed(asked({ ...wearsAsIs, worth: sum(24) }))).toEqual({ figure: '£24.00', note: '' })
    expect(costed(asked({ ...wearsAsIs, worth: sum(27.5) }))).toEqual({ figure: '£24.00', note: '£27.50 with your time counted' })
  })
  it('of another plan than the advised one is that plan’s own work, and no sum of the advised one', () => {
    expect(costed(asked({}, { aim: 'closest-fit' }))).toEqual({ figure: '£24.00 + 1\u00a0h\u00a040', note: '' })
    expect(costed(asked({}, { aim: 'tailor' }))).toEqual({ figure: '£24.00 + £38.00', note: 'Price and tailor' })
  })
})

describe('where an hour’s worth is not known', () => {
  it('is the price and the time, in their own measures', () => {
    expect(costed(asked(unknownHour))).toEqual({ figure: '£24.00 + 1\u00a0h\u00a010', note: '' })
  })
  it('has the postage in the price', () => {
    expect(costed(asked(unknownHour, { money: { price: 20, postage: 3.5, worth: null } })).figure).toBe('£23.50 + 1\u00a0h\u00a010')
  })
  it('has the postage beside a price that the page tells', () => {
    expect(costed(asked(unknownHour, { money: { price: null, postage: 3.5, worth: null } })).figure).toBe('£27.50 + 1\u00a0h\u00a010')
  })
})

describe('where there is no price', () => {
  const none = { price: null }
  it('says so where nothing is to be done', () => {
    expect(costed(asked({ ...wearsAsIs, worth: null }, none))).toEqual({ figure: 'No price given', note: '' })
  })
  it('names the place of the price beside the work', () => {
    expect(costed(asked(unknownHour, none)).figure).toBe('Price + 1\u00a0h\u00a010')
    expect(costed(asked({ worth: null }, none)).figure).toBe('Price + 1\u00a0h\u00a010')
  })
  it('takes a price that the person typed', () => {
    const money = { price: 18, postage: null, worth: null }
    expect(costed(asked(unknownHour, { ...none, money })).figure).toBe('£18.00 + 1\u00a0h\u00a010')
  })
})

describe('where the price is in another currency', () => {
  it('says it in that currency, and that it is not counted: no postage of one’s own is added to it', () => {
    const judged = asked(unknownHour, { ...inDollars, money: { price: null, postage: 3.5, worth: null } })
    const { figure, note } = costed(judged)
    expect(figure).toMatch(/^(US)?\$24\.00 \+ 1\u00a0h\u00a010$/)
    expect(note).toBe('Not in your currency')
  })
  it('is never summed, even where a sum of one’s own is there', () => {
    const { figure, note } = costed(asked({}, inDollars))
    expect(`${figure} ${note}`).not.toContain('29.90')
  })
  it('counts what the person typed in their own instead', () => {
    const judged = asked(unknownHour, { ...inDollars, money: { price: 19, postage: null, worth: null } })
    expect(costed(judged)).toEqual({ figure: '£19.00 + 1\u00a0h\u00a010', note: '' })
  })
  it('a price without a currency is the person’s own', () => {
    expect(costed(asked(unknownHour, { price: { amount: 24, currency: '' } })).figure).toBe('£24.00 + 1\u00a0h\u00a010')
  })
})

describe('by a tailor', () => {
  const byTailor = (plan: Plan) => ({ verdict: 'needs-a-tailor' as const, worth: null, plans: [plan] })
  it('with a price is price and price where no sum is known', () => {
    expect(costed(asked(byTailor(tailorPlan)))).toEqual({ figure: '£24.00 + £38.00', note: 'Price and tailor' })
  })
  it('is one sum where it is known, for both are paid, with its parts', () => {
    const worth = { spend: 62, against: 80, upTo: null, risk: null }
    expect(costed(asked({ ...byTailor(tailorPlan), worth }))).toEqual({
      figure: '£62.00',
      note: '£24.00 + £38.00 tailor; worth £80.00 to you'
    })
  })
  it('without a price says whose work it is, and nothing of one’s own time', () => {
    expect(costed(asked(byTailor(unpriced(tailorPlan))))).toEqual({
      figure: '£24.00 + the tailor',
      note: 'Tailor’s price not entered',
      isUnpriced: true
    })
    expect(costed(asked(byTailor(unpriced(tailorPlan)), { price: null })).figure).toBe('Price + the tailor')
  })
})

describe('what is to be left', () => {
  it('shows the price alone: the work of no plan is counted, though a sum with it is known', () => {
    expect(leaveIt.worth?.spend).toBe(44)
    expect(costed(asked(leaveIt))).toEqual({ figure: '£24.00', note: '' })
    expect(costed(asked(leaveIt, { money: { price: 20, postage: 4, worth: 60 } }))).toEqual({ figure: '£24.00', note: '' })
    expect(costed(asked(leaveIt, { price: null })).figure).toBe('No price given')
  })
})

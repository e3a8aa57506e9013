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
  it('is one sum, beside what it is worth to the person', () => {
    expect(costed(asked({}))).toEqual({ figure: '£29.90', note: 'Worth £55.00 to you' })
  })
  it('is one sum alone where what it is worth is not told', () => {
    const worth = { spend: 29.9, against: null, upTo: null, risk: null }
    expect(costed(asked({ worth }))).toEqual({ figure: '£29.90', note: '' })
  })
  it('with nothing to do is the sum without work', () => {
    expect(costed(asked({ ...wearsAsIs, worth: { spend: 27.5, against: null, upTo: null, risk: null } }))).toEqual({
      figure: '£27.50',
      note: ''
    })
  })
  it('of another plan than the advised one is that plan’s own work, beside the price', () => {
    expect(costed(asked({}, { aim: 'closest-fit' })).figure).toBe('£24.00 + £2.00')
    expect(costed(asked({}, { aim: 'tailor' }))).toEqual({ figure: '£24.00 + £38.00', note: '' })
  })
})

describe('where an hour’s worth is not known', () => {
  it('is the price and the time, in their own measures', () => {
    expect(costed(asked(unknownHour))).toEqual({ figure: '£24.00 + 1 h 10', note: 'Price and your time' })
  })
  it('has the postage in the price', () => {
    expect(costed(asked(unknownHour, { money: { price: 20, postage: 3.5, worth: null } })).figure).toBe('£23.50 + 1 h 10')
  })
  it('has the postage beside a price that the page tells', () => {
    expect(costed(asked(unknownHour, { money: { price: null, postage: 3.5, worth: null } })).figure).toBe('£27.50 + 1 h 10')
  })
})

describe('where there is no price', () => {
  const none = { price: null }
  it('says so where nothing is to be done', () => {
    expect(costed(asked({ ...wearsAsIs, worth: null }, none))).toEqual({ figure: 'No price given', note: '' })
  })
  it('names the place of the price beside the work', () => {
    expect(costed(asked(unknownHour, none)).figure).toBe('Price + 1 h 10')
    expect(costed(asked({ worth: null }, none)).figure).toBe('Price + £1.00')
  })
  it('takes a price that the person typed', () => {
    const money = { price: 18, postage: null, worth: null }
    expect(costed(asked(unknownHour, { ...none, money })).figure).toBe('£18.00 + 1 h 10')
  })
})

describe('where the price is in another currency', () => {
  it('says it in that currency, and that it is not counted: no postage of one’s own is added to it', () => {
    const judged = asked(unknownHour, { ...inDollars, money: { price: null, postage: 3.5, worth: null } })
    const { figure, note } = costed(judged)
    expect(figure).toMatch(/^(US)?\$24\.00 \+ 1 h 10$/)
    expect(note).toBe('In another currency; not counted')
  })
  it('is never summed, even where a sum of one’s own is there', () => {
    expect(costed(asked({}, inDollars)).figure).not.toContain('29.90')
  })
  it('counts what the person typed in their own instead', () => {
    const judged = asked(unknownHour, { ...inDollars, money: { price: 19, postage: null, worth: null } })
    expect(costed(judged)).toEqual({ figure: '£19.00 + 1 h 10', note: 'Price and your time' })
  })
  it('a price without a currency is the person’s own', () => {
    expect(costed(asked(unknownHour, { price: { amount: 24, currency: '' } })).figure).toBe('£24.00 + 1 h 10')
  })
})

describe('by a tailor', () => {
  const byTailor = (plan: Plan) => ({ verdict: 'needs-a-tailor' as const, worth: null, plans: [plan] })
  it('with a price is price and price', () => {
    expect(costed(asked(byTailor(tailorPlan)))).toEqual({ figure: '£24.00 + £38.00', note: '' })
  })
  it('without a price says whose work it is, and nothing of one’s own time', () => {
    expect(costed(asked(byTailor(unpriced(tailorPlan))))).toEqual({ figure: '£24.00 + the tailor', note: '' })
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

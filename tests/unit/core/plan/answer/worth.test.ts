import { describe, expect, it } from 'vitest'
import type { GarmentInput } from '../../../../../core/garment/garment-input.ts'
import { mendingCost, payingAt, stakesOf, worthOf } from '../../../../../core/plan/answer/worth.ts'
import type { Means } from '../../../../../core/plan/means.ts'
import { reckon } from '../../../../../core/reckon.ts'
import type { Wearer } from '../../../../../core/wearer/wearer.ts'

const wearer: Wearer = { fit: 'regular', body: { waistbandGirth: { mm: 800 }, hipGirth: { mm: 980 }, thighGirth: { mm: 580 } } }
const trousers = (waist: number, more: Partial<GarmentInput> = {}): GarmentInput => ({
  kind: 'trousers',
  measures: [
    { point: 'waist', mm: waist, source: 'own' },
    { point: 'hip', mm: 1040, source: 'own' },
    { point: 'thigh', mm: 628, source: 'own' }
  ],
  price: { amount: 20, postage: 4 },
  ...more
})
const means: Means = { level: 3, tailor: false, hourWorth: 12, garmentWorth: 60 }

describe('worth', () => {
  it('price, postage, notions and own hours against what it is worth, and the price at which it would break even', () => {
    const reckoning = reckon({ garment: trousers(895), wearer, means: { ...means, notions: { 'waist-in-centre-back': 1 } } })
    const minutes = reckoning.plans[0]?.minutes ?? 0
    expect(minutes).toBeGreaterThan(30)
    const cost = 1 + (minutes / 60) * 12
    expect(reckoning.plans[0]?.cost).toBeCloseTo(cost, 9)
    expect(reckoning.worth?.spend).toBeCloseTo(24 + cost, 9)
    expect(reckoning.worth).toMatchObject({ against: 60 })
    expect(reckoning.worth?.upTo).toBeCloseTo(60 - 4 - cost, 9)
  })
  it('one’s own pace multiplies the minutes', () => {
    const usual = reckon({ garment: trousers(895), wearer, means }).plans[0]?.minutes ?? 0
    const slow = reckon({ garment: trousers(895), wearer, means: { ...means, pace: 2 } }).plans[0]?.minutes ?? 0
    // both are whole minutes
    expect(Math.abs(slow - usual * 2)).toBeLessThanOrEqual(1)
  })
  it('a missing price is said, never guessed', () => {
    const { hourWorth: _, ...free } = means
    const reckoning = reckon({ garment: trousers(895), wearer, means: free })
    expect(reckoning.plans[0]?.cost).toBeNull()
    expect(reckoning.worth).toBeNull()
    expect(reckoning.because.map(({ code }) => code)).toContain('worth.hour-missing')
  })
  it('mending reaches minutes, cost and worth, also where nothing is altered', () => {
    const condition: GarmentInput['condition'] = [{ job: 'replace-button', minutes: 30, cost: 2 }]
    const altered = reckon({ garment: trousers(895, { condition }), wearer, means }).plans[0]
    const plain = reckon({ garment: trousers(895), wearer, means }).plans[0]
    expect((altered?.minutes ?? 0) - (plain?.minutes ?? 0)).toBe(30)
    expect((altered?.cost ?? 0) - (plain?.cost ?? 0)).toBeCloseTo(2 + 6, 9)
    const asItIs = reckon({ garment: trousers(820, { condition }), wearer, means })
    expect(asItIs.verdict).toBe('wears-as-is')
    expect(asItIs.worth?.spend).toBeCloseTo(24 + 8, 9)
    expect(asItIs.because.map(({ code }) => code)).toContain('verdict.mending')
  })
  it('a tailor’s plan costs the tailor’s prices', () => {
    const request = {
      garment: trousers(895),
      wearer,
      means: { level: 1 as const, tailor: true, garmentWorth: 60, tailorPrices: { 'waist-in-centre-back': 15 } },
      limits: { 'waist-in-elastic': 0 }
    }
    const reckoning = reckon(request)
    expect(reckoning.verdict).toBe('needs-a-tailor')
    const others = reckoning.plans[0]?.alterations.filter(({ id }) => id !== 'waist-in-centre-back') ?? []
    expect(others).toEqual([])
    expect(reckoning.plans[0]?.cost).toBe(15)
    expect(reckoning.worth?.spend).toBe(39)
  })
})

describe('in figures alone', () => {
  const [plain, rich] = [{ level: 3, tailor: false } as Means, means]
  it.each<[string, Parameters<typeof worthOf>, ReturnType<typeof worthOf>]>([
    ['no price', [undefined, 8, rich, 0.5], null],
    ['work without a price', [{ amount: 20 }, null, rich, 0.5], null],
    ['nothing told of its worth', [{ amount: 20, postage: 4 }, 8, plain, 0.5], { spend: 32, against: null, upTo: null, risk: null }],
    // 60 − 8 − 4 to break even; of 52 half, less the postage
    ['at one chance in two', [{ amount: 20, postage: 4 }, 8, rich, 0.5], { spend: 32, against: 60, upTo: 48, risk: 22 }],
    ['without a chance', [{ amount: 20 }, 8, rich, null], { spend: 28, against: 60, upTo: 52, risk: null }],
    ['work that costs more than it is worth', [{ amount: 20, postage: 4 }, 70, rich, 0.5], { spend: 94, against: 60, upTo: 0, risk: 0 }],
    // nothing to be done, 0.5, or an hour's work at 12, 0.75: 30 + 0.25 × 48 − 4
    [
      'or altered where it turns out not to be right',
      [{ amount: 20, postage: 4 }, 0, rich, 0.5, 0.75],
      { spend: 24, against: 60, upTo: 56, risk: 38, riskOrAltered: true }
    ],
    ['altering that makes it no likelier', [{ amount: 20 }, 0, rich, 0.5, 0.5], { spend: 20, against: 60, upTo: 60, risk: 30 }],
    ['altering less likely than nothing', [{ amount: 20 }, 0, rich, 0.5, 0.25], { spend: 20, against: 60, upTo: 60, risk: 30 }],
    [
      'an hour of no known worth',
      [{ amount: 20 }, 0, { ...plain, garmentWorth: 60 }, 0.5, 0.75],
      { spend: 20, against: 60, upTo: 60, risk: 30 }
    ],
    ['an hour worth more than it', [{ amount: 1 }, 0, { ...rich, hourWorth: 80 }, 0.5, 0.75], { spend: 1, against: 60, upTo: 60, risk: 30 }]
  ])('%s', (_, given, worth) => expect(worthOf(...given)).toEqual(worth))

  it('what would pay at another chance', () => {
    const worth = { spend: 32, against: 60, upTo: 48, risk: null }
    expect(payingAt(worth, 4, 0.5)).toBe(22)
    expect(payingAt(worth, 4, 0.05)).toBe(0)
    expect(payingAt({ ...worth, upTo: null }, 4, 0.5)).toBeNull()
  })

  it('what is at stake: what is gained where it works out, price and postage where not; a plain score where money is not known', () => {
    const worth = { spend: 32, against: 60, upTo: 48, risk: null }
    const score = { gain: 1, loss: 1, unit: 'score' }
    expect(stakesOf({ amount: 20, postage: 4 }, worth)).toEqual({ gain: 28, loss: 24, unit: 'money' })
    expect(stakesOf({ amount: 20 }, { ...worth, spend: 90 })).toEqual({ gain: 0, loss: 20, unit: 'money' })
    expect(stakesOf(undefined, worth)).toEqual(score)
    expect(stakesOf({ amount: 20 }, null)).toEqual(score)
    expect(stakesOf({ amount: 20 }, { ...worth, against: null })).toEqual(score)
  })

  it('mending: what is bought and the hours; without an hour’s worth only where it takes no time', () => {
    const mended = (minutes: number, cost: number, its: Means) =>
      mendingCost(trousers(895, { condition: [{ job: 'replace-button', minutes, cost }] }), its)
    expect(mended(30, 2, rich)).toBe(8)
    expect(mended(30, 2, plain)).toBeNull()
    expect(mended(0, 2, plain)).toBe(2)
    expect(mendingCost(trousers(895), plain)).toBe(0)
  })
})

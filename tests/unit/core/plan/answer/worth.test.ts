import { describe, expect, it } from 'vitest'
import type { GarmentInput } from '../../../../../core/garment/garment-input.ts'
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

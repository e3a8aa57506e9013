import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../core/garment/garment-input.ts'
import { updated } from '../../../core/wearer/diary.ts'
import { targetFor } from '../../../core/wearer/target.ts'
import type { Wearer } from '../../../core/wearer/wearer.ts'

describe('the normal–normal update', () => {
  // A. Gelman et al., Bayesian Data Analysis, section 2.5 (from memory): with n observations of mean y and variance σ², prior N(μ0, τ0²),
  // the posterior mean is (μ0/τ0² + n·y/σ²)/(1/τ0² + n/σ²) and its variance 1/(1/τ0² + n/σ²)
  it.each([
    { mu: 100, tau: 15, sigma: 10, seen: [110] },
    { mu: 180, tau: 40, sigma: 20, seen: [150, 150, 150, 150, 150, 150, 150, 150, 150, 150] },
    { mu: 19, tau: 20, sigma: 8, seen: [30, 26, 34] }
  ])('prior $mu ± $tau, seen $seen', ({ mu, tau, sigma, seen }) => {
    const after = updated(
      { mm: mu, sdMm: tau },
      seen.map((mm) => ({ mm, sdMm: sigma }))
    )
    const mean = seen.reduce((sum, one) => sum + one, 0) / seen.length
    const precision = 1 / tau ** 2 + seen.length / sigma ** 2
    expect(after.mm).toBeCloseTo((mu / tau ** 2 + (seen.length * mean) / sigma ** 2) / precision, 9)
    expect(after.sdMm).toBeCloseTo(Math.sqrt(1 / precision), 9)
  })
})

describe('a garment that was tried on', () => {
  const wearer: Wearer = { fit: 'regular', body: { waistbandGirth: { mm: 800 }, hipGirth: { mm: 980 } } }
  const trousers: GarmentInput = {
    kind: 'trousers',
    measures: [
      { point: 'waist', mm: 850, source: 'own' },
      { point: 'hip', mm: 1040, source: 'own' }
    ]
  }
  const waist = (tried?: Parameters<typeof targetFor>[3]) => targetFor(garmentAsWorn(trousers), wearer, undefined, tried).get('waist')
  it('as much to pinch as the table says changes little', () => {
    expect(Math.abs((waist([{ point: 'waist', spareMm: 31 }])?.ideal ?? 0) - (waist()?.ideal ?? 0))).toBeLessThan(0.01)
  })
  it('nothing to pinch: the ideal comes up to the garment', () => {
    const after = waist([{ point: 'waist', spareMm: 0 }])
    expect(after?.ideal).toBeGreaterThan((waist()?.ideal ?? 0) + 15)
    expect(after?.ideal).toBeLessThan(850)
    expect(after?.because.map(({ code }) => code)).toContain('target.tried')
  })
  it('it would not close: the least comes up too', () => {
    expect(waist([{ point: 'waist', shortMm: 20 }])?.least).toBeGreaterThan(waist()?.least ?? 0)
  })
})

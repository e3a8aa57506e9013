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
  // X and Y independent normal, Z = X − Y + e: the posterior of X − Y given Z (multivariate normal conditioning, any textbook; here by its 2 × 2 form)
  it.each([
    { spare: [0], sd: 8 },
    { spare: [45], sd: 8 },
    { spare: [10, 22, 16], sd: 6 }
  ])('felt $spare: what is apart is the joint normal of garment and ideal, conditioned', ({ spare, sd }) => {
    const [garmentSd, idealSd] = [5, 20]
    const before = waist()?.ideal ?? 0
    // covariance of (garment, ideal) with the mean of what was felt
    const gain = [garmentSd ** 2, -(idealSd ** 2)].map((c) => c / (garmentSd ** 2 + idealSd ** 2 + sd ** 2 / spare.length))
    const surprise = spare.reduce((sum, one) => sum + one, 0) / spare.length - (850 - before)
    const [garment, ideal] = [850 + (gain[0] ?? 0) * surprise, before + (gain[1] ?? 0) * surprise]
    const after = waist(spare.map((spareMm) => ({ point: 'waist' as const, spareMm, sdMm: sd })))?.ideal ?? 0
    expect(850 - after).toBeCloseTo(garment - ideal, 9)
  })
  it('the order of what was felt changes nothing', () => {
    const felt = [
      { point: 'waist' as const, spareMm: 12 },
      { point: 'hip' as const, shortMm: 8 },
      { point: 'waist' as const, spareMm: 30, sdMm: 4 }
    ]
    const both = (tried: typeof felt | Parameters<typeof targetFor>[3]) => {
      const target = targetFor(garmentAsWorn(trousers), wearer, undefined, tried)
      return [target.get('waist')?.ideal ?? 0, target.get('hip')?.ideal ?? 0]
    }
    const turned = both([...felt].reverse())
    for (const [place, mm] of both(felt).entries()) expect(mm).toBeCloseTo(turned[place] ?? 0, 9)
  })
  it('it would not close: the least comes up too', () => {
    expect(waist([{ point: 'waist', shortMm: 20 }])?.least).toBeGreaterThan(waist()?.least ?? 0)
  })
})

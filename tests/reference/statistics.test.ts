/**
 * The statistics of the outlook against the outside: the normal quantile against a general statistics library (jstat, MIT); the value of
 * knowing one normal variable against its closed form, the unit normal loss (Raiffa and Schlaifer, Applied Statistical Decision Theory,
 * 1961; from memory); body measures worked out against bands of the ANSUR II survey itself (the same survey that the lines came from: a
 * check of the lines, not of the world).
 */
import jstat from 'jstat'
import { describe, expect, it } from 'vitest'
import { valueOfKnowing } from '../../core/plan/ask/ask.ts'
import { DRAWS, heavyTailed, normalDraws, normalQuantile } from '../../core/plan/outlook/draws.ts'
import { wholeBody } from '../../core/wearer/whole-body.ts'
import { CONDITIONAL_BANDS } from './ansur-bands.ts'

describe('the normal quantile', () => {
  it('agrees with a general library within 1e-8 over all of (0, 1)', () => {
    let worst = 0
    for (let i = 1; i < 20_000; i++) worst = Math.max(worst, Math.abs(normalQuantile(i / 20_000) - jstat.normal.inv(i / 20_000, 0, 1)))
    expect(worst).toBeLessThan(1e-8)
  })
  it('the heavy-tailed draw agrees with Student’s t of 5 degrees of freedom, scaled to an sd of one, within 0.03 of an sd up to 2.5 sd', () => {
    for (let i = 1; i < 200; i++) {
      const z = jstat.normal.inv(i / 200, 0, 1)
      if (Math.abs(z) > 2.5) continue
      expect(Math.abs(heavyTailed(z) - jstat.studentt.inv(i / 200, 5) * Math.sqrt(3 / 5))).toBeLessThan(0.03)
    }
  })
  it('every dimension of the draws has mean 0, sd 1, and one draw in each share', () => {
    for (const z of normalDraws()) {
      const mean = z.reduce((sum, one) => sum + one, 0) / DRAWS
      const sd = Math.sqrt(z.reduce((sum, one) => sum + (one - mean) ** 2, 0) / DRAWS)
      expect(Math.abs(mean)).toBeLessThan(1e-9)
      expect(Math.abs(sd - 1)).toBeLessThan(0.01)
      const shares = [...z].map((one) => Math.floor(jstat.normal.cdf(one, 0, 1) * DRAWS)).sort((one, other) => one - other)
      expect(shares).toEqual(Array.from({ length: DRAWS }, (_, i) => i))
    }
  })
  it('no two dimensions go together: correlations under 0.05', () => {
    const all = normalDraws()
    for (let i = 0; i < all.length; i++) {
      for (let j = 0; j < i; j++) {
        const correlation = (all[i] ?? new Float64Array()).reduce((sum, one, k) => sum + one * (all[j]?.[k] ?? 0), 0) / DRAWS
        expect(Math.abs(correlation), `dimensions ${j} and ${i}`).toBeLessThan(0.05)
      }
    }
  })
})

describe('the value of knowing', () => {
  // buy: worth a + b·z, leave: 0. Knowing z is worth b·L(|a|/b) with L(u) = φ(u) − u(1 − Φ(u))
  const closed = (a: number, b: number): number => {
    const u = Math.abs(a) / b
    return b * (jstat.normal.pdf(u, 0, 1) - u * (1 - jstat.normal.cdf(u, 0, 1)))
  }
  it.each([
    [0, 10],
    [5, 10],
    [-5, 10],
    [15, 10],
    [-20, 10]
  ])('buying worth %d + %d·z', (a, b) => {
    const z = normalDraws()[3] ?? new Float64Array(DRAWS)
    const value = valueOfKnowing(
      z,
      [...z].map((one) => a + b * one)
    )
    expect(Math.abs(value - closed(a, b))).toBeLessThan(0.04 * b)
  })
  it('knowing what does not matter is worth next to nothing', () => {
    const [z, other] = [normalDraws()[3] ?? new Float64Array(DRAWS), normalDraws()[10] ?? new Float64Array(DRAWS)]
    expect(
      valueOfKnowing(
        other,
        [...z].map((one) => 3 + 10 * one)
      )
    ).toBeLessThan(0.05 * 10)
  })
})

describe('body measures worked out, against bands of ANSUR II', () => {
  it('p5, p50 and p95, pooled over the bands and weighted by their size, lie within 10 mm', () => {
    const pooled: Record<'p5' | 'p50' | 'p95', { sum: number; weight: number }> = {
      p5: { sum: 0, weight: 0 },
      p50: { sum: 0, weight: 0 },
      p95: { sum: 0, weight: 0 }
    }
    for (const band of CONDITIONAL_BANDS) {
      const taken = wholeBody({ [band.given]: { mm: band.centre } }).get(band.measure)
      if (taken === undefined) throw new Error(`nothing worked out for ${band.measure} from ${band.given}`)
      for (const [name, z] of [
        ['p5', -1.6449],
        ['p50', 0],
        ['p95', 1.6449]
      ] as const) {
        pooled[name].sum += band.n * (taken.mm + z * taken.sdMm - band[name])
        pooled[name].weight += band.n
      }
    }
    const off = Object.fromEntries(Object.entries(pooled).map(([name, { sum, weight }]) => [name, sum / weight]))
    console.info(`ANSUR II bands: mean distance ${JSON.stringify(off)} mm over ${CONDITIONAL_BANDS.length} bands`)
    for (const mm of Object.values(off)) expect(Math.abs(mm)).toBeLessThan(10)
  })
})

describe('hip from waist, against NHANES 2017–2020', () => {
  // means of the public summary (US adults, body measures files), mm: another population than the survey the lines came from
  it.each([
    ['women', 985, 1092],
    ['men', 1018, 1045]
  ])('%s: a waist of %d goes with a hip of %d, within the sd that is claimed', (_who, waist, hip) => {
    // its waist is taken over the top of the hip bone, where trousers are worn
    const taken = wholeBody({ waistbandGirth: { mm: waist } }).get('hipGirth')
    expect(taken?.basedOn).toEqual(['waistbandGirth'])
    expect(Math.abs((taken?.mm ?? 0) - hip)).toBeLessThan(taken?.sdMm ?? 0)
  })
})

/** Lower bounds on misfit: as high as the least misfit where no rivals stand against each other, and never higher anywhere. */
import { describe, expect, it } from 'vitest'
import type { Option } from '../../../../../core/alterations/row.ts'
import type { PointId } from '../../../../../core/ids/points.ts'
import { Feasibility } from '../../../../../core/plan/outlook/feasibility.ts'
import { dualBoundFor, type Figures, misfitLowerBound } from '../../../../../core/plan/solve/dual-bound.ts'
import { randomFrom } from '../../../../law/requests.ts'
import { line, option } from '../options.ts'

const POINTS: PointId[] = ['waist', 'chest']
const figures = (waist: number, chest: number): Figures => ({
  at: Float64Array.of(waist, chest),
  least: Float64Array.of(800, 900),
  most: Float64Array.of(850, 960)
})
const boundAt = (options: readonly Option[], here: Figures, found: Figures = here): number =>
  misfitLowerBound(dualBoundFor(POINTS, options, found), POINTS, options, here)

describe('a lower bound on misfit', () => {
  it('is what stays wrong when everything is taken in as far as it goes', () => {
    // 900 − 850 = 50 too big, and darts hold 30
    expect(boundAt([option('back-darts', [line({ waist: -1 }, 30)])], figures(900, 930))).toBeCloseTo(20, 6)
  })
  it('counts what helps one point and hurts another', () => {
    // sides take from both; the chest has 30 to give before it is too small, and past that every mm helps one and hurts the other
    const sides = option('sides-in', [line({ waist: -1, chest: -1 }, 100)])
    expect(boundAt([sides], figures(910, 930))).toBeCloseTo(30, 6)
  })
  it('keeps to a limit that is shared', () => {
    const shared = [{ group: 'pocket-gap', shares: [1], budgetMm: 25, because: { code: 'limit.sides', values: {} } }]
    const two = [
      option('back-darts', [line({ waist: -1 }, 30)], { shared }),
      option('waist-in-centre-back', [line({ waist: -1 }, 30)], { shared })
    ]
    expect(boundAt(two, figures(900, 930))).toBeCloseTo(25, 6)
  })
  it('keeps to smoothness: a chest that has nothing to give lets the waist have 60', () => {
    const sides = option('sides-in', [line({ chest: -1 }, 100), line({ waist: -1 }, 100)])
    expect(boundAt([sides], figures(930, 900))).toBeCloseTo(20, 6)
  })
  it('found at one draw it holds at any other where lines keep to smoothness, too (seed 43)', () => {
    const random = randomFrom(43)
    let tight = 0
    for (let i = 0; i < 300; i++) {
      const drawn = () => figures(825 + 400 * (random() - 0.5), 930 + 400 * (random() - 0.5))
      const [found, here] = [drawn(), drawn()]
      const caps = [40 + 160 * random(), 40 + 160 * random()] as const
      const options = [option('sides-in', [line({ chest: -1 }, caps[0]), line({ waist: -1 }, caps[1])], { smoothMm: 20 + 60 * random() })]
      const bound = misfitLowerBound(dualBoundFor(POINTS, options, found), POINTS, options, here)
      const least = new Feasibility(POINTS, options, 1e9).leastMisfit(here)
      expect(bound, `${i}`).toBeLessThanOrEqual(least + 1e-5)
      if (least > 1 && Math.abs(bound - least) < 1e-5) tight++
    }
    expect(tight).toBeGreaterThan(20)
  })
  it('found at one draw it holds at any other, and for other caps: never more than the least misfit (seed 41)', () => {
    const random = randomFrom(41)
    const made = (cap: number) => [
      option('sides-in', [line({ waist: -1, chest: -1 }, cap)]),
      option('back-darts', [line({ waist: -1 }, cap / 2)]),
      option('side-panels', [line({ waist: 1, chest: 1 }, cap)])
    ]
    let tight = 0
    for (let i = 0; i < 300; i++) {
      const drawn = () => figures(825 + 400 * (random() - 0.5), 930 + 400 * (random() - 0.5))
      const [found, here] = [drawn(), drawn()]
      const options = made(20 + 60 * random())
      const bound = misfitLowerBound(dualBoundFor(POINTS, made(40), found), POINTS, options, here)
      const least = new Feasibility(POINTS, options, 1e9).leastMisfit(here)
      expect(bound, `${i}`).toBeLessThanOrEqual(least + 1e-5)
      if (least > 1 && Math.abs(bound - least) < 1e-5) tight++
    }
    expect(tight).toBeGreaterThan(20)
  })
})

/** The least misfit of one part, and what is kept of it from draw to draw and from make to make. */
import { describe, expect, it } from 'vitest'
import type { PointId } from '../../../../../core/ids/points.ts'
import { Feasibility, FeasibilityCache } from '../../../../../core/plan/outlook/feasibility.ts'
import type { Figures } from '../../../../../core/plan/solve/dual-bound.ts'
import { line, option } from '../options.ts'

const POINTS: PointId[] = ['waist', 'chest']
const figures = (waist: number, chest: number): Figures => ({
  at: Float64Array.of(waist, chest),
  least: Float64Array.of(800, 900),
  most: Float64Array.of(850, 960)
})
const make = (capMm: number) => [
  option('sides-in', [line({ waist: -1, chest: -1 }, capMm)]),
  option('back-darts', [line({ waist: -1 }, capMm / 2)])
]

describe('the least misfit', () => {
  it('of doing nothing where nothing is over', () => {
    const one = new Feasibility(POINTS, make(40), 2)
    expect([one.misfitKnown(figures(830, 930)), one.leastMisfit(figures(830, 930))]).toEqual([0, 0])
  })
  it('of the best amounts', () => {
    expect(new Feasibility(POINTS, make(40), 2).leastMisfit(figures(900, 930))).toBe(0)
    // 65 too big: 40 by the sides, of which the chest has 30 to give, and 20 by darts: 15 stay, more than a mark but a figure all the same
    expect(new Feasibility(POINTS, make(40), 20).leastMisfit(figures(915, 930))).toBeCloseTo(15, 4)
  })
  it('of one of two rivals, never of both', () => {
    const rivals = make(40).map((one) => ({ ...one, excludes: ['sides-in' as const, 'back-darts' as const] }))
    // 50 too big, and the sides give 40 alone
    expect(new Feasibility(POINTS, rivals, 20).leastMisfit(figures(900, 960))).toBeCloseTo(10, 4)
  })
  it('of a point alone without any solve: what stays past all that its options move', () => {
    const alone = new Feasibility(['waist'], [option('back-darts', [line({ waist: -1 }, 30)])], 2)
    const at = (mm: number): Figures => ({ at: Float64Array.of(mm), least: Float64Array.of(800), most: Float64Array.of(850) })
    expect(alone.leastMisfit(at(900))).toBe(20)
    expect(alone.leastMisfit(at(780))).toBe(20)
    expect(alone.leastMisfit(at(875))).toBe(0)
  })
})

describe('what is kept', () => {
  it('a plan that fitted once is known at the next draw', () => {
    const cache = new FeasibilityCache()
    const one = new Feasibility(POINTS, make(40), 2, cache)
    expect(one.misfitKnown(figures(890, 930))).toBe(40)
    one.leastMisfit(figures(895, 930))
    expect(cache.plans).toHaveLength(1)
    expect(one.misfitKnown(figures(890, 930))).toBe(0)
  })
  it('another make knows it only where its limits allow it', () => {
    const cache = new FeasibilityCache()
    new Feasibility(POINTS, make(60), 2, cache).leastMisfit(figures(905, 940))
    expect(new Feasibility(POINTS, make(60), 2, cache).misfitKnown(figures(905, 940))).toBe(0)
    expect(new Feasibility(POINTS, make(10), 2, cache).misfitKnown(figures(905, 940))).toBe(55)
    expect(new Feasibility(POINTS, [], 2, cache).misfitKnown(figures(905, 940))).toBe(55)
  })
  it('what rules one draw out rules out a worse one, and none that fits', () => {
    const cache = new FeasibilityCache()
    const one = new Feasibility(POINTS, make(40), 2, cache)
    expect(one.leastMisfit(figures(930, 930))).toBeGreaterThan(2)
    expect(cache.bounds).toHaveLength(1)
    expect(one.leastMisfit(figures(950, 920))).toBe(Number.POSITIVE_INFINITY)
    expect(cache.bounds).toHaveLength(1)
    expect(one.leastMisfit(figures(895, 930))).toBe(0)
  })
  it('a point past all reach needs no solve', () => {
    const one = new Feasibility(POINTS, make(40), 2)
    // 850 + 40 + 20 + a mark
    expect([one.outOfReach(figures(913, 930)), one.outOfReach(figures(911, 930)), one.outOfReach(figures(797, 930))]).toEqual([
      true,
      false,
      true
    ])
  })
})

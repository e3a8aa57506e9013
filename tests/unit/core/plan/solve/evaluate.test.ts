/** What given amounts come to, by hand. */
import { describe, expect, it } from 'vitest'
import { evaluate, isUsed, weighedMisfit } from '../../../../../core/plan/solve/evaluate.ts'
import type { Amounts, Problem } from '../../../../../core/plan/solve/problem.ts'
import { line, option } from '../options.ts'

const problem = (options: Problem['options'], more: Partial<Problem> = {}): Problem => ({
  aim: 'least-work',
  points: [{ point: 'waist', mm: 900, least: 800, ideal: 820, most: 845 }],
  options,
  markMm: 2,
  preparations: { waistband: 15, sides: 15, hem: 8, lining: 20, armhole: 25, cuff: 12, seat: 10, inseam: 8 },
  misfitWeight: 500,
  distanceWeight: 1 / 300,
  ...more
})
const holds = (options: Problem['options'], amounts: Amounts): boolean => evaluate(problem(options), amounts).holds

describe('the misfit of a point', () => {
  it.each([
    [0, 0],
    [10, 10],
    [15, 15],
    [20, 30],
    [-20, 30]
  ])('%d past its edge weighs %d', (mm, weighs) => expect(weighedMisfit(mm)).toBe(weighs))
})

describe('what amounts come to', () => {
  it('where each point ends, and how far that is from its edge and its ideal', () => {
    const one = problem([option('sides-in', [line({ waist: -1 }, 100)])])
    expect(evaluate(one, [[30]])).toMatchObject({ after: [870], misfit: 45, distance: 50 })
    expect(evaluate(one, [[80]])).toMatchObject({ after: [820], misfit: 0, distance: 0 })
  })
  it('burden: set-up and penalties, what is opened once, and half a minute a mm past a soft limit', () => {
    const soft = { ...line({ waist: -1 }, 100), softMm: 50 }
    const two = problem([
      option('sides-in', [soft], { setupMinutes: 20, penaltyMinutes: 5, opens: ['hem'] }),
      option('back-darts', [line({ waist: -1 }, 100)], { setupMinutes: 7, opens: ['hem', 'lining'] })
    ])
    expect(evaluate(two, [[60], [0]]).burden).toBe(20 + 5 + 8 + 10 * 0.5)
    expect(evaluate(two, [[40], [10]]).burden).toBe(20 + 5 + 7 + 8 + 20)
    expect(evaluate(two, [[0], [0]]).burden).toBe(0)
  })
  it('past where a tier begins it costs the tier’s minutes too', () => {
    const tier = { line: 0, beyondMm: 50, level: 4, minutes: 60, because: { code: 'limit.sides', values: {} } }
    const one = problem([option('sides-in', [line({ waist: -1 }, 100)], { tier })])
    expect(evaluate(one, [[50]]).burden).toBe(10)
    expect(evaluate(one, [[51]]).burden).toBe(70)
  })
})

describe('whether every limit holds', () => {
  it('a cap', () => {
    const one = [option('sides-in', [line({ waist: -1 }, 40)])]
    expect([holds(one, [[40]]), holds(one, [[41]])]).toEqual([true, false])
  })
  it('smoothness: neighbours along a line differ by 60 at most', () => {
    const one = [option('sides-in', [line({ chest: -1 }, 100), line({ waist: -1 }, 100)])]
    expect([holds(one, [[10, 70]]), holds(one, [[10, 71]])]).toEqual([true, false])
  })
  it('a fixed step is that step or nothing', () => {
    const one = [option('shoulder-pads', [line({ waist: -1 }, 10)], { fixedMm: 10 })]
    expect([holds(one, [[10]]), holds(one, [[0]]), holds(one, [[8]])]).toEqual([true, true, false])
  })
  it('a limit that two draw on together, each by its share; of two budgets the lesser', () => {
    const drawing = (budgetMm: number) => [{ group: 'pocket-gap', shares: [0.5], budgetMm, because: { code: 'limit.sides', values: {} } }]
    const two = [
      option('sides-in', [line({ waist: -1 }, 100)], { shared: drawing(30) }),
      option('back-darts', [line({ waist: -1 }, 100)], { shared: drawing(40) })
    ]
    expect([holds(two, [[30], [30]]), holds(two, [[40], [30]])]).toEqual([true, false])
  })
  it('rivals never go together', () => {
    const two = [
      option('sides-in', [line({ waist: -1 }, 100)], { excludes: ['back-darts'] }),
      option('back-darts', [line({ waist: -1 }, 100)])
    ]
    expect([holds(two, [[30], [0]]), holds(two, [[30], [30]])]).toEqual([true, false])
  })
  it('an amount of rounding is none', () => {
    expect([isUsed([1e-9]), isUsed([0, 2]), isUsed(undefined)]).toEqual([false, true, false])
  })
})

/** How far one point can be moved when it is the only one. */
import { describe, expect, it } from 'vitest'
import { singlePointReach } from '../../../../../core/plan/solve/single-point-reach.ts'
import { line, option } from '../options.ts'

describe('one point alone', () => {
  it('adds up what goes together and takes the best of rivals', () => {
    const a = option('sides-in', [line({ waist: -1 }, 30)], { excludes: ['back-darts'] })
    const b = option('back-darts', [line({ waist: -1 }, 50)])
    const c = option('bust-darts', [line({ waist: -0.5 }, 40)])
    expect(singlePointReach('waist', [a, b, c])).toEqual({ up: 0, down: 70 })
  })
  it('one that is worth less than its two rivals together gives way', () => {
    const middle = option('sides-in', [line({ waist: -1 }, 60)], { excludes: ['back-darts', 'bust-darts'] })
    const one = option('back-darts', [line({ waist: -1 }, 40)])
    const other = option('bust-darts', [line({ waist: -1 }, 45)])
    expect(singlePointReach('waist', [middle, one, other])).toEqual({ up: 0, down: 85 })
  })
  it('is not so simple with a fixed step or a limit that two share', () => {
    expect(singlePointReach('waist', [option('sides-in', [line({ waist: -1 }, 10)], { fixedMm: 10 })])).toBeUndefined()
    const shared = [{ group: 'pocket-gap', shares: [1], budgetMm: 20, because: { code: 'limit.sides', values: {} } }]
    const two = [option('sides-in', [line({ waist: -1 }, 30)], { shared }), option('back-darts', [line({ waist: -1 }, 30)], { shared })]
    expect(singlePointReach('waist', two)).toBeUndefined()
    expect(singlePointReach('waist', two.slice(0, 1))).toEqual({ up: 0, down: 20 })
  })
})

/** How much is wrong in all: points together, either way, and what is not judged left out. */
import { describe, expect, it } from 'vitest'
import { fits, isWrong, totalOf } from '../../../../core/plan/misfit.ts'
import type { Plan } from '../../../../core/plan/plan.ts'
import type { Gap } from '../../../../core/wearer/gaps.ts'

const plan = (...wrong: number[]) => ({ misfit: wrong.map((mm) => ({ point: 'waist', mm, because: '' })) }) as unknown as Plan
const gap = (gapMm: number, judged = true) => ({ point: 'waist', gapMm, judged }) as Gap

describe('what is wrong in all', () => {
  it('adds up, too big or too small', () => expect(totalOf([{ mm: 4 }, { mm: -3 }])).toBe(7))
  it.each([
    [[], true],
    [[2], true],
    [[-2], true],
    [[1.5, -0.5], true],
    [[1.5, -0.6], false],
    [[2.1], false],
    // as near as arithmetic comes
    [[2 + 5e-7], true]
  ])('a plan that leaves %j fits by a mark of 2: %s', (wrong, is) => expect(fits(plan(...wrong), 2)).toBe(is))
  it.each<[Gap[], boolean]>([
    [[gap(2)], false],
    [[gap(2.1)], true],
    [[gap(-2.1)], true],
    [[gap(1.5), gap(1.5)], true],
    [[gap(40, false)], false],
    [[gap(40, false), gap(1)], false]
  ])('gaps of %j are wrong: %s', (gaps, is) => expect(isWrong(gaps, 2)).toBe(is))
})

import { describe, expect, it } from 'vitest'
import { amountOf } from '../../../components/panel/money.tsx'
import { planColumns } from '../../../components/panel/plans.tsx'
import { closestFit, leastWork, tailorPlan } from './fixtures.ts'

describe('plans side by side', () => {
  it('stand in a column each when they differ', () => {
    expect(planColumns([leastWork, closestFit, tailorPlan]).map(({ aims }) => aims)).toEqual([['least-work'], ['closest-fit'], ['tailor']])
  })
  it('are shown once when they are the same work', () => {
    const same = { ...leastWork, aim: 'closest-fit' as const }
    expect(planColumns([leastWork, same]).map(({ aims }) => aims)).toEqual([['least-work', 'closest-fit']])
  })
  it('are told apart by whose hands do the same work', () => {
    expect(planColumns([closestFit, { ...closestFit, aim: 'tailor' }])).toHaveLength(2)
  })
})

describe('an amount of money as it is typed', () => {
  it.each([
    ['24', 24],
    ['24.90', 24.9],
    ['24,9', 24.9],
    [' 0 ', 0],
    ['', null],
    ['-4', undefined],
    ['£24', undefined],
    ['3..5', undefined],
    ['1e9', undefined]
  ])('%s', (typed, amount) => {
    expect(amountOf(typed)).toBe(amount)
  })
})

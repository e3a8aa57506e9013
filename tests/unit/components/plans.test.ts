import { describe, expect, it } from 'vitest'
import { chosenPlan } from '../../../components/judged.ts'
import { amountOf } from '../../../components/money-field.tsx'
import { planColumns } from '../../../components/panel/plans.tsx'
import { closestFit, leastWork, tailorPlan, trousersReckoning } from './fixtures.ts'

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
  it('of one aim are told apart: a rescue stands beside the plain plan, and one of them alone is chosen', () => {
    const rescue = {
      ...leastWork,
      alterations: leastWork.alterations.map((job) => ({ ...job, amountMm: job.amountMm + 5, amounts: {}, rescue: true }))
    }
    const plans = [rescue, leastWork, closestFit]
    expect(planColumns(plans).map(({ aims }) => aims)).toEqual([['rescue'], ['least-work'], ['closest-fit']])
    const reckoning = { ...trousersReckoning, plans }
    expect(chosenPlan({ reckoning, aim: null })).toBe(rescue)
    expect(chosenPlan({ reckoning, aim: 'least-work' })).toBe(leastWork)
    expect(chosenPlan({ reckoning, aim: 'rescue' })).toBe(rescue)
    // without a plan beside it a rescue is the least work there is
    expect(planColumns([rescue]).map(({ aims }) => aims)).toEqual([['least-work']])
  })
  it('of one aim without a rescue: the second has a job fewer', () => {
    const fewer = { ...leastWork, alterations: leastWork.alterations.slice(0, 1) }
    const reckoning = { ...trousersReckoning, plans: [leastWork, closestFit, fewer] }
    expect(planColumns(reckoning.plans).map(({ aims }) => aims)).toEqual([['least-work'], ['closest-fit'], ['fewer-jobs']])
    expect(chosenPlan({ reckoning, aim: 'fewer-jobs' })).toBe(fewer)
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

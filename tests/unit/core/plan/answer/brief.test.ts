/** An answer in short: whose plan is followed, and what of it is kept. */
import { describe, expect, it } from 'vitest'
import { briefOf, jobsIn, planFollowed, shownInRow } from '../../../../../core/plan/answer/brief.ts'
import type { Job, Plan } from '../../../../../core/plan/plan.ts'
import type { Reckoning, Verdict } from '../../../../../core/reckon.ts'

const job = (id: Job['id']): Job => ({ id }) as Job
const plan = (minutes: number, ...jobs: Job['id'][]): Plan => ({
  aim: 'least-work',
  alterations: jobs.map(job),
  after: [],
  misfit: [],
  chance: null,
  level: 3,
  minutes,
  cost: null
})
const [first, second] = [plan(90, 'waist-in-centre-back', 'leg-taper'), plan(40, 'leg-taper', 'leg-shorten-plain')]
const worth: Reckoning['worth'] = { spend: 12, against: null, upTo: null, risk: null }
const answer = (verdict: Verdict, plans: Plan[] = [first, second]) => ({ verdict, plans, chance: 0.4, chanceIf: 0.8, worth })

describe('the plan that is followed', () => {
  it.each([
    ['wears-as-is', first],
    ['alters-to-fit', first],
    ['needs-a-tailor', first],
    ['comes-close', first],
    ['leave-it', null],
    ['too-little-told', null]
  ] as const)('of %s', (verdict, followed) => {
    expect(planFollowed(answer(verdict))).toBe(followed)
    expect(planFollowed(answer(verdict, []))).toBeNull()
    expect(briefOf(answer(verdict))).toEqual({
      verdict,
      chance: 0.4,
      chanceIf: 0.8,
      minutes: followed === null ? 0 : 90,
      level: followed === null ? 0 : 3,
      spend: 12
    })
  })

  it('without money there is no spend', () => {
    expect(briefOf({ ...answer('comes-close'), worth: null, chance: null, chanceIf: null })).toMatchObject({
      spend: null,
      chance: null,
      chanceIf: null
    })
  })
})

it('every job of some plan stands once', () => {
  expect(jobsIn({ plans: [first, second] })).toEqual(['waist-in-centre-back', 'leg-taper', 'leg-shorten-plain'])
  expect(jobsIn({ plans: [] })).toEqual([])
})

it('a row shows the first plan, the first reason beside the condition, and bands without their reasons', () => {
  const said = (code: string) => ({ code, values: {}, text: code })
  const whole = {
    ...answer('comes-close'),
    conditions: [{ point: 'hip', least: null, most: 1020, chance: 0.5, text: 'to 102' }],
    because: [said('verdict.if'), said('verdict.do'), said('verdict.why')],
    gaps: [{ point: 'hip', because: [said('gap.big')] }],
    ask: [said('ask.hip')],
    cautions: [said('caution.wash')]
  } as unknown as Reckoning
  expect(shownInRow(whole)).toEqual({
    verdict: 'comes-close',
    chance: 0.4,
    chanceIf: 0.8,
    conditions: whole.conditions,
    worth,
    because: [said('verdict.do')],
    gaps: [{ point: 'hip', because: [] }],
    plans: [first],
    ask: []
  })
  expect(shownInRow({ ...whole, because: whole.because.slice(0, 1), plans: [] })).toMatchObject({ because: [], plans: [] })
})

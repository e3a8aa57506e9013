/** What is kept of an answer says what the whole answer says: over random requests, and back from the database as plain data. */
import { expect, test } from 'vitest'
import {
  chanceIfOf,
  chanceOf,
  conditionsOf,
  levelOf,
  minutesOf,
  planOf,
  spendOf,
  verdictOf
} from '../../components/workroom/wishlist/listing-order.ts'
import { briefOf, jobsIn, planFollowed, shownInRow } from '../../core/plan/answer/brief.ts'
import { reckon } from '../../core/reckon.ts'
import { keptListing } from '../unit/components/fixtures.ts'
import { randomFrom, requestFrom } from './requests.ts'

const SEED = 20261130
const TIMES = 150

test(`the brief of an answer says what the answer says (seed ${SEED})`, () => {
  const random = randomFrom(SEED)
  const seen = new Map<string, number>()
  for (let n = 0; n < TIMES; n++) {
    const reckoning = reckon(requestFrom(random), { outlook: n % 2 === 0, currency: 'GBP' })
    const brief = JSON.parse(JSON.stringify(briefOf(reckoning)))
    const shown = JSON.parse(JSON.stringify(shownInRow(reckoning)))
    const whole = keptListing({ now: reckoning })
    const row = keptListing({ now: shown, brief })
    const find = keptListing({ brief })
    seen.set(reckoning.verdict, (seen.get(reckoning.verdict) ?? 0) + 1)
    // by the answer itself, not by what is asked of it elsewhere
    const plan = ['leave-it', 'too-little-told'].includes(reckoning.verdict) ? undefined : reckoning.plans[0]
    for (const one of [whole, row, find]) {
      expect(verdictOf(one)).toBe(reckoning.verdict)
      expect(chanceOf(one)).toBe(reckoning.chance)
      expect(chanceIfOf(one)).toBe(reckoning.chanceIf)
      expect(spendOf(one)).toBe(reckoning.worth?.spend ?? one.price)
      expect(minutesOf(one)).toBe(plan?.minutes ?? 0)
      expect(levelOf(one)).toBe(plan?.level ?? 0)
    }
    expect(planOf(row)).toEqual(plan ?? null)
    expect(planFollowed(shown)).toEqual(planFollowed(reckoning))
    expect(conditionsOf(row)).toEqual(reckoning.conditions)
    expect(shown.because[0]).toEqual(reckoning.because.find(({ code }) => code !== 'verdict.if'))
    expect(shown.gaps).toEqual(reckoning.gaps.map((gap) => ({ ...gap, because: [] })))
    expect(new Set(jobsIn(reckoning))).toEqual(new Set(reckoning.plans.flatMap(({ alterations }) => alterations.map(({ id }) => id))))
  }
  expect(seen.size).toBeGreaterThanOrEqual(4)
}, 60_000)

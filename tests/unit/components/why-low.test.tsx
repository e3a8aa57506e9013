// @vitest-environment happy-dom
/** Why the chance is low: a line in the panel, a few words under the chance in the popup; nothing where the conditions say it already. */
import { afterEach, describe, expect, it } from 'vitest'
import { Facts } from '../../../components/answer/facts.tsx'
import type { Judged } from '../../../components/judged.ts'
import type { Reckoning } from '../../../core/reckon.ts'
import { hide, inPage, show, textOf } from '../on-page.tsx'
import { trousersJudged, trousersReckoning } from './fixtures.ts'

afterEach(hide)

const SENTENCE = 'What lowers the chance most: the waist is nearly too big.'
const CLAUSE = 'The waist is nearly too big'
const low: Reckoning = {
  ...trousersReckoning,
  doubts: [{ point: 'waist', share: 0.6, because: { code: 'doubt.edge', values: { way: 'big' }, point: 'waist', text: CLAUSE } }],
  because: [...trousersReckoning.because, { code: 'verdict.doubts', values: {}, text: SENTENCE }]
}
function facts(reckoning: Reckoning, short: boolean, over: Partial<Judged> = {}): void {
  show(<Facts judged={{ ...trousersJudged, reckoning, ...over }} short={short} />, { units: 'in' })
}
const text = (): string => textOf(inPage())

describe('why the chance is low', () => {
  it('the panel has a line', () => {
    facts(low, false)
    expect(text()).toContain(SENTENCE)
  })
  it('the popup has a few words under the chance', () => {
    facts(low, true)
    expect(textOf([...inPage().querySelectorAll('dd')].at(-1))).toContain(CLAUSE)
    expect(text()).not.toContain(SENTENCE)
  })
  it('what the untold must be says it already', () => {
    const condition = { point: 'waist' as const, least: 700, most: 720, chance: 0.4, text: 'the waist is 70 to 72 cm' }
    facts({ ...low, conditions: [condition] }, false)
    expect(text()).not.toContain(SENTENCE)
    facts({ ...low, conditions: [condition] }, true)
    expect(text()).not.toContain(CLAUSE)
  })
  it('it is the advised plan’s: with another’s hands chosen nothing is said', () => {
    const tailors = low.plans.some(({ aim }) => aim === 'tailor')
    expect(tailors).toBe(true)
    facts(low, false, { aim: 'tailor' })
    expect(text()).not.toContain(SENTENCE)
  })
})

/** What is worth asking, from draws made by hand. */
import { describe, expect, it } from 'vitest'
import { asksFrom, PLAIN_STAKES, valueOfKnowing } from '../../../../../core/plan/ask/ask.ts'
import { DRAWS, normalDraws } from '../../../../../core/plan/outlook/draws.ts'
import type { Outlook } from '../../../../../core/plan/outlook/outlook.ts'

const z = normalDraws()[3] ?? new Float64Array(DRAWS)
const other = normalDraws()[7] ?? new Float64Array(DRAWS)
/** It works out wherever z lies above a threshold. */
const outlook = (above: number, uncertain: ReturnType<Outlook['uncertain']>): Outlook => {
  const works = [...z].map((one) => one > above)
  const likely = works.filter((one) => one).length / DRAWS
  return {
    asItIs: 0,
    own: likely,
    tailor: null,
    likely,
    works,
    uncertain: () => uncertain,
    ifTheyHold: () => ({ own: likely, tailor: null }),
    chanceThat: () => null,
    outside: () => 0,
    chanceOfBody: () => null,
    doubts: () => []
  }
}
const hip = { what: { point: 'hip' as const }, z }
const chest = { what: { point: 'chest' as const }, z: other }
const WORDS = { units: 'cm' as const }
const asked = (
  one: Outlook,
  cloth: ReturnType<Parameters<typeof asksFrom>[1]> = [],
  stakes = PLAIN_STAKES,
  suits: Parameters<typeof asksFrom>[2] = []
) => asksFrom(one, () => cloth, suits, stakes, WORDS)

describe('what is worth asking', () => {
  it('what decides alone, worth nearly all that is at stake; what has no bearing is not asked', () => {
    const asks = asked(outlook(0, [chest, hip]))
    expect(asks.map(({ point }) => point)).toEqual(['hip'])
    // half of the draws work out: knowing which gains half of the 1 that buying blindly could lose
    expect(asks[0]?.worth).toBeGreaterThan(0.4)
    expect(asks[0]?.worth).toBeLessThanOrEqual(0.5)
  })
  it('nothing, where nothing can work out', () => expect(asked(outlook(9, [hip]))).toEqual([]))
  it('nothing for its own sake, where it is sure', () => {
    const hardly = [{ what: hip.what, z: z.map((one, i) => one + 2 * (other[i] ?? 0)) }]
    expect(asked(outlook(-1.6, hardly), [], { gain: 9, loss: 1, unit: 'money' })).toEqual([])
  })
  it('where no answer would turn the decision, what bears on it is named and worth nothing', () => {
    // one draw in eight works out, and what is lost is nine times what is gained
    const asks = asked(outlook(1.15, [{ what: hip.what, z: z.map((one, i) => one + 2 * (other[i] ?? 0)) }]), [], {
      gain: 1,
      loss: 9,
      unit: 'money'
    })
    expect(asks.map(({ point, worth }) => [point, worth])).toEqual([['hip', 0]])
  })
  it('of cloth: what knowing each answer would gain over not knowing', () => {
    const cloth = [
      {
        about: 'stretch' as const,
        answers: [
          { share: 0.5, likely: 1 },
          { share: 0.5, likely: 0 }
        ]
      }
    ]
    expect(asked(outlook(0, []), cloth)).toMatchObject([{ about: 'stretch', worth: 0.5, unit: 'score' }])
    const same = [{ about: 'stretch' as const, answers: [{ share: 1, likely: 0.5 }] }]
    expect(asked(outlook(0, []), same)).toEqual([])
  })
  it('the most telling first', () => {
    const cloth = [
      {
        about: 'fibre' as const,
        answers: [
          { share: 0.5, likely: 0.6 },
          { share: 0.5, likely: 0.4 }
        ]
      }
    ]
    expect(asked(outlook(0, [hip]), cloth).map(({ point, about }) => point ?? about)).toEqual(['hip', 'fibre'])
  })
  it('an untold point that decides before all else, with what would suit; a told one again and one’s own body last', () => {
    const again = { what: { point: 'chest' as const, again: true as const }, z }
    const body = { what: { body: 'hipGirth' as const }, z }
    const order = asked(outlook(0, [body, again, hip, { what: { point: 'waist' }, z }]), [], PLAIN_STAKES, [
      { point: 'waist', suits: '36 to 40 cm would suit.' }
    ])
    expect(order.map(({ point, body: own }) => point ?? own)).toEqual(['waist', 'hip', 'chest', 'hipGirth'])
    expect(order[0]?.suits).toBe('36 to 40 cm would suit.')
    expect(order[1]?.suits).toBeUndefined()
  })
  it('nothing at all where it is all but sure', () => expect(asked(outlook(-1.4, [hip]))).toEqual([]))
  it('a question whose answer is unrelated to what comes of it is worth nothing', () => {
    expect(
      valueOfKnowing(
        other,
        [...z].map((one) => (one > 0 ? 1 : -1))
      )
    ).toBeLessThan(0.02)
  })
})

/** Why a chance is low, in words: what is named, and what is not. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../../core/garment/garment-input.ts'
import type { PointId } from '../../../../../core/ids/points.ts'
import { doubtsOf, LOW } from '../../../../../core/plan/answer/doubts-said.ts'
import type { Means } from '../../../../../core/plan/means.ts'
import type { Outlook } from '../../../../../core/plan/outlook/outlook.ts'
import { reckon } from '../../../../../core/reckon.ts'
import { gapsBetween } from '../../../../../core/wearer/gaps.ts'
import { targetFor } from '../../../../../core/wearer/target.ts'
import { loadWords } from '../../../../../core/words/languages.ts'
import { garment } from '../../../../corpus/plans/plan-case.ts'
import { rowan } from '../../../../corpus/plans/wearers.ts'

const asked = (input: GarmentInput, means: Means = { level: 3, tailor: false }, wearer = rowan, language = 'en') =>
  reckon({ garment: input, wearer, means }, { language })
const why = (...of: Parameters<typeof asked>): string | undefined =>
  asked(...of).because.find(({ code }) => code === 'verdict.doubts')?.text
const TROUSERS = { waist: 850, hip: 1040, thigh: 628, inseam: 770 }

describe('why the chance is low', () => {
  it('nothing is said of a chance that is not low', () => {
    const { chance, doubts } = asked(garment('trousers', TROUSERS))
    expect(chance).toBeGreaterThan(LOW)
    expect(doubts).toEqual([])
    expect(why(garment('trousers', TROUSERS))).toBeUndefined()
  })
  it('a point that is not stated', () => {
    const answer = asked(garment('trousers', { waist: 850 }))
    expect(answer.chance).toBeLessThan(LOW)
    expect(answer.doubts.map(({ because }) => because.code)).toContain('doubt.untold')
    const stated = answer.gaps.filter(({ from }) => from !== 'inferred').map(({ point }): PointId => point)
    expect(answer.doubts.some(({ point }) => stated.includes(point))).toBe(false)
    expect(why(garment('trousers', { waist: 850 }))).toMatch(/^What lowers the chance most: the [a-z ]+(is|are) not stated\.$/)
  })
  it('a stated point near its edge, by the way in which it would miss', async () => {
    await loadWords('de')
    const small = garment('trousers', { ...TROUSERS, waist: 800 })
    expect(asked(small).doubts).toMatchObject([{ point: 'waist', because: { code: 'doubt.edge', text: 'The waist is nearly too small' } }])
    expect(why(small, undefined, undefined, 'de')).toBe('Was die Chance am meisten drückt: Taille fast zu eng.')
    expect(why(garment('trousers', { ...TROUSERS, waist: 840 }))).toBe(
      'What lowers the chance most: the waist is nearly too big and the leg opening is not stated.'
    )
  })
  it('a point that takes about as much work as there is', () => {
    const small = garment('trousers', { ...TROUSERS, waist: 765 })
    expect(asked(small).doubts[0]).toMatchObject({ point: 'waist', because: { code: 'doubt.reach' } })
    expect(why(small)).toBe('What lowers the chance most: the waist may be too small to alter.')
  })
  it('never what is known to stay wrong: the verdict has said that', () => {
    const { verdict, chance, because, doubts } = asked(garment('trousers', { ...TROUSERS, hip: 1006 }))
    expect(verdict).toBe('comes-close')
    expect(chance).toBeLessThan(LOW)
    expect(because.some(({ code, point }) => code === 'verdict.why' && point === 'hip')).toBe(true)
    expect(doubts).toEqual([])
  })
})

it('from which chance on nothing is said', () => {
  const outlook = { doubts: () => [{ point: 'waist', share: 1, over: 1 }] } as unknown as Outlook
  const worn = garmentAsWorn(garment('trousers', TROUSERS))
  const gaps = gapsBetween(worn, targetFor(worn, rowan))
  const named = (chance: number | null) =>
    doubtsOf({ outlook, chance, hands: 'own', gaps, wrong: [] }, { units: 'cm' }).map(({ point }) => point)
  expect(named(LOW - 0.01)).toEqual(['waist'])
  expect(named(LOW)).toEqual([])
  expect(named(null)).toEqual([])
})

/** Why a chance is low, in words: what is named, and what is not. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../../../core/garment/garment-input.ts'
import type { PointId } from '../../../../../core/ids/points.ts'
import { type Doubtful, doubtsOf, doubtsTogether, LOW } from '../../../../../core/plan/answer/doubts-said.ts'
import type { Means } from '../../../../../core/plan/means.ts'
import type { PointDoubt } from '../../../../../core/plan/outlook/doubts.ts'
import type { Hands, Outlook } from '../../../../../core/plan/outlook/outlook.ts'
import { reckon } from '../../../../../core/reckon.ts'
import { type Gap, gapsBetween } from '../../../../../core/wearer/gaps.ts'
import { targetFor } from '../../../../../core/wearer/target.ts'
import type { Want } from '../../../../../core/wearer/want.ts'
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

describe('which points are named, and how', () => {
  const wants = (more: Partial<Want>) => ({ measure: 'hipGirth', basedOn: [], sdMm: 5, ...more }) as unknown as Want
  const gap = (point: PointId, more: Partial<Gap> = {}): Gap =>
    ({
      ...{ point, garmentMm: 1000, from: 'seller', sdMm: 10, band: { least: 900, ideal: 1000, most: 1100 }, aimMm: 1000, edgeMarginMm: 0 },
      ...{ bandSdMm: 0, gapMm: 0, judged: true, because: [] },
      ...more
    }) as Gap
  const doubts = (
    found: PointDoubt[],
    { gaps = [gap('waist'), gap('hip')], wrong = [], hands = 'own' as const }: Partial<Pick<Doubtful, 'gaps' | 'wrong' | 'hands'>> = {}
  ) => doubtsOf({ outlook: { doubts: () => found } as unknown as Outlook, chance: 0.2, hands, gaps, wrong }, { units: 'cm' })
  const at = (point: PointId, share: number, over = 1): PointDoubt => ({ point, share, over })
  const named = (...given: Parameters<typeof doubts>) => doubts(...given).map(({ point }) => point)
  const wrong = (point: PointId) => [{ point, mm: 20, because: '' }]

  it('a second where it stands in the way often, and nearly as often as the first', () => {
    expect(named([at('waist', 0.9), at('hip', 0.54)])).toEqual(['waist', 'hip'])
    expect(named([at('waist', 0.9), at('hip', 0.53)])).toEqual(['waist'])
    expect(named([at('waist', 0.4), at('hip', 0.3)])).toEqual(['waist', 'hip'])
    expect(named([at('waist', 0.4), at('hip', 0.29)])).toEqual(['waist'])
    expect(named([at('waist', 0.9), at('hip', 0.8), at('thigh', 0.8)], { gaps: [gap('waist'), gap('hip'), gap('thigh')] })).toEqual([
      'waist',
      'hip'
    ])
    // the first however seldom
    expect(named([at('waist', 0.01)])).toEqual(['waist'])
    expect(named([])).toEqual([])
  })
  it('none where the first is known to stay wrong; a second that is, is left out', () => {
    expect(named([at('waist', 0.9), at('hip', 0.8)], { wrong: wrong('waist') })).toEqual([])
    expect(named([at('waist', 0.9), at('hip', 0.8)], { wrong: wrong('hip') })).toEqual(['waist'])
    expect(named([at('waist', 0.9), at('hip', 0.8)], { wrong: wrong('thigh') })).toEqual(['waist', 'hip'])
  })
  it('none without an outlook', () => {
    expect(doubtsOf({ outlook: null, chance: 0.2, hands: 'own', gaps: [gap('waist')], wrong: [] }, { units: 'cm' })).toEqual([])
  })
  it.each<[string, Partial<Gap>, number, Hands, string, string | undefined]>([
    ['not told', { from: 'inferred' }, 1, 'own', 'doubt.untold', undefined],
    ['told by a label alone', { from: 'label' }, 1, 'own', 'doubt.label', undefined],
    [
      'a body that was worked out, less sure than the figure',
      { want: wants({ basedOn: ['stature'], sdMm: 11 }) },
      1,
      'own',
      'doubt.body',
      undefined
    ],
    [
      'a body that was worked out, and is as sure',
      { want: wants({ basedOn: ['stature'], sdMm: 10 }) },
      1,
      'own',
      'doubt.figure',
      undefined
    ],
    ['a body that was told', { want: wants({ sdMm: 30 }) }, 1, 'own', 'doubt.figure', undefined],
    ['outside, too big', { gapMm: 30 }, 1, 'own', 'doubt.reach', 'big'],
    ['outside, too small', { gapMm: -30 }, 0, 'tailor', 'doubt.reach', 'small'],
    ['outside, and nothing to be done', { gapMm: 30, garmentMm: 1130 }, 1, 'asItIs', 'doubt.edge', 'big'],
    ['near its upper edge', { garmentMm: 1084 }, 0.51, 'own', 'doubt.edge', 'big'],
    ['not so near its upper edge', { garmentMm: 1083 }, 0.51, 'own', 'doubt.figure', undefined],
    ['near its lower edge', { garmentMm: 916 }, 0.5, 'own', 'doubt.edge', 'small'],
    ['not so near its lower edge', { garmentMm: 917 }, 0.5, 'own', 'doubt.figure', undefined],
    ['near an edge that is itself unsure', { garmentMm: 1020, bandSdMm: 60 }, 1, 'own', 'doubt.edge', 'big'],
    ['with nothing wanted of it', { band: null }, 1, 'own', 'doubt.figure', undefined]
  ])('%s', (_, more, over, hands, code, way) => {
    const [doubt] = doubts([at('waist', 0.9, over)], { gaps: [gap('waist', more)], hands })
    expect([doubt?.because.code, doubt?.because.values.way]).toEqual([code, way])
    expect(doubt).toMatchObject({ point: 'waist', share: 0.9 })
  })
  it('all of them in one sentence: what is not stated together, else each by itself', () => {
    const untold = (point: PointId) => gap(point, { from: 'inferred' })
    const both = [at('waist', 0.9), at('hip', 0.8)]
    const text = (...gaps: Gap[]) => doubtsTogether(doubts(both, { gaps }), { units: 'cm' }).text
    expect(text(untold('waist'), untold('hip'))).toBe('What lowers the chance most: the waist and the hip are not stated.')
    expect(text(untold('waist'), gap('hip', { garmentMm: 1090 }))).toBe(
      'What lowers the chance most: the waist is not stated and the hip is nearly too big.'
    )
    expect(text(untold('waist'))).toBe('What lowers the chance most: the waist is not stated.')
  })
})

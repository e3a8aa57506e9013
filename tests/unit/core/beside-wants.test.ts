/** Figures beside what is wanted, by bands that are given: edges, margins, doubts, two sides, and what the body must pass. */
import { describe, expect, it } from 'vitest'
import { type Garment, garmentAsWorn, type PointTaken } from '../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../core/garment/garment-input.ts'
import type { PointId } from '../../../core/ids/points.ts'
import { elasticGoes, elasticWaist } from '../../../core/wearer/elastic-waist.ts'
import { gapsBetween, overshoot } from '../../../core/wearer/gaps.ts'
import { boundsOf, settle } from '../../../core/wearer/must-pass.ts'
import type { Want } from '../../../core/wearer/want.ts'
import { type BodyTaken, wholeBody } from '../../../core/wearer/whole-body.ts'

const BASE = garmentAsWorn({ kind: 'trousers', measures: [] })
/** One point and nothing else, on cloth that neither grows nor shrinks but where it is said. */
const of = (point: PointId, taken: Partial<PointTaken>, worn: Partial<ReturnType<Garment['worn']>> = {}): Garment => ({
  ...BASE,
  points: new Map([[point, { mm: 850, sdMm: 5, from: 'own', ...taken }]]),
  worn: () => ({ growMm: 0, growSdMm: 0, shrink: 0, shrinkSd: 0, because: [], ...worn })
})
const want = (more: Partial<Want> = {}): Want => ({
  least: 800,
  ideal: 820,
  most: 840,
  sdMm: 4,
  from: 'body',
  basedOn: [],
  because: [],
  ...more
})
const gap = (garment: Garment, wanted?: Want) => gapsBetween(garment, new Map(wanted === undefined ? [] : [['waist', wanted]]))[0]

describe('a figure beside what is wanted', () => {
  it('is as it is where nothing is wanted', () => {
    expect(gap(of('waist', {}))).toEqual({
      ...{ point: 'waist', garmentMm: 850, from: 'own', sdMm: 5, band: null, aimMm: 850, edgeMarginMm: 0, bandSdMm: 0, gapMm: 0 },
      ...{ judged: false, because: [] }
    })
  })
  it('lies so far outside, and aims for the ideal', () => {
    const wanted = want()
    expect(gap(of('waist', {}), wanted)).toEqual({
      ...{ point: 'waist', garmentMm: 850, from: 'own', sdMm: 5, band: { least: 800, ideal: 820, most: 840 }, aimMm: 820 },
      ...{ edgeMarginMm: 0, bandSdMm: 4, gapMm: 10, judged: true, want: wanted, because: [] }
    })
    expect(gap(of('waist', { mm: 790 }), wanted)?.gapMm).toBe(-10)
    expect(gap(of('waist', { mm: 840 }), wanted)?.gapMm).toBe(0)
  })
  it('without an ideal is best as it is, as far as the band allows', () => {
    expect(gap(of('waist', { mm: 830 }), want({ ideal: null }))?.band?.ideal).toBe(830)
    expect(gap(of('waist', { mm: 850 }), want({ ideal: null }))?.band?.ideal).toBe(840)
    expect(gap(of('waist', { mm: 790 }), want({ ideal: null }))?.band?.ideal).toBe(800)
  })
  it('worked out from other measures has its edges further out, to 15 at most, says so, and aims for the figure itself', () => {
    const found = gap(of('waist', { mm: 850 }), want({ basedOn: ['hipGirth'] }))
    expect(found?.edgeMarginMm).toBeCloseTo(6.58, 9)
    expect(found?.gapMm).toBeCloseTo(3.42, 9)
    expect(found?.aimMm).toBeCloseTo(846.58, 9)
    expect(found?.band?.least).toBeCloseTo(793.42, 9)
    expect(found?.because).toEqual([{ code: 'target.worked-out', values: { body: 'hipGirth' }, point: 'waist' }])
    expect(gap(of('waist', {}), want({ basedOn: ['hipGirth'], sdMm: 30 }))).toMatchObject({ edgeMarginMm: 15, gapMm: 0, aimMm: 850 })
    expect(gap(of('waist', {}), want({ basedOn: ['hipGirth'], sdMm: 0 }))?.because).toEqual([])
  })
  it('is judged where it is told, not by a label and not where it is inferred', () => {
    for (const [from, judged] of [
      ['own', true],
      ['seller', true],
      ['label', false],
      ['inferred', false]
    ] as const)
      expect(gap(of('waist', { from }), want())?.judged, from).toBe(judged)
  })
  it('on the tape of today: grown by so much, and cut so much larger as it shrinks, and the bound with it', () => {
    const found = gap(of('waist', { mm: 850 }, { growMm: 10, shrink: 0.05 }), want({ bound: 770 }))
    expect(found?.band).toEqual({ least: 790 / 0.95, ideal: 810 / 0.95, most: 830 / 0.95 })
    expect(found?.bound).toBe(760 / 0.95)
    expect(gap(of('waist', {}), want())).not.toHaveProperty('bound')
  })
  it('is as unsure as the wish, the taste and the cloth together', () => {
    const found = gap(of('waist', { mm: 800 }, { growSdMm: 12, shrinkSd: 0.03 }), want({ tasteSdMm: 3, leastSdMm: 9 }))
    expect(found?.bandSdMm).toBeCloseTo(Math.hypot(4, 3, 12, 24), 9)
    expect(found?.leastSdMm).toBe(9)
    expect(gap(of('waist', {}), want())).not.toHaveProperty('leastSdMm')
  })
  it('says how often it was measured, and the reasons of the wish before those of the cloth', () => {
    const why = (code: string) => ({ code, values: {} })
    const found = gap(of('waist', { readings: 3 }, { because: [why('cloth')] }), want({ because: [why('wish')] }))
    expect(found?.readings).toBe(3)
    expect(found?.because).toEqual([why('wish'), why('cloth')])
    expect(gap(of('waist', { readings: 2 }))?.readings).toBe(2)
  })
  it.each([
    ['the larger where both are too big', { left: 850, right: 870 }, 870],
    ['the smaller where both are too small', { left: 780, right: 790 }, 780],
    ['the one that is outside', { left: 830, right: 790 }, 790],
    ['the one that is outside, on the left', { left: 850, right: 830 }, 850],
    ['their mean where both are inside', { left: 810, right: 830 }, 820],
    ['the left where they are out by as much', { left: 790, right: 850 }, 790]
  ] as const)('of two sides it is %s', (_, sides, mm) => {
    expect(gap(of('waist', { mm: (sides.left + sides.right) / 2, sides }), want())?.garmentMm).toBe(mm)
  })
  it.each([
    [10, 0],
    [20, 0],
    [21, 1],
    [9, -1]
  ])('%d beside 10 to 20 lies %d outside', (mm, out) => expect(overshoot(mm, 10, 20)).toBe(out))
})

describe('a wish and what the body must pass', () => {
  const why = (code: string) => ({ code, values: {} })
  const bound = want({ least: 810, most: 1410, ideal: null, sdMm: 6, from: 'bound', because: [why('pass')], bound: 810 })
  it('the bound alone where nothing is wished', () => expect(settle(undefined, bound)).toBe(bound))
  it('a wish above it stays, and knows the bound', () => {
    expect(settle(want({ least: 815, because: [why('wish')] }), bound)).toEqual(want({ least: 815, bound: 810, because: [why('wish')] }))
  })
  it('a wish that reaches under it begins at the bound, with both reasons', () => {
    const both = [why('wish'), why('pass')]
    expect(settle(want({ because: [why('wish')] }), bound)).toEqual(want({ least: 810, bound: 810, because: both }))
    expect(settle(want({ ideal: 805 }), bound)).toMatchObject({ least: 810, ideal: 810, most: 840 })
    expect(settle(want({ ideal: null }), bound)).toMatchObject({ least: 810, ideal: null, most: 840 })
    expect(settle(want({ most: 810, ideal: 805 }), bound)).toMatchObject({ least: 810, ideal: 810, most: 810 })
  })
  it('a wish that lies wholly under it is ten wide from the bound, as unsure as the less sure, and says so', () => {
    expect(settle(want({ least: 780, ideal: 790, most: 800, sdMm: 9, because: [why('wish')] }), bound)).toEqual(
      want({
        ...{ least: 810, ideal: 810, most: 820, sdMm: 9, bound: 810 },
        because: [why('wish'), why('pass'), { code: 'target.contradiction', values: { mm: 810 } }]
      })
    )
    expect(settle(want({ least: 780, ideal: 790, most: 800, sdMm: 2 }), bound).sdMm).toBe(6)
  })

  const bounds = (input: Partial<GarmentInput> & Pick<GarmentInput, 'kind'>, point: PointId, skipped: PointId[] = []) => {
    const garment = garmentAsWorn({ measures: [{ point, mm: 400, source: 'own' }], ...input })
    const body = wholeBody({ hipGirth: { mm: 980 }, headGirth: { mm: 570 }, handGirth: { mm: 200 }, heelGirth: { mm: 320 } })
    return boundsOf(garment, body, new Set(skipped)).map(([at, { least }]) => [at, least] as const)
  }
  it('a foot, a head, a hand and hips, where it does not open and there is a seam to judge', () => {
    const closed = { made: { opens: [] } }
    expect(bounds({ kind: 'shirt', ...closed }, 'neck')).toContainEqual(['neck', 570])
    expect(bounds({ kind: 'shirt', made: { opens: ['neck'] } }, 'neck').map(([at]) => at)).not.toContain('neck')
    expect(bounds({ kind: 'shirt', ...closed }, 'neck', ['neck']).map(([at]) => at)).not.toContain('neck')
    expect(bounds({ kind: 'jacket', ...closed }, 'neck').map(([at]) => at)).not.toContain('neck')
    expect(bounds({ kind: 'shirt', ...closed }, 'cuff').find(([at]) => at === 'cuff')?.[1]).toBeCloseTo(194, 9)
    expect(bounds({ kind: 'skirt', ...closed }, 'waist')).toContainEqual(['waist', 980])
    // a knit that stretches by 25 in 100 is pulled over by 20
    expect(bounds({ kind: 'shirt', cloth: { structure: 'knit', stretchPercent: 25 }, ...closed }, 'neck')).toContainEqual([
      'neck',
      570 / 1.2
    ])
    // elastic of which nobody says how far it goes says nothing of the hips
    expect(bounds({ kind: 'skirt', made: { opens: [], elasticWaist: true } }, 'waist').map(([at]) => at)).not.toContain('waist')
    expect(bounds({ kind: 'skirt', made: { opens: [], elasticWaist: true, waistStretchedMm: 700 } }, 'waist')).toContainEqual([
      'waist',
      680
    ])
  })
})

describe('a waist that elastic draws in', () => {
  const body: BodyTaken = { mm: 800, sdMm: 6, basedOn: [] }
  const garment = (mm: number | null, made: GarmentInput['made']): Garment => ({
    ...garmentAsWorn({ kind: 'skirt', measures: mm === null ? [] : [{ point: 'waist', mm, source: 'own' }], made: made ?? {} }),
    ...(mm === null ? { points: new Map() } : {})
  })
  it('goes from how it lies to how far it is told to, never less than nothing', () => {
    expect(elasticGoes(garment(640, { elasticWaist: true, waistStretchedMm: 860 }))).toBe(220)
    expect(elasticGoes(garment(900, { elasticWaist: true, waistStretchedMm: 860 }))).toBe(0)
    expect(elasticGoes(garment(null, { elasticWaist: true, waistStretchedMm: 860 }))).toBe(0)
    expect(elasticGoes(garment(640, {}))).toBe(0)
  })
  it('is wanted 50 shorter than the body, within what it goes', () => {
    expect(elasticWaist(garment(640, { elasticWaist: true, waistStretchedMm: 860 }), 'loose', body, 'waistGirth')).toEqual({
      ...{ least: 590, ideal: 750, most: 825, sdMm: 6, leastSdMm: 12, from: 'body', measure: 'waistGirth', basedOn: [] },
      because: [{ code: 'target.elastic', values: { body: 'waistGirth', mm: 800, stretched: 860 }, point: 'waist' }]
    })
    // it goes hardly at all: as large as the body, and no larger than it may lie
    expect(elasticWaist(garment(790, { elasticWaist: true, waistStretchedMm: 795 }), 'close', body, 'waistGirth')).toMatchObject({
      ...{ least: 800, ideal: 800, most: 800 }
    })
    expect(elasticWaist(garment(760, { elasticWaist: true, waistStretchedMm: 780 }), 'oversized', body, 'waistGirth')).toMatchObject({
      ...{ least: 790, ideal: 790, most: 850 }
    })
  })
  it('is less sure where it is not told how far it goes: two fifths of a quarter of how it lies', () => {
    expect(elasticWaist(garment(640, { elasticWaist: true }), 'regular', body, 'waistGirth')?.leastSdMm).toBeCloseTo(64, 9)
  })
  it('without elastic, or a figure, there is none', () => {
    expect(elasticWaist(garment(640, {}), 'regular', body, 'waistGirth')).toBeUndefined()
    expect(elasticWaist(garment(null, { elasticWaist: true }), 'regular', body, 'waistGirth')).toBeUndefined()
  })
})

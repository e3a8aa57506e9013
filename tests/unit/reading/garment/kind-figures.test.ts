/** What the measured points of a listing, and their amounts, say of its kind. */
import { describe, expect, test } from 'vitest'
import type { PointId } from '../../../../core/ids/points.ts'
import { type Evidence, MOST, WEIGHT } from '../../../../core/reading/garment/kind-evidence.ts'
import { amountEvidence, halfEvidence, measuredEvidence, pointEvidence } from '../../../../core/reading/garment/kind-figures.ts'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { readListing } from '../../../../core/reading/read-listing.ts'
import { measureOf } from '../given.ts'

const nothing = readListing({ text: '' })
const measure = ([point, mm]: [PointId, number]) => measureOf(point, mm)
/** Every kind with all that is said of it, added up. */
const sums = (evidence: readonly Evidence[]): Record<string, number> => {
  const all: Record<string, number> = {}
  for (const { for: kind, weight } of evidence) all[kind] = Math.round(((all[kind] ?? 0) + weight) * 1e6) / 1e6
  return all
}
const amounts = (...given: [PointId, number][]) => sums(amountEvidence({ ...nothing, measures: given.map(measure) }))
const measured = (...points: PointId[]) => sums(measuredEvidence(points.map((point) => measure([point, 700]))))
const named = (...names: PointName[]) => sums(pointEvidence(names))
const { shape, skirt, whole, upper, bust, missing, further, noBust, bothHalves, clear } = WEIGHT.points

describe('for which points figures were found', () => {
  test('legs are of trousers, jeans and shorts, half of a jumpsuit, and of nothing that has none', () => {
    expect(named('inseam', 'waist')).toEqual({
      ...{ trousers: shape, jeans: shape, shorts: shape, jumpsuit: shape / 2 },
      ...{ skirt: -missing, dress: -missing, shirt: -missing, 'knit-top': -missing, jumper: -missing },
      ...{ jacket: -missing, coat: -missing, waistcoat: -missing }
    })
    // each name once
    expect(named('inseam', 'waist', 'inseam')).toEqual(named('inseam', 'waist'))
  })
  test('a waist, hips and a length are of a skirt', () => {
    expect(named('waist', 'hip', 'length')).toMatchObject({ skirt, jumper: -missing })
    expect(named('waist', 'hip', 'length')).not.toHaveProperty('dress')
  })
  test('a bust and hips are of a dress, half of a jumpsuit, and of no skirt', () => {
    expect(named('chest', 'hip')).toMatchObject({ dress: whole, jumpsuit: whole / 2, skirt: -bust, shirt: -missing })
  })
  test('a bust and sleeves are of a top, half of a dress', () => {
    expect(named('chest', 'sleeveLength')).toMatchObject({
      ...{ shirt: upper, jumper: upper, coat: upper, dress: upper / 2 },
      // two points that it has not, one of them the bust; and a waistcoat has no sleeves
      ...{ skirt: -(bust + further), jeans: -(bust + further), waistcoat: upper - missing }
    })
  })
  test('however many points a kind has not, that says no more than so much', () => {
    expect(named('chest', 'sleeveLength', 'shoulderWidth', 'bicep')).toMatchObject({ jeans: -MOST.missing, skirt: -MOST.missing })
    expect(named('sleeveLength', 'bicep')).toMatchObject({ skirt: -(missing + further) })
  })
  test('half a body by itself, and none where nothing tells', () => {
    expect(sums(halfEvidence(['chest', 'hip']))).toEqual({ dress: whole, jumpsuit: whole / 2 })
    expect(halfEvidence([])).toEqual([])
    expect(pointEvidence([])).toEqual([])
  })
})

describe('which points were measured', () => {
  test('who measures a waist and a length measures the bust of a dress or a top too', () => {
    expect(measured('waist', 'hip')).toMatchObject({ dress: -noBust, coat: -noBust, shirt: -noBust - missing, thing: -missing })
    expect(measured('waist', 'hip')).not.toHaveProperty('skirt')
    expect(measured('waist')).toEqual({})
    expect(measured('hip', 'bodyLength')).not.toHaveProperty('dress')
    expect(measured('waist', 'hip', 'chest')).not.toHaveProperty('dress')
    expect(measured('waist', 'hip', 'strap')).not.toHaveProperty('dress')
  })
  test('one figure makes no thing less likely, two do', () => {
    expect(measured('chest')).toEqual({ trousers: -bust, jeans: -bust, shorts: -bust, skirt: -bust })
    expect(measured('chest', 'shoulderWidth')).toMatchObject({ thing: -missing })
  })
  test('a bust and an inside leg are of a jumpsuit', () => {
    expect(measured('chest', 'inseam')).toMatchObject({ jumpsuit: bothHalves, dress: -missing, trousers: -bust })
    expect(measured('chest', 'hip')).not.toHaveProperty('jumpsuit')
    expect(measured('waist', 'inseam')).not.toHaveProperty('jumpsuit')
  })
})

describe('how well their amounts suit each kind', () => {
  test('short legs are clearly shorts', () => {
    expect(amounts(['waist', 860], ['inseam', 120])).toEqual({
      ...{ shorts: clear, trousers: -MOST.figures, jeans: -MOST.figures, jumpsuit: -MOST.ofJumpsuit }
    })
  })
  test('long ones may be trousers or jeans: neither is clear', () => {
    const found = amounts(['waist', 860], ['inseam', 790])
    expect(found.shorts).toBe(-MOST.figures)
    expect(found.trousers ?? 0).toBeGreaterThan(-0.5)
    expect(found.jeans ?? 0).toBeGreaterThan(-0.5)
    expect(Math.max(...Object.values(found))).toBeLessThanOrEqual(0)
  })
  test('a metre and more of length is of a dress or a coat', () => {
    const found = amounts(['chest', 1000], ['bodyLength', 1300])
    expect(found).toMatchObject({ shirt: -MOST.figures, jumper: -MOST.figures, jacket: -MOST.figures })
    expect(found.coat ?? 0).toBeGreaterThan(-1)
    expect(found.dress ?? 0).toBeGreaterThan(-1)
  })
  test('how long short sleeves are says nothing, from three quarters of an arm on it does', () => {
    const without = amounts(['chest', 1000], ['bodyLength', 700])
    expect(amounts(['chest', 1000], ['bodyLength', 700], ['sleeveLength', 200])).toEqual(without)
    expect(amounts(['chest', 1000], ['bodyLength', 700], ['sleeveUnderarm', 200])).toEqual(without)
    expect(amounts(['chest', 1000], ['bodyLength', 700], ['sleeveLength', 449])).toEqual(without)
    expect(amounts(['chest', 1000], ['bodyLength', 700], ['sleeveLength', 450])).not.toEqual(without)
    expect(without).toHaveProperty('waistcoat')
    expect(amounts(['chest', 1000], ['bodyLength', 700], ['sleeveLength', 600])).not.toHaveProperty('waistcoat')
  })
  test('figures that go together on no garment part kinds hardly', () => {
    expect(amounts(['waist', 2500], ['inseam', 120]).shorts ?? 0).toBeGreaterThan(-1)
    expect(amounts(['sleeveLength', 200])).toEqual({})
    expect(amounts()).toEqual({})
  })
})

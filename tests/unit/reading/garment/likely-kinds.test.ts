/** Kinds by the points that were told and their sizes; nothing but an order hangs on it. */
import { describe, expect, test } from 'vitest'
import { GARMENT_KINDS } from '../../../../core/ids/kinds.ts'
import type { PointId } from '../../../../core/ids/points.ts'
import { kindsOffered, likelyKinds } from '../../../../core/reading/garment/likely-kinds.ts'
import { readListing } from '../../../../core/reading/read-listing.ts'
import type { MeasureReading, Reading } from '../../../../core/reading/reading.ts'

const nothing = readListing({ text: '' })
const measure = (point: PointId, mm: number, more: Partial<MeasureReading> = {}): MeasureReading => ({
  point,
  mm,
  lowMm: mm,
  highMm: mm,
  basis: 'length',
  basisFrom: 'stated',
  unitFrom: 'stated',
  stated: { text: '', start: 0, end: 0, value: mm, unit: 'mm' },
  ...more
})
const told = (measures: MeasureReading[], more: Partial<Reading> = {}): Reading => ({ ...nothing, measures, ...more })
const shirt = [measure('chest', 1180), measure('neck', 410), measure('sleeveLength', 600), measure('cuff', 240)]
const legs = [measure('waist', 860), measure('inseam', 790), measure('frontRise', 280)]
const kindsOf = (reading: Reading) => likelyKinds(reading).map(({ kind }) => kind)

describe('the kinds that measures suit', () => {
  test('the likeliest first, their shares one together', () => {
    const found = likelyKinds(told(shirt))
    expect(found[0]?.kind).toBe('shirt')
    expect(found.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9)
    for (const [index, { share }] of found.entries()) expect(share).toBeLessThanOrEqual(found[index - 1]?.share ?? 1)
  })
  test('a point that a kind has not rules it out', () => {
    expect(kindsOf(told([...shirt, measure('thigh', 600)]))).toEqual(['jumpsuit'])
    expect(kindsOf(told([measure('frontRise', 280), measure('armhole', 500)]))).toEqual([])
    expect(kindsOf(told(legs)).sort()).toEqual(['jeans', 'shorts', 'trousers'])
  })
  test('by the name that a point has on the kind: a length down the back is a skirt’s', () => {
    expect(kindsOf(told([measure('waist', 680), measure('hip', 980), measure('outseam', 650)]))).toContain('skirt')
  })
  test('short legs are shorts', () => {
    expect(kindsOf(told([measure('waist', 860), measure('inseam', 120), measure('thigh', 640)]))[0]).toBe('shorts')
  })
  test('nothing measured, none', () => expect(likelyKinds(nothing)).toEqual([]))
})

describe('what was seen besides', () => {
  test('denim', () => {
    const cloth = { ...nothing.cloth, traits: ['denim' as const] }
    expect(kindsOf(told(legs, { cloth }))[0]).toBe('jeans')
  })
  test('knit or woven', () => {
    const top = [measure('chest', 1040), measure('bodyLength', 680)]
    const first = (structure: 'knit' | 'woven') => kindsOf(told(top, { cloth: { ...nothing.cloth, structure } }))[0]
    expect(first('knit')).toBe('knit-top')
    expect(first('woven')).not.toBe('knit-top')
  })
  test('whose it is: a man’s chest of 1,230 is usual for a shirt, a woman’s is wide', () => {
    const share = (whose: 'women' | 'men') =>
      likelyKinds(told([measure('chest', 1230), measure('bodyLength', 800)], { whose })).find(({ kind }) => kind === 'shirt')?.share ?? 0
    expect(share('men')).toBeGreaterThan(share('women'))
  })
})

test('of several garments or sizes, the first; a point once', () => {
  const other = measure('inseam', 700, { of: 'trousers' })
  expect(likelyKinds(told([...shirt, other, measure('chest', 500)]))).toEqual(likelyKinds(told(shirt)))
})

describe('in which order kinds are offered', () => {
  test('the likeliest first where no word tells the kind, each once', () => {
    const offered = kindsOffered(told(shirt))
    expect(offered[0]).toBe('shirt')
    expect([...offered].sort()).toEqual([...GARMENT_KINDS].sort())
  })
  test('as always where it is told, and where nothing is', () => {
    expect(kindsOffered(told(shirt, { garment: { kind: 'dress', sureness: 0.9 } }))).toEqual(GARMENT_KINDS)
    expect(kindsOffered(nothing)).toEqual(GARMENT_KINDS)
  })
})

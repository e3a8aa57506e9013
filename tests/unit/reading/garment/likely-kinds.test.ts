/** Kinds by the points that were told and their sizes; nothing but an order hangs on it. */
import { describe, expect, test } from 'vitest'
import { GARMENT_KINDS, type GarmentKind } from '../../../../core/ids/kinds.ts'
import { kindsOffered, likelyKinds } from '../../../../core/reading/garment/likely-kinds.ts'
import { readListing } from '../../../../core/reading/read-listing.ts'
import type { MeasureReading, Reading } from '../../../../core/reading/reading.ts'
import { measureOf as measure } from '../given.ts'

const nothing = readListing({ text: '' })
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
  /** How many times likelier a kind is beside another where that was seen: ten where the other is seldom so. */
  const times = (a: GarmentKind, b: GarmentKind, measures: MeasureReading[], more: Partial<Reading>) => {
    const ratio = (reading: Reading) => {
      const share = new Map(likelyKinds(reading).map((one) => [one.kind, one.share]))
      return (share.get(a) ?? Number.NaN) / (share.get(b) ?? Number.NaN)
    }
    return Math.round(ratio(told(measures, more)) / ratio(told(measures)))
  }
  const of = (cloth: Partial<Reading['cloth']>): Partial<Reading> => ({ cloth: { ...nothing.cloth, ...cloth } })
  const top = [measure('chest', 1040), measure('bodyLength', 900)]
  const lower = [measure('waist', 760), measure('hip', 1000)]
  test.each<[string, GarmentKind, GarmentKind, MeasureReading[], Partial<Reading>, number]>([
    ['denim is of jeans', 'jeans', 'trousers', legs, of({ traits: ['denim'] }), 10],
    ['and of shorts', 'shorts', 'trousers', legs, of({ traits: ['denim'] }), 10],
    ['and of skirts, not of dresses', 'skirt', 'dress', lower, of({ traits: ['denim'] }), 10],
    ['and of jackets, not of coats', 'jacket', 'coat', top, of({ traits: ['denim'] }), 10],
    ['a check is of any', 'jeans', 'trousers', legs, of({ traits: ['check'] }), 1],
    ['knit is of jumpers, not of shirts', 'jumper', 'shirt', top, of({ structure: 'knit' }), 10],
    ['and of knit tops, not of jackets', 'knit-top', 'jacket', top, of({ structure: 'knit' }), 10],
    ['and of dresses as of jumpers', 'jumper', 'dress', top, of({ structure: 'knit' }), 1],
    ['woven is of shirts, not of jumpers', 'shirt', 'jumper', top, of({ structure: 'woven' }), 10],
    ['and of dresses as of shirts', 'shirt', 'dress', top, of({ structure: 'woven' }), 1],
    ['leather is of jackets, not of shirts', 'jacket', 'shirt', top, of({ structure: 'leather' }), 10],
    ['nor of jumpers', 'jacket', 'jumper', top, of({ structure: 'leather' }), 10],
    ['and of coats as of jackets', 'jacket', 'coat', top, of({ structure: 'leather' }), 1],
    ['short sleeves are of dresses, not of skirts', 'dress', 'skirt', lower, { made: { shortSleeves: true } }, 10],
    ['and of shirts as of dresses', 'shirt', 'dress', top, { made: { shortSleeves: true } }, 1],
    ['a shape of skirt is of skirts, not of trousers', 'skirt', 'trousers', lower, { made: { skirtShape: 'flared' } }, 10],
    ['and of dresses as of skirts', 'skirt', 'dress', lower, { made: { skirtShape: 'flared' } }, 1]
  ])('%s', (_, a, b, measures, more, expected) => expect(times(a, b, measures, more)).toBe(expected))
  test('an elastic waist may be of any size', () => {
    const narrow = [measure('waist', 560), measure('hip', 1000), measure('skirtLength', 600)]
    const first = (elasticWaist: boolean) => likelyKinds(told(narrow, { made: { elasticWaist } }))
    expect(first(true)).not.toEqual(first(false))
    expect(first(false)).toEqual(likelyKinds(told(narrow)))
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
  const small = shirt.map((one) => ({ ...one, size: 'S' }))
  const large = [measure('bodyLength', 900, { size: 'L' })]
  expect(likelyKinds(told([...small, ...large]))).toEqual(likelyKinds(told(shirt)))
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

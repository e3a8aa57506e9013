/** What a size on a label makes likely of the garment. Body sizes as in core/reading/sizes/label-evidence.ts, the room that a kind usually has beside them. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { labelEvidence } from '../../../../core/reading/sizes/label-evidence.ts'
import { usualRoom } from '../../../../core/wearer/usual-room.ts'

const told = (label: string, kind: GarmentKind) => labelEvidence(label, kind).map(({ point, mm }) => `${point} ${Math.round(mm)}`)
const spread = (label: string, kind: GarmentKind) => labelEvidence(label, kind).map(({ sdMm }) => Math.round(sdMm))

describe('on legs a waist, cut an inch and a half over its label, and an inside leg', () => {
  test.each<[string, GarmentKind, string[]]>([
    ['W32 L34', 'jeans', ['waist 851', 'inseam 864']],
    ['w32l34', 'jeans', ['waist 851', 'inseam 864']],
    ['32x34', 'trousers', ['waist 851', 'inseam 864']],
    ['32/34', 'trousers', ['waist 851', 'inseam 864']],
    ['32-34', 'trousers', ['waist 851', 'inseam 864']],
    ['32 34', 'trousers', ['waist 851', 'inseam 864']],
    ['W 32 / L 34', 'jeans', ['waist 851', 'inseam 864']],
    [' W32 ', 'jeans', ['waist 851']],
    ['W 32', 'jeans', ['waist 851']],
    // short ones have no inside leg of such a size
    ['W32 L34', 'shorts', ['waist 851']],
    // the ends of what a waist and a leg can be
    ['W22', 'jeans', ['waist 597']],
    ['W21', 'jeans', []],
    ['W60', 'jeans', ['waist 1562']],
    ['W61', 'jeans', []],
    ['W32 L24', 'jeans', ['waist 851', 'inseam 610']],
    ['W32 L23', 'jeans', ['waist 851']],
    ['W32 L40', 'jeans', ['waist 851', 'inseam 1016']],
    ['W32 L41', 'jeans', ['waist 851']],
    // no such label
    ['32', 'jeans', []],
    ['W32 L345', 'jeans', []],
    ['about W32', 'jeans', []],
    ['W321', 'jeans', []],
    ['M', 'jeans', []],
    ['US 12', 'trousers', []],
    ['W32 L34', 'jacket', []]
  ])('%s of %s: %j', (label, kind, expected) => expect(told(label, kind)).toEqual(expected))
  test('the waist less surely than the leg', () => expect(spread('W32 L34', 'jeans')).toEqual([25, 20]))
})

describe('letters are of a man or a woman, and nobody says which', () => {
  const room = (kind: GarmentKind) => usualRoom('chest', kind) ?? { mm: Number.NaN, sd: Number.NaN }
  test.each<[string, number, number]>([
    ['XXS', 660, 780],
    ['XS', 740, 860],
    ['S', 820, 940],
    ['M', 900, 1020],
    ['m', 900, 1020],
    ['L', 980, 1100],
    ['XL', 1070, 1190],
    ['XXL', 1180, 1310],
    ['2XL', 1180, 1310],
    ['2xl', 1180, 1310],
    ['3XL', 1290, 1430]
  ])('%s: a chest of %d to %d mm, and the room of a shirt', (label, low, high) => {
    const [chest, more] = labelEvidence(label, 'shirt')
    expect(more).toBeUndefined()
    expect(chest?.point).toBe('chest')
    expect(chest?.mm).toBeCloseTo((low + high) / 2 + room('shirt').mm, 6)
    expect(chest?.sdMm).toBeCloseTo(Math.hypot((high - low) / Math.sqrt(12), room('shirt').sd), 6)
  })
  test.each<[string, GarmentKind]>([
    ['M', 'skirt'],
    ['12XL', 'shirt'],
    ['2XLT', 'shirt'],
    ['one size', 'shirt']
  ])('%s of a %s tells nothing', (label, kind) => expect(told(label, kind)).toEqual([]))
})

describe('of suits: a half breast four inches over the label', () => {
  test.each<[string, GarmentKind, string[]]>([
    ...['40R', '40 R', '40s', '40L', '40XL', '40reg', '40 long', '40 short', '40T'].map((label): [string, GarmentKind, string[]] => [
      label,
      'jacket',
      ['chest 1118']
    ]),
    ['30R', 'jacket', ['chest 864']],
    ['29R', 'jacket', []],
    ['60R', 'jacket', ['chest 1626']],
    ['61R', 'jacket', []],
    ['40R', 'coat', []],
    ['40', 'jacket', []],
    ['140R', 'jacket', []],
    ['40RX', 'jacket', []]
  ])('%s of a %s: %j', (label, kind, expected) => expect(told(label, kind)).toEqual(expected))
  test('by so much', () => expect(spread('40R', 'jacket')).toEqual([35]))
})

describe('of the United States: the bodies of pattern catalogues', () => {
  test.each<[string, number, number]>([
    ['US 6', 23, 32.5],
    ['US 8', 24, 33.5],
    ['us10', 25, 34.5],
    ['US 12', 26.5, 36],
    ['US 14', 28, 38],
    ['US 16', 30, 40],
    ['US 18', 32, 42],
    ['US 20', 34, 44]
  ])('%s of a skirt', (label, waist, hip) => {
    expect(told(label, 'skirt')).toEqual([`waist ${Math.round(waist * 25.4 + 25)}`, `hip ${Math.round(hip * 25.4 + 50)}`])
    expect(spread(label, 'skirt')).toEqual([60, 60])
  })
  test('of what is worn above a bust, with the room of the kind', () => {
    const room = usualRoom('chest', 'dress')
    const [bust] = labelEvidence('US 12', 'dress')
    expect(bust?.point).toBe('chest')
    expect(bust?.mm).toBeCloseTo(34 * 25.4 + (room?.mm ?? Number.NaN), 6)
    expect(bust?.sdMm).toBeCloseTo(Math.hypot(60, room?.sd ?? Number.NaN), 6)
  })
  test.each(['US 7', 'US 22', 'US 120', 'UK 12', 'AUS 12', '12'])('%s tells nothing', (label) => expect(told(label, 'skirt')).toEqual([]))
})

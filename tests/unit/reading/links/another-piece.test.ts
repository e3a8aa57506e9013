/** What stands beside the links: the second of a pair, a figure told again, a pair without names, what was measured. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { ofThisPiece, secondPieceAt } from '../../../../core/reading/links/another-piece.ts'
import type { Link } from '../../../../core/reading/links/assign.ts'
import { isBottomBand } from '../../../../core/reading/links/bottom-band.ts'
import { isMeasured, isNear } from '../../../../core/reading/links/measured.ts'
import { sameThere } from '../../../../core/reading/links/same-there.ts'
import { topPair } from '../../../../core/reading/links/top-pair.ts'
import { labelsOf } from '../../../../core/reading/names/labels.ts'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { slice } from '../../../../core/reading/text/text.ts'
import { figureAt, linkOf, nameAt, textOf } from '../given.ts'

describe('the second of several pieces', () => {
  const rest = (words: string) => {
    const text = textOf(words)
    return slice(text, secondPieceAt(text), text.tokens.length)
  }
  test.each([
    ['First one is 30". Second is 32"', 'Second is 32"'],
    ['The first is 30". The second is 32"', 'The second is 32"'],
    ['#1 waist 30"\n#2 waist 32"', '#2 waist 32"'],
    ['no 1: 30"\nno 2: 32"', 'no 2: 32"'],
    // only behind a first, and where a part begins
    ['Second is 32"', ''],
    ['First one is 30" and the second is 32"', ''],
    ['First one is 30". First is 32"', ''],
    ['# 1 waist 30"\n# 2 waist 32"', ''],
    ['1 waist 30"\n2 waist 32"', ''],
    ['First one is 30". Third is 32"', ''],
    ['waist 30"', '']
  ])('%j: %j', (words, expected) => expect(rest(words)).toBe(expected))
})

describe('a figure of what its name describes', () => {
  const kept = (words: string, name: string, figure: string, kind: GarmentKind | null) => {
    const text = textOf(words)
    return ofThisPiece(text, [linkOf(nameAt(text, name, ['waist']), figureAt(text, figure))], kind).length === 1
  }
  test.each<[string, GarmentKind | null, boolean]>([
    ['a 25" waist skirt', 'dress', false],
    ['a 25" waist skirt', 'skirt', true],
    ['a 25" waist skirt', null, true],
    ['a 25" waist petticoat', 'dress', false],
    ['a 25" waist lovely', 'dress', true],
    ['a 25" waist, skirt', 'dress', true],
    // a thing beside what one wears, and words that are part of the name itself
    ['a 25" waist handbag', 'skirt', false],
    ['a 25" waist pocket', 'skirt', true],
    ['a 25" waist 2 piece', 'skirt', true],
    ['a 25" waist', 'skirt', true]
  ])('%s on %s: %s', (words, kind, expected) => expect(kept(words, 'waist', '25"', kind)).toBe(expected))
  test('a name before its figure describes nothing', () => expect(kept('waist skirt 25"', 'waist', '25"', 'dress')).toBe(true))
  test('nor does one that the figure holds for too, one that stands within it, or no name of a point', () => {
    const text = textOf('a 25" waist skirt')
    const [name, figure] = [nameAt(text, 'waist', ['waist']), figureAt(text, '25"')]
    const count = (link: Link) => ofThisPiece(text, [link], 'dress').length
    expect(count(linkOf(name, figure))).toBe(0)
    expect(count(linkOf(name, figure, { before: true }))).toBe(1)
    expect(count(linkOf(name, { ...figure, spanTo: name.to }))).toBe(1)
    expect(count(linkOf({ ...name, role: 'detail', points: [] }, figure))).toBe(1)
  })
  test('a garment whose name begins with the name of the point is the one described', () => {
    const text = textOf('a 25" mini skirt')
    // the name ends within the words of the garment
    expect(ofThisPiece(text, [linkOf(nameAt(text, 'mini', ['length']), figureAt(text, '25"'))], 'dress')).toHaveLength(1)
  })
})

describe('told of a second name without being written again', () => {
  const again = (words: string) => {
    const text = textOf(words)
    const quantities = quantitiesOf(text)
    const labels = labelsOf(text, quantities)
    const [first] = labels
    const [figure] = quantities
    if (!first || !figure) throw new Error(`nothing in "${words}"`)
    return sameThere(text, labels, [linkOf(first, figure)]).map(({ label, quantity }) => `${label.points[0]} ${quantity.value}`)
  }
  test.each([
    ['chest 21", the same at the waist', ['waist 21']],
    ['chest 21", same at waist', ['waist 21']],
    ['chest 21", the same lovely waist', []],
    ['chest 21", the waist', []],
    ['chest 21"\nthe same at the waist', []],
    ['chest 21", 22", the same at the waist', []],
    ['hole 21", the same at the waist', []],
    ['chest 21", the same just about at the waist', []],
    ['chest 21", the same waist', []],
    ['chest 21", the same at the very lovely waist', []],
    ['chest 21", the same at the flat waist', ['waist 21']],
    ['chest 21" a b c d e f g h i, the same at the waist', ['waist 21']],
    ['chest 21" a b c d e f g h i j k l m, the same at the waist', []]
  ])('%j: %j', (words, expected) => expect(again(words)).toEqual(expected))
})

test('a second name that has its own figure, or is of two points, is told nothing again', () => {
  const text = textOf('chest 21", the same at the waist 25"')
  const [chest, waist] = [nameAt(text, 'chest', ['chest'], { basis: 'flat' }), nameAt(text, 'waist', ['waist'])]
  const first = linkOf(chest, figureAt(text, '21"'))
  const again = (name: typeof waist, ...links: Link[]) => sameThere(text, [chest, name], [first, ...links])
  expect(again(waist)).toMatchObject([{ label: { points: ['waist'], basis: 'flat' }, again: false, before: true }])
  expect(again({ ...waist, basis: 'around' })).toMatchObject([{ label: { basis: 'around' } }])
  expect(again(waist, linkOf(waist, figureAt(text, '25"')))).toEqual([])
  expect(again({ ...waist, points: ['waist', 'hip'] })).toEqual([])
  expect(again({ ...waist, role: 'detail' })).toEqual([])
  expect(sameThere(text, [waist], [{ ...first, label: { ...chest, role: 'detail' } }])).toEqual([])
})

describe('22.5 x 29 on a top that names nothing', () => {
  const pair = (words: string, kind: GarmentKind | null = 'shirt') => {
    const text = textOf(words)
    const quantities = quantitiesOf(text)
    return topPair(text, quantities, labelsOf(text, quantities), kind)?.map(({ value }) => value) ?? null
  }
  test.each([
    ['22.5 x 29', [22.5, 29]],
    ['22" x 29"', [22, 29]],
    ['56 cm x 74 cm', [56, 74]],
    ['22, 29', null],
    ['22 x 29 x 10', null],
    ['22 x 29, 23 x 30', null],
    // too small, too large, shorter than wide
    ['14 x 18', [14, 18]],
    ['13 x 18', null],
    ['14 x 17', null],
    ['34 x 40', [34, 40]],
    ['35 x 40', null],
    ['34 x 41', null],
    ['30 x 28.6', [30, 28.6]],
    ['30 x 28', null],
    ['220 mm x 290 mm', null],
    // a name tells a chest or a length, or the pair is of something else
    ['22 x 29, length 30', null],
    ['22 x 29, chest 44', null],
    ['22 x 29, sleeve 24', null],
    ['10 x 22 x 29', null],
    ['22" x 740 mm', null],
    ['22-23 x 29', null],
    ['22 x 29-30', null],
    ['The model is tall. 22 x 29', [22, 29]],
    ['pocket\n22 x 29', [22, 29]],
    ['model wears 22 x 29', null],
    ['22 x 29 of the pocket', [22, 29]],
    ['22 x 29 lovely pocket', null],
    ['22 x 29, cuff 9', [22, 29]],
    ['pocket 22 x 29', null],
    ['22 x 29 pocket', null],
    ['parcel is about 22 x 29', null],
    ['size 22 x 29', null],
    ['size 22" x 29"', [22, 29]]
  ])('%s: %j', (words, expected) => expect(pair(words)).toEqual(expected))
  test.each<[GarmentKind | null, boolean]>([
    ['knit-top', true],
    ['jumper', true],
    ['jacket', false],
    [null, false]
  ])('on %s: %s', (kind, expected) => expect(pair('22 x 29', kind) !== null).toBe(expected))
})

describe('the band that a jacket ends in', () => {
  const band = (words: string, name: string, kind: GarmentKind | null, point: 'waist' | 'hip' = 'waist', more = '') => {
    const text = textOf(words)
    const links = more === '' ? [] : [linkOf(nameAt(text, more, ['hem']), figureAt(text, '19"'))]
    return isBottomBand(text, nameAt(text, name, [point]), kind, links)
  }
  test('is not the waist, where the bottom edge has no other name', () => {
    expect(band('17" at the waistband', 'waistband', 'jacket')).toBe(true)
    expect(band('17" at the waist', 'waist', 'jacket')).toBe(false)
    for (const kind of ['coat', 'jumper', 'knit-top'] as const) expect(band('17" at the waistband', 'waistband', kind)).toBe(true)
    expect(band('17" at the waistband', 'waistband', 'shirt')).toBe(false)
    expect(band('17" at the waist band', 'waist band', 'jacket')).toBe(true)
    expect(band('17" at the waistband', 'waistband', 'skirt')).toBe(false)
    expect(band('17" at the waistband', 'waistband', null)).toBe(false)
    expect(band('17" at the waistband', 'waistband', 'jacket', 'hip')).toBe(false)
    expect(band('17" at the waistband, hem 19"', 'waistband', 'jacket', 'waist', 'hem')).toBe(false)
  })
})

describe('a figure that was taken', () => {
  const measured = (words: string) => {
    const text = textOf(words)
    return isMeasured(text, text.tokens.length - 1)
  }
  test.each([
    ['measures 38', true],
    ['actual 38', true],
    ['measures closer to 38', true],
    ['measured 38', true],
    ['measures at about 38', true],
    ['measures at just about 38', true],
    ['measures at just about exactly 38', false],
    ['measures lovely 38', false],
    ['measures: 38', false],
    ['tag 38', false],
    ['38', false]
  ])('%s: %s', (words, expected) => expect(measured(words)).toBe(expected))
  test('is near the first, whole, half or doubled', () => {
    expect([85, 118, 50, 42.5, 200, 170].map((second) => isNear(100, second))).toEqual([true, true, true, true, true, true])
    expect([83, 120, 61, 41, 160, 240].map((second) => isNear(100, second))).toEqual([false, false, false, false, false, false])
  })
})

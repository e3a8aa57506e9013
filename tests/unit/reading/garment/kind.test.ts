/** What kind of garment it is, and which of several a figure is of. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import type { PointId } from '../../../../core/ids/points.ts'
import {
  earlyKind,
  effectiveKind,
  isReadAlike,
  type KindGiven,
  kindByFigures,
  kindByPoints,
  wordsOfKind
} from '../../../../core/reading/garment/kind.ts'
import { pointOf } from '../../../../core/reading/garment/points-by-kind.ts'
import { readGarments } from '../../../../core/reading/garment/read-garments.ts'
import { garmentsOf } from '../../../../core/reading/garment/sections.ts'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import type { MeasureReading } from '../../../../core/reading/reading.ts'
import { textOf } from '../given.ts'

const words = (title: string | null, text: string, language = 'en', page: KindGiven['page'] = { name: null, category: null, path: null }) =>
  wordsOfKind({ title: title === null ? null : textOf(title, language), text: textOf(text, language), page, language, known: undefined })
const kind = (title: string | null, text = '', names: PointName[] = [], language = 'en') =>
  kindByPoints(words(title, text, language), names, undefined)

const figure = ([point, mm]: [PointId, number]): MeasureReading => ({
  point,
  mm,
  lowMm: mm,
  highMm: mm,
  basis: 'around',
  basisFrom: 'stated',
  unitFrom: 'stated',
  stated: { text: String(mm), start: 0, end: 1, value: mm, unit: 'mm' }
})
const NOTHING_OF_CLOTH = { fibres: [], traits: [], stretchPercent: null, washed: null, structure: null }
/** These measures, and nothing else told. */
const measured = (measures: MeasureReading[]) => ({
  measures,
  told: () => ({ garment: { kind: null, sureness: 0 }, measures, cloth: NOTHING_OF_CLOTH, made: {}, whose: null })
})
/** The last decision, with figures in mm, around. */
const settled = (title: string | null, text: string, figures: [PointId, number][]) =>
  kindByFigures(
    words(title, text),
    figures.map(([point]) => point),
    measured(figures.map(figure)),
    undefined
  )

describe('by its title', () => {
  test.each([
    ['Denim shirt dress', 'dress'],
    ['Wool jacket with matching skirt', 'jacket'],
    ['Sundress, full skirt', 'dress'],
    ['Linen dress, slip', 'dress'],
    ['Dress for a summer coat', 'dress']
  ])('%s', (title, expected) => expect(kind(title)).toMatchObject({ kind: expected, sureness: 0.95, thing: false }))
  test('in French the head of a compound stands first', () => {
    expect(kind('Jean et pull', '', [], 'fr').kind).toBe('jeans')
    expect(earlyKind(words('Jean et pull', '', 'fr'), undefined).kind).toBe('jeans')
  })
  test.each([
    ['ja', 'リブタンク デニムやスカートにも', 'knit-top', 'what it goes with is told behind its name'],
    ['ja', 'デニムに合うシャツ', 'shirt', 'and not of what follows it'],
    ['ja', '春に着たいコート', 'coat', 'nor of the noun behind a season'],
    ['ko', '청바지에 잘 어울리는 셔츠', 'shirt', 'and not of what follows it'],
    ['ja', 'ワンピース風チュニック', 'shirt', 'and what it only looks like'],
    ['ja', 'ジャケット スカート', 'jacket', 'a set is what is named first'],
    ['ja', 'オールインワン デニム', 'jumpsuit', 'a word in passing, parted by a space, tells no other kind'],
    ['ja', 'デニムジャケット', 'jacket', 'the head stands last in a name'],
    ['ko', '나시 청바지나 치마에 어울려요', 'knit-top', 'what it goes with is told behind its name'],
    ['ko', '자켓 바지', 'jacket', 'a set is what is named first']
  ])('%s: %s is of %s: %s', (language, title, expected) => expect(kind(title, '', [], language).kind).toBe(expected))
  test('a thing that is no garment', () => expect(kind('Leather handbag')).toMatchObject({ kind: null, thing: true }))
  test('a kind that is given leads', () => {
    expect(kindByPoints(words('Wool dress', ''), [], 'skirt')).toMatchObject({ kind: 'skirt', sureness: 1 })
    expect(earlyKind(words(null, 'They measure 33 x 30'), 'jeans').kind).toBe('jeans')
  })
  test('a name that holds a garment’s word gives way to the garment', () => {
    expect(kind('Pinafore Lane - waxed coat', 'A coat with a hood.').kind).toBe('coat')
    expect(kind('Pinafore Lane', 'Worn twice.').kind).toBe('dress')
  })
})

describe('by the words of its text', () => {
  test('the one named first and most often', () => {
    expect(kind(null, 'A skirt, a lovely skirt. Goes with a jacket.').kind).toBe('skirt')
  })
  test('what is named in passing counts half', () => {
    expect(kind(null, 'Suit yourself: a skirt').kind).toBe('skirt')
    expect(kind(null, 'Jacket, and a skirt').kind).toBe('jacket')
  })
  test('less surely than by a title', () => expect(kind(null, 'A skirt').sureness).toBeLessThan(0.95))
  test('what it is worn with, and what else is for sale, is not it', () => {
    expect(kind(null, 'Looks good over jeans, a dress or wide trousers.').kind).toBeNull()
    expect(kind(null, 'A skirt. Also selling: coat, coat, coat, jacket.').kind).toBe('skirt')
    expect(kind(null, 'A skirt. #dress #dress #coat #dress').kind).toBe('skirt')
  })
})

describe('by how it is made', () => {
  test.each([
    ['notch lapels, side vents', 'jacket'],
    ['popper crotch', 'jumpsuit'],
    ['a sheath, darted', 'dress']
  ])('%s', (text, expected) => expect(kind(null, text).kind).toBe(expected))
  test('not by what is denied', () => expect(kind(null, 'no lapels, no side vents').kind).toBeNull())
})

describe('by its page', () => {
  const page = (category: string | null, path: string | null) =>
    earlyKind(words('Rust, as new', '', 'en', { name: null, category, path }), undefined)
  test('its address, and where it stands among what is sold', () => {
    expect(page(null, 'https://shop.example/womens/skirts/rust-as-new?id=dress').kind).toBe('skirt')
    expect(page('Clothing > Dresses', null).kind).toBe('dress')
    expect(page(null, '/bags/rust').thing).toBe(true)
  })
  test('a part that names two kinds tells neither', () => expect(page(null, '/dresses-and-skirts/rust').kind).toBeNull())
  test('what its data call it', () => {
    expect(earlyKind(words('Rust, as new', '', 'en', { name: 'Wool dress', category: null, path: null }), undefined).kind).toBe('dress')
  })
  test('less than its title', () => {
    expect(earlyKind(words('Wool coat', '', 'en', { name: null, category: 'Dresses', path: null }), undefined).kind).toBe('coat')
  })
})

describe('by its points, when no word tells', () => {
  test('legs', () => {
    const read = kind(null, '', ['inseam', 'waist'])
    expect(read.kind).toBe('trousers')
    expect(read.sureness).toBeLessThan(0.8)
  })
  test('legs of denim', () => expect(kind(null, 'Selvedge denim', ['inseam', 'waist']).kind).toBe('jeans'))
  test('denim alone tells nothing', () => expect(kind(null, 'Blue denim').kind).toBeNull())
  test('a skirt', () => expect(kind(null, '', ['waist', 'hip', 'length']).kind).toBe('skirt'))
  test('a chest and sleeves tell no kind, but what to judge by', () => {
    expect(kind(null, '', ['chest', 'sleeveLength']).kind).toBeNull()
    expect(effectiveKind(null, ['chest', 'sleeveLength'])).toBe('knit-top')
    expect(effectiveKind(null, ['chest', 'hip'])).toBe('dress')
    expect(effectiveKind('coat', ['inseam'])).toBe('coat')
    expect(effectiveKind(null, [])).toBeNull()
  })
})

describe('by its figures', () => {
  test('an inside leg of 5 in is of shorts', () => {
    expect(
      settled(null, '', [
        ['waist', 860],
        ['inseam', 127]
      ]).kind
    ).toBe('shorts')
    expect(
      settled('Running pants', '', [
        ['waist', 860],
        ['inseam', 127]
      ]).kind
    ).toBe('shorts')
  })
  test('a bust rules out a skirt', () => {
    expect(
      settled('Tiered floral, gathered skirt', 'Straps.', [
        ['chest', 900],
        ['waist', 740],
        ['bodyLength', 1180]
      ]).kind
    ).toBe('dress')
  })
  test('a coat is longer than a jacket', () => {
    expect(
      settled(null, 'Double breasted', [
        ['chest', 1120],
        ['bodyLength', 1080]
      ]).kind
    ).toBe('coat')
  })
  test('figures of several garments tell nothing of one', () => {
    const measures = [figure(['chest', 1000]), { ...figure(['inseam', 780]), of: 'trousers' as GarmentKind }]
    expect(kindByFigures(words('Wool suit', ''), ['chest', 'inseam'], measured(measures), undefined).kind).toBe('jacket')
  })
  test('the evidence is kept, by what it is because of', () => {
    const { evidence } = settled('Pencil skirt', '', [
      ['waist', 700],
      ['skirtLength', 600]
    ])
    expect(evidence().find(({ because }) => because === 'title')).toMatchObject({ for: 'skirt' })
    // so clearly named that its amounts are not asked; where nothing names it they are
    expect(evidence().map(({ because }) => because)).not.toContain('figures')
    const unnamed = settled('', '', [
      ['waist', 700],
      ['hip', 960]
    ])
    expect(unnamed.evidence().map(({ because }) => because)).toContain('figures')
  })
  test('on kinds of one half figures mean the same, but for shorts and jumpsuits', () => {
    expect(isReadAlike('jeans', 'trousers')).toBe(true)
    expect(isReadAlike('shorts', 'trousers')).toBe(false)
    expect(isReadAlike(null, 'trousers')).toBe(false)
    expect(isReadAlike('dress', 'skirt')).toBe(false)
  })
})

describe('several garments in one text', () => {
  const suit = textOf('Jacket: chest 40\nTrousers: waist 34')
  test('a figure is of the one whose heading it stands under', () => {
    const { garmentAt } = garmentsOf(suit, 'jacket')
    const at = (word: string) => garmentAt(suit.tokens.findIndex(({ text }) => text === word))
    expect(at('chest')).toEqual({ kind: 'jacket', of: 'jacket' })
    expect(at('waist')).toEqual({ kind: 'trousers', of: 'trousers' })
  })
  test('headings of one half of the body part nothing, but for a waistcoat', () => {
    const layers = textOf('Jacket: chest 40\nShirt: chest 38')
    expect(garmentsOf(layers, 'jacket').garmentAt(5)).toEqual({ kind: 'jacket', of: null })
    const three = textOf('Jacket: chest 40\nWaistcoat: chest 38')
    expect(garmentsOf(three, 'jacket').garmentAt(6)).toEqual({ kind: 'waistcoat', of: 'waistcoat' })
  })
  test('a word inside a sentence is no heading', () => {
    const prose = textOf('Worn with a jacket and trousers, chest 40')
    expect(garmentsOf(prose, 'dress').garmentAt(8).of).toBeNull()
  })
})

test('the stage as a whole: the kind as told, and what figures are judged by', () => {
  const read = readGarments(textOf('Lovely'), kind(null, 'Lovely'), ['chest', 'sleeveLength'])
  expect([read.kindRead.kind, read.kind, read.garmentAt(0)]).toEqual([null, 'knit-top', { kind: 'knit-top', of: null }])
})

describe('the point that a name means on a kind', () => {
  test.each([
    ['length', 'jeans', 'outseam'],
    ['length', 'skirt', 'skirtLength'],
    ['length', 'coat', 'bodyLength'],
    ['length', null, null],
    ['length', 'other', 'bodyLength'],
    ['hem', 'jeans', 'legOpening'],
    ['hem', 'dress', 'sweep'],
    ['hem', 'jumper', 'hem'],
    ['width', 'shirt', 'chest'],
    ['legWidth', 'shorts', 'legOpening'],
    ['legWidth', 'trousers', 'thigh'],
    ['waistband', 'jacket', null],
    ['hem', 'jumpsuit', 'legOpening']
  ] as const)('%s of %s is %s', (name, its, point) => expect(pointOf(name, its)).toBe(point))
})

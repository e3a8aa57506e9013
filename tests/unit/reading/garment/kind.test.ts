/** What kind of garment it is, and which of several a figure is of. */
import { describe, expect, test } from 'vitest'
import { earlyKindOf, effectiveKind, kindOf } from '../../../../core/reading/garment/kind.ts'
import { pointOf } from '../../../../core/reading/garment/points-by-kind.ts'
import { readGarments } from '../../../../core/reading/garment/read-garments.ts'
import { garmentsOf } from '../../../../core/reading/garment/sections.ts'
import type { PointName } from '../../../../core/reading/languages/lexicon.ts'
import { textOf } from '../given.ts'

const kind = (title: string | null, words = '', names: PointName[] = [], language = 'en') =>
  kindOf(title === null ? null : textOf(title, language), textOf(words, language), names, language)

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
    expect(earlyKindOf(textOf('Jean et pull', 'fr'), textOf('', 'fr'), 'fr')).toBe('jeans')
  })
  test.each([
    ['ja', 'リブタンク デニムやスカートにも', 'knit-top', 'what it goes with is told behind its name'],
    ['ja', 'ワンピース風チュニック', 'shirt', 'and what it only looks like'],
    ['ja', 'ジャケット スカート', 'jacket', 'a set is what is named first'],
    ['ja', 'オールインワン デニム', 'jumpsuit', 'a word in passing, parted by a space, tells no other kind'],
    ['ja', 'デニムジャケット', 'jacket', 'the head stands last in a name'],
    ['ko', '나시 청바지나 치마에 어울려요', 'knit-top', 'what it goes with is told behind its name'],
    ['ko', '자켓 바지', 'jacket', 'a set is what is named first']
  ])('%s: %s is of %s: %s', (language, title, expected) => expect(kind(title, '', [], language).kind).toBe(expected))
  test('a thing that is no garment', () => expect(kind('Leather handbag')).toMatchObject({ kind: null, thing: true }))
  test('a kind that is given leads', () => {
    expect(kindOf(textOf('Wool dress'), textOf(''), [], 'en', 'skirt')).toMatchObject({ kind: 'skirt', sureness: 1 })
    expect(earlyKindOf(null, textOf('They measure 33 x 30'), 'en', 'jeans')).toBe('jeans')
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
})

describe('by its points, when no word tells', () => {
  test('legs', () => expect(kind(null, '', ['inseam', 'waist'])).toMatchObject({ kind: 'trousers', sureness: 0.5 }))
  test('legs of denim', () => expect(kind(null, 'Selvedge denim', ['inseam', 'waist']).kind).toBe('jeans'))
  test('a skirt', () => expect(kind(null, '', ['waist', 'hip', 'length'])).toMatchObject({ kind: 'skirt', sureness: 0.4 }))
  test('a chest and sleeves tell no kind, but what to judge by', () => {
    expect(kind(null, '', ['chest', 'sleeveLength']).kind).toBeNull()
    expect(effectiveKind(null, ['chest', 'sleeveLength'])).toBe('knit-top')
    expect(effectiveKind(null, ['chest', 'hip'])).toBe('dress')
    expect(effectiveKind('coat', ['inseam'])).toBe('coat')
    expect(effectiveKind(null, [])).toBeNull()
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
  const read = readGarments(textOf('Lovely'), null, ['chest', 'sleeveLength'], { language: 'en', known: undefined })
  expect([read.kindRead.kind, read.kind, read.garmentAt(0)]).toEqual([null, 'knit-top', { kind: 'knit-top', of: null }])
})

describe('the point that a name means on a kind', () => {
  test.each([
    ['length', 'jeans', 'outseam'],
    ['length', 'skirt', 'skirtLength'],
    ['length', 'coat', 'bodyLength'],
    ['length', null, null],
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

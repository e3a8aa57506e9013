/** The cut by its words: what is told of this garment, in which of its texts, and what is denied or of another. */
import { describe, expect, test } from 'vitest'
import type { GarmentKind } from '../../../../core/ids/kinds.ts'
import { cutOf } from '../../../../core/reading/garment/cut.ts'
import { textOf } from '../given.ts'

/** Facets with their values, by name. */
const cut = (words: string, kind: GarmentKind | null, title?: string) => {
  const first = title === undefined ? null : textOf(title)
  const read = cutOf(first === null ? [textOf(words)] : [first, textOf(words)], first, kind)
  return Object.entries(read)
    .map(([facet, one]) => `${facet} ${one?.value}`)
    .sort()
    .join(', ')
}

describe('a facet that such a garment has', () => {
  test.each<[string, GarmentKind | null, string]>([
    ['skinny', 'jeans', 'leg skinny'],
    ['skinny', 'skirt', ''],
    ['skinny', null, ''],
    ['maxi', 'skirt', 'dressLength maxi'],
    ['maxi', 'jeans', ''],
    // the length inside the name of a shape
    ['pleated midi', 'skirt', 'dressLength midi, silhouette pleated'],
    // the first telling stands, unless it became something else, or is the fuller name
    ['maxi, midi', 'skirt', 'dressLength maxi'],
    ['fine knit, felted', 'jumper', 'knit felted'],
    ['felted, fine knit', 'jumper', 'knit felted'],
    ['gathered, smock', 'dress', 'silhouette smock'],
    ['a-line, smock', 'dress', 'silhouette a-line'],
    ['fit and flare, empire line', 'dress', 'silhouette empire'],
    ['a-line, empire line', 'dress', 'silhouette a-line']
  ])('%s of a %s: %s', (words, kind, expected) => expect(cut(words, kind)).toBe(expected))
  test('the title before the text, and surer', () => {
    expect(cut('maxi', 'skirt', 'Midi skirt')).toBe('dressLength midi')
    const title = textOf('Midi skirt')
    expect(cutOf([title, textOf('A-line')], title, 'skirt')).toEqual({
      dressLength: { value: 'midi', sureness: 0.95, from: 'told' },
      silhouette: { value: 'a-line', sureness: 0.8, from: 'told' }
    })
  })
})

describe('what is denied', () => {
  test.each<[string, string]>([
    ['not skinny', ''],
    ['not skinny, not flared', ''],
    // just so instead
    ['not skinny, not flared, just a straight leg', 'leg straight'],
    ['not flared either, just a straight leg', 'leg straight'],
    ['not flared, just as it is, no skinny', ''],
    ['Not just. Skinny', 'leg skinny'],
    ['just lovely long ones, not skinny', '']
  ])('%s: %j', (words, expected) => expect(cut(words, 'jeans')).toBe(expected))
})

describe('how a figure was taken', () => {
  test.each<[string, string]>([
    ['relaxed', 'closeness relaxed'],
    ['16" relaxed, 21" stretched', ''],
    ['chest 16 inches, relaxed', ''],
    ['16 a b c relaxed', ''],
    // four words behind a figure at the most, and by itself
    ['16 a b c d relaxed', 'closeness relaxed'],
    ['a relaxed fit', 'closeness relaxed'],
    ['16" oversized', 'closeness oversized']
  ])('%s: %j', (words, expected) => expect(cut(words, 'shirt')).toBe(expected))
})

describe('of another garment', () => {
  test.each<[string, GarmentKind, string]>([
    ['goes with wide leg trousers', 'jumpsuit', ''],
    ['goes with wide leg trousers', 'trousers', 'leg wide'],
    ['goes with a pair of wide leg trousers', 'jumpsuit', 'leg wide'],
    ['lovely wide leg trousers', 'jumpsuit', 'leg wide'],
    ['goes with wide leg', 'jumpsuit', 'leg wide'],
    ['goes with a maxi skirt', 'dress', ''],
    ['a maxi skirt', 'dress', 'dressLength maxi']
  ])('%s, on a %s: %j', (words, kind, expected) => expect(cut(words, kind)).toBe(expected))
})

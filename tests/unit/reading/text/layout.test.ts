/** Lines, sentences, segments and paragraphs. */
import { describe, expect, test } from 'vitest'
import { layoutOf } from '../../../../core/reading/text/layout.ts'
import { textOf } from '../given.ts'

/** The words of a text by what they stand in, parted by “ | ”. */
const parts = (words: string, by: 'line' | 'sentence' | 'segment' | 'paragraph') => {
  const { tokens } = textOf(words)
  const places = layoutOf(tokens)[by]
  const found = new Map<number, string[]>()
  for (const [at, { kind, text }] of tokens.entries()) {
    const place = places[at] as number
    if (kind !== 'break') found.set(place, [...(found.get(place) ?? []), text])
  }
  return [...found.values()].map((one) => one.join(' ')).join(' | ')
}

describe('sentences', () => {
  test.each([
    ['lovely. new', 'lovely . | new'],
    ['lovely! new', 'lovely ! | new'],
    ['lovely!new', 'lovely ! | new'],
    ['lovely? new', 'lovely ? | new'],
    ['lovely, new; old', 'lovely , new ; old'],
    ['lovely\nnew', 'lovely | new'],
    // no end: between figures and letters, behind a short form, at the beginning
    ['waist 30.5 wide', 'waist 30 . 5 wide'],
    ['lovely.new', 'lovely . new'],
    ['approx. 30', 'approx . 30'],
    ['the waist is approx. 30 cm wide', 'the waist is approx . 30 cm wide'],
    ['the waist is lovely. 30 cm wide', 'the waist is lovely . | 30 cm wide'],
    ['approx.\n30', 'approx . | 30'],
    ['lovely. ', 'lovely .'],
    ['. lovely', '. lovely'],
    ['lovely\n. new', 'lovely | . new'],
    ['lovely.. new', 'lovely . . new'],
    ['30 cm. new', '30 cm . | new'],
    ['30 in. new', '30 in . | new'],
    ['30 . new', '30 . | new'],
    // the dot stands for a colon
    ['Waist. 15', 'waist . 15'],
    ['Waist. 15\nHip. 20', 'waist . 15 | hip . 20'],
    ['Waist. ½', 'waist . ½'],
    ['Waist flat. 15"', 'waist flat . 15 "'],
    ['waist at the top. 15', 'waist at the top . | 15'],
    ['30 waist. 15', '30 waist . | 15'],
    ['Waist. Lovely', 'waist . | lovely'],
    ['Waist. 15 and so on it goes', 'waist . | 15 and so on it goes'],
    ['Waist. 15 cm flat in all', 'waist . | 15 cm flat in all'],
    ['Waist. 15 cm flat now', 'waist . 15 cm flat now'],
    ['Waist. 15 x 20', 'waist . | 15 x 20']
  ])('%j: %s', (words, expected) => expect(parts(words, 'sentence')).toBe(expected))
})

test.each([
  ['a, b; c | d • e · f * g', 'a , | b ; | c | | d • | e · | f * | g'],
  ['a: b (c) - d / e', 'a : b ( c ) - d / e'],
  ['lovely. new', 'lovely . | new'],
  ['a\nb', 'a | b']
])('segments of %j: %s', (words, expected) => expect(parts(words, 'segment')).toBe(expected))

test('lines end at a break, paragraphs at two', () => {
  expect(parts('a b\nc. d\n\ne', 'line')).toBe('a b | c . d | e')
  expect(parts('a b\nc. d\n\ne', 'paragraph')).toBe('a b c . d | e')
})

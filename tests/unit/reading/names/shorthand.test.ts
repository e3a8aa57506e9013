/** Names of one letter. */
import { describe, expect, test } from 'vitest'
import { namesIn } from '../given.ts'

describe('in a run of two different ones', () => {
  test.each([
    ['en', 'W 16" H 20"', ['w: W', 'h: H']],
    ['en', 'W:16" H-20"', ['w: W', 'h: H']],
    ['en', 'W::16" H:20"', ['w: W', 'h: H']],
    ['en', '20" W x 28" L', ['w: W', 'l: L']],
    ['en', '20" W, 28" L', ['w: W', 'l: L']],
    ['en', 'L: 22W x 28L', ['w: W', 'l: L']],
    ['en', 'W 16" W 20"', []],
    ['en', 'S 16" S 20"', []],
    ['en', 'W:::16" H:::20"', []],
    ['en', 'xw 16" h 20"', []],
    ['en', '\'w 16" h 20"', []],
    ['en', '20" W lovely 28" L lovely', []],
    // eight words apart, on one line sixteen
    ['en', 'W 16"\na b c d e f g H 20"', ['w: W', 'h: H']],
    ['en', 'W 16"\na b c d e f g h H 20"', ['w: W']],
    ['en', 'W 16" a b c d e f g h i j k l m n o p H 20"', ['w: W', 'h: H']],
    ['en', 'W 16" a b c d e f g h i j k l m n o p q H 20"', []]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('a W or an L that has a line to itself', () => {
  test.each([
    ['en', 'W 68cm', ['w: W']],
    ['en', 'L 68cm', ['l: L']],
    ['en', '- W 68cm', ['w: W']],
    ['en', 'lovely\nW 68cm\nlovely', ['w: W']],
    ['en', 'lovely\n- W 68cm', ['w: W']],
    ['en', 'W 68cm (27")', ['w: W']],
    ['en', 'W 68cm flat', ['w: W']],
    ['en', 'W 68cm →', ['w: W']],
    ['en', 'W 68', []],
    ['en', 'H 68cm', []],
    ['en', 'W 68cm lovely', []],
    ['en', 'lovely W 68cm', []],
    ['en', '-- W 68cm', []],
    ['en', '68cm W', []]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('an L right behind a figure with a name', () => {
  test.each([
    ['en', 'P2P 21" L 28"', ['chest flat: P2P', 'l: L']],
    ['en', 'P2P: 21", L 28"', ['chest flat: P2P', 'l: L']],
    ['en', 'P2P 21" flat L 28"', ['chest flat: P2P', 'l: L']],
    ['en', 'P2P 21" lovely L 28"', ['chest flat: P2P']],
    ['en', 'P2P 21" H 28"', ['chest flat: P2P']],
    ['en', 'thigh 21" L 28"', ['thigh: thigh']],
    ['en', '21" L 28"', []]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

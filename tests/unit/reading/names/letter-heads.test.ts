/** Letters that head a row of figures. */
import { describe, expect, test } from 'vitest'
import { namesIn } from '../given.ts'

describe('as many figures as letters', () => {
  test.each([
    ['en', 'W / H / R 16 / 20 / 11', ['w: W', 'h: H', 'r: R']],
    ['en', 'W / H / R\n16 / 20 / 11', ['w: W', 'h: H', 'r: R']],
    ['en', 'W H 16 20', ['w: W', 'h: H']],
    ['en', 'W/H 16x20', ['w: W', 'h: H']],
    ['en', 'W | H : 16 | 20', ['w: W', 'h: H']],
    // fewer or more figures, a letter twice
    ['en', 'W / H / R 16 / 20', []],
    ['en', 'W / H / R 16 / 20 / 11 / 50', []],
    ['en', 'W / H / W 16 / 20 / 11', []],
    // something between, or too far below
    ['en', 'W / H / R\n\n16 / 20 / 11', []],
    ['en', 'W | H lovely 16 | 20', []],
    ['en', 'W | H | 16 lovely 20', []],
    ['en', 'W | H\n16 |\n20', []],
    // eight letters at most, and no other words
    ['en', 'W | waist | H 16 | 20 | 18', ['waist: waist']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

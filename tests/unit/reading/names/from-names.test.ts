/** Where it starts is all the name it has. */
import { describe, expect, test } from 'vitest'
import { namesIn } from '../given.ts'

describe('how long the garment is from there', () => {
  test.each([
    ['en', 'from shoulder 21"', ['bodyLength: from shoulder']],
    ['en', 'from shoulder: 21"', ['bodyLength: from shoulder']],
    ['en', 'from shoulder - 21"', ['bodyLength: from shoulder']],
    ['en', 'from the shoulder 21"', ['bodyLength: from the shoulder']],
    ['en', 'from top shoulder 21"', ['bodyLength: from top shoulder']],
    ['en', 'from waist 24"', ['skirtLength: from waist']],
    ['en', 'from waist it is 24"', ['skirtLength: from waist']],
    ['en', 'long, from shoulder 21"', ['length: long', 'bodyLength: from shoulder']],
    ['en', 'lovely; from shoulder 21"', ['bodyLength: from shoulder']],
    ['en', 'lovely\nfrom shoulder 21"', ['bodyLength: from shoulder']],
    // not where a part of a list begins
    ['en', 'lovely from shoulder 21"', []],
    ['en', 'lovely / from shoulder 21"', []],
    // from nowhere a length begins, or parted from its figure
    ['en', 'from the hip 21"', []],
    ['en', 'from shoulder lovely 21"', []],
    ['en', 'from shoulder, 21"', []],
    ['en', 'to shoulder 21"', []],
    ['en', 'to the top shoulder 21"', []],
    ['en', 'from it it is waist 24"', []]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('from the armpit, behind a sleeve', () => {
  test.each([
    ['en', 'sleeve 24", from the armpit 18"', ['sleeveLength: sleeve', 'sleeveUnderarm: from the armpit']],
    ['en', 'sleeve 60 from the shoulder, from the armpit 46', ['sleeveLength: sleeve', 'sleeveUnderarm: from the armpit']],
    ['en', 'from armpit 18"', []],
    ['en', 'chest 24", from the armpit 18"', ['chest: chest']],
    ['en', 'length 24", from the armpit 18"', ['length: length']],
    ['en', 'sleeve 24", length 25", from the armpit 18"', ['sleeveLength: sleeve', 'length: length']],
    ['en', 'sleeve 24". From the armpit 18"', ['sleeveLength: sleeve']],
    ['en', 'sleeve 24"\nfrom the armpit 18"', ['sleeveLength: sleeve']],
    [
      'en',
      'sleeve 24", shoulder 16", from the armpit 18"',
      ['sleeveLength: sleeve', 'shoulderWidth: shoulder', 'sleeveUnderarm: from the armpit']
    ],
    ['en', 'sleeve 24", chest 16", from the armpit 18"', ['sleeveLength: sleeve', 'chest: chest', 'sleeveUnderarm: from the armpit']],
    ['en', 'sleeve 24", waist 16", from the armpit 18"', ['sleeveLength: sleeve', 'waist: waist']],
    ['en', 'sleeve 24" a b c d e f g, from the armpit 18"', ['sleeveLength: sleeve', 'sleeveUnderarm: from the armpit']],
    ['en', 'sleeve 24" a b c d e f g h i, from the armpit 18"', ['sleeveLength: sleeve']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

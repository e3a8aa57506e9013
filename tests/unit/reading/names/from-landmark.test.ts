/** Where a length starts says which length it is. */
import { describe, expect, test } from 'vitest'
import { namesIn } from '../given.ts'

describe('a sleeve', () => {
  test.each([
    ['en', 'sleeve from the collar 33"', ['sleeveFromCentreBack: sleeve from the collar']],
    ['en', 'sleeve (from centre back) 33"', ['sleeveFromCentreBack: sleeve (from centre back']],
    ['en', 'sleeve from armpit 18"', ['sleeveUnderarm: sleeve from armpit']],
    ['en', 'sleeve from the shoulder 24"', ['sleeveLength: sleeve from the shoulder']],
    ['en', 'sleeve collar 33"', ['sleeveLength: sleeve', 'neck: collar']],
    // from the side of the neck it is none that is kept, from the middle of the back it is
    ['en', 'sleeve from side neck 30"', ['detail: sleeve from side neck']],
    ['en', 'sleeve from centre back neck 30"', ['sleeveFromCentreBack: sleeve from centre back neck']],
    ['en', 'sleeve (from neckline) 30"', ['detail: sleeve (from neckline']],
    ['en', 'sleeve from the neckline 30"', ['detail: sleeve from the neckline']],
    ['en', 'sleeve from the neckline at centre back 30"', ['sleeveFromCentreBack: sleeve from the neckline at centre back']],
    ['en', 'sleeve (inner armpit) 18"', ['sleeveUnderarm: sleeve (inner armpit']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('a length', () => {
  test.each([
    ['en', 'length from waist 24"', ['skirtLength: length from waist']],
    ['en', 'length from the neck 28"', ['bodyLength: length from the neck']],
    ['en', 'length from the shoulder 28"', ['bodyLength: length from the shoulder']],
    ['en', 'length measured from the top of the shoulder 28"', ['bodyLength: length measured from the top of the shoulder']],
    ['en', 'length - from the shoulder 28"', ['bodyLength: length - from the shoulder']],
    // from the armpit it is none that is kept
    ['en', 'length from the armpit 18"', ['detail: length from the armpit']],
    ['en', 'length from the bust 18"', ['detail: length from the bust']],
    // other words, a figure, a line between
    ['en', 'length from lovely shoulder 28"', ['length: length', 'shoulderWidth: shoulder']],
    ['en', 'length; from the shoulder 28"', ['length: length', 'bodyLength: from the shoulder']],
    ['en', 'length\nfrom the shoulder 28"', ['length: length', 'bodyLength: from the shoulder']],
    ['en', 'length, waist 28"', ['length: length', 'waist: waist']],
    // where to the place is told too, it is the whole length
    ['en', 'length from the neck to hem 28"', ['bodyLength: length from the neck to hem']],
    // another name keeps its own
    ['en', 'inseam from the waist 28"', ['inseam: inseam from the waist']],
    ['en', 'length (from waist) 24"', ['skirtLength: length (from waist']],
    ['en', 'length (from neckline) 30"', ['bodyLength: length (from neckline']],
    ['en', 'length (waist) 24"', ['skirtLength: length (waist']],
    ['en', 'length (measured, from waist) 24"', ['skirtLength: length (measured, from waist']],
    ['en', "length 'from waist' 24\"", ["skirtLength: length 'from waist"]],
    ['en', 'length (from the hip) 24"', ['length: length (from the hip']],
    ['en', 'length - waist 24"', ['length: length', 'waist: waist']],
    ['en', 'length (from\nwaist) 24"', ['length: length', 'waist: waist']],
    ['en', 'length (from 2 waist) 24"', ['length: length', 'waist: waist']],
    ['en', 'length (from a lovely waist) 24"', ['length: length']],
    ['en', 'length (from a the a the waist) 24"', ['skirtLength: length (from a the a the waist']],
    ['en', 'length (from a the a the a waist) 24"', ['length: length (from a the a the a waist']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('a place told by two landmarks', () => {
  test.each([
    ['en', 'length from centre back collar 28"', ['bodyLength: length from centre back collar']],
    ['en', 'length from centre back of the neck 28"', ['bodyLength: length from centre back of the neck']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('right below the neck, without a “from”', () => {
  test.each([
    ['en', 'back length under collar 28"', ['bodyLength: back length under collar']],
    ['en', 'length under the arm 28"', ['length: length']],
    ['fr', 'longueur dos sous col 70 cm', ['bodyLength: longueur dos sous col']],
    ['fr', 'longueur sous le col 70 cm', ['bodyLength: longueur sous le col']],
    ['en', 'length beneath collar 28"', ['bodyLength: length beneath collar']],
    ['en', 'length beneath the collar 28"', ['bodyLength: length beneath the collar']],
    ['en', 'length beneath the lovely collar 28"', ['length: length', 'neck: collar']],
    ['en', 'length beneath waist 28"', ['length: length', 'waist: waist']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('the next name’s own start, or that of the figure behind it', () => {
  test.each([
    ['en', 'sleeve 25", length (from the collar) 42"', ['sleeveLength: sleeve', 'bodyLength: length (from the collar']],
    ['en', 'sleeve 24", from the armpit 18"', ['sleeveLength: sleeve', 'sleeveUnderarm: from the armpit']],
    [
      'en',
      'sleeve, from the shoulder 60, from the armpit 46',
      ['sleeveLength: sleeve', 'bodyLength: from the shoulder', 'sleeveUnderarm: from the armpit']
    ]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('where verbs stand last, “from” stands behind the place', () => {
  test.each([['ja', '総丈(脇から) 80', ['detail: 総丈(脇から']]])('%s: %j', (language, words, expected) =>
    expect(namesIn(words, language)).toEqual(expected)
  )
})

/** Where a length ends is part of its name. */
import { describe, expect, test } from 'vitest'
import { namesIn } from '../given.ts'

describe('a length down to its hem, a sleeve to its end', () => {
  test.each([
    ['en', 'length down to hem 54"', ['length: length down to hem']],
    ['en', 'rise to hem 11"', ['rise: rise to hem']],
    ['en', 'sleeve to cuff 23"', ['sleeveLength: sleeve to cuff']],
    // no end, or none of a length
    ['en', 'length down 54"', ['length: length']],
    ['en', 'length hem 54"', ['length: length', 'bottomEdge: hem']],
    ['en', 'length down to the knee 54"', ['length: length']],
    ['en', 'thigh down to hem 54"', ['thigh: thigh']],
    // parted from it
    ['en', 'length / down to hem 54"', ['length: length']],
    ['en', 'length lovely to hem 54"', ['length: length']],
    // five words on
    ['en', 'length is right down to hem 54"', ['length: length is right down to hem']],
    // two names in one have no end
    ['en', 'front/back rise to hem 11"', ['frontRise+backRise: front/back rise']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('from where to where behind a sleeve', () => {
  test.each([
    ['en', 'sleeve, pit to end 18"', ['sleeveUnderarm: sleeve, pit to end']],
    ['en', 'sleeve: neck to cuff 33"', ['sleeveFromCentreBack: sleeve: neck to cuff']],
    ['en', 'sleeve (armpit to cuff) 18"', ['sleeveUnderarm: sleeve (armpit to cuff']],
    ['en', 'sleeve lovely pit to end 18"', ['sleeveLength: sleeve', 'detail: pit to end']],
    ['en', 'sleeve. Pit to end 18"', ['sleeveLength: sleeve', 'detail: Pit to end']],
    ['en', 'sleeve\npit to hem 18"', ['sleeveLength: sleeve', 'detail: pit to hem']],
    ['en', 'chest, pit to hem 18"', ['chest: chest', 'detail: pit to hem']],
    ['en', 'sleeve, pit to waist 18"', ['sleeveLength: sleeve', 'detail: pit to waist']],
    // with its own figure before it: only from the armpit, and with “from”
    ['en', 'sleeve 24", from armpit to hem 17"', ['sleeveLength: sleeve', 'sleeveUnderarm: armpit to hem']],
    ['en', 'sleeve 24", armpit to hem 17"', ['sleeveLength: sleeve', 'detail: armpit to hem']],
    ['en', 'sleeve 24", from shoulder to hem 26"', ['sleeveLength: sleeve', 'bodyLength: from shoulder to hem']],
    ['en', 'sleeve 24". From armpit to hem 17"', ['sleeveLength: sleeve', 'detail: armpit to hem']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

describe('where the name before it ends', () => {
  test.each([
    ['en', 'sleeve, seam to frill 25"', ['sleeveLength: sleeve, seam to frill']],
    ['en', 'sleeve, seam and frill 25"', ['sleeveLength: sleeve', 'detail: frill']],
    ['en', 'sleeve. Seam to frill 25"', ['sleeveLength: sleeve', 'detail: frill']],
    ['en', 'sleeve\nseam to frill 25"', ['sleeveLength: sleeve', 'detail: frill']],
    ['en', 'sleeve 24", seam to frill 25"', ['sleeveLength: sleeve', 'detail: frill']],
    ['en', 'sleeve, a b seam to frill 25"', ['sleeveLength: sleeve, a b seam to frill']],
    ['en', 'sleeve, a b c seam to frill 25"', ['sleeveLength: sleeve', 'detail: frill']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

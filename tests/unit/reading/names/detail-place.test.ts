/** A point that only says where a detail is. */
import { describe, expect, test } from 'vitest'
import { namesIn } from '../given.ts'

describe('a detail and where it is', () => {
  test.each([
    ['en', 'zips at the cuffs 5"', ['detail: zips at the cuffs']],
    ['en', 'lace at hem 4"', ['detail: lace at hem']],
    ['en', 'apron (length): 58 cm', ['detail: apron (length']],
    // other words between, or none
    ['en', 'lace, at hem 4"', ['detail: lace', 'bottomEdge: hem']],
    ['en', 'lace hem 4"', ['detail: lace', 'bottomEdge: hem']],
    ['en', 'lace the hem 4"', ['detail: lace', 'bottomEdge: hem']],
    ['en', 'lace at lovely hem 4"', ['detail: lace', 'bottomEdge: hem']],
    ['en', 'apron, (length): 58 cm', ['detail: apron', 'length: length']],
    ['en', 'apron (length and): 58 cm', ['detail: apron', 'length: length']],
    // a girth of the body is a measure all the same
    ['en', 'lace at the waist 30"', ['detail: lace', 'waist: waist']],
    // so is the edge that is of elastic
    ['en', 'elastic at the hem 4"', ['bottomEdge: hem']],
    ['en', 'lace at the chest 40"', ['detail: lace', 'chest: chest']],
    ['en', 'lace at the hip 40"', ['detail: lace', 'hip: hip']],
    ['en', 'rib at the hem 4"', ['detail: rib', 'bottomEdge: hem']],
    ['en', 'lace at button 4"', ['detail: lace', 'detail: button']],
    ['en', 'lace at W 4" H 5"', ['detail: lace', 'w: W', 'h: H']],
    ['en', 'apron [length]: 58 cm', ['detail: apron', 'length: length']],
    ['en', 'apron (the length): 58 cm', ['detail: apron', 'length: length']]
  ])('%s: %j', (language, words, expected) => expect(namesIn(words, language)).toEqual(expected))
})

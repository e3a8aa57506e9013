/** Is a page one listing, or a shop's front and a search page? */
import { describe, expect, test } from 'vitest'
import { isManyListings } from '../../../../core/reading/facts/single-listing.ts'
import { textOf } from '../given.ts'

const ROWS = ['Tea dress £24', 'Wool coat £65', 'Pleated skirt £18', 'Silk blouse £22', 'Denim jacket £30', 'Cord trousers £20']
const many = (lines: readonly string[], measured = 0) => isManyListings(textOf(lines.join('\n')), measured)

describe('a page of many things', () => {
  test('six names, each with its sum', () => expect(many(ROWS)).toBe(true))
  test('fewer sums where the page says that it is a list', () => {
    expect(many(ROWS.slice(0, 4))).toBe(false)
    expect(many(['212 results', ...ROWS.slice(0, 4)])).toBe(true)
  })
  test('the same sum again and again is of one thing', () => expect(many(ROWS.map((row) => row.replace(/\d+/, '20')))).toBe(false))
})

describe('what counts', () => {
  test('six sums, or four of a list', () => {
    expect(many(ROWS.slice(0, 5))).toBe(false)
    expect(many(['212 results', ...ROWS.slice(0, 3), 'Wool blouse'])).toBe(false)
    expect(many(ROWS, 2)).toBe(true)
  })
  test('four names of garments or things', () => {
    expect(many(['Dress £24', 'coat £65', 'skirt £18', 'bag £22', '£30', '£20'])).toBe(true)
    expect(many(['Dress £24', 'coat £65', 'skirt £18', 'lovely £22', '£30', '£20'])).toBe(false)
  })
  test('a sign before the sum, behind it, or the word of a currency', () => {
    expect(many(ROWS.map((row) => row.replace(/£(\d+)/, '$1 €')))).toBe(true)
    expect(many(ROWS.map((row) => row.replace(/£(\d+)/, '$1 pounds')))).toBe(true)
    expect(many(ROWS.map((row) => row.replace(/£(\d+)/, '$1')))).toBe(false)
  })
  test('hundredths are of their sum', () => {
    const cents = ['11', '12', '13', '14', '15', '16']
    expect(many(ROWS.map((row, at) => row.replace(/£\d+/, `£20.${cents[at]}`)))).toBe(false)
    expect(many(ROWS.map((row, at) => row.replace(/£\d+/, `20,${cents[at]} €`)))).toBe(false)
  })
  test('no former prices', () => {
    expect(many(ROWS.map((row) => row.replace('£', 'rrp £')))).toBe(false)
    expect(many(ROWS.map((row) => row.replace(/£(\d+)/, '£$1 rrp')))).toBe(false)
  })
})

describe('one listing', () => {
  test('that measures what it sells', () => expect(many(ROWS, 3)).toBe(false))
  test('with others named below it', () => expect(many(['Tea dress £24', 'You may also like', ...ROWS.slice(1)])).toBe(false))
  test('with sums of postage and of what it cost', () => {
    expect(many(['Dress, coat, skirt, blouse: all mine', '£20', 'postage £3', 'postage £4', 'postage £5', 'rrp £90', 'rrp £80'])).toBe(
      false
    )
  })
})

/** Whose dollars a price is in. */
import { expect, test } from 'vitest'
import { isChinese, postedIn } from '../../../../core/reading/facts/posted-in.ts'

test.each([
  ['Free postage within Australia', 'AU'],
  ['Shipping to Canada only', 'CA'],
  ['NZ wide', 'NZ'],
  ['Australia-wide shipping', 'AU'],
  ['australiawide shipping', 'AU'],
  // a word of a phrase alone, and one that only ends or begins like it
  ['Made in Australia', ''],
  ['Australia wider', ''],
  ['benz wide', ''],
  ['2nz wide', ''],
  ['benz wide, nz wide', 'NZ'],
  ['', ''],
  // sizes of one country, and of no other
  ['AU 12', 'AU'],
  ['Aus 8', 'AU'],
  ['AU size 12', 'AU'],
  ['AU lovely 12', ''],
  ['AU 120', ''],
  ['PAU 12', ''],
  ['AU 12, US 8', ''],
  ['AU 12, UK8', ''],
  ['AU 12, EU size 40', ''],
  ['AU 12, US lovely 8', 'AU'],
  ['US 8', '']
])('%j: %j', (text, country) => expect(postedIn(text)).toBe(country))

test('letters that only Chinese is written in', () => {
  expect(isChinese('衣长 70, 肩宽 45')).toBe(true)
  expect(isChinese('着丈 70')).toBe(false)
  expect(isChinese('肩宽 45')).toBe(true)
})

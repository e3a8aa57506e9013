/** A waist and a leg as a pair, and sizes in words and letters. */
import { describe, expect, test } from 'vitest'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { sizeLabelsOf } from '../../../../core/reading/sizes/size-labels.ts'
import { textOf } from '../given.ts'

/** The labels of a text; behind a stroke the pairs that were measured. */
const sizes = (words: string, told: { legs?: boolean; title?: boolean; upper?: boolean } = {}) => {
  const text = textOf(words)
  const given = { legs: false, title: false, language: 'en', ...told }
  const { labels, pairs } = sizeLabelsOf({ ...text, quantities: quantitiesOf(text), ...given })
  return [labels.join(', '), ...pairs.map(([a, b]) => `| ${a.value} ${b.value}`)].join(' ').trim()
}

describe('on legs', () => {
  test.each([
    ['W32 L34', 'W32 L34'],
    ['W 32 / L 34', 'W32 L34'],
    ['Waist 32 L 34', 'W32 L34'],
    ['32W 34L', 'W32 L34'],
    ['32W x 34L', 'W32 L34'],
    ['32x34', 'W32 L34'],
    ['32" x 34"', 'W32 L34'],
    ['W32', 'W32'],
    // the ends of what a waist and a leg can be
    ['22x24', 'W22 L24'],
    ['21x24', ''],
    ['22x23', ''],
    ['56x40', 'W56 L40'],
    ['57x40', ''],
    ['56x41', ''],
    // further names, a third figure, centimetres: measures in a list
    ['W32 L34 R11', 'W32'],
    ['W 32" L 34"', ''],
    ['30x32x34', ''],
    ['30" x 32" x 34"', ''],
    ['lovely x 32x34', 'W32 L34'],
    ['32 cm x 34 cm', ''],
    ['W32 x34', 'W32'],
    // a name claims it
    ['waist/length 32/34', ''],
    ['32/34 waist', ''],
    ['size 32/34', 'W32 L34'],
    // measured
    ['measures 32 x 34', '| 32 34'],
    ['measures 33 x 30.5', '| 33 30.5'],
    ['33 x 30.5', '| 33 30.5'],
    ['size 33 x 30.5', '33'],
    ['fits like a 33 x 30.5', ''],
    ['measures 33 cm x 30.5 cm', ''],
    ['measures 33 x 30.5 x 20', ''],
    ['measures 33 x 41', ''],
    ['measures 57 x 30.5', ''],
    ['measures 33-34 x 30.5', ''],
    ['33 x 30 measured', '| 33 30'],
    ['33 x 30 measured 34', 'W33 L30'],
    ['size 33 x 30 measured', 'W33 L30'],
    ['it measures 33 x 30', '| 33 30'],
    ['label says 34x32 (33 x 31 actual)', 'W34 L32 | 33 31'],
    ['measures\n32 x 34', 'W32 L34'],
    ['waist 32 x 34', ''],
    ['waist\n32 x 34', 'W32 L34'],
    ['W32/L34', 'W32 L34'],
    ['W32, L34', 'W32 L34'],
    ['W32-L34', 'W32 L34'],
    ['W32; L34', 'W32'],
    ['32W/34L', 'W32 L34'],
    ['32W 34', ''],
    ['32 W 34 L', ''],
    ['W57 L34', ''],
    ['W32 L41', 'W32'],
    ['tag says 34x32, I get 33 x 30', 'W34 L32 | 33 30'],
    ['tag says 34x32, size 33 x 30', 'W34 L32, W33 L30'],
    ['tag says 34x32, fits like 33 x 30', 'W34 L32, W33 L30']
  ])('%s: %j', (words, expected) => expect(sizes(words, { legs: true })).toBe(expected))
  test('a dash joins a pair in a title alone', () => {
    expect(sizes('32-40', { legs: true, title: true })).toBe('')
    expect(sizes('34-32', { legs: true, title: true })).toBe('W34 L32')
    expect(sizes('34-32', { legs: true })).toBe('')
  })
})

describe('elsewhere', () => {
  test.each([
    ['32x34', ''],
    ['size 32x34', 'W32 L34'],
    ['W32', ''],
    ['32W 34L', 'W32 L34']
  ])('%s: %j', (words, expected) => expect(sizes(words)).toBe(expected))
  test('of a top 22W 28L is how wide and how long', () => expect(sizes('22W 28L', { upper: true })).toBe(''))
})

describe('in words and letters', () => {
  test.each([
    ['size M', 'M'],
    ['size S/M', 'S/M'],
    ['size medium', 'M'],
    ['size extra large', 'XL'],
    ['size x small', 'XS'],
    ['size x large', 'XL'],
    ['size extra small', 'XS'],
    ['size extra lovely', ''],
    ['size lovely large', ''],
    ['size extra largely', ''],
    ['size XS/S', 'XS/S'],
    ['size M/lovely', 'M'],
    ['size M - L', 'M'],
    ['size os', 'one size'],
    ['size osfa', 'one size'],
    ['size xxlarge', 'XXL'],
    ['size xsmall', 'XS'],
    ['size 6XL', '6XL'],
    ['one size, size one size', 'one size'],
    ['size large/xlarge', 'L/XL'],
    ['size 3XL', '3XL'],
    ['size 2XL/3XL', '2XL'],
    ['size 7XL', ''],
    ['size lovely', ''],
    ['size not M', ''],
    ['size: M', 'M'],
    ['size, M', ''],
    ['size\nM', ''],
    ['age 8', 'age 8'],
    ['age 8-9', 'age 8-9'],
    ['age 8 cm', '']
  ])('%j: %j', (words, expected) => expect(sizes(words)).toBe(expected))
})

test('a title has them without a word', () => {
  expect(sizes('Polo shirt 3XL', { title: true })).toBe('3XL')
  expect(sizes('Polo shirt XL', { title: true })).toBe('XL')
  expect(sizes('Polo shirt 3 XL', { title: true })).toBe('XL')
})

describe('of suits', () => {
  test.each([
    ['42R', '42R'],
    ['42 Long', '42L'],
    ['42 Long, lovely', '42L'],
    ['42 Long sleeve', ''],
    ['42 L', ''],
    ['42r', ''],
    ['33R', ''],
    ['34R', '34R'],
    ['58R', '58R'],
    ['59R', ''],
    ['Coat 40S', '40S'],
    ['Coat 40s', ''],
    ['COAT 40S', '40S'] as const
  ])('%s: %j', (words, expected) => {
    if (words !== 'COAT 40S') expect(sizes(words)).toBe(expected)
    // all in capitals it may be the years
    else expect(sizes(words)).not.toBe('40s')
  })
  test('“42 R” in a title, with no figure of its own behind it', () => {
    expect(sizes('Coat 42 R', { title: true })).toBe('42R')
    expect(sizes('Coat 42 R 16', { title: true })).not.toContain('42R')
    expect(sizes('Coat 42 R: 16', { title: true })).not.toContain('42R')
    expect(sizes('Coat 42 R')).toBe('')
  })
  test('trousers have none', () => expect(sizes('42R', { legs: true })).toBe(''))
})

describe('of a country', () => {
  test.each([
    ['UK 12', 'UK 12'],
    ['EU38', 'EU 38'],
    ['UK12', 'UK 12'],
    ['EU380', ''],
    ['XQ38', ''],
    ['12 UK', 'UK 12'],
    ['UK size 12', 'UK 12'],
    ['UK: 12', 'UK 12'],
    ['US 8-10', 'US 8-10'],
    ['UK 12 EU 40', 'UK 12, EU 40'],
    ['UK M', 'UK M'],
    ['UK m', ''],
    ['UK 65', ''],
    ['UK 64', 'UK 64'],
    ['UK 12"', ''],
    ['us 8', ''],
    ['UK lovely 12', '']
  ])('%s: %j', (words, expected) => expect(sizes(words)).toBe(expected))
})

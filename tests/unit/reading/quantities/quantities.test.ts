/** Figures that may be lengths. */
import { describe, expect, test } from 'vitest'
import { numberAt } from '../../../../core/reading/quantities/numbers.ts'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { withoutRepeats } from '../../../../core/reading/quantities/repeats.ts'
import { readText } from '../../../../core/reading/text/text.ts'
import { tokensOf } from '../../../../core/reading/text/tokens.ts'

const halves = new Set(['half'])
describe('numbers', () => {
  test.each([
    ['30', 30],
    ['30.5', 30.5],
    ['30,5', 30.5],
    ['30 1/2', 30.5],
    ['30-1/2', 30.5],
    ['30½', 30.5],
    ['30 ½', 30.5],
    ['30 and 1/2', 30.5],
    ['30 and a half', 30.5],
    ['30 & 3/4', 30.75],
    ['½', 0.5],
    ['3/4', 0.75],
    ['7/8', 0.875],
    ['28 5/16', 28.3125]
  ])('%s is %d', (text, value) => expect(numberAt(tokensOf(text), 0, halves)).toMatchObject({ value, next: tokensOf(text).length }))
  test.each([
    ['1/0', 'divided-by-zero'],
    ['3..5', 'unclear-number']
  ])('%s is a problem: %s', (text, problem) => expect(numberAt(tokensOf(text), 0, halves)).toMatchObject({ problem }))
  test.each([
    ['36,28,38', 36],
    ['30, 40', 30],
    ['30. Next', 30],
    ['32/34', 32],
    ['12/05/2023', 12]
  ])('%s begins with %d alone', (text, value) => expect(numberAt(tokensOf(text), 0, halves)).toMatchObject({ value, next: 1 }))
})

const quantities = (text: string) => {
  const read = readText(text, 'en')
  return quantitiesOf(read).map((one) => [one.value, one.unit] as const)
}
describe('quantities', () => {
  test.each([
    ['30"', [[30, 'in']]],
    ["30''", [[30, 'in']]],
    ['30 in,', [[30, 'in']]],
    ['30-inch waist', [[30, 'in']]],
    [
      '30cm 40 mm',
      [
        [30, 'cm'],
        [40, 'mm']
      ]
    ],
    ['1.2 m', [[120, 'cm']]],
    ['two inches', [[2, 'in']]],
    ['28-30"', [[29, 'in']]],
    ['between 28 and 30 inches', [[29, 'in']]],
    [`5'8"`, [[68, 'in']]],
    ['5 ft 8 in', [[68, 'in']]],
    ['1m75', [[175, 'cm']]],
    ['£30', []],
    ['30 %', []],
    ['30°', []],
    ['in 1994', []],
    ['12/05/2023', []],
    ['10:30', []],
    ['0555 010 203', []],
    ['9/10', []],
    ['3 pockets', []],
    ['2 small buttons', []],
    ['90s', []],
    ['650 fill', []],
    ['#38', []],
    ['2 in the back', [[2, null]]],
    ['"32" on the label', [[32, null]]]
  ])('%s', (text, expected) => expect(quantities(text)).toEqual(expected))
  test('the double beside a figure is no second figure', () => {
    const read = readText('19" (38" around)', 'en')
    const [one, ...rest] = withoutRepeats(read, quantitiesOf(read))
    expect(rest).toEqual([])
    expect(one).toMatchObject({ value: 19, doubling: 'flat' })
  })
})

describe('a decimal with a space in it', () => {
  const values = (text: string, language = 'en') => quantitiesOf(readText(text, language)).map(({ value }) => value)
  test.each([
    ['waist 17. 5 inches', [17.5]],
    ['waist 42, 5 cm', [42.5]],
    ['waist 15 . 25"', [15.25]],
    ['waist 17. 5', [17.5]]
  ])('%s', (text, expected) => expect(values(text)).toEqual(expected))
  test.each([
    ['waist 27, 38 hips', [27, 38]],
    ['chest 20. 2 long sleeves', [20, 2]],
    ['waist 27, 5 cm pocket', [27, 5]],
    ['4, 5, 6', [4, 5, 6]],
    ['length 29. 50/50 cotton', [29, 50, 50]],
    ['inseam 29. 12 rise', [29, 12]]
  ])('%s is no decimal', (text, expected) => expect(values(text)).toEqual(expected))
})

test('a count before a hyphen is no length', () => expect(quantitiesOf(readText('3-snap cuffs', 'en'))).toEqual([]))
test('three figures parted by other dashes are a row, no range', () => {
  expect(quantitiesOf(readText('14.5 - 20 ~ 12.5', 'en')).map(({ value }) => value)).toEqual([14.5, 20, 12.5])
})

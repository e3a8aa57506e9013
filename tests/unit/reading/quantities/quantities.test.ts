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

/** Each figure: its ends, its unit, what is the matter with it. */
const told = (words: string, language = 'en') =>
  quantitiesOf(readText(words, language))
    .map(({ low, high, unit, problem, height }) => {
      const ends = low === high ? low : `${low}-${high}`
      return `${ends}${unit ?? ''}${problem ? ` ${problem}` : ''}${height ? ' tall' : ''}`
    })
    .join(', ')

describe('a range', () => {
  test.each([
    ['28-30"', '28-30in'],
    ['28" - 30"', '28-30in'],
    ['28~30"', '28-30in'],
    ['28 to 30 in', '28-30in'],
    ['28--30"', '28-30in'],
    ['between 28 and 30', '28-30'],
    ['28 and 30', '28, 30'],
    ['28 cm - 30', '28-30cm'],
    // the low end first, and no wider than three quarters more
    ['30-28"', '30, 28in'],
    ['30-30"', '30, 30in'],
    ['20-35"', '20-35in'],
    ['20-35.5"', '20, 35.5in'],
    ['28" - 30 cm', '28in, 30cm'],
    ['28 - £30', '28'],
    ['28 - 30%', '28'],
    ['28 - ½', '28.5'],
    ['28 - 1/0', '0 divided-by-zero'],
    ['28 - waist', '28'],
    // a stroke: bare only of two that are neighbours, with a unit no more than four apart
    ['33/34', '33-34'],
    ['32/34', '32, 34'],
    ['28/30"', '28-30in'],
    ['28/32"', '28-32in'],
    ['28/33"', '28, 33in'],
    ['28"/30"', '28in, 30in'],
    // three in a row are none
    ['36-38-40', '36, 38, 40'],
    ['33/34/35', '33, 34, 35'],
    ['36-38 40', '36-38, 40'],
    ['36-38-waist', '36-38'],
    ['28 to 30 to 32', '28-30, 32']
  ])('%s: %s', (words, expected) => expect(told(words)).toBe(expected))
})

describe('a sign before it', () => {
  test.each([
    ['Waist: -4', '-4 negative'],
    ['Waist = -4', '-4 negative'],
    ['waist -30"', '30in'],
    ['waist: - 30"', '30in'],
    ['waist - -30"', '30in']
  ])('%s: %s', (words, expected) => expect(told(words)).toBe(expected))
})

describe('somebody’s height', () => {
  test.each([
    [`5'8"`, '68in tall'],
    [`5'8`, '68in tall'],
    ["5'8''", '68in tall'],
    ["5'", '60in tall'],
    [`5' 8 1/2"`, '68.5in tall'],
    ['5 ft 8', '68in tall'],
    ['5 foot 7 inches', '67in tall'],
    ['5 ft', '60in tall'],
    // eleven inches at most are of the foot
    ["5'12", '60in tall, 12'],
    ['3 ft', '36in tall'],
    ['7 ft', '84in tall'],
    ['2 ft', '2'],
    ['8 ft', '8'],
    ['12 ft', '12'],
    ["5''", '5in'],
    ["5' 8''", '68in tall'],
    ["5'8 cm", '68in tall'],
    ["5'\n8", '60in tall, 8'],
    ['1m75', '175cm tall'],
    ['2m05', '205cm tall'],
    ['3m05', '300cm'],
    ['1m7', '100cm'],
    ['1 m75', '100cm'],
    ['1m 75', '100cm, 75']
  ])('%s: %s', (words, expected) => expect(told(words)).toBe(expected))
})

describe('a unit', () => {
  test.each([
    ['30""', '30in'],
    ['30"" 28"', '30in, 28in'],
    ["30'", '30in'],
    ["8'", '8in'],
    ["30 '", '30'],
    ['30 "vintage"', '30'],
    ['30 "waist', '30in'],
    ['"30"', '30'],
    ['"size 12" chest 40', '12, 40'],
    ['"size 12\n12"', '12, 12in'],
    ['30-inch', '30in'],
    ['30 -inch', '30'],
    ['30- inch', '30'],
    // metres
    ['1.2 m', '120cm'],
    ['1m', '100cm'],
    ['2 m', '200cm'],
    ['2 m waist', '200cm'],
    ['2 m lovely', '2'],
    ['2.5 m lovely', '250cm'],
    ['2 metres lovely', '200cm'],
    ['30 metres', '3000cm'],
    ['31 metres', '31'],
    ['30\ncm', '30']
  ])('%j: %s', (words, expected) => expect(told(words)).toBe(expected))
})

describe('in words', () => {
  test.each([
    ['two inches', '2in'],
    ['twenty-two inches', '22in'],
    ['twenty two inches', '22in'],
    ['twenty - two inches', '2in'],
    ['twelve two inches', '2in'],
    ['twenty twelve inches', '12in'],
    ['twenty-two and a half inches', '22.5in'],
    ['twenty and a half inches', '20.5in'],
    ['two cm', '2cm'],
    ['two', ''],
    ['two in the back', ''],
    ['two metres', ''],
    ['two feet', ''],
    ['two lovely inches', '']
  ])('%s: %j', (words, expected) => expect(told(words)).toBe(expected))
})

test('of a number that is no length nothing is left behind', () => {
  expect(told('4.9 stars, waist 30')).toBe('30')
  expect(told('£4.99 waist 30')).toBe('30')
  expect(told('£4. 99 waist')).toBe('99')
  expect(told('£4,99 waist')).toBe('')
  expect(told('£4-99 waist')).toBe('99')
  expect(told('1234567.5 waist')).toBe('')
})

describe('as sellers write them', () => {
  test.each([
    ['en', '30 "vintage" waist 30"', '30, 30in'],
    ['en', 'size "8" waist 30"', '8, 30in'],
    ['en', '12" "vintage" tag', '12in'],
    ['en', 'tag says "waist 30"', '30'],
    ['en', '"waist 30" flat', '30'],
    ['en', 'waist 14"" hips 20""', '14in, 20in'],
    ['en', 'waist 14 " hips 20 "', '14in, 20in'],
    ['en', "waist 30'", '30in'],
    ['en', 'the 90\'s look, waist 30"', '30in'],
    ['en', "waist 7'", '84in tall'],
    ['en', '1.5m long', '150cm'],
    ['en', '2 m chest', '200cm'],
    ['en', '2 m, 30 cm', '200cm, 30cm'],
    ['en', 'size 8 m lovely', '8'],
    ['en', 'model 5\'8" wears size 8', '68in tall, 8'],
    ['en', 'model 5\'10.5" wears', '70.5in tall'],
    ['en', "5'8 1/2", '68.5in tall'],
    ['en', 'she is 5 ft 4 in tall', '64in tall'],
    ['en', 'she is 5 ft 4in, waist 30in', '64in tall, 30in'],
    ['en', 'she is 5ft, waist 30', '60in tall, 30'],
    ['en', '5 feet 11 inches', '71in tall'],
    ['en', '6\' 0"', '72in tall'],
    ['en', 'height 1m68', '168cm tall'],
    ['en', '28"-30"', '28-30in'],
    ['en', '28"–30"', '28-30in'],
    ['en', '28in to 30in', '28-30in'],
    ['en', '28in/30in', '28in, 30in'],
    ['en', '70cm-75cm', '70-75cm'],
    ['en', 'between 70cm and 75cm', '70-75cm'],
    ['en', '28-30-32', '28, 30, 32'],
    ['en', '28/30/32"', '28, 30, 32in'],
    ['en', 'waist 28 - 30 - 32"', '28, 30, 32in'],
    ['en', '36-28', '36, 28'],
    ['en', '36 - 28 - 38', '36, 28, 38'],
    // a dash that parts a heading from a range makes no row
    ['en', 'Size 12 - 28-30"', '12, 28-30in'],
    ['en', '34/32', '34, 32'],
    ['en', '32/34 jeans', '32, 34'],
    ['en', '28 to 30cm', '28-30cm'],
    ['en', '1m to 1.2m', '100-120cm'],
    ['en', 'Waist: -30"', '-30in negative'],
    ['en', 'Waist: 30" - 4', '30in, 4'],
    ['en', 'waist-30"', '30in'],
    ['en', 'waist - 30"', '30in'],
    ['en', 'thirty inches', '30in'],
    ['en', 'thirty-two and three quarter inches', '32.75in'],
    ['en', 'twenty three cm', '23cm'],
    ['en', 'forty two inch chest', '42in'],
    ['en', 'a two inch hem', '2in'],
    ['en', 'two-inch hem', '2in'],
    ['en', 'two and a half inches of hem', '2.5in'],
    ['en', 'twenty-inch waist', '20in'],
    ['en', '3/4 sleeve, 20"', '20in'],
    ['en', '½" seam', '0.5in'],
    ['en', '3/8" seam', '0.375in'],
    ['en', '14 1/2"', '14.5in'],
    ['en', '15"1/2', '15in, 0.5'],
    ['en', '100% wool, 30"', '30in'],
    ['en', '30x32', '30, 32'],
    ['en', '30" x 32"', '30in, 32in'],
    ['en', '0.5" hem', '0.5in'],
    ['de', 'Länge 1,20 m', '120cm'],
    ['fr', 'longueur 1m20', '120cm tall'],
    ['en', '60cms', '60cm'],
    ['en', '60 centimetres', '60cm'],
    ['en', '600mm', '600mm'],
    ['en', '600 millimetres', '600mm'],
    ['en', '30 ins', '30in'],
    ['en', '30in.', '30in'],
    ['en', '30 in.', '30in'],
    ['en', '30 in wide', '30in'],
    ['en', 'two in the back, 30 in front', '30']
  ])('%s %s: %s', (language, words, expected) => expect(told(words, language)).toBe(expected))
})

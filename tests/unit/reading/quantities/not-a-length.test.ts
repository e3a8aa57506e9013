/** Numbers that are no lengths. */
import { describe, expect, test } from 'vitest'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { textOf } from '../given.ts'

/** What may be lengths. */
const lengths = (words: string, language = 'en') =>
  quantitiesOf(textOf(words, language))
    .map(({ value, unit }) => `${value}${unit ?? ''}`)
    .join(' ')

describe('by what stands before', () => {
  test.each([
    ['£30', ''],
    ['£ 30', ''],
    ['€30 cm', ''],
    ['#38', ''],
    ['# 38', '38'],
    ['№ 38', ''],
    ['no 38', ''],
    ['no. 38', ''],
    ['so. 38', '38'],
    // a name glued to its figure; anything else is a code
    ['w32', '32'],
    ['waist30', '30'],
    ['xq32', ''],
    ['xq 32', '32'],
    ['xq32 cm', ''],
    // times, groups of figures
    ['10:30', ''],
    ['10: 30', '10 30'],
    ['waist:30', '30'],
    ['10:30 cm', '30cm'],
    ['1.234.567', ''],
    ['1.23. 4', '1.23 4'],
    ['1.23.', '1.23'],
    ['1.23 .5', '1.23 5'],
    ['waist.30', '30'],
    // years
    ['from 1985', ''],
    ['style 1899 mm', '1899mm'],
    ['style 1900 mm', ''],
    ['style 2035 mm', ''],
    ['style 2036 mm', '2036mm'],
    ['lovely 1985 mm', '1985mm'],
    // what somebody gave for it
    ['paid 190', ''],
    ['paid 190 cm', '190cm'],
    ['waist 190', '190']
  ])('%s: %j', (words, expected) => expect(lengths(words)).toBe(expected))
  test('in scripts without spaces any word may stand glued to a figure', () => expect(lengths('着丈70', 'ja')).toBe('70'))
})

describe('by what they are', () => {
  test.each([
    ['399', '399'],
    ['400', ''],
    ['400 mm', '400mm'],
    ['030', ''],
    ['030 cm', '30cm'],
    ['0', '0'],
    // dates
    ['12/05/2023', ''],
    ['2023-05-12', ''],
    ['2023.05.12', ''],
    ['12.05.23', ''],
    ['12/05/23', ''],
    ['32/05/23', '32 23'],
    ['12/13/23', '12 13 23'],
    ['12/5/23', '12 5 23'],
    ['12-05-23', '12 23'],
    ['12/05-2023', '12'],
    ['12 / 05 / 2023', '12'],
    // telephones: groups of nine figures or more, one of three or more
    ['20 30 405 060', ''],
    ['(555) 010-2030', ''],
    ['20 30 40 50', '20 30 40 50'],
    ['20 30 40 50 60', '20 30 40 50 60'],
    ['205 30 405', '205 30'],
    ['205, 304, 105', '205 304 105'],
    // scores
    ['9/10', ''],
    ['5/5', ''],
    ['10/10', ''],
    ['11/10', '11 10'],
    ['9/ 10', '10'],
    ['9/11', '9 11'],
    ['9/100', '9 100']
  ])('%s: %j', (words, expected) => expect(lengths(words)).toBe(expected))
})

describe('by what stands behind', () => {
  test.each([
    // decades
    ['90s', ''],
    ['20s', ''],
    ['10s', '10'],
    ['95s', '95'],
    ['30kg', ''],
    ['30lovely', ''],
    ['30 x', '30'],
    ['30w', '30'],
    ['30waist', '30'],
    ['30%', ''],
    ['30 %', ''],
    ['30°', ''],
    ['30 £', ''],
    ['30 €', ''],
    ['30 cm £', '30cm'],
    ['30+', ''],
    ['30 +', '30'],
    ['10:3', ''],
    ['10 :3', '10 3'],
    ['10:x', '10'],
    ['9 /10', '9'],
    ['12/10', '12 10'],
    ["30's", ''],
    ["30'", '30in'],
    // counts
    ['3-snap cuffs', ''],
    ['5-pocket', ''],
    ['5 -pocket', '5'],
    ['30-inch', '30in'],
    ['30-waist', '30'],
    ['30-w', '30'],
    ['30 - pocket', '30'],
    ['3 pockets', ''],
    ['12 small buttons', ''],
    ['13 small buttons', '13'],
    ['8 small, lovely', '8'],
    ['8 waist buttons', '8']
  ])('%s: %j', (words, expected) => expect(lengths(words)).toBe(expected))
  test('a name of one letter is no degree', () => {
    expect(lengths('17 C: 21')).toBe('17 21')
    expect(lengths('S-17 C-21')).toBe('17 21')
    expect(lengths('17 C, 21')).toBe('21')
  })
})

describe('“in”, the unit or not', () => {
  test.each([
    ['30 in', '30in'],
    ['30in the back', '30in'],
    ['30 in, lovely', '30in'],
    ['30 in waist', '30in'],
    ['30 in and 28 in', '30in 28in'],
    ['30 in around', '30in'],
    ['30 in from the top', '30in'],
    ['30 in long', '30in'],
    ['8 in very good', '8'],
    ['8 in condition', '8'],
    ['8 in UK', '8'],
    ['30-flat', '30'],
    ['30-front', '30'],
    ['30-hem', '30'],
    ['2 in the back', '2'],
    ['2 in my other', '2'],
    ['8 in black', '8'],
    ['8 in good', '8'],
    ['8 in women', '8'],
    ['8 in lovely', '8'],
    ['8 inches lovely', '8in']
  ])('%s: %j', (words, expected) => expect(lengths(words)).toBe(expected))
})

describe('beside what a listing counts, dates and prices', () => {
  test.each([
    ['US $38, waist 30', '30'],
    ['38€ waist 30', '30'],
    ['price 38 EUR waist 30', '30'],
    ['item no. 4521 waist 30', '30'],
    ['style 38 waist 30', '38 30'],
    ['made in 1998, waist 30', '30'],
    ['since 2019, waist 30', '30'],
    ['ref: 30/12/2021, waist 30', '30'],
    ['call 020 7946 0018', ''],
    ['call 020-7946-0018', ''],
    ['condition 8/10, waist 30', '30'],
    ['condition 10/10', ''],
    ['size 8/10 dress', ''],
    ["90's dress, waist 30", '30'],
    ['1990s dress, waist 30', '30'],
    ['weighs 450g, waist 30', '30'],
    ['weighs 45 g, waist 30', '30'],
    ['2kg parcel, waist 30', '30'],
    ['5 buttons, waist 30', '30'],
    ['6 front buttons, waist 30', '30'],
    ['waist 30 days', ''],
    ['return in 14 days, waist 30', '30'],
    ['wash at 30°C, waist 30', '30'],
    ['wash at 40 C', ''],
    ['S-17 C-21 L-28', '17 21 28'],
    ['15:30 pickup, waist 30', '30'],
    ['30 in brown', '30'],
    ['size 10 in mens', '10'],
    ['30 in at the waist', '30in'],
    ['28 in when laid flat', '28in'],
    ['30 in stretchy', '30in'],
    ['30 in measured flat', '30in'],
    ['2 in to let down', '2in'],
    ['3 in of hem', '3in'],
    ['20 in (across)', '20in'],
    ['20 in - 22 in', '21in'],
    ['8 in wool', '8'],
    ['10 in excellent condition', '10'],
    ['38 in silk', '38'],
    ['38 in great shape', '38'],
    ['x-38', '38'],
    ['waist38', '38'],
    ['501s, waist 30', '30'],
    ['100+ sold, waist 30', '30'],
    ['12-button coat, waist 30', '30'],
    ['5-pocket jeans', ''],
    ['2-piece set, 30"', '30in'],
    ['30-cm zip', '30cm'],
    ['100% cotton', ''],
    ['98 % cotton 2 % elastane', ''],
    ['1.234.567 sold', '']
  ])('%s: %j', (words, expected) => expect(lengths(words)).toBe(expected))
})

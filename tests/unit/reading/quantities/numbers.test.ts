/** One number in a run of tokens. */
import { describe, expect, test } from 'vitest'
import { numberAt, partInWords } from '../../../../core/reading/quantities/numbers.ts'
import { tokensOf } from '../../../../core/reading/text/tokens.ts'

const halves = new Set(['half'])
/** The number at a token, how much of the text it takes, and its problem. */
const number = (text: string, at = 0) => {
  const tokens = tokensOf(text)
  const one = numberAt(tokens, at, halves)
  if (one === null) return null
  const taken = text.slice(tokens[at]?.start, tokens[one.next - 1]?.end)
  return `${one.value}: ${taken}${one.problem ? ` ${one.problem}` : ''}`
}

describe('a decimal', () => {
  test.each([
    ['30.5', '30.5: 30.5'],
    ['30,5', '30.5: 30,5'],
    ['30.1234', '30.1234: 30.1234'],
    // more figures are nothing of ours
    ['30.12345', '30: 30'],
    ['30,25', '30.25: 30,25'],
    ['30,125', '30: 30'],
    ['30 .5', '30: 30'],
    ['30. 5', '30: 30'],
    ['30:5', '30: 30'],
    ['30.x', '30: 30'],
    ['30.', '30: 30'],
    ['36,28,38', '36: 36'],
    ['36,28, 38', '36.28: 36,28'],
    ['36,28 ,38', '36.28: 36,28'],
    ['36,28,x', '36.28: 36,28'],
    ['36.28,38', '36.28: 36.28'],
    ['30..5', '30: 30..5 unclear-number'],
    ['30.. 5', '30: 30'],
    ['30..x', '30: 30'],
    ['30..5 1/2', '30: 30..5 unclear-number'],
    ['30.,5', '30: 30']
  ])('%s', (text, expected) => expect(number(text)).toBe(expected))
  test('behind a comma between figures it is of a list', () => {
    expect(number('36,28,38', 2)).toBe('28: 28')
    expect(number('a,28,38', 2)).toBe('28.38: 28,38')
    expect(number('36,28.38', 2)).toBe('28.38: 28.38')
    expect(number('36.28,38', 2)).toBe('28.38: 28,38')
    expect(number('36,28', 2)).toBe('28: 28')
  })
  test('of more than six figures is none', () => {
    expect(number('123456')).toBe('123456: 123456')
    expect(number('1234567')).toBeNull()
    expect(number('waist')).toBeNull()
    expect(number('30', 1)).toBeNull()
  })
})

describe('a fraction by itself', () => {
  test.each([
    ['1/2', '0.5: 1/2'],
    ['½', '0.5: ½'],
    ['15/16', '0.9375: 15/16'],
    ['1/3', `${1 / 3}: 1/3`],
    // none that a tape has, or none below one
    ['1/6', '1: 1'],
    ['1/7', '1: 1'],
    ['3/2', '3: 3'],
    ['4/4', '4: 4'],
    ['8/4', '8: 8'],
    ['010/16', '10: 010'],
    ['0/4', '0: 0'],
    ['1-2', '1: 1'],
    ['1/x', '1: 1'],
    ['32/34', '32: 32'],
    // the size of jeans, where no whole is before it
    ['28/32', '28: 28'],
    ['23/32', '23: 23'],
    ['21/32', '0.65625: 21/32'],
    ['15 23/32', '15.71875: 15 23/32'],
    ['1/100', '1: 1'],
    ['1/0', '0: 1/0 divided-by-zero'],
    ['1/000', '1: 1'],
    // a date, a row
    ['1/2/3', '1: 1'],
    ['1/2/x', '0.5: 1/2']
  ])('%s', (text, expected) => expect(number(text)).toBe(expected))
  test('in the midst of a row is none', () => {
    expect(number('3/1/2', 2)).toBe('1: 1')
    expect(number('x/1/2', 2)).toBe('0.5: 1/2')
  })
})

describe('a whole with its part', () => {
  test.each([
    ['30 1/2', '30.5: 30 1/2'],
    ['30-1/2', '30.5: 30-1/2'],
    ['30 - 1/2', '30.5: 30 - 1/2'],
    ['30 & 1/2', '30.5: 30 & 1/2'],
    ['30 + 1/2', '30.5: 30 + 1/2'],
    ['30 and 1/2', '30.5: 30 and 1/2'],
    ['30 and a half', '30.5: 30 and a half'],
    ['30½', '30.5: 30½'],
    ['30-½', '30.5: 30-½'],
    ['30 & ½', '30.5: 30 & ½'],
    ['30 and ½', '30.5: 30 and ½'],
    // no part
    ['30 40', '30: 30'],
    ['30-40', '30: 30'],
    ['30 and 40', '30: 30'],
    ['30 and more', '30: 30'],
    ['30 or 1/2', '30: 30'],
    ['30 half', '30: 30'],
    ['30-half', '30: 30'],
    ['30/1/2', '30: 30'],
    ['30. 1/2', '30: 30'],
    ['30.½', '30: 30'],
    ['30\n1/2', '30: 30'],
    // a decimal has none
    ['30.5 1/2', '30.5: 30.5'],
    ['30 1/0', '0: 30 1/0 divided-by-zero']
  ])('%j', (text, expected) => expect(number(text)).toBe(expected))
})

describe('a part in words', () => {
  test.each([
    ['a half', 0.5, 2],
    ['half', 0.5, 1],
    ['a quarter', 0.25, 2],
    ['quarter', 0.25, 1],
    ['three quarters', 0.75, 2],
    ['five eighths', 0.625, 2]
  ])('%s', (words, value, next) => expect(partInWords(tokensOf(words), 0, halves)).toEqual({ value, next }))
  test.each(['a whole', 'three', 'three halves', 'a', 'a 4', '4', 'three whole', 'whole', 'five quarters', 'four quarters', '½'])(
    '%s is none',
    (words) => expect(partInWords(tokensOf(words), 0, halves)).toBeNull()
  )
})

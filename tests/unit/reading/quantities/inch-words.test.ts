/** Inches in words, where cloth to spare is told. */
import { expect, test } from 'vitest'
import { inchWordsAt, mayBeginInches } from '../../../../core/reading/quantities/inch-words.ts'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { slice } from '../../../../core/reading/text/text.ts'
import { textOf } from '../given.ts'

/** The first inches in words, with the words they are of. */
const inches = (words: string) => {
  const text = textOf(words)
  for (let at = 0; at < text.tokens.length; at++) {
    const found = inchWordsAt(text, at)
    if (found) return `${found.value}: ${slice(text, at, found.to)}`
  }
  return null
}

test.each([
  ['an inch left to let out', '1: an inch'],
  ['an inch and a half left to let out', '1.5: an inch and a half'],
  ['one and a half inches to let down', '1.5: one and a half inches'],
  ['two inches to let down', '2: two inches'],
  ['half an inch to let out', '0.5: half an inch'],
  ['a couple of inches to let down', '2: a couple of inches'],
  ['a couple inches to let down', '2: a couple inches'],
  ['an inch seam allowance', '1: an inch'],
  // a part is missing
  ['a couple of to let down', null],
  ['couple of inches to let down', null],
  ['half inch to let out', null],
  ['half an to let out', null],
  ['two to let down', null],
  ['inches to let down', null],
  ['an inch and half to let out', '1: an inch'],
  ['an inch and a bit to let out', '1: an inch'],
  ['one and a half to let out', null],
  // in prose they are anything
  ['an inch too long', null],
  ['an inch too long. To let down', null],
  ['an inch too long\nto let down', null],
  ['an inch or 2 to let down', null],
  ['an inch; to let down', null],
  ['an inch, to let down', '1: an inch'],
  // seven words on
  ['an inch a b c d e f to let down', '1: an inch'],
  ['an inch a b c d e f g to let down', null]
])('%j: %j', (words, expected) => expect(inches(words)).toBe(expected))

test('begin with a number or a half', () => {
  expect(['an', 'two', 'half', 'inch', 'couple'].map(mayBeginInches)).toEqual([true, true, true, false, false])
})
test('are figures in inches', () => {
  expect(quantitiesOf(textOf('half an inch to let out'))).toMatchObject([{ value: 0.5, low: 0.5, high: 0.5, unit: 'in', from: 0, to: 3 }])
})

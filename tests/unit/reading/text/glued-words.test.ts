/** Words that ran into each other. */
import { expect, test } from 'vitest'
import { textOf } from '../given.ts'

const words = (text: string, language = 'en') =>
  textOf(text, language)
    .tokens.map((token) => token.text)
    .join(' ')

test.each([
  ['20inWaist: 17', '20 in waist : 17'],
  ['20inwaist 17', '20 in waist 17'],
  ['20cmwaist', '20 cm waist'],
  ['20incheswaist', '20 inches waist'],
  ['InchesBust20', 'inches bust 20'],
  ['MEASUREMENTSBust', 'measurements bust'],
  // behind a figure alone, or where a capital stands within
  ['inwaist', 'inwaist'],
  ['20 inwaist', '20 inwaist'],
  ['inchesbust', 'inchesbust'],
  // a word of its own, no word before it, no name behind it
  ['20inches', '20 inches'],
  ['20inxq', '20 inxq'],
  ['XqBust', 'xqbust'],
  ['InchesXq', 'inchesxq'],
  ['20xqwaist', '20 xqwaist'],
  // a letter with its own figure
  ['21inl 28in', '21 in l 28 in'],
  ['21inl lovely', '21 inl lovely']
])('%s: %s', (text, expected) => expect(words(text)).toBe(expected))

test('both parts keep their places', () => {
  const { original, tokens } = textOf('20inWaist: 17')
  expect(tokens.map(({ start, end }) => original.slice(start, end))).toEqual(['20', 'in', 'Waist', ':', '17'])
  expect(tokens.map(({ spaced }) => spaced)).toEqual([true, false, false, false, true])
})

/** Units at the head of columns. */
import { expect, test } from 'vitest'
import { quantitiesOf } from '../../../../core/reading/quantities/quantities.ts'
import { statedOf } from '../../../../core/reading/quantities/stated.ts'
import { inColumns } from '../../../../core/reading/quantities/unit-columns.ts'
import { textOf } from '../given.ts'

const read = (words: string) => {
  const text = textOf(words)
  return { text, quantities: inColumns(text, quantitiesOf(text)) }
}
const figures = (words: string) =>
  read(words)
    .quantities.map(({ value, unit }) => `${value}${unit ?? ''}`)
    .join(' ')

test.each([
  ['Measure | inches | cm\nwaist | 14 | 36\nhip | 20 | 51', '14in 36cm 20in 51cm'],
  ['Measure | cm | inches\nwaist | 36 | 14', '36cm 14in'],
  ['cm inches\nwaist 36 14', '36cm 14in'],
  ['in | cm\nwaist 14 36', '14in 36cm'],
  // fewer or more figures than columns
  ['inches | cm\nwaist 14', '14'],
  ['inches | cm\nwaist 14 36 40', '14 36 40'],
  // each once, two at least
  ['inches\nwaist 14', '14'],
  ['inches | inches\nwaist 14 36', '14 36'],
  // other units
  ['inches | ft\nwaist 14 36', '14 36'],
  ['mm | cm\nwaist 360 36', '360mm 36cm'],
  // a head has no figures itself
  ['inches | 2 cm\nwaist 14 36', '2cm 14 36'],
  ['inches | cm ½\nwaist 14 36', '0.5 14 36'],
  // of other figures
  ['inches | cm\nwaist 14" 36', '14in 36'],
  ['inches | cm\nwaist 14 36 cm', '14 36cm'],
  ['inches | cm\nwaist 14 | 1/0', '14 0'],
  // until a blank line, and none above it
  ['inches | cm\nwaist 14 36\n\nhip 20 51', '14in 36cm 20 51'],
  ['waist 14 36\ninches | cm', '14 36'],
  // of as many columns the nearest above
  ['inches | cm\nwaist 14 36\ncm | inches\nhip 51 20', '14in 36cm 51cm 20in'],
  ['inches | cm | mm\nmm | cm\nwaist 14 36 360', '14in 36cm 360mm'],
  // in what it was measured heads nothing
  ['measured in cm (inches)\nwaist 36 14', '36cm 14in'],
  ['measured in cm, inches\nwaist 36 14', '36cm 14in'],
  ['in inches | cm\nwaist 14 36', '14in 36cm']
])('%j: %s', (words, expected) => expect(figures(words)).toBe(expected))

test('a unit of a column does not stand beside its figure', () => {
  const { text, quantities } = read('inches | cm\nwaist 14 36')
  const stated = quantities.map((one) => statedOf(text, one))
  expect(stated.map(({ text: words, unit, value }) => [words, unit, value])).toEqual([
    ['14', null, 14],
    ['36', null, 36]
  ])
  const [plain] = quantitiesOf(textOf('waist 14 in'))
  expect(plain && statedOf(textOf('waist 14 in'), plain)).toEqual({ text: '14 in', start: 6, end: 11, value: 14, unit: 'in' })
})

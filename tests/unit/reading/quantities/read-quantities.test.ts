/** The first stage: what stands at the head of a column counts as a unit beside its figures. */
import { expect, test } from 'vitest'
import { quantityInches, quantityMm } from '../../../../core/reading/quantities/quantity-mm.ts'
import { readQuantities } from '../../../../core/reading/quantities/read-quantities.ts'
import { statedOf } from '../../../../core/reading/quantities/stated.ts'
import { textOf } from '../given.ts'

const read = (words: string) => readQuantities(textOf(words)).map(({ value, unit, fromColumn }) => [value, unit, fromColumn ?? false])

test('each figure of a row has the unit of its column', () => {
  expect(read('Measure | inches | cm\nChest | 21 | 53')).toEqual([
    [21, 'in', true],
    [53, 'cm', true]
  ])
})
test('a row of other length, a row with units and another paragraph have none of it', () => {
  expect(read('Measure | inches | cm\nChest | 21')).toEqual([[21, null, false]])
  expect(read('Measure | inches | cm\nChest | 21" | 53')).toEqual([
    [21, 'in', false],
    [53, null, false]
  ])
  expect(read('Measure | inches | cm\n\nChest | 21 | 53')).toEqual([
    [21, null, false],
    [53, null, false]
  ])
})
test('“measured in cm (inches)” heads no columns: the first “in” is a word', () => {
  expect(read('All in cm\nChest 53 waist 48')).toEqual([
    [53, null, false],
    [48, null, false]
  ])
})
test('a figure as it stands has no unit of its column, and its place is its own', () => {
  const text = textOf('Measure | inches | cm\nChest | 21 | 53')
  const [one] = readQuantities(text)
  expect(one && statedOf(text, one)).toEqual({ text: '21', start: 30, end: 32, value: 21, unit: null })
})
test('millimetres of a figure: by its unit, a bare one by its size', () => {
  expect(quantityMm({ value: 10, unit: 'in' })).toBe(254)
  expect(quantityMm({ value: 10, unit: 'cm' })).toBe(100)
  expect(quantityMm({ value: 10, unit: 'mm' })).toBe(10)
  expect(quantityMm({ value: 45, unit: null })).toBe(1143)
  expect(quantityMm({ value: 46, unit: null })).toBe(460)
  expect(quantityInches({ value: 50.8, unit: 'cm' })).toBeCloseTo(20, 9)
})

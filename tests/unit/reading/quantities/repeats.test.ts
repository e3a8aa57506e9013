/** Figures that say one thing twice. */
import { expect, test } from 'vitest'
import { withoutRepeats } from '../../../../core/reading/quantities/repeats.ts'
import { figureAt, textOf } from '../given.ts'

const joined = (words: string, ...figures: string[]) => {
  const text = textOf(words)
  return withoutRepeats(
    text,
    figures.map((one) => figureAt(text, one))
  )
}

test('inches and their centimetres are one figure, and what belongs to it ends behind the second', () => {
  const [one, ...rest] = joined('30" / 76 cm, and so on', '30"', '76 cm')
  expect(rest).toEqual([])
  expect(one).toMatchObject({ value: 30, unit: 'in', disagrees: null })
  expect(one?.spanTo).toBe(5)
})
test('30/76 without a unit is inches and centimetres', () => {
  expect(joined('30/76', '30', '76')).toMatchObject([{ value: 30, unit: 'in' }])
})
test('whole and half tell which the first is', () => {
  expect(joined('18" (36" around)', '18"', '36"')).toMatchObject([{ value: 18, doubling: 'flat' }])
  expect(joined('36" (18" flat)', '36"', '18"')).toMatchObject([{ value: 36, doubling: 'around' }])
})
test('in brackets the other unit must agree, or both stay doubtful', () => {
  expect(joined('30" (90 cm)', '30"', '90 cm')).toMatchObject([{ value: 30, disagrees: { value: 90, unit: 'cm' } }])
})
test.each(['36", hips 18"', '36" stretched to 18"', '36"\n18"'])('%j: a name, another state or a new line parts them', (words) => {
  expect(joined(words, '36"', '18"')).toHaveLength(2)
})

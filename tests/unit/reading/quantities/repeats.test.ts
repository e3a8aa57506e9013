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

test.each<[string, string, string, string]>([
  // the same in another unit, whatever small words stand between
  ['30" or 76 cm', '30"', '76 cm', '30in'],
  ['30" (approx. 76 cm)', '30"', '76 cm', '30in'],
  ['30" = 76 cm', '30"', '76 cm', '30in'],
  ['76 cm/30"', '76 cm', '30"', '76cm'],
  ['30", 76 cm', '30"', '76 cm', '30in'],
  ['30" lovely 76 cm', '30"', '76 cm', '30in 76cm'],
  ['30"; 76 cm', '30"', '76 cm', '30in 76cm'],
  ['30" / / / / / / / / 76 cm', '30"', '76 cm', '30in'],
  ['30" / / / / / / / / / 76 cm', '30"', '76 cm', '30in 76cm'],
  // half an inch or a fiftieth off at the most: 30 in are 762 mm
  ['30" / 77.5 cm', '30"', '77.5 cm', '30in'],
  ['10" / 26.7 cm', '10"', '26.7 cm', '10in'],
  ['10" (26.8 cm)', '10"', '26.8 cm', '10in?'],
  ['10" = 26.8 cm', '10"', '26.8 cm', '10in 26.8cm'],
  ['10" / 26.8 cm hip', '10"', '26.8 cm', '10in 26.8cm'],
  ['10" / 26.8 cm pocket', '10"', '26.8 cm', '10in 26.8cm'],
  // bare ones: inches before centimetres alone
  ['30 / 76', '30', '76', '30in'],
  ['76/30', '76', '30', '76 30'],
  ['30, 76', '30', '76', '30 76'],
  ['30/30', '30', '30', '30 30'],
  // the bare one in the other unit
  ['54.5 / 21.5"', '54.5', '21.5"', '54.5cm'],
  ['21.5" / 54.5', '21.5"', '54.5', '21.5in'],
  ['21.5" (54.5)', '21.5"', '54.5', '21.5in'],
  ['21.5" = 54.5', '21.5"', '54.5', '21.5in'],
  ['21.5" , 54.5', '21.5"', '54.5', '21.5in 54.5'],
  ['21.5 / 54.5 cm', '21.5', '54.5 cm', '21.5in'],
  ['545 mm / 21.5', '545 mm', '21.5', '545mm 21.5'],
  ['21.5" / 56', '21.5"', '56', '21.5in 56'],
  // half and whole
  ['18" / 36"', '18"', '36"', '18in flat'],
  ['36" / 18"', '36"', '18"', '36in around'],
  ['18 / 36"', '18', '36"', '18in flat'],
  ['36" (18)', '36"', '18', '36in around'],
  ['18" (37" around)', '18"', '37"', '18in 37in'],
  ['18" (36.4" around)', '18"', '36.4"', '18in flat'],
  ['18" / 92 cm', '18"', '92 cm', '18in flat'],
  // other states, another name
  ['18" relaxed 36"', '18"', '36"', '18in 36in'],
  ['18" to 36"', '18"', '36"', '18in 36in'],
  ['18" front 36"', '18"', '36"', '18in 36in'],
  ['18" cuffed 36"', '18"', '36"', '18in 36in'],
  ['18" open 36"', '18"', '36"', '18in 36in'],
  ['18" pocket 36"', '18"', '36"', '18in 36in']
])('%s: %4$s', (words, first, second, expected) => {
  const found = joined(words, first, second).map(
    ({ value, unit, doubling, disagrees }) =>
      `${value}${unit ?? ''}${doubling === null ? '' : ` ${doubling}`}${disagrees === null ? '' : '?'}`
  )
  expect(found.join(' ')).toBe(expected)
})
test('a figure that is broken, or a height, repeats none', () => {
  const text = textOf('30" / 76 cm')
  const [inches, centimetres] = [figureAt(text, '30"'), figureAt(text, '76 cm')]
  const count = (...its: Parameters<typeof withoutRepeats>[1][number][]) => withoutRepeats(text, its).length
  expect(count(inches, centimetres)).toBe(1)
  expect(count({ ...inches, problem: 'negative' }, centimetres)).toBe(2)
  expect(count(inches, { ...centimetres, problem: 'negative' })).toBe(2)
  expect(count({ ...inches, height: true }, centimetres)).toBe(2)
  expect(count(inches, { ...centimetres, height: true })).toBe(2)
})
test('of a range both ends must agree', () => {
  const text = textOf('30" = 76 cm')
  const [inches, centimetres] = [figureAt(text, '30"'), figureAt(text, '76 cm')]
  const count = (low: number, high: number) => withoutRepeats(text, [{ ...inches, low, high, range: true }, centimetres]).length
  expect([count(30, 30), count(28, 30), count(30, 32)]).toEqual([1, 2, 2])
})
test('what was doubled before stays so, and the second one says more', () => {
  const text = textOf('18" 36" / 91 cm')
  const [half, whole, other] = [figureAt(text, '18"'), figureAt(text, '36"'), figureAt(text, '91 cm')]
  expect(withoutRepeats(text, [half, whole, other])).toHaveLength(2)
  expect(withoutRepeats(text, [{ ...whole, doubling: 'around' }, other])).toMatchObject([{ doubling: 'around', spanTo: other.to }])
  expect(withoutRepeats(text, [whole, { ...other, doubling: 'flat' }])).toMatchObject([{ doubling: 'flat' }])
})

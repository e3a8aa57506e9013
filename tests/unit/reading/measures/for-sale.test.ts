/** Of the garments and sizes that a text measures: what is for sale. */
import { expect, test } from 'vitest'
import { forSale } from '../../../../core/reading/measures/for-sale.ts'
import type { MeasureReading } from '../../../../core/reading/reading.ts'

const chest = (mm: number, more: Partial<MeasureReading> = {}): MeasureReading => ({
  point: 'chest',
  mm,
  lowMm: mm,
  highMm: mm,
  basis: 'around',
  basisFrom: 'stated',
  unitFrom: 'stated',
  stated: { text: '', start: mm, end: mm, value: mm, unit: 'mm' },
  ...more
})
const SIZES = [chest(900, { size: 'S' }), chest(1000, { size: 'M' })]

test('the size that the title offers, and its label', () => {
  const sale = forSale(SIZES, { labels: ['S', 'M', 'UK 10'], titleLabels: ['M'] }, [])
  expect(sale.measures.map(({ mm }) => mm)).toEqual([1000])
  expect(sale.notOffered.map(({ mm }) => mm)).toEqual([900])
  expect(sale.sizeLabels).toEqual(['M', 'UK 10'])
})
test('a title with a region offers the same size: UK M', () => {
  expect(forSale(SIZES, { labels: [], titleLabels: ['UK M'] }, []).measures.map(({ mm }) => mm)).toEqual([1000])
})
test('with none or both in the title all are measured, and each says which it is', () => {
  expect(forSale(SIZES, { labels: [], titleLabels: [] }, ['S']).measures.map(({ size }) => size)).toEqual(['S', 'M'])
  expect(forSale(SIZES, { labels: [], titleLabels: ['S', 'M'] }, []).notOffered).toEqual([])
  expect(forSale(SIZES, { labels: [], titleLabels: [] }, ['S']).sizeLabels).toEqual(['S', 'M'])
})
test('with one garment and one size nothing needs to say which', () => {
  const [one] = forSale([chest(1000, { of: 'jacket', size: 'M' })], { labels: [], titleLabels: [] }, []).measures
  expect(one).not.toHaveProperty('of')
  expect(one).not.toHaveProperty('size')
  const two = forSale([chest(1000, { of: 'jacket' }), chest(950, { of: 'skirt' })], { labels: [], titleLabels: [] }, []).measures
  expect(two.map(({ of }) => of)).toEqual(['jacket', 'skirt'])
})

test.each<[string[], string[], (string | undefined)[]]>([
  [['UK 12', 'UK 14'], ['12'], ['UK 12', 'UK 14']],
  [['12', '14'], ['UK 12'], ['12']],
  [['M tall', 'L'], ['M'], ['M tall']],
  [['M', 'L'], ['XM'], ['M', 'L']],
  [['M', 'L'], ['M', 'XS'], ['M']],
  [['M'], ['L'], [undefined]]
])('of the sizes %j a title with %j offers %j', (sizes, titleLabels, expected) => {
  const measured = sizes.map((size, at) => chest(900 + at, { size }))
  expect([...new Set(forSale(measured, { labels: [], titleLabels }, []).measures.map(({ size }) => size))]).toEqual(
    expected.length === 1 ? [undefined] : expected
  )
})
test('what has no size is for sale whatever is offered, and no label is told twice', () => {
  const sale = forSale([...SIZES, chest(1100)], { labels: ['M', 'M'], titleLabels: ['M'] }, ['M', 'L'])
  expect(sale.measures.map(({ mm }) => mm)).toEqual([1000, 1100])
  expect(sale.sizeLabels).toEqual(['M', 'L'])
  expect(forSale([chest(1000)], { labels: [], titleLabels: [] }, []).measures).toEqual([chest(1000)])
})

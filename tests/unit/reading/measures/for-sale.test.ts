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

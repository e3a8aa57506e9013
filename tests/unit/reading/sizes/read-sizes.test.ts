/** The second stage as a whole: sizes of the text and of its title, and what is left. */
import { expect, test } from 'vitest'
import { readSizes } from '../../../../core/reading/sizes/read-sizes.ts'
import { sizeHeadedAt } from '../../../../core/reading/sizes/size-heads.ts'
import { figureAt, textOf } from '../given.ts'

test('sizes are taken out of the figures, repeats joined', () => {
  const text = textOf('32/34 jeans, inseam 30" (76 cm)')
  const found = ['32', '34', '30"', '76 cm'].map((one) => figureAt(text, one))
  const { labels, lengths } = readSizes(text, null, found, { kind: 'jeans', language: 'en' })
  expect(labels).toEqual(['W32 L34'])
  expect(lengths.map(({ value }) => value)).toEqual([30])
})
test('what has no legs has no such label', () => {
  const text = textOf('32/34, sleeve 24"')
  const found = ['32', '34', '24"'].map((one) => figureAt(text, one))
  expect(readSizes(text, null, found, { kind: 'shirt', language: 'en' }).lengths).toHaveLength(3)
  expect(readSizes(text, null, found, { kind: null, language: 'en' }).lengths).toHaveLength(3)
})
test('the title has labels of its own', () => {
  const { labels, titleLabels } = readSizes(textOf('Worn twice.'), textOf('Denim jacket L'), [], { kind: 'jacket', language: 'en' })
  expect([labels, titleLabels]).toEqual([[], ['L']])
})
test('a figure is of the size that heads it, where there are several', () => {
  const at = sizeHeadedAt([
    { from: 2, label: 'M' },
    { from: 8, label: 'L' }
  ])
  expect([0, 2, 7, 8, 99].map(at)).toEqual([null, 'M', 'M', 'L', 'L'])
  expect(sizeHeadedAt([{ from: 2, label: 'M' }])(5)).toBeNull()
})

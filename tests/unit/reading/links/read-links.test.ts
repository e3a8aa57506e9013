/** The stage of links as a whole: what takes part, and what comes of it. */
import { expect, test } from 'vitest'
import { type LinksGiven, readLinks } from '../../../../core/reading/links/read-links.ts'
import { figureAt, nameAt, textOf } from '../given.ts'

const NOTHING: LinksGiven = { labels: [], quantities: [], asides: new Map(), pairs: [], spare: new Set(), kind: null, asked: undefined }
const shown = ({ ofGarment }: ReturnType<typeof readLinks>) =>
  ofGarment.map(({ label, quantity }) => `${label.points[0]} ${quantity.value}`)

test('figures about something else are linked, but not of the garment', () => {
  const text = textOf('waist 30" and her waist 26"')
  const [own, hers] = [figureAt(text, '30"'), figureAt(text, '26"')]
  const labels = [nameAt(text, 'waist', ['waist']), nameAt(text, 'waist', ['waist'], { nth: 2 })]
  const read = readLinks(text, { ...NOTHING, labels, quantities: [own, hers], asides: new Map([[hers, 'model']]) })
  expect(shown(read)).toEqual(['waist 30'])
  expect(read.single).toHaveLength(2)
  expect(read.names).toEqual(['waist'])
})
test('a detail and cloth to spare take no name', () => {
  const text = textOf('inseam 30" +2"')
  const [own, more] = [figureAt(text, '30"'), figureAt(text, '2"')]
  const labels = [nameAt(text, 'inseam', ['inseam'])]
  expect(readLinks(text, { ...NOTHING, labels, quantities: [own, more], spare: new Set([more]) }).single).toHaveLength(1)
  const detail = readLinks(text, { ...NOTHING, labels, quantities: [own, more], asides: new Map([[own, 'detail']]) })
  expect(detail.single.map(({ quantity }) => quantity.value)).toEqual([2])
})
test('a pair that was measured is a waist and an inside leg', () => {
  const text = textOf('measures 33 x 30.5')
  const pair = [figureAt(text, '33'), figureAt(text, '30.5')] as const
  expect(shown(readLinks(text, { ...NOTHING, quantities: pair, pairs: [[...pair]] }))).toEqual(['waist 33', 'inseam 30.5'])
  expect(shown(readLinks(text, { ...NOTHING, quantities: pair, pairs: [[...pair]], kind: 'jeans' }))).toEqual(['waist 33', 'inseam 30.5'])
  expect(shown(readLinks(text, { ...NOTHING, quantities: pair, pairs: [[...pair]], kind: 'dress' }))).toEqual([])
})
test('a pair on a top that names neither is its chest and its length', () => {
  const text = textOf('22 x 29')
  const quantities = [figureAt(text, '22'), figureAt(text, '29')]
  expect(shown(readLinks(text, { ...NOTHING, quantities, kind: 'shirt' }))).toEqual(['chest 22', 'length 29'])
  expect(shown(readLinks(text, { ...NOTHING, quantities, kind: 'skirt' }))).toEqual([])
})
test('a lone figure without a name is of what was asked, two are of nothing', () => {
  const text = textOf('15 or 16')
  const [one, two] = [figureAt(text, '15'), figureAt(text, '16')]
  const read = readLinks(text, { ...NOTHING, quantities: [one], asked: 'hip' })
  expect(shown(read)).toEqual(['hip 15'])
  expect(read.answer?.quantity).toBe(one)
  expect(shown(readLinks(text, { ...NOTHING, quantities: [one, two], asked: 'hip' }))).toEqual([])
  expect(shown(readLinks(text, { ...NOTHING, quantities: [one] }))).toEqual([])
})

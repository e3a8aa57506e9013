/** The kind is settled when the figures are known, and they are read again where they mean something else on it. */
import { expect, test } from 'vitest'
import { readListing } from '../../../core/reading/read-listing.ts'

const read = (title: string, text: string) => {
  const { garment, measures } = readListing({ title, text })
  return { kind: garment.kind, points: measures.map(({ point }) => point) }
}

test('how wide a leg is, is its end on shorts, and its top on trousers', () => {
  expect(read('Running pants', 'Waist 17" flat, leg width 12", inseam 5"')).toEqual({
    kind: 'shorts',
    points: ['waist', 'legOpening', 'inseam']
  })
  expect(read('Running pants', 'Waist 17" flat, leg width 12", inseam 30"')).toEqual({
    kind: 'trousers',
    points: ['waist', 'thigh', 'inseam']
  })
})

test('a length behind a bust is no skirt’s', () => {
  expect(read('Tiered floral, gathered skirt, tie straps', 'Bust 90 cm, waist 74 cm, length 118 cm.')).toEqual({
    kind: 'dress',
    points: ['chest', 'waist', 'bodyLength']
  })
})

test('a kind that came with the text is not asked again', () => {
  expect(readListing({ title: 'Running pants', text: 'Inseam 5"', kind: 'trousers' }).garment).toEqual({ kind: 'trousers', sureness: 1 })
})

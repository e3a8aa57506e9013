import { expect, test } from 'vitest'
import { garmentFrom, labelEvidence, readListing } from '../../../core/reading/read-listing.ts'

test('from one file: a listing is read, becomes a garment, and its label tells what it can', () => {
  const reading = readListing({ title: 'Wool trousers W32 L34', text: 'Inseam 33"' })
  const { measures } = garmentFrom(reading, [])
  expect(measures).toContainEqual(expect.objectContaining({ point: 'inseam', mm: 33 * 25.4, source: 'seller' }))
  const [waist] = labelEvidence(reading.sizeLabels[0] ?? '', 'trousers')
  expect(waist).toMatchObject({ point: 'waist' })
  expect(waist?.mm).toBeGreaterThan(32 * 25.4)
})

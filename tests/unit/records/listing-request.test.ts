import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { reckon } from '../../../core/reckon.ts'
import { put } from '../../../core/records/change.ts'
import { all } from '../../../core/records/find.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { pasteNew } from '../../../core/records/looks.ts'
import { readSaved } from '../../../core/records/read-saved.ts'
import { favouriteFor, listingRequest } from '../../../core/records/request-for.ts'
import type { BodyMeasurement, Fields, GarmentOwned, Person } from '../../../core/records/schemas.ts'
import { wholeWardrobe } from '../../../entrypoints/view/use-records.ts'
import { requestNow } from '../../../entrypoints/workroom/use-answer.ts'
import { clock, freshRecords, owned, there, WREN } from './fixtures.ts'

/** Four centimetres less at the waist, the rest alike. */
const LIKED: Fields<'garmentsOwned'>['measures'] = [
  { point: 'waist', mm: 780, stated: '39' },
  { point: 'hip', mm: 1040, stated: '52' },
  { point: 'inseam', mm: 790, stated: '79' }
]
const TROUSERS = 'Wool trousers. Waist 41 cm flat, hip 52 cm flat, inside leg 79 cm.'

test('a favourite and no body: panel and wishlist reckon alike', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const person = (await put(records, 'people', WREN, stamp())).after
  await put(records, 'garmentsOwned', owned({ personId: person.id, favourite: true, measures: LIKED }), stamp())
  const look = await pasteNew(records, TROUSERS, null, stamp())
  await keepLook(records, look.id, null, stamp())
  const wardrobe = await wholeWardrobe(records)
  const panel = there(listingRequest(look, readSaved(look, 'in'), wardrobe))
  await keepLook(records, look.id, { request: panel, reckoning: reckon(panel) }, stamp())
  const [listing] = await all(records, 'listingsKept')
  const wishlist = there(requestNow(there(listing), wardrobe))
  expect(reckon(wishlist).verdict).toBe('alters-to-fit')
  expect(wishlist).toEqual(panel)
})

test('a kept listing is reckoned with what the seller answered since, and with the price the page told', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const person = (await put(records, 'people', { ...WREN, currency: 'GBP' }, stamp())).after
  await put(
    records,
    'bodyMeasurements',
    { personId: person.id, measure: 'waistbandGirth', mm: 760, stated: '76', takenOn: '2026-03-01' },
    stamp()
  )
  const look = await pasteNew(records, TROUSERS, null, stamp())
  await keepLook(records, look.id, null, stamp())
  const [listing] = await all(records, 'listingsKept')
  const answers = [{ id: 'a', text: 'The thigh is 32 cm flat.', at: '2026-03-01T09:00:00.000Z' }]
  const now = there(
    requestNow({ ...there(listing), revision: 2, answers, price: { amount: 12, currency: 'GBP' } }, await wholeWardrobe(records))
  )
  expect(now.garment.measures).toContainEqual(expect.objectContaining({ point: 'thigh', mm: 640 }))
  expect(now.garment.price).toEqual({ amount: 12 })
})

describe('the garment that a listing is set beside', () => {
  const base = { device: 'd', revision: 1, createdAt: '2026-03-01T08:00:00.000Z', updatedAt: '2026-03-01T08:00:00.000Z', deletedAt: null }
  const wren: Person = { ...WREN, ...base, id: 'p' }
  const garment = (id: string, over: Partial<GarmentOwned> = {}): GarmentOwned => ({ ...owned(), ...base, id, ...over })
  const beside = (chosen: string | null, garments: GarmentOwned[], measures: BodyMeasurement[] = []) =>
    favouriteFor(chosen, wren, 'trousers', { garments, measures })?.id ?? null
  const body: BodyMeasurement[] = [{ ...base, id: 'm', personId: 'p', measure: 'hipGirth', mm: 990, stated: '99', takenOn: '2026-03-01' }]

  test('the chosen one, of this person and kind, with or without a body', () => {
    const garments = [garment('a'), garment('b'), garment('shirt', { kind: 'shirt' }), garment('other', { personId: 'q' })]
    for (const measures of [[], body]) expect(beside('b', garments, measures)).toBe('b')
    for (const strange of ['shirt', 'other', 'gone']) expect(beside(strange, garments, body), strange).toBeNull()
  })
  test('with a body and none chosen: the body alone', () => {
    expect(beside(null, [garment('a', { favourite: true })], body)).toBeNull()
  })
  test('without a body: the one marked, of two marked the one marked last, else the first', () => {
    expect(beside(null, [garment('a'), garment('b', { favourite: true })])).toBe('b')
    const later = { favourite: true, updatedAt: '2026-03-02T08:00:00.000Z' }
    expect(beside(null, [garment('a', { favourite: true }), garment('b', later), garment('c', { favourite: true })])).toBe('b')
    expect(beside(null, [garment('a'), garment('b')])).toBe('a')
    expect(beside(null, [garment('a', { measures: [] })])).toBeNull()
  })
})

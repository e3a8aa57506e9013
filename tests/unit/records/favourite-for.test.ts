/** Which garment a listing is set beside, and whose figures count, without a database. */
import { describe, expect, test } from 'vitest'
import { favouriteFor, favouritesOf, latestMeasures, requestFor } from '../../../core/records/request-for.ts'
import type { BodyMeasurement, GarmentOwned, Person } from '../../../core/records/schemas.ts'
import { owned, WREN } from './fixtures.ts'

const base = { device: 'd', revision: 1, createdAt: '2026-03-01T08:00:00.000Z', updatedAt: '2026-03-01T08:00:00.000Z', deletedAt: null }
const wren: Person = { ...WREN, ...base, id: 'p' }
const garment = (id: string, over: Partial<GarmentOwned> = {}): GarmentOwned => ({ ...owned(), ...base, id, ...over })
const marked = (id: string, updatedAt: string) => garment(id, { favourite: true, updatedAt })
const measured = (over: Partial<BodyMeasurement> = {}): BodyMeasurement => ({
  ...{ ...base, id: 'm', personId: 'p', measure: 'waistGirth', mm: 700, stated: '70', takenOn: '2026-01-10' },
  ...over
})

describe('a listing is set beside', () => {
  const [a, b] = [garment('a'), garment('b')]
  const older = marked('older', '2026-03-02T08:00:00.000Z')
  const newer = marked('newer', '2026-03-03T08:00:00.000Z')
  const twin = marked('twin', newer.updatedAt)
  test.each<[string, string | null, GarmentOwned[], BodyMeasurement[], string | null]>([
    ['the one chosen', 'b', [a, b], [], 'b'],
    ['the one chosen, though a body is told and another is marked', 'b', [newer, b], [measured()], 'b'],
    ['none where a body is told and none is chosen', null, [newer], [measured()], null],
    ['none where the one chosen is gone and a body is told', 'gone', [a], [measured()], null],
    ['the first where nobody’s body is told', null, [a, b], [], 'a'],
    ['the first where only somebody else’s body is told', null, [a, b], [measured({ personId: 'q' })], 'a'],
    ['the first where what was told of the body was removed', null, [a, b], [measured({ deletedAt: base.updatedAt })], 'a'],
    ['the one marked before the first', null, [a, older], [], 'older'],
    ['of two marked the one marked last', null, [older, newer], [], 'newer'],
    ['of two marked the one marked last, whatever their order', null, [newer, older], [], 'newer'],
    ['of two marked at once the one whose id comes last', null, [newer, twin], [], 'twin'],
    ['of two marked at once the one whose id comes last, whatever their order', null, [twin, newer], [], 'twin'],
    ['none of another kind', null, [garment('x', { kind: 'shirt' })], [], null],
    ['none of another person, though it is chosen', 'x', [garment('x', { personId: 'q' })], [], null],
    ['none that is not measured', 'x', [garment('x', { measures: [] })], [], null]
  ])('%s', (_, chosen, garments, measures, id) => {
    expect(favouriteFor(chosen, wren, 'trousers', { garments, measures })?.id ?? null).toBe(id)
  })

  test('nobody, or no kind, has none', () => {
    expect(favouritesOf(null, 'trousers', { garments: [a] })).toEqual([])
    expect(favouritesOf(wren, null, { garments: [a] })).toEqual([])
    expect(favouriteFor(null, null, 'trousers', { garments: [a], measures: [] })).toBeNull()
  })
})

test('of two measurements of one day and one moment the one whose id comes last counts', () => {
  const two = [measured({ id: 'a', mm: 1 }), measured({ id: 'b', mm: 2 })]
  expect(latestMeasures(two).get('waistGirth')?.mm).toBe(2)
  expect(latestMeasures(two.toReversed()).get('waistGirth')?.mm).toBe(2)
})

test('a seller’s figures are as far off as this person found, around and along; what says how far off it is, or is one’s own, stays', () => {
  const own: Person = { ...wren, sellerSdMm: { girth: 9, length: 4 } }
  const measures = [
    { point: 'waist', mm: 800, source: 'seller' },
    { point: 'inseam', mm: 760, source: 'seller' },
    { point: 'hip', mm: 1000, source: 'seller', sdMm: 2 },
    { point: 'thigh', mm: 600, source: 'own' }
  ] as const
  const garment = { kind: 'trousers' as const, measures: [...measures] }
  expect(requestFor(own, {}, null, garment)).toEqual({
    garment: { kind: 'trousers', measures: [{ ...measures[0], sdMm: 9 }, { ...measures[1], sdMm: 4 }, measures[2], measures[3]] },
    means: wren.means
  })
  expect(requestFor(wren, {}, null, garment).garment).toBe(garment)
})

test('a favourite of which nothing is said of cloth and cut has neither', () => {
  const { measures } = owned()
  expect(requestFor(wren, {}, { measures, cloth: {}, cut: {} }, { kind: 'trousers', measures: [] })).toEqual({
    garment: { kind: 'trousers', measures: [] },
    means: wren.means,
    favourite: { measures: [{ point: 'waist', mm: 760 }] }
  })
})

import { expect, test } from 'vitest'
import type { GarmentInput } from '../../../core/garment/garment-input.ts'
import { FACET_IDS, FACETS } from '../../../core/ids/cut.ts'
import { reckon } from '../../../core/reckon.ts'
import { correction } from '../../../core/records/garment-schemas.ts'
import { bodyFrom, latestMeasures, requestFor } from '../../../core/records/request-for.ts'
import { type BodyMeasurement, isRecordOf, type Person } from '../../../core/records/schemas.ts'
import { WREN } from './fixtures.ts'

const base = { device: 'd', revision: 1, createdAt: '2026-03-01T08:00:00.000Z', updatedAt: '2026-03-01T08:00:00.000Z', deletedAt: null }
const wren: Person = { ...WREN, ...base, id: 'p' }
const measured = (over: Partial<BodyMeasurement>): BodyMeasurement => ({
  ...base,
  id: 'm',
  personId: 'p',
  measure: 'waistGirth',
  mm: 700,
  stated: '70',
  takenOn: '2026-01-10',
  ...over
})
const trousers: GarmentInput = {
  kind: 'trousers',
  measures: [{ point: 'waist', mm: 812, source: 'seller' }],
  price: { amount: 20, postage: 3 }
}

test('the latest measurement counts: by its day, of one day the one written later; deleted ones never', () => {
  const rows = [
    measured({ id: 'a', takenOn: '2026-02-01', mm: 710 }),
    measured({ id: 'b', takenOn: '2026-01-01', mm: 690, createdAt: '2026-05-01T08:00:00.000Z' }),
    measured({ id: 'c', takenOn: '2026-02-01', mm: 715, createdAt: '2026-03-02T08:00:00.000Z' }),
    measured({ id: 'd', takenOn: '2026-06-01', mm: 999, deletedAt: '2026-06-02T08:00:00.000Z' }),
    measured({ id: 'e', measure: 'hipGirth', mm: 960 })
  ]
  expect(bodyFrom(rows)).toEqual({ waistGirth: { mm: 715 }, hipGirth: { mm: 960 } })
  expect(bodyFrom([...rows].reverse())).toEqual(bodyFrom(rows))
  expect(latestMeasures(rows).get('waistGirth')?.id).toBe('c')
})

test('a body alone, in the fit of the person or of the listing', () => {
  const body = bodyFrom([measured({})])
  expect(requestFor(wren, body, null, trousers)).toEqual({
    garment: trousers,
    wearer: { body: { waistGirth: { mm: 700 } }, fit: 'regular' },
    means: { level: 3, tailor: false }
  })
  expect(requestFor(wren, body, null, trousers, { fit: 'loose' }).wearer?.fit).toBe('loose')
  expect(requestFor(wren, body, null, trousers, { fit: null }).wearer?.fit).toBe('regular')
})

test('a favourite alone makes no wearer; with its tolerances', () => {
  const favourite = { measures: [{ point: 'waist' as const, mm: 760, stated: '38 flat' }], toleranceMm: { waist: 10 } }
  const request = requestFor(wren, {}, favourite, trousers)
  expect(request).not.toHaveProperty('wearer')
  expect(request.favourite).toEqual({ measures: [{ point: 'waist', mm: 760 }], toleranceMm: { waist: 10 } })
  expect(requestFor(wren, {}, { measures: [] }, trousers)).not.toHaveProperty('favourite')
})

test('own ease and own limits reach the request', () => {
  const own: Person = { ...wren, ease: { waist: { mm: 15, sdMm: 5 } }, limits: { 'leg-taper': 0 } }
  const request = requestFor(own, bodyFrom([measured({})]), null, trousers)
  expect(request.wearer?.ease).toEqual({ waist: { mm: 15, sdMm: 5, from: 'own' } })
  expect(request.limits).toEqual({ 'leg-taper': 0 })
})

test('own ease for a kind in a fit goes before the one for every kind, and stands for no other kind or fit', () => {
  const own: Person = {
    ...wren,
    ease: { waist: { mm: 15, sdMm: 5 } },
    easeOf: [
      { kind: 'trousers', fit: 'regular', point: 'waist', mm: 35 },
      { kind: 'trousers', fit: 'regular', point: 'inseam', mm: -40 },
      { kind: 'shirt', fit: 'regular', point: 'waist', mm: 200 }
    ]
  }
  const body = bodyFrom([measured({})])
  expect(requestFor(own, body, null, trousers).wearer?.ease).toEqual({
    waist: { mm: 35, sdMm: 0, from: 'own' },
    inseam: { mm: -40, sdMm: 0, from: 'own' }
  })
  expect(requestFor(own, body, null, trousers, { fit: 'loose' }).wearer?.ease).toEqual({ waist: { mm: 15, sdMm: 5, from: 'own' } })
  const { ease: _, ...without } = own
  expect(requestFor(without, body, null, { kind: 'coat', measures: [] }).wearer).not.toHaveProperty('ease')
})

test('own ease reaches the answer: the same waist too big is inside for who wants it looser', () => {
  const body = { waistbandGirth: { mm: 750 }, hipGirth: { mm: 1000 } }
  const garment: GarmentInput = {
    kind: 'trousers',
    measures: [
      { point: 'waist', mm: 812, source: 'own' },
      { point: 'hip', mm: 1060, source: 'own' }
    ]
  }
  const waistGap = (person: Person) => reckon(requestFor(person, body, null, garment)).gaps.find(({ point }) => point === 'waist')?.gapMm
  expect(waistGap(wren)).toBeGreaterThan(0)
  expect(waistGap({ ...wren, easeOf: [{ kind: 'trousers', fit: 'regular', point: 'waist', mm: 60 }] })).toBe(0)
})

test("the person's own figures go before the page's", () => {
  const request = requestFor(wren, {}, null, trousers, { money: { price: 25, postage: null, worth: 60 } })
  expect(request.garment.price).toEqual({ amount: 25, postage: 3 })
  expect(request.means.garmentWorth).toBe(60)
  expect(wren.means).not.toHaveProperty('garmentWorth')
  const unpriced: GarmentInput = { kind: 'trousers', measures: [] }
  expect(requestFor(wren, {}, null, unpriced, { money: { price: null, postage: 4, worth: null } }).garment).toEqual(unpriced)
  expect(requestFor(wren, {}, null, unpriced, { money: { price: 0, postage: null, worth: null } }).garment.price).toEqual({ amount: 0 })
})

test('whose sizes they wear reaches the wearer; not said, it is left out', () => {
  const body = bodyFrom([measured({})])
  expect(requestFor({ ...wren, sizes: 'women' }, body, null, trousers).wearer?.sizes).toBe('women')
  expect(requestFor(wren, body, null, trousers).wearer).not.toHaveProperty('sizes')
})

test('a favourite brings its own cloth and cut, so that unlike cloth is not like for like', () => {
  const measures = [{ point: 'waist' as const, mm: 760, stated: '38 flat' }]
  const cloth = { fibres: [{ fibre: 'elastane', percent: 3 }] }
  expect(requestFor(wren, {}, { measures, cloth, cut: { rise: 'low' } }, trousers).favourite).toEqual({
    measures: [{ point: 'waist', mm: 760 }],
    cloth,
    cut: { rise: 'low' }
  })
})

test('what is new of a person, a garment and a correction is saved, and what no version knows is refused', () => {
  expect(isRecordOf('people', { ...wren, fit: 'as-cut', sizes: 'children' })).toBe(true)
  expect(isRecordOf('people', { ...wren, sizes: 'giants' })).toBe(false)
  const garment = { ...base, id: 'g', personId: 'p', name: 'Jeans', kind: 'jeans', measures: [], favourite: false, notes: '' }
  expect(isRecordOf('garmentsOwned', { ...garment, cut: { leg: 'bootcut', rise: 'low' }, cloth: { stretchPercent: 15 } })).toBe(true)
  expect(isRecordOf('garmentsOwned', { ...garment, cut: { leg: 'trumpet' } })).toBe(false)
  expect(isRecordOf('garmentsOwned', { ...garment, cut: { collar: 'notched' } })).toBe(false)
  for (const facet of FACET_IDS) {
    for (const value of FACETS[facet]) expect(correction.safeParse({ cut: { [facet]: value } }).success, `${facet} ${value}`).toBe(true)
    expect(correction.safeParse({ cut: { [facet]: 'neither' } }).success, facet).toBe(false)
  }
  expect(correction.safeParse({ cloth: { stretchPercent: 20 } }).success).toBe(true)
})

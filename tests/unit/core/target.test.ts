import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../core/garment/garment-input.ts'
import { gapsBetween } from '../../../core/wearer/gaps.ts'
import { targetFor } from '../../../core/wearer/target.ts'
import type { Wearer } from '../../../core/wearer/wearer.ts'
import { wholeBody } from '../../../core/wearer/whole-body.ts'

const trousers: GarmentInput = {
  kind: 'trousers',
  measures: [
    { point: 'waist', mm: 850, source: 'seller' },
    { point: 'hip', mm: 1040, source: 'seller' },
    { point: 'legOpening', mm: 400, source: 'seller' }
  ]
}
const wearer: Wearer = { fit: 'regular', body: { waistbandGirth: { mm: 800 }, hipGirth: { mm: 980 }, heelGirth: { mm: 320 } } }

describe('what is wanted', () => {
  it('from a body: least, ideal and most lie above it by the ease', () => {
    expect(targetFor(garmentAsWorn(trousers), wearer).get('waist')).toMatchObject({ least: 800, ideal: 819, most: 845, from: 'body' })
  })
  it('a favourite wins where it has the point, with a narrower tolerance under than over', () => {
    const target = targetFor(garmentAsWorn(trousers), wearer, { measures: [{ point: 'waist', mm: 830 }] })
    expect(target.get('waist')).toMatchObject({ least: 815, ideal: 830, most: 855, from: 'favourite' })
    expect(target.get('hip')).toMatchObject({ from: 'body' })
  })
  it('own ease moves ideal and most, not the least', () => {
    const own = targetFor(garmentAsWorn(trousers), { ...wearer, ease: { waist: { mm: 10, sdMm: 4, from: 'own' } } })
    expect(own.get('waist')).toMatchObject({ least: 800, ideal: 810, most: 836 })
  })
  it('the edge of a top is judged at the hip where it comes 130 below the natural waist, and no sooner', () => {
    const shirt = (bodyLength: number) =>
      garmentAsWorn({
        kind: 'shirt',
        measures: [
          { point: 'hem', mm: 1060, source: 'own' },
          { point: 'bodyLength', mm: bodyLength, source: 'own' }
        ]
      })
    const body = { hipGirth: { mm: 980 }, backWaistLength: { mm: 420 } }
    expect(targetFor(shirt(551), { fit: 'regular', body }).has('hem')).toBe(true)
    expect(targetFor(shirt(549), { fit: 'regular', body }).has('hem')).toBe(false)
  })
  it('a closed leg opening must pass heel and ankle; one that opens need not', () => {
    expect(targetFor(garmentAsWorn(trousers), wearer).get('legOpening')?.least).toBe(330)
    const zipped = garmentAsWorn({ ...trousers, made: { opens: ['waist', 'legOpening'] } })
    expect(targetFor(zipped, wearer).has('legOpening')).toBe(false)
  })
  it('a wish below a bound becomes a band 10 wide from the bound, with the reason', () => {
    const want = targetFor(garmentAsWorn(trousers), wearer, { measures: [{ point: 'legOpening', mm: 280 }] }).get('legOpening')
    expect(want).toMatchObject({ least: 330, ideal: 330, most: 340 })
    expect(want?.because.map(({ code }) => code)).toContain('target.contradiction')
  })
  it('a band worked out from other body measures lies further out and says so', () => {
    const garment = garmentAsWorn({ kind: 'trousers', measures: [{ point: 'thigh', mm: 600, source: 'seller' }] })
    const gap = gapsBetween(garment, targetFor(garment, wearer)).find(({ point }) => point === 'thigh')
    expect(gap?.edgeMarginMm).toBeGreaterThan(20)
    expect(gap?.because.map(({ code }) => code)).toContain('target.worked-out')
  })
  it('growth and shrinkage are taken into the band, on today’s tape', () => {
    const rigid = garmentAsWorn({ ...trousers, kind: 'jeans', cloth: { traits: ['rigid', 'denim'] } })
    const gap = gapsBetween(rigid, targetFor(rigid, wearer)).find(({ point }) => point === 'waist')
    expect(gap?.band?.least).toBe(800 - 19)
    expect(gap?.gapMm).toBe(850 - (845 - 19))
  })
  it('a skirt that stands away is never too big at the hip', () => {
    const skirt = (skirtShape: 'straight' | 'flared') =>
      garmentAsWorn({ kind: 'skirt', measures: [{ point: 'hip', mm: 1300, source: 'seller' }], made: { skirtShape } })
    const gap = (shape: 'straight' | 'flared') =>
      gapsBetween(skirt(shape), targetFor(skirt(shape), wearer)).find(({ point }) => point === 'hip')?.gapMm
    expect(gap('straight')).toBeGreaterThan(0)
    expect(gap('flared')).toBe(0)
  })
})

describe('where the band sits', () => {
  // worn at 800 around and 640 through the fork; natural waist 740 at 720; hip 980 at 640 − 300
  const body: Wearer['body'] = {
    waistbandGirth: { mm: 800 },
    bandCrotchLength: { mm: 640 },
    waistGirth: { mm: 740 },
    totalCrotchLength: { mm: 720 },
    hipGirth: { mm: 980 }
  }
  const rises = (front: number, back: number): GarmentInput => ({
    kind: 'trousers',
    measures: [
      { point: 'waist', mm: 800, source: 'own' },
      { point: 'frontRise', mm: front, source: 'own' },
      { point: 'backRise', mm: back, source: 'own' }
    ]
  })
  const ideal = (front: number, back: number, wears: Wearer['body'] = body) => {
    const garment = garmentAsWorn(rises(front, back))
    return targetFor(garment, { fit: 'regular', body: wears }).get('waist')
  }
  it('where it is worn: the waistband’s own girth', () => {
    expect(ideal(275, 390)?.ideal).toBe(819)
  })
  it('half way up to the natural waist: half way between the two girths', () => {
    expect(ideal(295, 410)?.ideal).toBeCloseTo(770 + 19, 9)
  })
  it('never above the natural waist', () => {
    expect(ideal(400, 500)?.ideal).toBeCloseTo(740 + 19, 9)
  })
  it('lower: towards the hip, a tenth of the way at 30 less', () => {
    expect(ideal(260, 375)?.ideal).toBeCloseTo(800 + 0.1 * 180 + 19, 9)
    expect(ideal(260, 375)?.because.map(({ code }) => code)).toContain('target.band-lower')
  })
  it('with one pair only it says so and is less sure', () => {
    const { waistGirth: _, totalCrotchLength: __, ...onePair } = body
    const want = ideal(295, 410, onePair)
    expect(want?.ideal).toBe(819)
    expect(want?.sdMm).toBeGreaterThan(ideal(275, 390)?.sdMm ?? 0)
    expect(want?.because.map(({ code }) => code)).toContain('target.one-pair')
  })
})

describe('a whole body', () => {
  it('keeps what is told and works out the rest', () => {
    const body = wholeBody({ hipGirth: { mm: 1000 } })
    expect(body.get('hipGirth')).toMatchObject({ mm: 1000, basedOn: [] })
    // ANSUR II, both sexes: −89.45 + 0.69092 × 1000 and −107.74 + 0.71885 × 1000
    expect(body.get('thighGirth')?.mm).toBeCloseTo((601.47 + 611.11) / 2, 1)
    expect(body.get('thighGirth')?.basedOn).toEqual(['hipGirth'])
    expect(body.get('thighGirth')?.sdMm).toBeGreaterThan(19)
  })
  it('nothing comes of nothing but the heel', () => {
    expect([...wholeBody({}).keys()]).toEqual(['heelGirth'])
  })
})

import { describe, expect, it } from 'vitest'
import { clothTaken, keepsNeedleHoles, levelMore, stretchAt, timeFactor, wornChange } from '../../../core/garment/cloth.ts'
import { allowanceAt, isFelled, madeAs } from '../../../core/garment/construction.ts'
import { contradictions } from '../../../core/garment/contradictions.ts'
import { COMMON_SHARE, garmentAsWorn, SD_MM } from '../../../core/garment/garment-as-worn.ts'
import type { GarmentMeasure } from '../../../core/garment/garment-input.ts'
import { stretchOf, usableAt } from '../../../core/garment/stretch.ts'

const seller = (point: GarmentMeasure['point'], mm: number): GarmentMeasure => ({ point, mm, source: 'seller' })

describe('construction', () => {
  it('assumes by kind what is not told, and says so', () => {
    const { made, assumed } = madeAs('trousers', { hemDepthMm: 55 })
    expect(made.outletMm).toBe(25)
    expect(made.hemDepthMm).toBe(55)
    expect(assumed).toContain('outletMm')
    expect(assumed).not.toContain('hemDepthMm')
  })
  it('a felled seam gives nothing, a told outlet wins at the back', () => {
    const { made } = madeAs('jeans')
    expect(isFelled(made, 'inseam')).toBe(true)
    expect(allowanceAt(made, 'inseam')).toBe(0)
    const told = { outletMm: 38, seamAllowanceMm: { 'centre-back': 15, side: 20 } }
    const made2 = madeAs('trousers', told).made
    expect(allowanceAt(made2, 'centre-back', told)).toBe(38)
    expect(allowanceAt(made2, 'side', told)).toBe(20)
    expect(allowanceAt(made2, 'inseam', told)).toBe(10)
  })
})

describe('cloth', () => {
  it('rigid cotton denim grows at the waist, 13–25 mm (from memory), stretch denim does not', () => {
    const rigid = wornChange(
      'jeans',
      clothTaken('jeans', { traits: ['rigid', 'denim'], fibres: [{ fibre: 'cotton', percent: 100 }] }),
      'waist'
    )
    expect(rigid.growMm).toBeGreaterThanOrEqual(13)
    expect(rigid.growMm).toBeLessThanOrEqual(25)
    expect(wornChange('jeans', clothTaken('jeans', { traits: ['denim'] }), 'waist').growMm).toBe(0)
    expect(wornChange('jeans', clothTaken('jeans', { traits: ['rigid', 'denim'] }), 'inseam').growMm).toBe(0)
  })
  it('unwashed cotton shrinks more in length than around; washed does not', () => {
    const cloth = clothTaken('shirt', { washed: false, fibres: [{ fibre: 'cotton', percent: 100 }] })
    expect(wornChange('shirt', cloth, 'sleeveLength').shrink).toBeGreaterThan(wornChange('shirt', cloth, 'chest').shrink)
    expect(wornChange('shirt', clothTaken('shirt', { fibres: [{ fibre: 'cotton', percent: 100 }] }), 'chest').shrink).toBe(0)
  })
  it('of a pull by hand a knit is asked 0.3 in wear, a woven 0.4, half of that at its firm band, never two thirds of all it can', () => {
    expect(stretchAt(clothTaken('knit-top', { stretchPercent: 50 }), 'chest')).toBeCloseTo(0.15, 9)
    expect(stretchAt(clothTaken('jeans', { stretchPercent: 15 }), 'hip')).toBeCloseTo(0.06, 9)
    expect(stretchAt(clothTaken('jeans', { stretchPercent: 15 }), 'waist')).toBeCloseTo(0.03, 9)
    expect(stretchAt(clothTaken('jeans', { stretchPercent: 15 }), 'thigh')).toBeCloseTo(0.072, 9)
    // 0.4 × 0.8 = 0.32, but 0.65 × (1 − 1/1.8) = 0.289
    expect(usableAt(stretchOf('shirt', 'woven', { stretchPercent: 80 }, {}), 'woven', 'chest')).toBeCloseTo(0.65 * (1 - 1 / 1.8), 9)
    expect(stretchAt(clothTaken('shirt', {}), 'chest')).toBe(0)
  })
  it('needle holes, matching and awkward cloth', () => {
    expect(keepsNeedleHoles(clothTaken('skirt', { traits: ['silk'] }))).toBe(true)
    expect(keepsNeedleHoles(clothTaken('skirt', { traits: ['check'] }))).toBe(false)
    expect(timeFactor(clothTaken('skirt', { traits: ['check'] }))).toBeGreaterThan(1)
    expect(levelMore(clothTaken('skirt', { traits: ['slippery'] }))).toBe(1)
  })
})

describe('garment', () => {
  it('own tape wins over the seller’s, the seller’s over a label; two of one kind make a mean', () => {
    const garment = garmentAsWorn({
      kind: 'trousers',
      measures: [
        seller('waist', 800),
        { point: 'waist', mm: 812, source: 'own' },
        { point: 'waist', mm: 900, source: 'label' },
        seller('hip', 1000),
        seller('hip', 1040)
      ]
    })
    expect(garment.points.get('waist')).toMatchObject({ mm: 812, from: 'own', sdMm: SD_MM.own.girth })
    expect(garment.points.get('hip')).toMatchObject({ mm: 1020, from: 'seller' })
    // 40 apart, half of that is doubt beside what one tape has in common
    expect(garment.points.get('hip')).toMatchObject({ sdMm: Math.hypot(SD_MM.seller.girth * Math.sqrt(COMMON_SHARE), 20), readings: 2 })
    expect(garment.points.get('waist')?.readings).toBeUndefined()
  })
  it('a second reading near the first makes it surer, but never surer than the tape', () => {
    const sdOf = (...figures: number[]) =>
      garmentAsWorn({ kind: 'trousers', measures: figures.map((mm) => seller('waist', mm)) }).points.get('waist')?.sdMm ?? 0
    // the standard error of a mean of two: what is common stays whole, the rest is halved as variance
    expect(sdOf(800, 804)).toBeCloseTo(12 * Math.sqrt(0.3 + 0.7 / 2), 9)
    expect(sdOf(800, 804)).toBeLessThan(sdOf(800))
    expect(sdOf(...Array.from({ length: 50 }, () => 800))).toBeGreaterThan(12 * Math.sqrt(0.3))
    expect(sdOf(800, 860)).toBeGreaterThan(sdOf(800))
  })
  it('marks what it worked out, never under the floors', () => {
    const garment = garmentAsWorn({ kind: 'trousers', measures: [seller('waist', 850)] })
    expect(garment.points.get('hip')).toMatchObject({ from: 'inferred' })
    // the spread between makers of its row: 38 for women's, 64 for men's
    expect(garment.points.get('hip')?.sdMm).toBeGreaterThanOrEqual(38)
    expect(garment.points.get('frontRise')?.sdMm).toBeGreaterThanOrEqual(20)
  })
  it('a size label is evidence of all points, a wide one', () => {
    const by = (source: 'label' | 'seller') => garmentAsWorn({ kind: 'trousers', measures: [{ point: 'waist', mm: 850, source }] })
    expect(by('label').points.get('waist')).toMatchObject({ mm: 850, from: 'label' })
    expect(by('label').points.get('hip')?.sdMm).toBeGreaterThan(by('seller').points.get('hip')?.sdMm ?? Number.NaN)
  })
  it('front and back rise make the crotch length', () => {
    const garment = garmentAsWorn({ kind: 'trousers', measures: [seller('frontRise', 280), seller('backRise', 390)] })
    expect(garment.points.get('crotchLength')).toMatchObject({ mm: 670, from: 'seller' })
  })
  it('leaves out what is no figure, and points that the kind has not', () => {
    const garment = garmentAsWorn({
      kind: 'skirt',
      measures: [seller('waist', Number.NaN), seller('hip', -4), seller('inseam', 700), seller('sweep', 900)]
    })
    expect([...garment.points].filter(([, { from }]) => from !== 'inferred').map(([point]) => point)).toEqual(['sweep'])
  })
  it('the order of the measures changes nothing', () => {
    const measures = [seller('waist', 850), seller('hip', 1000), seller('inseam', 760), seller('thigh', 600)]
    const one = garmentAsWorn({ kind: 'trousers', measures })
    const other = garmentAsWorn({ kind: 'trousers', measures: [...measures].reverse() })
    expect([...one.points]).toEqual([...other.points])
  })
  it('says which told figures cannot both be true', () => {
    const garment = garmentAsWorn({ kind: 'trousers', measures: [seller('waist', 400), seller('hip', 1000), seller('thigh', 1100)] })
    expect(
      contradictions(garment, { units: 'cm' })
        .map(({ code }) => code)
        .sort()
    ).toEqual(['garment.contradiction', 'garment.flat-and-around'])
  })
})

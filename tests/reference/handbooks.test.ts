/**
 * Handbook rows against the tables the planner stands on. Sources: US Army TM 10-227 "Fitting of Army Uniforms and Footwear" (pages named
 * in each test); Texas Agric. Extension B-1295; New Mexico State Univ. guides C-209, C-228; Central Washington Univ. costume text ch. 16;
 * Washington State Univ. Extension EM 2246; US Army TM 10-8400-201-23. Rows of trade practice are named so.
 */
import { describe, expect, it } from 'vitest'
import { alterationsFor } from '../../core/alterations/alterations-for.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../core/garment/garment-input.ts'
import type { AlterationId } from '../../core/ids/alterations.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { PointId } from '../../core/ids/points.ts'
import { toMm } from '../../core/length.ts'
import { reckon } from '../../core/reckon.ts'
import { easeFor } from '../../core/wearer/ease.ts'

const inch = (value: number): number => toMm(value, 'in')
const ease = (kind: GarmentKind, point: PointId) => {
  const row = easeFor(kind).find((one) => one.point === point)
  if (row === undefined) throw new Error(`no ease for ${kind} ${point}`)
  return row
}
const cap = (input: GarmentInput, id: AlterationId, direction?: 'less' | 'more'): number | undefined =>
  alterationsFor(garmentAsWorn(input)).options.find(
    (option) => option.id === id && (direction === undefined || option.direction === direction)
  )?.lines[0]?.capMm
const of = (kind: GarmentKind, made: GarmentInput['made'] = {}): GarmentInput => ({
  kind,
  measures: [
    { point: 'waist', mm: 900, source: 'own' },
    { point: 'chest', mm: 1000, source: 'own' }
  ],
  made
})

describe('ease', () => {
  it('trouser waist: about 1/2 inch (TM 10-227 p. 3-11) lies in the regular band', () => {
    const { least, fits } = ease('trousers', 'waist')
    expect(inch(0.5)).toBeGreaterThanOrEqual(least)
    expect(inch(0.5)).toBeLessThanOrEqual(fits.regular[1])
  })
  it('trouser waist: 3/4–1 in (CWU costume text ch. 16, men) holds the regular ideal', () => {
    expect(ease('trousers', 'waist').fits.regular[0]).toBeGreaterThanOrEqual(inch(0.7))
    expect(ease('trousers', 'waist').fits.regular[0]).toBeLessThanOrEqual(inch(1))
  })
  it('trouser seat: least is the lower edge of 1.5–2 in (CWU ch. 16, men)', () => {
    expect(ease('trousers', 'hip').least).toBeCloseTo(inch(1.5), 0)
  })
  it('trouser thigh: at least 1 in (CWU ch. 16; NMSU C-209)', () => {
    expect(Math.abs(ease('trousers', 'thigh').least - inch(1))).toBeLessThan(1)
  })
  it('trouser knee: at least 1 in (NMSU C-209)', () => {
    expect(Math.abs(ease('trousers', 'knee').least - inch(1))).toBeLessThan(1)
  })
  it('dress bust: least inside 1.5–2 in (CWU ch. 16), regular ideal inside 3–4 in (NMSU C-228)', () => {
    const { least, fits } = ease('dress', 'chest')
    expect(least).toBeGreaterThanOrEqual(inch(1.5) - 0.5)
    expect(least).toBeLessThanOrEqual(inch(2))
    expect(fits.regular[0]).toBeGreaterThanOrEqual(inch(3) - 0.5)
    expect(fits.regular[0]).toBeLessThanOrEqual(inch(4))
  })
  it('dress waist: least inside 3/4–1 in (CWU ch. 16)', () => {
    expect(ease('dress', 'waist').least).toBeGreaterThanOrEqual(inch(0.75) - 0.5)
    expect(ease('dress', 'waist').least).toBeLessThanOrEqual(inch(1))
  })
  it('coat waist: 4–7 in (TM 10-227 p. 3-11): the regular band of a jacket ends at 7 and its ideal lies inside', () => {
    const { fits } = ease('jacket', 'waist')
    expect(Math.abs(fits.regular[1] - inch(7))).toBeLessThan(1)
    expect(fits.regular[0]).toBeGreaterThanOrEqual(inch(4))
  })
  it('shirt chest: classic up to 3 in (CWU ch. 16) lies in the regular band', () => {
    const { least, fits } = ease('shirt', 'chest')
    expect(inch(3)).toBeGreaterThanOrEqual(least)
    expect(inch(3)).toBeLessThanOrEqual(fits.regular[1])
  })
})

describe('limits', () => {
  it('centre back of trousers: 3 in at most, else a smaller size (trade practice, CB-TR), and never under 1 in (HSW-PANTS)', () => {
    const most = cap(of('trousers'), 'waist-in-centre-back') ?? 0
    expect(most).toBeLessThanOrEqual(inch(3))
    expect(most).toBeGreaterThanOrEqual(inch(1))
  })
  it('trouser waist in or out 2–4 cm in the trade (BSAU) is inside what our seams give in', () => {
    expect(cap(of('trousers'), 'waist-in-centre-back') ?? 0).toBeGreaterThanOrEqual(40)
  })
  it('tailored trousers usually let out 2 in at the centre back (CB-TR): an outlet of 36 mm a side gives it', () => {
    expect(cap(of('trousers', { outletMm: 36 }), 'waist-out-centre-back') ?? 0).toBeGreaterThanOrEqual(inch(2))
  })
  it('overlocked seams of 3/8 in (FI-SA) give nothing at the sides', () => {
    expect(cap(of('jacket', { seamAllowanceMm: inch(0.375) }), 'sides-out')).toBeUndefined()
  })
  it('the seat alters the crotch (TM 10-227 p. 4-5, slacks): seat-in moves the back rise', () => {
    const option = alterationsFor(garmentAsWorn(of('trousers'))).options.find(({ id }) => id === 'seat-in')
    expect(option?.lines[0]?.effects.backRise ?? 0).toBeLessThan(0)
  })
  it('the side seam must hang centred (TM 10-227 p. 4-5): the sides take less than the centre back', () => {
    expect(cap(of('trousers'), 'waist-in-side-seams') ?? 0).toBeLessThan(cap(of('trousers'), 'waist-in-centre-back') ?? 0)
  })
  it('a jacket body in 1.5–2 in in all (trade practice, MULLEN): the centre back gives no more', () => {
    expect(cap(of('jacket'), 'centre-back-in') ?? 0).toBeLessThanOrEqual(inch(1.5))
  })
  it('shirt back darts about 4 in in all before it warps (trade practice, DARTQ)', () => {
    expect(Math.abs((cap(of('shirt'), 'back-darts') ?? 0) - inch(4))).toBeLessThan(3)
  })
  it('skirt: beyond 7.5 cm the line is lost (trade practice, MLT): warned there', () => {
    const garment = garmentAsWorn({
      kind: 'skirt',
      measures: [
        { point: 'waist', mm: 800, source: 'own' },
        { point: 'skirtLength', mm: 700, source: 'own' }
      ]
    })
    expect(alterationsFor(garment).options.find(({ id }) => id === 'skirt-shorten')?.lines[0]?.softMm).toBe(75)
  })
  it('working sleeve buttonholes are shortened from the shoulder only (trade practice, FYG)', () => {
    expect(cap(of('jacket', { workingCuffButtons: true }), 'sleeve-shorten-lined')).toBeUndefined()
    expect(cap(of('jacket', { workingCuffButtons: true }), 'sleeve-shorten-head')).toBeGreaterThan(0)
  })
  it('leather keeps its needle holes: nothing is let out (trade practice, LEATHER)', () => {
    const { options } = alterationsFor(garmentAsWorn({ ...of('trousers', { outletMm: 40 }), cloth: { structure: 'leather' } }))
    expect(options.filter(({ id }) => /-out-(centre|side)|seat-out|thigh-out|lengthen-hem/.test(id))).toEqual([])
  })
})

describe('buying rules', () => {
  const jacket: GarmentInput = {
    kind: 'jacket',
    measures: [
      { point: 'chest', mm: 1060, source: 'seller' },
      // 30 over 420 + 55: more than the 20 that a narrow re-set gives
      { point: 'shoulderWidth', mm: 505, source: 'seller' }
    ]
  }
  it('do not buy if the shoulder line must be remodelled (WSU EM 2246)', () => {
    const reckoning = reckon({
      garment: jacket,
      wearer: { fit: 'regular', body: { bustGirth: { mm: 960 }, shoulderWidth: { mm: 420 } } },
      means: { level: 5, tailor: true }
    })
    expect(reckoning.verdict).toBe('leave-it')
  })
  it('a garment more than one size off usually cannot be altered through its seams (Texas Ext. B-1295): a chest 100 mm too small is left', () => {
    const reckoning = reckon({
      garment: {
        kind: 'jacket',
        measures: [
          { point: 'chest', mm: 910, source: 'seller' },
          { point: 'shoulderWidth', mm: 440, source: 'seller' }
        ]
      },
      wearer: { fit: 'regular', body: { bustGirth: { mm: 960 }, shoulderWidth: { mm: 420 } } },
      means: { level: 5, tailor: true }
    })
    expect(reckoning.verdict).toBe('leave-it')
  })
  it('between two sizes fit the seat and alter the waist (TM 10-227 p. 3-11): the pair that fits the hip alters, the pair that fits the waist is left', () => {
    const wearer = { fit: 'regular' as const, body: { waistbandGirth: { mm: 800 }, hipGirth: { mm: 1020 }, thighGirth: { mm: 600 } } }
    const pair = (waist: number, hip: number, thigh: number): GarmentInput => ({
      kind: 'trousers',
      measures: [
        { point: 'waist', mm: waist, source: 'seller' },
        { point: 'hip', mm: hip, source: 'seller' },
        { point: 'thigh', mm: thigh, source: 'seller' }
      ]
    })
    const means = { level: 3 as const, tailor: false }
    expect(reckon({ garment: pair(880, 1085, 650), wearer, means }).verdict).toBe('alters-to-fit')
    expect(reckon({ garment: pair(820, 1020, 600), wearer, means }).verdict).toBe('leave-it')
  })
})

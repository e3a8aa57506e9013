/** Where a garment lies beside what is wanted: growth and shrinkage, and how unsure they leave the band. */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../../core/garment/garment-as-worn.ts'
import type { GarmentInput } from '../../../core/garment/garment-input.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import { type Gap, gapsBetween } from '../../../core/wearer/gaps.ts'
import { targetFor } from '../../../core/wearer/target.ts'

const COTTON: GarmentInput['cloth'] = { washed: false, fibres: [{ fibre: 'cotton', percent: 100 }] }

/** One told point beside a favourite of the same figure, which is sure to 4 mm. */
function gapAt(kind: GarmentKind, point: PointId, mm: number, cloth?: GarmentInput['cloth']): Gap | undefined {
  const garment = garmentAsWorn({ kind, measures: [{ point, mm, source: 'own' }], ...(cloth === undefined ? {} : { cloth }) })
  return gapsBetween(garment, targetFor(garment, undefined, { measures: [{ point, mm }] })).find((gap) => gap.point === point)
}

describe('cloth that was never washed', () => {
  it('brings the band onto the tape of today: what shrinks 3.5 % is cut so much longer', () => {
    expect(gapAt('shirt', 'sleeveLength', 600, COTTON)?.band?.ideal).toBeCloseTo(600 / 0.965, 9)
    expect(gapAt('shirt', 'chest', 1000, COTTON)?.band?.ideal).toBeCloseTo(1000 / 0.975, 9)
  })
  it('leaves the band unsure by 1 in 100 of the figure: 6 of a sleeve of 600, 10 of a chest of 1000', () => {
    expect(gapAt('shirt', 'sleeveLength', 600, COTTON)?.bandSdMm).toBeCloseTo(Math.hypot(4, 6), 9)
    expect(gapAt('shirt', 'chest', 1000, COTTON)?.bandSdMm).toBeCloseTo(Math.hypot(4, 10), 9)
    expect(gapAt('shirt', 'cuff', 220, COTTON)?.bandSdMm).toBeCloseTo(Math.hypot(4, 2.2), 9)
  })
  it('washed cloth leaves it as sure as the wish', () => {
    expect(gapAt('shirt', 'sleeveLength', 600)?.bandSdMm).toBe(4)
  })
  it('rigid denim that grows leaves the waist unsure by 4, whatever its figure', () => {
    expect(gapAt('jeans', 'waist', 800, { traits: ['rigid', 'denim'] })?.bandSdMm).toBeCloseTo(Math.hypot(4, 4), 9)
  })
})

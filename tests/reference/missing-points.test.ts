/**
 * Points worked out from told ones, against rows of finished-garment tables. US Commercial Standard CS135-46 (men's shirts, 1946) is a standard;
 * the others are makers' or pattern makers' own figures, which may set a default: T1 "a maker's published spec"
 * (casualindustrees.com/pages/6-pant-size-chart-1), T7 "a maker's published spec" (charlestyrwhitt.com, ultimate chino size guide),
 * T2 a shirt table in the style of GB/T 1335 (microflora/te2014). A prediction must lie within the sd that is claimed for it.
 */
import { describe, expect, it } from 'vitest'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { PointId } from '../../core/ids/points.ts'

const rows: { table: string; kind: GarmentKind; told: [PointId, number]; other: [PointId, number] }[] = [
  { table: 'T1, size 30', kind: 'trousers', told: ['waist', 800.1], other: ['hip', 952.5] },
  { table: 'T1, size 38', kind: 'trousers', told: ['waist', 1003.3], other: ['hip', 1155.7] },
  { table: 'T1, size 30', kind: 'trousers', told: ['hip', 952.5], other: ['thigh', 609.6] },
  { table: 'T1, size 38', kind: 'jeans', told: ['hip', 1155.7], other: ['thigh', 711.2] },
  { table: 'T1, size 34', kind: 'trousers', told: ['thigh', 660.4], other: ['knee', 520.7] },
  { table: 'T1, size 32', kind: 'trousers', told: ['waist', 850.9], other: ['legOpening', 444.5] },
  { table: 'T7, size 44', kind: 'trousers', told: ['waist', 1155.7], other: ['legOpening', 431.8] },
  { table: 'T1, size 36', kind: 'trousers', told: ['waist', 952.5], other: ['frontRise', 330.2] },
  { table: 'T7, size 36, with a band of 40', kind: 'trousers', told: ['waist', 952.5], other: ['frontRise', 288.9] },
  { table: 'T2, 170/92A', kind: 'shirt', told: ['chest', 1140], other: ['cuff', 240] },
  { table: 'T2, 165/80A', kind: 'shirt', told: ['chest', 1020], other: ['neck', 370] },
  { table: 'T2, 165/80A', kind: 'shirt', told: ['chest', 1020], other: ['shoulderWidth', 448] },
  { table: 'T2, women’s 165/92A', kind: 'shirt', told: ['chest', 1060], other: ['shoulderWidth', 426] },
  { table: 'T2, women’s 155/80A', kind: 'shirt', told: ['chest', 940], other: ['sleeveLength', 530] },
  { table: 'T2, women’s 175/108A', kind: 'shirt', told: ['chest', 1220], other: ['cuff', 230] },
  { table: 'T2, women’s 155/76A', kind: 'shirt', told: ['chest', 900], other: ['cuff', 190] },
  { table: 'T2, 185/112C', kind: 'shirt', told: ['chest', 1340], other: ['neck', 450] },
  { table: 'T2, women’s 155/76A', kind: 'shirt', told: ['chest', 900], other: ['neck', 340] },
  // a collar's size is its neck girth
  { table: 'CS135-46, 14', kind: 'shirt', told: ['chest', 1066.8], other: ['neck', 355.6] },
  { table: 'CS135-46, 17 1/2', kind: 'shirt', told: ['chest', 1422.4], other: ['neck', 444.5] },
  { table: 'CS135-46, 14', kind: 'shirt', told: ['chest', 1066.8], other: ['bicep', 374.6] },
  { table: 'CS135-46, 17 1/2', kind: 'shirt', told: ['chest', 1422.4], other: ['bicep', 463.5] }
]

describe('points worked out, against finished-garment tables', () => {
  it.each(rows.map((row) => [row.table, row.told.join(' '), row.other.join(' '), row] as const))(
    '%s: from %s to %s',
    (_table, _told, _other, { table, kind, told, other }) => {
      const garment = garmentAsWorn({ kind, measures: [{ point: told[0], mm: told[1], source: 'own' }] })
      const taken = garment.points.get(other[0])
      expect(taken?.from).toBe('inferred')
      expect(Math.abs((taken?.mm ?? 0) - other[1])).toBeLessThanOrEqual(taken?.sdMm ?? 0)
      // and the slope is the table's: where one table stands alone, no row of it is missed by more than half of that
      if (table.startsWith('T1') && (told[0] !== 'waist' || other[0] === 'hip'))
        expect(Math.abs((taken?.mm ?? 0) - other[1])).toBeLessThanOrEqual((taken?.sdMm ?? 0) / 2)
    }
  )
})

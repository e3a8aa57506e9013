/** Skirts, and the skirts of dresses. */

import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import { CIRCLE_SLOPE, slopeBetween } from './geometry.ts'
import { letOut } from './let-out.ts'
import { type Effects, limit, type Row } from './row.ts'

const SKIRTED: GarmentKind[] = ['skirt', 'dress']
/** Sweep per mm of skirt: the slope from hip to hem; unknown, none. A full circle grows 2π a mm. */
export function skirtSlope(garment: Garment): number {
  if (garment.made.skirtShape === 'circle') return CIRCLE_SLOPE
  const hip = garment.points.get('hip')
  const sweep = garment.points.get('sweep')
  const length = garment.points.get('skirtLength')
  if (hip === undefined || sweep === undefined || length === undefined) return 0
  const below = length.mm - garment.made.hipDepthMm
  return below > 100 ? slopeBetween(hip.mm, sweep.mm, below) : 0
}

const waistSlope = (garment: Garment): number => {
  const waist = garment.points.get('waist')
  const hip = garment.points.get('hip')
  return waist === undefined || hip === undefined ? 0 : slopeBetween(waist.mm, hip.mm, garment.made.hipDepthMm)
}

const along = (garment: Garment, sign: number): Effects => ({
  skirtLength: sign,
  ...(garment.kind === 'dress' ? { bodyLength: sign } : {}),
  sweep: sign * skirtSlope(garment)
})
const lengthPoint = (garment: Garment) => (garment.points.has('skirtLength') || garment.kind === 'skirt' ? 'skirtLength' : 'bodyLength')

export const skirts: Row[] = [
  {
    id: 'skirt-shorten',
    direction: 'less',
    kinds: SKIRTED,
    lines: (garment) => [
      {
        point: lengthPoint(garment),
        effects: along(garment, -1),
        capMm: Math.max(0, Math.min(150, (garment.points.get('skirtLength')?.mm ?? 600) - 250)),
        softMm: 75,
        because: limit('skirt-left', { left: 250 }),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    opens: (garment) => (garment.made.lined ? ['hem', 'lining'] : ['hem']),
    level: (garment) => (garment.made.skirtShape === 'circle' ? 3 : 2),
    minutes: (garment) => [garment.made.lined ? 55 : 35, 3],
    excludes: ['skirt-lengthen', 'skirt-shorten-from-waist'],
    source: 'MLT (7.5 cm, then the line is lost: warned); 150 and 250 left CP'
  },
  {
    id: 'skirt-lengthen',
    direction: 'more',
    kinds: SKIRTED,
    lines: (garment) => [
      {
        point: lengthPoint(garment),
        effects: along(garment, 1),
        capMm: Math.max(0, garment.made.hemDepthMm - 10),
        physicalMm: Math.max(0, garment.made.hemDepthMm - 3),
        because: limit('hem', { depth: garment.made.hemDepthMm, keep: 10 }),
        seams: [{ seam: 'hem', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: ['hem'],
    level: 2,
    minutes: [35, 3],
    outward: true,
    penalties: ['fade'],
    excludes: ['skirt-shorten', 'skirt-shorten-from-waist'],
    source: 'THRIFTHEM (fold and fade show); 10 kept CP'
  },
  {
    id: 'skirt-shorten-from-waist',
    direction: 'less',
    kinds: ['skirt'],
    lines: (garment) => [
      {
        point: 'skirtLength',
        effects: { skirtLength: -1, waist: waistSlope(garment) },
        capMm: 50,
        because: limit('from-waist'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    opens: ['waistband'],
    level: 4,
    minutes: [90, 5],
    penalties: ['drape'],
    excludes: ['skirt-shorten', 'skirt-lengthen'],
    source: 'CP: where the hem is detailed'
  },
  {
    id: 'skirt-sides-in',
    direction: 'less',
    kinds: ['skirt'],
    lines: () => [
      { point: 'waist', effects: { waist: -1 }, capMm: 100, because: limit('sides'), seams: [{ seam: 'side', mmPerOffset: 4 }] },
      { point: 'hip', effects: { hip: -1 }, capMm: 100, because: limit('sides'), seams: [{ seam: 'side', mmPerOffset: 4 }] },
      { point: 'sweep', effects: { sweep: -1 }, capMm: 100, because: limit('sides'), seams: [{ seam: 'side', mmPerOffset: 4 }] }
    ],
    opens: ['waistband'],
    level: 3,
    minutes: [40, 6],
    reseams: ['side'],
    excludes: ['skirt-sides-out'],
    source: 'CP'
  },
  {
    id: 'skirt-sides-out',
    direction: 'more',
    kinds: ['skirt'],
    lines: (garment) => [
      { point: 'waist', effects: { waist: 1 }, ...letOut(garment, 'side', 2), seams: [{ seam: 'side', mmPerOffset: 4, outward: true }] },
      { point: 'hip', effects: { hip: 1 }, ...letOut(garment, 'side', 2), seams: [{ seam: 'side', mmPerOffset: 4, outward: true }] },
      { point: 'sweep', effects: { sweep: 1 }, ...letOut(garment, 'side', 2), seams: [{ seam: 'side', mmPerOffset: 4, outward: true }] }
    ],
    opens: ['waistband'],
    level: 3,
    minutes: [40, 6],
    outward: true,
    reseams: ['side'],
    excludes: ['skirt-sides-in'],
    source: 'TONGA (5/8 in found), CB-TR (3/8 in kept)'
  },
  {
    id: 'hem-widen',
    direction: 'more',
    kinds: ['trousers', 'jeans', 'skirt', 'dress', 'shirt', 'knit-top', 'jumper'],
    lines: (garment) => {
      const point: PointId =
        garment.kind === 'trousers' || garment.kind === 'jeans'
          ? 'legOpening'
          : garment.kind === 'skirt' || garment.kind === 'dress'
            ? 'sweep'
            : 'hem'
      return [
        {
          point,
          effects: { [point]: 1 },
          capMm: 250,
          softMm: 60,
          because: limit('godet'),
          seams: [{ seam: 'panel', mmPerOffset: 1, outward: true }]
        }
      ]
    },
    opens: ['hem'],
    level: 3,
    minutes: [45, 2],
    penalties: ['panel'],
    source: 'CP: a slit, or a godet up to 250'
  }
]

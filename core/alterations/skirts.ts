/** Skirts, and the skirts of dresses. */

import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import { closedBy, isLayered, isPleated, isWrapped, linedAlong, liningMinutes } from './as-cut.ts'
import { CIRCLE_SLOPE, slopeBetween } from './geometry.ts'
import { letOut } from './let-out.ts'
import { type Effects, limit, type Row } from './row.ts'

const SKIRTED: GarmentKind[] = ['skirt', 'dress']
/** Sweep per mm of skirt: the slope from hip to hem; unknown, none. A full circle grows 2π a mm. */
export function skirtSlope(garment: Garment): number {
  if (garment.made.skirtShape === 'circle' || isCut(garment.cut, 'silhouette', 'circle')) return CIRCLE_SLOPE
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
/** Skirts are told from the waist, dresses from the waist or the shoulder. */
export const lengthPoint = (garment: Garment): 'skirtLength' | 'bodyLength' =>
  garment.points.has('skirtLength') || garment.kind === 'skirt' ? 'skirtLength' : 'bodyLength'

/** Minutes of a plain hem by its sweep, then per 25 mm, and its level: more of it to ease, cut across the grain (common practice). */
function hemWork({ cut, made }: Garment): { setUp: number; per25: number; level: number } {
  if (made.skirtShape === 'circle' || isCut(cut, 'silhouette', 'circle', 'bias')) return { setUp: 75, per25: 5, level: 3 }
  if (made.skirtShape === 'flared' || isCut(cut, 'silhouette', 'flared', 'swing', 'fit-flare', 'gathered'))
    return { setUp: 60, per25: 4, level: 2 }
  return { setUp: isCut(cut, 'silhouette', 'a-line') ? 45 : 35, per25: 3, level: 2 }
}
const hasVent = ({ cut }: Garment): boolean => isCut(cut, 'vent', 'vent', 'kick-pleat')
/** Up past this the vent has become too short and is cut again (common practice). */
const PAST_VENT_MM = 50
/** The seams of pleats, gathers and wraps say nothing of the waist. */
const noSides = (garment: Garment): Saying | undefined =>
  isPleated(garment) || isWrapped(garment) || isCut(garment.cut, 'silhouette', 'gathered', 'puffball') ? limit('no-sides') : undefined
const zipAside = (garment: Garment): number => (closedBy(garment, 'side-zip') ? 20 : 0)
const sidesLining = ({ made }: Garment): number => (made.lined ? 30 : 0)

export const skirts: Row[] = [
  {
    id: 'skirt-shorten',
    direction: 'less',
    kinds: SKIRTED,
    there: (garment) => garment.use !== 'child' && !isLayered(garment),
    unless: (garment) => (isPleated(garment) ? limit('pleated-hem') : undefined),
    lines: (garment) => [
      {
        point: lengthPoint(garment),
        effects: along(garment, -1),
        capMm: Math.max(0, Math.min(150, (garment.points.get('skirtLength')?.mm ?? 600) - 250)),
        softMm: hasVent(garment) ? PAST_VENT_MM : 75,
        because: limit('skirt-left', { left: 250 }),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    // past the vent it is cut again, higher
    tier: (garment) =>
      hasVent(garment)
        ? {
            line: 0,
            beyondMm: PAST_VENT_MM,
            level: linedAlong(3, garment),
            minutes: 45,
            because: limit('vent-recut', { beyond: PAST_VENT_MM })
          }
        : undefined,
    opens: (garment) => (garment.made.lined ? ['hem', 'lining'] : ['hem']),
    level: (garment) => linedAlong(hemWork(garment).level, garment),
    minutes: (garment) => [hemWork(garment).setUp + (garment.made.lined ? 25 : 0), hemWork(garment).per25],
    oneOf: 'skirt-length',
    source:
      'MLT (7.5 cm, then the line is lost: warned); 150 and 250 left, vent 50 and 45 min, lining 25 min CP; circles and bias 75 min MEM'
  },
  {
    id: 'hem-layered',
    direction: 'less',
    kinds: SKIRTED,
    there: (garment) => garment.use !== 'child' && isLayered(garment),
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
    level: 4,
    // three layers
    minutes: [60 + 3 * 45, 0],
    oneOf: 'skirt-length',
    source: 'CHAMPION, ELEGANT (each layer is hemmed; hems of 3–4 layers 3–6 h); 45 min a layer MEM'
  },
  {
    id: 'skirt-lengthen',
    direction: 'more',
    kinds: SKIRTED,
    unless: (garment) => (isLayered(garment) ? limit('layers-down') : undefined),
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
    level: (garment) => linedAlong(2, garment),
    minutes: (garment) => [35 + liningMinutes(garment), 3],
    outward: true,
    penalties: ['fade'],
    oneOf: 'skirt-length',
    source: 'THRIFTHEM (fold and fade show); 10 kept CP'
  },
  {
    id: 'skirt-shorten-from-waist',
    direction: 'less',
    kinds: ['skirt'],
    unless: (garment) => (isWrapped(garment) ? limit('no-sides') : undefined),
    lines: (garment) => [
      {
        point: 'skirtLength',
        // pleats run straight to the band, so the waist stays
        effects: { skirtLength: -1, waist: isPleated(garment) ? 0 : waistSlope(garment) },
        capMm: isPleated(garment) ? 100 : 50,
        because: limit('from-waist'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    opens: ['waistband'],
    level: 4,
    minutes: (garment) => (isPleated(garment) ? [120, 8] : [90 + liningMinutes(garment), 5]),
    penalties: ['drape'],
    oneOf: 'skirt-length',
    source: 'THREADSF, GENIE (from the waist): pleats to 100; 50 CP'
  },
  {
    id: 'skirt-sides-in',
    direction: 'less',
    kinds: ['skirt'],
    unless: noSides,
    lines: () => [
      { point: 'waist', effects: { waist: -1 }, capMm: 100, because: limit('sides'), seams: [{ seam: 'side', mmPerOffset: 4 }] },
      { point: 'hip', effects: { hip: -1 }, capMm: 100, because: limit('sides'), seams: [{ seam: 'side', mmPerOffset: 4 }] },
      { point: 'sweep', effects: { sweep: -1 }, capMm: 100, because: limit('sides'), seams: [{ seam: 'side', mmPerOffset: 4 }] }
    ],
    opens: ['waistband'],
    level: (garment) => linedAlong(3, garment),
    minutes: (garment) => [40 + zipAside(garment) + sidesLining(garment), 6],
    reseams: ['side'],
    source: 'CP; a zip in the side 20 min, a lining 30 min and a level more CP'
  },
  {
    id: 'skirt-sides-out',
    direction: 'more',
    kinds: ['skirt'],
    unless: noSides,
    lines: (garment) => [
      { point: 'waist', effects: { waist: 1 }, ...letOut(garment, 'side', 2), seams: [{ seam: 'side', mmPerOffset: 4, outward: true }] },
      { point: 'hip', effects: { hip: 1 }, ...letOut(garment, 'side', 2), seams: [{ seam: 'side', mmPerOffset: 4, outward: true }] },
      { point: 'sweep', effects: { sweep: 1 }, ...letOut(garment, 'side', 2), seams: [{ seam: 'side', mmPerOffset: 4, outward: true }] }
    ],
    opens: ['waistband'],
    level: (garment) => linedAlong(3, garment),
    minutes: (garment) => [40 + zipAside(garment) + sidesLining(garment), 6],
    outward: true,
    reseams: ['side'],
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
          capMm: point === 'legOpening' ? 60 : 120,
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
    source: 'CP: a slit, or a godet to 120 (60 in a leg): a rescue that shows'
  }
]

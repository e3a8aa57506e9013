/** Bodies of shirts, knits, jackets, coats, waistcoats and dresses. Amounts are around, all seams together. MEM from memory, CP common practice, no source. */

import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import { slopeBetween } from './geometry.ts'
import { letOut } from './let-out.ts'
import { type Effects, type Line, limit, type Row } from './row.ts'

const BODIES: GarmentKind[] = ['shirt', 'knit-top', 'jumper', 'jacket', 'coat', 'waistcoat', 'dress', 'jumpsuit']
const SOFT_BODIES: GarmentKind[] = ['shirt', 'knit-top', 'jumper', 'dress', 'jumpsuit']
const TAILORED: GarmentKind[] = ['jacket', 'coat']

export const lined = (garment: Garment): boolean => garment.made.lined
const linedLevel = (plain: number) => (garment: Garment) => (lined(garment) ? 4 : plain)

/** The bottom of the side seam: the hem of a top, the hip and sweep of a dress, hip and hem of a coat. */
export const lowest = (garment: Garment): { point: PointId; effects: (sign: number) => Effects } => {
  if (garment.kind === 'dress') return { point: 'hip', effects: (sign) => ({ hip: sign, sweep: sign }) }
  if (garment.kind === 'jumpsuit') return { point: 'hip', effects: (sign) => ({ hip: sign }) }
  if (garment.kind === 'coat') return { point: 'hip', effects: (sign) => ({ hip: sign, hem: sign }) }
  return { point: 'hem', effects: (sign) => ({ hem: sign }) }
}

const sides = (garment: Garment, sign: 1 | -1, how: Pick<Line, 'capMm' | 'physicalMm' | 'softMm' | 'because'>): Line[] => {
  const seams: Line['seams'] = [{ seam: 'side', mmPerOffset: 4, outward: sign > 0 }]
  const low = lowest(garment)
  return [
    { point: 'chest', effects: { chest: sign, bicep: sign * 0.5 }, ...how, seams },
    { point: 'waist', effects: { waist: sign }, ...how, seams },
    { point: low.point, effects: low.effects(sign), ...how, seams }
  ]
}

/** Hem girth per mm of body cut off: the slope from waist to hem; unknown, none. */
function bodySlope(garment: Garment): number {
  const waist = garment.points.get('waist')
  const hem = garment.points.get('hem')
  const length = garment.points.get('bodyLength')
  if (waist === undefined || hem === undefined || length === undefined || waist.from === 'inferred' || hem.from === 'inferred') return 0
  const below = length.mm * 0.42
  return slopeBetween(waist.mm, hem.mm, below)
}

/** Past this a tailored body's pockets and armholes are drawn out of place (MULLEN: 1.5–2 in overall): warned. */
const TAILORED_SIDES_MM = 50
export const bodies: Row[] = [
  {
    id: 'sides-in',
    direction: 'less',
    kinds: BODIES,
    lines: (garment) =>
      sides(garment, -1, { capMm: 100, because: limit('sides-in'), ...(garment.made.tailored ? { softMm: TAILORED_SIDES_MM } : {}) }),
    tier: (garment) => ({
      line: 0,
      beyondMm: 50,
      level: 4,
      minutes: 60,
      because: limit('re-set-sleeve', { beyond: 50, kind: garment.kind })
    }),
    opens: (garment) => (lined(garment) ? ['hem', 'lining'] : ['hem']),
    level: linedLevel(2),
    minutes: (garment) => [lined(garment) ? 55 : 35, 4],
    reseams: ['side'],
    excludes: ['sides-out', 'side-panels'],
    source: 'SG8, CWU17 (split evenly); 2 in a side CP; tailored: warned past 2 in overall (MULLEN)'
  },
  {
    id: 'sides-out',
    direction: 'more',
    kinds: BODIES,
    lines: (garment) => sides(garment, 1, letOut(garment, 'side', 2)),
    opens: (garment) => (lined(garment) ? ['hem', 'lining'] : ['hem']),
    level: linedLevel(2),
    minutes: (garment) => [lined(garment) ? 60 : 40, 5],
    outward: true,
    excludes: ['sides-in'],
    source: 'FI-SA (overlocked seams 10); coat inlay 13–25 MEM'
  },
  {
    id: 'back-darts',
    direction: 'less',
    kinds: ['shirt', 'dress', 'jumpsuit'],
    wovenOnly: true,
    lines: () => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 100,
        softMm: 50,
        because: limit('back-darts', { fold: 25, count: 2 }),
        seams: [{ seam: 'dart', mmPerOffset: 4 }]
      }
    ],
    level: 2,
    minutes: [25, 3],
    penalties: ['newDarts'],
    source: 'DARTQ (about 4 in before it warps), DARTE'
  },
  {
    id: 'centre-back-in',
    direction: 'less',
    kinds: [...TAILORED, 'waistcoat', 'dress'],
    unless: (garment) => (garment.made.backSeam ? undefined : limit('no-back-seam')),
    lines: (garment) => [
      {
        point: 'waist',
        effects: {
          waist: -1,
          chest: -0.3,
          ...(garment.kind === 'dress' ? { hip: -0.5 } : { hem: -0.5 }),
          ...(garment.kind === 'coat' ? { hip: -0.7 } : {})
        },
        capMm: 38,
        because: limit('overall'),
        seams: [{ seam: 'centre-back', mmPerOffset: 2 }]
      }
    ],
    // the back of a waistcoat is a lining itself: one seam through both layers
    opens: (garment) => (lined(garment) && garment.kind !== 'waistcoat' ? ['lining'] : []),
    level: (garment) => (garment.kind === 'waistcoat' ? 3 : 4),
    minutes: (garment) => (garment.kind === 'waistcoat' ? [45, 6] : [60, 6]),
    source: 'BSAU, MULLEN (1.5–2 in in all); shares MEM; the waistcoat’s back CP, its minutes MEM'
  },
  {
    id: 'side-panels',
    direction: 'more',
    kinds: SOFT_BODIES,
    lines: (garment) => {
      const low = lowest(garment)
      return [
        {
          point: 'chest',
          effects: { chest: 1, waist: 1, ...low.effects(1), bicep: 0.5 },
          capMm: 120,
          because: limit('panel'),
          seams: [{ seam: 'panel', mmPerOffset: 2, outward: true }]
        }
      ]
    },
    opens: ['sides', 'hem'],
    level: 3,
    minutes: [75, 4],
    penalties: ['panel'],
    excludes: ['sides-in', 'sides-out'],
    source: 'CP'
  },
  {
    id: 'body-shorten',
    direction: 'less',
    kinds: ['shirt', 'knit-top', 'jumper', 'jacket', 'coat', 'waistcoat'],
    lines: (garment) => [
      {
        point: 'bodyLength',
        effects: { bodyLength: -1, hem: -bodySlope(garment) },
        ...(garment.made.tailored
          ? { capMm: garment.kind === 'coat' ? 100 : 25, because: limit('pockets-and-buttons') }
          : { capMm: Math.max(0, (garment.points.get('bodyLength')?.mm ?? 650) - 350), because: limit('body-left', { left: 350 }) }),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    opens: (garment) => (lined(garment) ? ['hem', 'lining'] : ['hem']),
    level: linedLevel(2),
    minutes: (garment) => (lined(garment) ? [90, 4] : [30, 2]),
    excludes: ['body-lengthen'],
    source: 'MEM (jackets 25: pockets and buttons; coats, whose pockets lie far from the hem, 100); CP'
  },
  {
    id: 'body-lengthen',
    direction: 'more',
    kinds: ['shirt', 'knit-top', 'jumper', 'jacket', 'coat', 'waistcoat'],
    lines: (garment) => [
      {
        point: 'bodyLength',
        effects: { bodyLength: 1, hem: bodySlope(garment) },
        capMm: Math.max(0, garment.made.hemDepthMm - 10),
        physicalMm: Math.max(0, garment.made.hemDepthMm - 3),
        because: limit('hem', { depth: garment.made.hemDepthMm, keep: 10 }),
        seams: [{ seam: 'hem', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: ['hem'],
    level: linedLevel(2),
    minutes: [40, 3],
    outward: true,
    penalties: ['fade'],
    excludes: ['body-shorten'],
    source: 'THRIFTHEM (fold and fade show); 10 kept CP'
  },
  {
    id: 'bust-darts',
    direction: 'less',
    kinds: ['shirt', 'dress', 'jumpsuit'],
    wovenOnly: true,
    lines: () => [
      {
        point: 'chest',
        effects: { chest: -1 },
        capMm: 50,
        because: limit('bust-darts', { side: 25 }),
        seams: [{ seam: 'dart', mmPerOffset: 4 }]
      }
    ],
    level: 3,
    minutes: [35, 0],
    penalties: ['newDarts', 'drape'],
    source: 'CP: 25 a side'
  }
]

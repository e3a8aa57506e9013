/** Bodies of shirts, knits, jackets, coats, waistcoats and dresses. Amounts are around, all seams together. MEM from memory, CP common practice, no source. */

import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { type GarmentKind, OUTER, SOFT_BODIES } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import { closedBy, hasSetInSleeves, isKnitted, isRibbed, isZipped, linedAlong, liningMinutes } from './as-cut.ts'
import { slopeBetween } from './geometry.ts'
import { letOut } from './let-out.ts'
import { type Effects, type Line, limit, type Row } from './row.ts'

const BODIES: GarmentKind[] = ['shirt', 'knit-top', 'jumper', 'jacket', 'coat', 'waistcoat', 'dress', 'jumpsuit']

export const lined = (garment: Garment): boolean => garment.made.lined
const linedLevel = (plain: number) => (garment: Garment) => (lined(garment) ? 4 : plain)

/** The bottom of the side seam: the hem of a top, the hip and sweep of a dress, hip and hem of a coat. */
export const lowest = (garment: Garment): { point: PointId; effects: (sign: number) => Effects } => {
  if (garment.kind === 'dress') return { point: 'hip', effects: (sign) => ({ hip: sign, sweep: sign }) }
  if (garment.kind === 'jumpsuit') return { point: 'hip', effects: (sign) => ({ hip: sign }) }
  if (garment.kind === 'coat') return { point: 'hip', effects: (sign) => ({ hip: sign, hem: sign }) }
  return { point: 'hem', effects: (sign) => ({ hem: sign }) }
}

export const sides = (garment: Garment, sign: 1 | -1, how: Pick<Line, 'capMm' | 'physicalMm' | 'softMm' | 'because'>): Line[] => {
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
  if (waist === undefined || hem === undefined || length === undefined) return 0
  if (waist.from === 'inferred' || hem.from === 'inferred' || length.from === 'inferred') return 0
  const below = length.mm * 0.42
  return slopeBetween(waist.mm, hem.mm, below)
}

/** Jersey and cloth are taken in at the seams as they are; what is knitted has its own way. */
const isSewn = (garment: Garment): boolean => !isKnitted(garment) && !isCut(garment.cut, 'knit', 'sweatshirt')
const zipAside = (garment: Garment): number => (closedBy(garment, 'side-zip') ? 25 : 0)
/** A dress lining hangs free and is taken in beside it; a jacket's is closed all round. */
const bodyLevel = (garment: Garment): number =>
  garment.kind === 'dress' || garment.kind === 'jumpsuit' ? linedAlong(2, garment) : lined(garment) ? 4 : 2
/** Seams, prints and gathers that two long darts would cross. */
const noBackDarts = (garment: Garment): Saying | undefined =>
  isCut(garment.cut, 'silhouette', 'princess', 'boiler', 'corset') || garment.cloth.traits.has('large-print')
    ? limit('no-back-darts')
    : undefined
/** Where bands, ribs and zips end a jacket, its edge stays. */
const edgeStays = (garment: Garment): Saying | undefined =>
  garment.kind !== 'shirt' && (isZipped(garment) || isCut(garment.cut, 'layer', 'denim') || isCut(garment.cut, 'hem', 'drawn-in'))
    ? limit('edge-stays')
    : undefined
/** How far up, by the pockets, points and buttons that must keep their distance. */
const upTo = (garment: Garment): Pick<Line, 'capMm' | 'softMm' | 'because'> => {
  const because = limit('pockets-and-buttons')
  if (garment.kind === 'waistcoat') return { capMm: 13, because }
  if (garment.kind === 'jacket') return { capMm: 25, softMm: 19, because }
  if (garment.kind === 'coat' && garment.made.tailored) return { capMm: 100, because }
  return { capMm: Math.max(0, (garment.points.get('bodyLength')?.mm ?? 650) - 350), because: limit('body-left', { left: 350 }) }
}
/** Panels are seen at once on a plain outline. */
const tooPlain = ({ cut }: Garment): Saying | undefined =>
  isCut(cut, 'silhouette', 'shift', 'sheath', 'pencil') ? limit('set-in') : undefined

/** Past this a tailored body's pockets and armholes are drawn out of place (MULLEN: 1.5–2 in overall): warned; twice as far it is a new garment. */
const TAILORED_SIDES = { capMm: 76, softMm: 38 }
export const bodies: Row[] = [
  {
    id: 'sides-in',
    direction: 'less',
    kinds: BODIES,
    there: isSewn,
    lines: (garment) => sides(garment, -1, { ...(garment.made.tailored ? TAILORED_SIDES : { capMm: 100 }), because: limit('sides-in') }),
    tier: (garment) =>
      hasSetInSleeves(garment)
        ? { line: 0, beyondMm: 50, level: 4, minutes: 60, because: limit('re-set-sleeve', { beyond: 50, kind: garment.kind }) }
        : undefined,
    opens: (garment) => (lined(garment) ? ['hem', 'lining'] : ['hem']),
    level: (garment) => Math.max(bodyLevel(garment), closedBy(garment, 'side-zip') ? 3 : 2),
    minutes: (garment) => [35 + liningMinutes(garment) + zipAside(garment), 4],
    reseams: ['side'],
    source:
      'SG8, CWU17 (split evenly); 2 in a side CP; tailored: MULLEN, TSM (1.5–2 in overall, 2 in at the sides): 76, warned past 38; zip 25 min, lining CP'
  },
  {
    id: 'sides-out',
    direction: 'more',
    kinds: BODIES,
    lines: (garment) => sides(garment, 1, letOut(garment, 'side', 2)),
    opens: (garment) => (lined(garment) ? ['hem', 'lining'] : ['hem']),
    level: (garment) => Math.max(bodyLevel(garment), closedBy(garment, 'side-zip') ? 3 : 2),
    minutes: (garment) => [40 + liningMinutes(garment) + zipAside(garment), 5],
    outward: true,
    source: 'FI-SA (overlocked seams 10); coat inlay 13–25 MEM'
  },
  {
    id: 'back-darts',
    direction: 'less',
    kinds: ['shirt', 'dress', 'jumpsuit'],
    wovenOnly: true,
    unless: noBackDarts,
    lines: ({ kind }) => [
      {
        point: 'waist',
        effects: { waist: -1 },
        ...(kind === 'shirt' ? { capMm: 100, softMm: 50 } : { capMm: 76, softMm: 38 }),
        because: limit('back-darts', { fold: kind === 'shirt' ? 25 : 19, count: 2 }),
        seams: [{ seam: 'dart', mmPerOffset: 4 }]
      }
    ],
    level: (garment) => linedAlong(2, garment),
    minutes: (garment) => [25 + liningMinutes(garment), 3],
    penalties: ['newDarts'],
    source: 'DARTQ (about 4 in in shirts before it warps), DARTE; dresses 38 a dart CP'
  },
  {
    id: 'centre-back-in',
    direction: 'less',
    kinds: [...OUTER, 'dress'],
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
    opens: (garment) => (lined(garment) ? ['lining'] : []),
    level: 4,
    // the zip of a dress comes out and goes in again; a jacket's lining and vent are in the hour
    minutes: (garment) =>
      garment.kind === 'dress' ? [60 + (closedBy(garment, 'back-zip') ? 30 : 0) + liningMinutes(garment), 6] : [60, 6],
    source: 'BSAU, MULLEN (1.5–2 in in all); shares MEM; the zip 30 min CP'
  },
  {
    id: 'waistcoat-back-in',
    direction: 'less',
    kinds: ['waistcoat'],
    lines: () => [
      {
        point: 'waist',
        effects: { waist: -1, chest: -0.4 },
        capMm: 76,
        softMm: 50,
        because: limit('waistcoat-back'),
        seams: [{ seam: 'centre-back', mmPerOffset: 2 }]
      }
    ],
    // one seam through both layers
    inLining: true,
    level: 3,
    minutes: [60, 6],
    source: 'JOEB (taken in at the back): 76, warned past 50; shares MEM'
  },
  {
    id: 'side-panels',
    direction: 'more',
    kinds: SOFT_BODIES,
    unless: tooPlain,
    lines: (garment) => {
      const low = lowest(garment)
      return [
        {
          point: 'chest',
          effects: { chest: 1, waist: 1, ...low.effects(1), bicep: 0.5 },
          capMm: 60,
          because: limit('panel'),
          seams: [{ seam: 'panel', mmPerOffset: 2, outward: true }]
        }
      ]
    },
    opens: ['sides', 'hem'],
    level: 3,
    minutes: [75, 4],
    penalties: ['panel'],
    excludes: ['sides-out'],
    source: 'CP: a rescue that shows; 60 in all'
  },
  {
    id: 'body-shorten',
    direction: 'less',
    kinds: ['shirt', 'knit-top', 'jumper', 'jacket', 'coat', 'waistcoat'],
    there: (garment) => !isRibbed(garment),
    unless: edgeStays,
    lines: (garment) => [
      {
        point: 'bodyLength',
        effects: { bodyLength: -1, hem: -bodySlope(garment) },
        ...upTo(garment),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    opens: (garment) => (lined(garment) ? ['hem', 'lining'] : ['hem']),
    level: linedLevel(2),
    minutes: (garment) => (lined(garment) ? [90, 4] : [30, 2]),
    oneOf: 'body-length',
    source: 'HESPOKE (under 1/2 in on waistcoats); jackets 25, warned past 19 (pockets and buttons), coats 100 MEM; CP'
  },
  {
    id: 'body-lengthen',
    direction: 'more',
    kinds: ['shirt', 'knit-top', 'jumper', 'jacket', 'coat', 'waistcoat'],
    there: (garment) => !isRibbed(garment),
    unless: edgeStays,
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
    oneOf: 'body-length',
    source: 'THRIFTHEM (fold and fade show); 10 kept CP'
  }
]

/** Bodies of shirts, knits, jackets, coats, waistcoats and dresses. Amounts are around, all seams together. MEM from memory, CP common practice, no source. */
import { allowanceAt } from '../garment/construction.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import { slopeBetween } from './geometry.ts'
import { KEEP_MM, letOut } from './lower-body.ts'
import type { Effects, Line, Row } from './row.ts'

const BODIES: GarmentKind[] = ['shirt', 'knit-top', 'jumper', 'jacket', 'coat', 'waistcoat', 'dress', 'jumpsuit']
const SOFT_BODIES: GarmentKind[] = ['shirt', 'knit-top', 'jumper', 'dress', 'jumpsuit']
const TAILORED: GarmentKind[] = ['jacket', 'coat']

const limit = (code: string, values: Saying['values'] = {}): Saying => ({ code: `limit.${code}`, values })
const lined = (garment: Garment): boolean => garment.made.lined
const linedLevel = (plain: number) => (garment: Garment) => (lined(garment) ? 4 : plain)

/** The bottom of the side seam: the hem of a top, the hip and sweep of a dress, hip and hem of a coat. */
const lowest = (garment: Garment): { point: PointId; effects: (sign: number) => Effects } => {
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
/** Half a button of 25 mm, and 6 mm of cloth before the edge (common practice); a button stands on the middle of the overlap. */
const BUTTON_FROM_EDGE_MM = 18
const buttons: Partial<Record<GarmentKind, number>> = { jacket: 2, coat: 3, waistcoat: 5, shirt: 7 }

export const upperBody: Row[] = [
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
    id: 'shoulder-in',
    direction: 'less',
    kinds: [...TAILORED, 'shirt', 'dress'],
    lines: (garment) => [
      {
        point: 'shoulderWidth',
        effects: { shoulderWidth: -1, sleeveFromCentreBack: -0.5 },
        capMm: garment.made.tailored ? 26 : 50,
        because: garment.made.tailored ? limit('shoulder-tailored', { side: 13 }) : limit('shoulder', { side: 25 }),
        seams: [{ seam: 'armhole', mmPerOffset: 2 }]
      }
    ],
    opens: (garment) => (lined(garment) ? ['armhole', 'lining'] : ['armhole']),
    level: (garment) => (garment.made.tailored ? 5 : 4),
    minutes: (garment) => (garment.made.tailored ? [240, 0] : [90, 0]),
    penalties: ['recut'],
    reseams: ['armhole'],
    source: 'WSU2246 (do not buy if the shoulder must be remodelled); 13 a side MEM'
  },
  {
    id: 'shoulder-pads',
    direction: 'more',
    kinds: TAILORED,
    lines: () => [{ point: 'chest', effects: { chest: 1 }, capMm: 10, because: limit('pads'), seams: [] }],
    fixedMm: 10,
    opens: ['lining'],
    level: 3,
    minutes: [35, 0],
    penalties: ['drape'],
    source: 'MEM: a thinner pad gives about 10 at the chest'
  },
  {
    id: 'front-button-move',
    direction: 'less',
    kinds: ['jacket', 'coat', 'waistcoat', 'shirt'],
    lines: (garment) => [
      {
        point: 'waist',
        effects: closing(garment, -1),
        capMm: 38,
        because: limit('button-line'),
        seams: [{ seam: 'front-edge', mmPerOffset: 1 }]
      }
    ],
    level: 1,
    minutes: (garment) => [12 * (buttons[garment.kind] ?? 3), 0],
    penalties: ['oldMarks', 'drape'],
    excludes: ['sides-out'],
    source: 'MEM: 38; the buttons stay on one line'
  },
  {
    id: 'front-button-move',
    direction: 'more',
    kinds: ['jacket', 'coat', 'waistcoat', 'shirt'],
    lines: (garment) => [
      {
        point: 'waist',
        effects: closing(garment, 1),
        capMm: Math.max(0, Math.min(38, garment.made.overlapMm - 25)),
        physicalMm: Math.max(0, garment.made.overlapMm - 15),
        softMm: Math.max(0, garment.made.overlapMm / 2 - BUTTON_FROM_EDGE_MM),
        because: limit('overlap', { overlap: garment.made.overlapMm, keep: 25 }),
        seams: [{ seam: 'front-edge', mmPerOffset: 1, outward: true }]
      }
    ],
    level: 1,
    minutes: (garment) => [12 * (buttons[garment.kind] ?? 3), 0],
    penalties: ['oldMarks', 'drape'],
    excludes: ['sides-in'],
    source: 'MEM: 25 of overlap left; warned once the button’s edge stands within 6 of the front edge'
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
  },
  {
    id: 'strap-shorten',
    direction: 'less',
    kinds: ['dress', 'jumpsuit', 'knit-top'],
    lines: () => [
      { point: 'strap', effects: { strap: -1 }, capMm: 60, because: limit('strap'), seams: [{ seam: 'strap', mmPerOffset: 1 }] }
    ],
    level: 1,
    minutes: [15, 0],
    excludes: ['lift-at-shoulder'],
    source: 'CP'
  },
  {
    id: 'neck-button-move',
    direction: 'less',
    kinds: ['shirt'],
    lines: () => [
      { point: 'neck', effects: { neck: -1 }, capMm: 13, because: limit('collar-button'), seams: [{ seam: 'neckline', mmPerOffset: 1 }] }
    ],
    level: 1,
    minutes: [8, 0],
    penalties: ['oldMarks'],
    source: 'CP: 13'
  },
  {
    id: 'neck-button-move',
    direction: 'more',
    kinds: ['shirt'],
    lines: () => [
      {
        point: 'neck',
        effects: { neck: 1 },
        capMm: 13,
        because: limit('collar-button'),
        seams: [{ seam: 'neckline', mmPerOffset: 1, outward: true }]
      }
    ],
    level: 1,
    minutes: [8, 0],
    penalties: ['oldMarks'],
    source: 'CP: 13'
  },
  {
    id: 'neckline-take-in',
    direction: 'less',
    kinds: ['knit-top', 'jumper', 'dress'],
    lines: () => [
      { point: 'neck', effects: { neck: -1 }, capMm: 38, because: limit('neckline'), seams: [{ seam: 'neckline', mmPerOffset: 1 }] }
    ],
    level: 3,
    minutes: [40, 4],
    penalties: ['drape'],
    source: 'CP'
  },
  {
    id: 'release-darts',
    direction: 'more',
    kinds: ['trousers', 'shorts', 'skirt', 'dress', 'shirt'],
    unless: (garment) => (garment.made.darts ? undefined : limit('no-darts')),
    lines: () => [
      {
        point: 'waist',
        effects: { waist: 1 },
        capMm: 40,
        because: limit('release', { each: 10, count: 4 }),
        seams: [{ seam: 'dart', mmPerOffset: 4, outward: true }]
      }
    ],
    opens: (garment) => (garment.kind === 'shirt' || garment.kind === 'dress' ? [] : ['waistband']),
    level: 2,
    minutes: [20, 4],
    outward: true,
    excludes: ['waist-in-darts', 'back-darts'],
    source: 'CP: 10 a dart'
  },
  {
    id: 'undo-earlier',
    direction: 'more',
    kinds: ['trousers', 'jeans', 'shorts', 'skirt', 'dress', 'shirt', 'jacket', 'coat', 'waistcoat'],
    lines: () => [
      {
        point: 'waist',
        effects: { waist: 1 },
        capMm: 0,
        because: limit('earlier'),
        seams: [{ seam: 'centre-back', mmPerOffset: 2, outward: true }]
      }
    ],
    level: 2,
    minutes: [30, 2],
    outward: true,
    source: 'CP: back to the old line, what the fold holds; told by the person as a limit'
  },
  {
    id: 'lift-at-shoulder',
    direction: 'less',
    kinds: ['dress', 'jumpsuit', 'knit-top', 'shirt'],
    lines: () => [
      {
        point: 'napeToWaist',
        effects: { napeToWaist: -1, strap: -1, armhole: -2 },
        capMm: 25,
        because: limit('shoulder-seam'),
        seams: [{ seam: 'shoulder', mmPerOffset: 1 }]
      }
    ],
    opens: ['armhole'],
    level: 3,
    minutes: [45, 4],
    penalties: ['drape'],
    excludes: ['strap-shorten'],
    source: 'CP'
  },
  {
    id: 'dress-waist-raise',
    direction: 'less',
    kinds: ['dress'],
    lines: () => [
      {
        point: 'napeToWaist',
        effects: { napeToWaist: -1, skirtLength: 1 },
        capMm: 38,
        because: limit('waist-seam'),
        seams: [{ seam: 'waist-seam', mmPerOffset: 1 }]
      }
    ],
    level: 4,
    minutes: [90, 6],
    penalties: ['drape'],
    excludes: ['dress-waist-lower', 'lift-at-shoulder'],
    source: 'CP'
  },
  {
    id: 'dress-waist-lower',
    direction: 'more',
    kinds: ['dress'],
    lines: (garment) => {
      const allowance = allowanceAt(garment.made, 'waist-seam', garment.told)
      return [
        {
          point: 'napeToWaist',
          effects: { napeToWaist: 1, skirtLength: -1 },
          capMm: Math.max(0, Math.min(38, allowance - KEEP_MM)),
          because: limit('allowance', { allowance, keep: KEEP_MM, seam: 'waist-seam' }),
          seams: [{ seam: 'waist-seam', mmPerOffset: 1, outward: true }]
        }
      ]
    },
    level: 4,
    minutes: [90, 6],
    outward: true,
    penalties: ['drape'],
    excludes: ['dress-waist-raise'],
    source: 'CP: only with allowance'
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

/** Moving the closing buttons moves chest, waist and hip where they close (waistcoats and jackets: chest and waist with the lower edge). */
function closing(garment: Garment, sign: 1 | -1): Effects {
  return { chest: sign, waist: sign, ...lowest(garment).effects(sign) }
}

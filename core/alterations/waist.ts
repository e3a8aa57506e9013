/** Waist and seat of trousers, jeans, shorts and skirts. Amounts are around, all seams together. MEM from memory, CP common practice, no source. */

import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { LEGS, WAISTED } from '../ids/kinds.ts'
import type { Saying } from '../words/reason.ts'
import { closedBy, isPleated, isWrapped, linedAlong, liningMinutes } from './as-cut.ts'
import { drawnIn } from './elastic.ts'
import { letOut } from './let-out.ts'
import { type Line, limit, type Row, type SharedLimit } from './row.ts'
import { steepestTaper, taperShare } from './taper.ts'

/** Back pockets come no nearer to each other than this (MEM, a setting). */
export const POCKETS_APART_MM = 50
/** Past so much two darts become four: under the band past what 20 a dart take (CP), through the yoke past 2 in (NAOMI), let out past 10 a dart (CP). */
export const TWO_DARTS_MM = { 'waist-in-darts': 40, 'yoke-darts': 50, 'release-darts': 20 } as const
const hipShare = (garment: Garment): number => taperShare(garment.made.hipDepthMm / Math.max(garment.made.taperLengthMm, 90))
const pocketShare = (garment: Garment): number => taperShare(garment.made.pocketDepthMm / Math.max(garment.made.taperLengthMm, 90))

const pockets = (garment: Garment): SharedLimit[] => [
  {
    group: 'pocket-gap',
    shares: [pocketShare(garment)],
    budgetMm: Math.max(0, garment.made.backPocketGapMm - POCKETS_APART_MM),
    because: limit('pockets', { gap: garment.made.backPocketGapMm, keep: POCKETS_APART_MM })
  }
]

const centreBackIn = (garment: Garment): Line[] => {
  const steep = steepestTaper(Math.max(garment.made.taperLengthMm, 90))
  const [most, softMm] = garment.kind === 'jeans' ? [40, 25] : [75, 40]
  const because =
    garment.kind === 'jeans'
      ? limit('yoke-distorts')
      : steep < 75
        ? limit('taper', { length: garment.made.taperLengthMm })
        : limit('back-distorts')
  return [
    {
      point: 'waist',
      effects: { waist: -1, hip: -hipShare(garment) },
      capMm: Math.min(most, steep),
      softMm,
      because,
      seams: [{ seam: 'centre-back', mmPerOffset: 2 }]
    }
  ]
}

const noBackSeam = (garment: Garment): Saying | undefined => drawnIn(garment) ?? (garment.made.backSeam ? undefined : limit('no-back-seam'))
/** Zips sit in the back seam of skirts: it comes out and goes in again. */
const zipThere = (garment: Garment): boolean => garment.kind === 'skirt' && closedBy(garment, 'back-zip')
/** Pleats, gathers and wraps have no place for a dart. */
const nowhereForDarts = (garment: Garment): Saying | undefined =>
  isPleated(garment) || isWrapped(garment) || isCut(garment.cut, 'silhouette', 'gathered', 'puffball')
    ? limit('no-place-for-darts')
    : backSeamThere(garment)
const backSeamThere = (garment: Garment): Saying | undefined =>
  drawnIn(garment) ?? (garment.made.backSeam ? limit('has-back-seam') : undefined)

export const waist: Row[] = [
  {
    id: 'waist-in-centre-back',
    direction: 'less',
    kinds: WAISTED,
    unless: noBackSeam,
    lines: centreBackIn,
    shared: pockets,
    opens: ['waistband'],
    level: (garment) => linedAlong(zipThere(garment) ? 4 : 3, garment),
    minutes: (garment) => [30 + (zipThere(garment) ? 25 : 0) + liningMinutes(garment), 8],
    reseams: ['centre-back'],
    source:
      'CB-TR, STUTAIL (75 in all, then a smaller size); BSAU (2–4 cm: warned past 40); jeans 40: SEWGARD (a worked example of 19), the rest CP; ' +
      'HSW-PANTS (30–60 min); zip 25 min and taper one in four and a half CP'
  },
  {
    id: 'waist-in-side-seams',
    direction: 'less',
    kinds: LEGS,
    unless: drawnIn,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: -1, hip: -taperShare(garment.made.hipDepthMm / Math.max(garment.made.taperLengthMm, garment.made.hipDepthMm)) },
        capMm: 50,
        because: limit('pockets-swing'),
        seams: [{ seam: 'side', mmPerOffset: 4 }]
      }
    ],
    opens: ['waistband'],
    level: (garment) => (garment.made.slantPockets || garment.kind === 'jeans' ? 4 : 3),
    minutes: [45, 8],
    reseams: ['side'],
    source: 'TM227-34 (side seams hang centred); 25 a side MEM'
  },
  {
    id: 'waist-in-darts',
    direction: 'less',
    kinds: ['trousers', 'shorts', 'skirt'],
    unless: nowhereForDarts,
    lines: () => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 60,
        softMm: 40,
        because: limit('darts', { each: 15, count: 4 }),
        seams: [{ seam: 'dart', mmPerOffset: 4, twicePastMm: TWO_DARTS_MM['waist-in-darts'] }]
      }
    ],
    opens: ['waistband'],
    level: (garment) => linedAlong(2, garment),
    minutes: (garment) => [30 + liningMinutes(garment), 5],
    source: 'TBT (choose by the hip, waist by darts); 60 in all, warned past 40 CP (25 a dart is deep in a skirt)'
  },
  {
    id: 'yoke-darts',
    direction: 'less',
    kinds: ['jeans'],
    wovenOnly: true,
    unless: drawnIn,
    lines: () => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 75,
        softMm: 25,
        because: limit('yoke-darts', { two: TWO_DARTS_MM['yoke-darts'] }),
        seams: [{ seam: 'dart', mmPerOffset: 4, twicePastMm: TWO_DARTS_MM['yoke-darts'] }]
      }
    ],
    tier: () => ({ line: 0, beyondMm: 50, level: 2, minutes: 20, because: limit('yoke-darts', { two: 50 }) }),
    level: 2,
    minutes: [40, 3],
    penalties: ['dartsInBand'],
    source: 'NAOMI (two darts, over 2 in four), MEANDER (1/2 in a side before it puckers: warned past 25); minutes MEM'
  },
  {
    id: 'waist-out-centre-back',
    direction: 'more',
    kinds: WAISTED,
    unless: noBackSeam,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: 1, hip: hipShare(garment) },
        ...letOut(garment, 'centre-back', 1),
        seams: [{ seam: 'centre-back', mmPerOffset: 2, outward: true }]
      }
    ],
    opens: ['waistband'],
    level: (garment) => linedAlong(zipThere(garment) ? 4 : 3, garment),
    minutes: (garment) => [30 + (zipThere(garment) ? 25 : 0) + liningMinutes(garment), 8],
    outward: true,
    reseams: ['centre-back'],
    source: 'CB-TR (keeps 3/8 in)'
  },
  {
    id: 'waist-out-side-seams',
    direction: 'more',
    kinds: LEGS,
    unless: drawnIn,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: 1, hip: hipShare(garment) },
        ...letOut(garment, 'side', 2),
        seams: [{ seam: 'side', mmPerOffset: 4, outward: true }]
      }
    ],
    opens: ['waistband'],
    level: 3,
    minutes: [45, 8],
    outward: true,
    source: 'TONGA (5/8 in found), CB-TR (3/8 in kept)'
  },
  {
    id: 'waist-out-panel',
    direction: 'more',
    kinds: WAISTED,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: 1, hip: hipShare(garment) },
        capMm: 50,
        because: limit('panel'),
        seams: [{ seam: 'panel', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: ['waistband'],
    level: 3,
    minutes: [60, 5],
    penalties: ['panel'],
    source: 'CP: a rescue that shows; wider it looks like a repair'
  },
  {
    id: 'seat-in',
    direction: 'less',
    kinds: LEGS,
    lines: () => [
      {
        point: 'hip',
        effects: { hip: -1, backRise: -0.25, crotchLength: -0.25, thigh: -0.3 },
        capMm: 38,
        softMm: 25,
        because: limit('seat'),
        seams: [{ seam: 'seat', mmPerOffset: 2 }]
      }
    ],
    opens: ['waistband', 'seat'],
    level: 4,
    minutes: [60, 10],
    reseams: ['seat'],
    penalties: ['drape'],
    source: 'TM227-34 (the seat alters the crotch): 38, warned past 25 CP; shares MEM'
  },
  {
    id: 'seat-out',
    direction: 'more',
    kinds: LEGS,
    lines: (garment) => [
      {
        point: 'hip',
        effects: { hip: 1, backRise: 0.25, crotchLength: 0.25, thigh: 0.3 },
        ...letOut(garment, 'seat', 1),
        seams: [{ seam: 'seat', mmPerOffset: 2, outward: true }]
      }
    ],
    opens: ['waistband', 'seat'],
    level: 4,
    minutes: [60, 10],
    outward: true,
    penalties: ['drape'],
    source: 'TM227-34; shares MEM'
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
        seams: [{ seam: 'dart', mmPerOffset: 4, outward: true, twicePastMm: TWO_DARTS_MM['release-darts'] }]
      }
    ],
    opens: (garment) => (garment.kind === 'shirt' || garment.kind === 'dress' ? [] : ['waistband']),
    level: 2,
    minutes: [20, 4],
    outward: true,
    source: 'CP: 10 a dart'
  }
]

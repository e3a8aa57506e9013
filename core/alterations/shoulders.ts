/** Shoulders, straps, necklines, and the waist seams of dresses. MEM from memory, CP common practice, no source. */

import { allowanceAt } from '../garment/construction.ts'
import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { hasSleeves } from '../garment/sleeves.ts'
import { type GarmentKind, OUTER } from '../ids/kinds.ts'
import type { Saying } from '../words/reason.ts'
import { closedBy, hasShoulderSeam, liningMinutes } from './as-cut.ts'
import { lined } from './bodies.ts'
import { KEEP_MM } from './let-out.ts'
import { limit, type Row } from './row.ts'

/** All in all, mm: the width of half of it lies on each side. */
const SHOULDER_IN: Partial<Record<GarmentKind, number>> = { jacket: 26, coat: 26, shirt: 38, dress: 26, 'knit-top': 20, jumper: 20 }
const shoulderIn = ({ kind, made }: Garment): number => (made.tailored ? 20 : (SHOULDER_IN[kind] ?? 20))
const noShoulder = (garment: Garment): Saying | undefined => (hasShoulderSeam(garment) ? undefined : limit('no-shoulder-seam'))
/** Casual jackets and coats have no pads that could be thinned, nor has a hide (common practice). */
const noPads = (garment: Garment): Saying | undefined =>
  garment.cloth.structure === 'leather' ||
  isCut(garment.cut, 'layer', 'denim', 'overshirt', 'biker', 'bomber', 'field', 'waxed', 'fleece', 'puffer', 'kimono') ||
  !hasShoulderSeam(garment)
    ? limit('no-pads')
    : undefined
/** The zip of a dress crosses its waist seam; a lining has the same seam. */
const waistSeamMinutes = (garment: Garment): [number, number] =>
  garment.made.lined ? [150, 8] : closedBy(garment, 'back-zip', 'side-zip', 'front-zip') ? [120, 8] : [90, 6]
const noWaistSeam = ({ cut }: Garment): Saying | undefined =>
  isCut(cut, 'waistSeam', 'none') || isCut(cut, 'silhouette', 'shift', 'smock', 'bias', 'jersey') ? limit('no-waist-seam') : undefined
/** Cloth at the waist seam without which it is not lowered. */
const LOWER_LEAST_MM = 20

export const shoulders: Row[] = [
  {
    id: 'shoulder-in',
    direction: 'less',
    kinds: [...OUTER, 'shirt', 'dress', 'knit-top', 'jumper'],
    unless: noShoulder,
    lines: (garment) => [
      {
        point: 'shoulderWidth',
        effects: { shoulderWidth: -1, sleeveFromCentreBack: -0.5 },
        capMm: shoulderIn(garment),
        because: garment.made.tailored
          ? limit('shoulder-tailored', { side: shoulderIn(garment) / 2 })
          : limit('shoulder', { side: shoulderIn(garment) / 2 }),
        seams: [{ seam: 'armhole', mmPerOffset: 2 }]
      }
    ],
    opens: (garment) => (lined(garment) ? ['armhole', 'lining'] : ['armhole']),
    level: (garment) => (OUTER.includes(garment.kind) ? 5 : 4),
    minutes: (garment) => (OUTER.includes(garment.kind) ? [240, 0] : [90 + liningMinutes(garment), 0]),
    penalties: ['recut'],
    reseams: ['armhole'],
    source:
      'FINETAIL (1 cm a side on suits), WSU2246 (do not buy if the shoulder must be remodelled); shirts 19, casual jackets and dresses 13, knits 10 a side CP'
  },
  {
    id: 'shoulder-pads',
    direction: 'more',
    kinds: OUTER,
    unless: noPads,
    lines: () => [{ point: 'chest', effects: { chest: 1 }, capMm: 10, because: limit('pads'), seams: [] }],
    fixedMm: 10,
    opens: ['lining'],
    level: 3,
    minutes: [35, 0],
    penalties: ['drape'],
    source: 'MEM: a thinner pad gives about 10 at the chest'
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
    id: 'lift-at-shoulder',
    direction: 'less',
    kinds: ['dress', 'jumpsuit', 'knit-top', 'shirt'],
    unless: noShoulder,
    lines: (garment) => [
      {
        point: 'napeToWaist',
        effects: { napeToWaist: -1, strap: -1, armhole: -2 },
        capMm: hasSleeves(garment) ? 12 : 25,
        because: limit('shoulder-seam'),
        seams: [{ seam: 'shoulder', mmPerOffset: 1 }]
      }
    ],
    opens: ['armhole'],
    level: (garment) => (hasSleeves(garment) ? 4 : 3),
    minutes: (garment) => [hasSleeves(garment) ? 85 : 45, 4],
    penalties: ['drape'],
    excludes: ['strap-shorten'],
    source: 'CP: 25; with sleeves set in 12, for the armhole deepens with it'
  },
  {
    id: 'underarm-raise',
    direction: 'less',
    kinds: ['dress', 'jumpsuit', 'knit-top', 'shirt'],
    there: ({ cut }) => isCut(cut, 'sleeve', 'sleeveless'),
    lines: () => [
      {
        point: 'armhole',
        effects: { armhole: -1 },
        capMm: 40,
        softMm: 20,
        because: limit('underarm'),
        seams: [{ seam: 'side', mmPerOffset: 2 }]
      }
    ],
    level: 2,
    minutes: [30, 0],
    source: 'CP: 20 at each side seam, warned past 20 in all'
  },
  {
    id: 'dress-waist-raise',
    direction: 'less',
    kinds: ['dress'],
    unless: noWaistSeam,
    lines: () => [
      {
        point: 'napeToWaist',
        effects: { napeToWaist: -1, bodyLength: -1 },
        capMm: 38,
        because: limit('waist-seam'),
        seams: [{ seam: 'waist-seam', mmPerOffset: 1 }]
      }
    ],
    level: 4,
    minutes: waistSeamMinutes,
    penalties: ['drape'],
    excludes: ['lift-at-shoulder'],
    source:
      'CP: the bodice is cut shorter, the skirt stays as it is and its hem comes up (geometry); a zip across the seam 30 min, a lining 60 min CP'
  },
  {
    id: 'dress-waist-lower',
    direction: 'more',
    kinds: ['dress'],
    unless: noWaistSeam,
    lines: (garment) => {
      const allowance = allowanceAt(garment.made, 'waist-seam', garment.told)
      return [
        {
          point: 'napeToWaist',
          effects: { napeToWaist: 1, skirtLength: -1 },
          capMm: allowance < LOWER_LEAST_MM ? 0 : Math.max(0, Math.min(38, allowance - KEEP_MM)),
          because: limit('allowance', { allowance, keep: KEEP_MM, seam: 'waist-seam' }),
          seams: [{ seam: 'waist-seam', mmPerOffset: 1, outward: true }]
        }
      ]
    },
    level: 4,
    minutes: waistSeamMinutes,
    outward: true,
    penalties: ['drape'],
    source: 'CP: rare, only with 20 of cloth or more'
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
  }
]

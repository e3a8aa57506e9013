/** Shoulders, straps, necklines, and the waist seams of dresses. MEM from memory, CP common practice, no source. */

import { allowanceAt } from '../garment/construction.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import { lined } from './bodies.ts'
import { KEEP_MM } from './let-out.ts'
import { limit, type Row } from './row.ts'

const TAILORED: GarmentKind[] = ['jacket', 'coat']

export const shoulders: Row[] = [
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

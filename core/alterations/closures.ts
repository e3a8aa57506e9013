/** Buttons moved, elastic put in or shortened. MEM from memory, CP common practice, no source. */

import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { Saying } from '../words/reason.ts'
import { lowest } from './bodies.ts'
import { type Effects, limit, type Row } from './row.ts'

const WAISTED: GarmentKind[] = ['trousers', 'jeans', 'shorts', 'skirt']

/** Where elastic draws a waist in, its length makes the girth: seams and buttons do not (common practice). */
export const drawnIn = ({ made }: Garment): Saying | undefined => (made.elasticWaist ? limit('elastic-band') : undefined)
/** Half a button of 25 mm, and 6 mm of cloth before the edge (common practice); a button stands on the middle of the overlap. */
const BUTTON_FROM_EDGE_MM = 18
const buttons: Partial<Record<GarmentKind, number>> = { jacket: 2, coat: 3, waistcoat: 5, shirt: 7 }

export const closures: Row[] = [
  {
    id: 'waist-in-elastic',
    direction: 'less',
    kinds: WAISTED,
    unless: drawnIn,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 0.1 * (garment.points.get('waist')?.mm ?? 0),
        because: limit('elastic'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    level: 1,
    minutes: [25, 0],
    penalties: (garment) => [garment.made.tailored ? 'gathersOnTailored' : 'gathers'],
    source: 'CP: a tenth of the waist'
  },
  {
    id: 'waist-elastic-shorten',
    direction: 'less',
    kinds: [...WAISTED, 'dress', 'jumpsuit'],
    unless: ({ made }) => (made.elasticWaist ? undefined : limit('no-elastic')),
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 0.2 * (garment.points.get('waist')?.mm ?? 0),
        because: limit('elastic-shorten'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    level: 2,
    minutes: [30, 0],
    source: 'CP: the casing opened for a hand’s breadth, the elastic cut and joined; a fifth of the waist MEM'
  },
  {
    id: 'waist-button-move',
    direction: 'less',
    kinds: WAISTED,
    unless: drawnIn,
    lines: () => [
      { point: 'waist', effects: { waist: -1 }, capMm: 25, because: limit('button-in'), seams: [{ seam: 'front-edge', mmPerOffset: 1 }] }
    ],
    level: 1,
    minutes: [10, 0],
    penalties: ['oldMarks'],
    source: 'MEM: 25 in'
  },
  {
    id: 'waist-button-move',
    direction: 'more',
    kinds: WAISTED,
    unless: drawnIn,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: 1 },
        capMm: Math.max(0, Math.min(13, garment.made.overlapMm - 20)),
        physicalMm: Math.max(0, garment.made.overlapMm - 10),
        because: limit('overlap', { overlap: garment.made.overlapMm, keep: 20 }),
        seams: [{ seam: 'front-edge', mmPerOffset: 1, outward: true }]
      }
    ],
    level: 1,
    minutes: [10, 0],
    penalties: ['oldMarks'],
    source: 'MEM: 13 out, 20 of overlap left'
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
    id: 'cuff-button-move',
    direction: 'less',
    kinds: ['shirt'],
    lines: () => [
      { point: 'cuff', effects: { cuff: -1 }, capMm: 20, because: limit('cuff-button'), seams: [{ seam: 'cuff', mmPerOffset: 1 }] }
    ],
    level: 1,
    minutes: [8, 0],
    excludes: ['cuff-in'],
    source: 'CP: 20'
  },
  {
    id: 'cuff-button-move',
    direction: 'more',
    kinds: ['shirt'],
    lines: () => [
      {
        point: 'cuff',
        effects: { cuff: 1 },
        capMm: 20,
        because: limit('cuff-button'),
        seams: [{ seam: 'cuff', mmPerOffset: 1, outward: true }]
      }
    ],
    level: 1,
    minutes: [8, 0],
    excludes: ['cuff-in'],
    source: 'CP: 20'
  }
]

/** Moving the closing buttons moves chest, waist and hip where they close (waistcoats and jackets: chest and waist with the lower edge). */
function closing(garment: Garment, sign: 1 | -1): Effects {
  return { chest: sign, waist: sign, ...lowest(garment).effects(sign) }
}

/** Buttons moved, elastic put in or shortened. MEM from memory, CP common practice, no source. */

import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { type GarmentKind, WAISTED } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import { closedBy, isWrapped, isZipped } from './as-cut.ts'
import { lowest } from './bodies.ts'
import { drawnIn } from './elastic.ts'
import { type Effects, limit, type Row } from './row.ts'

/** How far in a waist's button goes, by what closes beside it; past `soft` it is warned. A zip stays where it is, and so does the line of a fly. */
const buttonIn = (garment: Garment): { capMm: number; softMm?: number; because: Saying } => {
  if (closedBy(garment, 'side-zip', 'back-zip')) return { capMm: 6, because: limit('button-beside-zip') }
  if (closedBy(garment, 'buttons')) return { capMm: 19, because: limit('button-in') }
  return { capMm: 13, softMm: 10, because: limit('button-over-fly') }
}
const buttonOut = (garment: Garment): number => (closedBy(garment, 'side-zip', 'back-zip') ? 6 : closedBy(garment, 'buttons') ? 13 : 10)
/** Straps, ties, hooks and elastic have rows of their own. */
const closesOtherwise = ({ cut }: Garment): boolean =>
  isCut(cut, 'closing', 'hook', 'buckles', 'ties', 'wrap', 'drawstring') || isCut(cut, 'silhouette', 'kilt', 'wrap')
/** Nothing that could be moved. */
const nothingToMove = (garment: Garment): Saying | undefined =>
  drawnIn(garment) ?? (isCut(garment.cut, 'closing', 'front-zip', 'snaps', 'none') ? limit('no-button') : undefined)

const hasBuckles = ({ cut }: Garment): boolean => isCut(cut, 'closing', 'buckles') || isCut(cut, 'silhouette', 'kilt', 'dungarees')
/** Straps over the shoulders, or round the waist. */
const strapped = ({ kind }: Garment): { point: PointId; capMm: number } =>
  kind === 'jumpsuit' ? { point: 'strap', capMm: 80 } : { point: 'waist', capMm: 60 }
const hasTies = (garment: Garment): boolean => isWrapped(garment) || isCut(garment.cut, 'closing', 'ties')
const OVERLAP_OF_WRAP_MM = 120

/** Jackets and coats that no button closes, or whose buttons are hammered in. */
const noFrontButtons = (garment: Garment): Saying | undefined =>
  isZipped(garment) ||
  isCut(garment.cut, 'closing', 'snaps', 'hook', 'none', 'ties', 'wrap', 'buckles') ||
  isCut(garment.cut, 'layer', 'denim')
    ? limit('no-front-buttons')
    : undefined
/** How far in, mm around; past `soft` the lapels shift. */
const FRONT_IN: Partial<Record<GarmentKind, { capMm: number; softMm?: number }>> = {
  shirt: { capMm: 8 },
  waistcoat: { capMm: 13 },
  jacket: { capMm: 13, softMm: 10 },
  coat: { capMm: 25 }
}
/** Half of a button of 25 mm: no further out than the edge of the cloth. */
const HALF_BUTTON_MM = 12.5
/** Half a button of 25 mm, and 6 mm of cloth before the edge (common practice); a button stands on the middle of the overlap. */
const BUTTON_FROM_EDGE_MM = 18
const buttons: Partial<Record<GarmentKind, number>> = { jacket: 2, coat: 3, waistcoat: 5, shirt: 7 }

export const closures: Row[] = [
  {
    id: 'waist-button-move',
    direction: 'less',
    kinds: WAISTED,
    there: (garment) => !closesOtherwise(garment),
    unless: nothingToMove,
    lines: (garment) => [{ point: 'waist', effects: { waist: -1 }, ...buttonIn(garment), seams: [{ seam: 'front-edge', mmPerOffset: 1 }] }],
    level: 1,
    minutes: [10, 0],
    penalties: ['oldMarks'],
    source: 'FREEWK (1/2–3/4 in on dress trousers); over a fly 13, warned past 10, beside a zip 6, skirts with a button 19 CP'
  },
  {
    id: 'waist-button-move',
    direction: 'more',
    kinds: WAISTED,
    there: (garment) => !closesOtherwise(garment),
    unless: nothingToMove,
    lines: (garment) => [
      {
        point: 'waist',
        effects: { waist: 1 },
        capMm: Math.max(0, Math.min(buttonOut(garment), garment.made.overlapMm - 20)),
        physicalMm: Math.max(0, garment.made.overlapMm - 10),
        because: limit('overlap', { overlap: garment.made.overlapMm, keep: 20 }),
        seams: [{ seam: 'front-edge', mmPerOffset: 1, outward: true }]
      }
    ],
    level: 1,
    minutes: [10, 0],
    penalties: ['oldMarks'],
    source: 'CP: over a fly 10 out, beside a zip 6, else 13; 20 of overlap left MEM'
  },
  {
    id: 'hook-move',
    direction: 'less',
    kinds: WAISTED,
    there: ({ cut }) => isCut(cut, 'closing', 'hook'),
    lines: () => [
      { point: 'waist', effects: { waist: -1 }, capMm: 13, because: limit('hook'), seams: [{ seam: 'front-edge', mmPerOffset: 1 }] }
    ],
    level: 1,
    minutes: [12, 0],
    source: 'CP: 13'
  },
  {
    id: 'hook-move',
    direction: 'more',
    kinds: WAISTED,
    there: ({ cut }) => isCut(cut, 'closing', 'hook'),
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
    minutes: [12, 0],
    source: 'CP: 13, 20 of overlap left'
  },
  {
    id: 'buckle-move',
    direction: 'less',
    kinds: [...WAISTED, 'jumpsuit'],
    there: hasBuckles,
    lines: (garment) => {
      const { point, capMm } = strapped(garment)
      return [{ point, effects: { [point]: -1 }, capMm, because: limit('buckles'), seams: [{ seam: 'strap', mmPerOffset: 1 }] }]
    },
    level: 1,
    minutes: [30, 0],
    source: 'KILTNH (an easy fix: 60 over both straps); straps of dungarees 80 and 15 min a buckle CP'
  },
  {
    id: 'buckle-move',
    direction: 'more',
    kinds: [...WAISTED, 'jumpsuit'],
    there: hasBuckles,
    lines: (garment) => {
      const { point, capMm } = strapped(garment)
      return [
        { point, effects: { [point]: 1 }, capMm, because: limit('buckles'), seams: [{ seam: 'strap', mmPerOffset: 1, outward: true }] }
      ]
    },
    level: 1,
    minutes: [30, 0],
    source: 'KILTNH (an easy fix: 60 over both straps); straps of dungarees 80 and 15 min a buckle CP'
  },
  {
    id: 'tie-move',
    direction: 'less',
    kinds: ['skirt', 'dress', 'shirt', 'jumpsuit'],
    there: hasTies,
    lines: () => [
      { point: 'waist', effects: { waist: -1 }, capMm: 60, because: limit('ties'), seams: [{ seam: 'front-edge', mmPerOffset: 1 }] }
    ],
    level: 1,
    minutes: [15, 0],
    source: 'CP: 60'
  },
  {
    id: 'tie-move',
    direction: 'more',
    kinds: ['skirt', 'dress', 'shirt', 'jumpsuit'],
    there: hasTies,
    lines: ({ told }) => [
      {
        point: 'waist',
        effects: { waist: 1 },
        capMm: told.overlapMm === undefined ? 60 : Math.max(0, Math.min(60, told.overlapMm - OVERLAP_OF_WRAP_MM)),
        because: limit('wrap-overlap', { keep: OVERLAP_OF_WRAP_MM }),
        seams: [{ seam: 'front-edge', mmPerOffset: 1, outward: true }]
      }
    ],
    level: 1,
    minutes: [15, 0],
    source: 'CP: 60, 120 of overlap left'
  },
  {
    id: 'front-button-move',
    direction: 'less',
    kinds: ['jacket', 'coat', 'waistcoat', 'shirt'],
    unless: noFrontButtons,
    lines: (garment) => [
      {
        point: 'waist',
        effects: closing(garment, -1),
        ...(FRONT_IN[garment.kind] ?? { capMm: 13 }),
        because: limit('button-line'),
        seams: [{ seam: 'front-edge', mmPerOffset: 1 }]
      }
    ],
    level: 1,
    minutes: (garment) => [12 * (buttons[garment.kind] ?? 3), 0],
    penalties: ['oldMarks', 'drape'],
    source: 'JOEB (waistcoats 13); jackets 13, warned past 10, coats 25, shirts 8: the lapel shifts CP'
  },
  {
    id: 'front-button-move',
    direction: 'more',
    kinds: ['jacket', 'coat', 'waistcoat', 'shirt'],
    unless: noFrontButtons,
    lines: (garment) => [
      {
        point: 'waist',
        effects: closing(garment, 1),
        capMm: Math.max(0, Math.min(garment.made.overlapMm - 25, garment.made.overlapMm / 2 - HALF_BUTTON_MM)),
        physicalMm: Math.max(0, garment.made.overlapMm - 15),
        softMm: Math.max(0, garment.made.overlapMm / 2 - BUTTON_FROM_EDGE_MM),
        because: limit('overlap', { overlap: garment.made.overlapMm, keep: 25 }),
        seams: [{ seam: 'front-edge', mmPerOffset: 1, outward: true }]
      }
    ],
    level: 1,
    minutes: (garment) => [12 * (buttons[garment.kind] ?? 3), 0],
    penalties: ['oldMarks', 'drape'],
    source: 'MEM: 25 of overlap left, no further than the cloth; warned once the button’s edge stands within 6 of the front edge'
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
    oneOf: 'cuff',
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
    oneOf: 'cuff',
    source: 'CP: 20'
  }
]

/** Moving the closing buttons moves chest, waist and hip where they close (waistcoats and jackets: chest and waist with the lower edge). */
function closing(garment: Garment, sign: 1 | -1): Effects {
  return { chest: sign, waist: sign, ...lowest(garment).effects(sign) }
}

/**
 * How a garment is made, where it is not told: assumed by kind, always shown as assumed, each a figure the person can set.
 * Source of the table: common practice, from memory.
 */

import type { GarmentKind } from '../ids/kinds.ts'
import type { SeamId } from '../ids/seams.ts'
import { isDepth } from '../length.ts'
import type { Made } from './garment-input.ts'

const EVERY: Made = {
  tailored: false,
  lined: false,
  backSeam: false,
  felledSeams: false,
  seamAllowanceMm: 10,
  outletMm: 0,
  hemDepthMm: 30,
  hemKind: 'plain',
  hipDepthMm: 200,
  backPocketGapMm: 140,
  pocketDepthMm: 75,
  taperLengthMm: 200,
  slantPockets: false,
  darts: false,
  elasticWaist: false,
  waistStretchedMm: 0,
  skirtShape: 'straight',
  workingCuffButtons: false,
  shortSleeves: false,
  overlapMm: 25,
  opens: []
}

const ASSUMED: Record<GarmentKind, Partial<Made>> = {
  trousers: { outletMm: 25, hemDepthMm: 40, hemKind: 'blind', overlapMm: 40, backSeam: true, tailored: true, opens: ['waist'] },
  jeans: {
    outletMm: 0,
    hemDepthMm: 15,
    hemKind: 'original-edge',
    hipDepthMm: 190,
    overlapMm: 40,
    backSeam: true,
    felledSeams: ['seat', 'centre-back', 'inseam'],
    opens: ['waist']
  },
  shorts: { outletMm: 10, hemDepthMm: 30, overlapMm: 40, backSeam: true, opens: ['waist'] },
  skirt: { seamAllowanceMm: 12, outletMm: 12, hemDepthMm: 40, hemKind: 'blind', overlapMm: 30, darts: true, opens: ['waist'] },
  dress: { seamAllowanceMm: 12, outletMm: 12, hemDepthMm: 35, hemKind: 'blind', backSeam: true, opens: ['waist', 'chest', 'neck'] },
  jumpsuit: { seamAllowanceMm: 12, outletMm: 12, hemDepthMm: 35, backSeam: true, opens: ['waist', 'chest', 'neck'] },
  shirt: { outletMm: 0, hemDepthMm: 13, felledSeams: ['side', 'armhole', 'underarm'], opens: ['chest', 'waist', 'hem', 'neck', 'cuff'] },
  'knit-top': { seamAllowanceMm: 7, outletMm: 0, hemDepthMm: 20, hemKind: 'knit', overlapMm: 0 },
  jumper: { seamAllowanceMm: 7, outletMm: 0, hemDepthMm: 20, hemKind: 'knit', overlapMm: 0 },
  jacket: {
    seamAllowanceMm: 12,
    outletMm: 20,
    hemDepthMm: 40,
    hemKind: 'blind',
    overlapMm: 60,
    lined: true,
    backSeam: true,
    tailored: true,
    opens: ['chest', 'waist', 'hem', 'neck']
  },
  coat: {
    seamAllowanceMm: 15,
    outletMm: 20,
    hemDepthMm: 50,
    hemKind: 'blind',
    overlapMm: 80,
    lined: true,
    backSeam: true,
    tailored: true,
    opens: ['chest', 'waist', 'hip', 'hem', 'neck']
  },
  waistcoat: {
    seamAllowanceMm: 12,
    outletMm: 20,
    hemDepthMm: 15,
    overlapMm: 50,
    lined: true,
    backSeam: true,
    tailored: true,
    opens: ['chest', 'waist', 'hem', 'neck']
  },
  other: {}
}

/** The whole of how it is made, and which of it is only assumed. */
export function madeAs(kind: GarmentKind, told: Partial<Made> = {}): { made: Made; assumed: (keyof Made)[] } {
  const given = Object.fromEntries(
    Object.entries(told).filter(([, value]) => value !== undefined && (typeof value !== 'number' || isDepth(value)))
  ) as Partial<Made>
  const assumedOpen = ASSUMED[kind].opens ?? []
  // a vent or a zip that is told stands beside how such a kind opens, unless it is told that it opens nowhere
  const opens = given.opens === undefined ? assumedOpen : given.opens.length === 0 ? [] : [...new Set([...assumedOpen, ...given.opens])]
  const made: Made = { ...EVERY, ...ASSUMED[kind], ...given, opens }
  const assumed = (Object.keys(EVERY) as (keyof Made)[]).filter((part) => given[part] === undefined)
  return { made, assumed }
}

/** Is this seam flat-felled (nothing to let out, and dear to re-do)? */
export const isFelled = (made: Made, seam: SeamId): boolean =>
  typeof made.felledSeams === 'boolean' ? made.felledSeams : made.felledSeams.includes(seam)

const PLAIN_ALLOWANCE_MM = 10

/** Cloth beyond the stitching at a seam, mm a side. A felled seam has none to give. */
export function allowanceAt(made: Made, seam: SeamId, told: Partial<Made> = {}): number {
  if (isFelled(made, seam)) return 0
  const stated = made.seamAllowanceMm
  if (seam === 'centre-back' && (told.outletMm !== undefined || typeof stated === 'number')) return made.outletMm
  const own = typeof stated === 'number' ? stated : (stated[seam] ?? PLAIN_ALLOWANCE_MM)
  return isDepth(own) ? own : PLAIN_ALLOWANCE_MM
}

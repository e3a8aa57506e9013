/** Legs up and down. MEM from memory, CP common practice, no source. */

import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import { slopeBetween } from './geometry.ts'
import { type Line, limit, type Row } from './row.ts'

const HEMMED_LEGS: GarmentKind[] = ['trousers', 'jeans', 'shorts', 'jumpsuit']

/** Knee to hem is this share of the inside leg. */
export const BELOW_KNEE = 0.53

/** Opening per mm of leg cut off: the slope from knee to hem, so many mm a mm. Unknown: none. */
export function legSlope(garment: Garment): number {
  const knee = garment.points.get('knee')
  const opening = garment.points.get('legOpening')
  const inseam = garment.points.get('inseam')
  if (knee === undefined || opening === undefined || inseam === undefined || knee.from === 'inferred' || opening.from === 'inferred')
    return 0
  return -slopeBetween(knee.mm, opening.mm, BELOW_KNEE * inseam.mm)
}

const leg = (sign: number): Partial<Record<PointId, number>> => ({ inseam: sign, outseam: sign })
const belowKnee = (garment: Garment): number => {
  const inseam = garment.points.get('inseam')?.mm ?? 750
  return garment.kind === 'shorts' ? Math.max(0, inseam - 50) : BELOW_KNEE * inseam
}
const HEM = (outward = false): Line['seams'] => [{ seam: 'hem', mmPerOffset: 1, outward }]
const shorten = (garment: Garment, keepsEdge: boolean): Line[] => [
  {
    point: 'inseam',
    effects: keepsEdge ? leg(-1) : { ...leg(-1), legOpening: legSlope(garment) },
    capMm: keepsEdge ? Math.min(125, belowKnee(garment)) : belowKnee(garment),
    ...(keepsEdge && Math.abs(legSlope(garment)) > 0.01 ? { softMm: 12 / Math.abs(legSlope(garment)) } : {}),
    because: keepsEdge ? limit('keep-edge') : limit('below-knee'),
    seams: [{ seam: 'hem', mmPerOffset: 1 }]
  }
]
const lengthen = (capMm: number, because: Saying, physicalMm?: number): Line[] => [
  {
    point: 'inseam',
    effects: leg(1),
    capMm: Math.max(0, capMm),
    ...(physicalMm === undefined ? {} : { physicalMm }),
    because,
    seams: HEM(true)
  }
]

export const legLength: Row[] = [
  {
    id: 'leg-shorten-plain',
    direction: 'less',
    kinds: HEMMED_LEGS,
    lines: (garment) => shorten(garment, false),
    opens: ['hem'],
    level: 2,
    minutes: [25, 2],
    penalties: (garment) =>
      garment.made.hemKind === 'blind' ? ['machineLine'] : garment.made.hemKind === 'original-edge' ? ['lostEdge'] : [],
    excludes: ['leg-shorten-keep-edge', 'leg-shorten-blind', 'leg-lengthen-hem', 'leg-lengthen-facing', 'leg-lengthen-band'],
    source: 'JEANPLAIN (1 1/8 in below the new edge), JB (1/2 + 1 in)'
  },
  {
    id: 'leg-shorten-keep-edge',
    direction: 'less',
    kinds: ['jeans', 'trousers'],
    unless: (garment) => (garment.made.hemKind === 'original-edge' ? undefined : limit('no-edge')),
    lines: (garment) => shorten(garment, true),
    level: 2,
    minutes: [25, 1],
    excludes: ['leg-shorten-plain', 'leg-shorten-blind', 'leg-lengthen-hem', 'leg-lengthen-facing', 'leg-lengthen-band'],
    source: 'OH-INS, OH-MAG, OH-LB (the fold is half); OH-TIME, JEAN25 (10–30 min)'
  },
  {
    id: 'leg-shorten-blind',
    direction: 'less',
    kinds: ['trousers'],
    unless: (garment) => (garment.made.hemKind === 'blind' ? undefined : limit('no-blind-hem')),
    lines: (garment) => shorten(garment, false),
    opens: ['hem'],
    level: 2,
    minutes: [45, 2],
    excludes: ['leg-shorten-plain', 'leg-shorten-keep-edge', 'leg-lengthen-hem', 'leg-lengthen-facing', 'leg-lengthen-band'],
    source: 'HANDHEM (over 60 min the first, under 45 the second)'
  },
  {
    id: 'leg-lengthen-hem',
    direction: 'more',
    kinds: HEMMED_LEGS,
    lines: (garment) => {
      const depth = garment.made.hemDepthMm
      const keep = garment.made.tailored ? 25 : 10
      const capMm = garment.kind === 'jeans' ? Math.min(20, depth - keep) : depth - keep
      return lengthen(capMm, limit('hem', { depth, keep }), Math.max(0, depth - 6))
    },
    opens: ['hem'],
    level: 2,
    minutes: [30, 2],
    outward: true,
    penalties: ['fade'],
    excludes: ['leg-lengthen-facing', 'leg-lengthen-band', 'leg-shorten-plain', 'leg-shorten-keep-edge', 'leg-shorten-blind'],
    source: 'THRIFTHEM (fold and fade show); hem kept CP'
  },
  {
    id: 'leg-lengthen-facing',
    direction: 'more',
    kinds: HEMMED_LEGS,
    lines: (garment) =>
      lengthen(garment.made.hemDepthMm - 6, limit('facing', { depth: garment.made.hemDepthMm }), Math.max(0, garment.made.hemDepthMm - 3)),
    opens: ['hem'],
    level: 2,
    minutes: [45, 2],
    outward: true,
    penalties: ['fade'],
    excludes: ['leg-lengthen-hem', 'leg-lengthen-band', 'leg-shorten-plain', 'leg-shorten-keep-edge', 'leg-shorten-blind'],
    source: 'THRIFTHEM (1 3/4 in tape)'
  },
  {
    id: 'leg-lengthen-band',
    direction: 'more',
    kinds: HEMMED_LEGS,
    lines: () => lengthen(120, limit('band')),
    opens: ['hem'],
    level: 2,
    minutes: [50, 3],
    penalties: ['band'],
    excludes: ['leg-lengthen-hem', 'leg-lengthen-facing', 'leg-shorten-plain', 'leg-shorten-keep-edge', 'leg-shorten-blind'],
    source: 'CP'
  }
]

/** Legs up and down. MEM from memory, CP common practice, no source. */

import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { LEGGED } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import { linedAlong, liningMinutes } from './as-cut.ts'
import { slopeBetween } from './geometry.ts'
import { type Effects, type Line, limit, type Row } from './row.ts'
import { lengthPoint } from './skirts.ts'

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
/** A flare's line and its opening change past this (common practice): warned. */
const FLARE_UP_MM = 50
const isFlared = ({ cut }: Garment): boolean => isCut(cut, 'leg', 'bootcut', 'flared')
/** Ribs, slits and vents in the hem are set above it again (common practice). */
const hasDetail = ({ cut }: Garment): boolean => isCut(cut, 'leg', 'jogger') || isCut(cut, 'vent', 'vent', 'slit')
/** Wide legs have more hem to sew (common practice): 480 and over, 600 and over. */
const wideHem = (garment: Garment): number => {
  const mm = garment.points.get('legOpening')?.mm ?? 0
  return mm >= 600 ? 1.6 : mm >= 480 ? 1.4 : 1
}
const upMinutes = (garment: Garment, plain: number): number =>
  Math.round(plain * wideHem(garment)) + (hasDetail(garment) ? 20 : 0) + liningMinutes(garment)
const upLevel = (garment: Garment): number => linedAlong(hasDetail(garment) ? 3 : 2, garment)

const hasTurnUps = ({ cut }: Garment): boolean => isCut(cut, 'turnUps', 'made')
const hasRolls = ({ cut }: Garment): boolean => isCut(cut, 'turnUps', 'rolled')
/** A turn-up as it is seen, where its depth is not told (common practice); a roll. */
const TURN_UP_MM = 38
const ROLL_MM = 40
/** How deep a turn-up lies; there is three times that in it, so that opened it gives twice. */
const turnUp = ({ told }: Garment): number => told.hemDepthMm ?? TURN_UP_MM
const growsOut = ({ use }: Garment): boolean => use === 'child'
const plainEdge = (garment: Garment): boolean => !hasTurnUps(garment) && !growsOut(garment)
/** Let down at a plain hem: turn-ups and rolls are opened instead. */
const plainDown = (garment: Garment): boolean => !hasTurnUps(garment) && !hasRolls(garment)

/** A leg that narrows by more than this a mm puckers when it is turned up (common practice). */
const TAPERED = 0.1
/** What a child will grow into: the length of legs or skirt, the opening as it was. */
const growth = (garment: Garment): { point: PointId; effects: Effects } => {
  if (garment.kind !== 'skirt' && garment.kind !== 'dress') return { point: 'inseam', effects: leg(-1) }
  const point = lengthPoint(garment)
  return { point, effects: { skirtLength: -1, ...(garment.kind === 'dress' ? { bodyLength: -1 } : {}) } }
}
const HEM = (outward = false): Line['seams'] => [{ seam: 'hem', mmPerOffset: 1, outward }]
const soft = (garment: Garment, keepsEdge: boolean): { softMm?: number } => {
  const eased = keepsEdge && Math.abs(legSlope(garment)) > 0.01 ? 12 / Math.abs(legSlope(garment)) : Number.POSITIVE_INFINITY
  const softMm = Math.min(eased, isFlared(garment) ? FLARE_UP_MM : Number.POSITIVE_INFINITY)
  return Number.isFinite(softMm) ? { softMm } : {}
}
const shorten = (garment: Garment, keepsEdge: boolean): Line[] => [
  {
    point: 'inseam',
    effects: keepsEdge ? leg(-1) : { ...leg(-1), legOpening: legSlope(garment) },
    capMm: keepsEdge ? Math.min(125, belowKnee(garment)) : belowKnee(garment),
    ...soft(garment, keepsEdge),
    because: keepsEdge ? limit('keep-edge') : limit('below-knee'),
    // the line of a kept edge is its fold, which takes up twice its depth
    seams: [{ seam: 'hem', mmPerOffset: keepsEdge ? 2 : 1 }]
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
    kinds: LEGGED,
    there: plainEdge,
    lines: (garment) => shorten(garment, false),
    opens: ['hem'],
    level: upLevel,
    minutes: (garment) => [upMinutes(garment, 25), 2],
    penalties: (garment) =>
      garment.made.hemKind === 'blind' ? ['machineLine'] : garment.made.hemKind === 'original-edge' ? ['lostEdge'] : [],
    oneOf: 'leg-length',
    source:
      'JEANPLAIN (1 1/8 in below the new edge), JB (1/2 + 1 in); flares warned past 50, wide hems 1.4 and 1.6 times, ribs and slits 20 min CP'
  },
  {
    id: 'leg-shorten-keep-edge',
    direction: 'less',
    there: plainEdge,
    kinds: ['jeans', 'trousers'],
    unless: (garment) => (garment.made.hemKind === 'original-edge' ? undefined : limit('no-edge')),
    lines: (garment) => shorten(garment, true),
    level: upLevel,
    minutes: (garment) => [upMinutes(garment, 25), 1],
    oneOf: 'leg-length',
    source: 'OH-INS, OH-MAG, OH-LB (the fold is half); OH-TIME, JEAN25 (10–30 min)'
  },
  {
    id: 'leg-shorten-blind',
    direction: 'less',
    there: plainEdge,
    kinds: ['trousers'],
    unless: (garment) => (garment.made.hemKind === 'blind' ? undefined : limit('no-blind-hem')),
    lines: (garment) => shorten(garment, false),
    opens: ['hem'],
    level: upLevel,
    minutes: (garment) => [upMinutes(garment, 45), 2],
    oneOf: 'leg-length',
    source: 'HANDHEM (over 60 min the first, under 45 the second)'
  },
  {
    id: 'leg-lengthen-hem',
    direction: 'more',
    kinds: LEGGED,
    there: plainDown,
    lines: (garment) => {
      const depth = garment.made.hemDepthMm
      const keep = garment.made.tailored ? 25 : 10
      // a plain jeans hem gives 20 at most; what a seller says is turned up there is used
      const capMm = garment.kind === 'jeans' && garment.told.hemDepthMm === undefined ? Math.min(20, depth - keep) : depth - keep
      return lengthen(capMm, limit('hem', { depth, keep }), Math.max(0, depth - 6))
    },
    opens: ['hem'],
    level: 2,
    minutes: [30, 2],
    outward: true,
    penalties: ['fade'],
    oneOf: 'leg-length',
    source: 'THRIFTHEM (fold and fade show); hem kept CP'
  },
  {
    id: 'leg-lengthen-facing',
    direction: 'more',
    kinds: LEGGED,
    there: plainDown,
    lines: (garment) =>
      lengthen(garment.made.hemDepthMm - 6, limit('facing', { depth: garment.made.hemDepthMm }), Math.max(0, garment.made.hemDepthMm - 3)),
    opens: ['hem'],
    level: 2,
    minutes: [45, 2],
    outward: true,
    penalties: ['fade'],
    oneOf: 'leg-length',
    source: 'THRIFTHEM (1 3/4 in tape)'
  },
  {
    id: 'leg-lengthen-band',
    direction: 'more',
    kinds: LEGGED,
    unless: ({ made }) => (made.tailored ? limit('no-band') : undefined),
    lines: () => lengthen(60, limit('band')),
    opens: ['hem'],
    level: 2,
    minutes: [50, 3],
    penalties: ['band'],
    oneOf: 'leg-length',
    source: 'CP: a rescue that shows; children’s and casual legs alone'
  },
  {
    id: 'turn-up-let-down',
    direction: 'more',
    kinds: LEGGED,
    there: hasTurnUps,
    lines: (garment) => {
      const depth = turnUp(garment)
      return lengthen(2 * depth - 30, limit('turn-up', { depth, twice: 2 * depth, keep: 30 }), Math.max(0, 2 * depth - 6))
    },
    opens: ['hem'],
    level: 2,
    minutes: [50, 0],
    outward: true,
    penalties: ['fade'],
    oneOf: 'leg-length',
    source: 'SEAM2, HDS (three depths of cloth are in one): twice the depth less a hem of 30; 38 where it is not told CP'
  },
  {
    id: 'turn-up-shorten',
    direction: 'less',
    kinds: LEGGED,
    there: (garment) => hasTurnUps(garment) && !growsOut(garment),
    lines: (garment) => shorten(garment, false),
    opens: ['hem'],
    level: upLevel,
    minutes: (garment) => [upMinutes(garment, 60), 2],
    oneOf: 'leg-length',
    source: 'SEAM2, HDS: off, shortened, on again; minutes MEM'
  },
  {
    id: 'hem-unroll',
    direction: 'more',
    kinds: LEGGED,
    there: hasRolls,
    lines: ({ told }) => {
      const depth = told.hemDepthMm ?? ROLL_MM
      return lengthen(depth, limit('roll', { depth }))
    },
    level: 1,
    minutes: [5, 0],
    oneOf: 'leg-length',
    source: 'CP: one roll’s depth; 40 where it is not told'
  },
  {
    id: 'growth-tuck',
    direction: 'less',
    kinds: [...LEGGED, 'skirt', 'dress'],
    there: growsOut,
    lines: (garment) => [{ ...growth(garment), capMm: 60, because: limit('growth-tuck'), seams: [{ seam: 'hem', mmPerOffset: 1 }] }],
    level: 1,
    minutes: [20, 0],
    oneOf: 'leg-length',
    source: 'RAMPANT (tucks of 25), BAG (Growing clothes, 1976): 20–60, nothing is cut'
  },
  {
    id: 'growth-hem',
    direction: 'less',
    kinds: [...LEGGED, 'skirt', 'dress'],
    there: growsOut,
    lines: (garment) => [{ ...growth(garment), capMm: 100, because: limit('growth-hem'), seams: [{ seam: 'hem', mmPerOffset: 1 }] }],
    opens: ['hem'],
    level: 2,
    minutes: (garment) => [35 + (Math.abs(legSlope(garment)) > TAPERED ? 10 : 0) + liningMinutes(garment), 0],
    oneOf: 'leg-length',
    source: 'GENIE (all of it turned up; tapered legs pucker: the seam opened); 100 CP'
  }
]

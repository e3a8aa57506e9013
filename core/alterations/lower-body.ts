/** Trousers, jeans, shorts, and the waist of skirts. Amounts are around, all seams together. MEM from memory, CP common practice, no source. */
import { allowanceAt, isFelled } from '../garment/construction.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import { letOutHolds, slopeBetween } from './geometry.ts'
import type { Line, Row, SharedLimit } from './row.ts'
import { steepestTaper, taperShare } from './taper.ts'

const LEGS: GarmentKind[] = ['trousers', 'jeans', 'shorts']
const HEMMED_LEGS: GarmentKind[] = [...LEGS, 'jumpsuit']
const WAISTED: GarmentKind[] = [...LEGS, 'skirt']
/** Off the thigh this much is taken without asking the fork for more (12 a seam, common practice): past it, warned. */
const THIGH_IN_MM = 50

/** Cloth kept beyond a let-out seam (CB-TR: 3/8 in). */
export const KEEP_MM = 10
/** The least that a seam holds on to, whatever the person allows. */
const BARE_MM = 3
/** Back pockets come no nearer to each other than this (MEM, a setting). */
export const POCKETS_APART_MM = 50
/** Knee to hem is this share of the inside leg. */
export const BELOW_KNEE = 0.53

const limit = (code: string, values: Saying['values'] = {}): Saying => ({ code: `limit.${code}`, values })

/** A let-out over n seams of the same allowance: each gives twice what lies beyond KEEP_MM. */
export function letOut(
  garment: Garment,
  seam: 'centre-back' | 'side' | 'inseam' | 'seat' | 'underarm',
  seams: number
): Pick<Line, 'capMm' | 'physicalMm' | 'because'> {
  const allowance = allowanceAt(garment.made, seam, garment.told)
  return {
    capMm: letOutHolds(allowance, KEEP_MM, seams),
    physicalMm: letOutHolds(allowance, BARE_MM, seams),
    because: limit('allowance', { allowance, keep: KEEP_MM, seam })
  }
}

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
  const because = steep < 75 ? limit('taper', { length: garment.made.taperLengthMm }) : limit('back-distorts')
  return [
    {
      point: 'waist',
      effects: { waist: -1, hip: -hipShare(garment) },
      capMm: Math.min(75, steep),
      because,
      seams: [{ seam: 'centre-back', mmPerOffset: 2 }]
    }
  ]
}

/** Where elastic draws a waist in, its length makes the girth: seams and buttons do not (common practice). */
const drawnIn = ({ made }: Garment): Saying | undefined => (made.elasticWaist ? limit('elastic-band') : undefined)
const noBackSeam = (garment: Garment): Saying | undefined => drawnIn(garment) ?? (garment.made.backSeam ? undefined : limit('no-back-seam'))
const backSeamThere = (garment: Garment): Saying | undefined =>
  drawnIn(garment) ?? (garment.made.backSeam ? limit('has-back-seam') : undefined)

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

const legSeams = (garment: Garment): { count: number; seams: Line['seams'] } =>
  isFelled(garment.made, 'inseam') || isFelled(garment.made, 'side')
    ? { count: 1, seams: [{ seam: isFelled(garment.made, 'side') ? 'inseam' : 'side', mmPerOffset: 2 }] }
    : {
        count: 2,
        seams: [
          { seam: 'inseam', mmPerOffset: 4 },
          { seam: 'side', mmPerOffset: 4 }
        ]
      }

export const lowerBody: Row[] = [
  {
    id: 'waist-in-centre-back',
    direction: 'less',
    kinds: [...WAISTED],
    unless: noBackSeam,
    lines: centreBackIn,
    shared: pockets,
    opens: ['waistband'],
    level: 3,
    minutes: [30, 8],
    reseams: ['centre-back'],
    excludes: ['waist-out-centre-back'],
    source: 'CB-TR (75 in all, then a smaller size); HSW-PANTS (30–60 min); taper at most one in four and a half CP'
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
    excludes: ['waist-out-side-seams'],
    source: 'TM227-34 (side seams hang centred); 25 a side MEM'
  },
  {
    id: 'waist-in-darts',
    direction: 'less',
    kinds: ['trousers', 'shorts', 'skirt'],
    unless: backSeamThere,
    lines: () => [
      {
        point: 'waist',
        effects: { waist: -1 },
        capMm: 100,
        softMm: 50,
        because: limit('darts', { each: 25, count: 4 }),
        seams: [{ seam: 'dart', mmPerOffset: 4 }]
      }
    ],
    opens: ['waistband'],
    level: 2,
    minutes: [30, 5],
    source: 'TBT (choose by the hip, waist by darts); 25 a dart CP'
  },
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
    level: 3,
    minutes: [30, 8],
    outward: true,
    reseams: ['centre-back'],
    excludes: ['waist-in-centre-back'],
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
    excludes: ['waist-in-side-seams'],
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
        capMm: 75,
        because: limit('panel'),
        seams: [{ seam: 'panel', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: ['waistband'],
    level: 3,
    minutes: [60, 5],
    penalties: ['panel'],
    source: 'CP'
  },
  {
    id: 'seat-in',
    direction: 'less',
    kinds: LEGS,
    lines: () => [
      {
        point: 'hip',
        effects: { hip: -1, backRise: -0.25, crotchLength: -0.25, thigh: -0.3 },
        capMm: 50,
        because: limit('seat'),
        seams: [{ seam: 'seat', mmPerOffset: 2 }]
      }
    ],
    opens: ['waistband', 'seat'],
    level: 4,
    minutes: [60, 10],
    reseams: ['seat'],
    penalties: ['drape'],
    excludes: ['seat-out'],
    source: 'TM227-34 (the seat alters the crotch); shares MEM'
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
    excludes: ['seat-in'],
    source: 'TM227-34; shares MEM'
  },
  {
    id: 'leg-taper',
    direction: 'less',
    kinds: LEGS,
    lines: (garment) => {
      const { count, seams } = legSeams(garment)
      const capMm = count === 1 ? 40 : 76
      const because = count === 1 ? limit('one-leg-seam') : limit('crease')
      return [
        { point: 'thigh', effects: { thigh: -1 }, capMm, softMm: Math.min(capMm, THIGH_IN_MM), because, seams },
        { point: 'knee', effects: { knee: -1, calf: -0.68 }, capMm, because, seams },
        { point: 'legOpening', effects: { legOpening: -1, calf: -0.32 }, capMm, because, seams }
      ]
    },
    opens: ['hem'],
    level: (garment) => (legSeams(garment).count === 1 ? 4 : 3),
    minutes: [40, 8],
    excludes: ['thigh-out', 'calf-out'],
    source: 'MEM (3/4 in a seam); the crease stays centred CP'
  },
  {
    id: 'thigh-out',
    direction: 'more',
    kinds: LEGS,
    lines: (garment) => {
      const inside = letOut(garment, 'inseam', 1)
      const outside = letOut(garment, 'side', 1)
      return [
        {
          point: 'thigh',
          effects: { thigh: 1 },
          capMm: inside.capMm + outside.capMm,
          physicalMm: (inside.physicalMm ?? 0) + (outside.physicalMm ?? 0),
          because: inside.because,
          seams: [
            { seam: 'inseam', mmPerOffset: 4, outward: true },
            { seam: 'side', mmPerOffset: 4, outward: true }
          ]
        }
      ]
    },
    opens: ['inseam'],
    level: 3,
    minutes: [35, 8],
    outward: true,
    excludes: ['leg-taper'],
    source: 'CB-TR (3/8 in kept)'
  },
  {
    id: 'thigh-panel',
    direction: 'more',
    kinds: LEGS,
    lines: () => [
      {
        point: 'thigh',
        effects: { thigh: 1 },
        capMm: 60,
        because: limit('gusset'),
        seams: [{ seam: 'panel', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: ['inseam'],
    level: 3,
    minutes: [45, 4],
    penalties: ['hiddenGusset'],
    source: 'CP: the usual rescue of a tight thigh'
  },
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
  },
  {
    id: 'rise-shorten',
    direction: 'less',
    kinds: LEGS,
    lines: () => [
      {
        point: 'frontRise',
        effects: { frontRise: -1, backRise: -1, crotchLength: -2, outseam: -1, waist: 0.3 },
        capMm: 25,
        because: limit('rise'),
        seams: [{ seam: 'waistband', mmPerOffset: 1 }]
      }
    ],
    opens: ['waistband'],
    level: 5,
    minutes: [150, 10],
    penalties: ['recut'],
    source: 'MLT (about 1 cm; do not attempt); 25 MEM, a last resort'
  },
  {
    id: 'rise-deepen',
    direction: 'more',
    kinds: LEGS,
    lines: () => [
      {
        point: 'backRise',
        effects: { backRise: 1, crotchLength: 1, thigh: -0.5, inseam: -0.5 },
        capMm: 13,
        because: limit('fork'),
        seams: [{ seam: 'seat', mmPerOffset: 1 }]
      }
    ],
    opens: ['seat'],
    level: 4,
    minutes: [40, 5],
    penalties: ['recut'],
    source: 'MEM (13)'
  },
  {
    id: 'calf-out',
    direction: 'more',
    kinds: ['trousers', 'jeans'],
    lines: (garment) => [
      {
        point: 'calf',
        effects: { calf: 1, legOpening: 0.5 },
        ...letOut(garment, 'inseam', 1),
        seams: [{ seam: 'inseam', mmPerOffset: 2, outward: true }]
      }
    ],
    opens: ['hem'],
    level: 2,
    minutes: [30, 4],
    outward: true,
    excludes: ['leg-taper'],
    source: 'CB-TR (3/8 in kept)'
  }
]

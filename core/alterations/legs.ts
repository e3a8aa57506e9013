/** Legs: girths and the rise. Amounts are around one leg, all seams together. MEM from memory, CP common practice, no source. */

import { isFelled } from '../garment/construction.ts'
import { isCut } from '../garment/cut.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { LEGS } from '../ids/kinds.ts'
import type { Saying } from '../words/reason.ts'
import { letOut } from './let-out.ts'
import { type Line, limit, type Row } from './row.ts'

/** Off the thigh this much is taken without asking the fork for more (common practice): past it, warned. */
const THIGH_IN_MM = 25
/** A hidden gusset goes so far (common practice): past it, warned. */
const GUSSET_HIDDEN_MM = 40
/** Legs that are wide below on purpose: narrower they would be another cut. */
const wideBelow = ({ cut }: Garment): Saying | undefined =>
  isCut(cut, 'leg', 'bootcut', 'flared', 'wide', 'palazzo', 'barrel') ? limit('leg-as-cut') : undefined

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

export const legs: Row[] = [
  {
    id: 'leg-taper',
    direction: 'less',
    kinds: LEGS,
    unless: wideBelow,
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
    source: 'MEM (3/4 in a seam); the crease stays centred, warned past 25 at the thigh, not on legs cut wide below CP'
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
        softMm: GUSSET_HIDDEN_MM,
        because: limit('gusset'),
        seams: [{ seam: 'panel', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: ['inseam'],
    level: 3,
    minutes: [45, 4],
    penalties: ['hiddenGusset'],
    source: 'CP: the usual rescue of a tight thigh; hidden to 40'
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
    penalties: ['recutRise'],
    source: 'MEM: 25, a last resort'
  },
  {
    id: 'rise-deepen',
    direction: 'more',
    kinds: LEGS,
    lines: () => [
      {
        point: 'backRise',
        effects: { backRise: 1, crotchLength: 1, thigh: -0.5, inseam: -0.5 },
        capMm: 10,
        because: limit('fork'),
        seams: [{ seam: 'seat', mmPerOffset: 1 }]
      }
    ],
    opens: ['seat'],
    level: 4,
    minutes: [40, 5],
    penalties: ['recutRise'],
    source: 'MLT (about 1 cm; do not attempt)'
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
    source: 'CB-TR (3/8 in kept)'
  }
]

/** Sleeves and cuffs. MEM from memory, CP common practice, no source. */

import type { Garment } from '../garment/garment-as-worn.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { Saying } from '../words/reason.ts'
import { type Effects, limit, type Row } from './row.ts'

const SLEEVED: GarmentKind[] = ['shirt', 'knit-top', 'jumper', 'jacket', 'coat', 'dress', 'jumpsuit']
const TAILORED: GarmentKind[] = ['jacket', 'coat']

const sleeve = (sign: number): Effects => ({ sleeveLength: sign, sleeveFromCentreBack: sign, sleeveUnderarm: sign })
const sleeveMm = (garment: Garment): number => garment.points.get('sleeveLength')?.mm ?? 600
const OTHERS = ['sleeve-shorten-cuff', 'sleeve-shorten-hem', 'sleeve-shorten-lined', 'sleeve-shorten-head', 'sleeve-lengthen'] as const
const butNot = (id: (typeof OTHERS)[number]) => OTHERS.filter((other) => other !== id)
const softSleeve = (garment: Garment): Saying | undefined =>
  garment.made.lined || garment.made.tailored ? limit('lined-sleeve') : undefined

export const sleeves: Row[] = [
  {
    id: 'sleeve-shorten-cuff',
    direction: 'less',
    kinds: ['shirt'],
    lines: () => [
      { point: 'sleeveLength', effects: sleeve(-1), capMm: 45, because: limit('placket'), seams: [{ seam: 'cuff', mmPerOffset: 1 }] }
    ],
    opens: ['cuff'],
    level: 3,
    minutes: [45, 3],
    excludes: butNot('sleeve-shorten-cuff'),
    source: 'CP: the placket shortens with it'
  },
  {
    id: 'sleeve-shorten-hem',
    direction: 'less',
    kinds: ['knit-top', 'jumper', 'dress', 'jumpsuit', 'coat', 'jacket'],
    unless: softSleeve,
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: sleeve(-1),
        capMm: Math.max(0, sleeveMm(garment) - 50),
        because: limit('sleeve-left', { left: 50 }),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    opens: ['cuff'],
    level: 2,
    minutes: [35, 2],
    excludes: butNot('sleeve-shorten-hem'),
    source: 'CP; rib cuffs keep their girth'
  },
  {
    id: 'sleeve-shorten-lined',
    direction: 'less',
    kinds: TAILORED,
    unless: (garment) =>
      !garment.made.lined && !garment.made.tailored
        ? limit('not-lined')
        : garment.made.workingCuffButtons
          ? limit('working-buttons')
          : undefined,
    lines: () => [
      {
        point: 'sleeveLength',
        effects: sleeve(-1),
        capMm: 38,
        because: limit('sham-buttons', { still: 13 }),
        seams: [{ seam: 'hem', mmPerOffset: 1 }]
      }
    ],
    opens: ['lining', 'cuff'],
    level: 4,
    minutes: [60, 4],
    excludes: butNot('sleeve-shorten-lined'),
    source: 'FYG (buttons 1–2 in from the edge; 13 without moving them); 38 with sham buttons CP'
  },
  {
    id: 'sleeve-shorten-head',
    direction: 'less',
    kinds: ['shirt', 'jacket', 'coat', 'knit-top', 'jumper'],
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: { ...sleeve(-1), bicep: -0.3 },
        capMm: garment.made.tailored ? 38 : 75,
        because: limit('sleeve-head'),
        seams: [{ seam: 'armhole', mmPerOffset: 1 }]
      }
    ],
    opens: (garment) => (garment.made.lined ? ['armhole', 'lining'] : ['armhole']),
    level: (garment) => (garment.made.tailored ? 5 : 4),
    minutes: (garment) => (garment.made.tailored ? [180, 0] : [75, 5]),
    penalties: ['recut'],
    reseams: ['armhole'],
    excludes: butNot('sleeve-shorten-head'),
    source: 'FYG (working buttonholes: from the shoulder only); MADA (cap ease 25–38, knits 13–19); 38 and 75 MEM'
  },
  {
    id: 'sleeve-lengthen',
    direction: 'more',
    kinds: SLEEVED,
    lines: (garment) => [
      {
        point: 'sleeveLength',
        effects: sleeve(1),
        capMm: Math.max(0, garment.made.lined ? Math.min(25, garment.made.hemDepthMm - 10) : garment.made.hemDepthMm - 10),
        physicalMm: Math.max(0, garment.made.hemDepthMm - 3),
        because: limit('hem', { depth: garment.made.hemDepthMm, keep: 10 }),
        seams: [{ seam: 'hem', mmPerOffset: 1, outward: true }]
      }
    ],
    opens: (garment) => (garment.made.lined ? ['lining', 'cuff'] : ['cuff']),
    level: (garment) => (garment.made.lined ? 4 : 2),
    minutes: (garment) => [garment.made.lined ? 55 : 35, 3],
    outward: true,
    penalties: ['fade'],
    excludes: butNot('sleeve-lengthen'),
    source: 'FYG; lined jackets 25 MEM'
  },
  {
    id: 'sleeve-taper',
    direction: 'less',
    kinds: SLEEVED,
    lines: () => [
      {
        point: 'bicep',
        effects: { bicep: -1, elbow: -0.5 },
        capMm: 76,
        because: limit('elbow'),
        seams: [{ seam: 'underarm', mmPerOffset: 2 }]
      },
      {
        point: 'cuff',
        effects: { cuff: -1, elbow: -0.5 },
        capMm: 76,
        because: limit('elbow'),
        seams: [{ seam: 'underarm', mmPerOffset: 2 }]
      }
    ],
    opens: (garment) => (garment.made.lined ? ['lining', 'cuff'] : ['cuff']),
    level: (garment) => (garment.made.lined ? 4 : 2),
    minutes: (garment) => [garment.made.lined ? 50 : 30, 3],
    reseams: ['underarm'],
    source: 'THREADS (51 over the arm stays); 76 at the elbow CP'
  },
  {
    id: 'cuff-in',
    direction: 'less',
    kinds: ['shirt', 'dress', 'jumpsuit'],
    lines: () => [{ point: 'cuff', effects: { cuff: -1 }, capMm: 50, because: limit('cuff'), seams: [{ seam: 'cuff', mmPerOffset: 2 }] }],
    opens: ['cuff'],
    level: 2,
    minutes: [25, 2],
    oneOf: 'cuff',
    source: 'CP'
  }
]

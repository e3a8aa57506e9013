/**
 * How much larger than the body a garment is wanted, mm: least for wovens, then ideal and most for each fit. Sources disagree
 * (bust ease is 38–51 in one textbook, 76–102 in an extension guide), so these are defaults that the person can change.
 * Ease is a constant, not a share of the body (an assumption; one shirt table, T2, agrees).
 *
 * CWU16 Central Washington Univ. costume text, ch. 16 · NM209, NM228 New Mexico State Univ. guides C-209, C-228 ·
 * TM227 US Army TM 10-227 · TM8400 US Army TM 10-8400-201-23 · THREADS a sewing periodical, set-in sleeves, 2021 ·
 * T2 a shirt table (GB/T 1335 style) · MEM from memory.
 */
import { GARMENT_KINDS, type GarmentKind, LEGS, SHAPE } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { BodyMeasureId, Fit, Wish } from './body.ts'

export interface EaseRow {
  kinds: GarmentKind[]
  point: PointId
  /** The body measure it is set against. */
  body: BodyMeasureId
  least: number
  /** ideal, most */
  fits: Record<Wish, [number, number]>
  /** A length: least follows the fit too (it is taste, not physics). */
  leastByFit?: Record<Wish, number>
  source: string
}

const TOPS: GarmentKind[] = ['knit-top', 'jumper']

export const EASE: EaseRow[] = [
  // legs and skirts
  {
    kinds: [...LEGS, 'skirt'],
    point: 'waist',
    body: 'waistbandGirth',
    least: 0,
    fits: { close: [8, 30], regular: [19, 45], loose: [32, 65], oversized: [50, 110] },
    source: 'TM227 p. 3-11 (13), CWU16 (13–25); the edges MEM'
  },
  {
    kinds: ['trousers', 'shorts'],
    point: 'hip',
    body: 'hipGirth',
    least: 38,
    fits: { close: [44, 70], regular: [60, 100], loose: [90, 150], oversized: [130, 240] },
    source: 'CWU16 (38–51 men, 51–70 women); the edges MEM'
  },
  {
    kinds: ['jeans'],
    point: 'hip',
    body: 'hipGirth',
    least: 20,
    fits: { close: [35, 65], regular: [55, 100], loose: [90, 150], oversized: [130, 240] },
    source: 'MEM, under CWU16 as denim is worn closer'
  },
  {
    kinds: ['skirt', 'dress'],
    point: 'hip',
    body: 'hipGirth',
    least: 40,
    fits: { close: [50, 75], regular: [60, 120], loose: [110, 200], oversized: [180, 400] },
    source: 'CWU16 (51–70), a pattern-making textbook (51); the edges MEM'
  },
  {
    kinds: [...LEGS, 'jumpsuit'],
    point: 'thigh',
    body: 'thighGirth',
    least: 25,
    fits: { close: [32, 60], regular: [48, 100], loose: [90, 160], oversized: [130, 260] },
    source: 'CWU16 (25), NM209 (25–51); the edges MEM'
  },
  {
    kinds: [...LEGS, 'jumpsuit'],
    point: 'knee',
    body: 'kneeGirth',
    least: 25,
    fits: { close: [40, 90], regular: [80, 200], loose: [130, 280], oversized: [180, 360] },
    source: 'NM209 (at least 25); the rest MEM'
  },
  {
    kinds: ['trousers', 'jeans'],
    point: 'calf',
    body: 'calfGirth',
    least: 15,
    fits: { close: [25, 110], regular: [80, 220], loose: [130, 300], oversized: [180, 380] },
    source: 'MEM'
  },
  {
    kinds: ['trousers', 'jeans', 'jumpsuit'],
    point: 'inseam',
    body: 'insideLegLength',
    least: -45,
    fits: { close: [-15, 5], regular: [-15, 5], loose: [-15, 10], oversized: [-10, 30] },
    source: 'tailors on breaks of trousers (half a break; −35 to −5 in practice); mm MEM'
  },
  {
    kinds: ['trousers', 'jeans', 'shorts'],
    point: 'crotchLength',
    body: 'bandCrotchLength',
    least: 0,
    fits: { close: [15, 50], regular: [25, 70], loose: [40, 110], oversized: [60, 180] },
    source: 'a wearing-ease chart (25); the edges MEM'
  },
  // shirts
  {
    kinds: ['shirt'],
    point: 'chest',
    body: 'bustGirth',
    least: 50,
    fits: { close: [75, 135], regular: [100, 180], loose: [180, 280], oversized: [260, 420] },
    source: 'NM228 (76–102), CWU16 (38–76), T2 (about 180); the edges MEM, of a close one as a slim shirt is cut'
  },
  {
    kinds: ['shirt'],
    point: 'waist',
    body: 'waistGirth',
    least: 50,
    fits: { close: [100, 170], regular: [130, 220], loose: [200, 320], oversized: [280, 460] },
    source: 'a pattern-making textbook (51 least); the rest MEM, of a close one as a slim shirt is cut'
  },
  {
    kinds: ['shirt'],
    point: 'hem',
    body: 'hipGirth',
    least: 30,
    fits: { close: [60, 130], regular: [90, 200], loose: [160, 300], oversized: [240, 420] },
    source: 'MEM'
  },
  {
    kinds: ['shirt'],
    point: 'neck',
    body: 'neckGirth',
    least: 5,
    fits: { close: [12, 25], regular: [14, 32], loose: [20, 45], oversized: [25, 60] },
    source: 'MEM: about half an inch'
  },
  // dresses, jumpsuits
  {
    kinds: ['dress', 'jumpsuit'],
    point: 'chest',
    body: 'bustGirth',
    least: 38,
    fits: { close: [50, 75], regular: [76, 120], loose: [120, 220], oversized: [200, 400] },
    source: 'CWU16 (38–51), NM228 (76–102); the edges MEM'
  },
  {
    kinds: ['dress', 'jumpsuit'],
    point: 'waist',
    body: 'waistGirth',
    least: 19,
    fits: { close: [25, 45], regular: [40, 90], loose: [90, 220], oversized: [180, 400] },
    source: 'CWU16 (19–25); the rest MEM'
  },
  {
    kinds: ['jumpsuit'],
    point: 'hip',
    body: 'hipGirth',
    least: 40,
    fits: { close: [50, 75], regular: [60, 120], loose: [110, 200], oversized: [180, 400] },
    source: 'CWU16 (51–70); the edges MEM'
  },
  {
    kinds: ['jumpsuit'],
    point: 'torsoLength',
    body: 'trunkGirth',
    least: 51,
    fits: { close: [60, 140], regular: [100, 180], loose: [120, 260], oversized: [150, 320] },
    source: 'a wearing-ease chart (51 all round, shoulder to fork and back); the rest MEM'
  },
  // knits: `least` is replaced by what the cloth stretches
  {
    kinds: TOPS,
    point: 'chest',
    body: 'bustGirth',
    least: 0,
    fits: { close: [0, 50], regular: [60, 140], loose: [120, 220], oversized: [180, 360] },
    source: 'an ease table (60–120, relaxed knit top); the edges MEM'
  },
  {
    kinds: TOPS,
    point: 'waist',
    body: 'waistGirth',
    least: 0,
    fits: { close: [20, 90], regular: [100, 220], loose: [180, 320], oversized: [260, 460] },
    source: 'MEM'
  },
  {
    kinds: TOPS,
    point: 'hem',
    body: 'hipGirth',
    least: -60,
    fits: { close: [0, 60], regular: [30, 140], loose: [90, 220], oversized: [150, 360] },
    source: 'MEM: ribs draw in'
  },
  // tailored
  {
    kinds: ['jacket'],
    point: 'chest',
    body: 'bustGirth',
    least: 50,
    fits: { close: [80, 105], regular: [100, 145], loose: [140, 210], oversized: [200, 320] },
    source: 'TM8400 p. 9 (102), an ease table (80–120); the edges MEM'
  },
  {
    kinds: ['waistcoat'],
    point: 'chest',
    body: 'bustGirth',
    least: 30,
    fits: { close: [40, 70], regular: [60, 105], loose: [90, 150], oversized: [140, 240] },
    source: 'MEM: over a shirt and under a jacket'
  },
  {
    kinds: ['waistcoat'],
    point: 'waist',
    body: 'waistGirth',
    least: 20,
    fits: { close: [30, 60], regular: [50, 100], loose: [85, 150], oversized: [140, 240] },
    source: 'MEM: over a shirt and under a jacket'
  },
  {
    kinds: ['jacket'],
    point: 'waist',
    body: 'waistGirth',
    least: 50,
    fits: { close: [80, 120], regular: [115, 178], loose: [170, 250], oversized: [230, 360] },
    source: 'TM227 p. 3-11 (102–178), an ease table (60–100); least MEM'
  },
  {
    kinds: ['jacket'],
    point: 'hem',
    body: 'hipGirth',
    least: 40,
    fits: { close: [80, 120], regular: [100, 160], loose: [140, 230], oversized: [200, 340] },
    source: 'an ease table (80–120); the edges MEM'
  },
  {
    kinds: ['coat'],
    point: 'chest',
    body: 'bustGirth',
    least: 75,
    fits: { close: [95, 150], regular: [120, 220], loose: [180, 300], oversized: [260, 440] },
    source: 'a coat guide and a vintage sizing note (75–100 over a shirt); over a jacket see the cut; the edges MEM'
  },
  {
    kinds: ['coat'],
    point: 'waist',
    body: 'waistGirth',
    least: 75,
    fits: { close: [110, 190], regular: [140, 270], loose: [220, 350], oversized: [320, 500] },
    source: 'MEM'
  },
  {
    kinds: ['coat'],
    point: 'hip',
    body: 'hipGirth',
    least: 65,
    fits: { close: [90, 160], regular: [130, 240], loose: [200, 320], oversized: [280, 460] },
    source: 'MEM'
  },
  // shoulders, arms
  {
    kinds: ['shirt', ...TOPS, 'dress'],
    point: 'shoulderWidth',
    body: 'shoulderWidth',
    least: 0,
    leastByFit: { close: 0, regular: 0, loose: 10, oversized: 30 },
    fits: { close: [12, 30], regular: [25, 60], loose: [50, 100], oversized: [90, 180] },
    source: 'T2 set against ANSUR II: shirts sit 50–100 above the straight breadth, 15–65 above the width over the nape; the rest MEM'
  },
  {
    kinds: ['coat'],
    point: 'shoulderWidth',
    body: 'shoulderWidth',
    least: 5,
    leastByFit: { close: 0, regular: 5, loose: 10, oversized: 30 },
    fits: { close: [20, 50], regular: [32, 70], loose: [45, 100], oversized: [80, 180] },
    source: 'J. Rasband, Guidelines for a fabulous fit (1–1½ in each side over a jacket); over a shirt MEM'
  },
  {
    kinds: ['jacket'],
    point: 'shoulderWidth',
    body: 'shoulderWidth',
    least: 0,
    leastByFit: { close: 0, regular: 0, loose: 10, oversized: 30 },
    fits: { close: [15, 40], regular: [28, 55], loose: [45, 90], oversized: [80, 160] },
    source: 'J. Rasband, Guidelines for a fabulous fit (½–1 in beyond each joint: 25–50); the edges MEM'
  },
  {
    kinds: ['coat'],
    point: 'sleeveLength',
    body: 'armLength',
    least: -5,
    leastByFit: { close: -5, regular: -5, loose: -5, oversized: -20 },
    fits: { close: [18, 35], regular: [20, 40], loose: [25, 50], oversized: [25, 70] },
    source: 'MEM: as a jacket’s, and up to 15 longer to cover its cuff'
  },
  {
    kinds: ['jacket'],
    point: 'sleeveLength',
    body: 'armLength',
    least: -12,
    leastByFit: { close: -12, regular: -12, loose: -12, oversized: -20 },
    fits: { close: [3, 18], regular: [3, 18], loose: [8, 30], oversized: [10, 60] },
    source: 'tailors on sleeves (¼–½ in of the shirt shows); TM 10-227 4-11'
  },
  {
    kinds: ['shirt', ...TOPS],
    point: 'sleeveLength',
    body: 'armLength',
    least: -5,
    leastByFit: { close: -5, regular: -5, loose: -5, oversized: -20 },
    fits: { close: [10, 30], regular: [15, 40], loose: [18, 45], oversized: [20, 70] },
    source: 'CP: to the root of the thumb with a cuff; a knit to between wrist and thumb joint'
  },
  {
    kinds: ['shirt', 'dress', 'jacket'],
    point: 'bicep',
    body: 'upperArmGirth',
    least: 50,
    fits: { close: [65, 110], regular: [90, 160], loose: [130, 220], oversized: [180, 340] },
    source: 'THREADS (at least 51); the rest MEM'
  },
  {
    kinds: ['coat'],
    point: 'bicep',
    body: 'upperArmGirth',
    least: 80,
    fits: { close: [100, 150], regular: [120, 210], loose: [160, 280], oversized: [220, 380] },
    source: 'MEM'
  },
  {
    kinds: TOPS,
    point: 'bicep',
    body: 'upperArmGirth',
    least: 0,
    fits: { close: [20, 70], regular: [50, 130], loose: [90, 190], oversized: [130, 300] },
    source: 'MEM'
  },
  {
    kinds: ['shirt'],
    point: 'cuff',
    body: 'wristGirth',
    least: 20,
    fits: { close: [45, 70], regular: [60, 95], loose: [70, 110], oversized: [80, 140] },
    source: 'T2 (about 70); the edges MEM'
  }
]

const BY_KIND = new Map(GARMENT_KINDS.map((kind) => [kind, EASE.filter((row) => row.kinds.includes(kind))]))
export const easeFor = (kind: GarmentKind): readonly EaseRow[] => BY_KIND.get(kind) ?? []

/** Most ease at the hip or hem of a cut that stands away from the body: flared, circle or pleated skirts are not too big there (common practice). */
export const FREE_MM = 1200

/** Kinds that are mostly worn as they are cut: untold, the cut may be anything from regular to loose. */
const CASUAL: ReadonlySet<GarmentKind> = new Set<GarmentKind>([
  'jeans',
  'trousers',
  'shorts',
  'skirt',
  'shirt',
  'knit-top',
  'jumper',
  'coat',
  'dress',
  'jumpsuit'
])

export interface FitEdges {
  least: number
  ideal: number
  most: number
}
/** least, ideal and most of a row over the body, mm. As it is cut, with the cut not known: from regular on, and in casual kinds as far as loose. */
export function edgesFor(row: EaseRow, kind: GarmentKind, fit: Fit): FitEdges {
  const wish: Wish = fit === 'as-cut' ? 'regular' : fit
  const [ideal, most] = row.fits[wish]
  const least = row.leastByFit?.[wish] ?? row.least
  if (fit !== 'as-cut' || !CASUAL.has(kind) || row.leastByFit !== undefined || isHeld(row, kind)) return { least, ideal, most }
  return { least, ideal, most: Math.max(most, row.fits.loose[1]) }
}
/** What holds a garment up or in place is wanted alike by everyone. */
const HELD: ReadonlySet<PointId> = new Set<PointId>(['inseam', 'neck', 'sleeveLength', 'cuff'])
const isHeld = ({ point }: EaseRow, kind: GarmentKind): boolean => HELD.has(point) || (point === 'waist' && SHAPE[kind] !== 'upper')
/** The band that trousers and skirts hang from: too big for the fit asked, it falls down in any other. */
export const holdsUp = (point: PointId, kind: GarmentKind): boolean =>
  point === 'waist' && (SHAPE[kind] === 'legs' || SHAPE[kind] === 'skirt')

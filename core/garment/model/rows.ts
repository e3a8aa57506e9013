/**
 * How the measures of a garment go together, by kind and by whose sizes it is cut for: each point is a line on points before it, with the sd that
 * is left between makers. The first row of a kind is its size.
 *
 * Figures: "Joint" is a table of 1,765 finished garments out of 56 published sources (state standards, makers' size tables, pattern houses, a
 * second-hand shop's own measuring); its "use sd" is the larger of the spread inside and between sources and the error on a source left out.
 * Named is the set of garments it was fitted on, with its sources. T3 is a pattern envelope's finished jackets. What stands "from memory" says so.
 */
import type { Facet } from '../../ids/cut.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import type { Whose } from './whose.ts'

/** fair: four sources and eight designs at least; thin: fewer; borrowed: fitted on other kinds of garment alone; memory: no table. */
export type Standing = 'fair' | 'thin' | 'borrowed' | 'memory'
/**
 * A thin row is widened by a quarter (as its table advises), a borrowed one by half. On the tables of tests/reference/garment-model.test.ts that is
 * rather much: its 50 % intervals hold 68 of 100 figures, its 90 % intervals all.
 */
export const WIDENED: Record<Standing, number> = { fair: 1, thin: 1.25, borrowed: 1.5, memory: 1 }

export interface ModelRow {
  point: PointId
  at: number
  from: Partial<Record<PointId, number>>
  useSdMm: number
  standing: Standing
  source: string
  /** Cut for women or for men; not said: for both. A row for one stands before a row for both. */
  whose?: Whose
  /** Only where the waist is elastic; such a row stands before one that does not say. */
  elastic?: true
  /** Only where the sleeve is told to be long. */
  longSleeve?: true
  /** Only where the leg is told to widen from the knee; such a row stands before one that does not say. */
  widensBelow?: true
  /** Only where one of these silhouettes is told; such a row stands before one that does not say. */
  silhouettes?: readonly string[]
}
type From = ModelRow['from']
const row = (
  point: PointId,
  at: number,
  from: From,
  useSdMm: number,
  standing: Standing,
  source: string,
  more: Partial<ModelRow> = {}
): ModelRow => ({
  point,
  at,
  from,
  useSdMm,
  standing,
  source,
  ...more
})
const women = { whose: 'women' } as const
const men = { whose: 'men' } as const

const ANY_LEGGED = 'Joint: any legged, 9 sources and more'
/** What a waist and a leg make of each other, on all legs. */
const LEG_ROWS: ModelRow[] = [
  row('thigh', 96.1, { hip: 0.5253 }, 45, 'fair', 'Joint: fixed waist, legged, 8 sources'),
  row('legOpening', 77.9, { thigh: 0.5608 }, 91, 'fair', 'Joint: fixed waist, legged, 10 sources'),
  // the table has no flares: there the opening says nothing of the knee
  row('knee', 16.4, { thigh: 0.7169 }, 65, 'thin', 'Joint: fixed waist, legged, 6 sources', { widensBelow: true }),
  row('knee', -78.8, { thigh: 0.391, legOpening: 0.7325 }, 15, 'thin', 'Joint: fixed waist, legged, 6 sources'),
  row(
    'calf',
    0,
    { knee: 0.7, legOpening: 0.3 },
    12,
    'memory',
    'a third of the way from knee to opening, where the calf is widest, from memory'
  )
]
const HIP_OF_LEGS: ModelRow[] = [
  row('hip', 607, { waist: 0.6069 }, 127, 'thin', 'Joint: elastic waist, legged, 3 sources', { elastic: true }),
  row('hip', 386.3, { waist: 0.8164 }, 38, 'thin', 'Joint: fixed waist, legged, women, 4 sources', women),
  row('hip', -22, { waist: 1.2151 }, 64, 'thin', 'Joint: fixed waist, legged, men, 3 sources', men)
]
const HIP_OF_JEANS: ModelRow[] = [
  row('hip', 607, { waist: 0.6069 }, 127, 'thin', 'Joint: elastic waist, legged, 3 sources', { elastic: true }),
  row(
    'hip',
    380,
    { waist: 0.795 },
    47,
    'thin',
    'Joint: half way between jeans, 4 sources, and fixed waist, legged, women, 4 sources',
    women
  ),
  row('hip', 374, { waist: 0.7741 }, 47, 'thin', 'Joint: jeans, 4 sources')
]
const RISES: ModelRow[] = [
  row('frontRise', 132, { waist: 0.1338 }, 63, 'fair', 'Joint: any long-legged, women, 5 sources', women),
  row('frontRise', 192.4, { waist: 0.1229 }, 20, 'thin', 'Joint: any long-legged, men, 5 sources', men),
  row('backRise', 88.7, { frontRise: 0.4677, hip: 0.1686 }, 23, 'fair', ANY_LEGGED),
  row(
    'crotchLength',
    0,
    { frontRise: 1, backRise: 1 },
    10,
    'memory',
    'by its definition; a tape through the crotch lies a little otherwise, from memory'
  )
]
const long = (hip: readonly ModelRow[]): ModelRow[] => [
  row('waist', 749.2, {}, 79, 'fair', 'Joint: any long-legged, women, 6 sources', women),
  row('waist', 908.5, {}, 108, 'fair', 'Joint: any long-legged, men, 7 sources', men),
  ...hip,
  ...LEG_ROWS,
  ...RISES,
  row('inseam', 567.9, { waist: 0.1725 }, 76, 'thin', 'Joint: any long-legged, women, 2 sources', women),
  row('inseam', 727.1, { waist: 0.1221 }, 41, 'thin', 'Joint: fixed waist, legged, men, 6 sources', men),
  row('outseam', -5.4, { inseam: 1, frontRise: 1 }, 21, 'thin', 'Joint: any legged, 4 sources, slopes set to 1')
]
const SHORTS: ModelRow[] = [
  row('waist', 749.2, {}, 79, 'borrowed', 'Joint: any long-legged, women, 6 sources', women),
  row('waist', 908.5, {}, 108, 'borrowed', 'Joint: any long-legged, men, 7 sources', men),
  ...HIP_OF_LEGS,
  row('thigh', 96.1, { hip: 0.5253 }, 45, 'borrowed', 'Joint: fixed waist, legged, 8 sources'),
  row('legOpening', 20, { thigh: 0.9 }, 60, 'memory', 'a short leg is a little narrower than the thigh, from memory'),
  row('frontRise', 293.1, { waist: 0.0658 }, 48, 'thin', 'Joint: shorts, 3 sources'),
  row('backRise', 88.7, { frontRise: 0.4677, hip: 0.1686 }, 23, 'fair', ANY_LEGGED),
  row('crotchLength', 0, { frontRise: 1, backRise: 1 }, 10, 'memory', 'by its definition, from memory'),
  row('inseam', 150, {}, 60, 'memory', 'Joint: shorts, 3 sources, 104.5 + 0.05 · waist; how short is style, its sd from memory'),
  row('outseam', -5.4, { inseam: 1, frontRise: 1 }, 21, 'thin', 'Joint: any legged, 4 sources, slopes set to 1')
]
const BODY_OF_PATTERNS =
  'body sizes of US pattern catalogues: hip 10 in over waist, 2 in over bust, waist 8 in under bust (misses 12 to 20)'
/** Cut close to the hip, its hip is the body's of its size and a usual ease: the table mixes pencils with what is cut in the round. */
const CLOSE_SKIRTS = { silhouettes: ['pencil', 'bodycon', 'sheath'] }
const SKIRT: ModelRow[] = [
  row('waist', 714.5, {}, 144, 'fair', 'Joint: skirts, 5 sources'),
  row(
    'hip',
    284,
    { waist: 1 },
    45,
    'memory',
    `${BODY_OF_PATTERNS}; 30 more ease at the hip and what makers differ by, from memory`,
    CLOSE_SKIRTS
  ),
  row('hip', 516.8, { waist: 0.671 }, 90, 'thin', 'Joint: skirts, 4 sources'),
  row('skirtLength', 643.6, {}, 225, 'fair', 'Joint: skirts, 6 sources')
]
const UPPER_ALL = 'Joint: any upper garment'
const PATTERN_SIZES = `${BODY_OF_PATTERNS}; what makers differ by, from memory`
const SEWN = 'Joint: shirts'
const SLEEVES_OF_DRESSES: ModelRow[] = [
  row('shoulderWidth', 199.1, { chest: 0.2153 }, 27, 'borrowed', `${SEWN}, women, 3 sources`),
  row('sleeveLength', 530.6, { chest: 0.052 }, 52, 'borrowed', `${SEWN}, women, 3 sources`),
  row('bicep', 121.7, { chest: 0.2505 }, 22, 'borrowed', `${SEWN}, 3 sources`)
]
const DRESS: ModelRow[] = [
  row('chest', 880, {}, 150, 'memory', 'between a shop’s own measuring (805) and pattern houses (990), from memory'),
  row('waist', -203, { chest: 1 }, 60, 'memory', PATTERN_SIZES, CLOSE_SKIRTS),
  row('waist', -262.7, { chest: 1.1159 }, 112, 'thin', 'Joint: dresses, 4 sources'),
  row('hip', 51, { chest: 1 }, 45, 'memory', PATTERN_SIZES, CLOSE_SKIRTS),
  row('hip', 51, { chest: 1 }, 75, 'memory', PATTERN_SIZES),
  ...SLEEVES_OF_DRESSES,
  row('bodyLength', 908, {}, 198, 'fair', 'Joint: dresses, 6 sources')
]
const FROM_CENTRE_BACK = row(
  'sleeveFromCentreBack',
  0,
  { sleeveLength: 1, shoulderWidth: 0.5 },
  10,
  'memory',
  'by its definition: half the shoulders and the sleeve, from memory'
)
const SHOULDER_OF_UPPER: ModelRow[] = [
  row('shoulderWidth', 120.1, { chest: 0.2853 }, 41, 'fair', `${UPPER_ALL}, women, 6 sources`, women),
  row('shoulderWidth', 227.2, { chest: 0.2274 }, 20, 'thin', `${UPPER_ALL}, men, 6 sources`, men)
]
const WAIST_OF_UPPER = row('waist', 57.2, { chest: 0.9058 }, 81, 'thin', `${UPPER_ALL}, 5 sources`)
const HIP_OF_UPPER = row('hip', -174.7, { chest: 1.1969 }, 94, 'fair', `${UPPER_ALL}, 4 sources`)
const SHIRT: ModelRow[] = [
  row('chest', 936.7, {}, 163, 'fair', 'Joint: shirts, women, 6 sources', women),
  row('chest', 1219, {}, 112, 'fair', 'Joint: shirts, men, 5 sources', men),
  WAIST_OF_UPPER,
  HIP_OF_UPPER,
  // the table's hems are half of cropped tops; one that reaches the hip is cut for it
  row('hem', -174.7, { chest: 1.1969 }, 94, 'fair', `${UPPER_ALL}, 4 sources, its hip`, women),
  row('hem', 79.8, { chest: 0.897 }, 34, 'thin', `${UPPER_ALL}, men, 2 sources`, men),
  row('shoulderWidth', 199.1, { chest: 0.2153 }, 27, 'thin', 'Joint: shirts, women, 3 sources', women),
  row('shoulderWidth', 156.8, { chest: 0.2765 }, 14, 'thin', 'Joint: shirts, men, 3 sources', men),
  row('sleeveLength', 530.6, { chest: 0.052 }, 52, 'thin', 'Joint: shirts, women, 3 sources', women),
  row('sleeveLength', 423.6, { chest: 0.1662 }, 36, 'thin', 'Joint: shirts, men, 3 sources', men),
  row('bicep', 121.7, { chest: 0.2505 }, 22, 'thin', 'Joint: shirts, 3 sources'),
  row('cuff', -39.2, { chest: 0.2519 }, 60, 'fair', 'Joint: shirts, 4 sources'),
  row('neck', 137.3, { chest: 0.2225 }, 12, 'thin', 'Joint: shirts, 5 sources'),
  row('bodyLength', 532.5, { chest: 0.0875 }, 67, 'fair', 'Joint: shirts, women, 6 sources', women),
  row('bodyLength', 534.7, { chest: 0.2229 }, 42, 'thin', 'Joint: shirts, men, 4 sources', men),
  FROM_CENTRE_BACK
]
const KNIT_TOP: ModelRow[] = [
  row('chest', 932.9, {}, 196, 'fair', 'Joint: knit tops, women, 6 sources', women),
  row('chest', 1071, {}, 126, 'fair', 'Joint: knit tops, men, 9 sources', men),
  WAIST_OF_UPPER,
  HIP_OF_UPPER,
  row('hem', -132.2, { chest: 1.1185 }, 53, 'fair', 'Joint: knit tops, 4 sources'),
  row('shoulderWidth', -75.9, { chest: 0.5243 }, 51, 'thin', 'Joint: knit tops, 5 sources'),
  row('sleeveLength', 457.6, { chest: 0.1496 }, 43, 'thin', 'Joint: knit tops with long sleeves, 3 sources', { longSleeve: true }),
  row('bicep', -100.9, { chest: 0.5017 }, 72, 'thin', 'Joint: knit tops, 3 sources'),
  row('bodyLength', 495.3, { chest: 0.1021 }, 104, 'fair', 'Joint: knit tops, women, 6 sources', women),
  row('bodyLength', 513.4, { chest: 0.1842 }, 37, 'thin', 'Joint: knit tops, men, 9 sources', men)
]
const JUMPER: ModelRow[] = [
  row('chest', 956.6, {}, 242, 'fair', 'Joint: jumpers, women, 7 sources', women),
  row('chest', 1197.6, {}, 152, 'thin', 'Joint: jumpers, men, 1 source', men),
  WAIST_OF_UPPER,
  HIP_OF_UPPER,
  row('hem', -191.5, { chest: 1.1432 }, 132, 'fair', `${UPPER_ALL}, 7 sources`, women),
  row('hem', 79.8, { chest: 0.897 }, 34, 'thin', `${UPPER_ALL}, men, 2 sources`, men),
  ...SHOULDER_OF_UPPER,
  row('sleeveLength', 477.1, { chest: 0.1081 }, 54, 'fair', `${UPPER_ALL}, women, 4 sources`, women),
  row('sleeveLength', 519, { chest: 0.0869 }, 31, 'fair', `${UPPER_ALL}, men, 7 sources`, men),
  row('bicep', 21.2, { chest: 0.3565 }, 70, 'fair', 'Joint: jumpers, women, 3 sources', women),
  row('bicep', 75.7, { chest: 0.3136 }, 58, 'thin', `${UPPER_ALL}, men, 4 sources`, men),
  row('bodyLength', 566.4, { chest: 0.0278 }, 68, 'fair', 'Joint: jumpers, women, 6 sources', women),
  row('bodyLength', 469.1, { chest: 0.2368 }, 47, 'borrowed', `${UPPER_ALL}, men, 17 sources`, men),
  FROM_CENTRE_BACK
]
const JACKET: ModelRow[] = [
  row('chest', 1124, {}, 117, 'thin', 'Joint: jackets, women, 1 source', women),
  row('chest', 1245.9, {}, 151, 'thin', 'Joint: jackets, men, 3 sources', men),
  row('waist', 84.5, { chest: 0.8055 }, 81, 'thin', 'Joint: any outer garment, 2 sources; its sd that of any upper garment'),
  row(
    'hem',
    -20.7,
    { chest: 1.07 },
    60,
    'memory',
    'T3, women’s; a man’s about as wide as its chest or 25 over: the line lies between, from memory'
  ),
  HIP_OF_UPPER,
  ...SHOULDER_OF_UPPER,
  row('sleeveLength', 641.5, { chest: -0.0185 }, 32, 'thin', 'Joint: jackets, 3 sources'),
  row('bicep', 75.7, { chest: 0.3136 }, 58, 'thin', `${UPPER_ALL}, men, 4 sources`),
  row('bodyLength', 479.9, { chest: 0.2275 }, 59, 'fair', 'Joint: jackets, 6 sources'),
  FROM_CENTRE_BACK
]
const COAT: ModelRow[] = [
  row('chest', 1147, {}, 219, 'thin', 'Joint: coats, women, 2 sources', women),
  row('chest', 1245.9, {}, 151, 'borrowed', 'Joint: jackets, men, 3 sources', men),
  row('waist', 84.5, { chest: 0.8055 }, 81, 'thin', 'Joint: any outer garment, 2 sources; its sd that of any upper garment'),
  row('hip', -43.6, { chest: 1.1236 }, 94, 'thin', 'Joint: any outer garment, 2 sources; its sd that of any upper garment'),
  row('hem', -191.5, { chest: 1.1432 }, 132, 'borrowed', `${UPPER_ALL}, 7 sources`),
  row('shoulderWidth', 44.6, { chest: 0.3706 }, 75, 'thin', 'Joint: any outer garment, 4 sources'),
  row('sleeveLength', 567.1, { chest: 0.0435 }, 34, 'thin', 'Joint: any outer garment, 4 sources'),
  row('bicep', 75.7, { chest: 0.3136 }, 58, 'borrowed', `${UPPER_ALL}, men, 4 sources`),
  row('bodyLength', 1100, {}, 190, 'memory', 'Joint: any outer garment, 8 sources, 861 with jackets; coats alone from memory'),
  FROM_CENTRE_BACK
]
const WAISTCOAT: ModelRow[] = [
  row('chest', 990, {}, 215, 'borrowed', `${UPPER_ALL}, women, 17 sources`, women),
  row('chest', 1159, {}, 162, 'borrowed', `${UPPER_ALL}, men, 18 sources`, men),
  row('waist', 84.5, { chest: 0.8055 }, 81, 'borrowed', 'Joint: any outer garment, 2 sources; its sd that of any upper garment'),
  ...SHOULDER_OF_UPPER,
  row('bodyLength', 600, {}, 70, 'memory', 'from memory')
]
const JUMPSUIT: ModelRow[] = [
  row('chest', 880, {}, 150, 'memory', 'as dresses'),
  row('waist', -262.7, { chest: 1.1159 }, 112, 'borrowed', 'Joint: dresses, 4 sources'),
  row('hip', 51, { chest: 1 }, 75, 'memory', PATTERN_SIZES),
  ...LEG_ROWS.filter(({ point }) => point !== 'calf').map((one): ModelRow => ({ ...one, standing: 'borrowed' })),
  row('inseam', 700, {}, 76, 'borrowed', 'Joint: any long-legged, women, 2 sources'),
  ...SLEEVES_OF_DRESSES
]

/** By kind; in each, points stand after those that their lines start from. */
export const MODEL_ROWS: Partial<Record<GarmentKind, readonly ModelRow[]>> = {
  trousers: long(HIP_OF_LEGS),
  jeans: long(HIP_OF_JEANS),
  shorts: SHORTS,
  skirt: SKIRT,
  dress: DRESS,
  jumpsuit: JUMPSUIT,
  shirt: SHIRT,
  'knit-top': KNIT_TOP,
  jumper: JUMPER,
  jacket: JACKET,
  coat: COAT,
  waistcoat: WAISTCOAT
}

/** What a told facet of the cut moves a line by, mm (the table's own note: hips part by cut). */
const ROUND = 'a skirt cut in the round, a radius of cloth more (geometry); how full the others are, from memory'
export interface CutShift {
  kinds: readonly GarmentKind[]
  facet: Facet
  values: readonly string[]
  point: PointId
  shiftMm: number
  /** How much of it is doubt, mm (sd). */
  doubtMm?: number
  source: string
}
const HIPS_PART = 'Joint, note on hips: slim and straight legs 35 to 65 below the rule, wide and low ones on it or up to 65 above'
/** So much fuller, and half of that is doubt: a full skirt tells little of the waist it hangs from. */
const full = (kinds: GarmentKind[], values: string[], point: PointId, shiftMm: number): CutShift => ({
  kinds,
  facet: 'silhouette',
  values,
  point,
  shiftMm,
  doubtMm: shiftMm / 2,
  source: ROUND
})
export const CUT_SHIFTS: readonly CutShift[] = [
  { kinds: ['trousers'], facet: 'leg', values: ['skinny', 'slim', 'straight'], point: 'hip', shiftMm: -35, source: HIPS_PART },
  { kinds: ['trousers'], facet: 'leg', values: ['wide', 'palazzo', 'relaxed'], point: 'hip', shiftMm: 30, source: HIPS_PART },
  { kinds: ['jeans'], facet: 'leg', values: ['wide', 'palazzo', 'relaxed', 'barrel'], point: 'hip', shiftMm: 65, source: HIPS_PART },
  { kinds: ['trousers', 'jeans'], facet: 'rise', values: ['low', 'ultra-low'], point: 'hip', shiftMm: 30, source: HIPS_PART },
  full(['skirt'], ['circle'], 'hip', 900),
  full(['skirt'], ['gathered', 'pleated', 'puffball'], 'hip', 350),
  full(['skirt'], ['flared', 'bias'], 'hip', 120),
  full(['skirt'], ['a-line', 'wrap'], 'hip', 60),
  full(['dress', 'jumpsuit'], ['fit-flare', 'sun', 'swing'], 'hip', 350),
  full(['dress'], ['smock', 'shift', 'a-line', 'empire', 'cocoon'], 'hip', 130),
  full(['dress'], ['smock', 'shift', 'swing', 'cocoon', 'empire'], 'waist', 130)
]

/**
 * Where a told facet puts a point, mm, give or take (sd). `instead`: a short sleeve is no long one that is a little shorter, so it stands instead of the
 * point's row; else it is one thing more that is known of it, and of what goes with it: legs that open wide are wide above.
 */
export interface CutFigure {
  facet: Facet
  value: string
  point: PointId
  mm: number
  sdMm: number
  instead?: true
  source: string
}
const OPENINGS = 'openings of legs by shape as shops and dictionaries of dress give them (leaf.tv; heddels.com; bigwritehook.co.uk)'
const LEG_OF = 'shares of a body’s inside leg (from memory), of 770'
const opening = (value: string, mm: number, sdMm: number): CutFigure => ({
  facet: 'leg',
  value,
  point: 'legOpening',
  mm,
  sdMm,
  source: OPENINGS
})
const inseam = (value: string, mm: number, sdMm: number): CutFigure => ({
  facet: 'legLength',
  value,
  point: 'inseam',
  mm,
  sdMm,
  instead: true,
  source: LEG_OF
})
const sleeve = (value: string, mm: number, sdMm: number): CutFigure => ({
  facet: 'sleeve',
  value,
  point: 'sleeveLength',
  mm,
  sdMm,
  instead: true,
  source: 'Joint: knit tops with short sleeves 205 to 241; the others from memory'
})
export const CUT_FIGURES: readonly CutFigure[] = [
  opening('skinny', 290, 30),
  opening('slim', 340, 30),
  opening('straight', 400, 35),
  opening('tapered', 350, 30),
  opening('relaxed', 430, 55),
  opening('bootcut', 480, 30),
  opening('flared', 610, 50),
  opening('wide', 560, 60),
  opening('palazzo', 700, 80),
  opening('barrel', 390, 45),
  inseam('ankle', 660, 40),
  inseam('seven-eighths', 650, 40),
  inseam('cropped', 600, 55),
  inseam('capri', 500, 50),
  inseam('pedal', 385, 40),
  inseam('bermuda', 270, 45),
  sleeve('cap', 110, 30),
  sleeve('short', 225, 35),
  sleeve('elbow', 320, 40),
  sleeve('three-quarter', 430, 45),
  sleeve('bracelet', 500, 40)
]

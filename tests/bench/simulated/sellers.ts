/** Sellers: how carefully they measure, what they tell, and what nobody sees from outside. */
import { about, chance, type Figures, heavy, normal, oneOf, type Random } from './chance.ts'
import { type Garment, isAlong } from './garments.ts'
import type { Kind } from './makers.ts'
import type { Sex } from './survey.ts'

export const GRADES = ['careful', 'average', 'careless'] as const
export type Grade = (typeof GRADES)[number]

interface Tape {
  /** sd of a girth, around, mm; and along. */
  around: number
  along: number
  /** What is read off: so many mm flat or along. */
  readTo: number
  /** A figure that is wrong altogether: a digit, flat for around, another place. */
  slips: number
  /** A waistband that is pulled out while it is measured. */
  pulls: number
}
/** From memory; bounds: makers' own people err by some 13 around (tolerances of finished garments), one tape and the next by 2 to 19 (Barrios 2016). */
const TAPES: Record<Grade, Tape> = {
  careful: { around: 8, along: 5, readTo: 5, slips: 0.003, pulls: 0 },
  average: { around: 12, along: 7, readTo: 5, slips: 0.01, pulls: 0.05 },
  careless: { around: 17, along: 10, readTo: 12.7, slips: 0.03, pulls: 0.15 }
}
const HABIT_SHARE = 0.3
const FREEDOM = 5

export interface Seller {
  grade: Grade
  /** This seller's own way with a tape, in sd: every figure shares it. */
  habit: number
}
export const sellerOf = (random: Random, grade: Grade): Seller => ({ grade, habit: heavy(random, FREEDOM) })

export function byTape(random: Random, point: string, mm: number, { grade, habit }: Seller): number {
  const tape = TAPES[grade]
  const along = isAlong(point)
  const sd = along ? tape.along : tape.around
  let seen = mm + sd * (Math.sqrt(HABIT_SHARE) * habit + Math.sqrt(1 - HABIT_SHARE) * heavy(random, FREEDOM))
  if (point === 'waist' && chance(random, tape.pulls)) seen += Math.abs(normal(random, 30, 15))
  const step = along ? tape.readTo : 2 * tape.readTo
  const read = Math.max(step, Math.round(seen / step) * step)
  if (!chance(random, tape.slips)) return read
  const slip = oneOf(random, { digit: 0.4, flat: 0.25, place: 0.35 })
  if (slip === 'digit') return read + (chance(random, 0.5) ? 1 : -1) * (along ? 50 : 100)
  if (slip === 'flat' && !along) return chance(random, 0.5) ? 2 * read : read / 2
  return read + Math.round(normal(random, 0, along ? 40 : 60) / step) * step
}

/** How many listings tell each point (from memory of real ones: legs rarely tell a hip or a thigh, tops little but chest and length). */
const LEGS = { waist: 0.95, frontRise: 0.75, inseam: 0.9, hip: 0.22, thigh: 0.2, legOpening: 0.45, knee: 0.04, backRise: 0.08 }
const KNIT = { chest: 0.97, bodyLength: 0.93, shoulderWidth: 0.35, sleeveLength: 0.45, waist: 0.08, hem: 0.1, bicep: 0.02 }
const SHIRT = { ...KNIT, shoulderWidth: 0.5, sleeveLength: 0.5, waist: 0.12, cuff: 0.04 }
const TELLS: Record<Kind, Record<Sex, Record<string, number>>> = {
  trousers: { women: { ...LEGS, hip: 0.32 }, men: LEGS },
  jeans: { women: LEGS, men: LEGS },
  skirt: { women: { waist: 0.97, skirtLength: 0.92, hip: 0.25, sweep: 0.1 }, men: {} },
  dress: { women: { chest: 0.95, waist: 0.85, bodyLength: 0.92, hip: 0.5, shoulderWidth: 0.3, sleeveLength: 0.35, bicep: 0.02 }, men: {} },
  shirt: { women: { ...SHIRT, neck: 0.04 }, men: { ...SHIRT, neck: 0.45 } },
  'knit-top': { women: KNIT, men: KNIT },
  jumper: { women: KNIT, men: KNIT },
  jacket: {
    women: { chest: 0.97, shoulderWidth: 0.75, sleeveLength: 0.8, bodyLength: 0.93, waist: 0.35, hem: 0.1 },
    men: { chest: 0.97, shoulderWidth: 0.8, sleeveLength: 0.85, bodyLength: 0.93, waist: 0.3, hem: 0.05 }
  }
}
export const tellsPoint = (random: Random, kind: Kind, sex: Sex, point: string): boolean => chance(random, TELLS[kind][sex][point] ?? 0)

/** Facets that are said or seen in the pictures: sleeves always, outlines and legs mostly (from memory). */
const SHOWS: Record<string, number> = { sleeve: 1, silhouette: 0.9, leg: 0.6, legLength: 0.6 }
export const cutTold = (random: Random, cut: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(cut).filter(([facet]) => chance(random, SHOWS[facet] ?? 0)))

export interface ClothTold {
  structure?: 'woven' | 'knit'
  fibres?: { fibre: string; percent: number | null }[]
  stretchPercent?: number
}
/** Fibres are told half of the time. */
export const clothTold = (random: Random, garment: Garment): ClothTold => (chance(random, 0.5) ? fibresOf(garment) : {})
export function fibresOf({ cloth: { structure, elastane } }: Pick<Garment, 'cloth'>): ClothTold {
  const most = { fibre: structure === 'knit' ? 'viscose' : 'cotton', percent: 100 - elastane }
  return { structure, fibres: elastane > 0 ? [most, { fibre: 'elastane', percent: elastane }] : [most] }
}
/** Asked how far it stretches: by hand, over twice of what it gives in wear, to the nearest five. */
export const stretchTold = (random: Random, { cloth }: Pick<Garment, 'cloth'>): number =>
  Math.max(0, Math.round((cloth.usable * 250 * (1 + normal(random, 0, 0.25))) / 5) * 5)

/** Allowances and hems, middles from memory of how such things are made: seams, the back seam's outlet, all that is turned up. */
const MAKE: Record<Kind, { seam: number; outlet: number; hem: number; overlap: number }> = {
  trousers: { seam: 11, outlet: 22, hem: 38, overlap: 38 },
  jeans: { seam: 11, outlet: 0, hem: 16, overlap: 40 },
  skirt: { seam: 13, outlet: 14, hem: 36, overlap: 28 },
  dress: { seam: 12, outlet: 12, hem: 26, overlap: 20 },
  shirt: { seam: 9, outlet: 0, hem: 12, overlap: 25 },
  'knit-top': { seam: 7, outlet: 0, hem: 20, overlap: 20 },
  jumper: { seam: 7, outlet: 0, hem: 20, overlap: 20 },
  jacket: { seam: 12, outlet: 18, hem: 38, overlap: 58 }
}
const SPREAD = { seam: 0.3, outlet: 0.5, hem: 0.35, overlap: 0.25 }

export function makeOf(random: Random, kind: Kind, { sleeves }: Pick<Garment, 'sleeves'>): Record<string, number | boolean> {
  const usual = MAKE[kind]
  const make: Record<string, number | boolean> = {
    seamAllowanceMm: about(random, usual.seam, SPREAD.seam),
    outletMm: about(random, usual.outlet, SPREAD.outlet),
    hemDepthMm: about(random, usual.hem, SPREAD.hem),
    overlapMm: about(random, usual.overlap, SPREAD.overlap)
  }
  if (kind === 'trousers' || kind === 'jeans')
    Object.assign(make, { backPocketGapMm: about(random, 140, 0.2), backSeam: !chance(random, 0.03) })
  if (kind === 'jeans') make.felledSeams = chance(random, 0.5)
  if (kind === 'skirt' || kind === 'dress')
    Object.assign(make, { backSeam: chance(random, 0.4), darts: !chance(random, 0.3), lined: chance(random, 0.3) })
  if (kind === 'jacket')
    Object.assign(make, { backSeam: !chance(random, 0.15), workingCuffButtons: chance(random, 0.12), lined: !chance(random, 0.15) })
  if (!sleeves && (kind === 'dress' || kind === 'knit-top')) make.shortSleeves = true
  return make
}
/** What of the make is told unasked; short sleeves show. */
export const makeTold = (random: Random, make: Record<string, number | boolean>): Record<string, number | boolean> =>
  Object.fromEntries(Object.entries(make).filter(([fact]) => fact === 'shortSleeves' || chance(random, 0.12)))

export const measured = (random: Random, kind: Kind, sex: Sex, figures: Figures, seller: Seller): Figures =>
  Object.fromEntries(
    Object.entries(figures)
      .filter(([point]) => tellsPoint(random, kind, sex, point))
      .map(([point, mm]) => [point, byTape(random, point, mm, seller)])
  )

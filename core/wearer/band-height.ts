/**
 * Where the band of trousers sits, and what the wearer measures there. The front rise alone places it: how far below the navel it ends. The girth
 * runs from the natural waist to the hip along share(d) = 1 − (1 − d/D)^1.6, d below the natural waist, D from there to the hip.
 *
 * A2: lines over ANSUR II (US Army 2012; 1,986 women, 4,082 men), worked out for this table. BD: over Heinz, Peterson, Johnson and Kerk 2003,
 * Exploring relationships in body dimensions, J. Statistics Education 11(2) (260 women, 247 men). CP common practice, MEM from memory.
 */

import { isCut } from '../garment/cut.ts'
import { type Garment, isTold } from '../garment/garment-as-worn.ts'
import { table } from '../ids/table.ts'
import type { Saying } from '../words/reason.ts'
import type { Sex } from './body.ts'
import { type BodyTaken, sexesOf, type WholeBody } from './whole-body.ts'

interface Levels {
  /** The front rise that reaches the navel: room in the fork and the body's own front fork length; intercept, stature, hip (A2; room 8 and 35 MEM). */
  navelRise: [number, number, number]
  /** Round the fork from navel to navel (A2), and the room in it. */
  whole: [number, number, number]
  roomMm: number
  /** The natural waist above the navel (A2). */
  waistAboveNavelMm: number
  /** From the natural waist down to the hip: intercept, stature (A2). */
  toHip: [number, number]
  /** Where a band is usually worn: below the natural waist (women at the top of the hip bone, men 25 below the navel; CP). */
  wornMm: number
  /** Of the way from waist to hip, sd of the girth at one height (BD). */
  shapeSd: number
}
const LEVELS: Record<Sex, Levels> = {
  women: {
    navelRise: [27, 0.038, 0.194],
    whole: [52, 0.157, 0.307],
    roomMm: 25,
    waistAboveNavelMm: 46,
    toHip: [-5.5, 0.121],
    wornMm: 40,
    shapeSd: 0.18
  },
  men: {
    navelRise: [1, 0.001, 0.293],
    whole: [-7, 0.129, 0.395],
    roomMm: 60,
    waistAboveNavelMm: 35,
    toHip: [18.2, 0.105],
    wornMm: 60,
    shapeSd: 0.3
  }
}
const POWER = 1.6
/** The back of a band hangs less than its front (CP). */
const BACK_SHARE = 0.7
const RISE_SD_MM = 25
/** What a word alone says of the band, mm below the natural waist (edges CP; names of a shop guide). */
const BY_WORD = table<number>({ 'ultra-low': 140, low: 95, mid: 70, high: 25, waist: 0 })
const WORD_SD_MM = 20
/** Nearer than this to where the wearer's own band sits, it is the same place: a rise places it no better. */
const SAME_MM = 25
/** By the wearer's own fork length it is placed better. */
const SAME_BY_OWN_MM = 6
/** Bands are bought snug on soft flesh: below the waist they lie up to so much of the girth under the tape (250 second-hand pairs of one size). */
const SNUG = 0.04
const SNUG_FROM_MM = 60
/** A band this near under the natural waist rides up to it where it is too small for the girth below (common practice). */
const RIDES_UP_MM = 25

export interface BandTaken extends BodyTaken {
  because: Saying[]
  /** How much under the girth the band may lie without being too small, mm. */
  snugMm: number
  /** How far below the natural waist it sits, mm. */
  belowMm: number
}
export interface BandDrop {
  /** Below the navel, mm: the front edge, and the mean of front and back. */
  frontMm: number
  meanMm: number
  sdMm: number
}

const line = ([intercept, byStature, byHip]: [number, number, number], stature: number, hip: number): number =>
  intercept + byStature * stature + byHip * hip
export const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
export const halfApart = (values: readonly number[]): number => (Math.max(...values) - Math.min(...values)) / 2

/** How far below the navel the band lies, by its rise; undefined where no rise, stature or hip is told. */
export function bandDrop(garment: Garment, body: WholeBody): BandDrop | undefined {
  const front = garment.points.get('frontRise')
  const back = garment.points.get('backRise')
  const stature = body.get('stature')
  const hip = body.get('hipGirth')
  if (!isTold(front) || stature === undefined || hip === undefined) return undefined
  const sexes = sexesOf(body.sizes)
  const fronts = sexes.map((sex) => line(LEVELS[sex].navelRise, stature.mm, hip.mm) - front.mm)
  const means = isTold(back)
    ? sexes.map((sex) => (line(LEVELS[sex].whole, stature.mm, hip.mm) + LEVELS[sex].roomMm - front.mm - back.mm) / 2)
    : fronts.map((mm) => BACK_SHARE * mm)
  return { frontMm: mean(fronts), meanMm: mean(means), sdMm: Math.hypot(RISE_SD_MM, front.sdMm, halfApart(means)) }
}

/** Ease along the crotch, where it is set against the wearer's own fork length (a wearing-ease chart: 1 in). */
const CROTCH_EASE_MM = 25
/** How much higher than the wearer's own band it sits by their own fork length, mm; undefined: not told. */
function higherThanOwn(garment: Garment, body: WholeBody): number | undefined {
  const crotch = garment.points.get('crotchLength')
  const own = body.get('bandCrotchLength')
  return isTold(crotch) && own !== undefined && own.basedOn.length === 0 ? (crotch.mm - CROTCH_EASE_MM - own.mm) / 2 : undefined
}
/** How far below the natural waist the wearer's own band sits: half of what the fork lengths to both lie apart, else as usual. */
function ownBandAt(body: WholeBody, usualMm: number): number {
  const [whole, band] = [body.get('totalCrotchLength'), body.get('bandCrotchLength')]
  if (whole === undefined || band === undefined || whole.basedOn.length > 0 || band.basedOn.length > 0) return usualMm
  return Math.max(0, (whole.mm - band.mm) / 2)
}

/** From the natural waist down to the hip, mm; where no stature is told, the survey's mean. */
const lengthToHip = (sex: Sex, stature: number | undefined): number => {
  const [intercept, byStature] = LEVELS[sex].toHip
  return stature === undefined ? (sex === 'women' ? 192 : 203) : intercept + byStature * stature
}

/** Girth at d below the natural waist, through (0, waist), (D, hip) and, where told, the wearer's own band. */
function girthAt(d: number, toHip: number, waist: number, hip: number, own?: { d: number; mm: number }): number {
  const along = (share: number) => 1 - (1 - Math.min(1, Math.max(0, share))) ** POWER
  if (own === undefined || own.d <= 0) return waist + along(d / toHip) * (hip - waist)
  return d <= own.d ? waist + along(d / own.d) * (own.mm - waist) : own.mm + along((d - own.d) / (toHip - own.d)) * (hip - own.mm)
}

/** Where a band sits below the natural waist by its rise, else by the word for its rise, else as usual, mm. */
const placed = (drop: BandDrop | undefined, levels: Levels, word: string | undefined): number =>
  drop === undefined ? (BY_WORD[word ?? 'mid'] ?? levels.wornMm) : Math.max(0, drop.meanMm + levels.waistAboveNavelMm)

/** undefined: neither the rise nor a word places the band, so that it is worn where the wearer wears one. */
export function girthAtBand(garment: Garment, body: WholeBody): BandTaken | undefined {
  const drop = bandDrop(garment, body)
  const higher = higherThanOwn(garment, body)
  const word = garment.cut.rise
  const own = body.get('waistbandGirth')
  const toldOwn = own !== undefined && own.basedOn.length === 0
  const waist = body.get('waistGirth')
  const hip = body.get('hipGirth')
  // children's bands are cut for the waist (common practice), and a child's heights were not surveyed
  if (waist === undefined || hip === undefined || body.sizes === 'children') return undefined
  if (drop === undefined && higher === undefined && toldOwn && !isCut(garment.cut, 'rise', 'ultra-low', 'low', 'high', 'waist'))
    return undefined
  const stature = body.get('stature')?.mm
  const sexes = sexesOf(body.sizes)
  const each = sexes.map((sex) => {
    const levels = LEVELS[sex]
    const toHip = lengthToHip(sex, stature)
    const ownAt = ownBandAt(body, levels.wornMm)
    const d = toldOwn && higher !== undefined ? Math.max(0, ownAt - higher) : placed(drop, levels, word?.value)
    const band = toldOwn && own !== undefined ? { d: ownAt, mm: own.mm } : undefined
    const mm = girthAt(d, toHip, waist.mm, hip.mm, band)
    const step = girthAt(d + 10, toHip, waist.mm, hip.mm, band) - mm
    const shape = band === undefined ? levels.shapeSd * Math.abs(hip.mm - waist.mm) : 0
    return { d, mm, off: d - ownAt, sdMm: Math.hypot(shape, (step / 10) * (drop?.sdMm ?? WORD_SD_MM)) }
  })
  const d = mean(each.map((one) => one.d))
  const off = mean(each.map((one) => one.off))
  if (toldOwn && own !== undefined && Math.abs(off) < (higher === undefined ? SAME_MM : SAME_BY_OWN_MM)) return undefined
  const mm = mean(each.map((one) => one.mm))
  const from = toldOwn && own !== undefined ? own : waist
  return {
    mm,
    sdMm: Math.hypot(from.sdMm, Math.sqrt(mean(each.map((one) => one.sdMm ** 2))), halfApart(each.map((one) => one.mm))),
    basedOn: from.basedOn,
    because: toldOwn ? [{ code: off > 0 ? 'target.band-lower' : 'target.band-higher', values: { mm: Math.abs(off) }, point: 'waist' }] : [],
    snugMm: d <= RIDES_UP_MM ? Math.max(0, mm - waist.mm) : SNUG * mm * Math.min(1, d / SNUG_FROM_MM),
    belowMm: d
  }
}

/** A skirt hangs at the natural waist or a little lower, so far off as heights of levels spread (A2). */
const SKIRT_LEVEL_SD_MM = 20

/** How far the girth where a skirt's band hangs may lie from the one it is judged by, mm (sd): it widens from the natural waist to the hip. */
export function skirtBandSd(body: WholeBody): number {
  const [waist, hip] = [body.get('waistGirth'), body.get('hipGirth')]
  if (waist === undefined || hip === undefined || body.sizes === 'children') return 0
  const stature = body.get('stature')?.mm
  const toHip = mean(sexesOf(body.sizes).map((sex) => lengthToHip(sex, stature)))
  return girthAt(SKIRT_LEVEL_SD_MM, toHip, waist.mm, hip.mm) - waist.mm
}

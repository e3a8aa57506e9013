/**
 * Where the band of trousers sits, and what the wearer measures there. The rise puts it: front and back rise together are the garment's crotch
 * length, which less its ease is the length from band to band through the fork on the body. The girth there is read on the line through
 * (band to band, waistband) and (waist to waist, natural waist), never above the natural waist, and towards the hip below the band.
 */
import type { Garment } from '../garment/garment-as-worn.ts'
import type { Saying } from '../words/reason.ts'
import type { BodyTaken, WholeBody } from './whole-body.ts'

/** Ease along the crotch (a wearing-ease chart: 1 in). */
const CROTCH_EASE_MM = 25
/** The hip lies this much further down from a worn band, front and back together (common practice: 150 each). */
const BAND_TO_HIP_MM = 300
/** With one pair only the slope is a guess: so many mm of girth for each mm of rise are doubt (from memory). */
const SLOPE_DOUBT = 0.25
/** Nearer than this the band sits where it is worn. */
const SAME_MM = 12

export interface BandTaken extends BodyTaken {
  because: Saying[]
}

/** undefined: the rise, or where the wearer wears a band, is not told. */
export function girthAtBand(garment: Garment, body: WholeBody): BandTaken | undefined {
  const crotch = garment.points.get('crotchLength')
  const band = body.get('waistbandGirth')
  const bandAt = body.get('bandCrotchLength')
  if (crotch === undefined || band === undefined || bandAt === undefined || band.basedOn.length > 0) return undefined
  const at = crotch.mm - CROTCH_EASE_MM
  const off = at - bandAt.mm
  if (Math.abs(off) < SAME_MM) return undefined
  const waist = body.get('waistGirth')
  const waistAt = body.get('totalCrotchLength')
  const hip = body.get('hipGirth')
  const because: Saying[] = [
    { code: off > 0 ? 'target.band-higher' : 'target.band-lower', values: { mm: Math.abs(off) / 2 }, point: 'waist' }
  ]
  const heightSd = Math.hypot(crotch.sdMm, bandAt.sdMm)
  const toldWaist =
    waist !== undefined &&
    waistAt !== undefined &&
    waist.basedOn.length === 0 &&
    waistAt.basedOn.length === 0 &&
    waistAt.mm - bandAt.mm > SAME_MM
  if (off > 0 && !toldWaist) {
    because.push({ code: 'target.one-pair', values: {}, point: 'waist' })
    return { mm: band.mm, sdMm: Math.hypot(band.sdMm, SLOPE_DOUBT * off), basedOn: band.basedOn, because }
  }
  const [otherMm, otherAt] = off > 0 && toldWaist ? [waist.mm, waistAt.mm] : [hip?.mm ?? band.mm, bandAt.mm - BAND_TO_HIP_MM]
  const share = Math.min(1, off / (otherAt - bandAt.mm))
  const slope = (otherMm - band.mm) / (otherAt - bandAt.mm)
  return { mm: band.mm + share * (otherMm - band.mm), sdMm: Math.hypot(band.sdMm, slope * heightSd), basedOn: band.basedOn, because }
}

/**
 * What is wanted of a waist that elastic draws in. Measured as it lies, it is smaller than the body that it holds, and fits as long as it pulls out to
 * it: waist elastic is cut about 50 mm shorter than the waist, at most as long as it (common practice, no source; how-to texts say 25 to 50
 * for firm elastic, up to 130 for soft).
 */
import { ELASTIC_GOES, type Garment } from '../garment/garment-as-worn.ts'
import type { BodyMeasureId, Fit } from './body.ts'
import type { Want } from './want.ts'
import type { BodyTaken } from './whole-body.ts'

/** So much shorter than the body it lies best, mm. */
const SHORTER_MM = 50
/** So much is left before it is pulled out all the way, mm (from memory). */
const TO_SPARE_MM = 10
/** By fit, as far above the body as it may lie: a drawstring takes that up (from memory). */
const LOOSER_MM: Record<Fit, number> = { 'as-cut': 0, close: 0, regular: 0, loose: 25, oversized: 50 }
/** How far it goes is unsure: told by a seller, mm; not told, a share of how it lies (from memory). */
const TOLD_SD_MM = 12
const ASSUMED_SD = ELASTIC_GOES * 0.4

/** How much further than it lies an elastic waist goes, mm; 0 where there is none. */
export const elasticGoes = ({ made, points }: Garment): number =>
  made.elasticWaist ? Math.max(0, made.waistStretchedMm - (points.get('waist')?.mm ?? made.waistStretchedMm)) : 0

/** undefined: no elastic, or no figure of how it lies. */
export function elasticWaist(garment: Garment, fit: Fit, body: BodyTaken, measure: BodyMeasureId): Want | undefined {
  const { made, assumed } = garment
  const lies = garment.points.get('waist')?.mm
  if (!made.elasticWaist || lies === undefined) return undefined
  const most = body.mm + LOOSER_MM[fit]
  const least = Math.min(most, body.mm + TO_SPARE_MM - elasticGoes(garment))
  return {
    least,
    ideal: Math.min(most, Math.max(least, body.mm - SHORTER_MM)),
    most,
    sdMm: body.sdMm,
    leastSdMm: assumed.includes('waistStretchedMm') ? ASSUMED_SD * lies : TOLD_SD_MM,
    from: 'body',
    measure,
    basedOn: body.basedOn,
    because: [{ code: 'target.elastic', values: { body: measure, mm: body.mm, stretched: made.waistStretchedMm }, point: 'waist' }]
  }
}

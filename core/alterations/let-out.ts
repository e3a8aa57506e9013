/** What the seams hold: cloth that can be let out. */
import { allowanceAt } from '../garment/construction.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { letOutHolds } from './geometry.ts'
import { type Line, limit } from './row.ts'

/** Cloth kept beyond a let-out seam (CB-TR: 3/8 in). */
export const KEEP_MM = 10
/** The least that a seam holds on to, whatever the person allows. */
const BARE_MM = 3
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

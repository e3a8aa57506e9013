/**
 * How far from a favourite's own figure still feels the same, mm, under and over. Too small is worse than too big, so `under` is
 * narrower (common practice). Over: trade tolerances for finished garments (a maker's published woven-trouser and shirt
 * tolerances, half measures doubled to girths); where none was read, from memory.
 */
import { isGirth, type PointId } from '../ids/points.ts'

const OVER_MM: Partial<Record<PointId, number>> = {
  waist: 25,
  hip: 25,
  thigh: 13,
  knee: 13,
  legOpening: 13,
  inseam: 7,
  frontRise: 7,
  backRise: 7,
  crotchLength: 10,
  outseam: 13,
  chest: 13,
  hem: 13,
  shoulderWidth: 7,
  sleeveLength: 7,
  bodyLength: 10,
  neck: 7,
  cuff: 7,
  bicep: 10
}
const UNDER_SHARE = 0.6

export function toleranceAt(point: PointId, own?: number | { under: number; over: number }): { under: number; over: number } {
  if (typeof own === 'number') return { under: own, over: own }
  if (own !== undefined) return own
  const over = OVER_MM[point] ?? (isGirth(point) ? 15 : 12)
  return { under: over * UNDER_SHARE, over }
}

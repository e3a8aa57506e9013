/** One point measured twice by the same seller: near enough to each other both figures count, else the newer sets the older right. */
import { COMMON_SHARE, SD_MM } from '../../garment/garment-as-worn.ts'
import { isGirth } from '../../ids/points.ts'
import type { MeasureReading } from '../reading.ts'

/** Two readings by one tape lie this many sd of their difference apart at most, or one of them was a slip (19 in 20). */
const NEAR_SD = 2

/** Does the older figure still count beside the newest? */
export function countsToo(newest: MeasureReading, older: MeasureReading): boolean {
  if (older.point !== newest.point || older.of !== newest.of || older.size !== newest.size) return false
  const sdMm = SD_MM.seller[isGirth(newest.point) ? 'girth' : 'length']
  return Math.abs(older.mm - newest.mm) <= NEAR_SD * Math.sqrt(2 * (1 - COMMON_SHARE)) * sdMm
}

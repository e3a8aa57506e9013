/**
 * How much larger than the body it is cut for a garment of a kind usually is, where nothing is told of its fit: the eases of the table, over the fits
 * that it may have.
 */
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Wish } from './body.ts'
import { easeFor } from './ease.ts'

/** Of four garments two are cut regular, one close, one loose; who wants it oversized takes another size (shares from memory). */
const SHARES: [Wish, number][] = [
  ['close', 1 / 4],
  ['regular', 1 / 2],
  ['loose', 1 / 4]
]
/** One maker's close is another's loose: they differ by a good size more (sd, from memory). */
const MAKERS_SD_MM = 60

export interface Room {
  mm: number
  sd: number
}

/** Ease at a point: its mean over the fits, and its spread over them, within each (from ideal to most) and between makers. */
export function usualRoom(point: PointId, kind: GarmentKind): Room | undefined {
  const row = easeFor(kind).find((one) => one.point === point)
  if (row === undefined) return undefined
  const over = (of: (ideal: number, most: number) => number): number =>
    SHARES.reduce((sum, [fit, share]) => sum + share * of(...row.fits[fit]), 0)
  const mm = over((ideal) => ideal)
  const variance = over((ideal, most) => (ideal - mm) ** 2 + (most - ideal) ** 2 / 12)
  return { mm, sd: Math.hypot(Math.sqrt(variance), MAKERS_SD_MM) }
}

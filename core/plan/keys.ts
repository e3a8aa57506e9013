/** Which points decide for a kind of garment. */
import { type Garment, isTold } from '../garment/garment-as-worn.ts'
import { keyPoints } from '../garment/key-points.ts'
import { SHAPE, type Shape } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Gap } from '../wearer/gaps.ts'
import type { Target, Want } from '../wearer/want.ts'

/** The girths of the part of the body that a shape of garment fits: with none of them told (and wanted) nothing can be said. */
const FITTED: Record<Shape, PointId[]> = {
  legs: ['waist', 'hip', 'thigh'],
  skirt: ['waist', 'hip'],
  whole: ['chest', 'waist', 'hip'],
  upper: ['chest', 'waist', 'hem'],
  none: []
}
/** From this chance on it is said to be 5 in 10: as likely as not, as far as 256 draws can show. From the other on, more likely than not. */
export const LIKELY = 0.45
export const MORE_THAN_LIKELY = 0.55

/** The points of which none is told (or wanted), none at all where the kind is not known; null: it can be judged. */
export function missingFor(garment: Garment, gaps: readonly Gap[]): readonly PointId[] | null {
  const fitted = FITTED[SHAPE[garment.kind]]
  return gaps.some(({ judged, point }) => judged && fitted.includes(point)) ? null : fitted
}

/** A shirt or a knit whose waist is wanted this near the body is close there, mm of ease. */
const CLOSE_MM = 90
/** So many sd under what is thought, a point might lie. */
const SURELY_SD = 2

/** Key points of this kind and cut that are not told: those where something is aimed for, or that might be too small. */
export function untoldKeys(garment: Garment, target: Target): PointId[] {
  const keys = keyPoints(garment.kind, garment.cut)
  const isClose = (want: Want | undefined): boolean =>
    want !== undefined && want.ideal !== null && want.bodyMm !== undefined && want.ideal - want.bodyMm < CLOSE_MM
  const all = SHAPE[garment.kind] === 'upper' && isClose(target.get('waist')) ? [...keys, 'waist' as const] : keys
  return all.filter((point) => {
    const want = target.get(point)
    if (want === undefined || isTold(garment.points.get(point))) return false
    const thought = garment.points.get(point)
    return want.ideal !== null || thought === undefined || thought.mm - SURELY_SD * thought.sdMm < want.least
  })
}

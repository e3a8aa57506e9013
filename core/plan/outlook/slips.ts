/** A told figure may be a slip: a digit wrong, another place measured, the tape doubled. How likely, weighed by how odd it looks beside the others. */
import type { Belief, GarmentBelief } from '../../garment/model/garment-belief.ts'
import { isGirth, type PointId } from '../../ids/points.ts'
import { updated } from '../../wearer/diary.ts'
import type { Gap } from '../../wearer/gaps.ts'

/** Of a hundred figures three are slips, before one looks at them; such a figure lies so far off, mm (sd; both from memory). */
const SHARE = 0.03
const OFF_MM = { girth: 120, length: 70 }

const density = (off: number, sd: number): number => Math.exp(-((off / sd) ** 2) / 2) / sd

/** How likely it is one, and what is thought of the point then; undefined where nothing else tells of it. */
export function slipOf(point: PointId, mm: number, sdMm: number, belief: GarmentBelief): (Belief & { chance: number }) | undefined {
  const others = belief.without(point)
  if (others === undefined) return undefined
  const slipSd = OFF_MM[isGirth(point) ? 'girth' : 'length']
  const off = mm - others.mm
  const slipped = SHARE * density(off, Math.hypot(others.sdMm, slipSd))
  const chance = slipped / (slipped + (1 - SHARE) * density(off, Math.hypot(others.sdMm, sdMm)))
  // of a slip the figure tells little: the others, and the figure with that much doubt
  return { chance, ...updated(others, [{ mm, sdMm: slipSd }]) }
}

/** Can a figure be one? What was measured again, or by oneself, is none. */
export const mayBeSlip = ({ from, readings = 1 }: Pick<Gap, 'from' | 'readings'>): boolean => from === 'seller' && readings === 1

/** The point whose told figure is likelier a slip than not, the likeliest of all: beside it others look odd that are right. */
export function likelySlip(gaps: readonly Gap[], belief: GarmentBelief | undefined): PointId | null {
  if (belief === undefined) return null
  let likeliest: PointId | null = null
  let most = 0.5
  for (const gap of gaps.filter(mayBeSlip)) {
    const chance = slipOf(gap.point, gap.garmentMm, gap.sdMm, belief)?.chance ?? 0
    if (chance <= most) continue
    likeliest = gap.point
    most = chance
  }
  return likeliest
}

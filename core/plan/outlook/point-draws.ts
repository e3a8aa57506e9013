/**
 * Which dimension of the draws belongs to what: two a point (its figure, then its band), one for the seller's habit, those of the make
 * (scenarios.ts), one for a tape that is laid now, one for how far elastic goes, one that says in which draws a figure is a slip, and two for taste.
 */
import { POINTS, type PointId } from '../../ids/points.ts'
import { DRAWS, heavyTailed, normalDraws } from './draws.ts'

const HABIT = POINTS.length * 2
export const FIRST_OF_MAKE = HABIT + 1
const MOST_OF_MAKE = 8
const AGAIN = FIRST_OF_MAKE + MOST_OF_MAKE
const ELASTIC = AGAIN + 1
const SLIP = ELASTIC + 1
const TASTE = SLIP + 1
const WIDTH = TASTE + 1

const column = (dimension: number): Float64Array => normalDraws()[dimension] ?? new Float64Array(DRAWS)
export const figureDraws = (point: PointId): Float64Array => column(POINTS.indexOf(point) * 2)
export const bandDraws = (point: PointId): Float64Array => column(POINTS.indexOf(point) * 2 + 1)
export const habitDraws = (): Float64Array => column(HABIT)
/** A tape that is laid now. */
export const againDraws = (): Float64Array => column(AGAIN)
/** How close or loose this person likes things. */
export const tasteDraws = (): Float64Array => column(TASTE)
/** How much this person lets pass. */
export const widthDraws = (): Float64Array => column(WIDTH)
/** How much further than thought elastic goes: it lets the garment be so much smaller. */
export const elasticDraws = (): Float64Array => column(ELASTIC)

/** The same for every request: made once a point. */
const heavy = new Map<PointId, Float64Array>()
/** A seller's own error in a figure, in sd: most tapes are read well and a few badly. */
export function errorDraws(point: PointId): Float64Array {
  const known = heavy.get(point) ?? figureDraws(point).map(heavyTailed)
  heavy.set(point, known)
  return known
}

let shares: Float64Array | undefined
/** 0 to 1, evenly spread: the draws in which a figure is a slip are those that lie in its share. */
export function slipDraws(): Float64Array {
  if (shares === undefined) {
    const z = column(SLIP)
    const order = [...z.keys()].sort((one, other) => (z[one] ?? 0) - (z[other] ?? 0) || one - other)
    shares = new Float64Array(DRAWS)
    for (const [rank, i] of order.entries()) shares[i] = (rank + 0.5) / DRAWS
  }
  return shares
}

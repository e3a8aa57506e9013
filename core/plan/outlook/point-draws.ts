/**
 * Which dimension of the draws belongs to what: two a point (its figure's error, then its band's), one for the seller's habit, those of the make
 * (scenarios.ts), one for a tape that is laid a second time, and one for how far elastic goes.
 */
import { COMMON_SHARE } from '../../garment/garment-as-worn.ts'
import { POINTS, type PointId } from '../../ids/points.ts'
import { DRAWS, heavyTailed, normalDraws } from './draws.ts'

const SELLER = POINTS.length * 2
export const FIRST_OF_MAKE = SELLER + 1
const MOST_OF_MAKE = 8
const AGAIN = FIRST_OF_MAKE + MOST_OF_MAKE
const ELASTIC = AGAIN + 1

const column = (dimension: number): Float64Array => normalDraws()[dimension] ?? new Float64Array(DRAWS)
export const figureDraws = (point: PointId): Float64Array => column(POINTS.indexOf(point) * 2)
/** How much further than thought elastic goes: it lets the garment be so much smaller. */
export const elasticDraws = (): Float64Array => column(ELASTIC)
export const bandDraws = (point: PointId): Float64Array => column(POINTS.indexOf(point) * 2 + 1)

/** The same for every request: made once a point. */
function oncePerPoint(make: (point: PointId) => Float64Array): (point: PointId) => Float64Array {
  const made = new Map<PointId, Float64Array>()
  return (point) => {
    const known = made.get(point) ?? make(point)
    made.set(point, known)
    return known
  }
}

/** A seller's error in a figure read so often, in sd: a share is common to all of the seller's, and tails are heavy. */
const sellersErrors = (readings: number) => {
  const common = COMMON_SHARE / (COMMON_SHARE + (1 - COMMON_SHARE) / readings)
  return oncePerPoint((point) => {
    const habit = column(SELLER)
    return figureDraws(point).map((z, i) => heavyTailed(Math.sqrt(common) * (habit[i] ?? 0) + Math.sqrt(1 - common) * z))
  })
}
const once = sellersErrors(1)
const twice = sellersErrors(2)
export const sellersDraws = (point: PointId, readings = 1): Float64Array => (readings > 1 ? twice : once)(point)

/**
 * What a seller's second reading of a told point would say: it is off as the first was, so it tells half of the first one's own error and
 * nothing of their common habit.
 */
export const secondReadings = oncePerPoint((point) => {
  const again = column(AGAIN)
  return figureDraws(point).map((z, i) => (z + (again[i] ?? 0)) * Math.SQRT1_2)
})

/** What trying on teaches: the normal–normal update of any textbook on Bayesian statistics, and its use on a wanted point. */
import type { Garment } from '../garment/garment-as-worn.ts'
import type { Belief } from '../garment/model/garment-belief.ts'
import { LONGEST_MM } from '../length.ts'
import type { Saying } from '../words/reason.ts'
import type { Want } from './want.ts'
import type { Tried } from './wearer.ts'

/** A normal belief after normal observations with known sd: precisions add, means are weighed by them. */
export function updated(belief: Belief, observations: readonly Belief[]): Belief {
  let precision = belief.sdMm ** -2
  let weighed = belief.mm * precision
  for (const { mm, sdMm } of observations) {
    precision += sdMm ** -2
    weighed += mm * sdMm ** -2
  }
  return { mm: weighed / precision, sdMm: precision ** -0.5 }
}

/** How sure the table's ideal is for one person, and a pinch or a gap felt on the body, mm (sd; from memory). */
const TABLE_SD_MM = 20
const FELT_SD_MM = 8

/**
 * A garment that was tried on: so much could be pinched away, or was short, at a point. That tells where the garment's own figure lies from
 * what is right for this person, so the ideal moves; the most moves with it, the least only where it proved too small.
 */
export function afterTrying(want: Want, garment: Garment, { point, spareMm, shortMm, sdMm }: Tried): Want {
  const taken = garment.points.get(point)
  const off = spareMm ?? (shortMm === undefined ? undefined : -shortMm)
  if (taken === undefined || off === undefined || !Number.isFinite(off) || Math.abs(off) > LONGEST_MM || want.ideal === null) return want
  const belief = updated({ mm: want.ideal, sdMm: TABLE_SD_MM }, [{ mm: taken.mm - off, sdMm: Math.hypot(sdMm ?? FELT_SD_MM, taken.sdMm) }])
  const shift = belief.mm - want.ideal
  const because: Saying[] = [
    ...want.because,
    { code: 'target.tried', values: { mm: Math.abs(off), way: off > 0 ? 'spare' : 'short' }, point }
  ]
  return {
    ...want,
    ideal: belief.mm,
    most: Math.max(want.most + shift, belief.mm),
    least: Math.min(want.least + Math.max(0, shift), belief.mm),
    sdMm: Math.min(want.sdMm, belief.sdMm),
    // what was felt is the taste
    tasteSdMm: belief.sdMm,
    because
  }
}

/** What trying on teaches: the normal–normal update of any textbook on Bayesian statistics, and its use on a wanted point. */
import type { Garment } from '../garment/garment-as-worn.ts'
import type { Belief } from '../garment/model/garment-belief.ts'
import type { PointId } from '../ids/points.ts'
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
 * A garment that was tried on: so much could be pinched away, or was short, at a point, once or several times. What is felt is the garment less what is
 * right for this person, so it is evidence about both together: of two normal figures the difference d = garment − ideal is normal with the sum of their
 * variances, and the update of d is the normal–normal one, all that was felt at once. The tape goes on saying what it says: the whole of the shift is
 * laid on what is wanted. The most moves with the ideal, the least only where it proved too small.
 */
export function afterTrying(point: PointId, want: Want, garment: Garment, felt: readonly Tried[]): Want {
  const taken = garment.points.get(point)
  const ideal = want.ideal
  const seen = felt.flatMap(({ spareMm, shortMm, sdMm }) => {
    const off = spareMm ?? (shortMm === undefined ? undefined : -shortMm)
    return off === undefined || !Number.isFinite(off) || Math.abs(off) > LONGEST_MM ? [] : [{ mm: off, sdMm: sdMm ?? FELT_SD_MM }]
  })
  if (taken === undefined || ideal === null || seen.length === 0) return want
  const apart = updated({ mm: taken.mm - ideal, sdMm: Math.hypot(TABLE_SD_MM, taken.sdMm) }, seen)
  const now = taken.mm - apart.mm
  const shift = now - ideal
  const because = seen.map(
    ({ mm }): Saying => ({ code: 'target.tried', values: { mm: Math.abs(mm), way: mm > 0 ? 'spare' : 'short' }, point })
  )
  return {
    ...want,
    ideal: now,
    most: Math.max(want.most + shift, now),
    least: Math.min(want.least + Math.max(0, shift), now),
    sdMm: Math.min(want.sdMm, apart.sdMm),
    // what was felt is the taste
    tasteSdMm: apart.sdMm,
    because: [...want.because, ...because]
  }
}

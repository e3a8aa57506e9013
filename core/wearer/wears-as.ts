/** A garment that misses the fit asked for may lie whole in another: then it wears as that, and is no misfit to whoever likes it so. */
import { type Garment, isTold } from '../garment/garment-as-worn.ts'
import { isGirth, type PointId } from '../ids/points.ts'
import { WISHES, type Wish } from './body.ts'
import { type Gap, gapAt } from './gaps.ts'
import { targetFor } from './target.ts'
import type { Favourite, Tried, Wearer } from './wearer.ts'
import type { WholeBody } from './whole-body.ts'

const variesByFit = (point: PointId): boolean => isGirth(point) || point === 'shoulderWidth'
/** As it is cut is said to wear as a regular fit by saying nothing. */
const UNSAID: Wish = 'regular'

/**
 * The fit that every told point lies in, within one mark in all, where it is another than the one asked; null: the one asked, or none.
 * `garment` as seenOn gives it, `body` as bodyOf gives it.
 */
export function wearsAs(
  garment: Garment,
  gaps: readonly Gap[],
  {
    wearer,
    favourite,
    tried = [],
    markMm
  }: { wearer: Wearer; favourite?: Favourite | undefined; tried?: readonly Tried[] | undefined; markMm: number },
  body: WholeBody | undefined
): Wish | null {
  const asked = wearer.fit
  // what no fit can change is wrong in every one: a length, a bound, what a favourite says
  if (gaps.some(({ judged, gapMm, point, want }) => judged && Math.abs(gapMm) > markMm && !(want?.from === 'body' && variesByFit(point))))
    return null
  const liesIn = (fit: Wish): boolean => {
    const target = targetFor(garment, { ...wearer, fit }, favourite, tried, body)
    let off = 0
    for (const [point, taken] of garment.points) {
      const want = target.get(point)
      if (want === undefined || !isTold(taken)) continue
      off += Math.abs(gapAt(garment, point, taken, want).gapMm)
      if (off > markMm) return false
    }
    return true
  }
  // the fits nearest to the one asked come first
  const at = WISHES.indexOf(asked === 'as-cut' ? UNSAID : asked)
  const inOrder = WISHES.map((fit, n) => ({ fit, away: Math.abs(n - at) })).sort((a, b) => a.away - b.away)
  const fit = inOrder.find((one) => liesIn(one.fit))?.fit
  return fit === undefined || fit === asked || (asked === 'as-cut' && fit === UNSAID) ? null : fit
}

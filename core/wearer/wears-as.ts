/** A garment that misses the fit asked for may lie whole in another: then it wears as that, and is no misfit to whoever likes it so. */
import type { Garment } from '../garment/garment-as-worn.ts'
import type { PointId } from '../ids/points.ts'
import { type Fit, WISHES, type Wish } from './body.ts'
import { holdsUp } from './ease.ts'
import { type Gap, gapsBetween } from './gaps.ts'
import { targetFor } from './target.ts'
import type { Favourite, Tried, Wearer } from './wearer.ts'
import type { WholeBody } from './whole-body.ts'

/** As it is cut is said to wear as a regular fit by saying nothing. */
const UNSAID: Wish = 'regular'

/** The girths by which a fit is told. */
const TOLD_BY: readonly PointId[] = ['chest', 'hip']
/**
 * A looser fit is more than one point that is too big: round the trunk it must lie nearer to what that fit aims for than to what was asked. A jacket
 * that is right in the chest and 30 too wide in the shoulders is not a loose jacket.
 */
function isCutFor(gaps: readonly Gap[], own: readonly Gap[]): boolean {
  return gaps.every(({ point, garmentMm, judged, want }) => {
    const asked = own.find((one) => one.point === point)?.want
    if (!judged || !TOLD_BY.includes(point) || want?.ideal == null || asked?.ideal == null) return true
    return Math.abs(garmentMm - want.ideal) <= Math.abs(garmentMm - asked.ideal)
  })
}

/**
 * The fit that every told point lies in, within one mark in all, where it is another than the one asked; null: the one asked, or none.
 * `garment` as seenOn gives it, `body` as bodyOf gives it.
 */
export function wearsAs(
  garment: Garment,
  {
    wearer,
    favourite,
    tried = [],
    markMm
  }: { wearer: Wearer; favourite?: Favourite | undefined; tried?: readonly Tried[] | undefined; markMm: number },
  body: WholeBody | undefined
): Wish | null {
  const asked = wearer.fit
  const gapsFor = (fit: Fit): Gap[] => gapsBetween(garment, targetFor(garment, { ...wearer, fit }, favourite, tried, body))
  const own = gapsFor(asked)
  const liesIn = (fit: Wish): boolean => {
    const gaps = gapsFor(fit)
    const held = (gap: Gap): Gap => (holdsUp(gap.point, garment.kind) ? (own.find(({ point }) => point === gap.point) ?? gap) : gap)
    const missed = gaps.map(held).reduce((sum, gap) => sum + (gap.judged ? Math.abs(gap.gapMm) : 0), 0)
    return missed <= markMm && isCutFor(gaps, own)
  }
  // the fits nearest to the one asked come first
  const at = WISHES.indexOf(asked === 'as-cut' ? UNSAID : asked)
  const inOrder = WISHES.map((fit, n) => ({ fit, away: Math.abs(n - at) })).sort((a, b) => a.away - b.away)
  const fit = inOrder.find((one) => liesIn(one.fit))?.fit
  return fit === undefined || fit === asked || (asked === 'as-cut' && fit === UNSAID) ? null : fit
}

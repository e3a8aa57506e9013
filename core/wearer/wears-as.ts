/** A garment that misses the fit asked for may lie whole in another: then it wears as that, and is no misfit to whoever likes it so. */
import { isCut } from '../garment/cut.ts'
import { type Garment, isTold } from '../garment/garment-as-worn.ts'
import { isGirth, type PointId } from '../ids/points.ts'
import { WISHES, type Wish } from './body.ts'
import { holdsUp } from './ease.ts'
import { type Gap, gapAt } from './gaps.ts'
import { targetFor } from './target.ts'
import type { Target, Want } from './want.ts'
import type { Favourite, Tried, Wearer } from './wearer.ts'
import type { WholeBody } from './whole-body.ts'

/** Lengths, what a favourite says and what holds a garment up are wanted alike in every fit. */
const variesByFit = ({ point, want }: Gap, garment: Garment): boolean =>
  want?.from === 'body' && (isGirth(point) || point === 'shoulderWidth') && !holdsUp(point, garment.kind)
/** As it is cut is said to wear as a regular fit by saying nothing. */
const UNSAID: Wish = 'regular'

/** The girths by which a fit is told. */
const TOLD_BY: readonly PointId[] = ['chest', 'hip']
/**
 * A looser fit is more than one point that is too big: round the trunk it must lie nearer to what that fit aims for than to what was asked. A jacket
 * that is right in the chest and 30 too wide in the shoulders is not a loose jacket.
 */
const isNearer = (mm: number, point: PointId, wish: Want, asked: Want | undefined): boolean =>
  !TOLD_BY.includes(point) || wish.ideal === null || asked?.ideal == null || Math.abs(mm - wish.ideal) <= Math.abs(mm - asked.ideal)

export interface Asked {
  wearer: Wearer
  favourite?: Favourite | undefined
  tried?: readonly Tried[] | undefined
  /** What is wanted in the fit asked. */
  target: Target
  markMm: number
}

/**
 * The fit that every told point lies in, within one mark in all, where it is another than the one asked; null: the one asked, or none.
 * `garment` as seenOn gives it, `gaps` those of the fit asked, `body` as bodyOf gives it.
 */
export function wearsAs(
  garment: Garment,
  gaps: readonly Gap[],
  { wearer, favourite, tried = [], markMm, target: asAsked }: Asked,
  body: WholeBody | undefined
): Wish | null {
  const asked = wearer.fit
  if (gaps.every(({ judged, gapMm }) => !judged || gapMm === 0)) return null
  // what is held up by its top edge falls down when it is loose
  if (isCut(garment.cut, 'silhouette', 'strapless', 'corset')) return null
  const fixed = gaps.reduce((sum, gap) => sum + (gap.judged && !variesByFit(gap, garment) ? Math.abs(gap.gapMm) : 0), 0)
  if (fixed > markMm) return null
  const varying = gaps.filter((gap) => gap.judged && variesByFit(gap, garment))
  const liesIn = (fit: Wish): boolean => {
    const target = fit === asked ? asAsked : targetFor(garment, { ...wearer, fit }, favourite, tried, body)
    let off = fixed
    for (const { point, want: own } of varying) {
      const [want, told] = [target.get(point), garment.points.get(point)]
      if (want === undefined || !isTold(told)) continue
      const { mm, gapMm } = gapAt(garment, point, told, want)
      off += Math.abs(gapMm)
      if (off > markMm || !isNearer(mm, point, want, own)) return false
    }
    return true
  }
  // the fits nearest to the one asked come first
  const at = WISHES.indexOf(asked === 'as-cut' ? UNSAID : asked)
  const inOrder = WISHES.map((fit, n) => ({ fit, away: Math.abs(n - at) })).sort((a, b) => a.away - b.away)
  const fit = inOrder.find((one) => liesIn(one.fit))?.fit
  return fit === undefined || fit === asked || (asked === 'as-cut' && fit === UNSAID) ? null : fit
}

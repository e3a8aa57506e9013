/** Why the chance is low, in words: the points by which most of the draws fail, and what is the matter with each. */
import type { PointId } from '../../ids/points.ts'
import type { Gap } from '../../wearer/gaps.ts'
import type { Reason, Saying } from '../../words/reason.ts'
import { listed, said, sayInside, type Wording } from '../../words/say.ts'
import type { PointDoubt } from '../outlook/doubts.ts'
import type { Hands, Outlook } from '../outlook/outlook.ts'
import type { Misfit } from '../plan.ts'
import { wayOf } from '../way.ts'

export interface Doubt {
  point: PointId
  /** Of the draws that do not work out, the share in which this point stands in the way, 0 to 1. */
  share: number
  /** "the hip is not stated": a clause. */
  because: Reason
}

/** A chance that is said to be 7 in 10 and more needs no excuse. */
export const LOW = 0.65
/** A second point is named where it stands in the way in at least this share of the draws that fail, and of those of the first. */
const SECOND = { ofAll: 0.3, ofFirst: 0.6 }

export interface Doubtful {
  outlook: Outlook | null
  chance: number | null
  hands: Hands
  gaps: readonly Gap[]
  /** What is known to stay wrong: that is said already. */
  wrong: readonly Misfit[]
}

/** What costs most, one or two points, most first; none where the chance is not low, or where what costs most is known to stay wrong. */
export function doubtsOf({ outlook, chance, hands, gaps, wrong }: Doubtful, wording: Wording): Doubt[] {
  if (outlook === null || chance === null || chance >= LOW) return []
  const [first, second] = outlook.doubts(hands)
  if (first === undefined || wrong.some(({ point }) => point === first.point)) return []
  const isNamed = (one: PointDoubt): boolean =>
    one === first || (one.share >= Math.max(SECOND.ofAll, SECOND.ofFirst * first.share) && wrong.every(({ point }) => point !== one.point))
  return [first, second].flatMap((doubt): Doubt[] => {
    const gap = gaps.find(({ point }) => point === doubt?.point)
    if (doubt === undefined || gap === undefined || !isNamed(doubt)) return []
    return [{ point: doubt.point, share: doubt.share, because: said(clauseOf(gap, doubt, hands), wording) }]
  })
}

/** All that is named, as one sentence: "the hip and the thigh are not stated". */
export function doubtsTogether(doubts: readonly Doubt[], wording: Wording): Reason {
  const untold = doubts.filter(({ because }) => because.code === 'doubt.untold')
  const isAllUntold = untold.length > 1 && untold.length === doubts.length
  const points = untold.map(({ point }) => sayInside({ code: 'place.point', values: {}, point }, wording))
  const clauses = isAllUntold
    ? [sayInside({ code: 'doubt.untold-all', values: { points: listed(points, wording) } }, wording)]
    : doubts.map(({ because }) => sayInside(because, wording))
  return said({ code: 'verdict.doubts', values: { clauses: listed(clauses, wording) } }, wording)
}

/** Nine in ten such figures lie within so many sd. */
const LIKELY_SD = 1.645

function clauseOf(gap: Gap, { over }: PointDoubt, hands: Hands): Saying {
  const { point, from, want } = gap
  if (from === 'inferred') return { code: 'doubt.untold', values: {}, point }
  if (from === 'label') return { code: 'doubt.label', values: {}, point }
  if (want?.measure !== undefined && want.basedOn.length > 0 && want.sdMm > gap.sdMm)
    return { code: 'doubt.body', values: { body: want.measure }, point }
  if (gap.gapMm !== 0 && hands !== 'asItIs') return { code: 'doubt.reach', values: { way: wayOf(gap.gapMm, point) }, point }
  const isOver = over > 0.5
  const toEdge = gap.band === null ? Number.POSITIVE_INFINITY : isOver ? gap.band.most - gap.garmentMm : gap.garmentMm - gap.band.least
  const isNear = toEdge < LIKELY_SD * Math.hypot(gap.sdMm, gap.bandSdMm)
  return isNear
    ? { code: 'doubt.edge', values: { way: wayOf(isOver ? 1 : -1, point) }, point }
    : { code: 'doubt.figure', values: {}, point }
}

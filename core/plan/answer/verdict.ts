/** The verdict: one table, a case a row, read from the top; nothing else decides one. */
import { NEVER } from '../../alterations/alterations-for.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import { isGirth, type PointId } from '../../ids/points.ts'
import { VERDICTS, type Verdict } from '../../ids/verdicts.ts'
import type { Wish } from '../../wearer/body.ts'
import { type Gap, overshoot } from '../../wearer/gaps.ts'
import { LIKELY, MORE_THAN_LIKELY, missingFor } from '../keys.ts'
import { HARDEST, type Means } from '../means.ts'
import { fits, isWrong, totalOf } from '../misfit.ts'
import { likelySlip } from '../outlook/slips.ts'
import type { Misfit, Plan } from '../plan.ts'
import { MOST_RESCUED_MM, type Plans } from '../plan-alterations.ts'
import { NOTICED_MM, ROUNDING, toThousandths } from '../rounding.ts'

/** How good a verdict is, 0 the worst; undefined where too little is told to say. */
export const rankOf = (verdict: Verdict): number | undefined =>
  verdict === 'too-little-told' ? undefined : VERDICTS.indexOf('leave-it') - VERDICTS.indexOf(verdict)

/** What the verdict looks at. Chances are null without the outlook: the verdict is then provisional and takes them as likely. */
export interface Judged {
  garment: Garment
  gaps: readonly Gap[]
  plans: Plans
  means: Means
  markMm: number
  chance: { own: number | null; tailor: number | null }
  /** The same over what is told alone: if what is not told suits. Worked out only where it decides. */
  chanceIf: () => { own: number | null; tailor: number | null }
  /** The fit in which it lies whole, where that is another than the one asked. */
  wearsAs: () => Wish | null
}

/** Remainders that may still be called close, mm (from memory, settings). */
const CLOSE_MM = { girth: 15, length: 25 }

const fitsIn = (plan: Plan | undefined, markMm: number): boolean => plan !== undefined && fits(plan, markMm)
const likely = (chance: number | null): boolean => chance === null || chance >= LIKELY
/** Likely, or it would be if what is not told suits. */
const isLikely = ({ chance, chanceIf }: Judged, who: 'own' | 'tailor'): boolean => likely(chance[who]) || likely(chanceIf()[who])
/** Does this plan fit where the other does not, or leave less wrong by more than a mark? */
const leavesLess = (one: Plan, other: Plan, markMm: number): boolean =>
  (fits(one, markMm) && !fits(other, markMm)) || totalOf(one.misfit) < totalOf(other.misfit) - markMm - ROUNDING
/** The best of one's own, the least work first among equals. */
const ownPlan = ({ plans, markMm }: Judged): Plan | undefined =>
  plans.own.reduce<Plan | undefined>((best, plan) => (best === undefined || leavesLess(plan, best, markMm) ? plan : best), undefined)
const tailorsPlan = ({ plans, means }: Judged): Plan | undefined => (means.tailor ? plans.tailor : undefined)

/** Two rescues, or one that brings more, are too much to be called close. */
const isSmall = (plan: Plan | undefined): boolean => {
  const rescues = (plan?.alterations ?? []).filter(({ rescue }) => rescue)
  return rescues.length === 1 && rescues.every(({ withoutIt }) => withoutIt.every(({ mm }) => Math.abs(mm) <= MOST_RESCUED_MM))
}

const TABLE: { when(judged: Judged): boolean; verdict: Verdict; advised?(judged: Judged): Plan | undefined }[] = [
  // what is never altered is to be left for one fault, whatever else is not told
  { when: (judged) => NEVER.has(judged.garment.use) && isWrong(judged.gaps, judged.markMm), verdict: 'leave-it' },
  { when: ({ garment, gaps }) => missingFor(garment, gaps) !== null, verdict: 'too-little-told' },
  { when: ({ gaps, markMm }) => !isWrong(gaps, markMm), verdict: 'wears-as-is' },
  { when: (judged) => fitsIn(ownPlan(judged), judged.markMm) && isLikely(judged, 'own'), verdict: 'alters-to-fit', advised: ownPlan },
  {
    when: (judged) => fitsIn(tailorsPlan(judged), judged.markMm) && isLikely(judged, 'tailor'),
    verdict: 'needs-a-tailor',
    advised: tailorsPlan
  },
  {
    when: (judged) => fitsIn(bestPlan(judged), judged.markMm) || comesClose(bestPlan(judged), judged.gaps),
    verdict: 'comes-close',
    advised: bestPlan
  },
  // it shows, and is said so
  { when: ({ plans }) => isSmall(plans.rescue), verdict: 'comes-close', advised: ({ plans }) => plans.rescue },
  { when: ({ wearsAs }) => wearsAs() !== null, verdict: 'comes-close', advised: bestPlan },
  // what is likelier a slip than not is as good as not told, where nothing else speaks against it
  { when: (judged) => mistold(judged) !== null, verdict: 'too-little-told' },
  // past the table's edges, where most people still let it pass: no verdict contradicts its own chance
  { when: ({ chance }) => (chance.tailor ?? chance.own ?? 0) >= MORE_THAN_LIKELY, verdict: 'comes-close', advised: bestPlan },
  { when: () => true, verdict: 'leave-it', advised: bestPlan }
]

/** What a plan leaves wrong by more than a mark; where it is a last resort, what it is the last resort for. */
export const staysWrong = (advised: Plan | undefined, { plans, markMm }: Judged): readonly Misfit[] =>
  ((advised !== undefined && advised === plans.rescue ? plans.own[0] : advised)?.misfit ?? []).filter(({ mm }) => Math.abs(mm) > markMm)

/** The one point that would stay wrong, where its figure is likelier a slip than not; null: there is none, more stays wrong, or too little is told. */
export function mistold(judged: Judged): PointId | null {
  if (judged.chance.own === null || missingFor(judged.garment, judged.gaps) !== null) return null
  const [wrong, another] = staysWrong(bestPlan(judged), judged)
  if (wrong === undefined || another !== undefined) return null
  return likelySlip(judged.gaps, judged.garment.belief) === wrong.point ? wrong.point : null
}

export function judge(judged: Judged): { verdict: Verdict; advised: Plan | undefined } {
  const row = TABLE.find(({ when }) => when(judged))
  return { verdict: row?.verdict ?? 'leave-it', advised: row?.advised?.(judged) }
}

/** The plan that leaves least wrong: one's own unless the tailor's leaves less by more than a mark. */
function bestPlan(judged: Judged): Plan | undefined {
  const own = ownPlan(judged)
  const tailor = tailorsPlan(judged)
  if (own === undefined || tailor === undefined) return own ?? tailor
  return totalOf(tailor.misfit) < totalOf(own.misfit) - judged.markMm ? tailor : own
}

/** Small remainders only, none at the shoulders, none where the body could not pass or sit. */
function comesClose(plan: Plan | undefined, gaps: readonly Gap[]): boolean {
  // work for the best hands that still leaves something wrong is not worth its while
  if (plan === undefined || plan.level >= HARDEST) return false
  return plan.misfit.every(({ point, mm }) => {
    if (point === 'shoulderWidth') return false
    const gap = gaps.find((one) => one.point === point)
    const after = plan.after.find((one) => one.point === point)?.mm
    if (gap?.bound !== undefined && after !== undefined && after < gap.bound - ROUNDING) return false
    return Math.abs(mm) <= CLOSE_MM[isGirth(point) ? 'girth' : 'length'] + ROUNDING
  })
}

/** Misfit of doing nothing. */
export const misfitAsItIs = (gaps: readonly Gap[], because: (gap: Gap) => string): Misfit[] =>
  gaps.flatMap((gap): Misfit[] => {
    if (!gap.judged || gap.band === null) return []
    const mm = overshoot(gap.garmentMm, gap.band.least, gap.band.most)
    return Math.abs(mm) < NOTICED_MM ? [] : [{ point: gap.point, mm: toThousandths(mm), because: because(gap) }]
  })

/** Why: the sentences under the verdict, the most telling first. */
import { edgeFold } from '../../alterations/geometry.ts'
import { type Garment, isTold } from '../../garment/garment-as-worn.ts'
import type { PointId } from '../../ids/points.ts'
import type { Verdict } from '../../ids/verdicts.ts'
import type { Wish } from '../../wearer/body.ts'
import type { Gap } from '../../wearer/gaps.ts'
import type { Reason, Saying } from '../../words/reason.ts'
import { listed, said, say, sayInside, sayTogether, sayTogetherInside, type Wording } from '../../words/say.ts'
import { LIKELY, missingFor } from '../keys.ts'
import type { Means } from '../means.ts'
import type { Job, Plan } from '../plan.ts'
import { wayOf } from '../way.ts'
import { type ConditionShown, conditionsTogether } from './conditions-said.ts'
import { type Doubt, doubtsTogether } from './doubts-said.ts'
import { type Judged, staysWrong } from './verdict.ts'

export interface Judgement {
  /** Is money of the question at all? */
  priced: boolean
  /** The chance that doing nothing fits; null without outlook. */
  chanceAsItIs: number | null
  /** Mending and care, in the plan's minutes. */
  mendingMinutes: number
  judged: Judged
  verdict: Verdict
  advised: Plan | undefined
  /** Where too little is told because a figure is likely a slip: its point. */
  slip: PointId | null
  /** A tailor is not at hand, and only one could do it. */
  tailorCould: boolean
  /** The fit it wears as, where that is another than the one asked. */
  wearsAs: Wish | null
  /** Key points that are not told. */
  untoldKey: readonly PointId[]
  /** What the untold must be. */
  conditions: readonly ConditionShown[]
  /** Why the chance is low. */
  doubts: readonly Doubt[]
}

export function reasonsFor(judgement: Judgement, wording: Wording): Reason[] {
  const { judged, verdict, advised } = judgement
  if (verdict === 'too-little-told') return [said(tooLittle(judgement), wording)]
  if (verdict === 'leave-it' && advised === undefined) return [said({ code: `verdict.never.${judged.garment.use}`, values: {} }, wording)]
  const isRescue = advised !== undefined && advised === judged.plans.rescue
  const wrong = [...staysWrong(advised, judged)].sort((one, other) => Math.abs(other.mm) - Math.abs(one.mm))
  return [
    ...(verdict === 'wears-as-is' ? [said({ code: 'verdict.inside', values: {} }, wording)] : []),
    ...asFarAsTold(judgement, wording),
    ...(judgement.wearsAs === null ? [] : [said({ code: 'verdict.wears-as', values: { fit: judgement.wearsAs } }, wording)]),
    ...(verdict === 'leave-it' || isRescue ? [] : toDo('verdict.do', advised?.alterations ?? [], wording)),
    // the worst one's own sentence, already made: how far it is off and what the seams hold
    ...wrong.slice(0, 1).map(({ point, because }): Reason => ({ code: 'verdict.why', values: {}, point, text: because })),
    ...wrong
      .slice(1)
      .map(({ point, mm }) => said({ code: 'verdict.stays', values: { mm: Math.abs(mm), way: wayOf(mm, point) }, point }, wording)),
    ...(isRescue ? toDo('verdict.rescue', advised.alterations, wording) : []),
    ...(judgement.doubts.length === 0 ? [] : [doubtsTogether(judgement.doubts, wording)]),
    ...howSure(judgement).map((saying) => said(saying, wording))
  ]
}

/** What is not told, or is likely a slip. */
function tooLittle({ judged: { garment, gaps }, slip }: Judgement): Saying {
  const told = gaps.find(({ point }) => point === slip)
  return told === undefined ? missing(garment, gaps) : { code: 'verdict.may-be-a-slip', values: { mm: told.garmentMm }, point: told.point }
}

/** What the verdict does not know, and what that must be. */
function asFarAsTold({ untoldKey, conditions }: Judgement, wording: Wording): Reason[] {
  if (conditions.length > 0) return [said({ code: 'verdict.if', values: { conditions: conditionsTogether(conditions, wording) } }, wording)]
  if (untoldKey.length === 0) return []
  const names = untoldKey.map((point) => sayInside({ code: 'place.point', values: {}, point }, wording))
  return [said({ code: 'verdict.as-far-as-told', values: { points: listed(names, wording), n: untoldKey.length } }, wording)]
}

/** All the jobs in one sentence: do, amount, place. */
function toDo(code: 'verdict.do' | 'verdict.rescue', jobs: readonly Job[], wording: Wording): Reason[] {
  if (jobs.length === 0) return []
  const does = jobs.map((job) => doing(job, wording))
  const sentence = code === 'verdict.do' ? sayTogether(does, wording) : sayTogetherInside(does, wording)
  return [{ code, values: { jobs: jobs.length }, text: say({ code, values: { sentence } }, wording) }]
}

function howSure({ judged, verdict, advised, tailorCould, priced, mendingMinutes, chanceAsItIs, doubts }: Judgement): Saying[] {
  const { chance, means } = judged
  const sayings: Saying[] = []
  const sure = advised === undefined ? null : advised.aim === 'tailor' ? chance.tailor : chance.own
  const nothingWrong = advised?.misfit.every(({ mm }) => Math.abs(mm) <= judged.markMm) ?? false
  if (verdict === 'wears-as-is' && doubts.length === 0 && chanceAsItIs !== null && chanceAsItIs < LIKELY)
    sayings.push({ code: 'verdict.untold', values: { chance: chanceAsItIs } })
  if (verdict === 'needs-a-tailor') sayings.push({ code: 'verdict.tailor', values: { level: advised?.level ?? 5, own: means.level } })
  if (verdict === 'comes-close' && nothingWrong && sure !== null) sayings.push({ code: 'verdict.unlikely', values: { chance: sure } })
  if (mendingMinutes > 0 && verdict !== 'leave-it') sayings.push({ code: 'verdict.mending', values: { minutes: mendingMinutes } })
  if (tailorCould) sayings.push({ code: 'verdict.tailor-could', values: {} })
  if (chance.own === null) sayings.push({ code: 'verdict.provisional', values: {} })
  if (priced) sayings.push(...priceMissing(advised, means))
  return sayings
}

/** Less than this share of the most is where a seam runs out, and not worth a word. */
const WORTH_A_WORD = 0.4

/** A job as a sentence: do, amount, place; a seam that is moved by several amounts says each, and how far each edge of it moves. */
function doing(job: Job, wording: Wording): Saying {
  const places = (Object.entries(job.amounts) as [PointId, number][])
    .filter(([, mm]) => Math.abs(mm) >= WORTH_A_WORD * job.amountMm)
    .sort(([, one], [, other]) => Math.abs(other) - Math.abs(one))
    .map(([point, mm]) => say({ code: 'place.at', values: { mm: Math.abs(mm) }, point }, wording))
  const edge = Math.max(0, ...job.lines.map(({ offsetMm }) => Math.abs(offsetMm)))
  return {
    code: `do.${job.id}.${job.direction}`,
    values: { amount: job.amountMm, half: edgeFold(job.amountMm), at: listed(places, wording), edge },
    alteration: job.id
  }
}

/** The points that decide for such a garment, where none of them can be judged. */
export function missing(garment: Garment, gaps: readonly Gap[]): Saying {
  const points = missingFor(garment, gaps) ?? []
  const [first, second] = points
  if (first === undefined) return { code: 'verdict.kind-missing', values: {} }
  // what the garment does tell, the body or the favourite does not
  const code = points.some((point) => isTold(garment.points.get(point))) ? 'verdict.wearer-missing' : 'verdict.missing'
  return second === undefined ? { code, values: {}, point: first } : { code: `${code}-either`, values: { other: second }, point: first }
}

function priceMissing(plan: Plan | undefined, means: Means): Saying[] {
  if (plan === undefined || plan.cost !== null) return []
  if (plan.aim !== 'tailor') return [{ code: 'worth.hour-missing', values: {} }]
  const job = plan.alterations.find(({ id }) => means.tailorPrices?.[id] === undefined)
  return job === undefined ? [] : [{ code: 'worth.tailor-price-missing', values: {}, alteration: job.id }]
}

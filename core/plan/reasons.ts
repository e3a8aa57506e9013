/** Why: the sentences under the verdict, the most telling first. */
import { edgeFold } from '../alterations/geometry.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { Gap } from '../wearer/gaps.ts'
import type { Reason, Saying } from '../words/reason.ts'
import { said, type Wording } from '../words/say.ts'
import type { Means } from './means.ts'
import type { Job, Plan } from './plan.ts'
import { type Judged, missingFor, unwantedFor, type Verdict } from './verdict.ts'

export interface Judgement {
  /** Is money of the question at all? */
  priced: boolean
  judged: Judged
  verdict: Verdict
  advised: Plan | undefined
  /** A tailor is not at hand, and only one could do it. */
  tailorCould: boolean
}

export function reasonsFor({ judged, verdict, advised, tailorCould, priced }: Judgement, wording: Wording): Reason[] {
  const { garment, gaps, means, chance } = judged
  const sayings: Saying[] = []
  const wrong = (advised?.misfit ?? []).filter(({ mm }) => Math.abs(mm) > judged.markMm)
  if (verdict === 'too-little-told') return [...missing(garment, gaps)].map((saying) => said(saying, wording))
  if (verdict === 'wears-as-is') sayings.push({ code: 'verdict.inside', values: {} })
  if (verdict === 'leave-it' && advised === undefined) return [said({ code: `verdict.never.${garment.use}`, values: {} }, wording)]
  for (const job of verdict === 'leave-it' ? [] : (advised?.alterations ?? [])) sayings.push(doing(job))
  for (const { point, mm } of wrong) sayings.push({ code: 'verdict.stays', values: { mm: Math.abs(mm), way: wayOf(mm, point) }, point })
  const reasons = sayings.map((saying) => said(saying, wording))
  // the misfit's own sentence, already made: what is needed and what the seams hold
  for (const { point, because } of wrong) reasons.push({ code: 'verdict.why', values: {}, point, text: because })
  const more: Saying[] = []
  if (verdict === 'needs-a-tailor') more.push({ code: 'verdict.tailor', values: { level: advised?.level ?? 5, own: means.level } })
  const sure = advised === undefined ? null : advised.aim === 'tailor' ? chance.tailor : chance.own
  if (verdict === 'comes-close' && advised !== undefined && advised.misfit.length === 0 && sure !== null)
    more.push({ code: 'verdict.unlikely', values: { chance: sure } })
  if (tailorCould) more.push({ code: 'verdict.tailor-could', values: {} })
  if (chance.own === null) more.push({ code: 'verdict.provisional', values: {} })
  if (priced) more.push(...priceMissing(advised, means))
  return [...reasons, ...more.map((saying) => said(saying, wording))]
}

/** A job as a sentence: do, amount, place. */
export const doing = (job: Job): Saying => ({
  code: `do.${job.id}.${job.direction}`,
  values: { amount: job.amountMm, half: edgeFold(job.amountMm) },
  alteration: job.id
})

const LONG: ReadonlySet<string> = new Set([
  'inseam',
  'outseam',
  'sleeveLength',
  'sleeveFromCentreBack',
  'sleeveUnderarm',
  'bodyLength',
  'skirtLength',
  'frontRise',
  'backRise',
  'crotchLength',
  'napeToWaist',
  'torsoLength',
  'strap'
])
const WIDE: ReadonlySet<string> = new Set(['shoulderWidth', 'backWidth'])
/** The word for being past an edge: too big or small, long or short, wide or narrow. */
export function wayOf(mm: number, point: string): string {
  if (LONG.has(point)) return mm > 0 ? 'long' : 'short'
  if (WIDE.has(point)) return mm > 0 ? 'wide' : 'narrow'
  return mm > 0 ? 'big' : 'small'
}

function missing(garment: Garment, gaps: readonly Gap[]): Saying[] {
  const unwanted = unwantedFor(garment, gaps)
  return missingFor(garment, gaps).map((group): Saying => {
    if (garment.kind === 'other') return { code: 'verdict.kind-missing', values: {} }
    const [first, second] = group
    if (first === undefined) return { code: 'verdict.kind-missing', values: {} }
    const code = unwanted.includes(group) ? 'verdict.wearer-missing' : 'verdict.missing'
    return second === undefined ? { code, values: {}, point: first } : { code: `${code}-either`, values: { other: second }, point: first }
  })
}

function priceMissing(plan: Plan | undefined, means: Means): Saying[] {
  if (plan === undefined || plan.cost !== null) return []
  if (plan.aim !== 'tailor') return [{ code: 'worth.hour-missing', values: {} }]
  const job = plan.alterations.find(({ id }) => means.tailorPrices?.[id] === undefined)
  return job === undefined ? [] : [{ code: 'worth.tailor-price-missing', values: {}, alteration: job.id }]
}

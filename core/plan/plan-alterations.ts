/** Options and gaps → plans: least work, closest fit, a tailor's; and one job fewer where it hardly matters. Identical ones once. */

import { keyOf } from '../alterations/apart.ts'
import type { Option } from '../alterations/row.ts'
import { timeFactor } from '../garment/cloth.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { type Gap, overshoot } from '../wearer/gaps.ts'
import { HARDEST, type Means } from './means.ts'
import { fits, totalOf } from './misfit.ts'
import type { Aim, Misfit, Plan } from './plan.ts'
import { type PlanContext, planFrom } from './plan-from.ts'
import { ROUNDING } from './rounding.ts'
import { evaluate, isUsed, type Outcome } from './solve/evaluate.ts'
import { solveInMarks } from './solve/marks.ts'
import { type Amounts, type PlanPoint, type Problem, pointsOf, problemFor, reachAt } from './solve/problem.ts'
import { usefulOptions, withoutIdleRescues } from './solve/useful-options.ts'
import { acceptedBy, withinLevel } from './solve/within-means.ts'

/** The usual mark, mm. */
export const MARK_MM = 2
/** A job whose absence leaves less than this may be left out, in a plan of its own. */
const HARDLY_MM = 4

export interface Plans {
  /** Without a rescue, but for those this person accepts. */
  own: Plan[]
  /** With what shows (a panel, a band, elastic where none was): only where without it something stays wrong, and it fits with it. */
  rescue: Plan | undefined
  /** Also worked out without a tailor at hand where one's own plan leaves something wrong, to say what one could do. */
  tailor: Plan | undefined
}

export function planAlterations(context: PlanContext): Plans {
  const plain = { ...context, options: acceptedBy(context.means, context.options) }
  const leastWork = planFor('least-work', plain)
  const closest = planFor('closest-fit', plain)
  const tailor = context.means.tailor || leastWork.misfit.length > 0 ? planFor('tailor', plain) : undefined
  const fewer = oneFewer(leastWork, plain)
  const own = distinct([leastWork, closest, ...(fewer === undefined ? [] : [fewer])])
  return { own, rescue: rescueFor([...own, ...(context.means.tailor && tailor !== undefined ? [tailor] : [])], context), tailor }
}

/** Two rescues, or one that lets in more cloth than this, nobody would wear (common practice). */
export const MOST_RESCUED_MM = 50

/** Planned last, beside the plain plans: only where none of them fits, and it does. */
function rescueFor(plain: readonly Plan[], context: PlanContext): Plan | undefined {
  const markMm = context.means.markMm ?? MARK_MM
  const accepted = acceptedBy(context.means, context.options)
  if (plain.some((plan) => fits(plan, markMm)) || accepted.length === context.options.length) return undefined
  // what stays wrong by more than one rescue may bring stays wrong
  if (context.gaps.some(({ judged, gapMm }) => judged && -gapMm > MOST_RESCUED_MM + markMm)) return undefined
  const rescues = context.options.filter((option) => option.rescue && !accepted.includes(option))
  const helps = ({ point, mm }: Misfit) =>
    rescues.some(({ lines }) => lines.some(({ effects, capMm }) => capMm > 0 && (effects[point] ?? 0) * mm < 0))
  if (!plain.some(({ misfit }) => misfit.some(helps))) return undefined
  const options = context.options.map((option) => (rescues.includes(option) && option.direction === 'more' ? letInAtMost(option) : option))
  const rescued = planFor(context.means.tailor ? 'tailor' : 'least-work', { ...context, options })
  const showing = rescued.alterations.filter((job) => job.rescue)
  return fits(rescued, markMm) && showing.length <= 1 ? rescued : undefined
}

const letInAtMost = (option: Option): Option => ({
  ...option,
  lines: option.lines.map((line) => ({ ...line, capMm: Math.min(line.capMm, MOST_RESCUED_MM) }))
})

function planFor(aim: Aim, context: PlanContext, without?: string): Plan {
  const { whole, amounts } = solvedFor(aim, context, without)
  return planFrom(aim, whole, amounts, context)
}

/** What a problem is made of. */
type Solvable = Pick<PlanContext, 'gaps' | 'garment' | 'means' | 'options'>

function solvedFor(aim: Aim, { gaps, garment, means, options }: Solvable, without?: string): Solved {
  const level = aim === 'tailor' ? HARDEST : means.level
  const inReach = withinLevel(options, level).filter((option) => option.key !== without)
  const solved = (allowed: readonly Option[]): Solved => {
    const whole = problemFor(aim, gaps, allowed, options, means.markMm ?? MARK_MM, timeFactor(garment.cloth))
    const pruned = { ...whole, options: usefulOptions(whole) }
    const amounts = spread(solveInMarks(pruned), pruned.options, whole.options)
    return { whole, amounts, outcome: evaluate(whole, amounts) }
  }
  return sparingRescues(pointsOf(gaps), inReach, solved)
}

/** Set beside its wearer: what is judged, and what can be done. */
export interface Beside {
  garment: Garment
  gaps: readonly Gap[]
  offer: () => { options: readonly Option[] }
}

/**
 * Does doing nothing, a plan of one's own, or at hand a tailor's leave at most one mark wrong, without a rescue that this person would not wear?
 */
export function leavesNothingWrong({ gaps, garment, offer }: Beside, means: Means): boolean {
  const markMm = means.markMm ?? MARK_MM
  const points = pointsOf(gaps)
  const wrongAfter = (after: readonly number[]): number =>
    totalOf(points.map(({ mm, least, most }, p) => ({ mm: overshoot(after[p] ?? mm, least, most) })))
  if (wrongAfter([]) <= markMm + ROUNDING) return true
  const options = acceptedBy(means, offer().options)
  const allowed = withinLevel(options, means.tailor ? HARDEST : means.level)
  // one point farther out than everything together could move it
  for (const { point, mm, least, most } of points) {
    if (mm <= most + markMm && mm >= least - markMm) continue
    const { up, down } = reachAt(point, allowed)
    if (mm - down > most + markMm + ROUNDING || mm + up < least - markMm - ROUNDING) return false
  }
  const aims: Aim[] = means.tailor ? ['tailor', 'least-work'] : ['least-work']
  for (const aim of aims) {
    const wrong = wrongAfter(solvedFor(aim, { gaps, garment, means, options }).outcome.after)
    if (wrong <= markMm + ROUNDING) return true
    // the solve is within one mark of the least there is, and a tailor could do all that one could oneself
    if (wrong > 2 * markMm + ROUNDING) return false
  }
  return false
}

interface Solved {
  whole: Problem
  amounts: Amounts
  outcome: Outcome
}

/**
 * A rescue is taken only where a point would stay wrong without it, however little burden it is: the solve with all options says how well it can
 * be; if that takes a rescue, it is tried without any, then with those alone that help what stays wrong without.
 */
function sparingRescues(points: readonly PlanPoint[], inReach: readonly Option[], solved: (allowed: readonly Option[]) => Solved): Solved {
  const best = solved(withoutIdleRescues(points, inReach))
  const rescues = best.whole.options.filter((option, a) => option.rescue && isUsed(best.amounts[a]))
  if (rescues.length === 0) return best
  const asGood = ({ whole, outcome }: Solved): boolean => outcome.misfit <= Math.max(whole.markMm, best.outcome.misfit) + ROUNDING
  const plain = solved(inReach.filter(({ rescue }) => !rescue))
  if (asGood(plain)) return plain
  const wrong = points.map((point, p) => ({ ...point, mm: plain.outcome.after[p] ?? point.mm }))
  const needed = new Set(withoutIdleRescues(wrong, rescues))
  if (needed.size === rescues.length) return best
  const fewer = solved(inReach.filter((option) => !option.rescue || needed.has(option)))
  return asGood(fewer) ? fewer : best
}

/** Amounts of the useful options, set among all that were allowed. */
function spread(amounts: Amounts, from: readonly Option[], to: readonly Option[]): Amounts {
  const byKey = new Map(from.map((option, a) => [option.key, amounts[a]]))
  return to.map((option) => byKey.get(option.key) ?? option.lines.map(() => 0))
}

function oneFewer(plan: Plan, context: PlanContext): Plan | undefined {
  if (plan.alterations.length < 1) return undefined
  const hardly = plan.alterations.find((job) => totalOf(job.withoutIt) < HARDLY_MM)
  if (hardly === undefined) return undefined
  const fewer = planFor('least-work', context, keyOf(hardly))
  return fewer.alterations.length < plan.alterations.length ? fewer : undefined
}

export function distinct(plans: readonly Plan[]): Plan[] {
  const seen = new Set<string>()
  return plans.filter((plan) => {
    const jobs = JSON.stringify(plan.alterations.map(({ id, direction, amounts }) => [id, direction, amounts]))
    if (seen.has(jobs)) return false
    seen.add(jobs)
    return true
  })
}

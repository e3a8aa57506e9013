/** Options and gaps → plans: least work, closest fit, a tailor's; and one job fewer where it hardly matters. Identical ones once. */

import type { Option } from '../alterations/row.ts'
import { timeFactor } from '../garment/cloth.ts'
import { toMarks } from './marks.ts'
import type { Aim, Plan } from './plan.ts'
import { type PlanContext, planFrom } from './plan-from.ts'
import { type Amounts, pointsOf, problemFor } from './problem.ts'
import { solve } from './solve.ts'
import { usefulOptions, withoutIdleRescues } from './useful.ts'
import { withinLevel } from './within-means.ts'

/** The usual mark, mm. */
export const MARK_MM = 2
/** A job whose absence leaves less than this may be left out, in a plan of its own. */
const HARDLY_MM = 4

export interface Plans {
  own: Plan[]
  /** Also worked out without a tailor at hand where one's own plan leaves something wrong, to say what one could do. */
  tailor: Plan | undefined
}

export function planAlterations(context: PlanContext): Plans {
  const leastWork = planFor('least-work', context)
  const closest = planFor('closest-fit', context)
  const tailor = context.means.tailor || leastWork.misfit.length > 0 ? planFor('tailor', context) : undefined
  const fewer = oneFewer(leastWork, context)
  return { own: distinct([leastWork, closest, ...(fewer === undefined ? [] : [fewer])]), tailor }
}

function planFor(aim: Aim, context: PlanContext, without?: string): Plan {
  const { gaps, garment, means, options } = context
  const level = aim === 'tailor' ? 5 : means.level
  const inReach = withinLevel(options, level).filter((option) => option.key !== without)
  const allowed = withoutIdleRescues(pointsOf(gaps), inReach)
  const whole = problemFor(aim, gaps, allowed, options, means.markMm ?? MARK_MM, timeFactor(garment.cloth))
  const pruned = { ...whole, options: usefulOptions(whole) }
  const amounts = toMarks(pruned, solve(pruned))
  return planFrom(aim, whole, spread(amounts, pruned.options, whole.options), context)
}

/** Amounts of the useful options, set among all that were allowed. */
function spread(amounts: Amounts, from: readonly Option[], to: readonly Option[]): Amounts {
  const byKey = new Map(from.map((option, a) => [option.key, amounts[a]]))
  return to.map((option) => byKey.get(option.key) ?? option.lines.map(() => 0))
}

function oneFewer(plan: Plan, context: PlanContext): Plan | undefined {
  if (plan.alterations.length < 1) return undefined
  const hardly = plan.alterations.find((job) => job.withoutIt.reduce((sum, { mm }) => sum + Math.abs(mm), 0) < HARDLY_MM)
  if (hardly === undefined) return undefined
  const fewer = planFor('least-work', context, `${hardly.id}/${hardly.direction}`)
  return fewer.alterations.length < plan.alterations.length ? fewer : undefined
}

export function distinct(plans: readonly Plan[]): Plan[] {
  const seen = new Set<string>()
  return plans.filter((plan) => {
    const mark = JSON.stringify(plan.alterations.map(({ id, direction, amounts }) => [id, direction, amounts]))
    if (seen.has(mark)) return false
    seen.add(mark)
    return true
  })
}

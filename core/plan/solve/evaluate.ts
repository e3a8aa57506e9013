/** What given amounts come to: where each point ends, the misfit, the burden, the distance, and whether every limit holds. */
import { SOFT_MINUTES_PER_MM } from '../../alterations/minutes.ts'
import type { Option } from '../../alterations/row.ts'
import { overshoot } from '../../wearer/gaps.ts'
import { ROUNDING } from '../rounding.ts'
import { type Amounts, excludeEachOther, idleMinutes, type PlanPoint, type Problem, softPast } from './problem.ts'

export interface Outcome {
  after: number[]
  /** Σf, mm weighted convexly. */
  misfit: number
  burden: number
  distance: number
  objective: number
  holds: boolean
}

export const isUsed = (amounts: readonly number[] | undefined): boolean => amounts?.some((mm) => mm > ROUNDING) ?? false

/** How far a used option moves a point, mm. */
export function effectOn(point: PlanPoint['point'], option: Option, amounts: readonly number[]): number {
  return option.lines.reduce((sum, line, k) => sum + (line.effects[point] ?? 0) * (amounts[k] ?? 0), 0)
}

export function afterOf(problem: Problem, amounts: Amounts): number[] {
  return problem.points.map((point) =>
    problem.options.reduce((mm, option, a) => mm + effectOn(point.point, option, amounts[a] ?? []), point.mm)
  )
}

/** The misfit of one point as the planner weighs it, mm: what lies more than 15 out counts threefold from there. */
export function weighedMisfit(overMm: number): number {
  const size = Math.abs(overMm)
  return Math.max(size, 3 * size - 30)
}

export function evaluate(problem: Problem, amounts: Amounts): Outcome {
  const after = afterOf(problem, amounts)
  let misfit = 0
  let distance = 0
  problem.points.forEach((point, p) => {
    const mm = after[p] ?? point.mm
    misfit += weighedMisfit(overshoot(mm, point.least, point.most))
    distance += Math.abs(mm - point.ideal)
  })
  const burden = burdenOf(problem, amounts)
  return {
    after,
    misfit,
    burden,
    distance,
    objective: problem.misfitWeight * misfit + burden + problem.distanceWeight * distance,
    holds: limitsHold(problem, amounts)
  }
}

function burdenOf(problem: Problem, amounts: Amounts): number {
  const used = problem.options.filter((_, a) => isUsed(amounts[a] ?? []))
  let burden = setUpOf(used, problem.preparations)
  problem.options.forEach((option, a) => {
    const mine = amounts[a] ?? []
    if (!isUsed(mine)) return
    if (option.tier !== undefined && (mine[option.tier.line] ?? 0) > option.tier.beyondMm + ROUNDING) burden += option.tier.minutes
    option.lines.forEach((line, k) => {
      burden += softPast(line, mine[k] ?? 0) * SOFT_MINUTES_PER_MM + (mine[k] ?? 0) * idleMinutes(line, problem.points)
    })
  })
  return burden
}

/** Set-up and stated penalties of these options, and what they open, once each; minutes. */
export function setUpOf(options: readonly Option[], preparations: Problem['preparations']): number {
  const opened = new Set(options.flatMap(({ opens }) => opens))
  const jobs = options.reduce((sum, { setupMinutes, penaltyMinutes }) => sum + setupMinutes + penaltyMinutes, 0)
  return [...opened].reduce((sum, what) => sum + preparations[what], jobs)
}

function limitsHold(problem: Problem, amounts: Amounts): boolean {
  const drawn = new Map<string, { sum: number; budget: number }>()
  const used: Option[] = []
  for (const [a, option] of problem.options.entries()) {
    const mine = amounts[a] ?? []
    if (!isUsed(mine)) continue
    used.push(option)
    for (const [k, line] of option.lines.entries()) {
      const mm = mine[k] ?? 0
      if (mm < -ROUNDING || mm > line.capMm + ROUNDING) return false
      if (k > 0 && Math.abs(mm - (mine[k - 1] ?? 0)) > option.smoothMm + ROUNDING) return false
    }
    if (option.fixedMm !== undefined && Math.abs((mine[0] ?? 0) - option.fixedMm) > ROUNDING) return false
    for (const limit of option.shared) {
      const group = drawn.get(limit.group) ?? { sum: 0, budget: limit.budgetMm }
      group.sum += limit.shares.reduce((sum, share, k) => sum + share * (mine[k] ?? 0), 0)
      group.budget = Math.min(group.budget, limit.budgetMm)
      drawn.set(limit.group, group)
    }
  }
  if ([...drawn.values()].some((group) => group.sum > group.budget + ROUNDING)) return false
  return used.every((one, i) => used.slice(i + 1).every((other) => !excludeEachOther(one, other)))
}

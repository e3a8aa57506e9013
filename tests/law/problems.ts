/** The planner's problem of a request, whole: before anything is left out. */
import { alterationsFor } from '../../core/alterations/alterations-for.ts'
import { timeFactor } from '../../core/garment/cloth.ts'
import { garmentAsWorn } from '../../core/garment/garment-as-worn.ts'
import type { Aim } from '../../core/plan/plan.ts'
import { type Amounts, type Problem, problemFor } from '../../core/plan/solve/problem.ts'
import { solve } from '../../core/plan/solve/solve.ts'
import { usefulOptions } from '../../core/plan/solve/useful-options.ts'
import { withinLevel } from '../../core/plan/solve/within-means.ts'
import type { ReckonRequest } from '../../core/reckon.ts'
import { gapsBetween } from '../../core/wearer/gaps.ts'
import { targetFor } from '../../core/wearer/target.ts'

export const AIMS: readonly Aim[] = ['least-work', 'closest-fit', 'tailor']

export function problemOf(request: ReckonRequest, aim: Aim): Problem {
  const garment = garmentAsWorn(request.garment)
  const gaps = gapsBetween(garment, targetFor(garment, request.wearer, request.favourite))
  const { options } = alterationsFor(garment, request.limits)
  return problemFor(
    aim,
    gaps,
    withinLevel(options, aim === 'tailor' ? 5 : request.means.level),
    options,
    request.means.markMm ?? 2,
    timeFactor(garment.cloth)
  )
}

/** Ours, before marks or in them, spread over all options of the whole problem. */
export function ours(problem: Problem, solved: (problem: Problem) => Amounts = solve): Amounts {
  const useful = usefulOptions(problem)
  const amounts = new Map(solved({ ...problem, options: useful }).map((mine, a) => [useful[a]?.key, mine]))
  return problem.options.map((option) => amounts.get(option.key) ?? option.lines.map(() => 0))
}

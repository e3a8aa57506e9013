/**
 * Amounts brought to whole marks: each used amount to one of its two neighbouring marks (a mark is the step of each stitching line, so an
 * amount over N seams moves in steps of 2N marks); every combination is looked at, and the best by the solve's own objective that breaks
 * no limit is taken.
 */

import { ROUNDING } from '../rounding.ts'
import { evaluate, isUsed } from './evaluate.ts'
import { type Amounts, type Problem, stepOf } from './problem.ts'
import { solve, solveInSteps } from './solve.ts'

/** Beyond so many used amounts (never seen) the rest keep their nearest mark inside the limit. */
const MOST_UNDECIDED = 12

/**
 * The best plan in whole marks: the best amounts brought to marks. Where that leaves more than a mark wrong that the amounts themselves did not,
 * another choice may do better in marks, so the problem is solved again in whole marks. (The amounts are within a mark of the least misfit there is,
 * so where they leave two marks or more, nothing in whole marks leaves less than one.)
 */
export function solveInMarks(problem: Problem): Amounts {
  const solved = solve(problem)
  const rounded = toMarks(problem, solved)
  const { misfit, objective } = evaluate(problem, rounded)
  if (misfit <= problem.markMm + ROUNDING) return rounded
  const before = evaluate(problem, solved).misfit
  if (misfit <= before + ROUNDING || before >= 2 * problem.markMm) return rounded
  const stepped = solveInSteps(problem)
  if (stepped === undefined) return rounded
  const other = evaluate(problem, stepped)
  return other.holds && other.objective < objective - ROUNDING ? stepped : rounded
}

/** Each used amount to one of its two neighbouring marks. */
export function toMarks(problem: Problem, amounts: Amounts): Amounts {
  const undecided: { a: number; k: number; choices: number[] }[] = []
  const lower = amounts.map((mine, a) =>
    mine.map((mm, k) => {
      const option = problem.options[a]
      const line = option?.lines[k]
      if (option === undefined || line === undefined || mm <= ROUNDING) return 0
      if (option.fixedMm !== undefined) return option.fixedMm
      const step = stepOf(line, problem.markMm)
      const below = Math.floor((mm + ROUNDING) / step) * step
      const above = Math.ceil((mm - ROUNDING) / step) * step
      const choices = [...new Set([below, above])].filter((choice) => choice <= line.capMm + ROUNDING)
      if (choices.length > 1 && undecided.length < MOST_UNDECIDED) undecided.push({ a, k, choices })
      return choices[0] ?? 0
    })
  )
  if (undecided.length === 0) return lower
  let best: { amounts: Amounts; objective: number } | undefined
  for (let combination = 0; combination < 2 ** undecided.length; combination++) {
    const trial = lower.map((mine) => [...mine])
    undecided.forEach(({ a, k, choices }, place) => {
      const row = trial[a]
      const choice = choices[(combination >> place) & 1]
      if (row !== undefined && choice !== undefined) row[k] = choice
    })
    const outcome = evaluate(problem, trial)
    if (outcome.holds && (best === undefined || outcome.objective < best.objective - ROUNDING))
      best = { amounts: trial, objective: outcome.objective }
  }
  // every lower neighbour keeps every cap and shared limit; only smoothness can fail, and then the amounts before marks stand
  return best?.amounts ?? amounts.map((mine) => (isUsed(mine) ? mine : mine.map(() => 0)))
}

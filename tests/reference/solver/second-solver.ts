/** HiGHS (MIT, in WebAssembly) as a second, independent solver: presolve off, default tolerances, no gap. */
import loadHighs from 'highs'
import { evaluate } from '../../../core/plan/solve/evaluate.ts'
import type { Amounts, Problem } from '../../../core/plan/solve/problem.ts'
import { lpText } from './lp.ts'

const highs = await loadHighs()

export interface SecondAnswer {
  amounts: Amounts
  /** As HiGHS says, and as its amounts come to. */
  stated: number
  recomputed: number
}

export function solveAgain(problem: Problem): SecondAnswer {
  const { text, amountsFrom } = lpText(problem)
  const solution = highs.solve(text, { presolve: 'off', mip_rel_gap: 0, mip_abs_gap: 0, output_flag: false })
  if (solution.Status !== 'Optimal') throw new Error(`HiGHS says ${solution.Status}`)
  const amounts = amountsFrom((name) => solution.Columns[name]?.Primal ?? 0)
  return { amounts, stated: solution.ObjectiveValue, recomputed: evaluate(problem, amounts).objective }
}

/** The least Σf there is, whatever the burden. */
export const leastMisfit = (problem: Problem): number => leastOf(problem, 'misfit')

/** The least Σf in whole marks. */
export const leastInMarks = (problem: Problem): number => leastOf(problem, 'marks')

/** The least overshoot there is, Σ over all points, plain. */
export const leastOver = (problem: Problem): number => leastOf(problem, 'over')

function leastOf(problem: Problem, alone: 'misfit' | 'over' | 'marks'): number {
  const solution = highs.solve(lpText(problem, alone).text, { presolve: 'off', mip_rel_gap: 0, mip_abs_gap: 0, output_flag: false })
  if (solution.Status !== 'Optimal') throw new Error(`HiGHS says ${solution.Status}`)
  return solution.ObjectiveValue
}

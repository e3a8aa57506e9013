/**
 * The planner's optimum against HiGHS on generated problems of every kind: ours is pruned and solved by yalps, HiGHS gets the whole problem
 * written anew. And the promise of the weights: misfit within one mark of the least there is, burden within a minute at equal misfit.
 */
import { describe, expect, it } from 'vitest'
import { evaluate } from '../../../core/plan/solve/evaluate.ts'
import { solveInMarks, toMarks } from '../../../core/plan/solve/marks.ts'
import { AIMS, ours, problemOf } from '../../law/problems.ts'
import { randomFrom, requestFrom } from '../../law/requests.ts'
import { leastInMarks, leastMisfit, solveAgain } from './second-solver.ts'

const SEED = 20_261
const REQUESTS = 70

describe(`HiGHS on ${REQUESTS} requests, three aims each, seed ${SEED}`, () => {
  it('finds nothing better, and nothing else', () => {
    const random = randomFrom(SEED)
    let compared = 0
    let withJobs = 0
    for (let i = 0; i < REQUESTS; i++) {
      const request = requestFrom(random)
      for (const aim of AIMS) {
        const problem = problemOf(request, aim)
        if (problem.points.length === 0 || problem.options.length === 0) continue
        const mine = evaluate(problem, ours(problem))
        const theirs = solveAgain(problem)
        const best = Math.min(theirs.stated, theirs.recomputed)
        const close = 1e-6 * Math.max(1, Math.abs(best))
        expect(mine.holds, `request ${i}, ${aim}: limits hold`).toBe(true)
        expect(mine.objective, `request ${i}, ${aim} (${request.garment.kind}): not worse than HiGHS`).toBeLessThanOrEqual(
          best + close + problem.misfitWeight * 1e-5
        )
        expect(mine.objective, `request ${i}, ${aim}: not better than can be`).toBeGreaterThanOrEqual(
          theirs.stated - close - problem.misfitWeight * 1e-5
        )
        compared++
        if (mine.burden > 0) withJobs++
      }
    }
    console.info(`second solver: ${compared} problems compared, ${withJobs} with jobs, seed ${SEED}`)
    expect(compared).toBeGreaterThan(190)
    expect(withJobs).toBeGreaterThan(100)
  }, 120_000)

  it('the weights keep their promise on misfit', () => {
    const random = randomFrom(SEED + 1)
    let compared = 0
    for (let i = 0; i < 40; i++) {
      const request = requestFrom(random)
      for (const aim of AIMS) {
        const problem = problemOf(request, aim)
        if (problem.points.length === 0 || problem.options.length === 0) continue
        expect(evaluate(problem, ours(problem)).misfit).toBeLessThanOrEqual(leastMisfit(problem) + problem.markMm + 1e-6)
        compared++
      }
    }
    expect(compared).toBeGreaterThan(100)
  }, 120_000)

  it('finds no plan in whole marks that leaves nothing wrong where ours leaves more than a mark', () => {
    const random = randomFrom(SEED + 2)
    const count = { compared: 0, fits: 0, onlyInMarks: 0, asked: 0 }
    for (let i = 0; i < 300; i++) {
      const request = requestFrom(random)
      for (const aim of AIMS) {
        const problem = problemOf(request, aim)
        if (problem.points.length === 0 || problem.options.length === 0) continue
        const mine = evaluate(problem, ours(problem, solveInMarks))
        expect(mine.holds, `request ${i}, ${aim}: limits hold`).toBe(true)
        count.compared++
        const before = ours(problem)
        if (mine.misfit <= problem.markMm + 1e-6) {
          count.fits++
          if (evaluate(problem, toMarks(problem, before)).misfit > problem.markMm + 1e-6) count.onlyInMarks++
        } else if (evaluate(problem, before).misfit <= 2 * problem.markMm) {
          // what leaves more than two marks before marks leaves more than one in them
          count.asked++
          expect(leastInMarks(problem), `request ${i}, ${aim} (${request.garment.kind})`).toBeGreaterThan(problem.markMm - 1e-6)
        }
      }
    }
    console.info(`in marks: ${JSON.stringify(count)}`)
    expect(count.fits).toBeGreaterThan(100)
    expect(count.onlyInMarks).toBeGreaterThan(2)
    expect(count.asked).toBeGreaterThan(10)
  }, 120_000)
})

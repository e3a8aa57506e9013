/** How far a figure may lie off while some plan still fits (core/plan/conditions/farthest.ts), against HiGHS asked for the least misfit there and beyond. */
import { describe, expect, it } from 'vitest'
import { ANY_MM, farthestEachWay } from '../../../core/plan/conditions/farthest.ts'
import { problemOf } from '../../law/problems.ts'
import { randomFrom, requestFrom } from '../../law/requests.ts'
import { leastOver } from './second-solver.ts'

const SEED = 31_415

describe(`the farthest figure against HiGHS, seed ${SEED}`, () => {
  it('fits there, and nowhere beyond', () => {
    const random = randomFrom(SEED)
    const count = { ends: 0, open: 0, none: 0 }
    for (let r = 0; r < 120; r++) {
      const problem = problemOf(requestFrom(random), 'tailor')
      const varied = problem.points[Math.floor(random() * problem.points.length)]
      if (varied === undefined || problem.options.length === 0) continue
      const at = (mm: number) =>
        leastOver({ ...problem, points: problem.points.map((one) => (one === varied ? { ...one, mm: one.mm + mm } : one)) })
      const spans = farthestEachWay(problem.points, problem.options, varied.point, problem.markMm)
      if (spans === undefined) {
        count.none++
        for (const mm of [-200, -60, -20, 0, 20, 60, 200])
          expect(at(mm), `request ${r}: no plan anywhere`).toBeGreaterThan(problem.markMm - 1e-6)
        continue
      }
      for (const [span, side] of [
        [spans.above, 1],
        [spans.below, -1]
      ] as const) {
        expect(at(side * span), `request ${r} ${varied.point}: at its end`).toBeLessThanOrEqual(problem.markMm + 1e-4)
        if (span >= ANY_MM - 1e-6) count.open++
        else {
          count.ends++
          for (const beyond of [0.5, 5, 40])
            expect(at(side * (span + beyond)), `request ${r} ${varied.point}: ${beyond} beyond`).toBeGreaterThan(problem.markMm)
        }
      }
    }
    console.info(`farthest figures: ${JSON.stringify(count)}`)
    expect(count.ends).toBeGreaterThan(80)
    expect(count.none).toBeGreaterThan(5)
  }, 120_000)
})

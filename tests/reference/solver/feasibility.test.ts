/** The outlook's quick answers (by parts, with amounts and proofs kept) against HiGHS asked anew for every draw. */
import { describe, expect, it } from 'vitest'
import { PlanSearch } from '../../../core/plan/outlook/plan-search.ts'
import { partsOf } from '../../../core/plan/solve/parts.ts'
import { problemOf } from '../../law/problems.ts'
import { randomFrom, requestFrom } from '../../law/requests.ts'
import { leastOver } from './second-solver.ts'

const SEED = 77_001

describe(`quick feasibility against a solve a draw, seed ${SEED}`, () => {
  it('never differs', () => {
    const random = randomFrom(SEED)
    const count = { fits: 0, not: 0, near: 0, asked: 0 }
    for (let r = 0; r < 30; r++) {
      const request = requestFrom(random)
      const problem = problemOf(request, 'tailor')
      if (problem.points.length === 0 || problem.options.length === 0) continue
      const parts = partsOf(
        problem.points.map(({ point }) => point),
        problem.options
      )
      const search = new PlanSearch(parts, [problem.options], problem.markMm)
      for (let i = 0; i < 16; i++) {
        const moved = {
          ...problem,
          points: problem.points.map((one) => ({ ...one, mm: one.mm + (random() + random() + random() - 1.5) * 50 }))
        }
        const figures = parts.map(({ places }) => ({
          at: Float64Array.from(places, (p) => moved.points[p]?.mm ?? 0),
          least: Float64Array.from(places, (p) => moved.points[p]?.least ?? 0),
          most: Float64Array.from(places, (p) => moved.points[p]?.most ?? 0)
        }))
        const quick = search.fits(0, figures)
        const exact = leastOver(moved)
        count.asked++
        if (Math.abs(exact - problem.markMm) < 1e-4) count.near++
        else {
          expect(quick, `request ${r}, draw ${i}: least misfit ${exact}`).toBe(exact <= problem.markMm)
          if (quick) count.fits++
          else count.not++
        }
      }
    }
    console.info(`quick feasibility: ${JSON.stringify(count)}`)
    expect(count.fits).toBeGreaterThan(80)
    expect(count.not).toBeGreaterThan(80)
    expect(count.near).toBeLessThan(10)
  }, 120_000)
})

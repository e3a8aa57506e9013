/**
 * A search for models on which the solver's plain rule turns in circles: random requests, the planner's three problems of each, and the room and the
 * proof that the outlook asks for at figures drawn about the told ones. Counts those that came to no optimum at once, prints the seed and the
 * number of each such request, and fails where one is left without an answer. `REQUESTS=100000 SEED=7 npx tsx tests/bench/circles.ts` looks further.
 */
import { solve } from 'yalps'
import { roomModel } from '../../core/plan/outlook/feasibility.ts'
import { dualModel } from '../../core/plan/solve/dual-bound.ts'
import type { LinearModel } from '../../core/plan/solve/linear-model.ts'
import { partsOf } from '../../core/plan/solve/parts.ts'
import { modelOf } from '../../core/plan/solve/solve.ts'
import { solveModel } from '../../core/plan/solve/solve-model.ts'
import { usefulOptions } from '../../core/plan/solve/useful-options.ts'
import { AIMS, problemOf } from '../law/problems.ts'
import { randomFrom, requestFrom } from '../law/requests.ts'
import { writeResults } from './results.ts'

const SEED = Number(process.env.SEED ?? 6_001)
const REQUESTS = Number(process.env.REQUESTS ?? 2_000)
const DRAWS = 3

const random = randomFrom(SEED)
const count = { models: 0, circled: 0, unanswered: 0 }

function ask(model: LinearModel, which: string): void {
  count.models++
  if (solve(model.forSolver()).status === 'optimal') return
  count.circled++
  const answered = solveModel(model) !== undefined
  if (!answered) count.unanswered++
  console.log(`seed ${SEED}, ${which}: turned in circles, ${answered ? 'answered' : 'left without an answer'}`)
}

for (let r = 0; r < REQUESTS; r++) {
  const request = requestFrom(random)
  for (const aim of AIMS) {
    const problem = problemOf(request, aim)
    if (problem.points.length === 0 || problem.options.length === 0) continue
    ask(modelOf({ ...problem, options: usefulOptions(problem) }), `request ${r}, ${aim}`)
    if (aim !== 'tailor') continue
    const parts = partsOf(
      problem.points.map(({ point }) => point),
      problem.options
    )
    for (const { places, points, keys } of parts) {
      const options = problem.options.filter(({ key }) => keys.has(key))
      const drawn = places.flatMap((p) => problem.points[p] ?? [])
      for (let i = 0; i < DRAWS; i++) {
        const figures = {
          at: Float64Array.from(drawn, ({ mm }) => mm + (random() + random() + random() - 1.5) * 60),
          least: Float64Array.from(drawn, ({ least }) => least),
          most: Float64Array.from(drawn, ({ most }) => most)
        }
        ask(roomModel(points, options, figures, true), `request ${r}, ${points.join(' and ')}, room ${i}`)
        ask(dualModel(points, options, figures), `request ${r}, ${points.join(' and ')}, proof ${i}`)
      }
    }
  }
}

console.log(
  `${count.models} models of ${REQUESTS} requests, seed ${SEED}: ${count.circled} turned in circles, ${count.unanswered} unanswered`
)
writeResults('circles', [
  {
    name: 'models on which the plain rule turned in circles',
    value: count.circled,
    unit: `of ${count.models}`,
    ratio: null,
    against: null
  },
  { name: 'models left without an answer', value: count.unanswered, unit: `of ${count.models}`, ratio: null, against: null }
])
if (count.models === 0 || count.unanswered > 0) process.exit(1)

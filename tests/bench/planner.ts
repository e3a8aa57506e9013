/**
 * The planner against HiGHS on the same problems in one run: the same optimum on 2,000 problems (any difference fails), times and their ratio,
 * growth with points and alterations, and the whole reckoning with and without outlook. Rows go into tests/bench/results.json.
 */
import { evaluate } from '../../core/plan/solve/evaluate.ts'
import { solveInMarks } from '../../core/plan/solve/marks.ts'
import type { Problem } from '../../core/plan/solve/problem.ts'
import { usefulOptions } from '../../core/plan/solve/useful-options.ts'
import { reckon } from '../../core/reckon.ts'
import { AIMS, ours, problemOf } from '../law/problems.ts'
import { randomFrom, requestFrom } from '../law/requests.ts'
import { solveAgain } from '../reference/solver/second-solver.ts'
import { type Row, writeResults } from './results.ts'

const SEED = 500
const PROBLEMS = Number(process.env.PROBLEMS ?? 2_000)

const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN
function timed<T>(run: () => T): { ms: number; value: T } {
  const began = performance.now()
  const value = run()
  return { ms: performance.now() - began, value }
}
const spread = (times: readonly number[]): { median: number; p95: number } => {
  const sorted = [...times].sort((one, other) => one - other)
  return { median: at(sorted, 0.5), p95: at(sorted, 0.95) }
}

const random = randomFrom(SEED)
const requests = Array.from({ length: Math.ceil(PROBLEMS / 3) + 40 }, () => requestFrom(random))
for (const request of requests.slice(0, 40)) reckon(request)

const mine: number[] = []
const theirs: number[] = []
const bySize = new Map<string, number[]>()
let compared = 0
let different = 0
for (const request of requests) {
  for (const aim of AIMS) {
    const problem: Problem = problemOf(request, aim)
    if (problem.points.length === 0 || problem.options.length === 0 || compared >= PROBLEMS) continue
    const own = timed(() => solveInMarks({ ...problem, options: usefulOptions(problem) }))
    const other = timed(() => solveAgain(problem))
    mine.push(own.ms)
    theirs.push(other.ms)
    const size = `${Math.ceil(problem.points.length / 3) * 3} points, ${Math.ceil(problem.options.length / 6) * 6} alterations at most`
    bySize.set(size, [...(bySize.get(size) ?? []), own.ms])
    const objective = evaluate(problem, ours(problem)).objective
    const best = Math.min(other.value.stated, other.value.recomputed)
    if (Math.abs(objective - best) > 1e-6 * Math.max(1, Math.abs(best)) + problem.misfitWeight * 1e-5) {
      different++
      console.error(`differs: ${request.garment.kind}, ${aim}: ours ${objective}, HiGHS ${best}`)
    }
    compared++
  }
}
const [own, other] = [spread(mine), spread(theirs)]
const rows: Row[] = [
  {
    name: 'one aim solved and marked, median',
    value: own.median,
    unit: 'ms',
    ratio: other.median / own.median,
    against: 'HiGHS on the whole problem, same run'
  },
  {
    name: 'one aim solved and marked, p95',
    value: own.p95,
    unit: 'ms',
    ratio: other.p95 / own.p95,
    against: 'HiGHS on the whole problem, same run'
  },
  { name: 'problems whose optimum differs from HiGHS', value: different, unit: `of ${compared}`, ratio: null, against: null }
]
for (const [size, times] of [...bySize].sort(([one], [two]) => one.localeCompare(two, 'en', { numeric: true }))) {
  if (times.length >= 20)
    rows.push({
      name: `one aim, ${size}, median`,
      value: spread(times).median,
      unit: 'ms',
      ratio: spread(times).median / own.median,
      against: 'all sizes'
    })
}
for (const outlook of [false, true]) {
  const times = spread(requests.slice(0, 400).map((request) => timed(() => reckon(request, { outlook })).ms))
  const label = outlook ? 'reckon with outlook' : 'reckon without outlook'
  rows.push({ name: `${label}, median`, value: times.median, unit: 'ms', ratio: times.median / own.median, against: 'one aim, same run' })
  rows.push({ name: `${label}, p95`, value: times.p95, unit: 'ms', ratio: times.p95 / own.p95, against: 'one aim, same run' })
}
for (const { name, value, unit, ratio, against } of rows)
  console.log(`${name}: ${value.toPrecision(3)} ${unit}${ratio === null ? '' : ` (× ${ratio.toPrecision(3)} ${against})`}`)
writeResults('planner', rows)
if (different > 0 || compared < PROBLEMS) {
  console.error(`${different} of ${compared} problems differ; ${PROBLEMS} were asked for`)
  process.exit(1)
}

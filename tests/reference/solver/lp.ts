/** The problem written anew as a CPLEX LP text, sharing nothing with the planner's own model. */
import type { Option } from '../../../core/alterations/row.ts'
import type { Amounts, Problem } from '../../../core/plan/solve/problem.ts'

const SOFT_BURDEN = 0.5
const IDLE_BURDEN = 0.001
const n = (value: number): string => `${value < 0 ? '-' : '+'} ${Math.abs(value).toPrecision(17)}`
const bare = (value: number): string => value.toPrecision(17)

export interface LpText {
  text: string
  amountsFrom(column: (name: string) => number): Amounts
}

/**
 * `alone` asks only for the least Σf, or for the least plain overshoot Σo (an amount may then be less than a mark), or for the least Σf in whole
 * marks of every stitching line.
 */
export function lpText(problem: Problem, alone?: 'misfit' | 'over' | 'marks'): LpText {
  const misfitAlone = alone !== undefined
  const whole: string[] = []
  const cost: string[] = []
  const rows: string[] = []
  const bounds: string[] = []
  const binaries: string[] = []
  const row = (terms: string, relation: string) => rows.push(`c${rows.length}: ${terms} ${relation}`)

  problem.points.forEach(({ point, mm, least, ideal, most }, p) => {
    const moves = problem.options.flatMap((option, a) =>
      option.lines.flatMap((line, k) => (line.effects[point] ? [[`x${a}_${k}`, line.effects[point] ?? 0] as const] : []))
    )
    const sum = (factor: number) => moves.map(([name, effect]) => `${n(factor * effect)} ${name}`).join(' ')
    row(`f${p} ${sum(-1)}`, `>= ${bare(mm - most)}`)
    if (alone !== 'over') row(`f${p} ${sum(-3)}`, `>= ${bare(3 * (mm - most) - 30)}`)
    row(`f${p} ${sum(1)}`, `>= ${bare(least - mm)}`)
    if (alone !== 'over') row(`f${p} ${sum(3)}`, `>= ${bare(3 * (least - mm) - 30)}`)
    cost.push(`${n(misfitAlone ? 1 : problem.misfitWeight)} f${p}`)
    if (misfitAlone) return
    row(`d${p} ${sum(-1)}`, `>= ${bare(mm - ideal)}`)
    row(`d${p} ${sum(1)}`, `>= ${bare(ideal - mm)}`)
    cost.push(`${n(problem.distanceWeight)} d${p}`)
  })

  const opened = new Set<string>()
  problem.options.forEach((option, a) => {
    binaries.push(`y${a}`)
    if (!misfitAlone) cost.push(`${n(option.setupMinutes + option.penaltyMinutes)} y${a}`)
    if (alone !== 'over') row(`${option.lines.map((_, k) => `+ x${a}_${k}`).join(' ')} ${n(-problem.markMm)} y${a}`, '>= 0')
    option.lines.forEach((line, k) => {
      const x = `x${a}_${k}`
      bounds.push(`0 <= ${x} <= ${bare(line.capMm)}`)
      row(`${x} ${n(-line.capMm)} y${a}`, '<= 0')
      if (alone === 'marks' && option.fixedMm === undefined) {
        whole.push(`n${a}_${k}`)
        bounds.push(`0 <= n${a}_${k} <= 5000`)
        row(`${x} ${n(-problem.markMm * Math.max(1, ...line.seams.map(({ mmPerOffset }) => mmPerOffset)))} n${a}_${k}`, '= 0')
      }
      if (option.fixedMm !== undefined) row(`${x} ${n(-option.fixedMm)} y${a}`, '= 0')
      if (k > 0) {
        row(`${x} - x${a}_${k - 1}`, `<= ${bare(option.smoothMm)}`)
        row(`x${a}_${k - 1} - ${x}`, `<= ${bare(option.smoothMm)}`)
      }
      if (misfitAlone) return
      if (!problem.points.some(({ point }) => line.effects[point])) cost.push(`${n(IDLE_BURDEN)} ${x}`)
      if (line.softMm !== undefined && line.softMm < line.capMm) {
        row(`${x} - s${a}_${k}`, `<= ${bare(line.softMm)}`)
        cost.push(`${n(SOFT_BURDEN)} s${a}_${k}`)
      }
      if (option.tier?.line === k && option.tier.beyondMm < line.capMm) {
        binaries.push(`t${a}`)
        row(`${x} ${n(-(line.capMm - option.tier.beyondMm))} t${a}`, `<= ${bare(option.tier.beyondMm)}`)
        cost.push(`${n(option.tier.minutes)} t${a}`)
      }
    })
    for (const what of option.opens) {
      row(`z${what} - y${a}`, '>= 0')
      opened.add(what)
    }
  })
  if (!misfitAlone) for (const what of opened) cost.push(`${n(problem.preparations[what as keyof Problem['preparations']])} z${what}`)
  writePairs(problem.options, row)
  writeGroups(problem.options, row)
  return {
    text: [
      `minimize\n obj: ${cost.join('\n ') || '0 nothing'}`,
      `subject to\n ${rows.join('\n ')}`,
      `bounds\n ${bounds.join('\n ')}`,
      ...(whole.length === 0 ? [] : [`general\n ${whole.join(' ')}`]),
      `binary\n ${binaries.join(' ')}`,
      'end\n'
    ].join('\n'),
    amountsFrom: (column) =>
      problem.options.map((option, a) => option.lines.map((_, k) => (column(`y${a}`) > 0.5 ? Math.max(0, column(`x${a}_${k}`)) : 0)))
  }
}

function writePairs(options: readonly Option[], row: (terms: string, relation: string) => void): void {
  options.forEach((one, a) => {
    options.forEach((other, b) => {
      if (b <= a) return
      if (one.id === other.id || one.excludes.includes(other.id) || other.excludes.includes(one.id)) row(`y${a} + y${b}`, '<= 1')
    })
  })
}

function writeGroups(options: readonly Option[], row: (terms: string, relation: string) => void): void {
  const groups = new Map<string, { terms: string[]; budget: number }>()
  options.forEach((option, a) => {
    for (const limit of option.shared) {
      const group = groups.get(limit.group) ?? { terms: [], budget: Number.POSITIVE_INFINITY }
      limit.shares.forEach((share, k) => {
        if (share !== 0) group.terms.push(`${n(share)} x${a}_${k}`)
      })
      group.budget = Math.min(group.budget, limit.budgetMm)
      groups.set(limit.group, group)
    }
  })
  for (const { terms, budget } of groups.values()) if (terms.length > 0) row(terms.join(' '), `<= ${bare(budget)}`)
}

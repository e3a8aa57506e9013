/** The problem as yalps wants it, solved exactly. No time limit is given: yalps would read the clock. */
import { type Constraint, type Model, solve as solveModel } from 'yalps'
import { SOFT_MINUTES_PER_MM } from '../alterations/minutes.ts'
import type { Option } from '../alterations/row.ts'
import { type Amounts, excludeEachOther, idleMinutes, type Problem } from './problem.ts'

type Row = [string, number]

/** Rows and columns of one model, written down as they come. */
export class Sheet {
  readonly constraints = new Map<string, Constraint>()
  readonly variables = new Map<string, Row[]>()
  readonly binaries = new Set<string>()

  limit(row: string, bound: Constraint): void {
    this.constraints.set(row, bound)
  }
  put(variable: string, row: string, coefficient: number): void {
    if (coefficient === 0) return
    const rows = this.variables.get(variable)
    if (rows === undefined) this.variables.set(variable, [[row, coefficient]])
    else rows.push([row, coefficient])
  }
  model(): Model<string, string> {
    return { direction: 'minimize', objective: 'cost', constraints: this.constraints, variables: this.variables, binaries: this.binaries }
  }
}

const x = (a: number, k: number): string => `x${a}.${k}`
const y = (a: number): string => `y${a}`

/** The best amounts, before marks. Doing nothing is always feasible, so anything but "optimal" is a programming error. */
export function solve(problem: Problem): Amounts {
  if (problem.options.length === 0 || problem.points.length === 0) return problem.options.map((option) => option.lines.map(() => 0))
  const sheet = new Sheet()
  writeMisfit(sheet, problem)
  writeOptions(sheet, problem)
  writeShared(sheet, problem.options)
  const solution = solveModel(sheet.model())
  if (solution.status !== 'optimal') throw new Error(`the planner's problem came back ${solution.status}`)
  const values = new Map(solution.variables)
  return problem.options.map((option, a) => option.lines.map((_, k) => Math.max(0, values.get(x(a, k)) ?? 0)))
}

function writeMisfit(sheet: Sheet, problem: Problem): void {
  for (const { point, mm, least, ideal, most } of problem.points) {
    sheet.limit(`over.${point}`, { max: most - mm })
    sheet.limit(`over3.${point}`, { max: 3 * (most - mm) + 30 })
    sheet.limit(`under.${point}`, { min: least - mm })
    sheet.limit(`under3.${point}`, { min: 3 * (least - mm) - 30 })
    sheet.limit(`far.${point}`, { max: ideal - mm })
    sheet.limit(`near.${point}`, { min: ideal - mm })
    const f = `f.${point}`
    sheet.put(f, 'cost', problem.misfitWeight)
    for (const row of ['over', 'over3']) sheet.put(f, `${row}.${point}`, -1)
    for (const row of ['under', 'under3']) sheet.put(f, `${row}.${point}`, 1)
    const d = `d.${point}`
    sheet.put(d, 'cost', problem.distanceWeight)
    sheet.put(d, `far.${point}`, -1)
    sheet.put(d, `near.${point}`, 1)
  }
}

function writeOptions(sheet: Sheet, problem: Problem): void {
  const wanted = new Set(problem.points.map(({ point }) => point))
  for (const [a, option] of problem.options.entries()) {
    sheet.binaries.add(y(a))
    sheet.put(y(a), 'cost', option.setupMinutes + option.penaltyMinutes)
    sheet.limit(`used.${a}`, { min: 0 })
    sheet.put(y(a), `used.${a}`, -problem.markMm)
    for (const [k, line] of option.lines.entries()) {
      const amount = x(a, k)
      sheet.put(amount, 'cost', idleMinutes(line, problem.points))
      sheet.put(amount, `used.${a}`, 1)
      for (const [point, effect] of Object.entries(line.effects)) {
        if (!wanted.has(point as never)) continue
        for (const row of ['over', 'under', 'far', 'near']) sheet.put(amount, `${row}.${point}`, effect)
        for (const row of ['over3', 'under3']) sheet.put(amount, `${row}.${point}`, 3 * effect)
      }
      writeAmount(sheet, option, a, k)
    }
    for (const what of option.opens) {
      sheet.limit(`opens.${a}.${what}`, { max: 0 })
      sheet.put(y(a), `opens.${a}.${what}`, 1)
      sheet.put(`z.${what}`, `opens.${a}.${what}`, -1)
    }
    for (let b = a + 1; b < problem.options.length; b++) {
      const other = problem.options[b]
      if (other === undefined || !excludeEachOther(option, other)) continue
      sheet.limit(`not.${a}.${b}`, { max: 1 })
      sheet.put(y(a), `not.${a}.${b}`, 1)
      sheet.put(y(b), `not.${a}.${b}`, 1)
    }
  }
  for (const [what, minutes] of Object.entries(problem.preparations)) {
    if (sheet.variables.has(`z.${what}`)) sheet.put(`z.${what}`, 'cost', minutes)
  }
}

/** x ≤ u·y, its smoothness beside the amount before, its tier and its soft limit. */
function writeAmount(sheet: Sheet, option: Option, a: number, k: number): void {
  const line = option.lines[k]
  if (line === undefined) return
  const amount = x(a, k)
  const tier = option.tier?.line === k && option.tier.beyondMm < line.capMm ? option.tier : undefined
  const plain = tier === undefined ? line.capMm : Math.min(line.capMm, tier.beyondMm)
  const cap = `cap.${a}.${k}`
  sheet.limit(cap, option.fixedMm === undefined ? { max: 0 } : { equal: 0 })
  sheet.put(amount, cap, 1)
  sheet.put(y(a), cap, -(option.fixedMm ?? plain))
  if (tier !== undefined) {
    sheet.binaries.add(`t${a}`)
    sheet.put(`t${a}`, cap, -(line.capMm - tier.beyondMm))
    sheet.put(`t${a}`, 'cost', tier.minutes)
    sheet.limit(`tier.${a}`, { max: 0 })
    sheet.put(`t${a}`, `tier.${a}`, 1)
    sheet.put(y(a), `tier.${a}`, -1)
  }
  if (k > 0) {
    sheet.limit(`smooth.${a}.${k}`, { min: -option.smoothMm, max: option.smoothMm })
    sheet.put(amount, `smooth.${a}.${k}`, 1)
    sheet.put(x(a, k - 1), `smooth.${a}.${k}`, -1)
  }
  if (line.softMm !== undefined && line.softMm < line.capMm) {
    sheet.limit(`soft.${a}.${k}`, { max: line.softMm })
    sheet.put(amount, `soft.${a}.${k}`, 1)
    sheet.put(`s${a}.${k}`, `soft.${a}.${k}`, -1)
    sheet.put(`s${a}.${k}`, 'cost', SOFT_MINUTES_PER_MM)
  }
}

function writeShared(sheet: Sheet, options: readonly Option[]): void {
  for (const [a, option] of options.entries()) {
    for (const limit of option.shared) {
      const row = `shared.${limit.group}`
      const before = sheet.constraints.get(row)?.max ?? Number.POSITIVE_INFINITY
      sheet.limit(row, { max: Math.min(before, limit.budgetMm) })
      limit.shares.forEach((share, k) => {
        sheet.put(x(a, k), row, share)
      })
    }
  }
}

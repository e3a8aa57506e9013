/** The problem written as one model, and its best amounts. */
import { SOFT_MINUTES_PER_MM } from '../../alterations/minutes.ts'
import type { Line, Option } from '../../alterations/row.ts'
import { ROUNDING } from '../rounding.ts'
import { amountOf, capRow, LinearModel, type RowsOf, useOf, writeAmounts, writeExclusions, writeShared } from './linear-model.ts'
import { type Amounts, idleMinutes, type Problem, stepOf } from './problem.ts'
import { solveModel } from './solve-model.ts'

/** The best amounts, before marks. Doing nothing is always allowed, and is the answer where there is no better one to be had. */
export function solve(problem: Problem): Amounts {
  if (problem.options.length === 0 || problem.points.length === 0) return problem.options.map((option) => option.lines.map(() => 0))
  const values = solveModel(modelOf(problem))
  return problem.options.map((option, a) => option.lines.map((_, k) => Math.max(0, values?.get(amountOf(a, k)) ?? 0)))
}

/** No more branches are looked at for whole marks: rarely are they needed, and a plan in marks is known without. Counted, never timed. */
const MOST_BRANCHES = 400

/** The best amounts in whole marks of every stitching line that leave no more than a mark wrong; undefined where none were found. */
export function solveInSteps(problem: Problem): Amounts | undefined {
  const stepAt = ({ fixedMm }: Option, line: Line): number | undefined => (fixedMm === undefined ? stepOf(line, problem.markMm) : undefined)
  const options = problem.options.map((option) => ({ ...option, lines: option.lines.map((line) => cappedTo(line, stepAt(option, line))) }))
  const model = modelOf({ ...problem, options })
  model.limit('fits', { max: problem.markMm })
  for (const { point } of problem.points) model.put(`f.${point}`, 'fits', 1)
  for (const [a, option] of options.entries()) {
    for (const [k, line] of option.lines.entries()) {
      const step = stepAt(option, line)
      if (step !== undefined) model.countInSteps(amountOf(a, k), step)
    }
  }
  const values = solveModel(model, { maxIterations: MOST_BRANCHES })
  if (values === undefined) return undefined
  return options.map((option, a) =>
    option.lines.map((line, k) => {
      const value = values.get(amountOf(a, k)) ?? 0
      const step = stepAt(option, line)
      return step === undefined ? value : step * Math.round(value)
    })
  )
}

/** No more than the last whole step under the cap. */
const cappedTo = (line: Line, step: number | undefined): Line =>
  step === undefined ? line : { ...line, capMm: Math.floor((line.capMm + ROUNDING) / step) * step }

/** The whole model, for this solver or another. */
export function modelOf(problem: Problem): LinearModel {
  const model = new LinearModel()
  writeMisfit(model, problem)
  const wanted = new Set<string>(problem.points.map(({ point }) => point))
  const rowsOf: RowsOf = (point) =>
    wanted.has(point)
      ? [
          [`over.${point}`, 1],
          [`under.${point}`, 1],
          [`far.${point}`, 1],
          [`near.${point}`, 1],
          [`over3.${point}`, 3],
          [`under3.${point}`, 3]
        ]
      : []
  for (const [a, option] of problem.options.entries()) writeOption(model, problem, option, a, rowsOf)
  for (const [what, minutes] of Object.entries(problem.preparations)) {
    if (model.variables.has(`z.${what}`)) model.put(`z.${what}`, 'cost', minutes)
  }
  writeExclusions(model, problem.options)
  writeShared(model, problem.options)
  return model
}

function writeMisfit(model: LinearModel, problem: Problem): void {
  for (const { point, mm, least, ideal, most } of problem.points) {
    model.limit(`over.${point}`, { max: most - mm })
    model.limit(`over3.${point}`, { max: 3 * (most - mm) + 30 })
    model.limit(`under.${point}`, { min: least - mm })
    model.limit(`under3.${point}`, { min: 3 * (least - mm) - 30 })
    model.limit(`far.${point}`, { max: ideal - mm })
    model.limit(`near.${point}`, { min: ideal - mm })
    const f = `f.${point}`
    model.put(f, 'cost', problem.misfitWeight)
    for (const row of ['over', 'over3']) model.put(f, `${row}.${point}`, -1)
    for (const row of ['under', 'under3']) model.put(f, `${row}.${point}`, 1)
    const d = `d.${point}`
    model.put(d, 'cost', problem.distanceWeight)
    model.put(d, `far.${point}`, -1)
    model.put(d, `near.${point}`, 1)
  }
}

/** Used or not, at least one mark when used; what it opens; a tier past which it costs more; a soft limit past which it burdens. */
function writeOption(model: LinearModel, problem: Problem, option: Option, a: number, rowsOf: RowsOf): void {
  const tierOn = (k: number) =>
    option.tier !== undefined && option.tier.line === k && option.tier.beyondMm < (option.lines[k]?.capMm ?? 0) ? option.tier : undefined
  writeAmounts(model, option, a, rowsOf, true, (k) => tierOn(k)?.beyondMm ?? option.lines[k]?.capMm ?? 0)
  model.put(useOf(a), 'cost', option.setupMinutes + option.penaltyMinutes)
  model.limit(`used.${a}`, { min: 0 })
  model.put(useOf(a), `used.${a}`, -problem.markMm)
  for (const [k, line] of option.lines.entries()) {
    const amount = amountOf(a, k)
    model.put(amount, 'cost', idleMinutes(line, problem.points))
    model.put(amount, `used.${a}`, 1)
    const tier = tierOn(k)
    if (tier !== undefined) {
      model.binaries.add(`t${a}`)
      model.put(`t${a}`, capRow(a, k), -(line.capMm - tier.beyondMm))
      model.put(`t${a}`, 'cost', tier.minutes)
      model.limit(`tier.${a}`, { max: 0 })
      model.put(`t${a}`, `tier.${a}`, 1)
      model.put(useOf(a), `tier.${a}`, -1)
    }
    if (line.softMm !== undefined && line.softMm < line.capMm) {
      model.limit(`soft.${a}.${k}`, { max: line.softMm })
      model.put(amount, `soft.${a}.${k}`, 1)
      model.put(`s${a}.${k}`, `soft.${a}.${k}`, -1)
      model.put(`s${a}.${k}`, 'cost', SOFT_MINUTES_PER_MM)
    }
  }
  for (const what of option.opens) {
    model.limit(`opens.${a}.${what}`, { max: 0 })
    model.put(useOf(a), `opens.${a}.${what}`, 1)
    model.put(`z.${what}`, `opens.${a}.${what}`, -1)
  }
}

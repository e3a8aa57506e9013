/** Rows and columns of one model, written down as they come; and what every model of alterations has in common. */
import type { Constraint, Model } from 'yalps'
import type { Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import { excludeEachOther } from './problem.ts'

export class LinearModel {
  readonly constraints = new Map<string, Constraint>()
  readonly variables = new Map<string, [string, number][]>()
  readonly binaries = new Set<string>()
  readonly integers = new Set<string>()

  limit(row: string, bound: Constraint): void {
    this.constraints.set(row, bound)
  }

  put(variable: string, row: string, coefficient: number): void {
    if (coefficient === 0) return
    const rows = this.variables.get(variable)
    if (rows === undefined) this.variables.set(variable, [[row, coefficient]])
    else rows.push([row, coefficient])
  }

  /** A variable counted in whole steps of so much from here on. */
  countInSteps(variable: string, step: number): void {
    const rows = this.variables.get(variable) ?? []
    this.variables.set(
      variable,
      rows.map(([row, coefficient]) => [row, coefficient * step])
    )
    this.integers.add(variable)
  }

  forSolver(): Model<string, string> {
    return {
      direction: 'minimize',
      objective: 'cost',
      constraints: this.constraints,
      variables: this.variables,
      binaries: this.binaries,
      integers: this.integers
    }
  }
}

/** An option's k-th amount, and whether it is used. */
export const amountOf = (a: number, k: number): string => `x${a}.${k}`
export const useOf = (a: number): string => `y${a}`
export const capRow = (a: number, k: number): string => `cap.${a}.${k}`

/** The rows in which a point's own figure stands, each with its factor. */
export type RowsOf = (point: PointId) => readonly [string, number][]

/** Each wanted point's rows above its most and below its least; no other point has one. */
export function overAndUnder(points: Iterable<PointId>): RowsOf {
  const wanted = new Set(points)
  return (point) =>
    wanted.has(point)
      ? [
          [`over.${point}`, 1],
          [`under.${point}`, 1]
        ]
      : []
}

/**
 * One option's amounts: what each moves, its cap (up to where a tier begins), its one fixed step, and its smoothness beside the amount before.
 * With `binary` it is used or not; without, only bounded.
 */
export function writeAmounts(
  model: LinearModel,
  option: Option,
  a: number,
  rowsOf: RowsOf,
  binary: boolean,
  plainMm: (k: number) => number
): void {
  if (binary) model.binaries.add(useOf(a))
  for (const [k, line] of option.lines.entries()) {
    const amount = amountOf(a, k)
    for (const [point, effect] of Object.entries(line.effects) as [PointId, number][]) {
      for (const [row, factor] of rowsOf(point)) model.put(amount, row, factor * effect)
    }
    const cap = option.fixedMm ?? plainMm(k)
    model.limit(capRow(a, k), option.fixedMm === undefined ? { max: binary ? 0 : cap } : { equal: 0 })
    model.put(amount, capRow(a, k), 1)
    if (binary) model.put(useOf(a), capRow(a, k), -cap)
    if (k === 0) continue
    const smooth = `smooth.${a}.${k}`
    model.limit(smooth, { min: -option.smoothMm, max: option.smoothMm })
    model.put(amount, smooth, 1)
    model.put(amountOf(a, k - 1), smooth, -1)
  }
}

/** The options that this one never goes with, by place. */
export const rivalsOf = (options: readonly Option[], a: number): number[] => {
  const option = options[a]
  return option === undefined ? [] : options.flatMap((other, b) => (excludeEachOther(option, other) ? [b] : []))
}

/** y_a + y_b ≤ 1 for each pair. */
export function writeExclusions(model: LinearModel, options: readonly Option[]): void {
  for (const a of options.keys()) {
    for (const b of rivalsOf(options, a)) {
      if (b < a) continue
      const row = `not.${a}.${b}`
      model.limit(row, { max: 1 })
      model.put(useOf(a), row, 1)
      model.put(useOf(b), row, 1)
    }
  }
}

/** Σ share × amount ≤ budget, by group; of several budgets for one group the least holds. */
export function writeShared(model: LinearModel, options: readonly Option[]): void {
  for (const [a, option] of options.entries()) {
    for (const limit of option.shared) {
      const row = `shared.${limit.group}`
      model.limit(row, { max: Math.min(model.constraints.get(row)?.max ?? Number.POSITIVE_INFINITY, limit.budgetMm) })
      limit.shares.forEach((share, k) => {
        model.put(amountOf(a, k), row, share)
      })
    }
  }
}

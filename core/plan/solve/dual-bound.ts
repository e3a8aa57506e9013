/**
 * Lower bounds on misfit. The multipliers of the linear relaxation (its dual) are found once and hold for any other figures and limits, because
 * those stand only on the right-hand side. Where such a bound is more than a mark, no plan fits.
 *
 * For multipliers λ, μ ≥ 0 of "too big" and "too small" (λ + μ ≤ 1 at each point), β of the shared limits and σ of smoothness, no plan leaves less
 * misfit than
 *
 *   Σ_p λ_p (m_p − most_p) + μ_p (least_p − m_p) − Σ_x cap_x · max(0, reduced_x) − Σ_g budget_g β_g − Σ 60 σ
 *
 * with reduced_x = Σ_p (μ_p − λ_p) E_px − share_x β ∓ σ (weak duality; any textbook on linear programming).
 */
import type { Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import { LinearModel } from './linear-model.ts'
import { solveModel } from './solve-model.ts'

/** Figures and bands by point, mm. */
export interface Figures {
  at: Float64Array
  least: Float64Array
  most: Float64Array
}

export interface DualBound {
  tooBig: Float64Array
  tooSmall: Float64Array
  /** By group of a shared limit. */
  shared: ReadonlyMap<string, number>
  /** By option key: of amount k beside amount k − 1, upward and downward. */
  smooth: ReadonlyMap<string, [number, number][]>
}

/** No plan leaves less misfit than this, mm. */
export function misfitLowerBound(
  dual: DualBound,
  points: readonly PointId[],
  options: readonly Option[],
  { at, least, most }: Figures
): number {
  let bound = 0
  for (let p = 0; p < points.length; p++) {
    bound += (dual.tooBig[p] ?? 0) * ((at[p] ?? 0) - (most[p] ?? 0)) + (dual.tooSmall[p] ?? 0) * ((least[p] ?? 0) - (at[p] ?? 0))
  }
  const budgets = new Map<string, number>()
  for (const option of options) {
    const smooth = dual.smooth.get(option.key)
    for (const [k, line] of option.lines.entries()) {
      let reduced = 0
      for (let p = 0; p < points.length; p++) {
        const point = points[p]
        const effect = point === undefined ? undefined : line.effects[point]
        if (effect !== undefined) reduced += ((dual.tooSmall[p] ?? 0) - (dual.tooBig[p] ?? 0)) * effect
      }
      for (const { group, shares, budgetMm } of option.shared) {
        reduced -= (shares[k] ?? 0) * (dual.shared.get(group) ?? 0)
        budgets.set(group, Math.min(budgets.get(group) ?? Number.POSITIVE_INFINITY, budgetMm))
      }
      const [up, down] = smooth?.[k] ?? [0, 0]
      const [nextUp, nextDown] = smooth?.[k + 1] ?? [0, 0]
      reduced += down - up + nextUp - nextDown
      if (k > 0) bound -= option.smoothMm * (up + down)
      if (reduced > 0) bound -= line.capMm * reduced
    }
  }
  for (const [group, budget] of budgets) bound -= budget * (dual.shared.get(group) ?? 0)
  return bound
}

/** The dual of the relaxation at these figures. */
export function dualModel(points: readonly PointId[], options: readonly Option[], { at, least, most }: Figures): LinearModel {
  const model = new LinearModel()
  for (const [p, point] of points.entries()) {
    model.limit(`o.${point}`, { max: 1 })
    model.put(`b.${point}`, `o.${point}`, 1)
    model.put(`s.${point}`, `o.${point}`, 1)
    model.put(`b.${point}`, 'cost', -((at[p] ?? 0) - (most[p] ?? 0)))
    model.put(`s.${point}`, 'cost', -((least[p] ?? 0) - (at[p] ?? 0)))
  }
  const budgets = new Map<string, number>()
  for (const [a, option] of options.entries()) {
    for (const [k, line] of option.lines.entries()) {
      const row = `x${a}.${k}`
      model.limit(row, { max: 0 })
      for (const point of points) {
        const effect = line.effects[point] ?? 0
        model.put(`b.${point}`, row, -effect)
        model.put(`s.${point}`, row, effect)
      }
      model.put(`r${a}.${k}`, row, -1)
      model.put(`r${a}.${k}`, 'cost', line.capMm)
      for (const { group, shares, budgetMm } of option.shared) {
        model.put(`g.${group}`, row, -(shares[k] ?? 0))
        budgets.set(group, Math.min(budgets.get(group) ?? Number.POSITIVE_INFINITY, budgetMm))
      }
      if (k === 0) continue
      for (const [way, sign] of [
        ['u', 1],
        ['d', -1]
      ] as const) {
        const variable = `${way}${a}.${k}`
        model.put(variable, 'cost', option.smoothMm)
        model.put(variable, row, -sign)
        model.put(variable, `x${a}.${k - 1}`, sign)
      }
    }
  }
  for (const [group, budget] of budgets) model.put(`g.${group}`, 'cost', budget)
  return model
}

/** The highest bound at these figures: the dual of the relaxation, solved. */
export function dualBoundFor(points: readonly PointId[], options: readonly Option[], figures: Figures): DualBound {
  // without an answer every multiplier is 0: such a bound rules nothing out, and does no harm
  const values = solveModel(dualModel(points, options, figures))
  const value = (name: string): number => Math.max(0, values?.get(name) ?? 0)
  return {
    tooBig: Float64Array.from(points, (point) => value(`b.${point}`)),
    tooSmall: Float64Array.from(points, (point) => value(`s.${point}`)),
    shared: new Map(options.flatMap(({ shared }) => shared.map(({ group }) => [group, value(`g.${group}`)]))),
    smooth: new Map(
      options.flatMap((option, a) =>
        option.lines.length > 1
          ? [
              [
                option.key,
                option.lines.map((_, k): [number, number] => (k === 0 ? [0, 0] : [value(`u${a}.${k}`), value(`d${a}.${k}`)]))
              ] as const
            ]
          : []
      )
    )
  }
}

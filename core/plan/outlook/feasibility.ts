/**
 * How little misfit can some plan leave at the points of one part? The answer is exact. Most draws need no solve:
 * - where nothing is over, nothing need be done;
 * - where a point is out of all reach, or a bound found before forbids it, no plan fits;
 * - where the amounts of a plan found before are allowed here and fit, that plan does.
 * Any other draw is solved for the plan that leaves most room, and the plan, or else the bound that shows there is none, is kept in the cache. All
 * makes (scenarios) share the cache: a plan is good for every make whose limits allow it, and a bound holds for any limits.
 */
import type { Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import { ROUNDING } from '../rounding.ts'
import { type DualBound, dualBoundFor, type Figures, misfitLowerBound } from '../solve/dual-bound.ts'
import { amountOf, LinearModel, overAndUnder, rivalsOf, writeAmounts, writeExclusions, writeShared } from '../solve/linear-model.ts'
import { reachAt } from '../solve/problem.ts'
import { singlePointReach } from '../solve/single-point-reach.ts'
import { solveModel } from '../solve/solve-model.ts'

/** The answer to a model that cannot be solved: no plan is known, so none is promised. */
const NOTHING_DONE: ReadonlyMap<string, number> = new Map()
const ROOM_MM = 10
const OVER_WEIGHT = 1000
/** Two rivals are ruled out by cases, without the one and without the other; so many deep at the most. */
const DEEPEST = 6

/** Nothing moves it. */
const STILL = { up: 0, down: 0 }

/** Amounts that some make allowed, and how far they move each point, mm. */
interface KnownPlan {
  moved: Float64Array
  used: { key: string; amounts: number[] }[]
}
/** One case of what rules a fit out: the bound that holds without these options. */
interface Case {
  bound: DualBound
  without: ReadonlySet<string>
}

/** What was found in the draws so far, for all makes alike. */
export class FeasibilityCache {
  readonly plans: KnownPlan[] = []
  /** Each: the cases that together rule a fit out. */
  readonly bounds: Case[][] = []
}

export class Feasibility {
  private readonly points: readonly PointId[]
  private readonly options: readonly Option[]
  private readonly byKey: ReadonlyMap<string, Option>
  private readonly markMm: number
  private readonly cache: FeasibilityCache
  private readonly reach: { up: number; down: number }[]
  private readonly single: { up: number; down: number } | undefined

  constructor(points: readonly PointId[], options: readonly Option[], markMm: number, cache: FeasibilityCache = new FeasibilityCache()) {
    this.points = points
    this.options = options
    this.byKey = new Map(options.map((option) => [option.key, option]))
    this.markMm = markMm
    this.cache = cache
    this.reach = points.map((point) => reachAt(point, options))
    const [only] = points
    this.single = only !== undefined && points.length === 1 ? singlePointReach(only, options) : undefined
  }

  /** The misfit that a plan already known leaves, mm: the least over those that this make allows, doing nothing among them. */
  misfitKnown(figures: Figures): number {
    let best = misfitOf(figures)
    if (this.single !== undefined) return Math.min(best, this.leftAtSinglePoint(figures))
    for (const one of this.cache.plans) {
      if (best === 0) return 0
      const misfit = misfitOf(figures, one.moved)
      if (misfit < best && this.allows(one)) best = misfit
    }
    return best
  }

  /** The least misfit that any plan leaves, mm; infinite where it is certainly more than a mark. */
  leastMisfit(figures: Figures): number {
    const asItIs = misfitOf(figures)
    if (asItIs === 0 || this.options.length === 0) return asItIs
    if (this.single !== undefined) return this.leftAtSinglePoint(figures)
    for (const cases of this.cache.bounds) if (this.ruledOut(cases, figures)) return Number.POSITIVE_INFINITY
    const one = this.planFrom(solveModel(roomModel(this.points, this.options, figures, true)) ?? NOTHING_DONE)
    const misfit = misfitOf(figures, one.moved)
    if (misfit <= this.markMm + ROUNDING) this.cache.plans.push(one)
    else {
      const cases = this.ruleOut(this.options, figures, DEEPEST)
      if (cases !== undefined) this.cache.bounds.push(cases)
    }
    return misfit
  }

  private leftAtSinglePoint({ at, least, most }: Figures): number {
    const { up, down } = this.single ?? STILL
    const mm = at[0] ?? 0
    return Math.max(0, mm - down - (most[0] ?? 0), (least[0] ?? 0) - mm - up)
  }

  /** Is some point further out than everything together could move it? */
  outOfReach(figures: Figures): boolean {
    for (let p = 0; p < figures.at.length; p++) if (this.isBeyond(p, figures)) return true
    return false
  }

  /** Is this point? */
  isBeyond(p: number, { at, least, most }: Figures): boolean {
    const mm = at[p] ?? 0
    const { up, down } = this.reach[p] ?? STILL
    return mm - down > (most[p] ?? 0) + this.markMm || mm + up < (least[p] ?? 0) - this.markMm
  }

  /** Does this make allow these amounts: each option there, each amount under its cap, each shared limit kept? */
  private allows({ used }: KnownPlan): boolean {
    const drawn = new Map<string, number>()
    for (const { key, amounts } of used) {
      const option = this.byKey.get(key)
      if (option === undefined) return false
      for (const [k, mm] of amounts.entries()) if (mm > (option.lines[k]?.capMm ?? 0) + ROUNDING) return false
      for (const limit of option.shared) {
        const sum = (drawn.get(limit.group) ?? 0) + limit.shares.reduce((total, share, k) => total + share * (amounts[k] ?? 0), 0)
        if (sum > limit.budgetMm + ROUNDING) return false
        drawn.set(limit.group, sum)
      }
    }
    return true
  }

  private ruledOut(cases: readonly Case[], figures: Figures): boolean {
    return cases.every(({ bound, without }) => {
      const options = without.size === 0 ? this.options : this.options.filter(({ key }) => !without.has(key))
      return misfitLowerBound(bound, this.points, options, figures) > this.markMm + ROUNDING
    })
  }

  /** The relaxation's bound, or else one without the one and one without the other of two rivals that it uses together; undefined: none is known. */
  private ruleOut(options: readonly Option[], figures: Figures, deep: number): Case[] | undefined {
    const bound = dualBoundFor(this.points, options, figures)
    if (misfitLowerBound(bound, this.points, options, figures) > this.markMm + ROUNDING) {
      const there = new Set(options.map(({ key }) => key))
      return [{ bound, without: new Set(this.options.filter(({ key }) => !there.has(key)).map(({ key }) => key)) }]
    }
    if (deep === 0) return undefined
    const values = solveModel(roomModel(this.points, options, figures, false)) ?? NOTHING_DONE
    const used = (a: number): boolean => options[a]?.lines.some((_, k) => (values.get(amountOf(a, k)) ?? 0) > ROUNDING) ?? false
    const one = [...options.keys()].find((a) => used(a) && rivalsOf(options, a).some(used))
    if (one === undefined) return undefined
    const other = rivalsOf(options, one).find(used)
    const withoutOne = this.ruleOut(
      options.filter((_, a) => a !== one),
      figures,
      deep - 1
    )
    if (withoutOne === undefined) return undefined
    const withoutOther = this.ruleOut(
      options.filter((_, a) => a !== other),
      figures,
      deep - 1
    )
    return withoutOther === undefined ? undefined : [...withoutOne, ...withoutOther]
  }

  private planFrom(values: ReadonlyMap<string, number>): KnownPlan {
    const moved = new Float64Array(this.points.length)
    const used: KnownPlan['used'] = []
    for (const [a, option] of this.options.entries()) {
      const amounts = option.lines.map((_, k) => Math.max(0, values.get(amountOf(a, k)) ?? 0))
      if (!amounts.some((mm) => mm > ROUNDING)) continue
      used.push({ key: option.key, amounts })
      for (const [k, line] of option.lines.entries()) {
        const mm = amounts[k] ?? 0
        for (const [p, point] of this.points.entries()) moved[p] = (moved[p] ?? 0) + (line.effects[point] ?? 0) * mm
      }
    }
    return { moved, used }
  }
}

/**
 * least + r − o ≤ after ≤ most − r + o: o is misfit, r the room left, as much as may be. Written with what is short of the most room, u = ROOM − r,
 * so that every cost is positive and the solver starts where nothing can be had for less. Without `exact` rivals may go together.
 */
export function roomModel(
  points: readonly PointId[],
  options: readonly Option[],
  { at, least, most }: Figures,
  exact: boolean
): LinearModel {
  const model = new LinearModel()
  model.limit('room', { max: ROOM_MM })
  model.put('u', 'room', 1)
  model.put('u', 'cost', 1)
  for (const [p, point] of points.entries()) {
    model.limit(`over.${point}`, { max: (most[p] ?? 0) - (at[p] ?? 0) - ROOM_MM })
    model.limit(`under.${point}`, { min: (least[p] ?? 0) - (at[p] ?? 0) + ROOM_MM })
    model.put('u', `over.${point}`, -1)
    model.put('u', `under.${point}`, 1)
    const o = `o.${point}`
    model.put(o, 'cost', OVER_WEIGHT)
    model.put(o, `over.${point}`, -1)
    model.put(o, `under.${point}`, 1)
  }
  const rowsOf = overAndUnder(points)
  for (const [a, option] of options.entries()) {
    const binary = exact && (option.fixedMm !== undefined || rivalsOf(options, a).length > 0)
    writeAmounts(model, exact ? option : relaxed(option), a, rowsOf, binary, (k) => option.lines[k]?.capMm ?? 0)
  }
  if (exact) writeExclusions(model, options)
  writeShared(model, options)
  return model
}

/** Misfit of the figures, moved so: mm. */
function misfitOf({ at, least, most }: Figures, moved?: Float64Array): number {
  let sum = 0
  for (let p = 0; p < at.length; p++) {
    const mm = (at[p] ?? 0) + (moved === undefined ? 0 : (moved[p] ?? 0))
    const above = mm - (most[p] ?? 0)
    const below = (least[p] ?? 0) - mm
    if (above > 0) sum += above
    else if (below > 0) sum += below
  }
  return sum
}

/** One fixed step, taken as any amount up to it. */
function relaxed(option: Option): Option {
  const { fixedMm: _, ...rest } = option
  return rest
}

/**
 * How little misfit can some plan leave at the points of one part? Exact and cheap: nothing to do where nothing is over; refused where a
 * point is out of all reach or a proof found before says so; granted where amounts found before are allowed and fit; else one solve that
 * makes the most room, whose amounts (or else the proof that there are none) are kept. The makes that may be (scenarios) share what was
 * found: amounts that a make's limits allow are good for it too, and a proof holds for any limits.
 */
import type { Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import { ROUNDING } from '../rounding.ts'
import { farthestAlone } from '../solve/alone.ts'
import { type Figures, leastLeft, type Proof, proofFor } from '../solve/bound.ts'
import { reachAt } from '../solve/problem.ts'
import { amountOf, type RowsOf, rivalsOf, Sheet, writeAmounts, writeExclusions, writeShared } from '../solve/sheet.ts'
import { solveModel } from '../solve/solve-model.ts'

/** The answer to a model that cannot be solved: no plan is known, so none is promised. */
const NOTHING_DONE: ReadonlyMap<string, number> = new Map()
const ROOM_MM = 10
const OVER_WEIGHT = 1000
/** A choice between rivals is proved by cases, so many deep at the most. */
const DEEPEST = 6

interface Kept {
  moved: Float64Array
  used: { key: string; amounts: number[] }[]
}
/** One case of a proof: what it leaves without these options. */
interface Case {
  proof: Proof
  without: ReadonlySet<string>
}

/** What was found so far, for all makes alike. */
export class Found {
  readonly kept: Kept[] = []
  readonly proofs: Case[][] = []
}

export class Feasibility {
  private readonly points: readonly PointId[]
  private readonly options: readonly Option[]
  private readonly byKey: ReadonlyMap<string, Option>
  private readonly markMm: number
  private readonly found: Found
  private readonly reach: { up: number; down: number }[]
  private readonly alone: { up: number; down: number } | undefined

  constructor(points: readonly PointId[], options: readonly Option[], markMm: number, found: Found = new Found()) {
    this.points = points
    this.options = options
    this.byKey = new Map(options.map((option) => [option.key, option]))
    this.markMm = markMm
    this.found = found
    this.reach = points.map((point) => reachAt(point, options))
    const [only] = points
    this.alone = only !== undefined && points.length === 1 ? farthestAlone(only, options) : undefined
  }

  /** Misfit that some amounts already known leave, mm: the least of those that this make allows. */
  atMost(figures: Figures): number {
    let best = over(figures)
    if (this.alone !== undefined) return Math.min(best, this.leftAlone(figures))
    for (const one of this.found.kept) {
      if (best === 0) return 0
      const misfit = over(figures, one.moved)
      if (misfit < best && this.allows(one)) best = misfit
    }
    return best
  }

  /** The least misfit, mm; infinite when it is certainly more than a mark. */
  left(figures: Figures): number {
    const asItIs = over(figures)
    if (asItIs === 0 || this.options.length === 0) return asItIs
    if (this.alone !== undefined) return this.leftAlone(figures)
    for (const cases of this.found.proofs) if (this.proved(cases, figures)) return Number.POSITIVE_INFINITY
    const one = this.keepable(solveModel(roomModel(this.points, this.options, figures, true)) ?? NOTHING_DONE)
    const misfit = over(figures, one.moved)
    if (misfit <= this.markMm + ROUNDING) this.found.kept.push(one)
    else {
      const cases = this.prove(this.options, figures, DEEPEST)
      if (cases !== undefined) this.found.proofs.push(cases)
    }
    return misfit
  }

  private leftAlone({ at, least, most }: Figures): number {
    const { up, down } = this.alone ?? { up: 0, down: 0 }
    const mm = at[0] ?? 0
    return Math.max(0, mm - down - (most[0] ?? 0), (least[0] ?? 0) - mm - up)
  }

  /** Is some point further out than everything together could move it? */
  outOfReach({ at, least, most }: Figures): boolean {
    for (const [p, reach] of this.reach.entries()) {
      const mm = at[p] ?? 0
      if (mm - reach.down > (most[p] ?? 0) + this.markMm || mm + reach.up < (least[p] ?? 0) - this.markMm) return true
    }
    return false
  }

  /** Does this make allow these amounts: each option there, each amount under its cap, each shared limit kept? */
  private allows({ used }: Kept): boolean {
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

  private proved(cases: readonly Case[], figures: Figures): boolean {
    return cases.every(({ proof, without }) => {
      const options = without.size === 0 ? this.options : this.options.filter(({ key }) => !without.has(key))
      return leastLeft(proof, this.points, options, figures) > this.markMm + ROUNDING
    })
  }

  /** A proof by cases: the relaxation, or else without the one and without the other of two rivals that it uses together. */
  private prove(options: readonly Option[], figures: Figures, deep: number): Case[] | undefined {
    const proof = proofFor(this.points, options, figures)
    if (leastLeft(proof, this.points, options, figures) > this.markMm + ROUNDING) {
      const there = new Set(options.map(({ key }) => key))
      return [{ proof, without: new Set(this.options.filter(({ key }) => !there.has(key)).map(({ key }) => key)) }]
    }
    if (deep === 0) return undefined
    const values = solveModel(roomModel(this.points, options, figures, false)) ?? NOTHING_DONE
    const used = (a: number): boolean => options[a]?.lines.some((_, k) => (values.get(amountOf(a, k)) ?? 0) > ROUNDING) ?? false
    const one = [...options.keys()].find((a) => used(a) && rivalsOf(options, a).some(used))
    if (one === undefined) return undefined
    const other = rivalsOf(options, one).find(used)
    const withoutOne = this.prove(
      options.filter((_, a) => a !== one),
      figures,
      deep - 1
    )
    if (withoutOne === undefined) return undefined
    const withoutOther = this.prove(
      options.filter((_, a) => a !== other),
      figures,
      deep - 1
    )
    return withoutOther === undefined ? undefined : [...withoutOne, ...withoutOther]
  }

  private keepable(values: ReadonlyMap<string, number>): Kept {
    const moved = new Float64Array(this.points.length)
    const used: Kept['used'] = []
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
export function roomModel(points: readonly PointId[], options: readonly Option[], { at, least, most }: Figures, exact: boolean): Sheet {
  const sheet = new Sheet()
  sheet.limit('room', { max: ROOM_MM })
  sheet.put('u', 'room', 1)
  sheet.put('u', 'cost', 1)
  for (const [p, point] of points.entries()) {
    sheet.limit(`over.${point}`, { max: (most[p] ?? 0) - (at[p] ?? 0) - ROOM_MM })
    sheet.limit(`under.${point}`, { min: (least[p] ?? 0) - (at[p] ?? 0) + ROOM_MM })
    sheet.put('u', `over.${point}`, -1)
    sheet.put('u', `under.${point}`, 1)
    const o = `o.${point}`
    sheet.put(o, 'cost', OVER_WEIGHT)
    sheet.put(o, `over.${point}`, -1)
    sheet.put(o, `under.${point}`, 1)
  }
  const wanted = new Set<string>(points)
  const rowsOf: RowsOf = (point) =>
    wanted.has(point)
      ? [
          [`over.${point}`, 1],
          [`under.${point}`, 1]
        ]
      : []
  for (const [a, option] of options.entries()) {
    const binary = exact && (option.fixedMm !== undefined || rivalsOf(options, a).length > 0)
    writeAmounts(sheet, exact ? option : relaxed(option), a, rowsOf, binary, (k) => option.lines[k]?.capMm ?? 0)
  }
  if (exact) writeExclusions(sheet, options)
  writeShared(sheet, options)
  return sheet
}

/** Misfit of the figures, moved so: mm. */
function over({ at, least, most }: Figures, moved?: Float64Array): number {
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

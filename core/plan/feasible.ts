/**
 * Can some plan bring given figures inside given bands, with no more than one mark of misfit in all? Exact and cheap: refused where a point
 * is out of all reach, granted where amounts found before are allowed and fit, else one solve that makes the most room, whose amounts are
 * kept. The makes that may be (scenarios) share what was found: amounts that a make's limits allow are good for it too.
 */
import { solve as solveModel } from 'yalps'
import type { Option } from '../alterations/row.ts'
import type { PointId } from '../garment/points.ts'
import { reachAt } from './problem.ts'
import { amountOf, type RowsOf, rivalsOf, Sheet, writeAmounts, writeExclusions, writeShared } from './sheet.ts'

const ROOM_MM = 10
const OVER_WEIGHT = 1000
const EPSILON = 1e-6

interface Kept {
  moved: Float64Array
  /** By option: its amounts, and what it draws on each shared limit. */
  used: { key: string; amounts: number[] }[]
}

/** What was found so far, for all makes alike. Effects that differ between makes (a taper's share at the hip) are taken into the key. */
export class Found {
  readonly kept: Kept[] = []
}

export class Feasibility {
  private readonly points: readonly PointId[]
  private readonly options: readonly Option[]
  private readonly byKey: ReadonlyMap<string, Option>
  private readonly markMm: number
  private readonly found: Found
  private readonly reach: { up: number; down: number }[]

  constructor(points: readonly PointId[], options: readonly Option[], markMm: number, found: Found = new Found()) {
    this.points = points
    this.options = options.filter((option) => option.lines.some((line) => points.some((point) => (line.effects[point] ?? 0) !== 0)))
    this.byKey = new Map(this.options.map((option) => [option.key, option]))
    this.markMm = markMm
    this.found = found
    this.reach = points.map((point) => reachAt(point, this.options))
  }

  /** mm by point: where it is, and the band. */
  fits(at: Float64Array, least: Float64Array, most: Float64Array): boolean {
    if (this.over(at, least, most) <= this.markMm + EPSILON) return true
    for (const [p, reach] of this.reach.entries()) {
      const mm = at[p] ?? 0
      if (mm - reach.down > (most[p] ?? 0) + this.markMm || mm + reach.up < (least[p] ?? 0) - this.markMm) return false
    }
    for (const one of this.found.kept) if (this.over(at, least, most, one.moved) <= this.markMm + EPSILON && this.allows(one)) return true
    return this.solve(at, least, most)
  }

  private over(at: Float64Array, least: Float64Array, most: Float64Array, moved?: Float64Array): number {
    let sum = 0
    for (let p = 0; p < at.length; p++) {
      const mm = (at[p] ?? 0) + (moved === undefined ? 0 : (moved[p] ?? 0))
      const most1 = mm - (most[p] ?? 0)
      const least1 = (least[p] ?? 0) - mm
      if (most1 > 0) sum += most1
      else if (least1 > 0) sum += least1
    }
    return sum
  }

  /** Does this make allow these amounts: each option there, each amount under its cap, each shared limit kept? */
  private allows({ used }: Kept): boolean {
    const drawn = new Map<string, number>()
    for (const { key, amounts } of used) {
      const option = this.byKey.get(key)
      if (option === undefined) return false
      for (const [k, mm] of amounts.entries()) if (mm > (option.lines[k]?.capMm ?? 0) + EPSILON) return false
      for (const limit of option.shared) {
        const sum = (drawn.get(limit.group) ?? 0) + limit.shares.reduce((total, share, k) => total + share * (amounts[k] ?? 0), 0)
        if (sum > limit.budgetMm + EPSILON) return false
        drawn.set(limit.group, sum)
      }
    }
    return true
  }

  private solve(at: Float64Array, least: Float64Array, most: Float64Array): boolean {
    const sheet = new Sheet()
    this.writeRoom(sheet, at, least, most)
    const wanted = new Set<string>(this.points)
    const rowsOf: RowsOf = (point) =>
      wanted.has(point)
        ? [
            [`over.${point}`, 1],
            [`under.${point}`, 1]
          ]
        : []
    for (const [a, option] of this.options.entries()) {
      const binary = option.fixedMm !== undefined || rivalsOf(this.options, a).length > 0
      writeAmounts(sheet, option, a, rowsOf, binary, (k) => option.lines[k]?.capMm ?? 0)
    }
    writeExclusions(sheet, this.options)
    writeShared(sheet, this.options)
    const solution = solveModel(sheet.model())
    if (solution.status !== 'optimal') throw new Error(`the outlook's problem came back ${solution.status}`)
    const one = this.keepable(new Map(solution.variables))
    if (this.over(at, least, most, one.moved) > this.markMm + EPSILON) return false
    this.found.kept.push(one)
    return true
  }

  /** least + t − o ≤ after ≤ most − t + o: o is misfit, t the room left, as much as may be. */
  private writeRoom(sheet: Sheet, at: Float64Array, least: Float64Array, most: Float64Array): void {
    sheet.limit('room', { max: ROOM_MM })
    sheet.put('t', 'room', 1)
    sheet.put('t', 'cost', -1)
    for (const [p, point] of this.points.entries()) {
      sheet.limit(`over.${point}`, { max: (most[p] ?? 0) - (at[p] ?? 0) })
      sheet.limit(`under.${point}`, { min: (least[p] ?? 0) - (at[p] ?? 0) })
      sheet.put('t', `over.${point}`, 1)
      sheet.put('t', `under.${point}`, -1)
      const o = `o.${point}`
      sheet.put(o, 'cost', OVER_WEIGHT)
      sheet.put(o, `over.${point}`, -1)
      sheet.put(o, `under.${point}`, 1)
    }
  }

  private keepable(values: ReadonlyMap<string, number>): Kept {
    const moved = new Float64Array(this.points.length)
    const used: Kept['used'] = []
    for (const [a, option] of this.options.entries()) {
      const amounts = option.lines.map((_, k) => Math.max(0, values.get(amountOf(a, k)) ?? 0))
      if (!amounts.some((mm) => mm > EPSILON)) continue
      used.push({ key: option.key, amounts })
      for (const [k, line] of option.lines.entries()) {
        const mm = amounts[k] ?? 0
        for (const [p, point] of this.points.entries()) moved[p] = (moved[p] ?? 0) + (line.effects[point] ?? 0) * mm
      }
    }
    return { moved, used }
  }
}

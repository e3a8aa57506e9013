/**
 * Can some plan within these options bring given figures inside given bands, with no more than one mark of misfit in all? Exact and cheap:
 * refused where a point is out of all reach, granted where a displacement found before fits, else one solve that makes the most room,
 * whose displacement is kept.
 */
import { solve as solveModel } from 'yalps'
import type { Option } from '../alterations/row.ts'
import type { PointId } from '../garment/points.ts'
import { reachAt } from './problem.ts'
import { amountOf, type RowsOf, rivalsOf, Sheet, writeAmounts, writeExclusions, writeShared } from './sheet.ts'

const ROOM_MM = 10
const OVER_WEIGHT = 1000
const EPSILON = 1e-6

export class Feasibility {
  private readonly kept: Float64Array[] = []
  private readonly reach: { up: number; down: number }[]
  private readonly points: readonly PointId[]
  private readonly options: readonly Option[]
  private readonly markMm: number

  constructor(points: readonly PointId[], options: readonly Option[], markMm: number) {
    this.points = points
    this.options = options.filter((option) => option.lines.some((line) => points.some((point) => (line.effects[point] ?? 0) !== 0)))
    this.markMm = markMm
    this.reach = points.map((point) => reachAt(point, this.options))
  }

  /** mm by point: where it is, and the band. */
  fits(at: Float64Array, least: Float64Array, most: Float64Array): boolean {
    if (this.over(at, least, most) <= this.markMm + EPSILON) return true
    for (const [p, reach] of this.reach.entries()) {
      const mm = at[p] ?? 0
      if (mm - reach.down > (most[p] ?? 0) + this.markMm || mm + reach.up < (least[p] ?? 0) - this.markMm) return false
    }
    for (const moved of this.kept) if (this.over(at, least, most, moved) <= this.markMm + EPSILON) return true
    return this.solve(at, least, most)
  }

  private over(at: Float64Array, least: Float64Array, most: Float64Array, moved?: Float64Array): number {
    let sum = 0
    for (let p = 0; p < at.length; p++) {
      const mm = (at[p] ?? 0) + (moved?.[p] ?? 0)
      sum += Math.max(0, mm - (most[p] ?? 0), (least[p] ?? 0) - mm)
    }
    return sum
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
    const moved = this.displacement(new Map(solution.variables))
    if (this.over(at, least, most, moved) > this.markMm + EPSILON) return false
    this.kept.push(moved)
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

  private displacement(values: ReadonlyMap<string, number>): Float64Array {
    const moved = new Float64Array(this.points.length)
    for (const [a, option] of this.options.entries()) {
      for (const [k, line] of option.lines.entries()) {
        const mm = values.get(amountOf(a, k)) ?? 0
        if (mm <= 0) continue
        for (const [p, point] of this.points.entries()) moved[p] = (moved[p] ?? 0) + (line.effects[point] ?? 0) * mm
      }
    }
    return moved
  }
}

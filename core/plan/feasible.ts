/**
 * Can some plan within these options bring given figures inside given bands, with no more than one mark of misfit in all? Exact and cheap:
 * refused where a point is out of all reach, granted where a displacement found before fits, else one solve that makes the most room,
 * whose displacement is kept.
 */
import { solve as solveModel } from 'yalps'
import type { Option } from '../alterations/row.ts'
import type { PointId } from '../garment/points.ts'
import { excludeEachOther, reachAt } from './problem.ts'
import { Sheet } from './solve.ts'

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
    for (let p = 0; p < this.points.length; p++) {
      const reach = this.reach[p]
      const mm = at[p] ?? 0
      if (reach === undefined) continue
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
    sheet.limit('room', { max: ROOM_MM })
    sheet.put('t', 'room', 1)
    sheet.put('t', 'cost', -1)
    this.points.forEach((point, p) => {
      sheet.limit(`over.${point}`, { max: (most[p] ?? 0) - (at[p] ?? 0) })
      sheet.limit(`under.${point}`, { min: (least[p] ?? 0) - (at[p] ?? 0) })
      sheet.put('t', `over.${point}`, 1)
      sheet.put('t', `under.${point}`, -1)
      const o = `o.${point}`
      sheet.put(o, 'cost', OVER_WEIGHT)
      sheet.put(o, `over.${point}`, -1)
      sheet.put(o, `under.${point}`, 1)
    })
    const wanted = new Set<string>(this.points)
    this.options.forEach((option, a) => {
      const rivals = this.options.flatMap((other, b) => (excludeEachOther(option, other) ? [b] : []))
      const binary = rivals.length > 0 || option.fixedMm !== undefined
      if (binary) sheet.binaries.add(`y${a}`)
      for (const b of rivals) {
        if (b < a) continue
        sheet.limit(`not.${a}.${b}`, { max: 1 })
        sheet.put(`y${a}`, `not.${a}.${b}`, 1)
        sheet.put(`y${b}`, `not.${a}.${b}`, 1)
      }
      option.lines.forEach((line, k) => {
        const amount = `x${a}.${k}`
        const cap = `cap.${a}.${k}`
        sheet.limit(cap, option.fixedMm !== undefined ? { equal: 0 } : { max: binary ? 0 : line.capMm })
        sheet.put(amount, cap, 1)
        if (binary) sheet.put(`y${a}`, cap, -(option.fixedMm ?? line.capMm))
        for (const [point, effect] of Object.entries(line.effects)) {
          if (!wanted.has(point)) continue
          sheet.put(amount, `over.${point}`, effect)
          sheet.put(amount, `under.${point}`, effect)
        }
        if (k > 0) {
          sheet.limit(`smooth.${a}.${k}`, { min: -option.smoothMm, max: option.smoothMm })
          sheet.put(amount, `smooth.${a}.${k}`, 1)
          sheet.put(`x${a}.${k - 1}`, `smooth.${a}.${k}`, -1)
        }
      })
      for (const limit of option.shared) {
        const row = `shared.${limit.group}`
        sheet.limit(row, { max: Math.min(sheet.constraints.get(row)?.max ?? Number.POSITIVE_INFINITY, limit.budgetMm) })
        limit.shares.forEach((share, k) => {
          sheet.put(`x${a}.${k}`, row, share)
        })
      }
    })
    const solution = solveModel(sheet.model())
    if (solution.status !== 'optimal') return false
    const values = new Map(solution.variables)
    const moved = new Float64Array(this.points.length)
    this.options.forEach((option, a) => {
      option.lines.forEach((line, k) => {
        const mm = values.get(`x${a}.${k}`) ?? 0
        if (mm > 0)
          this.points.forEach((point, p) => {
            moved[p] = (moved[p] ?? 0) + (line.effects[point] ?? 0) * mm
          })
      })
    })
    if (this.over(at, least, most, moved) > this.markMm + EPSILON) return false
    this.kept.push(moved)
    return true
  }
}

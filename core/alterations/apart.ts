/**
 * What never goes together in one plan: moves that undo each other, and several ways to the same end. Worked out from the rows, so that a new
 * row needs no list.
 */
import type { AlterationId } from '../ids/alterations.ts'
import { POINTS, type PointId } from '../ids/points.ts'
import type { Line, Row } from './row.ts'

export const keyOf = (row: Pick<Row, 'id' | 'direction'>): string => `${row.id}/${row.direction}`

/** A point that comes along by nearly all of the amount is moved as much as the one that is meant. */
const WHOLLY = 0.9

interface Moves {
  row: Row
  /** The points it moves wholly, a bit each. */
  points: number
  /** Amounts along one line: any of them may stay 0. */
  several: boolean
}

const BIT = new Map(POINTS.map((point, n) => [point, n]))
const bitsOf = (points: readonly PointId[]): number => points.reduce((bits, point) => bits | (1 << (BIT.get(point) ?? 0)), 0)
const countOf = (bits: number): number => {
  let left = bits
  let count = 0
  for (; left !== 0; count++) left &= left - 1
  return count
}

/** By key: the ids that a row excludes. `lines` are those of each row on this garment. */
export function apart(rows: readonly Row[], lines: readonly (readonly Line[])[]): ReadonlyMap<string, AlterationId[]> {
  const moves = rows.map((row, n) => movesOf(row, lines[n] ?? []))
  const ways = new Map<AlterationId, number>()
  for (const { id } of rows) ways.set(id, (ways.get(id) ?? 0) + 1)
  const goesBothWays = (id: AlterationId): boolean => (ways.get(id) ?? 0) > 1
  const excluded = moves.map(({ row }) => new Set<AlterationId>(row.excludes ?? []))
  for (const [n, one] of moves.entries())
    for (let k = n + 1; k < moves.length; k++) {
      const other = moves[k] as Moves
      const { id, oneOf } = one.row
      if (id === other.row.id) continue
      const isOneOf = oneOf !== undefined && oneOf === other.row.oneOf
      const undone = undo(one, other)
      if (!isOneOf && !undone) continue
      // a rule between ids: one that goes both ways is named by the other, or it would bar its harmless way too
      if (isOneOf || !goesBothWays(other.row.id) || goesBothWays(id)) excluded[n]?.add(other.row.id)
      if (isOneOf || !goesBothWays(id) || goesBothWays(other.row.id)) excluded[k]?.add(id)
    }
  return new Map(rows.map((row, n) => [keyOf(row), [...(excluded[n] ?? [])]]))
}

function movesOf(row: Row, lines: readonly Line[]): Moves {
  const sign = row.direction === 'less' ? -1 : 1
  const points: PointId[] = []
  for (const { effects } of lines)
    for (const [point, effect] of Object.entries(effects) as [PointId, number][]) if (effect * sign >= WHOLLY) points.push(point)
  return { row, points: bitsOf(points), several: lines.length > 1 }
}

/**
 * Do these undo each other? They move one point wholly opposite ways. One that has several amounts along its line may leave that point alone
 * (sides out at the hip beside darts at the waist): it undoes another only where they have more than one point in common.
 */
function undo(one: Moves, other: Moves): boolean {
  if (one.row.direction === other.row.direction) return false
  const shared = one.points & other.points
  if (shared === 0) return false
  const both = countOf(shared)
  return both > 1 || (both === 1 && !one.several && !other.several)
}

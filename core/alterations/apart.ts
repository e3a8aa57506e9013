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
  /** Is there a row of its id in the other direction too? */
  goesBothWays: boolean
}

const BIT = new Map<string, number>(POINTS.map((point, n) => [point, 1 << n]))
const countOf = (bits: number): number => {
  let left = bits
  let count = 0
  for (; left !== 0; count++) left &= left - 1
  return count
}

/** By row: the ids that it excludes. `lines` are those of each row on this garment. */
export function apart(rows: readonly Row[], lines: readonly (readonly Line[])[]): (readonly AlterationId[])[] {
  const moves = movesOf(rows, lines)
  const excluded = rows.map(({ excludes = [] }): AlterationId[] => [...excludes])
  const exclude = (n: number, id: AlterationId) => {
    if (excluded[n]?.includes(id) === false) excluded[n].push(id)
  }
  for (const [n, one] of moves.entries())
    for (let k = n + 1; k < moves.length; k++) {
      const other = moves[k] as Moves
      const { id, oneOf } = one.row
      if (id === other.row.id) continue
      const isOneOf = oneOf !== undefined && oneOf === other.row.oneOf
      if (!isOneOf && !undo(one, other)) continue
      // a rule between ids: one that goes both ways is named by the other, or it would bar its harmless way too
      if (isOneOf || !other.goesBothWays || one.goesBothWays) exclude(n, other.row.id)
      if (isOneOf || !one.goesBothWays || other.goesBothWays) exclude(k, id)
    }
  return excluded
}

function movesOf(rows: readonly Row[], lines: readonly (readonly Line[])[]): Moves[] {
  const ways = new Map<AlterationId, number>()
  for (const { id } of rows) ways.set(id, (ways.get(id) ?? 0) + 1)
  return rows.map((row, n) => {
    const its = lines[n] ?? []
    return { row, points: pointsMoved(row, its), several: its.length > 1, goesBothWays: (ways.get(row.id) ?? 0) > 1 }
  })
}

function pointsMoved({ direction }: Row, lines: readonly Line[]): number {
  const sign = direction === 'less' ? -1 : 1
  let points = 0
  for (const { effects } of lines)
    for (const point in effects) if ((effects[point as PointId] ?? 0) * sign >= WHOLLY) points |= BIT.get(point) ?? 0
  return points
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

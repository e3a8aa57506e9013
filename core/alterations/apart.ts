/**
 * What never goes together in one plan: moves that undo each other, and several ways to the same end. Worked out from the rows, so that a new
 * row needs no list.
 */
import type { Garment } from '../garment/garment-as-worn.ts'
import type { AlterationId } from '../ids/alterations.ts'
import type { PointId } from '../ids/points.ts'
import type { Row } from './row.ts'

export const keyOf = (row: Pick<Row, 'id' | 'direction'>): string => `${row.id}/${row.direction}`

/** A point that comes along by nearly all of the amount is moved as much as the one that is meant. */
const WHOLLY = 0.9

interface Moves {
  row: Row
  /** The points it moves wholly. */
  points: ReadonlySet<PointId>
  /** Amounts along one line: any of them may stay 0. */
  several: boolean
}

/** By key: the ids that a row excludes. */
export function apart(rows: readonly Row[], garment: Garment): ReadonlyMap<string, AlterationId[]> {
  const moves = rows.map((row) => movesOf(row, garment))
  const bothWays = new Set(
    rows.filter((row) => rows.some(({ id, direction }) => id === row.id && direction !== row.direction)).map(({ id }) => id)
  )
  return new Map(
    moves.map((mine) => {
      const { row } = mine
      const excluded = new Set<AlterationId>(row.excludes ?? [])
      for (const theirs of moves) {
        const other = theirs.row
        if (other.id === row.id) continue
        if (row.oneOf !== undefined && row.oneOf === other.oneOf) excluded.add(other.id)
        // a rule between ids: one that goes both ways is named by the other, or it would bar its harmless way too
        if (undo(mine, theirs) && (!bothWays.has(other.id) || bothWays.has(row.id))) excluded.add(other.id)
      }
      return [keyOf(row), [...excluded]]
    })
  )
}

function movesOf(row: Row, garment: Garment): Moves {
  const lines = row.lines(garment)
  const sign = row.direction === 'less' ? -1 : 1
  const points = lines.flatMap(({ effects }) =>
    (Object.entries(effects) as [PointId, number][]).flatMap(([point, effect]) => (effect * sign >= WHOLLY ? [point] : []))
  )
  return { row, points: new Set(points), several: lines.length > 1 }
}

/**
 * Do these undo each other? They move one point wholly opposite ways. One that has several amounts along its line may leave that point alone
 * (sides out at the hip beside darts at the waist): it undoes another only where they have more than one point in common.
 */
function undo(one: Moves, other: Moves): boolean {
  if (one.row.direction === other.row.direction) return false
  const both = [...one.points].filter((point) => other.points.has(point)).length
  return both > 1 || (both === 1 && !one.several && !other.several)
}

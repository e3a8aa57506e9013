/** Where the figures of moved lines stand beside an outline. */
import type { Spot } from './curve.ts'
import type { Move } from './moves.ts'
import type { Moved } from './outline-drawing.ts'

export interface Column {
  x: number
  /** No two figures nearer than this. */
  apart: number
  /** How far above its line a figure would stand. */
  above: number
}
export interface Lead {
  move: Move
  from: Spot
  to: Spot
}

/** A lead from each moved line to its figure in one column: both in the order they stand in, so that no lead crosses another. */
export function leadsTo(moved: readonly Moved[], moves: readonly Move[], place: (spot: Spot) => Spot, { x, apart, above }: Column): Lead[] {
  const found = moves.flatMap((move) => {
    const lines = moved.filter(({ seam, job, offsetMm }) => seam === move.seam && job === move.job.id && offsetMm === move.offsetMm)
    const ends = lines.map(deepest)
    const rightmost = ends.reduce<Spot | null>((best, spot) => (best === null || spot.x > best.x ? spot : best), null)
    return rightmost === null ? [] : [{ move, from: place(rightmost) }]
  })
  found.sort((a, b) => (Math.abs(a.from.y - b.from.y) < 6 ? b.from.x - a.from.x : a.from.y - b.from.y))
  let next = 0
  return found.map(({ move, from }) => {
    const y = Math.max(from.y - above, next)
    next = y + apart
    return { move, from, to: { x, y } }
  })
}

/** Where a line moves most; on a line that moves evenly its right end, or its middle when it is long. */
function deepest({ goes, comes }: Moved): Spot {
  const moves = comes.map((spot, i) => {
    const was = goes !== null && goes.length === comes.length ? (goes[i] as Spot) : { x: 0, y: spot.y }
    return Math.hypot(spot.x - was.x, spot.y - was.y)
  })
  const most = Math.max(...moves)
  const best = comes.filter((_, i) => (moves[i] ?? 0) > most - 0.5)
  if (best.length > 2) return best[Math.floor(best.length / 2)] as Spot
  return best.reduce((right, spot) => (spot.x > right.x ? spot : right))
}

/** Measuring, shifting and cutting lines. A line is a dense row of spots in mm; x to the right, y down. Pure. */
import type { Line, Spot } from '../outline/curve.ts'
import type { Box } from '../outline/outline-geometry.ts'

export type { Box, Line, Spot }

export const apart = (a: Spot, b: Spot): number => Math.hypot(b.x - a.x, b.y - a.y)

/** The length of a line, mm. */
export const lengthOf = (line: Line): number => line.reduce((sum, spot, i) => sum + (i === 0 ? 0 : apart(line[i - 1] as Spot, spot)), 0)

/** y → spot, sampled evenly between two heights, both ends exact. */
export function down(from: number, to: number, at: (y: number) => number, step = 2): Line {
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / step))
  return Array.from({ length: steps + 1 }, (_, i) => {
    const y = i === steps ? to : from + ((to - from) * i) / steps
    return { x: at(y), y }
  })
}

/** The direction of a line at each of its spots, as unit vectors. */
function directions(line: Line): Spot[] {
  return line.map((_, i) => {
    const a = line[Math.max(0, i - 1)] as Spot
    const b = line[Math.min(line.length - 1, i + 1)] as Spot
    const size = apart(a, b) || 1
    return { x: (b.x - a.x) / size, y: (b.y - a.y) / size }
  })
}

/** The line beside a line, `by` mm to its left as it runs (on the page: up, where it runs to the right). */
export function beside(line: Line, by: number): Line {
  const along = directions(line)
  return line.map((spot, i) => {
    const way = along[i] as Spot
    return { x: spot.x + way.y * by, y: spot.y - way.x * by }
  })
}

/** The spot so far along a line, and its direction there; held at the ends. */
export function along(line: Line, distance: number): { spot: Spot; way: Spot } {
  const ways = directions(line)
  let left = Math.max(0, distance)
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1] as Spot
    const b = line[i] as Spot
    const size = apart(a, b)
    if (left <= size && size > 0) {
      const t = left / size
      return { spot: { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t }, way: ways[i] as Spot }
    }
    left -= size
  }
  return { spot: line.at(-1) ?? { x: 0, y: 0 }, way: ways.at(-1) ?? { x: 1, y: 0 } }
}

export const boxAround = (spots: readonly Spot[]): Box => ({
  left: Math.min(...spots.map(({ x }) => x)),
  top: Math.min(...spots.map(({ y }) => y)),
  right: Math.max(...spots.map(({ x }) => x)),
  bottom: Math.max(...spots.map(({ y }) => y))
})

export interface Piece {
  line: Line
  /** How far along the whole line it begins, so that dashes go on where they were. */
  from: number
}

/** The pieces of a line inside a box (Liang and Barsky 1984, a segment at a time). */
export function cutTo(line: Line, box: Box): Piece[] {
  const pieces: Piece[] = []
  let walked = 0
  let open: Piece | null = null
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1] as Spot
    const b = line[i] as Spot
    const size = apart(a, b)
    const span = spanInside(a, b, box)
    if (span === null) open = null
    else {
      const at = (t: number): Spot => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })
      if (open === null || span.from > 0) {
        open = { line: [at(span.from)], from: walked + span.from * size }
        pieces.push(open)
      }
      open.line.push(span.to === 1 ? b : at(span.to))
      if (span.to < 1) open = null
    }
    walked += size
  }
  return pieces.filter((piece) => lengthOf(piece.line) > 0)
}

function spanInside(a: Spot, b: Spot, box: Box): { from: number; to: number } | null {
  let from = 0
  let to = 1
  const edges: [number, number][] = [
    [a.x - b.x, a.x - box.left],
    [b.x - a.x, box.right - a.x],
    [a.y - b.y, a.y - box.top],
    [b.y - a.y, box.bottom - a.y]
  ]
  for (const [towards, room] of edges) {
    if (towards === 0) {
      if (room < 0) return null
      continue
    }
    const t = room / towards
    if (towards < 0) from = Math.max(from, t)
    else to = Math.min(to, t)
  }
  return from < to ? { from, to } : null
}

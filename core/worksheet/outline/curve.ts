/** Lines of a drawing in mm, laid flat: x from the centre, y down from the top edge. */
export interface Spot {
  x: number
  y: number
}
export type Line = Spot[]

const STEPS = 10

/** A smooth line through all the points (uniform Catmull–Rom, ends doubled), as a dense polyline. */
export function smooth(points: Line): Line {
  if (points.length < 3) return [...points]
  const line: Line = []
  for (let i = 0; i < points.length - 1; i++) {
    const p1 = points[i] as Spot
    const p2 = points[i + 1] as Spot
    const p0 = points[i - 1] ?? p1
    const p3 = points[i + 2] ?? p2
    for (let step = 0; step < STEPS; step++) line.push(between(p0, p1, p2, p3, step / STEPS))
  }
  line.push(points.at(-1) as Spot)
  return line
}

function between(p0: Spot, p1: Spot, p2: Spot, p3: Spot, t: number): Spot {
  const along = (a: number, b: number, c: number, d: number) =>
    0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t)
  return { x: along(p0.x, p1.x, p2.x, p3.x), y: along(p0.y, p1.y, p2.y, p3.y) }
}

/**
 * A smooth line down the page through all the points, x as a function of y, that never swings past them
 * (monotone cubic: Fritsch and Carlson 1980). Heights must rise.
 */
export function smoothDown(points: Line): Line {
  const n = points.length
  if (n < 3) return [...points]
  const at = (i: number): Spot => points[i] as Spot
  const slope = Array.from({ length: n - 1 }, (_, i) => (at(i + 1).x - at(i).x) / Math.max(at(i + 1).y - at(i).y, 1e-6))
  const tangent = points.map((_, i) => {
    const above = slope[i - 1]
    const below = slope[i]
    if (above === undefined) return below ?? 0
    if (below === undefined) return above
    return above * below <= 0 ? 0 : (2 * above * below) / (above + below)
  })
  const line: Line = []
  for (let i = 0; i < n - 1; i++) {
    const tall = at(i + 1).y - at(i).y
    for (let step = 0; step < STEPS; step++) {
      const t = step / STEPS
      const x =
        (1 + 2 * t) * (1 - t) ** 2 * at(i).x +
        t * (1 - t) ** 2 * tall * (tangent[i] ?? 0) +
        t * t * (3 - 2 * t) * at(i + 1).x +
        t * t * (t - 1) * tall * (tangent[i + 1] ?? 0)
      line.push({ x, y: at(i).y + t * tall })
    }
  }
  line.push(at(n - 1))
  return line
}

export const mirrored = (line: Line): Line => line.map(({ x, y }) => ({ x: -x, y }))

/** The x of a line that runs down the page, at a height; held at its ends. */
export function xAt(line: Line, y: number): number {
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1] as Spot
    const b = line[i] as Spot
    if ((a.y <= y && y <= b.y) || (b.y <= y && y <= a.y)) return b.y === a.y ? b.x : a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)
  }
  const ends = [line[0], line.at(-1)].filter((end) => end !== undefined).sort((a, b) => Math.abs(a.y - y) - Math.abs(b.y - y))
  return ends[0]?.x ?? 0
}

/** The part of a line between two heights, ends cut exactly. */
export function part(line: Line, fromY: number, toY: number): Line {
  const inside = line.filter(({ y }) => y > fromY + 1e-6 && y < toY - 1e-6)
  return [{ x: xAt(line, fromY), y: fromY }, ...inside, { x: xAt(line, toY), y: toY }]
}

export interface Anchor {
  y: number
  offset: number
}

/** How far a stitching line moves at a height, from what it moves at a few: in between evenly, held beyond the ends. */
export function offsetAt(anchors: readonly Anchor[], y: number): number {
  const sorted = [...anchors].sort((a, b) => a.y - b.y)
  const first = sorted[0]
  const last = sorted.at(-1)
  if (first === undefined || last === undefined) return 0
  if (y <= first.y) return first.offset
  if (y >= last.y) return last.offset
  for (let i = 1; i < sorted.length; i++) {
    const a = sorted[i - 1] as Anchor
    const b = sorted[i] as Anchor
    if (y <= b.y) return a.offset + ((b.offset - a.offset) * (y - a.y)) / (b.y - a.y)
  }
  return last.offset
}

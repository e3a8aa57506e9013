/** How far a stitching line moves at every height of its seam, from the few heights at which the plan says so. All mm; + inwards. */
import { taperShare } from './taper.ts'

export interface Anchor {
  /** Down the seam. */
  y: number
  offset: number
}
export interface SeamOffsets {
  /** Where the line leaves the old one, or begins. */
  from: number
  /** Where it comes back to it, or ends. */
  to: number
  at(y: number): number
  /** Does it run out to nothing above, below? Its slope is that of the old line there. */
  runsOut: { above: boolean; below: boolean }
}

/** A taper: `deepest` at the head, nothing after `length`. */
export const taperDown = (deepest: number, length: number): SeamOffsets => ({
  from: 0,
  to: length,
  at: (y) => deepest * taperShare(y / length),
  runsOut: { above: false, below: true }
})

/**
 * The line through offsets at rising heights, as the steps have it: straight from one to the next, and where it runs out to nothing, by the taper.
 * What lies beyond, where nothing moves, is left out. Null where nothing moves at all.
 */
export function offsetsThrough(given: readonly Anchor[]): SeamOffsets | null {
  const moves = given.map(({ offset }) => offset !== 0)
  const first = moves.indexOf(true)
  if (first < 0) return null
  const anchors = given.slice(Math.max(0, first - 1), moves.lastIndexOf(true) + 2)
  const [top, bottom] = [anchors[0] as Anchor, anchors.at(-1) as Anchor]
  const at = (y: number): number => {
    if (y <= top.y) return top.offset
    const below = anchors.findIndex((anchor) => anchor.y >= y)
    return below < 0 ? bottom.offset : between(anchors[below - 1] as Anchor, anchors[below] as Anchor, y)
  }
  return { from: top.y, to: bottom.y, at, runsOut: { above: top.offset === 0, below: bottom.offset === 0 } }
}

function between(a: Anchor, b: Anchor, y: number): number {
  const share = (y - a.y) / (b.y - a.y)
  if (b.offset === 0) return a.offset * taperShare(share)
  if (a.offset === 0) return b.offset * taperShare(1 - share)
  return a.offset + share * (b.offset - a.offset)
}

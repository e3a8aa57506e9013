/** How far a stitching line moves at every height of its seam, from the few heights at which the plan says so. All mm; + inwards. */
import { BLEND, taperShare } from './taper.ts'

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

/** On a leg or a sleeve the line stays nearly straight, as the planner takes it (common practice). */
export const LIMB_BLEND = 0.1

/** A taper: `deepest` at the head, nothing after `length`. */
export const taperDown = (deepest: number, length: number): SeamOffsets => ({
  from: 0,
  to: length,
  at: (y) => deepest * taperShare(y / length),
  runsOut: { above: false, below: true }
})

/**
 * The line through offsets at rising heights. Noughts at the ends are cut off but for the last, where it runs out: between one offset and a nought
 * the taper of the trade, through more a smooth line that never swings past them (Fritsch and Carlson 1980), level where it runs out.
 * Null where nothing moves.
 */
export function offsetsThrough(given: readonly Anchor[], blend = BLEND): SeamOffsets | null {
  const moves = given.map(({ offset }) => offset !== 0)
  const first = moves.indexOf(true)
  const last = moves.lastIndexOf(true)
  if (first < 0) return null
  const anchors = given.slice(Math.max(0, first - 1), last + 2)
  const [a, b] = [anchors[0] as Anchor, anchors.at(-1) as Anchor]
  const runsOut = { above: a.offset === 0, below: b.offset === 0 }
  const inside = (y: number) => Math.min(b.y, Math.max(a.y, y))
  if (anchors.length === 1) return { from: a.y, to: a.y, at: () => a.offset, runsOut }
  if (anchors.length === 2 && runsOut.below)
    return { from: a.y, to: b.y, at: (y) => a.offset * taperShare((y - a.y) / (b.y - a.y), blend), runsOut }
  if (anchors.length === 2 && runsOut.above)
    return { from: a.y, to: b.y, at: (y) => b.offset * taperShare((b.y - y) / (b.y - a.y), blend), runsOut }
  const slopes = slopesOf(anchors, runsOut)
  return { from: a.y, to: b.y, at: (y) => hermite(anchors, slopes, inside(y)), runsOut }
}

function slopesOf(anchors: readonly Anchor[], runsOut: SeamOffsets['runsOut']): number[] {
  const secant = anchors.slice(1).map((b, i) => {
    const a = anchors[i] as Anchor
    return (b.offset - a.offset) / (b.y - a.y)
  })
  return anchors.map((_, i) => {
    const before = secant[i - 1]
    const behind = secant[i]
    if (before === undefined) return runsOut.above ? 0 : (behind ?? 0)
    if (behind === undefined) return runsOut.below ? 0 : before
    return before * behind <= 0 ? 0 : (2 * before * behind) / (before + behind)
  })
}

function hermite(anchors: readonly Anchor[], slopes: readonly number[], y: number): number {
  const i = Math.max(0, Math.min(anchors.findIndex((anchor) => anchor.y >= y) - 1, anchors.length - 2))
  const a = anchors[i] as Anchor
  const b = anchors[i + 1] as Anchor
  const tall = b.y - a.y
  const t = (y - a.y) / tall
  return (
    (1 + 2 * t) * (1 - t) ** 2 * a.offset +
    t * (1 - t) ** 2 * tall * (slopes[i] ?? 0) +
    t * t * (3 - 2 * t) * b.offset +
    t * t * (t - 1) * tall * (slopes[i + 1] ?? 0)
  )
}

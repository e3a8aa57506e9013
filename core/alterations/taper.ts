/**
 * The shape of a take-in that runs out to nothing. At depth t (0 at the band, 1 at the end) the share of the full amount is
 * 1 − kt down to t = 1 − β, then k(1 − t)²/(2β), with k = 1/(1 − β/2): straight, then tangent to the old seam at its end.
 * β = 0 is the straight line of the handbooks.
 */
export const BLEND = 1 / 3

/** Share of the amount left at depth t, 0..1. */
export function taperShare(t: number, blend = BLEND): number {
  if (t <= 0) return 1
  if (t >= 1) return 0
  const k = 1 / (1 - blend / 2)
  return t <= 1 - blend ? 1 - k * t : (k * (1 - t) ** 2) / (2 * blend)
}

/** The most that a taper of this length holds over one seam, mm around, when it may lean one in `lean`: 2L/(lean × k). */
export function steepestTaper(lengthMm: number, lean = 4.5, blend = BLEND): number {
  return (2 * lengthMm * (1 - blend / 2)) / lean
}

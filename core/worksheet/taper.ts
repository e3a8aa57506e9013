/** A stitching line that runs out to nothing, in figures to chalk: its share of the full amount, and its offsets down the seam. All lengths mm. */
import { BLEND, taperShare } from '../alterations/taper.ts'

export { BLEND, taperShare }

export interface TaperMark {
  /** Down the seam from the deepest place. */
  atMm: number
  /** From the old stitching line. */
  offsetMm: number
}

/**
 * Marks down a taper that is `deepestMm` off the old line at its head and meets it after `lengthMm`: one every `stepMm` and one at its end, where
 * the offset is 0. `blend` 0 is the straight line of the handbooks. A taper without length is one mark, the deepest. Throws on a length or a step
 * that is no figure, or a step that is not above 0: the caller's error.
 */
export function taperOffsets(deepestMm: number, lengthMm: number, stepMm = 25, blend = BLEND): TaperMark[] {
  if (!Number.isFinite(deepestMm) || !Number.isFinite(lengthMm) || !Number.isFinite(stepMm) || stepMm <= 0)
    throw new RangeError(`a taper needs figures and a step above 0: ${deepestMm} deep, ${lengthMm} long, every ${stepMm}`)
  if (lengthMm <= 0) return [{ atMm: 0, offsetMm: deepestMm }]
  const marks: TaperMark[] = []
  for (let n = 0; n * stepMm < lengthMm; n++) {
    const atMm = n * stepMm
    marks.push({ atMm, offsetMm: deepestMm * taperShare(atMm / lengthMm, blend) })
  }
  return [...marks, { atMm: lengthMm, offsetMm: 0 }]
}

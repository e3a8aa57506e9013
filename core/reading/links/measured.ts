/** “(measures 38)”, “but I measure 4.75"”, “actual 33"”: a figure that was taken, beside one that a label or a name tells. */

import { cue } from '../text/cues.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'

const ACTUAL = cue('actually')
/** “measures closer to 28”. */
const NEARER = cue('nearer')
const FURTHEST = 4

/** Does a word of measuring lead on to the figure that begins here? */
export function isMeasured({ tokens, terms }: TextRead, from: number): boolean {
  for (let at = from - 1; at >= from - FURTHEST; at--) {
    if (tokens[at]?.kind !== 'word') return false
    const term = termAt(terms, at)
    if (means(term, 'measures', 'ownTape') || ACTUAL.test(tokens[at]?.text)) return true
    if (!means(term, 'light', 'basis') && !NEARER.test(tokens[at]?.text)) return false
  }
  return false
}

/** A second taking of one measure is near the first, counted whole or half; farther off something else was measured. */
export function isNear(first: number, second: number): boolean {
  const ratio = second / first
  return [ratio, ratio * 2, ratio / 2].some((one) => one > 0.84 && one < 1.19)
}

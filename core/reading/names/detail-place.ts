/** “zips at the cuffs 5"”, “lace at hem 4"”: a point that only says where a detail is takes no figure. */

import type { PointName } from '../languages/lexicon.ts'
import { cue } from '../text/cues.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Label } from './label.ts'

/** Elastic at the waist is the waist; a rib at the bottom is the hem. */
const OF_THE_EDGE = cue('ofTheEdge')
const BODY_GIRTHS = new Set<PointName>(['chest', 'waist', 'hip'])
const AT = cue('at')

export function isItsPlace({ tokens, terms }: TextRead, detail: Label, place: Label): boolean {
  const [point] = place.points
  if (place.role !== 'point' || place.letter || point === undefined || BODY_GIRTHS.has(point)) return false
  // “apron (length): 58 cm”
  if (tokens[detail.to]?.text === '(' && place.from === detail.to + 1 && tokens[place.to]?.text === ')') return true
  if (OF_THE_EDGE.test(tokens[detail.from]?.text)) return false
  let at = false
  for (let index = detail.to; index < place.from; index++) {
    if (tokens[index]?.kind !== 'word' || !means(termAt(terms, index), 'light')) return false
    if (AT.test(tokens[index]?.text)) at = true
  }
  return at
}

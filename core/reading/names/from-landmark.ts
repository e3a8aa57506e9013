/** Where a length starts says which length it is: sleeve from the collar, length from the waist. */

import type { Landmark, PointName } from '../languages/lexicon.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, leadsToFigure } from '../text/tokens.ts'
import type { Label } from './label.ts'

export const STARTS_FROM: Partial<Record<PointName, Partial<Record<Landmark, PointName>>>> = {
  sleeveLength: { neck: 'sleeveFromCentreBack', armpit: 'sleeveUnderarm' },
  length: { waist: 'skirtLength', neck: 'bodyLength', shoulder: 'bodyLength' }
}

const UNDER = cue('under')
const FROM_LOWER = new Set<Landmark>(['armpit', 'bust'])

/**
 * sleeve (from centre back) 35"   ·   sleeve 18" from the underarm: see withTrailingNames
 *         ^^^^ ^^^^^^^^^^^ where it starts says which sleeve it is
 */
export function fromLandmark(text: TextRead, label: Label): void {
  const [name] = label.points
  const starts = name === undefined || label.points.length > 1 ? undefined : STARTS_FROM[name]
  if (!starts) return
  const landmark = landmarkFrom(text, label.to)
  // a length from the armpit is none that is kept
  if (landmark && name === 'length' && FROM_LOWER.has(landmark.landmark)) {
    label.role = 'detail'
    label.points = []
    label.to = landmark.to
    return
  }
  // a sleeve from the neck, and not from the middle of the back, is none that is kept
  if (landmark && name === 'sleeveLength' && landmark.landmark === 'neck' && isSideNeck(text, label.to, landmark.to)) {
    label.role = 'detail'
    label.points = []
    label.to = landmark.to
    return
  }
  const better = landmark && starts[landmark.landmark]
  if (better) {
    label.points = [better]
    label.to = landmark.to
  }
}

const NECK = cue('neck')

const isSideNeck = ({ tokens }: TextRead, from: number, to: number): boolean => {
  const words = tokens.slice(from, to).map(({ text }) => text)
  return words.some((word) => NECK.test(word)) && !words.some((word) => MIDDLE.test(word))
}
const MIDDLE = cue('middleOfBack')

/** The landmark after “from the …”, brackets and measuring words stepped over; not when “to” follows it. */
export function landmarkFrom(text: TextRead, at: number): { landmark: Landmark; to: number } | null {
  const { tokens, terms } = text
  let seen = false
  let parted = false
  for (let steps = 0; steps < 7; steps++) {
    const token = tokens[at]
    if (token === undefined || token.kind === 'break' || token.kind === 'digits' || token.kind === 'fraction') return null
    const term = termAt(terms, at)
    if (token.kind === 'mark') {
      if (!isOneOf(token, "(,'-")) return null
      if (token.text === '(') seen = true
      if (token.text === ',') parted = true
      at++
      continue
    }
    // “sleeve 25", length (from the collar) 42"”: the next name's own start
    if (isUnderNeck(text, at)) {
      seen = true
      if (!term) {
        at++
        continue
      }
    }
    if (!term || (parted && !seen && means(term, 'point'))) return null
    const landmark = meaning(term, 'landmark')
    // “sleeve from the shoulder 60, from the armpit 46”: the start of the figure behind it
    if (seen && landmark && parted && leadsToFigure(tokens, term.to)) return null
    // 総丈(脇から): where verbs stand last, “from” stands behind the place
    const from = text.trie.verbLast && landmark ? termAt(terms, term.to) : undefined
    if (from && means(from, 'to') && landmark) return { landmark: landmark.landmark, to: from.to }
    if (seen && landmark) return means(termAt(terms, term.to), 'to') ? null : { landmark: landmark.landmark, to: endOfPlace(text, term.to) }
    if (means(term, 'from') || (means(term, 'inner') && landmark)) seen = true
    else if (!means(term, 'light', 'measures', 'inner') && !UNDER.test(token.text)) return null
    at = term.to
  }
  return null
}

/** “longueur dos sous col”, “back length under collar”: right below the neck a length starts, told without a “from”. */
const isUnderNeck = ({ tokens, terms }: TextRead, at: number): boolean =>
  UNDER.test(tokens[at]?.text) &&
  [at + 1, at + 2].some((next) => tokens[next]?.kind === 'word' && meaning(termAt(terms, next), 'landmark')?.landmark === 'neck')

/** “centre back collar”, “centre back of the neck”: a place told by two landmarks. */
function endOfPlace({ tokens, terms }: TextRead, to: number): number {
  let at = to
  while (at < to + 3 && tokens[at]?.kind === 'word' && means(termAt(terms, at), 'light') && !means(termAt(terms, at), 'landmark')) at++
  const further = termAt(terms, at)
  return tokens[at]?.kind === 'word' && meaning(further, 'landmark') && further ? further.to : to
}

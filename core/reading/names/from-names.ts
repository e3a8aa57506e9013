/** “from shoulder 21"”: where it starts is all the name it has; it is how long the garment is from there. */

import type { PointName } from '../languages/lexicon.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'
import { STARTS_FROM } from './from-landmark.ts'
import type { Label } from './label.ts'

const THE_TOP = cue('theTop')
const FROM = cue('from')

/** At the beginning of a line or of a part of a list. Linear. */
export function fromNames({ tokens, terms }: TextRead, quantities: readonly Quantity[]): Label[] {
  const found: Label[] = []
  for (const { from } of quantities) {
    let at = from - 1
    if (isOneOf(tokens[at], ':=-')) at--
    for (let steps = 0; steps < 2 && means(termAt(terms, at), 'light') && !means(termAt(terms, at), 'landmark'); steps++) at--
    const place = termAt(terms, at)
    const landmark = tokens[at]?.kind === 'word' ? meaning(place, 'landmark')?.landmark : undefined
    const point = landmark && (landmark === 'armpit' ? underarmOf({ tokens, terms }, at) : STARTS_FROM.length?.[landmark])
    if (!place || point === undefined) continue
    at = place.from - 1
    if (THE_TOP.test(tokens[at]?.text)) at--
    if (!FROM.test(tokens[at]?.text) && !(landmark === 'armpit' && means(termAt(terms, at), 'from'))) continue
    const before = tokens[at - 1]
    if (before === undefined || before.kind === 'break' || isOneOf(before, ',;.•·*|>-'))
      found.push({ from: at, to: place.to, role: 'point', points: [point], basis: null, weak: false, letter: null })
  }
  return found
}

/** “sleeve 60 from the shoulder, from the armpit 46”: behind a sleeve it is the sleeve from there. */
function underarmOf({ tokens, terms }: Pick<TextRead, 'tokens' | 'terms'>, from: number): PointName | undefined {
  for (let at = from - 1; at > from - REACH && tokens[at] && tokens[at]?.kind !== 'break' && !endsSentence(tokens, at); at--) {
    const name = meaning(termAt(terms, at), 'point')?.point
    if (name !== undefined && name !== 'shoulderWidth' && name !== 'chest') return name === 'sleeveLength' ? 'sleeveUnderarm' : undefined
  }
  return undefined
}
const REACH = 14

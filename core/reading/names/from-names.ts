/** “from shoulder 21"”: where it starts is all the name it has; it is how long the garment is from there. */

import type { Quantity } from '../quantities/quantities.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { STARTS_FROM } from './from-landmark.ts'
import type { Label } from './label.ts'

const THE_TOP = cue('theTop')
const FROM = cue('from')

/** At the beginning of a line or of a part of a list. Linear. */
export function fromNames({ tokens, terms }: TextRead, quantities: readonly Quantity[]): Label[] {
  const found: Label[] = []
  for (const { from } of quantities) {
    let at = from - 1
    if (/^[:=-]$/.test(tokens[at]?.text ?? '')) at--
    for (let steps = 0; steps < 2 && means(termAt(terms, at), 'light') && !means(termAt(terms, at), 'landmark'); steps++) at--
    const place = termAt(terms, at)
    const landmark = tokens[at]?.kind === 'word' ? meaning(place, 'landmark')?.landmark : undefined
    const point = landmark && STARTS_FROM.length?.[landmark]
    if (!place || point === undefined) continue
    at = place.from - 1
    if (THE_TOP.test(tokens[at]?.text ?? '')) at--
    if (!FROM.test(tokens[at]?.text ?? '')) continue
    const before = tokens[at - 1]
    if (before === undefined || before.kind === 'break' || /^[,;.•·*|>-]$/.test(before.text))
      found.push({ from: at, to: place.to, role: 'point', points: [point], basis: null, weak: false, letter: null })
  }
  return found
}

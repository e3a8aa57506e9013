/** Where a length ends is part of its name: “length down to hem”, “sleeve to cuff”, “sleeve, seam to frill”. */
import type { Landmark, PointName } from '../languages/lexicon.ts'
import { endsSentence } from '../text/layout.ts'
import { endAt, endsOf, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Label } from './label.ts'

/** What goes down to a hem, and to the end of a sleeve. */
const LENGTHS = new Set<PointName>(['length', 'bodyLength', 'skirtLength', 'inseam', 'outseam', 'legLength', 'strap', 'rise'])
const SLEEVES = new Set<PointName>(['sleeveLength', 'sleeveUnderarm', 'sleeveFromCentreBack'])
const ENDS_OF_LENGTHS: ReadonlySet<Landmark> = new Set(['hem', 'cuff'])
/** So many small words stand between a name and its end at most: “right down to the very bottom”. */
const FURTHEST = 5

/** Takes what says where a length ends into its name. */
export function toLandmark({ tokens, terms }: TextRead, label: Label): void {
  const [name] = label.points
  if (label.points.length !== 1 || name === undefined || !(LENGTHS.has(name) || SLEEVES.has(name))) return
  let seen = false
  for (let at = label.to; at < label.to + FURTHEST; ) {
    if (tokens[at]?.kind !== 'word') return
    const term = termAt(terms, at)
    if (seen) {
      const end = endAt(term)
      if (term && end !== undefined) {
        if (ENDS_OF_LENGTHS.has(end)) label.to = term.to
        return
      }
    }
    if (means(term, 'to')) seen = true
    else if (term && !means(term, 'light', 'measures', 'back', 'front')) return
    at = term?.to ?? at + 1
  }
}

const START: Partial<Record<Landmark, PointName>> = {
  armpit: 'sleeveUnderarm',
  shoulder: 'sleeveLength',
  neck: 'sleeveFromCentreBack'
}

/** “sleeve underneath, pit to end”, “sleeves from shoulder to hem: 9; from armpit to hem: 5”: which sleeve a pair of places tells behind a sleeve. */
export function ofSleeve(text: TextRead, sleeve: Label, pair: Label, apart: boolean): PointName | null {
  const { tokens, terms } = text
  const [name] = sleeve.points
  const ends = endsOf(termAt(terms, pair.from))
  if (!ends || name === undefined || sleeve.points.length > 1 || !SLEEVES.has(name) || !ENDS_OF_LENGTHS.has(ends[1])) return null
  for (let at = sleeve.to; at < pair.from; at++) {
    if (tokens[at]?.kind === 'break' || endsSentence(tokens, at)) return null
    const small = tokens[at]?.kind === 'mark' || means(termAt(terms, at), 'light', 'measures', 'from')
    if (!apart && !small) return null
  }
  // with its own figure before it, the sleeve goes on only from where no length of the garment begins
  if (apart && (ends[0] !== 'armpit' || !means(termAt(terms, pair.from - 1), 'from'))) return null
  return START[ends[0]] ?? null
}

/** “sleeve, seam to frill 25"”: where the name before it ends; it takes no figure. */
export function isEnd({ tokens, terms }: TextRead, last: Label, label: Label): boolean {
  if (last.role !== 'point' || label.role !== 'detail' || !means(termAt(terms, label.from - 1), 'to')) return false
  for (let at = last.to; at < label.from; at++) if (tokens[at]?.kind === 'break' || endsSentence(tokens, at)) return false
  return label.from - last.to <= FURTHEST
}

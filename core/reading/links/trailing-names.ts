/** Links set right by what stands behind their figures: how it was taken, what it is of, cloth to spare. */

import type { PointName } from '../languages/lexicon.ts'
import { BACK } from '../names/back-name.ts'
import { isFamily, moreExact } from '../names/families.ts'
import { landmarkFrom, STARTS_FROM } from '../names/from-landmark.ts'
import type { Label } from '../names/label.ts'
import { WITH } from '../names/not-a-name.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { quantityMm } from '../quantities/quantity-mm.ts'
import { cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Link } from './assign.ts'
import { linkCost } from './link-cost.ts'

const UPRIGHT = cue('wide', 'upright')

/** “collar 6" wide”, “Kragen 7 cm hoch”: how high a collar stands, not how far it goes around. */
export const isCollarHeight = ({ tokens }: TextRead, { label, quantity, before }: Link): boolean =>
  before && label.weak && label.points[0] === 'neck' && UPRIGHT.test(tokens[quantity.spanTo]?.text)

const ADJECTIVE = cue('wide', 'along')

/** “bib 9" wide”: the word before the figure is a thing we don't know (or nothing of ours), and the width is its own. */
export function isOfUnknown({ tokens, terms }: TextRead, { label, quantity, before }: Link): boolean {
  if (before || label.to - label.from !== 1 || !ADJECTIVE.test(tokens[label.from]?.text)) return false
  let at = quantity.from - 1
  while (at >= 0 && tokens[at]?.kind === 'word' && means(termAt(terms, at), 'light', 'measures') && quantity.from - at < 5) at--
  const word = tokens[at]
  const its = termAt(terms, at)
  const unknown = its === undefined || (means(its, 'nothing') && !means(its, 'point'))
  return word?.kind === 'word' && word.text.length > 2 && unknown && quantity.from - at < 4
}

/** “Balloon sleeves, 52 cm long”, “The sleeves are wide, 52 cm long”: what the sentence speaks of is so long. */
function sleevesBefore({ tokens }: TextRead, labels: readonly Label[], index: number, label: Label, used: ReadonlySet<Label>): boolean {
  let place = labels[index] === label ? index - 1 : index - 2
  // “are wide”, “are long”: no name beside the sleeves
  const said = labels[place]
  if (said && !used.has(said) && said.to - said.from === 1 && ADJECTIVE.test(tokens[said.from]?.text)) place--
  const before = labels[place]
  if (before?.points[0] !== 'sleeveLength' || before.points.length > 1 || used.has(before)) return false
  let from = before.from
  while (from > 0 && before.from - from < OPENING && tokens[from - 1]?.kind === 'word' && !hasThem(tokens[from - 1]?.text ?? '')) from--
  const opens = from === 0 || tokens[from - 1]?.kind === 'break' || endsSentence(tokens, from - 1)
  for (let at = before.to; at < label.from; at++) if (tokens[at]?.kind === 'break' || endsSentence(tokens, at)) return false
  return opens
}
/** “The balloon sleeves”: so many words before the name at the most. */
const OPENING = 2
const HAS = cue('has')
/** “with balloon sleeves”, “has balloon sleeves”: the sentence speaks of what has them. */
const hasThem = (word: string): boolean => HAS.test(word) || WITH.test(word)

const OPENING_WORD = cue('opening')
/** Wide at the cuff, the wrist, the hem, the opening. */
function isWideAtEnd({ tokens, terms }: TextRead, at: number): boolean {
  if (!WIDE.test(tokens[at]?.text)) return false
  for (let near = at + 1; near < at + 5 && tokens[near]?.kind === 'word'; near++) {
    const landmark = meaning(termAt(terms, near), 'landmark')?.landmark
    if (OPENING_WORD.test(tokens[near]?.text) || landmark === 'cuff' || landmark === 'hem') return true
    if (!means(termAt(terms, near), 'light')) return false
  }
  return false
}
const WIDE = cue('wide', 'across')

const SPARED = new Set<PointName>(['hem', 'bottomEdge', 'sweep', 'legOpening', 'waist', 'waistband', 'hip', 'inseam', 'length'])
const isSpared = ({ role }: Label): boolean => role === 'letDown' || role === 'letOut' || role === 'seamAllowance'
const SPARE_MM = 130
const isSmall = (one: Quantity): boolean => one.unit !== null && quantityMm(one) < SPARE_MM

/** A name that costs less stands right behind its figure. */
const CLOSE = 0.7

/** “chest 20" pit to pit”, “sleeve 18" from the underarm”: what stands behind a figure says how it was taken. */
export function withTrailingNames(text: TextRead, links: readonly Link[], labels: readonly Label[]): Link[] {
  const close = (quantity: Quantity, label: Label) => linkCost(text, label, quantity, false) < CLOSE
  const used = new Set(links.map(({ label }) => label))
  let index = 0
  return links.map((link) => {
    while (labels[index] && (labels[index] as Label).from < link.quantity.spanTo) index++
    const { label, quantity } = link
    const [a] = label.points
    const sleeves = label.to - label.from === 1 && a === 'length' && !link.before && sleevesBefore(text, labels, index, label, used)
    if (sleeves) return { ...link, label: { ...label, points: ['sleeveLength'] } }
    // “hem has 2" to let down”: cloth to spare, though the hem is named before it
    const spare = labels[index]
    if (
      link.before &&
      a !== undefined &&
      SPARED.has(a) &&
      spare &&
      !used.has(spare) &&
      isSpared(spare) &&
      isSmall(quantity) &&
      close(quantity, spare)
    )
      return { ...link, label: { ...spare, from: label.from } }
    // “sleeves 11" wide at the opening”
    if (link.before && a === 'sleeveLength' && label.points.length === 1 && isWideAtEnd(text, quantity.spanTo))
      return { ...link, label: { ...label, points: ['cuff'] } }
    // “Back 20" collar seam down”
    if (label.letter === BACK && spare?.points[0] === 'bodyLength' && !used.has(spare) && close(quantity, spare))
      return { ...link, label: { ...label, letter: null, points: ['bodyLength'] } }
    if (!link.before || label.role !== 'point' || a === undefined || label.points.length > 1) return link
    const landmark = STARTS_FROM[a] && landmarkFrom(text, quantity.spanTo)
    const better = landmark ? STARTS_FROM[a]?.[landmark.landmark] : undefined
    if (better) return { ...link, label: { ...label, points: [better] } }
    const next = labels[index]
    const b = next?.points[0]
    if (landmark || !next || b === undefined || used.has(next) || next.letter || !isFamily(a, b) || !close(quantity, next)) return link
    return { ...link, label: { ...label, points: [moreExact(a, b)], basis: next.basis ?? label.basis } }
  })
}

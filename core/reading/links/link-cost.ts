/** What it costs that a figure is of a name. */
import { table } from '../../ids/table.ts'
import { landmarkFrom } from '../names/from-landmark.ts'
import type { Label } from '../names/label.ts'
import { numberAt } from '../quantities/numbers.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { means, meansAny, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'

/** Costs from here on are no link at all. */
export const NEVER = 1e9
const FURTHEST = 40

const NO_HALVES: ReadonlySet<string> = new Set()

const COMMA = 0.7
const SOFT = table<number>({
  ',': COMMA,
  ';': 1.2,
  '/': 0.5,
  '|': 1,
  '•': 1,
  '·': 1,
  '*': 0.3,
  ')': 0.1,
  '(': 0.1,
  ']': 0.1,
  '[': 0.1,
  '&': 0.6,
  '+': 0.6,
  x: 0.3
})

/** Words that hold no figure off its name. */
const SMALL: Parameters<typeof meansAny>[1] = [
  'light',
  'basis',
  'unit',
  'front',
  'back',
  'relaxed',
  'stretched',
  'inner',
  'from',
  'to',
  'cuffed',
  'uncuffed',
  'closed',
  'opened',
  'landmark',
  'or',
  'all',
  'half'
]

const MEASURE = cue('measureVerb')
const LEADS_TO_NAME = cue('leadsToName')

/** What it costs that a figure belongs to a name: what stands between them. */
export function linkCost(text: TextRead, label: Label, quantity: Quantity, before: boolean): number {
  const { tokens, terms } = text
  const from = before ? label.to : quantity.spanTo
  const to = before ? quantity.from : label.from
  if (to - from > FURTHEST) return NEVER
  let cost = before ? 0 : 0.35
  let joint = false
  const start = before ? pastOwnBracket(text, label, to) : from
  if (start > from) cost += 0.2
  for (let at = start; at < to; at++) {
    const token = tokens[at] as Token
    if (token.kind === 'break') {
      cost += lineEnd(text, at, label, quantity, before)
      continue
    }
    if (token.kind === 'mark') {
      if (token.text === '(' && before) {
        const close = closing(text, at, to)
        if (close > at) {
          cost += 0.2
          at = close
          continue
        }
      }
      // “24.5 + 1.5 sleeves”: cloth to spare, told with the figure
      if (token.text === '+' && !before && at === from && tokens[at + 1]?.kind === 'digits') {
        cost += 0.1
        at = numberAt(tokens, at + 1, NO_HALVES)?.next ?? at + 2
        at--
        continue
      }
      if (endsSentence(tokens, at)) cost += 2
      else if (token.text === ',' && before && (isWholePart(text, at, label, quantity) || isFromItsTop(text, label, quantity))) cost += 0.2
      else if (token.text === ',' && before && at === label.to) {
        const end = asideEnds(text, at, to)
        cost += end > at ? 0.3 : COMMA
        at = end
      } else if (
        token.text === ';' &&
        before &&
        at === label.to &&
        at + 1 === quantity.from &&
        (startsLine(text, label.from) || isGlued(text, at))
      ) {
        cost -= 0.15
        joint = true
      } else if (isOneOf(token, ':=')) {
        cost += before ? (joint ? 0 : -0.3) : 0.8
        joint = true
      } else if (isOneOf(token, `-~>→⇒.<_"'"`)) {
        cost += before ? (joint ? 0 : -0.15) : 0.1
        if (token.text !== "'" && token.text !== '"') joint = true
      } else cost += SOFT[token.text] ?? 0.5
      continue
    }
    const term = termAt(terms, at)
    if (token.kind === 'word' && token.text === 'x') cost += 0.3
    else if (!term) cost += 0.5
    else if (means(term, 'and')) cost += before ? 0.45 : 0.3
    else if (means(term, 'measures') || MEASURE.test(tokens[term.to - 1]?.text)) cost += before ? 0 : 0.6
    // 18 inches from the shoulder: where it starts, unless both ends are named
    else if (!before && means(term, 'from') && label.to - label.from < 3 && !OF.test(token.text)) cost += 0.8
    else if (!before && at === from && means(term, 'light') && LEADS_TO_NAME.test(token.text)) cost -= 0.1
    else if (meansAny(term, SMALL)) cost += 0.05
    else cost += 0.5
    if (term) at = Math.max(at, term.to - 1)
  }
  if (!before) {
    // “27 at the back, sleeves are 18”: a name with its own verb or colon waits for the figure behind it
    const next = tokens[label.to]
    if (next && (isOneOf(next, ':=') || means(termAt(terms, label.to), 'measures') || VERB.test(next.text))) cost += 0.8
  }
  // “don't go by the 14 inside”: a name that says little takes no bare figure from before it
  if (label.weak && (cost > 0.4 || (!before && quantity.unit === null))) return NEVER
  if (label.role === 'fault' || label.role === 'thing') cost += before ? 0.6 : 0
  return cost
}

/** “chest (armpit to armpit, buttoned up) 58”: a name that ends in brackets of its own goes on to their end. */
function pastOwnBracket({ tokens }: TextRead, label: Label, to: number): number {
  let open = false
  for (let at = label.from + 1; at < label.to; at++) {
    const { kind, text } = tokens[at] as Token
    if (kind !== 'mark') continue
    if (text === '(' || text === '[') open = true
    else if (text === ')' || text === ']') open = false
  }
  if (!open) return label.to
  for (let at = label.to; at < to; at++) if (tokens[at]?.text === ')' || tokens[at]?.text === ']') return at + 1
  return label.to
}

/** “waist;15 hip;20” */
const isGlued = ({ tokens }: TextRead, at: number): boolean => tokens[at]?.spaced === false && tokens[at + 1]?.spaced === false

/** “the bust, tied the normal way, is 37”: the comma that ends an aside before the name’s own verb, else the same token. */
function asideEnds({ tokens, terms }: TextRead, at: number, to: number): number {
  for (let end = at + 2; end < Math.min(to - 1, at + ASIDE); end++) {
    const token = tokens[end] as Token
    if (token.text !== ',') {
      if (token.kind !== 'word' || means(termAt(terms, end), 'point')) return at
      continue
    }
    return VERB.test(tokens[end + 1]?.text) || means(termAt(terms, end + 1), 'measures') ? end : at
  }
  return at
}
const ASIDE = 9

/** “Cap sleeve, 4".”: a sentence or a line that is a name, a comma and a figure. */
const isWholePart = (text: TextRead, at: number, label: Label, quantity: Quantity): boolean =>
  at === label.to &&
  at + 1 === quantity.from &&
  (startsLine(text, label.from) || endsSentence(text.tokens, label.from - 1)) &&
  (endsLine(text, quantity.spanTo) || endsSentence(text.tokens, quantity.spanTo))

/** “Long sleeves, 60 cm from the shoulder”: where a sleeve starts is told behind its figure. */
const isFromItsTop = (text: TextRead, label: Label, { spanTo }: Quantity): boolean =>
  label.points[0] === 'sleeveLength' && landmarkFrom(text, spanTo) !== null

/** In these languages “44 cm de cintura” is how the waist of 44 is told. */
export const OF = cue('ofMeasure')

/** is, are: in the languages read. */
const VERB = cue('verb')

/** A line's end parts, unless the name stands alone on its line and the figure alone on the next. */
function lineEnd(text: TextRead, at: number, label: Label, quantity: Quantity, before: boolean): number {
  const { tokens } = text
  if (tokens[at + 1]?.kind === 'break' || tokens[at - 1]?.kind === 'break') return 1.3
  const alone =
    startsLine(text, label.from) &&
    (before
      ? endsLine(text, quantity.spanTo) && startsLine(text, quantity.from)
      : endsLine(text, label.to) && startsLine(text, quantity.from))
  return alone ? 0.5 : 1.6
}

const startsLine = ({ tokens }: TextRead, index: number): boolean =>
  index === 0 ||
  tokens[index - 1]?.kind === 'break' ||
  (tokens[index - 1]?.kind === 'mark' && (index === 1 || tokens[index - 2]?.kind === 'break'))
const endsLine = ({ tokens }: TextRead, index: number): boolean => tokens[index] === undefined || tokens[index]?.kind === 'break'

function closing({ tokens }: TextRead, from: number, to: number): number {
  for (let at = from + 1; at < to; at++) if (tokens[at]?.text === ')') return at
  return -1
}

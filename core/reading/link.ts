/**
 * Which figure is of which name. Names and figures stand in one row; a figure goes to the name before it, to the name after it,
 * a second time to the name before, or to nobody. What is chosen costs least over the whole row (a walk with three states): so a list
 * that is number-first is read number-first throughout, and one colon does not turn it.
 */
import type { Label } from './label.ts'
import { endsSentence } from './layout.ts'
import type { Quantity } from './quantities.ts'
import { means, meansAny, type Terms, termAt } from './terms.ts'
import type { Token } from './tokens.ts'

export interface Link {
  quantity: Quantity
  label: Label
  /** The name was before the figure. */
  before: boolean
  /** A second figure of the same name. */
  again: boolean
  cost: number
}

/** A figure of nobody's costs less without a unit: it may be anything. */
const NOBODY = 2.6
const NOBODY_BARE = 1.4
/** “20" long”: a word that only says along what. */
const ADJECTIVE = 0.15
const UNUSED: Record<Label['role'], number> = {
  point: 0.8,
  detail: 0.6,
  thing: 0.1,
  height: 0.3,
  letDown: 0.5,
  letOut: 0.5,
  seamAllowance: 0.5,
  fault: 0.1
}
const NEVER = 1e9
const FURTHEST = 40

type Item = { label: Label } | { quantity: Quantity }
/** none: the last name has its figure · free: it has none yet · taken: the figure before took the name to come · behind: the last name stands behind its figure. */
type State = 'none' | 'free' | 'taken' | 'behind'
const STATES: State[] = ['none', 'free', 'taken', 'behind']
/** A name between two figures is rarely both's. */
const BOTH_SIDES = 1.2
interface Step {
  cost: number
  state: State
  back: Step | null
  link: Link | null
}

/** A second figure of one name costs less where a word says what it is of: “rise 11 front, 14.5 back”, “(stretches to 21)”. */
function again(terms: Terms, { from, spanTo }: Quantity): number {
  const behind = termAt(terms, spanTo)
  const ahead = termAt(terms, from - 1)
  return (meansAny(behind, SIDES) && !means(behind, 'point')) || means(ahead, 'stretched', 'relaxed', 'cuffed', 'uncuffed') ? 0.1 : 1.2
}
const SIDES: Parameters<typeof meansAny>[1] = ['front', 'back', 'inner', 'relaxed', 'stretched', 'cuffed', 'uncuffed']

type Row = Record<State, Step | null>

/** Takes a step to a state where it is the cheapest so far; the link is only made then. */
function reach(next: Row, from: Step, state: State, cost: number, made: Link | null): void {
  const total = from.cost + cost
  const known = next[state]
  if (total < NEVER && (known === null || total < known.cost)) next[state] = { cost: total, state, back: from, link: made }
}
function reachBy(
  next: Row,
  from: Step,
  state: State,
  cost: number,
  quantity: Quantity,
  label: Label,
  gapCost: number,
  again: boolean
): void {
  const known = next[state]
  if (from.cost + cost >= NEVER || (known !== null && from.cost + cost >= known.cost)) return
  reach(next, from, state, cost, { quantity, label, before: state !== 'taken', again, cost: gapCost })
}

/** The links of least cost. Linear: a figure looks no further than the name before and the name after it. */
export function linksOf(tokens: readonly Token[], terms: Terms, labels: readonly Label[], quantities: readonly Quantity[]): Link[] {
  const items = row(labels, quantities)
  let now: Row = { none: { cost: 0, state: 'none', back: null, link: null }, free: null, taken: null, behind: null }
  let last: Label | null = null
  for (let index = 0; index < items.length; index++) {
    const item = items[index] as Item
    const next: Row = { none: null, free: null, taken: null, behind: null }
    const open: number = last ? unused(tokens, terms, last) : 0
    if ('label' in item) {
      if (now.none) reach(next, now.none, 'free', 0, null)
      if (now.free) reach(next, now.free, 'free', open, null)
      if (now.taken) reach(next, now.taken, 'behind', 0, null)
      if (now.behind) reach(next, now.behind, 'free', 0, null)
      last = item.label
    } else {
      const { quantity } = item
      const left: number = last ? gap(tokens, terms, last, quantity, true) : NEVER
      const following = items[index + 1]
      const name = following && 'label' in following ? following.label : null
      const right = name ? gap(tokens, terms, name, quantity, false) : NEVER
      const nobody = quantity.unit === null ? NOBODY_BARE : NOBODY
      const { none, free, behind } = now
      if (none) {
        reach(next, none, 'none', nobody, null)
        if (last) reachBy(next, none, 'none', again(terms, quantity) + Math.max(left, 0), quantity, last, left, true)
        if (name) reachBy(next, none, 'taken', right, quantity, name, right, false)
      }
      if (behind) {
        reach(next, behind, 'behind', nobody, null)
        if (last) reachBy(next, behind, 'behind', again(terms, quantity) + BOTH_SIDES + Math.max(left, 0), quantity, last, left, true)
        if (name) reachBy(next, behind, 'taken', right, quantity, name, right, false)
      }
      if (free) {
        reach(next, free, 'free', nobody, null)
        if (last) reachBy(next, free, 'none', left, quantity, last, left, false)
        if (name) reachBy(next, free, 'taken', right + open, quantity, name, right, false)
      }
    }
    now = next
  }
  // a name at the end that no figure took costs what any other would
  const left = last ? unused(tokens, terms, last) : 0
  if (now.free) now.free = { ...now.free, cost: now.free.cost + left }
  const ends = STATES.flatMap((state) => (now[state] ? [now[state] as Step] : [])).sort((a, b) => a.cost - b.cost)
  const links: Link[] = []
  for (let step: Step | null = ends[0] ?? null; step; step = step.back) if (step.link) links.push(step.link)
  return links.reverse()
}

const ADJECTIVES = /^(?:long|wide|deep|tall|lang|breit|lange|larga|largo|lungo|lunga|longue|bred|breed)$/

/** A name that no figure took: little when it only says how a figure ran (long, from the shoulder). */
function unused(tokens: readonly Token[], terms: Terms, label: Label): number {
  if (label.to - label.from === 1 && ADJECTIVES.test(tokens[label.from]?.text ?? '')) return ADJECTIVE
  const start = means(termAt(terms, label.from - 1), 'from') || means(termAt(terms, label.from - 2), 'from')
  return start ? ADJECTIVE : UNUSED[label.role]
}

function row(labels: readonly Label[], quantities: readonly Quantity[]): Item[] {
  const items: Item[] = []
  let label = 0
  for (const quantity of quantities) {
    for (; label < labels.length && (labels[label] as Label).from < quantity.from; label++) items.push({ label: labels[label] as Label })
    items.push({ quantity })
  }
  for (; label < labels.length; label++) items.push({ label: labels[label] as Label })
  return items
}

const SOFT: Record<string, number> = {
  ',': 0.7,
  ';': 1.2,
  '/': 0.5,
  '|': 1,
  '•': 1,
  '·': 1,
  '*': 0.8,
  ')': 0.1,
  '(': 0.1,
  ']': 0.1,
  '[': 0.1,
  '&': 0.6,
  '+': 0.6,
  x: 0.3
}

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
  'landmark',
  'or',
  'all',
  'half'
]

/** What it costs that a figure belongs to a name: what stands between them. */
export function gap(tokens: readonly Token[], terms: Terms, label: Label, quantity: Quantity, before: boolean): number {
  const from = before ? label.to : quantity.spanTo
  const to = before ? quantity.from : label.from
  if (to - from > FURTHEST) return NEVER
  let cost = before ? 0 : 0.35
  let joint = false
  for (let at = from; at < to; at++) {
    const token = tokens[at] as Token
    if (token.kind === 'break') {
      cost += lineEnd(tokens, at, label, quantity, before)
      continue
    }
    if (token.kind === 'mark') {
      if (token.text === '(' && before) {
        const close = closing(tokens, at, to)
        if (close > at) {
          cost += 0.2
          at = close
          continue
        }
      }
      if (endsSentence(tokens, at)) cost += 2
      else if (/^[:=]$/.test(token.text)) {
        cost += before ? (joint ? 0 : -0.3) : 0.8
        joint = true
      } else if (/^[-~>.<_"'"]$/.test(token.text)) {
        cost += before ? (joint ? 0 : -0.15) : 0.1
        if (token.text !== "'" && token.text !== '"') joint = true
      } else cost += SOFT[token.text] ?? 0.5
      continue
    }
    const term = termAt(terms, at)
    if (token.kind === 'word' && token.text === 'x') cost += 0.3
    else if (!term) cost += 0.5
    else if (means(term, 'and')) cost += before ? 0.45 : 0.3
    else if (means(term, 'measures')) cost += before ? 0 : 0.6
    // 18 inches from the shoulder: where it starts, unless both ends are named
    else if (!before && means(term, 'from') && label.to - label.from < 3) cost += 0.8
    else if (!before && at === from && means(term, 'light') && /^(?:at|in|across|around|on|of|a|an|the)$/.test(token.text)) cost -= 0.1
    else if (meansAny(term, SMALL)) cost += 0.05
    else cost += 0.5
    if (term) at = Math.max(at, term.to - 1)
  }
  if (!before) {
    // “27 at the back, sleeves are 18”: a name with its own verb or colon waits for the figure behind it
    const next = tokens[label.to]
    if (next && (/^[:=]$/.test(next.text) || means(termAt(terms, label.to), 'measures') || VERB.test(next.text))) cost += 0.8
  }
  if (label.weak && cost > 0.4) return NEVER
  if (label.role === 'fault' || label.role === 'thing') cost += before ? 0.6 : 0
  return cost
}

/** is, are: in the languages read. */
const VERB = /^(?:is|are|was|ist|sind|est|sont|es|son|sono|zijn|jest|ar|mierzy|misst|mesure|mide|misura|meet|mater)$/

/** A line's end parts, unless the name stands alone on its line and the figure alone on the next. */
function lineEnd(tokens: readonly Token[], at: number, label: Label, quantity: Quantity, before: boolean): number {
  if (tokens[at + 1]?.kind === 'break' || tokens[at - 1]?.kind === 'break') return 1.3
  const alone =
    startsLine(tokens, label.from) &&
    (before
      ? endsLine(tokens, quantity.spanTo) && startsLine(tokens, quantity.from)
      : endsLine(tokens, label.to) && startsLine(tokens, quantity.from))
  return alone ? 0.5 : 1.6
}

const startsLine = (tokens: readonly Token[], index: number): boolean =>
  index === 0 ||
  tokens[index - 1]?.kind === 'break' ||
  (tokens[index - 1]?.kind === 'mark' && (index === 1 || tokens[index - 2]?.kind === 'break'))
const endsLine = (tokens: readonly Token[], index: number): boolean => tokens[index] === undefined || tokens[index]?.kind === 'break'

function closing(tokens: readonly Token[], from: number, to: number): number {
  for (let at = from + 1; at < to; at++) if (tokens[at]?.text === ')') return at
  return -1
}

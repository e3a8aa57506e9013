/**
 * Which figure is of which name. Names and figures stand in one row; a figure goes to the name before it, to the name after it,
 * a second time to the name before, or to nobody. What is chosen costs least over the whole row (a walk with three states): so a list
 * that is number-first is read number-first throughout, and one colon does not turn it.
 */

import { isFamily } from '../names/families.ts'
import type { Label } from '../names/label.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { means, meansAny, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { gap, NEVER } from './gap.ts'
import { isMeasured } from './measured.ts'

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

/** A second figure of one name costs less where a word says what it is of: “rise 11 front, 14.5 back”, “(stretches to 21)”, “(measures 38)”. */
function again(text: TextRead, { from, spanTo }: Quantity, left: number): number {
  const { terms } = text
  const behind = termAt(terms, spanTo)
  const ahead = termAt(terms, from - 1)
  // what stands between tells of the first figure: “5" as per the name but I measure 4.75"”
  if (isMeasured(text, from) && left < ANOTHER) return 0.1 + Math.min(Math.max(left, 0), 1)
  const told = means(ahead, 'stretched', 'relaxed', 'cuffed', 'uncuffed', 'inner') || (meansAny(behind, SIDES) && !means(behind, 'point'))
  return (told ? 0.1 : 1.2) + Math.max(left, 0)
}
/** From here on other sentences stand between. */
const ANOTHER = 3
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
export function linksOf(text: TextRead, labels: readonly Label[], quantities: readonly Quantity[]): Link[] {
  const items = row(labels, quantities)
  let now: Row = { none: { cost: 0, state: 'none', back: null, link: null }, free: null, taken: null, behind: null }
  let last: Label | null = null
  let lastUnused = 0
  for (let index = 0; index < items.length; index++) {
    const item = items[index] as Item
    const next: Row = { none: null, free: null, taken: null, behind: null }
    const open: number = last ? lastUnused : 0
    if ('label' in item) {
      if (now.none) reach(next, now.none, 'free', 0, null)
      if (now.free) reach(next, now.free, 'free', open, null)
      if (now.taken) reach(next, now.taken, 'behind', 0, null)
      if (now.behind) reach(next, now.behind, 'free', 0, null)
      lastUnused = isTrailing(text, items[index - 1], last, item.label) ? ADJECTIVE : unused(text, item.label)
      last = item.label
    } else {
      const { quantity } = item
      const left: number = last ? gap(text, last, quantity, true) : NEVER
      const following = items[index + 1]
      const name = following && 'label' in following ? following.label : null
      const right = name ? gap(text, name, quantity, false) : NEVER
      const nobody = quantity.unit === null ? NOBODY_BARE : NOBODY
      const { none, free, behind } = now
      if (none) {
        reach(next, none, 'none', nobody, null)
        if (last) reachBy(next, none, 'none', again(text, quantity, left), quantity, last, left, true)
        if (name) reachBy(next, none, 'taken', right, quantity, name, right, false)
      }
      if (behind) {
        reach(next, behind, 'behind', nobody, null)
        if (last) reachBy(next, behind, 'behind', again(text, quantity, left) + BOTH_SIDES, quantity, last, left, true)
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
  const left = last ? lastUnused : 0
  if (now.free) now.free = { ...now.free, cost: now.free.cost + left }
  const ends = STATES.flatMap((state) => (now[state] ? [now[state] as Step] : [])).sort((a, b) => a.cost - b.cost)
  const links: Link[] = []
  for (let step: Step | null = ends[0] ?? null; step; step = step.back) if (step.link) links.push(step.link)
  return links.reverse()
}

const ADJECTIVES = /^(?:long|wide|deep|tall|lang|breit|lange|larga|largo|lungo|lunga|longue|bred|breed)$/

/** A name that no figure took: little when it only says how a figure ran (long, from the shoulder). */
function unused({ tokens, terms }: TextRead, label: Label): number {
  if (label.to - label.from === 1 && ADJECTIVES.test(tokens[label.from]?.text ?? '')) return ADJECTIVE
  const start = means(termAt(terms, label.from - 1), 'from') || means(termAt(terms, label.from - 2), 'from')
  return start ? ADJECTIVE : UNUSED[label.role]
}

/** “chest 23" pit to pit, and 27" long”: a name right behind a figure that only says how the name before it was taken. */
function isTrailing(text: TextRead, before: Item | undefined, name: Label | null, label: Label): boolean {
  const [a] = name?.points ?? []
  const [b] = label.points
  if (a === undefined || b === undefined || before === undefined || !('quantity' in before)) return false
  return isFamily(a, b) && gap(text, label, before.quantity, false) < TRAILING
}
const TRAILING = 0.7

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

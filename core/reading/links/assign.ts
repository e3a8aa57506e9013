/**
 * Which figure is of which name. Names and figures stand in one row; a figure goes to the name before it, to the name after it,
 * a second time to the name before, or to nobody. What is chosen costs least over the whole row (a walk with four states): so a list
 * that is number-first is read number-first throughout, and one colon does not turn it.
 */

import { isFamily } from '../names/families.ts'
import type { Label } from '../names/label.ts'
import { WITH } from '../names/not-a-name.ts'
import type { Quantity } from '../quantities/quantities.ts'

import { cue } from '../text/cues.ts'
import { means, meansAny, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { linkCost, NEVER } from './link-cost.ts'

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
const UNASSIGNED_COST = 2.6
const UNASSIGNED_BARE_COST = 1.4
/** “20" long”: a word that only says along what. */
const ADJECTIVE_COST = 0.15
const UNUSED_COST: Record<Label['role'], number> = {
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
/**
 * What is known of the names beside a figure while the row is walked: the last name has its figure; it has none yet; the figure before
 * took the name to come; the last name was taken by the figure before it.
 */
type State = 'hasFigure' | 'wantsFigure' | 'nextTaken' | 'behindFigure'
const STATES: State[] = ['hasFigure', 'wantsFigure', 'nextTaken', 'behindFigure']
/** A name between two figures is rarely both's. */
const BOTH_SIDES = 1.2
interface Step {
  cost: number
  state: State
  back: Step | null
  link: Link | null
}

/** A second figure of one name costs less where a word says what it is of: “rise 11 front, 14.5 back”, “(stretches to 21)”, “(measures 38)”. */
function costOfSecond(text: TextRead, { from, spanTo }: Quantity, left: number): number {
  const { terms } = text
  const behind = termAt(terms, spanTo)
  const ahead = termAt(terms, from - 1)
  // what stands between tells of the first figure: “5" as per the name but I measure 4.75"”
  if (isMeasured(text, from) && left < ANOTHER) return 0.1 + Math.min(Math.max(left, 0), 1)
  // “43 with collar”, “(29.5 with the two turn ups)”, “without collar 61”
  const counted = WITH.test(text.tokens[spanTo]?.text) && isCountedIn(text, spanTo + 1)
  const isOut = ahead !== undefined && means(ahead, 'point', 'lining') && means(termAt(terms, ahead.from - 1), 'not', 'including')
  const isSaid =
    counted || isOut || (meansAny(ahead, SIDES) && !means(ahead, 'front', 'back')) || (meansAny(behind, SIDES) && !means(behind, 'point'))
  return (isSaid ? 0.1 : 1.2) + Math.max(left, 0)
}
/** A name or a detail, articles and numbers stepped over, with no figure of its own. */
function isCountedIn({ tokens, terms }: TextRead, from: number): boolean {
  for (let at = from; at < from + 3; at++) {
    const term = termAt(terms, at)
    if (tokens[at]?.kind !== 'word') return false
    if (term && means(term, 'point', 'lining', 'detail')) return tokens[term.to]?.kind !== 'digits'
    if (term && !means(term, 'light', 'number')) return false
  }
  return false
}
/** From here on other sentences stand between. */
const ANOTHER = 3
const SIDES: Parameters<typeof meansAny>[1] = ['front', 'back', 'inner', 'relaxed', 'stretched', 'cuffed', 'uncuffed', 'closed', 'opened']

type Row = Record<State, Step | null>

/** Takes a step to a state where it is the cheapest so far; the link is only made then. */
function reach(next: Row, from: Step, state: State, cost: number, made: Link | null): void {
  const total = from.cost + cost
  const known = next[state]
  if (known === null || total < known.cost) next[state] = { cost: total, state, back: from, link: made }
}
function reachWithLink(
  next: Row,
  from: Step,
  state: State,
  cost: number,
  quantity: Quantity,
  label: Label,
  linkCosts: number,
  again: boolean
): void {
  const known = next[state]
  if (from.cost + cost >= NEVER || (known !== null && from.cost + cost >= known.cost)) return
  reach(next, from, state, cost, { quantity, label, before: state !== 'nextTaken', again, cost: linkCosts })
}

/** The links of least cost. Linear: a figure looks no further than the name before and the name after it. */
export function linksOf(text: TextRead, labels: readonly Label[], quantities: readonly Quantity[]): Link[] {
  const items = row(labels, quantities)
  let now: Row = {
    hasFigure: { cost: 0, state: 'hasFigure', back: null, link: null },
    wantsFigure: null,
    nextTaken: null,
    behindFigure: null
  }
  let last: Label | null = null
  let lastUnused = 0
  for (let index = 0; index < items.length; index++) {
    const item = items[index] as Item
    const next: Row = { hasFigure: null, wantsFigure: null, nextTaken: null, behindFigure: null }
    const unusedCost: number = last ? lastUnused : 0
    if ('label' in item) {
      if (now.hasFigure) reach(next, now.hasFigure, 'wantsFigure', 0, null)
      if (now.wantsFigure) reach(next, now.wantsFigure, 'wantsFigure', unusedCost, null)
      if (now.nextTaken) reach(next, now.nextTaken, 'behindFigure', 0, null)
      if (now.behindFigure) reach(next, now.behindFigure, 'wantsFigure', 0, null)
      lastUnused = isTrailing(text, items[index - 1], last, item.label) ? ADJECTIVE_COST : unused(text, item.label)
      last = item.label
    } else {
      const { quantity } = item
      const costOfLast: number = last ? linkCost(text, last, quantity, true) : NEVER
      const again = costOfSecond(text, quantity, costOfLast)
      const following = items[index + 1]
      const nextName = following && 'label' in following ? following.label : null
      const costOfNext = nextName ? linkCost(text, nextName, quantity, false) : NEVER
      const unassigned = quantity.unit === null ? UNASSIGNED_BARE_COST : UNASSIGNED_COST
      const { hasFigure, wantsFigure, behindFigure } = now
      if (hasFigure) {
        reach(next, hasFigure, 'hasFigure', unassigned, null)
        if (last) reachWithLink(next, hasFigure, 'hasFigure', again, quantity, last, costOfLast, true)
        if (nextName) reachWithLink(next, hasFigure, 'nextTaken', costOfNext, quantity, nextName, costOfNext, false)
      }
      if (behindFigure) {
        reach(next, behindFigure, 'behindFigure', unassigned, null)
        if (last) reachWithLink(next, behindFigure, 'behindFigure', again + BOTH_SIDES, quantity, last, costOfLast, true)
        if (nextName) reachWithLink(next, behindFigure, 'nextTaken', costOfNext, quantity, nextName, costOfNext, false)
      }
      if (wantsFigure) {
        reach(next, wantsFigure, 'wantsFigure', unassigned, null)
        if (last) reachWithLink(next, wantsFigure, 'hasFigure', costOfLast, quantity, last, costOfLast, false)
        if (nextName) reachWithLink(next, wantsFigure, 'nextTaken', costOfNext + unusedCost, quantity, nextName, costOfNext, false)
      }
    }
    now = next
  }
  // a name at the end that no figure took costs what any other would
  if (now.wantsFigure) now.wantsFigure = { ...now.wantsFigure, cost: now.wantsFigure.cost + (last ? lastUnused : 0) }
  let least: Step | null = null
  for (const state of STATES) {
    const end: Step | null = now[state]
    if (end !== null && (least === null || end.cost < least.cost)) least = end
  }
  const links: Link[] = []
  for (let step: Step | null = least; step; step = step.back) if (step.link) links.push(step.link)
  return links.reverse()
}

const ADJECTIVES = cue('howItRan')

/** A name that no figure took: little when it only says how a figure ran (long, from the shoulder). */
function unused({ tokens, terms }: TextRead, label: Label): number {
  if (label.to - label.from === 1 && ADJECTIVES.test(tokens[label.from]?.text)) return ADJECTIVE_COST
  const start = means(termAt(terms, label.from - 1), 'from') || means(termAt(terms, label.from - 2), 'from')
  return start ? ADJECTIVE_COST : UNUSED_COST[label.role]
}

/** “chest 23" pit to pit, and 27" long”: a name right behind a figure that only says how the name before it was taken. */
function isTrailing(text: TextRead, before: Item | undefined, name: Label | null, label: Label): boolean {
  const [a] = name?.points ?? []
  const [b] = label.points
  if (a === undefined || b === undefined || before === undefined || !('quantity' in before)) return false
  return isFamily(a, b) && linkCost(text, label, before.quantity, false) < TRAILING
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

/** What a figure can be of: names of points, of details, heights, allowances, faults; with what refines them. */

import type { PointName } from '../languages/lexicon.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { meaning, means, meansAny, type Term, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import { backNames } from './back-name.ts'
import { isItsPlace } from './detail-place.ts'
import { GENERIC, isFamily, moreExact } from './families.ts'
import { fromLandmark } from './from-landmark.ts'
import { fromNames } from './from-names.ts'
import type { Label, LabelRole } from './label.ts'
import { letterHeads } from './letter-heads.ts'
import { namesNothing, WITH } from './not-a-name.ts'
import { bothRises, RISES } from './rises.ts'
import { shorthand } from './shorthand.ts'
import { isEnd, ofSleeve, toLandmark } from './to-landmark.ts'

/** Words that may stand between two names of one thing. */
const BETWEEN: Parameters<typeof meansAny>[1] = ['light', 'basis', 'front', 'back', 'inner', 'landmark', 'unit', 'position']

const ROLES: LabelRole[] = ['letDown', 'letOut', 'seamAllowance', 'point', 'detail', 'height', 'fault', 'thing']

/** One label a term, then those that belong together joined: length (shoulder to hem), bust/waist, rise – front. Linear. */
export function labelsOf(text: TextRead, quantities: readonly Quantity[]): Label[] {
  const { tokens, terms } = text
  const figures = figureStarts(tokens.length, quantities)
  const behind = new Set(quantities.map(({ spanTo }) => spanTo))
  const single: Label[] = []
  // before the rest: what they name is a detail elsewhere
  for (const label of backNames(text, quantities)) single.push(label)
  for (const term of termsAs(terms, ...ROLES)) {
    const label = labelOf(text, term)
    if (label) single.push(label)
  }
  for (const label of shorthand(text, quantities)) single.push(label)
  for (const label of letterHeads(text, quantities)) single.push(label)
  for (const label of fromNames(text, quantities)) single.push(label)
  single.sort((a, b) => a.from - b.from)
  const joined: Label[] = []
  for (const label of single) {
    const last = joined[joined.length - 1]
    if (last && label.from < last.to) continue // where it starts is part of the name
    fromLandmark(text, label)
    toLandmark(text, label)
    const apart = last !== undefined && figures(last.to, label.from)
    const sleeve = last ? ofSleeve(text, last, label, apart) : null
    if (last && sleeve && !apart) {
      joined[joined.length - 1] = { ...last, to: label.to, points: [sleeve] }
      continue
    }
    if (sleeve) Object.assign(label, { role: 'point', points: [sleeve] })
    if (last && !apart && isEnd(text, last, label)) {
      last.to = label.to
      continue
    }
    // 23" long and the shoulders 17": what has its figure before it begins no joint name
    const ended = last && isBehindFigure(text, last.from, behind) && tokens[last.to]?.text !== '/'
    const one = last && !apart ? together(text, last, label, ended === true) : null
    if (one === 'drop') continue
    if (one) joined[joined.length - 1] = one
    else if (!isStart(text, label) && !(last && isRemark(text, last, label, figures))) joined.push(label)
  }
  return joined
}

/** 23" long · 27" at the waist: right behind its figure, small words stepped over. */
function isBehindFigure({ tokens, terms }: TextRead, from: number, behind: ReadonlySet<number>): boolean {
  for (let at = from; at >= from - 3; at--) {
    if (behind.has(at)) return true
    if (tokens[at - 1]?.kind !== 'word' || !means(termAt(terms, at - 1), 'light')) return false
  }
  return false
}

/** These also say whose: “tour de la poitrine”. */
const OF = cue('whose')

/** “(from the shoulder)”, “ab Kragen”, “hollow to hem”: where something is measured from or to names nothing by itself. */
function isStart({ tokens, terms }: TextRead, label: Label): boolean {
  if (label.letter !== null || !means(termAt(terms, label.from), 'landmark') || label.points.length > 1) return false
  if (isOneOf(tokens[label.to], ':=')) return false
  let before = termAt(terms, label.from - 1)
  while (before && means(before, 'light') && !means(before, 'from', 'to') && label.from - before.from < 4)
    before = termAt(terms, before.from - 1)
  if (before === undefined || !means(before, 'from', 'to') || means(before, 'position')) return false
  return !OF.test(tokens[before.from]?.text) || tokens[before.from - 1]?.text === '('
}

/** “Chest (button to button) 42"”: what stands in brackets behind a name, with no figure of its own, only says how. */
function isRemark(text: TextRead, last: Label, label: Label, figures: (from: number, to: number) => boolean): boolean {
  const { tokens, terms } = text
  let open = last.to
  // “back width at its narrowest (sleeve to sleeve) 17”
  while (open < last.to + REMARKED && tokens[open]?.kind === 'word') open++
  if (last.role !== 'point' || (label.role !== 'detail' && label.role !== 'point') || tokens[open]?.text !== '(') return false
  // “Ärmel innen (Achsel bis Bündchen) 48”: from where to where
  const close = closingOf(text, open)
  if (close === null || close < label.to || figures(last.to, close)) return false
  return (
    label.role !== 'point' ||
    means(termAt(terms, label.to), 'to') ||
    // (襟から袖口まで): where verbs stand last, “to” stands right before the closing bracket
    means(termAt(terms, close - 1), 'to') ||
    isWhole(text, open, label) ||
    isFigureBehind(text, open, close)
  )
}

const REMARKED = 4
const LONGEST_REMARK = 16

/** Where a bracket closes that is open at a token; null: not near. */
function closingOf({ tokens }: TextRead, open: number): number | null {
  for (let at = open + 1; at < open + LONGEST_REMARK; at++) if (tokens[at]?.text === ')') return at
  return null
}

/** “Thigh (from the crotch to the outside of the leg): 12”: the figure stands right behind the brackets, in the same line. */
function isFigureBehind({ tokens, layout }: TextRead, open: number, close: number): boolean {
  let behind = close + 1
  while (behind < close + 3 && isOneOf(tokens[behind], ':=~-')) behind++
  return layout.line[open] === layout.line[close] && /^(?:digits|fraction)$/.test(tokens[behind]?.kind ?? '')
}

/** “(sleeve to sleeve)”: from one to the other, and nothing more in the brackets. */
function isWhole({ tokens, terms }: TextRead, open: number, { from, to }: Label): boolean {
  if (from !== open + 1 || tokens[to]?.text !== ')') return false
  for (let at = from + 1; at < to - 1; at++) if (TO.test(tokens[at]?.text) || means(termAt(terms, at), 'to')) return true
  return false
}
const TO = cue('leadsOn')

/** Does a figure begin between two tokens? Asked in rising order. */
function figureStarts(size: number, quantities: readonly Quantity[]) {
  const before = new Array<number>(size + 2).fill(0)
  for (const one of quantities) before[one.from + 1] = (before[one.from + 1] ?? 0) + 1
  for (let at = 1; at < before.length; at++) before[at] = (before[at] ?? 0) + (before[at - 1] ?? 0)
  return (from: number, to: number) => (before[to] ?? 0) > (before[from] ?? 0)
}

/** A width is taken across (common practice). */
const ACROSS = cue('width')

function labelOf(text: TextRead, term: Term): Label | null {
  const { tokens, terms } = text
  const role = ROLES.find((one) => means(term, one))
  if (role === undefined) return null
  const point = meaning(term, 'point')
  if (means(term, 'nothing') && !point) return null
  const rises = point && RISES.has(point.point) ? bothRises(text, term, point.point) : null
  if (rises) return { ...rises, role: 'point', basis: null, weak: false, letter: null }
  if (namesNothing(text, term)) return null
  // “inkl. Bund”; “Filling none. Shoulder 46” is another sentence
  const dot = tokens[term.from - 1]?.text === '.'
  const before = termAt(terms, dot && !endsSentence(tokens, term.from - 1) ? term.from - 2 : term.from - 1)
  if (role === 'detail' && before && means(before, 'including')) return null
  // “including waistband”, “inkl. Bund”, “without cuffs”, “no collar”: no label of its own
  if (
    point &&
    before &&
    (means(before, 'including') ||
      // where verbs stand last it denies what stands before it
      (means(before, 'not') && !text.trie.verbLast) ||
      (means(before, 'light') && means(termAt(terms, before.from - 1), 'including')))
  )
    return null
  if (point?.point === 'strap' && means(before, 'light')) return null
  if (role === 'detail' && point === undefined && means(term, 'basis')) return null
  return {
    from: term.from,
    to: term.to,
    role,
    points: role === 'point' && point ? [point.point] : [],
    basis: role === 'point' ? (point?.basis ?? (saysAcross(text, term) && point?.point !== 'width' ? 'flat' : null)) : null,
    weak: role === 'point' && (point?.weak ?? false),
    letter: null
  }
}

const saysAcross = ({ tokens }: TextRead, term: Term): boolean => {
  for (let at = term.from; at < term.to; at++) if (ACROSS.test(tokens[at]?.text)) return true
  return false
}

/** More names in a row are no joint label. */
const MOST_JOINT = 6
const LEG_EDGES = new Set<PointName>(['bottomEdge', 'width', 'cuffEdge', 'thigh', 'knee', 'legOpening', 'hem'])

type Between = 'refine' | 'joint' | 'close' | 'apart'

/** What stands between two labels that have no figure between them. */
export function betweenLabels({ tokens, terms }: TextRead, from: number, to: number): Between {
  let kind: Between = 'close'
  for (let at = from; at < to; at++) {
    const token = tokens[at] as Token
    if (token.kind === 'break' || endsSentence(tokens, at)) return 'apart'
    if (token.kind === 'mark') {
      if (token.text === '(' || token.text === '[' || token.text === ':' || token.text === '-' || token.text === '=') kind = 'refine'
      else if (token.text === ')' || token.text === ']' || token.text === "'" || token.text === '.') continue
      else if (token.text === '/' || token.text === '&' || token.text === '+') kind = 'joint'
      else return 'apart'
      continue
    }
    const term = termAt(terms, at)
    if (means(term, 'from', 'measures', 'or')) kind = 'refine'
    else if (means(term, 'and')) kind = 'joint'
    else if (!meansAny(term, BETWEEN)) return 'apart'
  }
  return kind
}

function together(text: TextRead, a: Label, b: Label, ended: boolean): Label | 'drop' | null {
  const { terms } = text
  if (a.role === 'detail') return !ended && isItsPlace(text, a, b) ? { ...a, to: b.to } : null
  if (a.role !== 'point' || a.letter || b.letter) return null
  const between = betweenLabels(text, a.to, b.from)
  if (between === 'apart') return null
  const [first] = a.points
  const [second] = b.points
  const last = a.points[a.points.length - 1]
  // “length from bib top”: where a length starts
  if (b.role === 'detail' && isFamily(first ?? 'width', 'length') && means(termAt(terms, b.from - 1), 'from')) return { ...a, to: b.to }
  if (b.role !== 'point' || first === undefined || second === undefined || last === undefined) return null
  // “sleeve outside 25, inside 19”, “sleeve (inside seam) 19”
  const said = between === 'close' || (between === 'refine' && insideBracket(text, b.from))
  if (first === 'sleeveLength' && a.points.length === 1 && said && (second === 'inseam' || second === 'outseam'))
    return { ...a, to: b.to, points: [second === 'inseam' ? 'sleeveUnderarm' : first] }
  // “back shoulder width (armhole to armhole)”
  if (first === 'shoulderWidth' && second === 'chest' && a.points.length === 1 && text.tokens[a.to]?.text === '(')
    return { ...a, to: b.to, points: ['backWidth'] }
  const from = means(termAt(terms, b.from - 1), 'from') || means(termAt(terms, b.from - 2), 'from')
  // “28" long and the sleeves are 19"”: its figure stands before it, so another name begins
  if (ended && isParted(text, a.to, b.from)) return null
  if (
    a.points.length === 1 &&
    isFamily(first, second) &&
    // “shoulder/chest”: two that are clear both are two
    (between !== 'joint' || first === second || GENERIC.has(first) || GENERIC.has(second)) &&
    (between !== 'close' || from || GENERIC.has(first) || GENERIC.has(second) || first === second)
  ) {
    // “Length: sleeve 24” begins a new one: a bare colon refines only what is bare itself
    return { ...a, to: b.to, points: [moreExact(first, second)], basis: b.basis ?? a.basis, weak: a.weak && b.weak }
  }
  // “hem of each leg”, “width at top of leg”
  if (between === 'close' && b.weak && second === 'inseam' && LEG_EDGES.has(last)) return { ...a, to: b.to }
  if (from) return { ...a, to: b.to, points: a.points.length === 1 ? [fromThere(first, second)] : a.points }
  // length (waist …): brackets after a length name where it starts
  if (
    between === 'refine' &&
    a.points.length === 1 &&
    (first === 'length' || first === 'sleeveLength') &&
    insideBracket(text, b.from) &&
    !GENERIC.has(second)
  )
    return { ...a, to: b.to }
  if (between === 'joint' && !ended && !a.weak && !b.weak && a.points.length < MOST_JOINT)
    return { ...a, to: b.to, points: [...a.points, ...b.points], basis: a.basis ?? b.basis }
  return null
}

/** Is there an “and” or a “with” between two names? */
function isParted({ tokens, terms }: TextRead, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (means(termAt(terms, at), 'and') || WITH.test(tokens[at]?.text)) return true
  return false
}

/** The same where the start is itself a name. */
function fromThere(name: PointName, start: PointName): PointName {
  if (name === 'length' && start === 'waist') return 'skirtLength'
  if (name === 'length' && (start === 'shoulderWidth' || start === 'neck')) return 'bodyLength'
  if (name === 'sleeveLength' && start === 'neck') return 'sleeveFromCentreBack'
  return name
}

function insideBracket({ tokens }: TextRead, at: number): boolean {
  for (let back = at - 1; back >= Math.max(0, at - 8); back--) {
    const text = tokens[back]?.text
    if (text === '(' || text === '[') return true
    if (text === ')' || text === ']') return false
  }
  return false
}

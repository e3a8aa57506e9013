/** Figures that are about something else: the model's body, who it would fit, the parcel, a place on the garment. */

import type { PointName } from '../languages/lexicon.ts'
import type { Label } from '../names/label.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { quantityMm } from '../quantities/quantity-mm.ts'
import type { AsideReason } from '../reading.ts'
import { cue, cueEnd } from '../text/cues.ts'
import { meaning, means, type Term, termAt, termsAs } from '../text/terms.ts'
import { endsFigure, type TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import { secondPieceAt } from './another-piece.ts'
import { linkCost, OF } from './link-cost.ts'

interface Scope {
  because: AsideReason
  from: number
  to: number
}

/** Names that bodies have too; any other name shows that the garment is measured again. */
const BODY = new Set(['chest', 'waist', 'hip', 'underbust'])

/** What stands aside, and why; how far back pockets lie apart is a detail. Linear: each word opens at most one stretch, stretches don't overlap. */
export function asidesOf(
  text: TextRead,
  labels: readonly Label[],
  quantities: readonly Quantity[],
  pocketGap?: Quantity
): Map<Quantity, AsideReason> {
  const { terms, layout } = text
  const asides = new Map<Quantity, AsideReason>()
  const scopes = scopesOf(text)
  const faulty = new Set(termsAs(terms, 'fault').map(({ from }) => layout.sentence[from] as number))
  const elsewhere = elsewhereIn(text)
  const ofLabel = ofLabelIn(text)
  const second = secondPieceAt(text)
  let scope = 0
  let label = 0
  for (const one of quantities) {
    while (scopes[scope] && (scopes[scope] as Scope).to <= one.from) scope++
    while (labels[label + 1] && (labels[label + 1] as Label).from < one.from) label++
    const inside = scopes[scope]
    if (one.height || isHeight(text, one)) asides.set(one, 'model')
    else if (isWhomItFits(text, one)) asides.set(one, 'fits-advice')
    else if (one.from > second || elsewhere(one.from)) asides.set(one, 'detail')
    else if (ofLabel(one.from) || isOfSize(text, labels, label, one)) asides.set(one, 'fits-advice')
    else if (inside && inside.from <= one.from) asides.set(one, inside.because)
    else if (isPlace(text, labels[label], one) || (faulty.has(layout.sentence[one.from] as number) && isSmall(one)))
      asides.set(one, 'detail')
  }
  if (pocketGap) asides.set(pocketGap, 'detail')
  return asides
}

/** What is told of another listing: its sentence, or its line where the words stand in brackets behind a name. */
function elsewhereIn(text: TextRead): (token: number) => boolean {
  const { tokens, terms, layout } = text
  const sentences = new Set<number>()
  const lines = new Set<number>()
  for (const { from } of termsAs(terms, 'elsewhere')) {
    if (closingBracket(text, from) < tokens.length && layout.line[from] !== undefined) lines.add(layout.line[from] as number)
    else sentences.add(layout.sentence[from] as number)
  }
  return (token) => sentences.has(layout.sentence[token] as number) || lines.has(layout.line[token] as number)
}

/** 首回り39 裄丈82 の表記です · A5(身長170)表記: where verbs stand last, a sentence that ends by saying that all of it is a label's. */
function ofLabelIn({ tokens, terms, layout, trie }: TextRead): (token: number) => boolean {
  const until = new Map<number, number>()
  for (const term of trie.verbLast ? termsAs(terms, 'size') : []) {
    const sentence = layout.sentence[term.from] as number
    let at = term.to
    while (layout.sentence[at] === sentence && (means(termAt(terms, at), 'measures', 'light') || tokens[at]?.kind !== 'word')) {
      if (tokens[at]?.kind === 'digits') break
      at++
    }
    const said =
      tokens[term.from - 1]?.text === ')' || (means(termAt(terms, term.from - 1), 'light') && tokens[term.from]?.spaced === false)
    if (layout.sentence[at] !== sentence && said) until.set(sentence, term.from)
  }
  return (token) => token < (until.get(layout.sentence[token] as number) ?? 0)
}

/** “size 16 pattern (bust 34)” where the bust is measured elsewhere: what the size stands for. */
function isOfSize({ tokens, terms }: TextRead, labels: readonly Label[], index: number, one: Quantity): boolean {
  const label = labels[index]
  const point = label?.points[0]
  if (point === undefined || !BODY.has(point) || label === undefined || label.to > one.from) return false
  let open = label.from - 1
  while (open > label.from - 5 && tokens[open]?.kind === 'word') open--
  if (tokens[open]?.text !== '(') return false
  const sized = [2, 3].some((back) => means(termAt(terms, open - back), 'size'))
  return sized && labels.some((other, at) => at > index && other.points[0] === point)
}

/** “fits 28-29" waist”, “fits: 28-29"”. */
const isWhomItFits = ({ tokens }: TextRead, { from }: Quantity): boolean =>
  FITS.test(tokens[isOneOf(tokens[from - 1], ':-') ? from - 2 : from - 1]?.text)
const FITS = cue('fitsFigure')

/** “170 cm tall”. */
const isHeight = ({ terms }: TextRead, one: Quantity): boolean =>
  one.unit !== null && quantityMm(one) > 1300 && means(termAt(terms, one.to), 'height')

const SMALL_MM = 200
/** A tear or a mark is smaller than what is measured on a garment. */
const FAULT_MM = 100
const isSmall = (one: Quantity): boolean => one.unit !== null && quantityMm(one) < FAULT_MM

const AT_DISTANCE = cue('atDistance')

/**
 * thigh (1" below crotch): 12"   ·   taken 13" from the crotch   ·   mark 7 inches below the waist
 *        ^^ a place                         ^^^                            ^^^^^^^^
 */
function isPlace(text: TextRead, label: Label | undefined, one: Quantity): boolean {
  const { tokens, terms } = text
  let at = one.to
  let after = termAt(terms, at)
  for (let steps = 0; steps < 2 && after && means(after, 'light', 'unit') && !means(after, 'position', 'from'); steps++) {
    at = after.to
    after = termAt(terms, at)
  }
  if (!after || after.from !== at) return false
  const mm = Math.abs(quantityMm(one))
  const named = label && label.to <= one.from && label.role === 'point' ? linkCost(text, label, one, true) : 9
  if (means(after, 'position')) return mm < SMALL_MM ? named > -0.1 : named > 0.15
  if (!means(after, 'from') || one.unit === null) return false
  // “44 cm de cintura” is a waist of 44, “a 20 cm de la axila” a place
  if (OF.test(tokens[after.from]?.text) && !AT_DISTANCE.test(tokens[one.from - 1]?.text)) return false
  let place = after.to
  while (means(termAt(terms, place), 'light') && place < after.to + 3) place++
  const landmark = termAt(terms, place)
  return meaning(landmark, 'landmark') !== undefined && named > 0.75 && !means(landmark, 'to')
}

function scopesOf(text: TextRead): Scope[] {
  const { terms, layout } = text
  const scopes: Scope[] = []
  let reached = 0
  for (const term of termsAs(terms, 'model', 'fits', 'cutFor', 'parcel')) {
    if (
      term.from < reached ||
      measuresCloth(text, term) ||
      measuresIt(text, term) ||
      isBehindFigure(text, term) ||
      isAtOnMe(text, term) ||
      isDoing(text, term)
    )
      continue
    const because: AsideReason | null = means(term, 'model')
      ? 'model'
      : means(term, 'fits', 'cutFor')
        ? 'fits-advice'
        : means(term, 'parcel')
          ? 'parcel'
          : null
    if (because === null) continue
    const to =
      because === 'model'
        ? isOnMe(text, term)
          ? endOf(layout.sentence, term.from)
          : endOfModel(text, term)
        : because === 'fits-advice'
          ? endOfAdvice(text, term)
          : endOfParcel(text, term)
    const end = Math.min(to, closingBracket(text, term.from))
    scopes.push({ because, from: because === 'model' ? modelFrom(text, term) : term.from, to: end })
    reached = end
  }
  return scopes
}

/** 160cmの私: where verbs stand last, a figure that opens the sentence and is glued to the person is the person's. */
function modelFrom({ tokens, terms, trie, layout }: TextRead, { from }: Term): number {
  if (!trie.verbLast || tokens[from]?.spaced !== false) return from
  const figure = means(termAt(terms, from - 1), 'unit') ? from - 2 : from - 1
  const opens = figure === 0 || (figure > 0 && layout.sentence[figure - 1] !== layout.sentence[figure])
  return opens && tokens[figure]?.kind === 'digits' ? figure : from
}

const MEASURE = cue('measureVerb')
const BUT = cue('butFirst')
/** “I measure with the garment zipped”: what the seller does, not how large they are. */
const measuresCloth = ({ tokens }: TextRead, { to }: Term): boolean =>
  MEASURE.test(tokens[to - 1]?.text) &&
  tokens[to - 2]?.text === 'i' &&
  (tokens[to]?.kind === 'word' || BUT.test(tokens[to - 3]?.text) || Number(tokens[to]?.text) < LEAST_BODY)
/** “but I measure 4.75"”: no height and no girth of a body, in inches or cm. */
const LEAST_BODY = 20

/** “My measurements for this: pit to pit 53”, “I measure: chest 20, length 24”: a list of names that only a garment has. */
function measuresIt(text: TextRead, term: Term): boolean {
  const { tokens, terms, layout } = text
  const last = tokens[term.to - 1]?.text
  if (!means(term, 'model') || !(MEASUREMENTS.test(last) || MEASURE.test(last))) return false
  for (let at = term.to; at < term.to + AHEAD && layout.paragraph[at] === layout.paragraph[term.from]; at++) {
    const its = termAt(terms, at)
    if (its?.from !== at) continue
    if (means(its, 'height')) return false
    const point = meaning(its, 'point')
    if (point && (point.basis === 'flat' || GARMENT_ONLY.has(point.point))) return true
  }
  return false
}
/** “bust 40" max, waist 32" tied”: a word of advice right behind its figure leads on to no other. */
const isBehindFigure = (text: TextRead, { from, to }: Term): boolean =>
  to === from + 1 && LIMIT.test(text.tokens[from]?.text) && endsFigure(text, from - 1)
const LIMIT = cue('limit')
const MEASUREMENTS = cue('measurements')
const AHEAD = 30
const GARMENT_ONLY = new Set<PointName>([
  'length',
  'bodyLength',
  'skirtLength',
  'hem',
  'bottomEdge',
  'sweep',
  'legOpening',
  'rise',
  'frontRise',
  'backRise',
  'cuff',
  'cuffEdge',
  'width'
])

const I_AM = cue('iAm')

const DOING = cueEnd('doingEnds')
const SHORTEST_VERB = 5
const isVerbOfDoing = (word: string): boolean => word.length >= SHORTEST_VERB && DOING.test(word)
const POSING = cue('posing')

/** “I’m giving you what it is after washing”: what the seller does. */
const isDoing = ({ tokens }: TextRead, { to }: Term): boolean =>
  I_AM.test(tokens[to - 1]?.text) && isVerbOfDoing(tokens[to]?.text ?? '') && !POSING.test(tokens[to]?.text)

const ME = cue('me')
const ON = cue('on')
const AT = cue('atFigure')
/** “oversized on me”: how it falls on somebody, and no list of a body. */
const isOnMe = ({ tokens }: TextRead, { to }: Term): boolean => ME.test(tokens[to - 1]?.text) && ON.test(tokens[to - 2]?.text)
/** “sleeves are long on me at 61 cm”: the figure is of the garment. */
const isAtOnMe = (text: TextRead, term: Term): boolean =>
  isOnMe(text, term) && AT.test(text.tokens[term.to]?.text) && text.tokens[term.to + 1]?.kind === 'digits'

/** Inside brackets a remark ends with them. */
function closingBracket({ tokens }: TextRead, from: number): number {
  let open = false
  for (let at = from - 1; at >= Math.max(0, from - 12); at--) {
    const token = tokens[at] as Token
    if (token.kind === 'break' || token.text === ')') break
    if (token.text === '(') {
      open = true
      break
    }
  }
  if (!open) return tokens.length
  for (let at = from; at < Math.min(tokens.length, from + 60); at++) if (tokens[at]?.text === ')') return at + 1
  return tokens.length
}

/** The first token after the stretch in which `of` stays the same. */
function endOf(of: readonly number[], at: number): number {
  let end = at
  while (end < of.length && of[end] === of[at]) end++
  return end
}

/** A word alone with its colon on a line heads the lines below it, to the next blank line or heading. */
function headsList({ tokens, layout }: TextRead, term: Term): boolean {
  const end = endOf(layout.line, term.from)
  for (let at = term.to; at < end; at++) {
    const token = tokens[at] as Token
    if (token.kind === 'digits' || token.kind === 'fraction') return false
  }
  const last = tokens[end - 2]
  const enclosed = last?.text === ']' && tokens[term.from - 1]?.text === '['
  return tokens[end - 1]?.kind === 'break' && (last?.text === ':' || enclosed || end - 1 === term.to)
}

function endOfList({ tokens, terms, layout }: TextRead, term: Term): number {
  const paragraph = layout.paragraph[term.from]
  let at = term.to
  for (; at < tokens.length && layout.paragraph[at] === paragraph; at++) {
    if (layout.line[at] !== layout.line[term.from] && means(termAt(terms, at), 'heading')) break
  }
  return at
}

/** The model's figures go on over the sentences of a line until something only a garment has is named. */
function endOfModel(text: TextRead, term: Term): number {
  const { tokens, terms, layout } = text
  if (headsList(text, term)) return endOfList(text, term)
  const line = layout.line[term.from]
  let sentence = layout.sentence[term.from]
  let begins = term.to
  let part = term.to
  for (let at = term.to; at < tokens.length && layout.line[at] === line; at++) {
    if (layout.sentence[at] !== sentence) {
      sentence = layout.sentence[at]
      begins = at
    }
    if (layout.segment[at] !== layout.segment[at - 1]) part = at
    const its = termAt(terms, at)
    if (!its || its.from !== at) continue
    const point = meaning(its, 'point')
    const garment = point && (point.basis === 'flat' || !BODY.has(point.point))
    const later = layout.sentence[at] !== layout.sentence[term.from]
    if (later && (garment || means(its, 'heading', 'measures') || meaning(its, 'basis')?.basis === 'flat' || means(its, 'kind')))
      return begins
    // “Model is 5'9", length 40"”: a part of the sentence of its own
    const only = point && (point.basis === 'flat' || GARMENT_ONLY.has(point.point))
    if (only && layout.segment[at] !== layout.segment[term.from]) return part
    if (!later && means(its, 'heading') && !means(its, 'model') && its.from > term.to + 2) return its.from
  }
  return endOf(layout.line, term.from)
}

/** “Sent in a 30 cm parcel; waist 70”: a parcel ends with its sentence, at a semicolon, or where something is named that it has not. */
function endOfParcel({ tokens, terms, layout }: TextRead, term: Term): number {
  const end = endOf(layout.sentence, term.from)
  for (let at = term.to; at < end; at++) {
    if (tokens[at]?.text === ';') return at
    const its = termAt(terms, at)
    const point = its?.from === at ? meaning(its, 'point') : undefined
    if (point !== undefined && !OF_PARCELS.has(point.point)) return at
  }
  return end
}
const OF_PARCELS = new Set<PointName>(['length', 'width'])

const SAY = cue('say')
/** Words of advice without a figure and without a name that the colon belongs to. */
function isSaid({ tokens, terms }: TextRead, from: number, to: number): boolean {
  // “I would say a 10-12: the bust is …”: the figures are a size
  const sized = SAY.test(tokens[from - 1]?.text)
  for (let at = from; at < to; at++)
    if (sized && /^(?:digits|mark)$/.test(tokens[at]?.kind ?? '')) continue
    else if (tokens[at]?.kind !== 'word' || means(termAt(terms, at), 'point', 'size', 'heading', 'model')) return false
  return true
}

/** Advice ends with its sentence, or with the part in which measuring begins. */
function endOfAdvice(text: TextRead, term: Term): number {
  const { tokens, terms, layout } = text
  const end = endOf(layout.sentence, term.from)
  const colon = tokens[term.to]?.text === ':'
  if (colon) return headsList(text, term) ? endOfList(text, term) : endOf(layout.line, term.from)
  let begins = term.to
  let segment = layout.segment[term.from]
  for (let at = term.to; at < end; at++) {
    if (layout.segment[at] !== segment) {
      segment = layout.segment[at]
      begins = at
    }
    // “runs small: bust 34"”: what stands before the colon is all the advice
    if (tokens[at]?.text === ':' && at > term.to && isSaid(text, term.to, at)) return at
    const its = termAt(terms, at)
    const measured =
      its &&
      its.from === at &&
      (means(its, 'measures', 'heading') || meaning(its, 'basis') !== undefined || (meaning(its, 'point')?.basis ?? null) !== null)
    const later = segment !== layout.segment[term.from]
    const point = its && its.from === at ? meaning(its, 'point') : undefined
    if (later && (measured || tokens[at]?.text === ':' || (point && !BODY.has(point.point)))) return begins
  }
  return end
}

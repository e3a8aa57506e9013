/** Words around a figure that change what it says: flat and around, relaxed and stretched, cuffed, front and back, inner. */

import { oncePer } from '../../once.ts'
import type { PointName } from '../languages/lexicon.ts'
import type { Link } from '../links/assign.ts'
import { isMeasured } from '../links/measured.ts'
import { cue } from '../text/cues.ts'
import { endsSentence } from '../text/layout.ts'
import { meaning, means, meansAny, type Term, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'
import type { Evidence } from './basis.ts'

export type Qualifier = 'relaxed' | 'stretched' | 'cuffed' | 'uncuffed' | 'closed' | 'opened' | 'front' | 'back' | 'inner' | 'measured'
const QUALIFIERS: Exclude<Qualifier, 'measured'>[] = [
  'uncuffed',
  'cuffed',
  'relaxed',
  'stretched',
  'closed',
  'opened',
  'inner',
  'front',
  'back'
]
/** What a phrase tells so, worked out once a phrase: it is asked beside every figure. */
const qualifiersIn = oncePer(({ roles }: Term['meaning']): readonly Qualifier[] => QUALIFIERS.filter((one) => roles.has(one)))
const qualifiersOf = (term: Term): readonly Qualifier[] => qualifiersIn(term.meaning)

/** Where the words about a figure end, and what they step over. */
const ENDS: Parameters<typeof meansAny>[1] = ['point', 'detail', 'letDown', 'letOut', 'heading', 'all', 'kind']
const STEPPED: Parameters<typeof meansAny>[1] = [
  'basis',
  'light',
  'unit',
  'measures',
  'or',
  'from',
  'landmark',
  'and',
  'model',
  ...QUALIFIERS
]
/** Words that say flat or around only beside a figure, never for a list. */
const LOCAL_ONLY = cue('besideFigureOnly')

export interface Words {
  evidence: Evidence[]
  qualifiers: Set<Qualifier>
  /** “arm 7" across”, “leg 9" wide”: a width of what has a length otherwise. */
  across: boolean
}
const ACROSS = cue('girthOrWidth')
const FRONT = cue('frontInName')
const BACK = cue('backInName')
/** A side told inside a name. */
const sideInName = (word: string | undefined): Qualifier | undefined =>
  word === undefined ? undefined : FRONT.test(word) ? 'front' : BACK.test(word) ? 'back' : undefined

const WIDE = cue('wide')
const NARROW = new Set<PointName>(['legOpening', 'cuff', 'cuffEdge', 'thigh', 'knee', 'calf', 'bicep', 'elbow'])

const LEADS_ON = cue('leadsOn')

/** Is one of these tokens' words the one at hand, and nothing in between that belongs elsewhere? */
function scan(text: TextRead, from: number, step: 1 | -1, reach: number, see: (term: Term) => void, comma: boolean): void {
  const { tokens, terms } = text
  let at = from
  let qualified = false
  for (let steps = 0; steps < reach; steps++) {
    const token = tokens[at]
    if (token === undefined || token.kind === 'break' || token.kind === 'digits' || token.kind === 'fraction') return
    if (token.kind === 'mark') {
      if (endsSentence(tokens, at) || isOneOf(token, ';|•·*/')) return
      if (token.text === ',' && !(comma && step === 1 && onlyBasisFollows(text, at + 1))) return
      // “38 luźno - rozciągnięty 52”: each has its own state
      if (qualified && (step === -1 || isOfNext(text, at + 1))) return
      at += step
      continue
    }
    const term = termAt(terms, at)
    if (!term || meansAny(term, ENDS)) return
    // “(stretches to 21)” is of the figure behind it
    if (step === 1 && means(term, 'stretched') && tokens[term.to]?.kind === 'digits' && leadsOn(text, term)) return
    see(term)
    qualified ||= qualifiersOf(term).length > 0
    if (!meansAny(term, STEPPED)) return
    at = step === 1 ? term.to : term.from - 1
  }
}

/** A state right before a figure of its own. */
const isOfNext = ({ tokens, terms }: TextRead, at: number): boolean => {
  const term = termAt(terms, at)
  return term?.from === at && meansAny(term, QUALIFIERS) && !means(term, 'point') && tokens[term.to]?.kind === 'digits'
}

/** “stretches to 21”, “(stretched 90)”: said of the figure to come. */
const leadsOn = ({ tokens }: TextRead, { from, to }: Term): boolean => LEADS_ON.test(tokens[to - 1]?.text) || tokens[from - 1]?.text === '('

/** “…, flat” and “…, laid flat.”: a part of a sentence that is nothing but the word. */
function onlyBasisFollows({ tokens, terms }: TextRead, at: number): boolean {
  const term = termAt(terms, at)
  if (!term || !meaning(term, 'basis')) return false
  const after = tokens[term.to]
  return after === undefined || after.kind === 'break' || isOneOf(after, '.,;)!')
}

/** “doubled” beside a figure leaves open whether it is done or to be done; “x2” asks for it. */
function asEvidence(basis: 'flat' | 'around' | 'doubled' | 'double', word: string): Evidence | null {
  if (basis === 'around') return 'word-around'
  if (basis === 'flat') return 'word-flat'
  return DONE.test(word) ? null : 'doubled'
}
const DONE = cue('doubled')

/** The words that belong to each link; a name's first figure tells whether its words stand before or behind. */
export function wordsOf(text: TextRead, links: readonly Link[]): { words: Map<Link, Words>; used: Set<number> } {
  const { tokens, terms } = text
  const words = new Map<Link, Words>()
  const used = new Set<number>()
  let behind = true
  for (const link of links) {
    const evidence = new Set<Evidence>()
    const inside: Qualifier[] = []
    const ahead: Qualifier[] = []
    const after: Qualifier[] = []
    let across = false
    const take = (list: Qualifier[]) => (term: Term) => {
      const basis = meaning(term, 'basis')
      if (basis) {
        const one = asEvidence(basis.basis, tokens[term.from]?.text ?? '')
        if (one) evidence.add(one)
        used.add(term.from)
        if (ACROSS.test(tokens[term.from]?.text)) across = true
      }
      if (!means(term, 'point')) for (const one of qualifiersOf(term)) list.push(one)
      // “length (front point)”
      if (means(term, 'landmark') && sideInName(tokens[term.from]?.text) === 'front') list.push('front')
    }
    const { label, quantity } = link
    for (let at = label.from; at < label.to; at++) {
      const term = termAt(terms, at)
      if (term && term.from === at && !means(term, 'point')) take(inside)(term)
      const side = link.again ? undefined : sideInName(tokens[at]?.text)
      if (side) inside.push(side)
    }
    if (link.before && !link.again) besideName(text, label.to, quantity.from, take(inside))
    scan(text, quantity.from - 1, -1, 6, take(ahead), false)
    if (link.before && !link.again) {
      rightBefore(text, label.from, take(inside))
      openBefore(text, label.from, take(inside))
    }
    scan(text, quantity.spanTo, 1, 7, take(after), true)
    if (!link.before && label.from >= quantity.spanTo) scan(text, label.to, 1, 4, take(after), false)
    if (!link.again) behind = ahead.length === 0
    if (quantity.doubling === 'flat') evidence.add('doubled')
    if (quantity.doubling === 'around') evidence.add('halved')
    if (label.basis) evidence.add(label.basis === 'flat' ? 'name-flat' : 'name-around')
    // “stretches to 21” leads on to its figure, wherever words stand otherwise
    const led = termAt(terms, quantity.from - 1)
    if (led && means(led, 'stretched') && leadsOn(text, led)) inside.push('stretched')
    if (WIDE.test(tokens[quantity.spanTo]?.text)) {
      across = true
      // “leg hem 26" wide”: of the small girths a width is taken across; a wide skirt may be told around
      if (label.points[0] !== undefined && NARROW.has(label.points[0]) && !evidence.has('word-around')) evidence.add('word-flat')
    }
    // “front rise 27, back 36”: a side right before a second figure is its own
    const sided = (list: readonly Qualifier[]) => list.some((side) => side === 'front' || side === 'back' || side === 'inner')
    const own =
      link.again && sided(ahead) && !(behind && sided(after)) ? ahead : behind && !(link.again && after.length === 0) ? after : ahead
    if (link.again && isMeasured(text, quantity.from)) inside.push('measured')
    words.set(link, { evidence: [...evidence], qualifiers: new Set([...inside, ...own]), across })
  }
  return { words, used }
}

/** “Rise (back) | 17"”, “Rise, back | 17"”: a side told beside the name, before the bar that parts the columns. */
function besideName({ tokens, terms }: TextRead, at: number, figure: number, see: (term: Term) => void): void {
  const opens = tokens[at]?.text
  if (opens !== '(' && opens !== ',') return
  const its = termAt(terms, at + 1)
  if (!its || its.from !== at + 1 || !means(its, 'front', 'back')) return
  const after = opens === '(' && tokens[its.to]?.text === ')' ? its.to + 1 : its.to
  if (after < figure && tokens[after]?.text === '|') see(its)
}

/** “half chest”, “flat waist”: single words right before the name; phrases there head the list. */
function rightBefore({ tokens, terms }: TextRead, from: number, see: (term: Term) => void): void {
  const term = termAt(terms, from - 1)
  if (term && tokens[from - 1]?.kind === 'word' && term.to - term.from === 1 && !means(term, 'heading', 'point')) see(term)
}

/** “Laid open the waist is 54"”: how it lay, told before the name. */
function openBefore({ tokens, terms }: TextRead, from: number, see: (term: Term) => void): void {
  let at = from - 1
  while (at > from - 4 && tokens[at]?.kind === 'word' && means(termAt(terms, at), 'light') && !means(termAt(terms, at), 'opened', 'closed'))
    at--
  const term = termAt(terms, at)
  if (term && tokens[at]?.kind === 'word' && means(term, 'opened') && !means(term, 'point')) see(term)
}

export interface ListBasis {
  /** By token, rising. */
  at: { token: number; basis: 'flat' | 'around' }[]
  /** “Thigh is measured flat”: notes on one name. */
  of: Map<PointName, 'flat' | 'around'>
}

/** Headings and notes that say flat or around for a list: “Measurements (laid flat)”, “all taken flat”, “double the chest”. */
export function listBasis(text: TextRead, used: (token: number) => boolean): ListBasis {
  const { tokens, terms, layout } = text
  const at: ListBasis['at'] = []
  const of: ListBasis['of'] = new Map()
  if (!terms.by.has('basis')) return { at, of }
  const lastFigures = lastFiguresOf(text)
  for (let index = 0; index < terms.list.length; index++) {
    const term = terms.list[index] as Term
    const basis = meaning(term, 'basis')?.basis
    if (basis === undefined || used(term.from)) continue
    if (basis === 'doubled') {
      // “taken flat and doubled”: whole girths, whatever was flat before; “measurements x2”: half ones
      const done = DONE.test(tokens[term.from]?.text)
      if (!heading(text, index)) continue
      const before = at[at.length - 1]
      if (done && before && layout.sentence[before.token] === layout.sentence[term.from]) at.pop()
      at.push({ token: term.from, basis: done ? 'around' : 'flat' })
      continue
    }
    if (basis === 'double') {
      at.push({ token: term.from, basis: 'flat' })
      continue
    }
    const name = nameNoted(text, lastFigures, term)
    if (name !== null) {
      of.set(name, basis)
      continue
    }
    const alone = term.to === term.from + 1 && LOCAL_ONLY.test(tokens[term.from]?.text)
    if (heading(text, index) || (!alone && isShortLine(text, term))) at.push({ token: term.from, basis })
  }
  return { at, of }
}

/** “Thigh is measured flat.”, “waist taken around”: a sentence of its own about one name, with no figure. */
function nameNoted({ tokens, terms, layout }: TextRead, lastFigures: ReadonlyMap<number, number>, { from }: Term): PointName | null {
  const sentence = layout.sentence[from] as number
  if ((lastFigures.get(sentence) ?? -1) >= from) return null
  let name: PointName | null = null
  // “taken flat” is one phrase
  let measured = TAKEN.test(tokens[from]?.text)
  for (let at = from - 1; layout.sentence[at] === sentence && from - at < NOTE; at--) {
    const its = termAt(terms, at)
    const taken = TAKEN.test(tokens[at]?.text)
    if (tokens[at]?.kind === 'digits' || (means(its, 'heading', 'all') && !taken)) return null
    if (means(its, 'measures') || taken) measured = true
    const point = meaning(its, 'point')?.point
    if (point !== undefined && point !== name) {
      if (name !== null) return null
      name = point
    }
  }
  return measured ? name : null
}
const NOTE = 8

/** By sentence, its last figure. */
function lastFiguresOf({ tokens, layout }: TextRead): Map<number, number> {
  const last = new Map<number, number>()
  for (const [at, token] of tokens.entries()) if (token.kind === 'digits') last.set(layout.sentence[at] as number, at)
  return last
}
const TAKEN = cue('taken')

/** A word of measuring in the same sentence, close by. */
function heading({ terms, layout }: TextRead, index: number): boolean {
  const term = terms.list[index] as Term
  for (let near = index - 6; near <= index + 4; near++) {
    const other = terms.list[near]
    if (other && other !== term && layout.sentence[other.from] === layout.sentence[term.from] && means(other, 'heading', 'all')) return true
  }
  return false
}

function isShortLine({ tokens, layout }: TextRead, term: Term): boolean {
  let from = term.from
  let to = term.to
  while (from > 0 && layout.sentence[from - 1] === layout.sentence[term.from] && term.from - from < 8) from--
  while (to < tokens.length && layout.sentence[to] === layout.sentence[term.from] && to - term.to < 8) to++
  const words = tokens.slice(from, to).filter(({ kind }) => kind === 'word').length
  return words <= 5 && tokens.slice(from, to).every(({ kind }) => kind !== 'digits')
}

/** What the list says for a figure: a note on its name, else the last heading before it, else a note that follows. */
export function basisOfList({ at, of }: ListBasis, token: number, name: PointName | null): 'flat' | 'around' | null {
  const noted = name === null ? undefined : of.get(name)
  if (noted !== undefined) return noted
  let low = 0
  let high = at.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((at[middle] as { token: number }).token <= token) low = middle + 1
    else high = middle
  }
  return (at[low - 1] ?? at[low])?.basis ?? null
}

/** What kind of garment it is: the head of its title, else the word that leads its text, else its points. */
import type { Made } from '../../garment/garment-input.ts'
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import type { PointName } from '../languages/lexicon.ts'
import { cue } from '../text/cues.ts'
import { LEXICONS } from '../text/phrase-trie.ts'
import { meaning, means, type Term, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Token } from '../text/tokens.ts'
import { shapeOfPoints } from './points-by-kind.ts'

export interface KindRead {
  kind: GarmentKind | null
  sureness: number
  made: Partial<Made>
  /** A thing that is no garment: a bag, boots, cloth by the metre. */
  thing: boolean
}

/** Words after which a title speaks of something beside the garment. */
const STOP = cue('besideGarment')
/** Kinds that a text names in passing: top button, knit, a suit's name. */
const PASSING = cue('kindInPassing')
/** In these languages the head of a compound stands first. */
const HEAD_FIRST = new Set(LEXICONS.filter(({ headFirst }) => headFirst).map(({ language }) => language))
const EARLY = 60
const FURTHEST = 4000

export function kindOf(
  title: TextRead | null,
  text: TextRead,
  names: readonly PointName[],
  language: string,
  known?: GarmentKind
): KindRead {
  if (known !== undefined) return { kind: known, sureness: 1, made: {}, thing: false }
  if (title) {
    const head = headOf(title, language)
    if (head) return { ...head, sureness: 0.95, thing: false }
    if (title.terms.by.has('thing')) return { kind: null, sureness: 0.9, made: {}, thing: true }
  }
  const led = ledBy(text, language)
  if (led) return led
  const shape = shapeOfPoints(names)
  if (shape === 'legs') return { kind: [title, text].some(isDenim) ? 'jeans' : 'trousers', sureness: 0.5, made: {}, thing: false }
  if (shape === 'skirt') return { kind: 'skirt', sureness: 0.4, made: {}, thing: false }
  return { kind: null, sureness: 0, made: {}, thing: false }
}

const DENIM = cue('denim')
/** What the words speak of, before any point is known, or the kind that is given: on legs 32/34 is a size. */
export const earlyKindOf = (title: TextRead | null, text: TextRead, language: string, known?: GarmentKind): GarmentKind | null =>
  kindOf(title, text, [], language, known).kind

/** “Selvedge denim, broken in”: legs of denim are jeans. */
const isDenim = (text: TextRead | null): boolean => text?.tokens.slice(0, EARLY).some(({ text: word }) => DENIM.test(word)) ?? false

/** The kind for figuring when no word tells one: what its points look like. */
export const effectiveKind = (kind: GarmentKind | null, names: readonly PointName[]): GarmentKind | null => {
  if (kind !== null) return kind
  const shape = shapeOfPoints(names)
  return shape === 'legs' ? 'trousers' : shape === 'skirt' ? 'skirt' : shape === 'whole' ? 'dress' : shape === 'upper' ? 'knit-top' : null
}

/** “Denim shirt dress with jacket”: the last kind before what stands beside it. */
function headOf(text: TextRead, language: string): { kind: GarmentKind; made: Partial<Made> } | null {
  const { terms } = text
  let best: Term | null = null
  for (const term of termsAs(terms, 'kind')) {
    if (!meaning(term, 'kind') || isLedTo(text, term)) continue
    if (best && HEAD_FIRST.has(language)) break
    if (best && stops(text, best.to, term.from)) break
    if (best && isPart(text, best, term)) continue
    best = term
  }
  const sense = meaning(best ?? undefined, 'kind')
  return sense ? { kind: sense.kind, made: sense.made ?? {} } : null
}

/** “sundress, full skirt”, “jumpsuit with halter, flares”: a word further on that names a part of what was named, or a cut of it. */
function isPart(text: TextRead, named: Term, term: Term): boolean {
  // where words need no spaces, what is parted by one is another name
  const parted = text.trie.runs !== null && text.tokens[term.from]?.spaced === true
  if (term.from === named.to && !parted) return false
  const first = meaning(named, 'kind')?.kind
  const then = meaning(term, 'kind')?.kind
  // “jacket skirt”: a set
  if (parted && isSet(first, then) && !isPassing(text, named) && !isPassing(text, term)) return true
  const whole = first !== undefined && SHAPE[first] === 'whole' && (then === undefined || SHAPE[then] !== 'whole')
  return (whole && !isPassing(text, named)) || (isPassing(text, term) && !isPassing(text, named))
}
const isSet = (first: GarmentKind | undefined, then: GarmentKind | undefined): boolean =>
  first !== undefined && then !== undefined && SHAPE[first] === 'upper' && (SHAPE[then] === 'legs' || SHAPE[then] === 'skirt')
const isPassing = ({ tokens }: TextRead, { from, to }: Term): boolean => to === from + 1 && PASSING.test(tokens[from]?.text ?? '')

const stops = ({ tokens }: TextRead, from: number, to: number): boolean => {
  for (let at = from; at < to; at++) {
    const token = tokens[at] as Token
    if (token.kind === 'mark' ? /^[,(|/+&;:.-]$/.test(token.text) && token.spaced !== false : STOP.test(token.text)) return true
    if (token.kind === 'mark' && /^[,;|]$/.test(token.text)) return true
  }
  return false
}

const LED_TO = cue('besideGarmentBehind')
/** スカートにも, ワンピース風: where verbs stand last, what is set beside the garment, or only looks like one, is told behind its name. */
function isLedTo({ tokens, terms, trie }: TextRead, { to }: Term): boolean {
  if (!trie.verbLast) return false
  let at = to
  // デニムやスカートにも: so are all that are listed with it
  for (let listed = 0; listed < MOST_LISTED && tokens[at]?.spaced === false; listed++) {
    if (LED_TO.test(tokens[at]?.text ?? '') || means(termAt(terms, at), 'imitation')) return true
    const next = termAt(terms, at + 1)
    if (!means(termAt(terms, at), 'and', 'or', 'light') || next?.from !== at + 1 || !means(next, 'kind')) return false
    at = next.to
  }
  return false
}
const MOST_LISTED = 4

const ANY_GARMENT = cue('anyGarment')

/** “Flannel trousers”: a word that names the cloth or the style of the garment that follows it at once. */
const qualifies = (text: TextRead, term: Term, language: string): boolean => {
  const next = termAt(text.terms, term.to)
  const sense = meaning(term, 'kind')
  return (
    !HEAD_FIRST.has(language) &&
    next !== undefined &&
    !isPassing(text, next) &&
    (meaning(next, 'kind')?.kind ?? sense?.kind) !== sense?.kind
  )
}

function ledBy(text: TextRead, language: string): KindRead | null {
  const { tokens, terms } = text
  const score = new Map<GarmentKind, { points: number; made: Partial<Made> }>()
  let thing = 0
  for (const term of termsAs(terms, 'kind', 'thing')) {
    if (term.from > FURTHEST) break
    const before = tokens[term.from - 1]?.text ?? ''
    const early = term.from < EARLY ? 2 : 1
    if (means(term, 'thing') && !means(term, 'nothing')) thing += term.from < 4 ? 3 : 0.5
    const sense = meaning(term, 'kind')
    if (!sense || STOP.test(before) || isLedTo(text, term) || (ANY_GARMENT.test(before) && STOP.test(tokens[term.from - 2]?.text ?? '')))
      continue
    if ((sense.kind === 'skirt' && score.has('dress')) || qualifies(text, term, language)) continue
    const passing = isPassing(text, term)
    const now = score.get(sense.kind) ?? { points: 0, made: sense.made ?? {} }
    now.points += early * (passing ? 0.5 : 1) * (score.size === 0 ? 1.5 : 1)
    score.set(sense.kind, now)
  }
  const [first, second] = [...score].sort((a, b) => b[1].points - a[1].points)
  if (thing >= 3 && thing > (first?.[1].points ?? 0)) return { kind: null, sureness: 0.7, made: {}, thing: true }
  if (!first) return thing >= 3 ? { kind: null, sureness: 0.7, made: {}, thing: true } : null
  const lead = first[1].points / (first[1].points + (second?.[1].points ?? 0))
  return { kind: first[0], sureness: Math.min(0.8, lead * 0.8), made: first[1].made, thing: false }
}

/** Words in a remark beside a heading, at most: “Trousers (free, well worn)”. */
const REMARK = 14
function pastRemark({ tokens }: TextRead, at: number): number {
  if (tokens[at]?.text !== '(') return at
  for (let end = at + 1; end < at + REMARK; end++) {
    const token = tokens[end]
    if (token === undefined || token.kind === 'break') return at
    if (token.text === ')') return end + 1
  }
  return at
}

const THE = cue('the')

/** Headings that name a garment: “Jacket:”, “Trousers measurements”. The figures below are of it. */
export function sectionsOf(text: TextRead): { from: number; kind: GarmentKind }[] {
  const { tokens, terms } = text
  const sections: { from: number; kind: GarmentKind }[] = []
  for (const term of termsAs(terms, 'kind')) {
    const kind = meaning(term, 'kind')?.kind
    if (!kind) continue
    const before = tokens[term.from - 1]
    const starts =
      before === undefined ||
      before.kind === 'break' ||
      /^[.!?;•*|[-]$/.test(before.text) ||
      THE.test(before.text) ||
      (before.kind === 'mark' && before.spaced) ||
      // “top (jacket): chest 52”
      (before.text === '(' && tokens[term.from - 2]?.kind === 'word' && (tokens[term.from - 3]?.kind ?? 'break') === 'break')
    let at = term.to
    if (means(termAt(terms, at), 'heading', 'measures')) at = termAt(terms, at)?.to ?? at
    const measures = at > term.to
    // “[Jacket] chest 36"”
    const enclosed = /^[[(]$/.test(before?.text ?? '') && /^[\])]$/.test(tokens[at]?.text ?? '')
    at = pastRemark(text, enclosed ? at + 1 : at)
    const after = tokens[at]
    // “Jacket bust 36", … Skirt waist 26"”
    const names = before?.kind !== 'mark' || !before.spaced ? means(termAt(terms, at), 'point') : false
    const heads =
      names ||
      enclosed ||
      after === undefined ||
      after.kind === 'break' ||
      after.text === ':' ||
      measures ||
      (after.text === '-' && after.spaced)
    const last = sections[sections.length - 1]
    if (starts && heads && last?.kind !== kind) sections.push({ from: term.from, kind })
  }
  return sections
}

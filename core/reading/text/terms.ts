/** The words of a text that mean something, longest phrase first, each with its place and all it can mean. */

import type { Landmark, PointName, WordRole } from '../languages/lexicon.ts'
import { isUnspaced } from '../languages/scripts.ts'
import { compoundWord, INNER, withFirstPart } from './compound-word.ts'
import { cue } from './cues.ts'
import {
  APART,
  type Meaning,
  meaningOf,
  NOTHING_AFTER,
  type Node,
  type PhraseTrie,
  SAYS_MORE,
  type Sense,
  type Starts
} from './phrase-trie.ts'
import { leadsToFigure, type Token } from './tokens.ts'

export interface Term {
  /** Its first token, and the one after its last. */
  from: number
  to: number
  meaning: Meaning
}
export interface Terms {
  list: Term[]
  /** For each token the term that covers it, or −1. */
  at: number[]
  /** Those that mean something in a role, in order. */
  by: Map<Sense['role'], Term[]>
}

type SenseOf<R extends Sense['role']> = Extract<Sense, { role: R }>
/** What a term means in this role, or undefined. */
export function meaning<R extends Sense['role']>(term: Term | undefined, role: R): SenseOf<R> | undefined {
  if (term === undefined || !term.meaning.roles.has(role)) return undefined
  for (const sense of term.meaning.senses) if (sense.role === role) return sense as SenseOf<R>
  return undefined
}
/** Does a term mean something in one of these roles? Asked for every token, so without a list of them. */
export function means(term: Term | undefined, a: Role, b?: Role, c?: Role, d?: Role, e?: Role, f?: Role): boolean {
  if (term === undefined) return false
  const { roles } = term.meaning
  if (roles.has(a)) return true
  if (b === undefined) return false
  if (roles.has(b)) return true
  if (c === undefined) return false
  if (roles.has(c)) return true
  if (d === undefined) return false
  return roles.has(d) || (e !== undefined && roles.has(e)) || (f !== undefined && roles.has(f))
}
type Role = Sense['role']
/** The same for a list that is made once, where it is asked often. */
export function meansAny(term: Term | undefined, roles: readonly Sense['role'][]): boolean {
  if (term === undefined) return false
  for (let index = 0; index < roles.length; index++) if (term.meaning.roles.has(roles[index] as Sense['role'])) return true
  return false
}
const NONE: readonly Term[] = []
/** The terms that mean something in one of these roles, in order; one with two of the roles stands once. */
export function termsAs({ by }: Terms, ...roles: Sense['role'][]): readonly Term[] {
  let one = NONE
  let all: Set<Term> | null = null
  for (const role of roles) {
    const its = by.get(role)
    if (its === undefined) continue
    // most texts have terms in one of the roles only
    if (one.length === 0) one = its
    else {
      all ??= new Set(one)
      for (const term of its) all.add(term)
    }
  }
  return all === null ? one : [...all].sort((a, b) => a.from - b.from)
}
/** The term that covers a token. */
export const termAt = (terms: Terms, token: number): Term | undefined => {
  const index = terms.at[token]
  return index === undefined || index < 0 ? undefined : terms.list[index]
}

const GLUE = new Set(['-', '.', "'", '_', '/'])
const DEEPEST = 9

/** Where each token leads that may begin a phrase: what is looked up once for terms and phrases. */
export type StartsAt = readonly (Starts | undefined)[]
export function startsAt(tokens: readonly Token[], trie: PhraseTrie): StartsAt {
  const starts: (Starts | undefined)[] = []
  for (const { kind, text } of tokens) starts.push(kind === 'word' || kind === 'digits' ? trie.from(text) : undefined)
  return starts
}

/** Every phrase of the trie in the tokens, then the points that two landmarks and “to” make. Linear. */
export function termsOf(tokens: readonly Token[], trie: PhraseTrie, starts = startsAt(tokens, trie)): Terms {
  const list: Term[] = []
  for (let from = 0; from < tokens.length; ) {
    const token = tokens[from] as Token
    const start = starts[from]?.root
    const behindFigure = tokens[from - 1]?.kind === 'digits' && start?.meaning?.roles.has('unit') === true
    // 12in leg: glued to its figure, “in” is the unit and begins no phrase
    const unit = behindFigure && !token.spaced && !isUnspaced(token.text.charCodeAt(0))
    const longest = start === undefined ? null : longestFrom(tokens, from, start, unit ? from + 1 : undefined)
    const found = longest && behindFigure ? asUnit(tokens, longest, starts) : longest
    if (found && found.to - found.from > 1) list.push(withInner(tokens, found, trie))
    else if (found) list.push(trie.heads.size > 0 ? { ...found, meaning: withFirstPart(found.meaning, token, trie) } : found)
    else if (trie.heads.size > 0) {
      const its = compoundWord(token, trie)
      if (its) list.push({ from, to: from + 1, meaning: its })
    }
    from = found?.to ?? from + 1
  }
  const joined = withLandmarkPairs(tokens, list)
  const at: number[] = []
  for (let index = 0; index < joined.length; index++) {
    const { from, to } = joined[index] as Term
    while (at.length < from) at.push(-1)
    while (at.length < to) at.push(index)
  }
  while (at.length < tokens.length) at.push(-1)
  const by: Terms['by'] = new Map()
  for (const term of joined) {
    for (const role of term.meaning.roles) {
      const list = by.get(role)
      if (list) list.push(term)
      else by.set(role, [term])
    }
  }
  return { list: joined, at, by }
}

/** “2 in seam allowance”: where the words behind a unit mean more without it than with it, it is the unit. */
function asUnit(tokens: readonly Token[], found: Term, starts: StartsAt): Term {
  const next = found.to > found.from + 1 ? starts[found.from + 1]?.root : undefined
  const behind = next === undefined ? null : longestFrom(tokens, found.from + 1, next)
  const alone = starts[found.from]?.root?.meaning
  return behind && alone && behind.to > found.to ? { from: found.from, to: found.from + 1, meaning: alone } : found
}

/** The phrases that stand apart from the terms of a text, in order: of the cut, of whose sizes, of what tells a kind. */
export type Phrases = Readonly<Record<(typeof APART)[number], readonly Term[]>>

/** The longest phrase at each place, without what each kind of them stands on. Linear. */
export function phrasesOf(tokens: readonly Token[], starts: StartsAt): Phrases {
  const found: Record<(typeof APART)[number], Term[]> = { cuts: [], whose: [], signs: [] }
  for (let from = 0; from < tokens.length; from++) {
    const its = starts[from]
    if (its === undefined) continue
    for (const name of APART) {
      const start = its[name]
      const list = found[name]
      if (start === undefined || from < (list[list.length - 1]?.to ?? 0)) continue
      const one = longestFrom(tokens, from, start)
      if (one) list.push(one)
    }
  }
  return found
}

/**
 * pit-to-pit · t-shirt · p.t.p · 3/4 sleeve
 *    ^ ^       ^ glue is stepped over where no space stands beside it
 */
function longest(tokens: readonly Token[], from: number, trie: PhraseTrie, limit?: number): Term | null {
  const start = trie.from(tokens[from]?.text ?? '')?.root
  return start === undefined ? null : longestFrom(tokens, from, start, limit)
}

/** `start`: where its first word leads. */
function longestFrom(tokens: readonly Token[], from: number, start: Node, limit = tokens.length): Term | null {
  let node: Node = start
  let best: Term | null = null
  let token = tokens[from] as Token
  let at = from
  for (let depth = 1; ; depth++) {
    at++
    if (node.meaning !== null) best = { from, to: at, meaning: node.meaning }
    if (depth === DEEPEST || node.next === NOTHING_AFTER) return best
    const glue = tokens[at]
    if (glue?.kind === 'mark' && !glue.spaced) {
      if (glue.text === "'" && tokens[at + 1]?.kind === 'word' && token.kind === 'word')
        at++ // girls' dress
      else if (GLUE.has(glue.text) && tokens[at + 1]?.spaced === false) {
        const digits = token.kind === 'digits' && tokens[at + 1]?.kind === 'digits'
        if (glue.text === '/' && !digits) return best
        at++
      }
    }
    const after: Token | undefined = at < limit ? tokens[at] : undefined
    if (after === undefined || (after.kind !== 'word' && after.kind !== 'digits')) return best
    const next = node.next.get(after.text)
    if (next === undefined) return best
    node = next
    token = after
  }
}

const IMITATED = cue('imitated')

/** “denim jacket” is a jacket and still denim: what the words of a garment's name tell each for itself is kept. */
function withInner(tokens: readonly Token[], term: Term, trie: PhraseTrie): Term {
  if (!means(term, ...SAYS_MORE)) return term
  term.meaning.whole ??= innerOf(tokens, term, trie)
  return { ...term, meaning: term.meaning.whole }
}

function innerOf(tokens: readonly Token[], term: Term, trie: PhraseTrie): Meaning {
  if (IMITATED.test(tokens[term.from]?.text)) return term.meaning
  const senses = [...term.meaning.senses]
  for (let at = term.from; at < term.to; at++) {
    const inner = longest(tokens, at, trie, at === term.from ? term.to - 1 : term.to)
    for (const sense of inner?.meaning.senses ?? []) {
      if (!INNER.has(sense.role) || (sense.role === 'kind' && senses.some(({ role }) => role === 'kind'))) continue
      senses.push(sense)
    }
  }
  return meaningOf(senses)
}

const PAIRS: Partial<Record<`${Landmark} ${Landmark}`, { point: PointName; basis: 'flat' | null }>> = {
  'armpit armpit': { point: 'chest', basis: 'flat' },
  'shoulder shoulder': { point: 'shoulderWidth', basis: null },
  'shoulder hem': { point: 'bodyLength', basis: null },
  'neck hem': { point: 'bodyLength', basis: null },
  'top hem': { point: 'length', basis: null },
  'shoulder cuff': { point: 'sleeveLength', basis: null },
  'neck cuff': { point: 'sleeveFromCentreBack', basis: null },
  'armpit cuff': { point: 'sleeveUnderarm', basis: null },
  'neck waist': { point: 'napeToWaist', basis: null },
  'shoulder waist': { point: 'napeToWaist', basis: null },
  'waist hem': { point: 'skirtLength', basis: null },
  'crotch hem': { point: 'inseam', basis: null },
  'crotch cuff': { point: 'inseam', basis: null },
  'waist crotch': { point: 'frontRise', basis: null },
  'waist cuff': { point: 'outseam', basis: null },
  'neck crotch': { point: 'torsoLength', basis: null },
  'shoulder crotch': { point: 'torsoLength', basis: null },
  'waist waist': { point: 'waist', basis: 'flat' },
  'hip hip': { point: 'hip', basis: 'flat' },
  'knee knee': { point: 'knee', basis: 'flat' },
  'bust bust': { point: 'chest', basis: 'flat' }
}
/** Shoulders are shoulders; elbows and the rest name no point of ours together. */
const pairOf = (a: Landmark, b: Landmark) => PAIRS[`${a} ${b}`] ?? PAIRS[`${b} ${a}`] ?? null

const pairMeanings = new Map<string, Meaning>()
const endsOfPairs = new WeakMap<Meaning, readonly [Landmark, Landmark]>()
function pairMeaning(a: Landmark, b: Landmark): Meaning {
  const known = pairMeanings.get(`${a} ${b}`)
  if (known) return known
  const pair = pairOf(a, b)
  const its = meaningOf(pair === null ? [{ role: 'detail' }] : [{ role: 'point', ...pair, weak: false }])
  pairMeanings.set(`${a} ${b}`, its)
  endsOfPairs.set(its, [a, b])
  return its
}
/** Where a term that two landmarks make begins and ends, or null. */
export const endsOf = (term: Term | undefined): readonly [Landmark, Landmark] | null => (term && endsOfPairs.get(term.meaning)) ?? null

/** Names of edges say where a length ends, too. */
const ENDS: Partial<Record<PointName, Landmark>> = {
  bottomEdge: 'hem',
  hem: 'hem',
  sweep: 'hem',
  legOpening: 'hem',
  cuff: 'cuff',
  cuffEdge: 'cuff'
}
/** The place that a term names as the end of a length: “to the bottom rib”. */
export function endAt(term: Term | undefined): Landmark | undefined {
  const landmark = meaning(term, 'landmark')?.landmark
  if (landmark !== undefined) return landmark
  const point = meaning(term, 'point')
  return point && !point.basis ? ENDS[point.point] : undefined
}

const OF = cue('of')
const STEPPED: WordRole[] = ['light', 'front', 'back', 'from']
const FURTHEST = 5
/** Words that mean nothing here, between “to” and where it ends. */
const MOST_UNKNOWN = 2

/** “from the shoulder down to the bottom hem”: landmark, small words, to, small words, landmark. */
function withLandmarkPairs(tokens: readonly Token[], list: readonly Term[]): Term[] {
  const joined: Term[] = []
  for (let index = 0; index < list.length; index++) {
    const first = list[index] as Term
    // “sleeve to cuff”: its name, and where it ends
    const landmark = meaning(first, 'landmark')
    const start = landmark && meaning(first, 'point')?.point === 'sleeveLength' ? undefined : landmark
    const end = start && secondLandmark(tokens, list, index)
    if (!start || !end) {
      joined.push(first)
      continue
    }
    const last = list[end.index] as Term
    joined.push({
      from: first.from,
      to: last.to,
      meaning: pairMeaning(start.landmark, end.landmark)
    })
    index = end.index
  }
  return joined
}

function secondLandmark(tokens: readonly Token[], list: readonly Term[], first: number) {
  let seenTo = false
  let reached = (list[first] as Term).to
  let unknown = 0
  for (let index = first + 1; index <= first + FURTHEST; index++) {
    const term = list[index]
    if (term === undefined) return null
    for (let at = reached; at < term.from; at++) {
      const text = tokens[at]?.text ?? ''
      // “to the longest part of the hem”
      if (seenTo && tokens[at]?.kind === 'word' && unknown < MOST_UNKNOWN) {
        unknown++
        continue
      }
      if (!/^[->.']$/.test(text) || unknown > 0) return null
      // armpit-armpit, shoulder-hem: a glued hyphen is the “to”
      if (text !== '-' || at !== reached || at + 1 !== term.from || index !== first + 1) continue
      if (!tokens[at]?.spaced && !tokens[at + 1]?.spaced) seenTo = true
      // “collar - hem 25"” too, where the two name a length and the figure follows
      else if (isNamedPair(list[first], term) && leadsToFigure(tokens, term.to)) seenTo = true
    }
    reached = term.to
    if (!seenTo && means(term, 'to')) {
      seenTo = true
      continue
    }
    const landmark = seenTo ? endAt(term) : meaning(term, 'landmark')?.landmark
    if (seenTo && landmark) {
      // “bottom of the sleeve”, “end of cuff”: the later landmark says more
      const after = list[index + 1]
      const further = after && means(after, 'light') ? list[index + 2] : undefined
      const named = meaning(further, 'landmark')
      const glued = further && after && gapless(tokens, term.to, after.from) && gapless(tokens, after.to, further.from)
      if (named && glued && OF.test(tokens[after.from]?.text)) return { landmark: named.landmark, index: index + 2 }
      return { landmark, index }
    }
    if (!STEPPED.some((role) => means(term, role)) && !(!seenTo && landmark)) return null
  }
  return null
}

const isNamedPair = (a: Term | undefined, b: Term): boolean => {
  const [from, to] = [meaning(a, 'landmark'), meaning(b, 'landmark')]
  return from !== undefined && to !== undefined && from.landmark !== to.landmark && pairOf(from.landmark, to.landmark) !== null
}

function gapless(tokens: readonly Token[], from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (tokens[at]?.kind !== 'word') return false
  return true
}

/** The words of a text that mean something, longest phrase first, each with its place and all it can mean. */
import type { Landmark, PointName, WordRole } from './languages/lexicon.ts'
import type { Lexis, Node, Sense } from './lexis.ts'
import type { Token } from './tokens.ts'

export interface Term {
  /** Its first token, and the one after its last. */
  from: number
  to: number
  senses: readonly Sense[]
}
export interface Terms {
  list: Term[]
  /** For each token the term that covers it, or −1. */
  at: Int32Array
}

type SenseOf<R extends Sense['role']> = Extract<Sense, { role: R }>
/** What a term means in this role, or undefined. */
export const meaning = <R extends Sense['role']>(term: Term | undefined, role: R): SenseOf<R> | undefined =>
  term?.senses.find((sense): sense is SenseOf<R> => sense.role === role)
export const means = (term: Term | undefined, ...roles: Sense['role'][]): boolean =>
  term?.senses.some((sense) => (roles as string[]).includes(sense.role)) ?? false
/** The term that covers a token. */
export const termAt = (terms: Terms, token: number): Term | undefined => {
  const index = terms.at[token]
  return index === undefined || index < 0 ? undefined : terms.list[index]
}

const GLUE = new Set(['-', '.', "'", '_', '/'])
const DEEPEST = 9

/** Every phrase of the lexis in the tokens, then the points that two landmarks and “to” make. Linear. */
export function termsOf(tokens: readonly Token[], lexis: Lexis): Terms {
  const list: Term[] = []
  for (let from = 0; from < tokens.length; ) {
    const found = longest(tokens, from, lexis.root)
    if (found) list.push(found.to - found.from > 1 ? withInner(tokens, found, lexis.root) : found)
    from = found?.to ?? from + 1
  }
  const joined = withLandmarkPairs(tokens, list)
  const at = new Int32Array(tokens.length).fill(-1)
  joined.forEach((term, index) => {
    at.fill(index, term.from, term.to)
  })
  return { list: joined, at }
}

/**
 * pit-to-pit · t-shirt · p.t.p · 3/4 sleeve
 *    ^ ^       ^ glue is stepped over where no space stands beside it
 */
function longest(tokens: readonly Token[], from: number, root: Node, limit = tokens.length): Term | null {
  let node: Node | undefined = root
  let best: Term | null = null
  let at = from
  for (let depth = 0; depth < DEEPEST; depth++) {
    const token: Token | undefined = at < limit ? tokens[at] : undefined
    if (token === undefined || (token.kind !== 'word' && token.kind !== 'digits')) break
    node = node.next.get(token.text)
    if (node === undefined) break
    at++
    if (node.senses !== null) best = { from, to: at, senses: node.senses }
    const glue = tokens[at]
    if (glue?.kind === 'mark' && !glue.spaced && glue.text === "'" && tokens[at + 1]?.kind === 'word' && token.kind === 'word') {
      at++ // girls' dress
      continue
    }
    if (glue?.kind === 'mark' && !glue.spaced && GLUE.has(glue.text) && tokens[at + 1]?.spaced === false) {
      const digits = token.kind === 'digits'
      if (glue.text === '/' && !(digits && tokens[at + 1]?.kind === 'digits')) break
      at++
    }
  }
  return best
}

const OUTER = ['kind', 'made', 'use', 'trait'] as const
const INNER = new Set(['fibre', 'structure', 'trait', 'colour', 'use', 'made', 'kind'])
const IMITATED = /^(?:faux|vegan|imitation|fake|pu|mock)$/

/** “denim jacket” is a jacket and still denim: what the words of a garment's name tell each for itself is kept. */
function withInner(tokens: readonly Token[], term: Term, root: Node): Term {
  if (!means(term, ...OUTER) || IMITATED.test(tokens[term.from]?.text ?? '')) return term
  const senses = [...term.senses]
  for (let at = term.from; at < term.to; at++) {
    const inner = longest(tokens, at, root, at === term.from ? term.to - 1 : term.to)
    for (const sense of inner?.senses ?? []) {
      if (!INNER.has(sense.role) || (sense.role === 'kind' && senses.some(({ role }) => role === 'kind'))) continue
      senses.push(sense)
    }
  }
  return { ...term, senses }
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
  'shoulder crotch': { point: 'torsoLength', basis: null },
  'waist waist': { point: 'waist', basis: 'flat' },
  'hip hip': { point: 'hip', basis: 'flat' },
  'knee knee': { point: 'knee', basis: 'flat' },
  'bust bust': { point: 'chest', basis: 'flat' }
}
/** Shoulders are shoulders; elbows and the rest name no point of ours together. */
const pairOf = (a: Landmark, b: Landmark) => PAIRS[`${a} ${b}`] ?? PAIRS[`${b} ${a}`] ?? null

const STEPPED: WordRole[] = ['light', 'front', 'back', 'from']
const FURTHEST = 5

/** “from the shoulder down to the bottom hem”: landmark, small words, to, small words, landmark. */
function withLandmarkPairs(tokens: readonly Token[], list: readonly Term[]): Term[] {
  const joined: Term[] = []
  for (let index = 0; index < list.length; index++) {
    const first = list[index] as Term
    const start = meaning(first, 'landmark')
    const end = start && secondLandmark(tokens, list, index)
    if (!start || !end) {
      joined.push(first)
      continue
    }
    const pair = pairOf(start.landmark, end.landmark)
    const last = list[end.index] as Term
    joined.push({
      from: first.from,
      to: last.to,
      senses: pair === null ? [{ role: 'detail' }] : [{ role: 'point', ...pair, weak: false }]
    })
    index = end.index
  }
  return joined
}

function secondLandmark(tokens: readonly Token[], list: readonly Term[], first: number) {
  let seenTo = false
  let reached = (list[first] as Term).to
  for (let index = first + 1; index <= first + FURTHEST; index++) {
    const term = list[index]
    if (term === undefined) return null
    for (let at = reached; at < term.from; at++) {
      const text = tokens[at]?.text ?? ''
      if (text !== '-' && text !== '>' && text !== '.') return null
      // armpit-armpit, shoulder-hem: a glued hyphen is the “to”
      if (text === '-' && !tokens[at]?.spaced && !tokens[at + 1]?.spaced && at === reached && at + 1 === term.from && index === first + 1)
        seenTo = true
    }
    reached = term.to
    if (!seenTo && means(term, 'to')) {
      seenTo = true
      continue
    }
    const landmark = meaning(term, 'landmark')
    if (seenTo && landmark) {
      // “bottom of the sleeve”, “end of cuff”: the later landmark says more
      const after = list[index + 1]
      const further = after && means(after, 'light') ? list[index + 2] : undefined
      const named = meaning(further, 'landmark')
      const glued = further && after && gapless(tokens, term.to, after.from) && gapless(tokens, after.to, further.from)
      if (named && glued && tokens[after.from]?.text === 'of') return { landmark: named.landmark, index: index + 2 }
      return { landmark: landmark.landmark, index }
    }
    if (!STEPPED.some((role) => means(term, role)) && !(!seenTo && landmark)) return null
  }
  return null
}

function gapless(tokens: readonly Token[], from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (tokens[at]?.kind !== 'word') return false
  return true
}

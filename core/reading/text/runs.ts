/**
 * Runs of letters without spaces, cut into the words that a language knows and what lies between. Of all ways to cut a run the one that
 * costs least is taken: each word costs a little, each letter of nobody's much more. Linear: from each letter no farther than the longest word.
 */
import { isHiragana, isUnspaced, type Script, scriptOf } from '../languages/scripts.ts'
import type { Token } from './tokens.ts'

/** The words of a language in these letters, as a tree of their letters. */
export interface RunWords {
  next: Map<string, RunWords>
  /** A word ends here: how long each of its words is, for it may be several that are written as one; null: none ends. */
  ends: readonly number[] | null
}

/** `parts`: what is written as one and is several words. */
export function runWordsOf(words: Iterable<string>, parts: ReadonlyMap<string, readonly string[]>): RunWords {
  const root: RunWords = { next: new Map(), ends: null }
  const add = (word: string, lengths: readonly number[]) => {
    let node = root
    for (const letter of word) {
      const next = node.next.get(letter) ?? { next: new Map(), ends: null }
      node.next.set(letter, next)
      node = next
    }
    node.ends = lengths
  }
  for (const word of words) add(word, [word.length])
  for (const [word, its] of parts)
    add(
      word,
      its.map(({ length }) => length)
    )
  return root
}

const WORD = 0.2
/** A stretch of nobody's: to begin it, and each of its letters. */
const OPEN = 0.5
const LETTER = 0.5
/** Where the script changes another word is likely to begin. */
const CHANGE = 0.5
/** A short word beside unknown letters of its script is likely to be part of an unknown word. */
const TORN = 2.5
const SHORTEST: Record<Script, number> = { han: 2, hangul: 2, kana: 3 }

/** Kana are two scripts here, for the one begins where the other ends. */
const kindOf = (run: string, at: number): string => {
  const code = run.charCodeAt(at)
  return isHiragana(code) ? 'hiragana' : (scriptOf(code) ?? '')
}

/** How a stretch of a run ends: unknown, with a short word, with another. */
const UNKNOWN = 0
const SHORT = 1
const KNOWN = 2
interface Way {
  cost: number
  from: number
  /** How long the words are that it is of. */
  lengths: readonly number[] | null
  before: Way | null
}

/** A longer run is no listing's; it is cut piece by piece. */
const LONGEST = 1000

/** Where the words and the unknown stretches of a run begin, in order. */
export function cutsOf(run: string, words: RunWords): number[] {
  if (run.length <= LONGEST) return cutsOfPiece(run, words)
  const cuts: number[] = []
  for (let from = 0; from < run.length; from += LONGEST)
    for (const cut of cutsOfPiece(run.slice(from, from + LONGEST), words)) cuts.push(from + cut)
  return cuts
}

/** The words of a run that is known as a whole, which costs least; null: it is not. */
function wholeRun(run: string, words: RunWords): readonly number[] | null {
  let node: RunWords | undefined = words
  for (let at = 0; node && at < run.length; at++) node = node.next.get(run.charAt(at))
  return node?.ends ?? null
}

/** Where words of these lengths begin, the first of them here. */
function startsOf(from: number, lengths: readonly number[] | null): number[] {
  const starts = [from]
  for (const length of lengths?.slice(0, -1) ?? []) starts.push((starts[starts.length - 1] as number) + length)
  return starts
}

function cutsOfPiece(run: string, words: RunWords): number[] {
  const whole = wholeRun(run, words)
  if (whole !== null) return startsOf(0, whole)
  const ways: (Way | null)[][] = Array.from({ length: run.length + 1 }, () => [null, null, null])
  const take = (to: number, ending: number, cost: number, way: Pick<Way, 'from' | 'before'>, lengths: readonly number[] | null = null) => {
    const row = ways[to] as (Way | null)[]
    const known = row[ending]
    if (known === null || known === undefined || cost < known.cost) row[ending] = { cost, from: way.from, before: way.before, lengths }
  }
  ;(ways[0] as (Way | null)[])[KNOWN] = { cost: 0, from: 0, lengths: null, before: null }
  for (let at = 0; at < run.length; at++) {
    const [unknown, short, known] = ways[at] as [Way | null, Way | null, Way | null]
    const kind = kindOf(run, at)
    const same = at > 0 && kindOf(run, at - 1) === kind
    if (unknown) take(at + 1, UNKNOWN, unknown.cost + LETTER + (same ? 0 : CHANGE), unknown)
    if (short) take(at + 1, UNKNOWN, short.cost + OPEN + LETTER + (same ? TORN : 0), { from: at, before: short })
    if (known) take(at + 1, UNKNOWN, known.cost + OPEN + LETTER, { from: at, before: known })
    const before = !short ? known : !known || short.cost < known.cost ? short : known
    let node: RunWords | undefined = words
    for (let to = at; node && to < run.length; to++) {
      node = node.next.get(run.charAt(to))
      if (!node?.ends) continue
      const isShort = to + 1 - at < SHORTEST[scriptOf(run.charCodeAt(at)) ?? 'han']
      const ending = isShort ? SHORT : KNOWN
      if (before) take(to + 1, ending, before.cost + WORD, { from: at, before }, node.ends)
      if (unknown) take(to + 1, ending, unknown.cost + WORD + (isShort && same ? TORN : 0), { from: at, before: unknown }, node.ends)
    }
  }
  const ends = (ways[run.length] as (Way | null)[]).flatMap((way) => (way ? [way] : [])).sort((a, b) => a.cost - b.cost)
  const cuts: number[] = []
  for (let way: Way | null = ends[0] ?? null; way && way.before !== null; way = way.before) {
    cuts.push(...startsOf(way.from, way.lengths).reverse())
  }
  return cuts.reverse()
}

/** The tokens with every run cut; each part keeps its exact place. `plain`: the text they are of, with its fillers. */
export function withRunsCut(tokens: readonly Token[], plain: string, words: RunWords): Token[] {
  const all: Token[] = []
  for (const token of tokens) {
    if (token.kind !== 'word' || token.text.length < 2 || !isUnspaced(token.text.charCodeAt(0))) {
      all.push(token)
      continue
    }
    const { text } = token
    const cuts = cutsOf(text, words)
    if (cuts.length < 2) {
      all.push(token)
      continue
    }
    const places = placesOf(token, plain)
    for (const [index, from] of cuts.entries()) {
      const to = cuts[index + 1]
      all.push({
        kind: 'word',
        text: text.slice(from, to),
        start: places[from] as number,
        end: to === undefined ? token.end : (places[to] as number),
        spaced: index === 0 && token.spaced
      })
    }
  }
  return all
}

/** The place of each letter of a token; fillers within belong to the letter before them. */
function placesOf({ text, start, end }: Token, plain: string): number[] {
  const places: number[] = []
  for (let at = start; at < end && places.length < text.length; at++) if (plain.charCodeAt(at) !== 0) places.push(at)
  return places
}

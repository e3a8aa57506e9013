/** A text taken apart once: what every reader of it works on. */
import { cue } from './cues.ts'
import { withGluedParted } from './glued-words.ts'
import { type Layout, layoutOf } from './layout.ts'
import { withNamesSpelt } from './misspelt.ts'
import { normalise } from './normalise.ts'
import { type PhraseTrie, phraseTrieOf } from './phrase-trie.ts'
import { withRunsCut } from './runs.ts'
import { means, type Phrases, phrasesOf, startsAt, type Term, type Terms, termAt, termsOf } from './terms.ts'
import { isOneOf, type Token, tokensOf } from './tokens.ts'

/** A text as tokens, before its language is known. */
export interface TextTokens {
  /** As it was given; the places of tokens are in it. */
  original: string
  /** It had tags, which were left out. */
  markup: boolean
  tokens: readonly Token[]
  /** The text made plain, as long as the original. */
  plain: string
}

/** The context that every reader gets as its first argument: the tokens, what they mean, how they are laid out. */
export interface TextRead extends TextTokens {
  terms: Terms
  phrases: Phrases
  layout: Layout
  trie: PhraseTrie
}

const FIRST = cue('perCentFirst')
const SECOND = cue('perCentSecond')
/** “95 per cent wool”: behind a figure the two words are the sign. */
function withPercentSigns(tokens: readonly Token[]): readonly Token[] {
  let signed: Token[] | null = null
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token
    signed?.push(token)
    if (token.kind !== 'digits') continue
    const [first, second] = [tokens[at + 1], tokens[at + 2]]
    if (first?.kind !== 'word' || second === undefined || !FIRST.test(first.text) || !SECOND.test(second.text)) continue
    signed ??= tokens.slice(0, at + 1)
    signed.push({ kind: 'mark', text: '%', start: first.start, end: second.end, spaced: first.spaced })
    at += 2
  }
  return signed ?? tokens
}

export function tokenise(original: string): TextTokens {
  const plain = normalise(original)
  return { original, markup: plain.markup, tokens: withPercentSigns(tokensOf(plain.text)), plain: plain.text }
}

export function readTokens(text: TextTokens, language: string): TextRead {
  const trie = phraseTrieOf(language)
  const cut = trie.runs === null ? text.tokens : withRunsCut(text.tokens, text.plain, trie.runs)
  const parted = withGluedParted(text.original, cut, trie)
  const startsParted = startsAt(parted, trie)
  const tokens = withNamesSpelt(parted, trie, startsParted)
  const { original, markup, plain } = text
  const starts = tokens === parted ? startsParted : startsAt(tokens, trie)
  const [terms, phrases, layout] = [termsOf(tokens, trie, starts), phrasesOf(tokens, starts), layoutOf(tokens)]
  return { original, markup, tokens, plain, trie, terms, phrases, layout }
}
export const readText = (original: string, language: string): TextRead => readTokens(tokenise(original), language)

const REACH = 12

/** Is a term denied: “no holes, stains or tears”, “not silk”; not past a “but”, a colon or a sentence's end. */
export function isDenied(text: TextRead, term: Term): boolean {
  const { tokens, terms, layout, trie } = text
  if (trie.verbLast) return isDeniedBehind(text, term)
  let unknown = 0
  let at = term.from - 1
  for (let steps = 0; steps < REACH && at >= 0; steps++) {
    if (layout.sentence[at] !== layout.sentence[term.from]) return false
    const token = tokens[at] as Token
    const its = termAt(terms, at)
    if (its && means(its, 'not')) return true
    if (its && means(its, 'but')) return false
    // past a comma only in a list of things denied: “no holes, stains or tears”
    if (token.text === ',' && !listed(tokens, terms, at + 1, term.from)) return false
    if (token.kind === 'mark' && isOneOf(token, ':;()|-') && token.spaced) return false
    if (token.kind === 'mark' && isOneOf(token, ':;(')) return false
    if (token.kind === 'word' && !its) unknown++
    if (unknown > 2 || token.kind === 'digits') return false
    at = its ? its.from - 1 : at - 1
  }
  return false
}

/** シミ、汚れ、穴などはありません: where verbs end their sentences a list is denied at its end; not past a verb that says it is there. */
function isDeniedBehind({ tokens, terms, layout }: TextRead, term: Term): boolean {
  let unknown = 0
  let at = term.to
  for (let steps = 0; steps < REACH && at < tokens.length; steps++) {
    if (layout.sentence[at] !== layout.sentence[term.from]) return false
    const token = tokens[at] as Token
    const its = termAt(terms, at)
    if (its && means(its, 'not')) return true
    if (its && means(its, 'but', 'point', 'kind', 'heading', 'size', 'price')) return false
    if (token.kind === 'digits' || token.kind === 'break' || (token.kind === 'mark' && !isOneOf(token, ',/·&~'))) return false
    // past a comma only to what is denied with it
    if (token.kind === 'mark' && !means(termAt(terms, at + 1), 'fault', 'light', 'not', 'conditionWord', 'and', 'or')) return false
    if (token.kind === 'word' && !its) unknown++
    if (unknown > 2) return false
    at = its ? its.to : at + 1
  }
  return false
}

/** Nothing but faults, small words, “and” and “or” between. */
function listed(tokens: readonly Token[], terms: Terms, from: number, to: number): boolean {
  for (let at = from; at < to; at++) {
    if (tokens[at]?.kind === 'mark') continue
    if (!means(termAt(terms, at), 'and', 'or', 'light', 'fault', 'fibre', 'conditionWord')) return false
  }
  return true
}

/** The original text of some tokens. */
export const slice = ({ original, tokens }: TextRead, from: number, to: number): string =>
  from < to ? original.slice((tokens[from] as Token).start, (tokens[to - 1] as Token).end) : ''

/** Does a figure end here, with its unit or without? */
export const endsFigure = ({ tokens, terms }: TextRead, at: number): boolean =>
  tokens[at]?.kind === 'digits' || tokens[at]?.text === '"' || (means(termAt(terms, at), 'unit') && tokens[at - 1]?.kind === 'digits')

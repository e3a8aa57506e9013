/** “20inWaist: 17”, “InchesBust20”: a unit or a word run into the name behind it, where a line or a column was lost. */
import type { PhraseTrie } from './phrase-trie.ts'
import type { Token } from './tokens.ts'
import { type Vocabulary, vocabularyOf } from './vocabulary.ts'

/** inWaist, and MEASUREMENTSBust. */
const CAPITAL_BEHIND = /\p{Ll}(?=\p{Lu})|\p{Lu}(?=\p{Lu}\p{Ll})/u
const SHORTEST = 3

/** The same tokens, such words parted. Linear. */
export function withGluedParted(original: string, tokens: readonly Token[], trie: PhraseTrie): readonly Token[] {
  let parted: Token[] | null = null
  const capitals = CAPITAL_BEHIND.test(original)
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token
    const behindFigure = !token.spaced && tokens[at - 1]?.kind === 'digits'
    const mayBe = token.kind === 'word' && token.text.length >= SHORTEST && (behindFigure || capitals)
    const cut = mayBe ? cutOf(original, token, behindFigure, tokens[at + 1], trie) : 0
    if (cut === 0) {
      parted?.push(token)
      continue
    }
    parted ??= tokens.slice(0, at)
    parted.push({ ...token, text: token.text.slice(0, cut), end: token.start + cut })
    parted.push({ ...token, text: token.text.slice(cut), start: token.start + cut, spaced: false })
  }
  return parted ?? tokens
}

/** After how many letters it parts; 0: nowhere. */
function cutOf(original: string, token: Token, behindFigure: boolean, next: Token | undefined, trie: PhraseTrie): number {
  const { text, start, end } = token
  if (end - start !== text.length) return 0
  const written = original.slice(start, end)
  const capital = CAPITAL_BEHIND.test(written)
  if (!behindFigure && !capital) return 0
  const words = vocabularyOf(trie)
  if (words.has(text)) return 0
  if (capital) {
    const cut = written.search(CAPITAL_BEHIND) + 1
    if (words.has(text.slice(0, cut)) && begins(text.slice(cut), trie)) return cut
  }
  return behindFigure ? unitIn(text, next, words, trie) : 0
}

const begins = (word: string, trie: PhraseTrie): boolean => word.length >= SHORTEST && trie.from(word)?.root !== undefined

/** 20inwaist, 50cmlargo, 21inl 28in: the longest unit that leaves the beginning of a phrase. */
function unitIn(text: string, next: Token | undefined, { units }: Vocabulary, trie: PhraseTrie): number {
  for (let cut = text.length - 1; cut >= 2; cut--) {
    if (!units.has(text.slice(0, cut))) continue
    const rest = text.slice(cut)
    const letter = rest.length === 1 && next?.kind === 'digits'
    if (letter || begins(rest, trie)) return cut
  }
  return 0
}

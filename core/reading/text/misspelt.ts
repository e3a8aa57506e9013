/** “Shouder 17"”, “Lenghth: 26”: a name of a point one slip of the pen away, beside its figure. */
import { oncePer } from '../../once.ts'
import type { PhraseTrie, Sense } from './phrase-trie.ts'
import type { StartsAt } from './terms.ts'
import { isOneOf, type Token } from './tokens.ts'
import { type Vocabulary, vocabularyOf } from './vocabulary.ts'

/** Shorter words are too near to too many others. */
const SHORTEST = 5
const LONGEST = 14
const SHORTEST_NAME = 4

/** The same tokens, such words as they are meant. `starts`: where they lead. Linear: a word is compared with the names that begin or end alike. */
export function withNamesSpelt(tokens: readonly Token[], trie: PhraseTrie, starts: StartsAt): readonly Token[] {
  const words = vocabularyOf(trie)
  let spelt: Token[] | null = null
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token
    if (token.kind !== 'word' || token.text.length < SHORTEST || token.text.length > LONGEST) continue
    const its = starts[at]
    if (its !== undefined && (its.root ?? its.cuts ?? its.whose) !== undefined) continue
    const beside = isBesideFigure(tokens, at, words)
    if (!beside && !isBeforeName(tokens[at + 1], words)) continue
    if (words.has(token.text)) continue
    const name = meantBy(token.text, trie)
    if (name === null || !(beside || trie.from(name)?.root?.next.has(tokens[at + 1]?.text ?? ''))) continue
    spelt ??= [...tokens]
    spelt[at] = { ...token, text: name }
  }
  return spelt ?? tokens
}

/** Its figure stands right behind it or right before it. */
function isBesideFigure(tokens: readonly Token[], at: number, { units }: Vocabulary): boolean {
  let next = at + 1
  while (next < at + 3 && tokens[next]?.kind === 'mark' && isOneOf(tokens[next], ':=~>.-')) next++
  if (isFigure(tokens[next])) return true
  const before = tokens[at - 1]
  const unit = before?.text === '"' || (before?.kind === 'word' && units.has(before.text))
  return isFigure(before) || (unit && isFigure(tokens[at - 2]))
}
/** It may open a longer name. */
const isBeforeName = (next: Token | undefined, { names }: Vocabulary): boolean => next?.kind === 'word' && names.has(next.text)
const isFigure = (token: Token | undefined): boolean => token?.kind === 'digits' || token?.kind === 'fraction'

/** The words that may be meant, in the order of the phrases, and those of names of points by how they begin and by how they end. */
interface Lookup {
  words: readonly string[]
  namesBy: ReadonlyMap<string, readonly string[]>
}
/** One slip leaves the first letters or the last ones of a word as they are: so many of each. */
const END = 2

const lookupOf = oncePer((trie: PhraseTrie): Lookup => {
  const { names, all } = vocabularyOf(trie)
  const words = [...all()].filter((one) => one.length >= SHORTEST_NAME && one.length <= LONGEST + 1 && !/\d/.test(one))
  const namesBy = new Map<string, string[]>()
  for (const word of words)
    if (names.has(word))
      for (const end of endsOf(word)) {
        const its = namesBy.get(end)
        if (its) its.push(word)
        else namesBy.set(end, [word])
      }
  return { words, namesBy }
})
const endsOf = (word: string): [string, string] => [`${word.slice(0, END)}-`, `-${word.slice(-END)}`]

/** Is a word in a name of a point one slip away? Asked first: of most words that nobody knows none is. */
function isNearName(word: string, { namesBy }: Lookup): boolean {
  for (const end of endsOf(word)) for (const name of namesBy.get(end) ?? []) if (slipOf(word, name) !== null) return true
  return false
}

/** The word of the trade that is one slip away, where it is in a name of a point and no other word but of the same point is as near. */
function meantBy(word: string, trie: PhraseTrie): string | null {
  const lookup = lookupOf(trie)
  if (!isNearName(word, lookup)) return null
  let nearest = 9
  let near = new Set<string>()
  for (const one of lookup.words) {
    const slip = slipOf(word, one)
    if (slip === null || slip > nearest) continue
    if (slip < nearest) near = new Set()
    nearest = slip
    near.add(one)
  }
  const { names } = vocabularyOf(trie)
  let meant: string | null = null
  for (const one of near) {
    if (!names.has(one)) return null
    if (meant === null || pointOf(meant, trie) === undefined) meant = one
    else if (pointOf(one, trie) !== undefined && pointOf(one, trie) !== pointOf(meant, trie)) return null
  }
  return meant
}

const pointOf = (word: string, trie: PhraseTrie): string | undefined =>
  trie.from(word)?.root?.meaning?.senses.find((sense): sense is Extract<Sense, { role: 'point' }> => sense.role === 'point')?.point

/**
 * How far a slip leads from one word to another, or null where it takes more than one: 1 for neighbours in each other's place and for
 * a letter doubled or not, 2 for a letter too many, missing or another.
 */
export function slipOf(a: string, b: string): 1 | 2 | null {
  if (Math.abs(a.length - b.length) > 1 || a === b) return null
  let from = 0
  while (from < a.length && a[from] === b[from]) from++
  let endA = a.length
  let endB = b.length
  while (endA > from && endB > from && a[endA - 1] === b[endB - 1]) {
    endA--
    endB--
  }
  const [lengthA, lengthB] = [endA - from, endB - from]
  if (lengthA === 2 && lengthB === 2 && a[from] === b[from + 1] && a[from + 1] === b[from]) return 1
  if (lengthA > 1 || lengthB > 1) return null
  const longer = lengthA > lengthB ? a : b
  const doubled = lengthA !== lengthB && (longer[from] === longer[from - 1] || longer[from] === longer[from + 1])
  return doubled ? 1 : 2
}

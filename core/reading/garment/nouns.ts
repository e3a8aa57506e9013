/** The nouns of a text that name garments, or things that are none: each with its place, by which it tells what is for sale or only what is near it. */
import type { Made } from '../../garment/garment-input.ts'
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { cue } from '../text/cues.ts'
import { OF_EVERY } from '../text/lexicons.ts'
import { meaning, means, type Term, termAt, termsAs } from '../text/terms.ts'
import { isDenied, type TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'

/** What may be for sale. */
export type Candidate = GarmentKind | 'thing'

/**
 * head: what its noun phrase is. modifier: only says of what sort the next noun is (“shirt dress”). beside: worn with it, put over it, for it.
 * aside: another item, or not for sale here. tag: a hashtag. part: a style or a shape (“jacket style”). name: of a maker or a model (“Pinafore Lane”).
 */
export type NounPlace = 'head' | 'modifier' | 'beside' | 'aside' | 'tag' | 'part' | 'name'

export interface Noun {
  kind: Candidate
  /** What the same word also names: a vest. */
  or: GarmentKind | null
  made: Partial<Made>
  from: number
  to: number
  /** A word that texts also use in passing: top button, a ring of buttons. */
  passing: boolean
  place: NounPlace
  /** Named right behind “this” or “selling”. */
  pointedAt: boolean
  /** Behind “category:” or “item:”. */
  fielded: boolean
}

/** Words after which a title speaks of something beside the garment. */
const BESIDE = cue('besideGarment')
/** “matching jacket”: beside what it matches. */
const MATCHING = cue('goesWith')
/** “like a jacket”, “as a dress”: only with an article or right before the noun. */
const LIKE = cue('likeGarment')
/** “for sale”, “for her”: what follows is for sale. */
const FOR_SALE = cue('sale')
/** “jacket style”, “dress weight”. */
const NOT_ITSELF = cue('notItself')
/** Kinds that a text names in passing: top button, knit, a suit's name. */
const PASSING = cue('kindInPassing')
/** “tunic top”, “jumper knit”: behind another noun they name nothing new. */
const VAGUE = cue('vagueKind')
const THING_IN_PASSING = cue('thingInPassing')
const ANY_GARMENT = cue('anyGarment')
const ARTICLE = cue('article', 'the')
const THIS = cue('thisOne')
const FIELD = cue('itemHead')
/** In these languages the head of a compound stands first. */
const HEAD_FIRST = new Set(OF_EVERY.languages.filter(({ headFirst }) => headFirst).map(({ language }) => language))
/** Further on a text tells nothing new. */
const FURTHEST = 4000

/** Here a compound is one word: of nouns written apart the first is the garment, and what follows is said of it. */
const JOINED = new Set(OF_EVERY.languages.filter(({ joins }) => joins).map(({ language }) => language))

/** Does the first of several nouns lead? */
export const isFirstLeading = (language: string): boolean => HEAD_FIRST.has(language) || JOINED.has(language)

/** Every noun of a text, in order. Linear. */
export function nounsOf(text: TextRead, language: string): Noun[] {
  const { tokens, terms } = text
  const inCut = cutTokens(text)
  const found = termsAs(terms, 'kind', 'thing').filter((term) => term.from < FURTHEST && isNoun(term, inCut))
  const hidden = termsAs(terms, 'nothing', 'stretch', 'stretchMuch', 'stretchSome', 'stretchLittle').flatMap(
    (term) => hiddenNoun(text, term) ?? []
  )
  if (hidden.length > 0) found.push(...hidden.filter(({ from }) => from < FURTHEST))
  if (found.length === 0) return []
  if (hidden.length > 0) found.sort((a, b) => a.from - b.from)
  const asides = asidesIn(text)
  const nouns = found.map((term, index): Noun => {
    const sense = meaning(term, 'kind')
    const word = tokens[term.from]?.text
    const one = term.to === term.from + 1
    return {
      kind: sense?.kind ?? 'thing',
      or: sense?.or ?? null,
      made: sense?.made ?? {},
      from: term.from,
      to: term.to,
      passing: one && (sense ? PASSING.test(word) : THING_IN_PASSING.test(word)),
      place: placeOf(text, term, { before: found[index - 1], after: found[index + 1], language, asides }),
      pointedAt: THIS.test(wordBefore(text, term.from)),
      fielded: isOneOf(tokens[term.from - 1], ':=') && FIELD.test(tokens[term.from - 2]?.text)
    }
  })
  return nouns.map((noun, index) => (isOfJeans(noun, [nouns[index - 1], nouns[index + 1]]) ? { ...noun, kind: 'jeans' } : noun))
}

/** Trousers right beside a word that only jeans are called by are jeans: 와이드 데님 팬츠. */
const isOfJeans = ({ kind, place, from, to }: Noun, beside: readonly (Noun | undefined)[]): boolean =>
  kind === 'trousers' && place === 'head' && beside.some((its) => its?.kind === 'jeans' && (its.to === from || its.from === to))

/** A thing that is only the name of a cut (“boot cut”), or a word that is nothing here, is no noun. */
const isNoun = (term: Term, inCut: ReadonlySet<number>): boolean =>
  means(term, 'kind') || !(means(term, 'nothing', 'point') || inCut.has(term.from))

const OF = cue('of')

/** “stretch jeans”, “waist length jacket”: phrases that mean something else, and end with the garment all the same. */
function hiddenNoun({ tokens, trie }: TextRead, { from, to, meaning: { roles } }: Term): Term | null {
  if (to === from + 1 || roles.has('kind') || roles.has('thing') || roles.has('detail')) return null
  const its = trie.from(tokens[to - 1]?.text ?? '')?.root?.meaning
  return its?.roles.has('kind') && !tokens.slice(from, to - 1).some(({ text }) => OF.test(text)) ? { from: to - 1, to, meaning: its } : null
}

/** The tokens of cuts of several words. */
function cutTokens({ terms: { by }, phrases }: TextRead): ReadonlySet<number> {
  const within = new Set<number>()
  if (!by.has('thing')) return within
  for (const { from, to } of phrases.cuts) if (to > from + 1) for (let at = from; at < to; at++) within.add(at)
  return within
}

interface Around {
  before: Term | undefined
  after: Term | undefined
  language: string
  asides: Asides
}

function placeOf(text: TextRead, term: Term, { before, after, language, asides }: Around): NounPlace {
  const { tokens } = text
  if (tokens[term.from - 1]?.text === '#' || term.from > (asides.tagged.get(text.layout.line[term.from] as number) ?? term.from))
    return 'tag'
  if (isAside(text, term, asides)) return 'aside'
  if (HEAD_FIRST.has(language)) {
    if (before && joins(text, before, term)) return 'modifier'
  } else if (after && joins(text, term, after) && (JOINED.has(language) ? isVague(text, term) : !isVague(text, after))) return 'modifier'
  if (JOINED.has(language) && before && joins(text, before, term) && isVague(text, term)) return 'modifier'
  if (isBesideNoun(text, term.from) || (before && isSecondOfSet(text, before, term))) return 'beside'
  if (isDenied(text, term)) return 'beside'
  if (NOT_ITSELF.test(tokens[term.to]?.text)) return 'part'
  return isName(text, term.to) ? 'name' : 'head'
}

/** Does a word that nobody knows, with a capital, follow at once? */
function isName({ original, tokens, terms }: TextRead, at: number): boolean {
  const token = tokens[at]
  if (token === undefined || token.kind !== 'word' || termAt(terms, at) !== undefined) return false
  return /^\p{Lu}\p{Ll}/u.test(original.slice(token.start, token.end))
}

/** ジャケット スカート: where a space parts two names, trousers or a skirt right behind what is worn above are a set with it. */
function isSecondOfSet({ tokens, trie }: TextRead, before: Term, { from, meaning: { senses } }: Term): boolean {
  if (trie.runs === null || before.to !== from || tokens[from]?.spaced !== true) return false
  const [first, then] = [before.meaning.senses, senses].map((some) => some.find((one) => one.role === 'kind'))
  if (first?.role !== 'kind' || then?.role !== 'kind') return false
  return SHAPE[first.kind] === 'upper' && (SHAPE[then.kind] === 'legs' || SHAPE[then.kind] === 'skirt')
}

const LED_TO = cue('besideGarmentBehind')
/** スカートにも, ワンピース風: where verbs stand last, what is set beside the garment, or only looks like one, is told behind its name. */
function isLedTo({ tokens, terms, trie }: TextRead, { to }: Term): boolean {
  if (!trie.verbLast) return false
  let at = to
  // デニムやスカートにも: so are all that are listed with it
  for (let listed = 0; listed < MOST_LISTED && tokens[at]?.spaced === false; listed++) {
    if (LED_TO.test(tokens[at]?.text) || means(termAt(terms, at), 'imitation')) return true
    const next = termAt(terms, at + 1)
    if (!means(termAt(terms, at), 'and', 'or', 'light') || next?.from !== at + 1 || !means(next, 'kind')) return false
    at = next.to
  }
  return false
}
const MOST_LISTED = 4

const isVague = ({ tokens }: TextRead, { from, to }: Term): boolean => to === from + 1 && VAGUE.test(tokens[from]?.text)

/** “shirt dress”, “shirt-dress”: two nouns with nothing between them; where words need no spaces, what one parts is another noun. */
function joins({ tokens, trie }: TextRead, { to }: Term, { from }: Term): boolean {
  if (to === from) return trie.runs === null || tokens[from]?.spaced !== true
  return from === to + 1 && tokens[to]?.text === '-' && !tokens[to]?.spaced && !tokens[from]?.spaced
}
const wordBefore = ({ tokens, terms }: TextRead, from: number): string | undefined => {
  // past one word of how it looks: “this blue dress”
  const before = termAt(terms, from - 1)
  const at = before && means(before, 'colour', 'fibre', 'conditionWord', 'light') ? before.from - 1 : from - 1
  const direct = tokens[from - 1]?.text
  return THIS.test(direct) ? direct : tokens[at]?.text
}

/** Is what a phrase says said of a noun that stands beside what is for sale: “with wide trousers”? */
export function isOfBeside(text: TextRead, { from, to }: Term): boolean {
  const noun = [termAt(text.terms, to - 1), termAt(text.terms, to)].find((its) => means(its, 'kind'))
  return noun !== undefined && isBesideNoun(text, from)
}

const REACH = 14
/** Words nobody knows between “with” and the noun, at most. */
const UNKNOWN = 2

/** “with jeans, a skirt or tailored trousers”, “to wear over a dress”: set beside what is for sale. */
export function isBesideNoun(text: TextRead, from: number): boolean {
  const { tokens, terms, layout, trie } = text
  // デニムに合うシャツ: where verbs stand last, such a word is of the noun before it (see isLedTo)
  if (trie.verbLast) {
    const its = termAt(terms, from)
    // トップスとスカート: right behind another noun and its “and”
    const second = BESIDE.test(tokens[from - 1]?.text) && tokens[from - 1]?.spaced === false && means(termAt(terms, from - 2), 'kind')
    return second || (its !== undefined && isLedTo(text, its))
  }
  let unknown = 0
  for (let at = from - 1, steps = 0; steps < REACH && at >= 0; steps++) {
    if (layout.sentence[at] !== layout.sentence[from]) return false
    const token = tokens[at] as Token
    if (token.kind === 'word' && BESIDE.test(token.text)) return !FOR_SALE.test(tokens[at + 1]?.text)
    if (token.kind === 'word' && MATCHING.test(token.text)) return true
    if (token.kind === 'word' && LIKE.test(token.text)) return at + 1 === from || isArticle(tokens[at + 1])
    const its = termAt(terms, at)
    if (means(its, 'kind', 'thing')) {
      at = (its as Term).from - 1
      continue
    }
    // “in good condition, a skirt”, “for size 12”
    if (means(its, 'condition', 'conditionPhrase', 'size', 'measures')) return false
    // “to match a 50s dress”: a decade stands there like any word
    if (token.kind === 'break' || (token.kind === 'digits' && !isDecade(tokens, at))) return false
    if (token.kind === 'mark') {
      if (!(isOneOf(token, ',/&+') && listed(text, at)) && !(isOneOf(token, "'-") && token.spaced === false)) return false
    } else if (!its && !isArticle(token) && ++unknown > UNKNOWN) return false
    at--
  }
  return false
}

const isDecade = (tokens: readonly Token[], at: number): boolean => {
  const [number, behind] = [tokens[at], tokens[at + 1]]
  return /^(?:\d\d)?\d0$/.test(number?.text ?? '') && behind?.text === 's' && !behind.spaced
}

const isArticle = (token: Token | undefined): boolean => token !== undefined && (ARTICLE.test(token.text) || ANY_GARMENT.test(token.text))

/** A mark inside a list of garments: one stands before it. */
const listed = ({ terms }: TextRead, mark: number): boolean => means(termAt(terms, mark - 1), 'kind', 'thing')

interface Asides {
  /** Segments in which something is said not to be for sale here. */
  elsewhere: ReadonlySet<number>
  /** Tokens from and to which other items are listed. */
  others: { from: number; to: number }[]
  /** Lines of hashtags, and where those begin. */
  tagged: ReadonlyMap<number, number>
}
const isAside = ({ layout }: TextRead, { from }: Term, { elsewhere, others }: Asides): boolean =>
  elsewhere.has(layout.segment[from] as number) || others.some((one) => one.from <= from && from < one.to)

/** So many marks of a tag in a line make it one of tags. */
const TAGS = 3

function asidesIn(text: TextRead): Asides {
  const { tokens, terms, layout } = text
  const elsewhere = new Set(termsAs(terms, 'elsewhere').map(({ from }) => layout.segment[from] as number))
  const others: Asides['others'] = []
  for (const term of text.phrases.signs)
    for (const sense of term.meaning.senses) {
      if (sense.role !== 'sign') continue
      if (sense.as === 'elsewhere') elsewhere.add(layout.segment[term.from] as number)
      if (sense.as === 'others' && others.length < MOST_LISTS) others.push({ from: term.to, to: listEnd(text, term.to) })
    }
  const tags = new Map<number, number[]>()
  for (let at = text.plain.includes('#') ? 0 : tokens.length; at < tokens.length; at++) {
    if (tokens[at]?.text !== '#') continue
    const line = layout.line[at] as number
    const known = tags.get(line)
    if (known) known.push(at)
    else tags.set(line, [at])
  }
  const tagged = new Map(
    [...tags].flatMap(([line, places]): [number, number][] => (places.length < TAGS ? [] : [[line, places[0] as number]]))
  )
  return { elsewhere, others, tagged }
}
const MOST_LISTS = 20

/** Where a list of other items ends: with its sentence, or where none is named in that, with its paragraph. */
function listEnd({ tokens, terms, layout }: TextRead, from: number): number {
  let to = from
  let named = false
  while (to < tokens.length && layout.sentence[to] === layout.sentence[from]) {
    named ||= means(termAt(terms, to), 'kind', 'thing')
    to++
  }
  if (!named) while (to < tokens.length && layout.paragraph[to] === layout.paragraph[from]) to++
  return to
}

/** Whose sizes it is cut for: words that possess the garment, else the page's data, else a label that only one of the two has. */

import type { Use } from '../../garment/garment-input.ts'
import type { Whose } from '../../garment/model/whose.ts'
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { table } from '../../ids/table.ts'
import { isLetterSize } from '../sizes/size-words.ts'
import { type Cue, cue, cueStart } from '../text/cues.ts'
import { meaning, means, type Term, termAt, termsAs } from '../text/terms.ts'
import { isDenied, readText, type TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

export interface WhoseGiven {
  texts: readonly TextRead[]
  title: TextRead | null
  kind: GarmentKind | null
  use: Use | null
  sizeLabels: readonly string[]
  /** Whom the page's data names: a gender, an audience, the path of a category. */
  named: readonly string[]
  language: string
}
type Said = Whose | 'both'
/** `kind`: the garment that is possessed; null: none is named beside it. */
interface Told {
  whose: Said
  kind: GarmentKind | null
}

export function whoseOf({ texts, title, kind, use, sizeLabels, named, language }: WhoseGiven): Whose | null {
  if (use === 'child' || use === 'child-sleepwear') return null
  const told = texts.map((text) => toldIn(text, text === title))
  if (told.flat().some(({ whose }) => whose === 'both')) return null
  for (const one of told) {
    const its = one.filter((possessed) => possessed.kind === kind)
    const words = onlyOne((its.length > 0 ? its : one).map(({ whose }) => whose))
    if (words !== undefined) return words
  }
  for (const words of named) {
    const its = CODES[words.toLowerCase()] ?? onlyOne(toldIn(readText(words, language), true).map(({ whose }) => whose))
    if (its !== undefined) return its === 'both' ? null : its
  }
  return (kind === 'shirt' || kind === null) && texts.some(isCollarSize)
    ? 'men'
    : (onlyOne(sizeLabels.flatMap((label) => byLabel(label, kind) ?? [])) ?? null)
}

/** What they agree on; null where they don't, undefined where nobody says anything. */
function onlyOne(said: readonly Said[]): Whose | null | undefined {
  const [first] = said
  if (first === undefined) return undefined
  return first !== 'both' && said.every((one) => one === first) ? first : null
}

/** GenderType of schema.org. */
const CODES = table<Said>({ female: 'women', male: 'men', unisex: 'both' })

const WOMENS_BEGINS = cueStart('womensBegins')
const MENS_BEGINS = cueStart('mensBegins')
const BESIDE = cue('besideWhose')
const SOMEBODY = cue('ofSomebody')

/** A title speaks of the garment, whatever stands between; in a text the garment must be possessed. */
function toldIn(text: TextRead, title: boolean): Told[] {
  const { tokens, terms, trie, phrases } = text
  const told: Told[] = []
  for (const term of phrases.whose) {
    const sense = meaning(term, 'whose')
    if (sense === undefined || isDenied(text, term) || isOfWhomItFits(text, term) || isStyle(text, term)) continue
    if (sense.named && SOMEBODY.test(tokens[term.from - 1]?.text)) continue
    const kind = sense.named ? (kindBehind(text, term) ?? kindAhead(text, term)) : (kindAhead(text, term) ?? kindBehind(text, term))
    if (kind !== undefined || title || sense.whose === 'both' || (!sense.named && headsASize(text, term)))
      told.push({ whose: sense.whose, kind: kind ?? null })
  }
  if (trie.heads.size > 0)
    for (const term of termsAs(terms, 'kind')) {
      const word = tokens[term.from]?.text
      if (term.to > term.from + 1 || isDenied(text, term)) continue
      if (WOMENS_BEGINS.test(word)) told.push({ whose: 'women', kind: meaning(term, 'kind')?.kind ?? null })
      else if (MENS_BEGINS.test(word)) told.push({ whose: 'men', kind: meaning(term, 'kind')?.kind ?? null })
    }
  return told
}

const NEAR = 3
const ALSO = cue('also')
/** “would fit womens 14 too”, “also suits men”, “I’m a womens 10”: whom it would do for besides, or who stands in it. */
function isOfWhomItFits({ tokens, terms }: TextRead, { from }: Term): boolean {
  for (let at = from; at > from - NEAR && at >= 0; at--) {
    const its = termAt(terms, at)
    if ((its && its.from < from && means(its, 'fits', 'model')) || ALSO.test(tokens[at]?.text)) return true
    if (at < from && (tokens[at]?.kind !== 'word' || !(means(its, 'light', 'size') || ALSO.test(tokens[at - 1]?.text)))) return false
  }
  return false
}
/** “men’s department”, “menswear-inspired”. */
function isStyle({ tokens }: TextRead, { to }: Term): boolean {
  const at = tokens[to]?.text === '-' ? to + 1 : to
  return BESIDE.test(tokens[at]?.text)
}

const FURTHEST = 6
/** “mens vintage wool jacket”: the garment behind it, past words that only describe. */
function kindAhead({ tokens, terms }: TextRead, { to }: Term): GarmentKind | undefined {
  for (let at = to; at < to + FURTHEST; at++) {
    const token = tokens[at]
    if (token === undefined || token.kind === 'break') return undefined
    if (token.kind === 'mark' && !isOneOf(token, "'/&-")) return undefined
    const its = termAt(terms, at)
    const kind = meaning(its, 'kind')?.kind
    if (kind !== undefined) return kind
    // “plus size” is a word of it
    if (token.kind === 'word' && !means(its, 'size') && means(its, 'light', 'from', 'to', 'but', 'model', 'fits')) return undefined
  }
  return undefined
}
/** Right behind it stands a size, or nothing more. */
function headsASize({ tokens, terms }: TextRead, { to }: Term): boolean {
  const next = tokens[to]
  return (
    next === undefined ||
    next.kind === 'break' ||
    next.kind === 'digits' ||
    (next.kind === 'mark'
      ? isOneOf(next, '.,;:!)|/-')
      : isLetterSize(next.text) || means(termAt(terms, to), 'size', 'region', 'letterSize'))
  )
}

const FOR_ONE = cue('forOne')
/** “waistcoat for men”, “veste noire femme”: the garment before it, past what it is made of. */
function kindBehind({ tokens, terms }: TextRead, { from }: Term): GarmentKind | undefined {
  for (let at = from - 1; at >= Math.max(0, from - NEAR); at--) {
    if (tokens[at]?.kind !== 'word') return undefined
    const its = termAt(terms, at)
    const kind = meaning(its, 'kind')?.kind
    if (kind !== undefined) return kind
    if (!FOR_ONE.test(tokens[at]?.text) && !means(its, 'colour', 'fibre', 'structure', 'made', 'trait')) return undefined
  }
  return undefined
}

const COLLAR = cue('collarSize')
const SIZE_WORD = cue('sizeWord')
/** “collar size 16”, “size 16 collar”: inches, or centimetres. */
function isCollarSize({ tokens, terms }: TextRead): boolean {
  const said = (what: Cue, from: number, to: number): boolean => {
    for (let at = Math.max(0, from); at < to; at++) if (what.test(tokens[at]?.text ?? '')) return true
    return false
  }
  const isOne = (term: Term): boolean => {
    const [from, to] = [term.from - 1, term.to + 2]
    if (!said(COLLAR, from, to) || !(means(term, 'size') || said(SIZE_WORD, from, to))) return false
    const value = Number((tokens[term.to]?.kind === 'digits' ? tokens[term.to] : tokens[term.to + 1])?.text)
    return (value >= COLLAR_IN.least && value <= COLLAR_IN.most) || (value >= COLLAR_CM.least && value <= COLLAR_CM.most)
  }
  return termsAs(terms, 'size').some(isOne) || termsAs(terms, 'point').some(isOne)
}
const COLLAR_IN = { least: 14, most: 20 }
const COLLAR_CM = { least: 35, most: 50 }

/** Sizes of the English-speaking countries from 0 on are women's: men's clothes there go by inches and letters. */
const OF_WOMEN = /^(?:UK|US|AU|NZ) (\d{1,2})\b/
const MOST_OF_WOMEN = 26
/** A chest in inches or centimetres, and how long: suits alone. */
const OF_SUITS = /^\d\d[RSLXT]$/

function byLabel(label: string, kind: GarmentKind | null): Whose | undefined {
  const women = OF_WOMEN.exec(label)
  if (women !== null && Number(women[1]) <= MOST_OF_WOMEN) return 'women'
  if (OF_SUITS.test(label) && (kind === null || SHAPE[kind] === 'upper')) return 'men'
  // all else is a size of both, but on what women alone wear
  return /\d/.test(label) && (kind === 'dress' || kind === 'skirt') ? 'women' : undefined
}

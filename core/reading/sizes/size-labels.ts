/** Sizes as the label has them: W32 L34, 32 x 34, UK 12, size M, age 7-8. What they take is no measurement. */
import type { Quantity } from '../quantities/quantities.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, type Term, termAt } from '../text/terms.ts'
import { slice, type TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import type { SizeHead } from './size-heads.ts'
import { type Around, isOtherThanLabel, moreShorthand, pairAt, WAIST, within } from './size-pair.ts'
import { agesFrom, isLetterSize, isShort40, LETTERS, legAfter, letterSize, pairedWith, suitSize, timesLarge } from './size-words.ts'

export interface SizeLabels {
  labels: string[]
  /** Quantities that are sizes. */
  taken: Set<Quantity>
  /** Every place of a size. */
  places: SizeHead[]
  /** Sizes that head a line: what follows is of them. */
  heads: SizeHead[]
  /** Pairs after “measures”: waist and inside leg. */
  pairs: [Quantity, Quantity][]
}

const BY_CAPITALS = new Set(['it', 'de', 'us', 'int', 'au'])

const ALSO = cue('also')
const WAIST_WORD = cue('waistOfSize')

/** Size labels, left to right, each once. Linear. */
export function sizeLabelsOf(around: Around): SizeLabels {
  const { tokens, terms } = around
  const byFrom = new Map(around.quantities.map((one) => [one.from, one]))
  const found: SizeLabels = { labels: [], taken: new Set(), places: [], heads: [], pairs: [] }
  const add = ({ label, taken }: Size, from: number) => {
    found.places.push({ from, label })
    if (!found.labels.includes(label)) found.labels.push(label)
    for (const one of taken) found.taken.add(one)
  }
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token
    // “size small (also have medium)”: what a title offers besides
    if (around.title && ALSO.test(token.text)) break
    if (token.kind === 'break' || token.kind === 'mark' || token.kind === 'fraction') continue
    const quantity = byFrom.get(at)
    if (quantity ? found.taken.has(quantity) : saysNoSize(around, at)) continue
    const pair = quantity || token.text === 'w' || WAIST_WORD.test(token.text) ? pairAt(around, byFrom, at) : null
    if (pair && (pair.measured || (around.legs && !around.title && isOtherThanLabel(around, pair, found.labels))))
      found.pairs.push([pair.waist, pair.leg])
    else if (pair) add({ label: `W${pair.waist.value} L${pair.leg.value}`, taken: [pair.waist, pair.leg] }, at)
    const whole = pair ? null : sizeAt(around, byFrom, at)
    if (whole) add(whole, at)
    if (whole && startsLine(around, at) && leadsToPoint(around, whole.to)) found.heads.push({ from: at, label: whole.label })
    if (pair || whole) {
      at = (pair ? Math.max(pair.waist.to, pair.leg.to) : (whole?.to ?? at + 1)) - 1
      continue
    }
    const term = termAt(terms, at)
    if (term?.from === at && means(term, 'age')) {
      const years = byFrom.get(term.to)
      if (years && years.unit === null) add({ label: `age ${agesFrom(around, years)}`, taken: [years] }, at)
      continue
    }
    const letter = isLetterSize(token.text) ? `${timesLarge(around, at)}${LETTERS[token.text] ?? token.text.toUpperCase()}` : null
    if (letter !== null && headsLine(around, at)) found.heads.push({ from: at, label: letter })
    if (letter !== null && isTitleSize(around, byFrom, at)) add({ label: letter, taken: [] }, at)
    if (term?.from === at && means(term, 'size') && !(means(term, 'point') && isListed(around, byFrom, term))) {
      const after = sizeAfter(around, byFrom, term.to, at)
      if (after) {
        add(after, at)
        if (startsLine(around, at) || headsPart(around, at, Math.max(term.to, ...after.taken.map(({ to }) => to))))
          found.heads.push({ from: at, label: after.label })
        at = Math.max(at, ...after.taken.map(({ to }) => to - 1))
      }
    }
  }
  return found
}

/** A word that means nothing here, is no letter of a size and stands before none of its words: what most words of a text are. */
function saysNoSize({ tokens, terms }: Around, at: number): boolean {
  const { kind, text } = tokens[at] as Token
  if (kind !== 'word' || termAt(terms, at) !== undefined) return false
  return text !== 'w' && !WAIST_WORD.test(text) && !isLetterSize(text) && !SIZE_BEHIND.test(tokens[at + 1]?.text)
}

interface Size {
  label: string
  /** The figures in it. */
  taken: Quantity[]
}

/** A size that needs no word beside it: W34 on legs, UK 12, 40S, 42R. `to`: the token behind it. */
function sizeAt(around: Around, byFrom: Map<number, Quantity>, at: number): (Size & { to: number }) | null {
  const { tokens } = around
  const token = tokens[at] as Token
  // W34 glued, alone, on legs: the label
  const glued = token.text === 'w' && around.legs && tokens[at + 1]?.spaced === false ? byFrom.get(at + 1) : undefined
  if (glued && glued.unit === null && within(glued.value, WAIST) && !moreShorthand(around, glued.to))
    return { label: `W${glued.value}`, taken: [glued], to: at + 1 }
  const named = namedBehind(around, byFrom, at)
  if (named) return named
  const region = regionAt(around, byFrom, at)
  if (region) return region
  if (isShort40(around, at)) return { label: `${token.text}S`, taken: [], to: at + 2 }
  const quantity = byFrom.get(at)
  const suit = token.kind === 'digits' && quantity && quantity.unit === null && suitSize(around, quantity)
  return suit ? { label: suit, taken: [quantity], to: quantity.to + 1 } : null
}

const SIZE_BEHIND = cue('sizeBehind')

/** Mサイズ · 38サイズ · 11号: a size with its word glued behind it. */
function namedBehind(around: Around, byFrom: Map<number, Quantity>, at: number): (Size & { to: number }) | null {
  const { tokens } = around
  const token = tokens[at] as Token
  const word = tokens[at + 1]
  if (word?.kind !== 'word' || !SIZE_BEHIND.test(word.text) || (word.spaced && !startsLine(around, at))) return null
  const quantity = byFrom.get(at)
  if (token.kind === 'word') {
    const letters = letterSize(around, at)
    return letters === null ? null : { label: letters, taken: [], to: at + 2 }
  }
  if (token.kind !== 'digits' || token.text.length > 3 || (quantity && quantity.unit !== null)) return null
  return { label: quantity ? written(quantity) : token.text, taken: quantity ? [quantity] : [], to: at + 2 }
}

/** “M: chest 52”, “L - chest 54”: a size in letters at the start of a line of measures. */
const headsLine = (around: Around, at: number): boolean =>
  !around.title && startsLine(around, at) && isOneOf(around.tokens[at + 1], ':-') && around.tokens[at + 2]?.kind === 'word'

/** “Wool coat M”, “Mens medium shirt”: a title's letters are a size where they are capitals; “S: 40” is none. */
function isTitleSize(around: Around, byFrom: ReadonlyMap<number, Quantity>, at: number): boolean {
  const token = around.tokens[at] as Token
  if (!around.title || token.kind !== 'word' || !capital(around, token)) return false
  if (token.text.length > 3) return around.language === 'en' && standsAlone(around, at)
  return token.text.length > 1 || !(isOneOf(around.tokens[at + 1], ':') || byFrom.has(at + 1))
}

/** “…, size 10 measures bust 36”: in the middle of a line a size heads what is measured right behind it. */
function headsPart(around: Around, from: number, to: number): boolean {
  return isOneOf(around.tokens[from - 1], ',;.') && leadsToPoint(around, to)
}
/** “UK 12: chest 36”: is it the name of a measure that follows? */
function leadsToPoint({ tokens, terms }: Around, to: number): boolean {
  let at = isOneOf(tokens[to], ':=(-') ? to + 1 : to
  while (at < to + 3 && means(termAt(terms, at), 'measures', 'light', 'heading')) at++
  return means(termAt(terms, at), 'point')
}

/** “épaules 41, taille 46, hauteur 68”, “taille 38 x2”: between measures, or doubled, the word is the waist. */
function isListed({ tokens, terms }: Around, byFrom: ReadonlyMap<number, Quantity>, term: Term): boolean {
  const its = byFrom.get(isOneOf(tokens[term.to], ':=-') ? term.to + 1 : term.to)
  if (its === undefined) return false
  if (means(termAt(terms, its.to), 'basis')) return true
  if (!isOneOf(tokens[term.from - 1], ',;/|•-')) return false
  for (let at = term.from - 2; at >= Math.max(0, term.from - 6); at--) {
    const before = byFrom.get(at)
    const name = before && termAt(terms, isOneOf(tokens[at - 1], ':=-') ? at - 2 : at - 1)
    if (before) return means(name, 'point') && !means(name, 'size')
  }
  return false
}

const FOR_WHOM = cue('forWhom')

const startsLine = ({ tokens }: TextRead, at: number): boolean =>
  at === 0 || tokens[at - 1]?.kind === 'break' || (tokens[at - 1]?.kind === 'mark' && isOneOf(tokens[at - 1], '.;•*/)|-'))
/** “Wool coat, large”, “Mens medium shirt”: in a title a size in letters stands at an end or beside whom it is for. */
const standsAlone = ({ tokens, terms }: TextRead, at: number): boolean =>
  tokens[at + 1] === undefined ||
  tokens[at + 1]?.kind === 'mark' ||
  tokens[at - 1]?.kind === 'mark' ||
  means(termAt(terms, at - 1), 'size', 'use') ||
  FOR_WHOM.test(tokens[at - 1]?.text)
const capital = ({ original }: Around, token: Token): boolean =>
  /^\P{Ll}+$/u.test(original.slice(token.start, token.end)) || token.text.length > 4

const TAG = cue('tag')

/** The word of a size: the labels of tags are sizes even with a unit, “size 30" waist” is not. */
function sizeAfter(around: Around, byFrom: Map<number, Quantity>, from: number, word: number): Size | null {
  const { tokens, terms } = around
  const said = tokens.slice(word, from).map(({ text }) => text)
  const tag = said.some((text) => TAG.test(text))
  const waist = said.some((text) => WAIST_WORD.test(text))
  let at = from
  for (let steps = 0; steps < 6; steps++, at++) {
    const token = tokens[at]
    if (token === undefined || token.kind === 'break') return null
    const quantity = byFrom.get(at)
    if (quantity) {
      if (pairAt(around, byFrom, at)) return null // found on its own
      if (quantity.unit !== null && !tag) return null
      if (quantity.value > 64 || quantity.problem || quantity.height) return null
      const next = termAt(terms, quantity.to)
      if (quantity.unit !== null && means(next, 'point') && !waist) return null
      const suit = suitSize(around, quantity)
      if (suit) return { label: suit, taken: [quantity] }
      // “size 12 UK”
      const region = regionAt(around, byFrom, at)
      if (region) return region
      // “size 34 waist, 32 length”: the waist and the leg of a label
      const named = quantity.unit === null && meaning(next, 'point')?.point === 'waist' && next?.from === quantity.to ? next : null
      const inside = named ? legAfter(around, byFrom, named.to) : null
      if (inside) return { label: `W${quantity.value} L${inside.value}`, taken: [quantity, inside] }
      const second = tag && !waist ? pairedWith(around, byFrom, quantity) : null
      if (second) return { label: `${quantity.value}x${second.value}`, taken: [quantity, second] }
      if (!waist) return { label: quantity.range ? `${quantity.low}-${quantity.high}` : String(quantity.value), taken: [quantity] }
      const leg = legAfter(around, byFrom, quantity.to)
      return leg
        ? { label: `W${quantity.value} L${leg.value}`, taken: [quantity, leg] }
        : { label: `W${quantity.value}`, taken: [quantity] }
    }
    if (token.kind === 'word') {
      const letters = letterSize(around, at)
      if (letters) return { label: letters, taken: [] }
      const term = termAt(terms, at)
      if (means(term, 'not', 'basis')) return null
      if (means(term, 'size', 'light') && term) {
        at = term.to - 1
        continue
      }
      const region = regionAt(around, byFrom, at)
      if (region) return region.taken.length > 0 ? region : null // EU38 and UK M are found on their own
      // a language's own: P, G, GG
      return means(term, 'letterSize') && term?.from === at ? { label: slice(around, at, term.to).toUpperCase(), taken: [] } : null
    }
    if (token.kind === 'digits') {
      const letters = timesLarge(around, at + 1) === '' ? null : letterSize(around, at + 1)
      return letters === null ? null : { label: token.text + letters, taken: [] }
    }
    if (!isOneOf(token, `:-"'=(.`)) return null
  }
  return null
}

const written = (one: Quantity): string => (one.range ? `${one.low}-${one.high}` : String(one.value))

function regionNamed(around: Around, at: number): string | null {
  const word = around.tokens[at]
  if (word?.kind !== 'word' || !means(termAt(around.terms, at), 'region')) return null
  if (BY_CAPITALS.has(word.text) && !capital(around, word)) return null
  return word.text.length <= 3 ? word.text.toUpperCase() : word.text[0]?.toUpperCase() + word.text.slice(1)
}

/** UK 12 · EU38 · 12 UK · US 8-10. */
function regionAt(around: Around, byFrom: Map<number, Quantity>, at: number): (Size & { to: number }) | null {
  const { tokens, terms } = around
  const token = tokens[at] as Token
  const region = regionNamed(around, at)
  if (region !== null) {
    let next = at + 1
    while (isOneOf(tokens[next], ':.-') || (tokens[next]?.kind === 'word' && means(termAt(terms, next), 'size') && next < at + 3)) next++
    const quantity = byFrom.get(next)
    if (quantity && quantity.unit === null && quantity.value <= 64)
      return { label: `${region} ${written(quantity)}`, taken: [quantity], to: quantity.to }
    // EU38: glued to its country it is no figure
    const glued = next === at + 1 ? tokens[next] : undefined
    if (glued?.kind === 'digits' && !glued.spaced && !quantity && Number(glued.text) <= 64)
      return { label: `${region} ${Number(glued.text)}`, taken: [], to: next + 1 }
    const letters = tokens[next]?.kind === 'word' ? letterSize(around, next) : null
    if (letters && capital(around, tokens[next] as Token)) return { label: `${region} ${letters}`, taken: [], to: next + 1 }
    return null
  }
  if (token.kind !== 'digits') return null
  const quantity = byFrom.get(at)
  if (!quantity || quantity.unit !== null || quantity.value > 64) return null
  const after = regionNamed(around, quantity.to)
  // “36 eu” but not “UK 12 EU 40”: the region belongs to the number behind it
  if (after === null || byFrom.has(quantity.to + 1)) return null
  return { label: `${after} ${written(quantity)}`, taken: [quantity], to: quantity.to + 1 }
}

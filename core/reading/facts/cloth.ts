/** The cloth as told: fibres with their shares, structure, traits, how far it stretches. */
import type { Structure, Trait } from '../../garment/garment-input.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { Reading } from '../reading.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, type Term, termAt, termsAs } from '../text/terms.ts'
import { isDenied, type TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import { type FibreAt, sharesOf } from './fibre-shares.ts'

/** Traits that are words of prose too; they count only beside what they describe. */
const PROSE = cue('traitInProse')
const SKIRTED = new Set<GarmentKind>(['skirt', 'dress'])

/** What words say of the cloth, before it is known of which kind of garment it is. */
export interface ClothSaid extends Pick<Reading['cloth'], 'structure' | 'stretchPercent' | 'washed'> {
  fibres: ReadonlyMap<string, number | null>
  traits: ReadonlySet<Trait>
  /** How far it gives, in words. */
  inWords: keyof typeof GIVES | null
}

export function clothSaid(texts: readonly TextRead[]): ClothSaid {
  const fibres = new Map<string, number | null>()
  const traits = new Set<Trait>()
  let structure: Structure | null = null
  let stretchPercent: number | null = null
  let inWords: keyof typeof GIVES | null = null
  texts.forEach((text, index) => {
    const title = index === 0 && texts.length > 1
    readFibres(text, fibres)
    for (const term of termsAs(text.terms, 'structure', 'trait', 'stretch')) {
      const its = meaning(term, 'structure')
      if (its && structure === null && isCloth(text, term, title)) structure = its.structure
      for (const sense of term.meaning.senses) {
        if (sense.role === 'trait' && isTrait(text, term, sense.trait, title)) {
          traits.add(sense.trait)
          if (sense.trait === 'rigid' && saysNoStretch(text, term)) stretchPercent ??= 0
        }
      }
      if (means(term, 'stretch')) stretchPercent = stretchOf(text, term) ?? stretchPercent
    }
    inWords ??= givesInWords(text)
  })
  const washed = texts.some(({ terms }) => terms.by.has('unwashed')) ? false : null
  return { fibres, traits, structure, stretchPercent, inWords, washed }
}

/** The same on a kind of garment: only skirts are pleated, and knits give more than cloth that is woven. */
export function clothOn(
  { fibres, traits, structure, stretchPercent, inWords, washed }: ClothSaid,
  kind: GarmentKind | null
): Reading['cloth'] {
  const withShare = [...fibres].filter(([, percent]) => percent !== null)
  const kept = withShare.length > 0 ? withShare : [...fibres]
  const isKnit = structure === 'knit' || (structure === null && kind !== null && KNITTED.has(kind))
  const gives = inWords === null ? null : GIVES[inWords][isKnit ? 'knit' : 'woven']
  return {
    fibres: kept.map(([fibre, percent]) => ({ fibre, percent })),
    traits: [...traits].filter((trait) => trait !== 'pleated' || (kind !== null && SKIRTED.has(kind))),
    stretchPercent: stretchPercent ?? (inWords !== null && labelTellsMore(inWords, fibres.get('elastane')) ? null : gives),
    structure,
    washed
  }
}

/** From this share on, %, cloth gives more than "very stretchy" says of other cloth (stretch classes: leggings, shaping trousers). */
const MUCH_ELASTANE = 8
/** A share of elastane tells more than "some stretch"; that it gives a lot, or no more, tells more than a small one. */
const labelTellsMore = (words: keyof typeof GIVES, elastane: number | null | undefined): boolean =>
  elastane !== undefined && (words === 'stretchSome' || (words === 'stretchMuch' && (elastane ?? 0) >= MUCH_ELASTANE))

const KNITTED: ReadonlySet<GarmentKind> = new Set<GarmentKind>(['knit-top', 'jumper'])
/** What words make of a pull by hand, %: the typical figures of cloth of 3–5, 2, 1 and no elastane, and of knits (see core/garment/stretch.ts). */
const GIVES = {
  stretchMuch: { woven: 26, knit: 60 },
  stretchSome: { woven: 15, knit: 30 },
  stretchLittle: { woven: 9, knit: 18 },
  stretchGone: { woven: 0, knit: 0 }
} as const
/** The first that is not denied, what is gone before what was. */
function givesInWords(text: TextRead): keyof typeof GIVES | null {
  const told = (['stretchGone', 'stretchMuch', 'stretchLittle', 'stretchSome'] as const).find((role) =>
    termsAs(text.terms, role).some((term) => role === 'stretchGone' || !isDenied(text, term))
  )
  return told ?? null
}

/** The sum of the shares, when it is told and isn't a hundred. */
export function wrongSum(fibres: Reading['cloth']['fibres']): number | null {
  const shares = fibres.flatMap(({ percent }) => (percent === null ? [] : [percent]))
  const sum = shares.reduce((total, percent) => total + percent, 0)
  return shares.length > 0 && Math.abs(sum - 100) > 1 ? sum : null
}

const IMITATING = cue('imitating')

/** What follows or stands before makes it another thing: leather belt, faux silk, satin lining, wool-look. */
function isCloth(text: TextRead, term: Term, title: boolean): boolean {
  // “polyester with elastane” is of both
  if (WITH.test(text.tokens[term.from - 1]?.text) && !(means(term, 'fibre') && means(termAt(text.terms, term.from - 2), 'fibre')))
    return false
  const next = termAt(text.terms, term.to)
  const glued = next?.from === term.to
  if (glued && means(next, 'imitation') && !means(next, 'kind')) return false
  if (isOfLining(text, term)) return false
  if (!title && glued && means(next, 'detail', 'thing')) return false
  if (means(termAt(text.terms, term.from - 1), 'imitation') && IMITATING.test(text.tokens[term.from - 1]?.text)) return false
  return !isDenied(text, term)
}

/** “viscose lining”, “silk-lined”, and a lining that has its cloth in its name. */
function isOfLining({ tokens, terms }: TextRead, term: Term): boolean {
  if (meaning(term, 'made')?.fact.fact === 'lined') return true
  const hyphen = tokens[term.to]?.text === '-' && !tokens[term.to]?.spaced && tokens[term.to + 1]?.spaced === false
  const behind = hyphen ? term.to + 1 : term.to
  const next = termAt(terms, behind)
  return next?.from === behind && means(next, 'lining') && !means(next, 'shell')
}

/** “skirt with leather straps”: beside the cloth. */
const WITH = cue('with')

function isTrait(text: TextRead, term: Term, trait: Trait, title: boolean): boolean {
  if (!isCloth(text, term, title) && trait !== 'rigid') return false
  const word = text.tokens[term.from]?.text
  if (!title && term.to === term.from + 1 && PROSE.test(word)) {
    const next = termAt(text.terms, term.to)
    return means(next, 'kind', 'structure') || means(termAt(text.terms, term.from - 1), 'colour')
  }
  return true
}

const ELASTICITY = cue('elasticity')

const saysNoStretch = ({ tokens }: TextRead, term: Term): boolean =>
  tokens.slice(term.from, term.to).some(({ text }) => ELASTICITY.test(text))

/** “30% stretch”, “stretch: 30 %”, “no stretch”; a word alone tells no number. */
function stretchOf(text: TextRead, term: Term): number | null {
  if (isDenied(text, term)) return 0
  const before = percentBefore(text, term.from, 3)
  const after = percentAfter(text, term.to, 4)
  const one = before ?? after
  return one !== null && one.value <= 200 && !means(termAt(text.terms, term.to), 'fibre') ? one.value : null
}

interface Percent {
  value: number
  at: number
}
const PERCENT = cue('percent')
const isSign = (token: Token | undefined): boolean => token !== undefined && (token.text === '%' || PERCENT.test(token.text))
const decimalAt = ({ tokens }: TextRead, at: number): number => {
  const whole = Number(tokens[at]?.text)
  const point = tokens[at - 1]
  return point && isOneOf(point, '.,') && !point.spaced && tokens[at - 2]?.kind === 'digits' && !tokens[at]?.spaced
    ? Number(`${tokens[at - 2]?.text}.${tokens[at]?.text}`)
    : whole
}

function percentBefore(text: TextRead, from: number, reach: number): Percent | null {
  const { tokens } = text
  for (let at = from - 1; at >= from - reach && at >= 0; at--) {
    const token = tokens[at]
    if (token === undefined || token.kind === 'break' || isOneOf(token, ',;.:/|+&')) return null
    // “65/35 % poly cotton”: the sign is of both figures (see fibre-shares.ts)
    if (isSign(token) && isOneOf(tokens[at - 2], '/-') && tokens[at - 3]?.kind === 'digits') return null
    if (isSign(token) && tokens[at - 1]?.kind === 'digits') return { value: decimalAt(text, at - 1), at: at - 1 }
    if (token.kind === 'digits') return null
  }
  return null
}

function percentAfter(text: TextRead, to: number, reach: number): Percent | null {
  const { tokens } = text
  for (let at = to; at < to + reach; at++) {
    const token = tokens[at]
    if (token === undefined || token.kind === 'break' || isOneOf(token, ';|+&')) return null
    if (token.text === ',' && !(at === to && closesPart(text, at + 1))) return null
    if (token.kind !== 'digits') continue
    const decimals = isOneOf(tokens[at + 1], '.,') && !tokens[at + 1]?.spaced && tokens[at + 2]?.kind === 'digits'
    const last = decimals ? at + 2 : at
    return isSign(tokens[last + 1]) ? { value: decimalAt(text, last), at: last } : null
  }
  return null
}

/** “Silk, 100 %.”: a share by itself between two marks. */
function closesPart({ tokens }: TextRead, at: number): boolean {
  const after = tokens[at + 2]
  return tokens[at]?.kind === 'digits' && isSign(tokens[at + 1]) && (after === undefined || after.kind === 'break' || isOneOf(after, ',;.'))
}

/** Shares stand before the name or after it; a lining is not the cloth. */
function readFibres(text: TextRead, fibres: Map<string, number | null>): void {
  const { terms, layout } = text
  const used = new Set<number>()
  const found: FibreAt[] = []
  let sentence = -1
  let lining = false
  // of what a garment is lined in, the shares told so far
  let linedShares: number | null = null
  let seen = 0
  let shell: Term | null = null
  for (const term of termsAs(terms, 'fibre', 'shell', 'lining', 'made', 'partLined')) {
    const linedIn = isLinedIn(text, term)
    if (!linedIn && !means(term, 'fibre', 'shell', 'lining')) continue
    if (layout.sentence[term.from] !== sentence) {
      sentence = layout.sentence[term.from] as number
      lining = false
      linedShares = null
      seen = Math.max(seen, sentenceStart(text, term.from))
    }
    // “100 % silk, trim: polyester”
    for (; seen < term.from; seen++) lining ||= opensOtherPart(text, seen)
    seen = term.to
    if (means(term, 'shell')) {
      lining = false
      shell = term
    } else if (means(term, 'lining') && opensPart(text, term)) lining = !isJoined(text, shell, term)
    else if (linedIn) lining = true
    if (linedIn || (means(term, 'lining') && OF_CLOTH.test(text.tokens[term.to - 1]?.text))) linedShares = 0
    const fibre = meaning(term, 'fibre')?.fibre
    if (fibre === undefined) continue
    const before = percentBefore(text, term.from, 4)
    // “fully lined in silk, 100 % wool”: more than the lining can be made of is of the garment
    if (linedShares !== null && before !== null && linedShares + before.value > 100) lining = false
    if (linedShares !== null) linedShares += before?.value ?? 100
    if (lining || !isCloth(text, term, true)) continue
    found.push({ fibre, from: term.from, to: term.to })
    const after = percentAfter(text, term.to, 4)
    // “linen mix (52% linen 48% cotton)”: a fibre that has its share takes no other's
    const known = (fibres.get(fibre) ?? null) !== null
    const percent = known ? null : before && !used.has(before.at) ? before : after && !used.has(after.at) ? after : null
    // camel is a colour too, but where its share is told
    if (percent === null && !known && means(term, 'colour') && !means(term, 'kind')) continue
    if (percent) used.add(percent.at)
    const value = percent !== null && percent.value > 0 && percent.value <= 100 ? percent.value : null
    if ((fibres.get(fibre) ?? null) === null) fibres.set(fibre, value)
  }
  if ([...fibres.values()].every((percent) => percent === null))
    for (const [fibre, share] of sharesOf(text, found)) fibres.set(fibre, share)
}

const OTHER_PART = cue('otherPart')
/** A part beside the outer cloth, with its own fibres behind it: “underskirt: …”, “trim 100 %”, “zip polyester”. */
function opensOtherPart({ tokens, terms }: TextRead, at: number): boolean {
  if (!OTHER_PART.test(tokens[at]?.text)) return false
  const next = tokens[at + 1]
  if (next === undefined || next.kind === 'break') return false
  if (next.text === ':' || next.text === '=') return true
  // “trim 100 % polyester”
  if (next.kind === 'digits') return isSign(tokens[at + 2])
  return next.kind === 'word' && next.spaced && means(termAt(terms, at + 1), 'fibre') && isOneOf(tokens[at - 1], ',.;:/')
}
function sentenceStart({ layout }: TextRead, at: number): number {
  let from = at
  while (from > 0 && at - from < FARTHEST_PART && layout.sentence[from - 1] === layout.sentence[at]) from--
  return from
}
/** So far before the first fibre of a sentence its part may be named. */
const FARTHEST_PART = 12
/** “shell/lining: polyester”: what follows is of both. */
const isJoined = ({ tokens, terms }: TextRead, shell: Term | null, lining: Term): boolean =>
  shell !== null && shell.to + 1 === lining.from && (isOneOf(tokens[shell.to], '/·&+') || means(termAt(terms, shell.to), 'and'))

/** “fully lined in viscose”, “half lined with 100 % silk”; “fully lined in great condition” says nothing of a cloth. */
function isLinedIn({ tokens, terms }: TextRead, term: Term): boolean {
  const made = meaning(term, 'made')?.fact
  if (!(made?.fact === 'lined' && made.value) && !means(term, 'partLined')) return false
  if (!OF_CLOTH.test(tokens[term.to]?.text)) return false
  const first = means(termAt(terms, term.to + 1), 'light') ? term.to + 2 : term.to + 1
  return tokens[first]?.kind === 'digits' || means(termAt(terms, first), 'fibre')
}

const LINING = cue('liningName')

const OF_CLOTH = cue('ofCloth')

/** “Lining: …”, “lined in …”, “lining 100 %”, “lining viscose”. */
function opensPart({ tokens, terms }: TextRead, term: Term): boolean {
  const next = tokens[term.to]
  return (
    next !== undefined &&
    // a word that is a preposition too heads its part only before a colon
    ((next.kind === 'digits' && !means(term, 'light')) ||
      isOneOf(next, ':=-') ||
      OF_CLOTH.test(next.text) ||
      (LINING.test(tokens[term.to - 1]?.text) && means(termAt(terms, term.to), 'fibre')))
  )
}

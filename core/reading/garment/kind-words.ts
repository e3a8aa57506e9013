/** What the words of a listing say of its kind: the nouns of title, text and page, how it is made, its style, its cut, its cloth. */
import type { Made } from '../../garment/garment-input.ts'
import type { Facet } from '../../ids/cut.ts'
import { GARMENT_KINDS, SHAPE } from '../../ids/kinds.ts'
import { oncePer } from '../../once.ts'
import { facetsOf } from '../../wearer/cut/cut-table.ts'
import type { KindSign } from '../languages/lexicon.ts'
import { cue } from '../text/cues.ts'
import { means, type Term, termAt } from '../text/terms.ts'
import { isDenied, readText, type TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import { byKind } from './by-kind.ts'
import { addTo, type Because, type Evidence, type KindSums, MOST, REPEATED, WEIGHT } from './kind-evidence.ts'
import { type Candidate, isFirstLeading, isOfBeside, type Noun, nounsOf } from './nouns.ts'

/** What a page tells of itself beside title and text. */
export interface PageWords {
  /** What its data call it, where that is not its title. */
  name: string | null
  /** Where it stands among what is sold. */
  category: string | null
  /** The path of its address. */
  path: string | null
}

export interface KindWords {
  evidence: Evidence[]
  /** What that adds up to. */
  sums: KindSums
  /** What the word that names a kind tells beside it. */
  made: ReadonlyMap<Candidate, Partial<Made>>
  /** It is of denim: legs of it are jeans. */
  denim: boolean
}

const DENIM = cue('denim')
/** “Selvedge denim, broken in”: told so early, it is of the garment. */
const EARLY = 60
function opensWithDenim({ tokens }: TextRead): boolean {
  const end = Math.min(EARLY, tokens.length)
  for (let at = 0; at < end; at++) {
    const { kind, text } = tokens[at] as Token
    if (kind === 'word' && DENIM.test(text)) return true
  }
  return false
}

/** All that words say, before any figure is known. */
export function kindWords(title: TextRead | null, text: TextRead, page: PageWords, language: string): KindWords {
  const evidence: Evidence[] = []
  const made = new Map<Candidate, Partial<Made>>()
  const titleNouns = title === null ? [] : nounsOf(title, language)
  const textNouns = nounsOf(text, language)
  for (const { kind, made: its, place } of [...titleNouns, ...textNouns])
    if (!made.has(kind) && (place === 'head' || place === 'name')) made.set(kind, its)
  if (title) evidence.push(...titleEvidence(title, titleNouns, language))
  if (!titleNouns.some(isNamed)) evidence.push(...openingEvidence(text, textNouns, language))
  evidence.push(...textEvidence(text, textNouns))
  evidence.push(...pageEvidence(page, language))
  evidence.push(...signEvidence(title, text))
  evidence.push(...cutEvidence(title, text))
  const denim = (title !== null && opensWithDenim(title)) || opensWithDenim(text)
  const kept = withoutClothAlone(evidence)
  return { evidence: kept, sums: addTo({ of: [], sums: [] }, kept), made, denim }
}

/** Satin tells a blouse from a jersey top, and makes no blouse of a lining. */
function withoutClothAlone(evidence: Evidence[]): Evidence[] {
  if (!evidence.some(({ because }) => because === 'cloth')) return evidence
  const named = new Set(evidence.filter(({ because }) => NAMES.includes(because)).map((one) => one.for))
  return evidence.filter((one) => one.because !== 'cloth' || named.has(one.for))
}
const NAMES: readonly Because[] = ['title', 'text', 'page']

const both = (noun: Noun, weight: number, because: Because): Evidence[] => [
  { for: noun.kind, weight, because },
  // a vest is the one or the other until something tells
  ...(noun.or === null ? [] : [{ for: noun.or, weight: weight * OR, because }])
]
const OR = 0.6

/** “Denim shirt dress with jacket, boots”: its head, what stands beside, what comes in a later part. */
function titleEvidence(text: TextRead, nouns: readonly Noun[], language: string): Evidence[] {
  if (nouns.length === 0) return []
  const { modifier, later, furtherOn } = WEIGHT.title
  const heads = nouns.filter(({ place }) => place === 'head')
  // “Pinafore Lane, waxed coat”: a name that holds a garment's word may be all that the title tells
  const named = heads.length > 0 ? heads : nouns.filter(({ place }) => place === 'name')
  const [first, ...rest] = groupsOf(text, named)
  if (first === undefined) {
    // “with tags wool coat”: nothing stands before what would be beside it
    const [beside] = nouns.filter(({ place, from }) => place === 'beside' && from <= OPENING)
    return beside === undefined ? [] : both(beside, WEIGHT.title.beside, 'title')
  }
  const main = headOf(first, language)
  const evidence = both(main, headWeight(main), 'title')
  const add = (one: Noun, weight: number) => evidence.push(...both(one, weight, 'title'))
  for (const one of first) if (one !== main) add(one, otherWeight(one, main))
  for (const part of rest) for (const [index, one] of part.entries()) add(one, index === 0 && rest.length < LIST ? later : furtherOn)
  for (const one of nouns) if (one.place === 'modifier') add(one, modifier)
  if (heads.length > 0) for (const one of nouns) if (one.place === 'name') add(one, WEIGHT.title.name)
  return evidence
}

/** Where no title tells it, what the text opens with is told like one, a little less surely. */
function openingEvidence(text: TextRead, nouns: readonly Noun[], language: string): Evidence[] {
  const first = nouns.find((noun) => isNamed(noun) && !(noun.kind === 'thing' && noun.passing))
  if (first === undefined) return []
  const sentence = text.layout.sentence[first.from]
  const opening = nouns.filter(({ kind, passing, from }) => text.layout.sentence[from] === sentence && !(kind === 'thing' && passing))
  if (new Set(opening.map(({ kind }) => kind)).size >= A_LIST) return []
  return titleEvidence(text, opening, language).map((one) => ({ ...one, weight: one.weight * WEIGHT.text.opening, because: 'text' }))
}
const isNamed = ({ place }: Noun): boolean => place === 'head' || place === 'name'

/** So early a title has told nothing yet. */
const OPENING = 3

function headWeight({ kind, passing }: Noun): number {
  const { head, thing, passingHead } = WEIGHT.title
  return passing ? passingHead : kind === 'thing' ? thing : head
}

/** So many further parts that name garments are a list of words to be found by. */
const LIST = 3

const isWhole = ({ kind }: Noun): boolean => kind !== 'thing' && SHAPE[kind] === 'whole'
/** A part of a whole garment, or a word in passing, is hardly another. */
const otherWeight = (one: Noun, main: Noun): number =>
  one.passing || (isWhole(main) && !isWhole(one)) ? WEIGHT.title.passing : WEIGHT.title.other

/** Nouns by the parts of a title, as marks and “and” cut it. */
function groupsOf(text: TextRead, nouns: readonly Noun[]): Noun[][] {
  const groups: Noun[][] = []
  let last: Noun | undefined
  for (const noun of nouns) {
    if (last === undefined || isParted(text, last.to, noun.from)) groups.push([noun])
    else groups[groups.length - 1]?.push(noun)
    last = noun
  }
  return groups
}

function isParted({ tokens, terms }: TextRead, from: number, to: number): boolean {
  for (let at = from; at < to; at++) {
    const token = tokens[at]
    if (token?.kind === 'break') return true
    if (token?.kind === 'mark' && (isOneOf(token, ',;|/+&') || (isOneOf(token, '(:.-') && token.spaced !== false))) return true
    if (means(termAt(terms, at), 'and', 'or')) return true
  }
  return false
}

/** So many kinds in a row are words to be found by. */
const KEYWORDS = 2

/** What a row of words to be found by names most often, where one is named more often than the others. */
function mostNamed(group: readonly Noun[]): readonly Noun[] {
  const times = new Map<Candidate, number>()
  for (const { kind } of group) times.set(kind, (times.get(kind) ?? 0) + 1)
  const [first, second] = [...times].sort((a, b) => b[1] - a[1])
  return times.size < KEYWORDS || first === undefined || first[1] === (second?.[1] ?? 0)
    ? group
    : group.filter(({ kind }) => kind === first[0])
}

/** The last noun in English, the first in French and German; not one in passing, and a dress rather than the skirt of it. */
function headOf(all: readonly Noun[], language: string): Noun {
  const group = mostNamed(all)
  const order = isFirstLeading(language) ? group : [...group].reverse()
  const [first] = order as [Noun]
  const clear = order.filter(({ passing }) => !passing)
  const whole = clear.find(isWhole)
  return (whole !== undefined && clear[0]?.kind !== 'thing' ? whole : clear[0]) ?? first
}

/** What is named first and most often. */
function textEvidence(text: TextRead, nouns: readonly Noun[]): Evidence[] {
  if (nouns.length === 0) return []
  const kindsIn = new Map<number, Set<Candidate>>()
  for (const { kind, from } of nouns) {
    const sentence = text.layout.sentence[from] as number
    kindsIn.set(sentence, (kindsIn.get(sentence) ?? new Set()).add(kind))
  }
  const weights = new Map<Candidate, number[]>()
  const put = (kind: Candidate, weight: number) => {
    const known = weights.get(kind)
    if (known) known.push(weight)
    else weights.set(kind, [weight])
  }
  let first = true
  for (const noun of nouns) {
    const several = kindsIn.get(text.layout.sentence[noun.from] as number)?.size ?? 1
    const weight = mentionWeight(noun, several) * (first && noun.place === 'head' ? FIRST : 1)
    if (noun.place === 'head') first = false
    if (weight === 0) continue
    put(noun.kind, weight)
    if (noun.or !== null) put(noun.or, weight * OR)
  }
  return [...weights].map(([kind, list]) => ({ for: kind, weight: summed(list), because: 'text' }))
}
const FIRST = 1.5
/** A sentence that names so many kinds is a list of them. */
const A_LIST = 3
const POINTED_AT = 1.6

function mentionWeight({ kind, place, passing, pointedAt, fielded }: Noun, several: number): number {
  const { head, modifier, part, tag, named, thing, fielded: field } = WEIGHT.text
  if (fielded) return field
  if (place === 'beside' || place === 'aside') return 0
  if (place === 'tag') return tag
  if (place === 'modifier') return modifier
  if (place === 'part') return part
  if (place === 'name') return named
  const listed = several >= A_LIST ? (several > A_LIST ? 0.3 : 1) / several : 1
  return head * (kind === 'thing' ? thing : 1) * (passing ? 0.5 : 1) * (pointedAt ? POINTED_AT : 1) * listed
}

/** The heaviest whole, each further one less. */
const summed = (weights: readonly number[]): number =>
  [...weights].sort((a, b) => b - a).reduce((sum, weight, index) => sum + weight * (REPEATED[index] ?? 0), 0)

const SLUG = /[-_+%.]+/g
/** So many parts of a path are looked at, from its end. */
const PARTS = 6

/** “/womens/skirts/rust-88213”, “Clothing > Dresses”: a part that names two kinds says little of either. */
function pageEvidence({ name, category, path }: PageWords, language: string): Evidence[] {
  const evidence: Evidence[] = []
  if (name !== null) {
    const read = readText(name, language)
    for (const { for: candidate, weight } of titleEvidence(read, nounsOf(read, language), language))
      evidence.push({ for: candidate, weight: weight * WEIGHT.page.name, because: 'page' })
  }
  const parts: [string, number][] = [
    ...(category === null ? [] : partsOf(category).map((part): [string, number] => [part, WEIGHT.page.category])),
    ...(path === null ? [] : partsOf(path.replace(ADDRESS, '')).map((part): [string, number] => [part, WEIGHT.page.address]))
  ]
  const said = new Set<string>()
  for (const [part, weight] of parts) {
    if (said.has(part)) continue
    said.add(part)
    const read = readText(part, language)
    const heads = nounsOf(read, language).filter(({ place }) => place === 'head')
    const kinds = new Set(heads.map(({ kind }) => kind))
    const [one] = heads
    if (one === undefined || kinds.size > 1) continue
    evidence.push(...both(one, weight, 'page'))
  }
  return evidence
}
const ADDRESS = /^[a-z]+:\/\/[^/]*|[?#].*$/gi
const partsOf = (path: string): string[] =>
  path
    .slice(0, 2000)
    .split(/[/>|]/)
    .map((part) => part.replace(SLUG, ' ').trim())
    .filter((part) => part !== '')
    .slice(-PARTS)

/** How it is made, styles that name it, cloth that tells. Each group of words once, the title before the text. */
function signEvidence(title: TextRead | null, text: TextRead): Evidence[] {
  if (text.phrases.signs.length === 0 && !title?.phrases.signs.length) return []
  const evidence: Evidence[] = []
  const said = new Map<string, number>()
  for (const one of title === null ? [text] : [title, text])
    for (const term of one.phrases.signs) {
      if (term.from > FURTHEST) break
      if (isDenied(one, term) || isOfBeside(one, term)) continue
      for (const sense of term.meaning.senses) {
        // a style right beside a noun says of what sort that is: “shift dress”, “dungarees wide leg”, “duffle bag”
        if (sense.role !== 'sign' || (sense.as === 'style' && isOfNoun(one, term))) continue
        const because = sense.as
        if (!tellsKind(because)) continue
        const key = groupOf(sense)
        const times = said.get(key) ?? 0
        said.set(key, times + 1)
        if (times >= (because === 'style' ? 1 : TWICE)) continue
        const weight = signWeight(because, one === title) / (times + 1)
        for (const kind of sense.kinds) {
          const its = evidence.find((known) => known.for === kind && known.because === because)
          if (its) its.weight += weight
          else evidence.push({ for: kind, weight, because })
        }
      }
    }
  for (const its of evidence) its.weight = Math.min(its.weight, MOST.construction)
  return evidence
}
/** Words that tell the same of the same kinds are one group. */
const groupOf = oncePer(({ as, kinds }: Pick<KindSign, 'as' | 'kinds'>) => `${as} ${kinds.join()}`)
type Telling = Extract<KindSign['as'], Because>
const tellsKind = (as: KindSign['as']): as is Telling => as === 'construction' || as === 'style' || as === 'cloth'
const isOfNoun = ({ terms }: TextRead, { from, to }: Term): boolean =>
  means(termAt(terms, to), 'kind', 'thing') || means(termAt(terms, from - 1), 'kind')
const FURTHEST = 4000
/** A second word of a group counts half. */
const TWICE = 2
const signWeight = (as: Telling, inTitle: boolean): number =>
  as === 'style' ? WEIGHT.style[inTitle ? 'title' : 'text'] : as === 'cloth' ? WEIGHT.cloth.telling : WEIGHT.construction

/** A facet that only some kinds have speaks for those: a rise is of legs. */
function cutEvidence(title: TextRead | null, text: TextRead): Evidence[] {
  if (text.phrases.cuts.length === 0 && !title?.phrases.cuts.length) return []
  const weights = new Map<Facet, number>()
  for (const one of title === null ? [text] : [title, text])
    for (const term of one.phrases.cuts) {
      if (term.from > FURTHEST) break
      const told = term.meaning.senses.flatMap((sense) => (sense.role === 'cut' && !weights.has(sense.facet) ? [sense.facet] : []))
      if (told.length === 0 || isDenied(one, term) || isOfBeside(one, term)) continue
      for (const facet of told) weights.set(facet, one === title ? WEIGHT.cut.title : WEIGHT.cut.text)
    }
  if (weights.size === 0) return []
  const facets = [...weights].map(([facet, weight]) => ({ weight, has: HAVE_FACET(facet) }))
  const evidence: Evidence[] = []
  for (const [place, kind] of GARMENT_KINDS.entries()) {
    let sum = 0
    for (const { weight, has } of facets) if (has[place]) sum += weight
    if (sum > 0) evidence.push({ for: kind, weight: Math.min(sum, MOST.cut), because: 'cut' })
  }
  return evidence
}
const HAVE_FACET = byKind<Facet>((facet, kind) => facetsOf(kind).includes(facet))

/** The phrases of the language files in one tree, so that the longest phrase at a token is found in one walk. */
import type { ConditionId, Made, Structure, Trait, Use } from '../../garment/garment-input.ts'
import { WHOSE, type Whose } from '../../garment/model/whose.ts'
import type { Facet } from '../../ids/cut.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import { type Table, table } from '../../ids/table.ts'
import type { KindSign, Landmark, Lexicon, MadeFact, PointName, WordRole } from '../languages/lexicon.ts'
import { type Phrases, phrasesIn } from '../languages/phrases.ts'
import { isUnspaced } from '../languages/scripts.ts'
import { lexiconOf } from './lexicons.ts'
import { normalise } from './normalise.ts'
import { type RunWords, runWordsOf } from './runs.ts'
import { tokensOf } from './tokens.ts'

export type Sense =
  | { role: 'point'; point: PointName; basis: 'flat' | 'around' | null; weak: boolean; rank?: number }
  | { role: 'landmark'; landmark: Landmark }
  | { role: 'basis'; basis: 'flat' | 'around' | 'doubled' | 'double' }
  | { role: 'unit'; unit: 'in' | 'cm' | 'mm' | 'm' | 'ft' }
  | { role: 'number'; value: number }
  | { role: 'kind'; kind: GarmentKind; or: GarmentKind | null; made: Partial<Made> | null }
  | ({ role: 'sign' } & Pick<KindSign, 'kinds' | 'as'>)
  | { role: 'fibre'; fibre: string }
  | { role: 'structure'; structure: Structure }
  | { role: 'trait'; trait: Trait }
  | { role: 'made'; fact: MadeFact }
  | { role: 'use'; use: Use }
  | { role: 'fault'; mending: ConditionId[] }
  | { role: 'colour'; colour: string }
  | { role: 'currency'; currency: string }
  | { role: 'cut'; facet: Facet; value: string }
  | { role: 'whose'; whose: Whose | 'both'; named: boolean }
  | { role: WordRole }

export interface Node {
  next: Map<string, Node>
  meaning: Meaning | null
}
/** All that a phrase can mean; shared by its terms. */
export interface Meaning {
  senses: Sense[]
  roles: Set<Sense['role']>
  /** With what its words tell each for itself, once that was worked out (see terms.ts). */
  whole: Meaning | null
}
export const meaningOf = (senses: Sense[]): Meaning => ({ senses, roles: new Set(senses.map(({ role }) => role)), whole: null })
export interface PhraseTrie {
  /**
   * Where a word leads that begins a phrase: a step a further word; where a phrase ends stands what it means. The phrases that begin with a word are
   * put together when it is first asked for: of thousands of words a text has a few.
   */
  from: (word: string) => Starts | undefined
  /** Names of garments that end compound words: -hemd, -broek, -kjol. Empty where words are not joined so. */
  heads: Heads
  /** Letters that end the first part of such a word. */
  joints: readonly string[]
  halves: ReadonlySet<string>
  /** One-letter names of the language, beside the common ones. */
  letters: Table<PointName>
  /** The words by which runs of letters are cut; null where spaces part the words. */
  runs: RunWords | null
  verbLast: boolean
  bareUnit: 'cm' | null
  /** Every word of the phrases that are asked for, by their tree and what they mean; each phrase is gone through. */
  everyWord: (asked: (tree: TreeName, sense: Sense) => boolean) => Set<string>
}
/** Words that end compound words. */
export interface Heads {
  size: number
  words: ReadonlySet<string>
  get: (word: string) => Meaning | undefined
}

/** Beside names and kinds stand apart, so that they hide none: words of the cut, whose sizes, and signs of a kind. */
export const APART = ['cuts', 'whose', 'signs'] as const
export type TreeName = 'root' | (typeof APART)[number]
/** The nodes behind the first word of a phrase. */
export type Starts = Record<TreeName, Node | undefined>

const compiled = new Map<string, PhraseTrie>()

/** The trie of a language with English beside it (sellers mix them). */
export function phraseTrieOf(language: string): PhraseTrie {
  const known = compiled.get(language)
  if (known) return known
  const trie = compile([...new Set([lexiconOf(language), lexiconOf('en')])].filter((one) => one !== undefined))
  compiled.set(language, trie)
  return trie
}

/** What phrases of one list have in common. */
interface Entry {
  tree: TreeName
  sense: Sense
  /** Phrases that mean this and nothing else share one meaning; those of garments keep their own `whole`. */
  alone: Meaning | null
  rank: number
  endings: readonly string[]
}
/** A phrase that was not put into the trees yet. `ways`: how it is written, worked out where it is not plain words. */
interface Waiting {
  phrase: string
  entry: Entry
  ways: readonly string[][] | null
}

function compile(lexicons: readonly Lexicon[]): PhraseTrie {
  const halves = new Set<string>()
  const falseFriends = new Set(lexicons.flatMap(({ falseFriends }) => phrasesIn(falseFriends)))
  const [own] = lexicons
  const ownParts = own ? partsOf(own) : NO_PARTS
  const waiting = new Map<string, Waiting[]>()
  const all: Waiting[] = []
  lexicons.forEach((lexicon, rank) => {
    const parts = lexicon === own ? ownParts : NO_PARTS
    const add: AddPhrases = (tree, phrases, sense, endings = lexicon.endings) => {
      const its = sense.role === 'point' ? { ...sense, rank } : sense
      const alone = tree === 'signs' || KEEPS_WHOLE.has(sense.role) ? null : meaningOf([its])
      const entry = { tree, sense: its, alone, rank, endings }
      for (const phrase of phrasesIn(phrases)) {
        if (lexicon.language === 'en' && falseFriends.has(phrase) && sense.role !== 'whose') continue
        const one: Waiting = { phrase, entry, ways: null }
        all.push(one)
        for (const word of firstWords(one, parts)) {
          const its = waiting.get(word)
          if (its) its.push(one)
          else waiting.set(word, [one])
        }
      }
    }
    addNamed(lexicon, add)
    addApart(lexicon, add)
    for (const phrase of phrasesIn(lexicon.words.half)) for (const word of wordsOf(phrase)) halves.add(word)
  })
  const from = startsOf(waiting)
  const everyWord: PhraseTrie['everyWord'] = (asked) => {
    const words = new Set<string>()
    for (const one of all) if (asked(one.entry.tree, one.entry.sense)) addWords(one, words)
    return words
  }
  return {
    from,
    heads: headsOf(lexicons, from),
    joints: lexicons.flatMap(({ joinedBy }) => joinedBy ?? []),
    halves,
    letters: table(lexicons[0]?.letters ?? {}),
    runs: own?.unspaced ? runWordsOf(runWordsIn(own, everyWord(EVERY_ONE)), ownParts) : null,
    verbLast: own?.verbLast ?? false,
    bareUnit: own?.bareUnit ?? null,
    everyWord
  }
}

const EVERY_ONE = (): boolean => true

/** The words that the ways to write a phrase begin with. */
function firstWords(one: Waiting, parts: RunParts): Iterable<string> {
  const { phrase, entry } = one
  if (parts.size === 0 && PLAIN_WORDS.test(phrase)) {
    const gap = phrase.indexOf(' ')
    return gap < 0 ? withEndings(phrase, entry.endings) : [phrase.slice(0, gap)]
  }
  one.ways = waysToWrite(phrase, entry.endings, parts)
  return new Set(one.ways.map(([first = '']) => first))
}
const waysOf = ({ phrase, entry, ways }: Waiting): readonly string[][] => ways ?? variants(phrase, entry.endings)

function addWords({ phrase, entry, ways }: Waiting, words: Set<string>): void {
  if (ways !== null) for (const way of ways) for (const word of way) words.add(word)
  else {
    const its = phrase.split(' ')
    const last = its.pop() ?? ''
    for (const word of its) words.add(word)
    for (const end of withEndings(last, entry.endings)) words.add(end)
  }
}

/** Puts the phrases that begin with a word together when it is first asked for. */
function startsOf(waiting: ReadonlyMap<string, readonly Waiting[]>): PhraseTrie['from'] {
  const done = new Map<string, Starts>()
  return (word) => {
    const known = done.get(word)
    if (known) return known
    const its = waiting.get(word)
    if (its === undefined) return undefined
    const starts: Starts = { root: undefined, cuts: undefined, whose: undefined, signs: undefined }
    for (const one of its)
      for (const words of waysOf(one))
        if (words[0] === word) {
          starts[one.entry.tree] ??= { next: NOTHING_AFTER, meaning: null }
          put(starts[one.entry.tree] as Node, words, one.entry)
        }
    done.set(word, starts)
    return starts
  }
}

type AddPhrases = (tree: TreeName, phrases: Phrases | undefined, sense: Sense, endings?: readonly string[]) => void

/** Names and kinds, and everything else that a text is taken apart into. */
function addNamed(lexicon: Lexicon, addTo: AddPhrases): void {
  const add = (phrases: Phrases | undefined, sense: Sense) => addTo('root', phrases, sense)
  for (const [key, phrases] of Object.entries(lexicon.points)) {
    const [point, how] = key.split(' ') as [PointName, string | undefined]
    add(phrases, { role: 'point', point, basis: how === 'flat' || how === 'around' ? how : null, weak: how === 'weak' })
  }
  for (const [landmark, phrases] of Object.entries(lexicon.landmarks)) add(phrases, { role: 'landmark', landmark: landmark as Landmark })
  for (const [basis, phrases] of Object.entries(lexicon.basis)) add(phrases, { role: 'basis', basis: basis as keyof Lexicon['basis'] })
  for (const [unit, phrases] of Object.entries(lexicon.units)) add(phrases, { role: 'unit', unit: unit as keyof Lexicon['units'] })
  for (const [word, value] of Object.entries(lexicon.numbers)) add(word, { role: 'number', value })
  for (const { kind, or, phrases, made: make } of lexicon.kinds) add(phrases, { role: 'kind', kind, or: or ?? null, made: make ?? null })
  for (const [fibre, phrases] of Object.entries(lexicon.fibres)) add(phrases, { role: 'fibre', fibre })
  for (const [structure, phrases] of Object.entries(lexicon.structures))
    add(phrases, { role: 'structure', structure: structure as Structure })
  for (const [trait, phrases] of Object.entries(lexicon.traits)) add(phrases, { role: 'trait', trait: trait as Trait })
  for (const { fact, phrases } of lexicon.made) {
    add(phrases, { role: 'made', fact })
    if (fact.fact === 'opens') add(phrases, { role: 'detail' })
    // an elastic waist is still the waist, when a figure stands by it
    if (fact.fact === 'elasticWaist') add(phrases, { role: 'point', point: 'waist', basis: null, weak: false })
  }
  for (const [use, phrases] of Object.entries(lexicon.uses)) add(phrases, { role: 'use', use: use as Use })
  for (const { mending, phrases } of lexicon.faults) add(phrases, { role: 'fault', mending })
  for (const [colour, phrases] of Object.entries(lexicon.colours)) add(phrases, { role: 'colour', colour })
  for (const [currency, phrases] of Object.entries(lexicon.currencies)) add(phrases, { role: 'currency', currency })
  for (const [role, phrases] of Object.entries(lexicon.words)) add(phrases, { role: role as WordRole })
  // they are pockets like others, to be counted or measured
  for (const role of ['detail', 'otherUnit'] as const) add(lexicon.words.backPockets, { role })
}

/** What stands among names and kinds without hiding them: words of the cut, whose sizes, and what tells a kind without naming it. */
function addApart({ cut, whose, signs }: Lexicon, add: AddPhrases): void {
  for (const { kinds, as, phrases } of signs ?? []) add('signs', phrases, { role: 'sign', kinds, as })
  for (const [facet, values] of Object.entries(cut ?? {}) as [Facet, Record<string, Phrases>][])
    for (const [value, phrases] of Object.entries(values)) add('cuts', phrases, { role: 'cut', facet, value }, NO_ENDINGS)
  for (const [key, phrases] of Object.entries(whose)) {
    const its = WHOSE.find((one) => key.startsWith(one)) ?? 'both'
    add('whose', phrases, { role: 'whose', whose: its, named: key.endsWith(' named') }, NO_ENDINGS)
  }
}
const NO_ENDINGS: readonly string[] = []

/** The words of a language that are written without spaces: those of its phrases, its cues and its amounts. */
function runWordsIn({ common, cues, amounts }: Lexicon, words: ReadonlySet<string>): Set<string> {
  const found = new Set<string>()
  const add = (word: string) => {
    if (isUnspaced(word.charCodeAt(0))) found.add(word)
  }
  for (const word of words) add(word)
  for (const list of [common, ...Object.values(cues)]) for (const phrase of phrasesIn(list)) for (const word of wordsOf(phrase)) add(word)
  for (const role of Object.values(amounts ?? {})) for (const written of Object.keys(role)) for (const word of wordsOf(written)) add(word)
  return found
}

const SHORTEST_HEAD = 4

function headsOf(lexicons: readonly Lexicon[], from: PhraseTrie['from']): Heads {
  const heads = new Set<string>()
  for (const { joinedBy, kinds, words } of lexicons) {
    if (joinedBy === undefined) continue
    for (const phrases of [...kinds.map(({ phrases }) => phrases), words.thing ?? ''])
      for (const phrase of phrasesIn(phrases)) {
        const [word, more] = wordsOf(phrase)
        if (word !== undefined && more === undefined && word.length >= SHORTEST_HEAD) heads.add(word)
      }
  }
  return { size: heads.size, words: heads, get: (word) => (heads.has(word) ? (from(word)?.root?.meaning ?? undefined) : undefined) }
}

const NO_PARTS: RunParts = new Map()
const PLAIN_WORDS = /^[a-z]+(?: [a-z]+)*$/

/** The words of a phrase, evened out as those of a text are; most phrases are plain already, which saves the time. */
export function wordsOf(phrase: string): string[] {
  if (PLAIN_WORDS.test(phrase)) return phrase.split(' ')
  return tokensOf(normalise(phrase).text)
    .filter(({ kind }) => kind === 'word' || kind === 'digits')
    .map(({ text }) => text)
}

/** A word, and with each ending that it may also take. */
const withEndings = (word: string, endings: readonly string[]): string[] =>
  word.length < 3 ? [word] : [word, ...endings.filter((ending) => !word.endsWith(ending)).map((ending) => word + ending)]

/** A phrase with and without what people leave out: ä as a or ae, ß as ss, the endings of its last word. */
function variants(phrase: string, endings: readonly string[]): string[][] {
  const spelled = new Set([phrase])
  if (/[äöüæœ]/i.test(phrase)) spelled.add(phrase.replace(/[äæ]/gi, 'ae').replace(/[öœ]/gi, 'oe').replace(/ü/gi, 'ue'))
  for (const one of [...spelled]) if (one.includes('ß')) spelled.add(one.replaceAll('ß', 'ss'))
  const all: string[][] = []
  for (const one of spelled) {
    const words = wordsOf(one)
    const last = words[words.length - 1]
    if (last === undefined) continue
    for (const end of withEndings(last, endings)) all.push(end === last ? words : [...words.slice(0, -1), end])
  }
  return all
}

/** Those variants; what is one word and is written apart elsewhere goes the way of its words. */
function waysToWrite(phrase: string, endings: readonly string[], parts: RunParts): string[][] {
  const ways = variants(phrase, endings)
  return parts.size === 0 ? ways : ways.map((words) => words.flatMap((word) => parts.get(word) ?? [word]))
}

/** Phrases of several words in letters without spaces, by how they are written as one word. */
type RunParts = ReadonlyMap<string, readonly string[]>
function partsOf(lexicon: Lexicon): RunParts {
  const parts = new Map<string, readonly string[]>()
  if (!lexicon.unspaced) return parts
  const gather = (value: unknown): void => {
    if (typeof value === 'object' && value !== null) for (const one of Object.values(value)) gather(one)
    if (typeof value !== 'string') return
    for (const phrase of phrasesIn(value)) {
      const words = wordsOf(phrase)
      if (words.length > 1 && words.every((word) => isUnspaced(word.charCodeAt(0)))) parts.set(words.join(''), words)
    }
  }
  gather(lexicon)
  return parts
}

/** What is said of a garment may say more by its single words (see terms.ts). */
export const SAYS_MORE = ['kind', 'made', 'use', 'trait'] as const
const KEEPS_WHOLE: ReadonlySet<Sense['role']> = new Set(SAYS_MORE)

/** What comes after the last word of a phrase: most nodes are such ends, and share it. */
export const NOTHING_AFTER: Node['next'] = new Map()

/** Puts a phrase behind the node of its first word. */
function put(start: Node, words: readonly string[], { sense, rank, alone }: Entry): void {
  let node = start
  for (let at = 1; at < words.length; at++) {
    const word = words[at] as string
    let next = node.next.get(word)
    if (next === undefined) {
      next = { next: NOTHING_AFTER, meaning: null }
      if (node.next === NOTHING_AFTER) node.next = new Map()
      node.next.set(word, next)
    }
    node = next
  }
  if (node.meaning === null) {
    node.meaning = alone ?? meaningOf([sense])
    return
  }
  const { senses } = node.meaning
  // English comes behind the language of the text: where both name a point with the same words, it is the text's own
  if (rank > 0 && sense.role === 'point' && senses.some((one) => one.role === 'point' && one.rank !== rank)) return
  if (!senses.some((one) => same(one, sense))) node.meaning = meaningOf([...senses, sense])
}
const same = (a: Sense, b: Sense): boolean => a.role === b.role && JSON.stringify({ ...a, rank: 0 }) === JSON.stringify({ ...b, rank: 0 })

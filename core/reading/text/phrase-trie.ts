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
  /** A step a word; where a phrase ends stands what it means. */
  root: Node
  /** Words of the cut, apart: they stand among names and kinds without hiding them. */
  cuts: Node
  /** Whose sizes, apart for the same reason. */
  whose: Node
  /** Signs of a kind, apart too. */
  signs: Node
  /** Where each word leads in these four, for those that begin a phrase in one of them. */
  starts: ReadonlyMap<string, Starts>
  /** Names of garments that end compound words: -hemd, -broek, -kjol. Empty where words are not joined so. */
  heads: ReadonlyMap<string, Meaning>
  /** Letters that end the first part of such a word. */
  joints: readonly string[]
  halves: ReadonlySet<string>
  /** One-letter names of the language, beside the common ones. */
  letters: Table<PointName>
  /** The words by which runs of letters are cut; null where spaces part the words. */
  runs: RunWords | null
  verbLast: boolean
  bareUnit: 'cm' | null
}

export const APART = ['cuts', 'whose', 'signs'] as const
/** The nodes behind the first word of a phrase. */
export type Starts = Record<'root' | (typeof APART)[number], Node | undefined>

function startsOf(roots: Record<'root' | (typeof APART)[number], Node>): Map<string, Starts> {
  const starts = new Map<string, Starts>()
  for (const name of ['root', ...APART] as const)
    for (const [word, node] of roots[name].next) {
      const its = starts.get(word) ?? { root: undefined, cuts: undefined, whose: undefined, signs: undefined }
      its[name] = node
      starts.set(word, its)
    }
  return starts
}

const compiled = new Map<string, PhraseTrie>()

/** The trie of a language with English beside it (sellers mix them). */
export function phraseTrieOf(language: string): PhraseTrie {
  const known = compiled.get(language)
  if (known) return known
  const trie = compile([...new Set([lexiconOf(language), lexiconOf('en')])].filter((one) => one !== undefined))
  compiled.set(language, trie)
  return trie
}

function compile(lexicons: readonly Lexicon[]): PhraseTrie {
  const root: Node = { next: new Map(), meaning: null }
  const cuts: Node = { next: new Map(), meaning: null }
  const whose: Node = { next: new Map(), meaning: null }
  const signs: Node = { next: new Map(), meaning: null }
  const halves = new Set<string>()
  const falseFriends = new Set(lexicons.flatMap(({ falseFriends }) => phrasesIn(falseFriends)))
  const [own] = lexicons
  const ownParts = own ? partsOf(own) : NO_PARTS
  lexicons.forEach((lexicon, rank) => {
    const parts = lexicon === own ? ownParts : NO_PARTS
    const add = (phrases: Phrases | undefined, sense: Sense) => {
      const its = sense.role === 'point' ? { ...sense, rank } : sense
      // phrases that mean this and nothing else share one meaning; those of garments keep their own `whole`
      const alone = KEEPS_WHOLE.has(sense.role) ? null : meaningOf([its])
      for (const phrase of phrasesIn(phrases)) {
        if (lexicon.language === 'en' && falseFriends.has(phrase)) continue
        for (const words of waysToWrite(phrase, lexicon.endings, parts)) put(root, words, its, rank, alone)
      }
    }
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
    putApart(lexicon, { cuts, whose, signs }, { rank, parts, falseFriends })
    for (const phrase of phrasesIn(lexicon.words.half)) for (const word of wordsOf(phrase)) halves.add(word)
  })
  return {
    root,
    cuts,
    whose,
    signs,
    starts: startsOf({ root, cuts, whose, signs }),
    halves,
    heads: headsOf(lexicons, root),
    joints: lexicons.flatMap(({ joinedBy }) => joinedBy ?? []),
    letters: table(lexicons[0]?.letters ?? {}),
    runs: own?.unspaced ? runWordsOf(runWordsIn(own, [root, cuts, whose, signs]), ownParts) : null,
    verbLast: own?.verbLast ?? false,
    bareUnit: own?.bareUnit ?? null
  }
}

/** What stands among names and kinds without hiding them: words of the cut, whose sizes, and what tells a kind without naming it. */
function putApart(
  { language, cut, whose, signs, endings }: Lexicon,
  to: Pick<PhraseTrie, 'cuts' | 'whose' | 'signs'>,
  { rank, parts, falseFriends }: { rank: number; parts: RunParts; falseFriends: ReadonlySet<string> }
): void {
  const add = (root: Node, phrases: Phrases, sense: Sense, ends: readonly string[], alone: Meaning | null) => {
    for (const phrase of phrasesIn(phrases)) {
      if (language === 'en' && falseFriends.has(phrase) && sense.role !== 'whose') continue
      for (const words of waysToWrite(phrase, ends, parts)) put(root, words, sense, rank, alone)
    }
  }
  for (const { kinds, as, phrases } of signs ?? []) add(to.signs, phrases, { role: 'sign', kinds, as }, endings, null)
  for (const [facet, values] of Object.entries(cut ?? {}) as [Facet, Record<string, Phrases>][])
    for (const [value, phrases] of Object.entries(values)) {
      const sense: Sense = { role: 'cut', facet, value }
      add(to.cuts, phrases, sense, [], meaningOf([sense]))
    }
  for (const [key, phrases] of Object.entries(whose))
    add(
      to.whose,
      phrases,
      { role: 'whose', whose: WHOSE.find((one) => key.startsWith(one)) ?? 'both', named: key.endsWith(' named') },
      [],
      null
    )
}

/** The words of a language that are written without spaces: those of its phrases, its cues and its amounts. */
function runWordsIn({ common, cues, amounts }: Lexicon, roots: readonly Node[]): Set<string> {
  const words = new Set<string>()
  const add = (word: string) => {
    if (isUnspaced(word.charCodeAt(0))) words.add(word)
  }
  const addOf = ({ next }: Node): void => {
    for (const [word, node] of next) {
      add(word)
      addOf(node)
    }
  }
  for (const root of roots) addOf(root)
  for (const list of [common, ...Object.values(cues)]) for (const phrase of phrasesIn(list)) for (const word of wordsOf(phrase)) add(word)
  for (const role of Object.values(amounts ?? {})) for (const written of Object.keys(role)) for (const word of wordsOf(written)) add(word)
  return words
}

const SHORTEST_HEAD = 4

function headsOf(lexicons: readonly Lexicon[], root: Node): Map<string, Meaning> {
  const heads = new Map<string, Meaning>()
  for (const { joinedBy, kinds, words } of lexicons) {
    if (joinedBy === undefined) continue
    for (const phrases of [...kinds.map(({ phrases }) => phrases), words.thing ?? ''])
      for (const phrase of phrasesIn(phrases)) {
        const [word, more] = wordsOf(phrase)
        const meaning = word === undefined || more !== undefined || word.length < SHORTEST_HEAD ? null : root.next.get(word)?.meaning
        if (word !== undefined && meaning) heads.set(word, meaning)
      }
  }
  return heads
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
    all.push(words)
    if (last.length >= 3) for (const ending of endings) if (!last.endsWith(ending)) all.push([...words.slice(0, -1), last + ending])
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

function put(root: Node, words: readonly string[], sense: Sense, rank: number, alone: Meaning | null): void {
  let node = root
  for (const word of words) {
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
  let { senses } = node.meaning
  // the language of the text comes after English (rank) and replaces an English point of the same words
  if (rank > 0 && sense.role === 'point') senses = senses.filter((one) => one.role !== 'point' || one.rank === rank)
  if (!senses.some((one) => same(one, sense))) node.meaning = meaningOf([...senses, sense])
}
const same = (a: Sense, b: Sense): boolean => a.role === b.role && JSON.stringify({ ...a, rank: 0 }) === JSON.stringify({ ...b, rank: 0 })

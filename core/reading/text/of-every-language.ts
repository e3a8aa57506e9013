/**
 * What is asked of all languages together, before a text's own is known: the words that tell a language, and those that tip a rule in a text of
 * any. It is small beside the phrases, so that a page can have it without them (lexicons-apart.ts).
 */
import type { Amounts, CueRole } from '../languages/cue-roles.ts'
import type { Lexicon } from '../languages/lexicon.ts'
import { type Phrases, phrasesIn } from '../languages/phrases.ts'
import { normalise } from './normalise.ts'
import { tokensOf } from './tokens.ts'

export interface OfEveryLanguage {
  /** Its row is its place below. `joins`: parts of a word are written as one. */
  languages: readonly (Pick<Lexicon, 'language' | 'alsoCalled' | 'scripts' | 'headFirst'> & { joins?: true })[]
  /** Words by which a language is known, evened out as tokens are, a space between; by the places of the languages that have them: “1 6”. */
  telling: Readonly<Record<string, string>>
  cues: Readonly<Partial<Record<CueRole, Phrases>>>
  amounts: readonly Amounts[]
  /** ISO 3166 code, and what says that a seller posts from there. */
  postedIn: readonly (readonly [string, Phrases])[]
}

export function ofEveryLanguage(lexicons: readonly Lexicon[]): OfEveryLanguage {
  const cues: Partial<Record<CueRole, Phrases>> = {}
  for (const lexicon of lexicons)
    for (const [role, phrases] of Object.entries(lexicon.cues) as [CueRole, Phrases][])
      cues[role] = [...new Set([...phrasesIn(cues[role]), ...phrasesIn(phrases)])].join('\n')
  return {
    languages: lexicons.map(({ language, alsoCalled, scripts, headFirst, joinedBy }) => ({
      language,
      ...(alsoCalled ? { alsoCalled } : {}),
      ...(scripts ? { scripts } : {}),
      ...(headFirst ? { headFirst } : {}),
      ...(joinedBy ? { joins: true } : {})
    })),
    telling: tellingOf(lexicons),
    cues,
    amounts: lexicons.flatMap(({ amounts }) => amounts ?? []),
    postedIn: lexicons.flatMap(({ postedIn }) => Object.entries(postedIn ?? {}))
  }
}

/** A word of many languages tells little, so each stands with all that have it. */
function tellingOf(lexicons: readonly Lexicon[]): Record<string, string> {
  const places = new Map<string, Set<number>>()
  for (const [place, lexicon] of lexicons.entries())
    for (const { kind, text } of tokensOf(normalise(ownWords(lexicon)).text)) {
      if (kind !== 'word' || text.length < 2) continue
      const known = places.get(text)
      if (known) known.add(place)
      else places.set(text, new Set([place]))
    }
  const words = new Map<string, string[]>()
  for (const [word, its] of places) {
    const key = [...its].join(' ')
    const known = words.get(key)
    if (known) known.push(word)
    else words.set(key, [word])
  }
  return Object.fromEntries([...words].map(([key, its]) => [key, its.join(' ')]))
}

/** What a language has of its own: small words, names of points, garments, fibres, colours. */
function ownWords({ common, points, kinds, fibres, colours, words, scripts }: Lexicon): string {
  // its letters tell it
  if (scripts !== undefined) return ''
  const trade = [...Object.values(points), ...kinds.map(({ phrases }) => phrases), ...Object.values(fibres), ...Object.values(colours)]
  return [common, ...trade, words.heading, words.condition, words.conditionWord, words.not].flatMap(phrasesIn).join('\n')
}

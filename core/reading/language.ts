/** The language of a text, by its commonest words and by the words of its trade. */
import type { Lexicon } from './languages/lexicon.ts'
import { LEXICONS } from './lexis.ts'
import { normalise } from './normalise.ts'
import { type Token, tokensOf } from './tokens.ts'

let table: Map<string, string[]> | null = null

/** Word → the languages in which it is common; a word of many languages tells little. */
function commonWords(): Map<string, string[]> {
  if (table) return table
  table = new Map()
  for (const lexicon of LEXICONS) {
    for (const { kind, text } of tokensOf(normalise(tellingOf(lexicon)).text)) {
      if (kind !== 'word' || text.length < 2) continue
      const languages = table.get(text)
      if (!languages) table.set(text, [lexicon.language])
      else if (!languages.includes(lexicon.language)) languages.push(lexicon.language)
    }
  }
  return table
}

/** What a language has of its own: small words, names of points, garments, fibres, colours. */
function tellingOf({ common, points, kinds, fibres, colours, words }: Lexicon): string {
  const trade = [...Object.values(points), ...kinds.map(({ phrases }) => phrases), ...Object.values(fibres), ...Object.values(colours)]
  return [common, ...trade, words.heading ?? '', words.condition ?? '', words.conditionWord ?? '', words.not ?? ''].join(' \n ')
}

/** So many words tell it. */
const SAMPLE = 400

/** ISO 639-1 of the likeliest language; a told language leads by a little, English is what nothing contradicts. */
export function languageOf(texts: readonly (readonly Token[])[], told: string | undefined): string {
  const words = commonWords()
  const scores = new Map<string, number>([['en', 0.6]])
  const add = (language: string, by: number) => scores.set(language, (scores.get(language) ?? 0) + by)
  const hint = told?.slice(0, 2).toLowerCase()
  if (hint && LEXICONS.some(({ language }) => language === hint)) add(hint, 1.5)
  for (const tokens of texts) {
    for (let at = 0; at < tokens.length && at < SAMPLE; at++) {
      const token = tokens[at] as Token
      const languages = token.kind === 'word' ? words.get(token.text) : undefined
      for (const language of languages ?? []) add(language, 1 / (languages?.length ?? 1))
    }
  }
  return [...scores].sort((a, b) => b[1] - a[1])[0]?.[0] ?? 'en'
}

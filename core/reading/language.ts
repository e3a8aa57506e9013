/** The language of a text, by its commonest words. */
import { LEXICONS } from './lexis.ts'
import { normalise } from './normalise.ts'
import { type Token, tokensOf } from './tokens.ts'

let table: Map<string, string[]> | null = null

/** Word → the languages in which it is common; a word of many languages tells little. */
function commonWords(): Map<string, string[]> {
  if (table) return table
  table = new Map()
  for (const { language, common } of LEXICONS) {
    for (const word of common.split(' | ')) {
      for (const { text } of tokensOf(normalise(word).text)) {
        const languages = table.get(text)
        if (!languages) table.set(text, [language])
        else if (!languages.includes(language)) languages.push(language)
      }
    }
  }
  return table
}

/** So many words tell it. */
const SAMPLE = 900

/** ISO 639-1 of the likeliest language; a told language leads by a little, English is what nothing contradicts. */
export function languageOf(texts: readonly (readonly Token[])[], told: string | undefined): string {
  const words = commonWords()
  const scores = new Map<string, number>([['en', 0.4]])
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

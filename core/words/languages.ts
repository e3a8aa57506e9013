/** The languages there are words in. A language is a row here and a folder beside en; English is always there, another is loaded when it is wanted. */
import { en } from './en/index.ts'

export type Messages = Readonly<Record<string, string>>
export interface LanguageRow {
  /** Two letters of BCP 47, the name of its folder. */
  id: string
  /** Its own name, as those who speak it write it. */
  name: string
  /** The one that numbers, money and dates are written in (BCP 47). */
  locale: string
  /** What stands before the decimals. */
  decimal: '.' | ','
  /** Names in its tables have the capital that they keep inside a sentence. */
  keepsCapitals: boolean
  /** Every message of it. */
  load: () => Promise<Messages>
}

export const LANGUAGE_ROWS: readonly LanguageRow[] = [
  { id: 'en', name: 'English', locale: 'en-GB', decimal: '.', keepsCapitals: false, load: async () => en },
  { id: 'de', name: 'Deutsch', locale: 'de-DE', decimal: ',', keepsCapitals: true, load: async () => (await import('./de/index.ts')).de }
]

const FIRST = LANGUAGE_ROWS[0] as LanguageRow

/** The messages of what was loaded, by language; what a language lacks is said in English. */
const loaded = new Map<string, Messages>([[FIRST.id, en]])
const shortOf = (language: string): string => language.slice(0, 2).toLowerCase()
const rowOf = (language: string): LanguageRow | undefined => LANGUAGE_ROWS.find(({ id }) => id === shortOf(language))

/** The row of a language, English where there is none: `en-US` and `EN` are `en`. */
export const languageRow = (language = FIRST.id): LanguageRow => rowOf(language) ?? FIRST

/** Are there words in this language, loaded or not? */
export const canBeSpoken = (language: string): boolean => rowOf(language) !== undefined

/** Are its words here already? */
export const isSpoken = (language: string): boolean => loaded.has(shortOf(language))

/** The row of the language in which a sentence comes: the one asked for where its words are here, else English. */
export const spokenRow = (language = FIRST.id): LanguageRow => (isSpoken(language) ? languageRow(language) : FIRST)

/** Every message in this language. */
export const messagesIn = (language = FIRST.id): Messages => loaded.get(shortOf(language)) ?? en

/** Brings the words of a language; of one that there are no words in, nothing. Rejects where its file can't be had. */
export async function loadWords(language: string): Promise<void> {
  const row = rowOf(language)
  if (row === undefined || loaded.has(row.id)) return
  loaded.set(row.id, Object.freeze(Object.assign(Object.create(null), en, await row.load())))
}

/** The language to speak: the one chosen, else the first that the browser asks for and that there are words in. */
export function languageFor(chosen: string | null | undefined, asked: readonly string[]): string {
  return languageRow([chosen ?? '', ...asked].find(canBeSpoken)).id
}

/** The languages there are words in. A language is a row here and a folder beside en; English is always there, another is loaded when it is wanted. */
import { AT_FIRST, ENGLISH, englishOfWorkroom } from './english.ts'

export type Messages = Readonly<Record<string, string>>
/** What a page says: answers, as all do; the workroom all of it. */
export type WordsOf = 'answers' | 'workroom'
export interface LanguageRow {
  /** Two letters of BCP 47, the name of its folder. */
  id: string
  /** Its own name, as those who speak it write it. */
  name: string
  /** The one that numbers, money and dates are written in (BCP 47). */
  locale: string
  /** What stands before the decimals. */
  decimal: '.' | ','
  /** What stands between a figure and its unit: in German a space at which no line ends (DIN 5008). */
  beforeUnit: ' ' | '\u00a0'
  /** Names in its tables have the capital that they keep inside a sentence. */
  keepsCapitals: boolean
  /** Its messages part by part: those of answers, or those that only the workroom has. */
  load: (of: WordsOf) => Promise<Readonly<Record<string, Messages>>>
}

export const LANGUAGE_ROWS: readonly LanguageRow[] = [
  {
    id: 'en',
    name: 'English',
    locale: 'en-GB',
    decimal: '.',
    beforeUnit: ' ',
    keepsCapitals: false,
    load: async (of) => (of === 'answers' ? { answers: ENGLISH } : englishOfWorkroom())
  },
  {
    id: 'de',
    name: 'Deutsch',
    locale: 'de-DE',
    decimal: ',',
    beforeUnit: '\u00a0',
    keepsCapitals: true,
    load: async (of) =>
      of === 'answers' ? (await import('./de/of-answers.ts')).ofAnswers : (await import('./de/of-workroom.ts')).ofWorkroom
  }
]

const FIRST = LANGUAGE_ROWS[0] as LanguageRow

/** The messages of what was loaded, by language; what a language lacks is said in English. */
const loaded = new Map<string, Messages>([[FIRST.id, ENGLISH]])
/** The languages that the workroom's words are loaded of. */
const whole = new Set<string>()
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
export const messagesIn = (language = FIRST.id): Messages => loaded.get(shortOf(language)) ?? english()
const english = (): Messages => loaded.get(FIRST.id) ?? ENGLISH

/** Whose words this page speaks. */
let spoken: WordsOf = AT_FIRST

/**
 * Brings the words of a language; of one that there are no words in, nothing. `of`: once it was the workroom's, it stays. Rejects where their file
 * can't be had.
 */
export async function loadWords(language: string, of: WordsOf = spoken): Promise<void> {
  if (of === 'workroom') spoken = of
  // before another: what it lacks is said in English
  if (spoken === 'workroom') await bringOfWorkroom(FIRST)
  const row = rowOf(language)
  if (row === undefined) return
  if (!loaded.has(row.id)) add(row.id, await row.load('answers'))
  if (spoken === 'workroom') await bringOfWorkroom(row)
}

async function bringOfWorkroom(row: LanguageRow): Promise<void> {
  if (whole.has(row.id)) return
  add(row.id, await row.load('workroom'))
  whole.add(row.id)
}

function add(id: string, parts: Readonly<Record<string, Messages>>): void {
  loaded.set(id, Object.freeze(Object.assign(Object.create(null), english(), loaded.get(id), ...Object.values(parts))))
}

/** The language to speak: the one chosen, else the first that the browser asks for and that there are words in. */
export function languageFor(chosen: string | null | undefined, asked: readonly string[]): string {
  return languageRow([chosen ?? '', ...asked].find(canBeSpoken)).id
}

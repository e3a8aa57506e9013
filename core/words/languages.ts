/** The languages there are words in. A language is a row here and a folder beside en. */
import { en } from './en/index.ts'

export interface LanguageRow {
  /** Two letters of BCP 47, the name of its folder. */
  id: string
  /** Its own name, as those who speak it write it. */
  name: string
  /** The one that numbers, money and dates are written in (BCP 47). */
  locale: string
  messages: Record<string, string>
}

export const LANGUAGE_ROWS: readonly LanguageRow[] = [{ id: 'en', name: 'English', locale: 'en-GB', messages: en }]

const FIRST = LANGUAGE_ROWS[0] as LanguageRow

/** The row of a language, English where there is none: `en-US` and `EN` are `en`. */
export const languageRow = (language = FIRST.id): LanguageRow =>
  LANGUAGE_ROWS.find(({ id }) => id === language.slice(0, 2).toLowerCase()) ?? FIRST

/** The language to speak: the one chosen, else the first that the browser asks for and that there are words in. */
export function languageFor(chosen: string | null | undefined, asked: readonly string[]): string {
  const known = [chosen ?? '', ...asked].find((one) => LANGUAGE_ROWS.some(({ id }) => id === one.slice(0, 2).toLowerCase()))
  return languageRow(known).id
}

/**
 * Every language the reader has, all at hand. This is how the core runs by itself; in what is built for a browser its place is taken by
 * lexicons-apart.ts, which has the same exports and loads a language when a text needs it.
 */
import { cs } from '../languages/cs.ts'
import { da } from '../languages/da.ts'
import { de } from '../languages/de.ts'
import { en } from '../languages/en.ts'
import { es } from '../languages/es.ts'
import { fi } from '../languages/fi.ts'
import { fr } from '../languages/fr.ts'
import { it } from '../languages/it.ts'
import { ja } from '../languages/ja.ts'
import { ko } from '../languages/ko.ts'
import type { Lexicon } from '../languages/lexicon.ts'
import { nl } from '../languages/nl.ts'
import { no } from '../languages/no.ts'
import { pl } from '../languages/pl.ts'
import { pt } from '../languages/pt.ts'
import { sv } from '../languages/sv.ts'
import { type OfEveryLanguage, ofEveryLanguage } from './of-every-language.ts'

export const LEXICONS: readonly Lexicon[] = [en, de, fr, es, it, nl, pl, sv, pt, ja, ko, da, no, fi, cs]

/** What they have together. */
export const OF_EVERY: OfEveryLanguage = ofEveryLanguage(LEXICONS)

/** The phrases of a language (ISO 639-1); undefined: there are none. */
export const lexiconOf = (language: string): Lexicon | undefined => LEXICONS.find((one) => one.language === language)

/** Does something that reads texts, once the phrases of their languages are here. */
export const withLanguages = async <T>(read: () => T): Promise<T> => read()

/** What was thrown because the phrases of a language are not here yet; null: something else. Once it is done, reading goes on. */
export const languageComing = (_thrown: unknown): Promise<void> | null => null

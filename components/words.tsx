/** The words of a page: say() with the person's units, language and currency already in it. */
import { createContext } from 'preact'
import { useContext, useMemo } from 'preact/hooks'
import type { Units } from '../core/length.ts'
import type { Values } from '../core/words/reason.ts'
import { figureIn, lengthIn, say, sayInside, unitSign, type Wording } from '../core/words/say.ts'

export interface Words {
  wording: Wording
  units: Units
  /** The sentence of a message code. */
  t: (code: string, values?: Values) => string
  /** The same as it stands inside a sentence: no capital at its head. */
  inner: (code: string, values?: Values) => string
  /** 28¾ in */
  length: (mm: number) => string
  /** 28¾ */
  figure: (mm: number) => string
  /** A figure in another unit than one's own, as it is typed into a field. */
  figureAs: (mm: number, units: Units) => string
  /** 73 cm, in another unit than one's own. */
  lengthAs: (mm: number, units: Units) => string
  /** in, cm: the unit as it stands behind a figure. */
  unitSign: (units: Units) => string
  /** £24.00; another currency than one's own where it is named. */
  money: (amount: number, currency?: string | undefined) => string
}

/** The words for a wording; for code that stands outside a component. */
export const wordsFor = (wording: Wording): Words => ({
  wording,
  units: wording.units,
  t: (code, values = {}) => say({ code, values }, wording),
  inner: (code, values = {}) => sayInside({ code, values }, wording),
  length: (mm) => lengthIn(mm, wording),
  figure: (mm) => figureIn(mm, wording),
  figureAs: (mm, units) => figureIn(mm, { ...wording, units }),
  lengthAs: (mm, units) => lengthIn(mm, { ...wording, units }),
  unitSign: (units) => unitSign({ ...wording, units }),
  money: (amount, currency = wording.currency) => say({ code: 'listing.price', values: { amount } }, { ...wording, currency })
})

/** Reasons as one paragraph: each a sentence with its stop. */
export const asSentences = (texts: readonly string[]): string => texts.map((text) => (/[.?!]$/.test(text) ? text : `${text}.`)).join(' ')

/** What the page hands down: `<WordsOf.Provider value={{ units, language, currency }}>`. */
export const WordsOf = createContext<Wording>({ units: 'cm', language: 'en' })

export function useWords(): Words {
  const { units, language, currency } = useContext(WordsOf)
  return useMemo(() => wordsFor({ units, ...(language === undefined ? {} : { language }), currency }), [units, language, currency])
}

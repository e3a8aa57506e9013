/**
 * The one place where sentences are made. A message is a template in a message module (en/…); a placeholder is
 * `{name}` or `{name|form}`, and a value that is missing is a programming error and throws.
 *
 * Forms: length (28¾ in, 73 cm) · figure (28¾, 73) · time (1 h 40) · tens (8 in 10) · money · percent · day (12 Oct) · date (12 Oct 2026) ·
 * point, kind, alteration, seam, body, fit, level, condition… (any name of a table: looked up as `form.value`) ·
 * plural: `{n|one:seam|other:seams}` chooses by Intl.PluralRules and writes the word alone.
 */
import { figure, type Units } from '../length.ts'
import { type Messages, messagesIn, spokenRow } from './languages.ts'
import type { Reason, Saying, Values } from './reason.ts'

export interface Wording {
  units: Units
  language?: string
  /** ISO 4217; money without one is written as a plain number. */
  currency?: string | undefined
}

const PLACEHOLDER = /\{(\w+)(?:\|([^{}]+))?\}/g

/** Made once for each key: making one takes longer than a whole sentence. */
const onceEach = <T>(make: (key: string) => T): ((key: string) => T) => {
  const made = new Map<string, T>()
  return (key) => {
    let known = made.get(key)
    if (known === undefined) {
      known = make(key)
      made.set(key, known)
    }
    return known
  }
}
const listFormat = onceEach((language) => new Intl.ListFormat(language, { type: 'conjunction' }))
const choiceFormat = onceEach((language) => new Intl.ListFormat(language, { type: 'disjunction' }))
const pluralRules = onceEach((language) => new Intl.PluralRules(language))

/** Is there a message with this code? (For tests and for tables that must be complete.) */
export const hasMessage = (code: string, language = 'en'): boolean => Object.hasOwn(messagesIn(language), code)

/** The sentence for a saying, in the person's units and language. Throws on an unknown code or a missing value. */
export const say = (saying: Saying, wording: Wording): string => capped(write(saying, wording))

/** The same as it stands inside another sentence: "the hip", "Hüfte". */
export function sayInside(saying: Saying, wording: Wording): string {
  const text = write(saying, wording)
  return spokenRow(wording.language).keepsCapitals ? text : uncapped(text)
}

/** Its point and its alteration are values too, where no others stand for them. */
function valuesOf({ values, point, alteration }: Saying): Values {
  if (point === undefined && alteration === undefined) return values
  const all = { ...values }
  if (point !== undefined) all.point ??= point
  if (alteration !== undefined) all.alteration ??= alteration
  return all
}

/** Several phrases as one, "a, b and c", with a capital at its head. */
export function sayTogether(sayings: readonly Saying[], wording: Wording): string {
  return capped(sayTogetherInside(sayings, wording))
}
/** The same as it stands inside another sentence. */
export const sayTogetherInside = (sayings: readonly Saying[], wording: Wording): string =>
  listed(
    sayings.map((saying) => sayInside(saying, wording)),
    wording
  )

/** A phrase at the head of a sentence. */
export const capped = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
/** Inside another sentence the capital at its head is taken off. A letter that is a shape keeps it: A-line, T-shirt. */
const uncapped = (text: string): string => (/^\p{Lu}-/u.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1))

/** Words in a row: "a, b and c". */
export const listed = (words: readonly string[], { language }: Wording): string => listFormat(spokenRow(language).locale).format(words)

/** Words to choose from: "a, b or c". */
export const listedAsChoice = (words: readonly string[], { language }: Wording): string =>
  choiceFormat(spokenRow(language).locale).format(words)

/** A saying with its sentence. */
export const said = (saying: Saying, wording: Wording): Reason => ({ ...saying, text: say(saying, wording) })

function write(saying: Saying, wording: Wording): string {
  const { code } = saying
  const messages = messagesIn(wording.language)
  const values = valuesOf(saying)
  const template = messages[code]
  if (template === undefined) throw new Error(`no message has the code "${code}"`)
  let text = ''
  for (const part of partsOf(template)) {
    if (typeof part === 'string') {
      text += part
      continue
    }
    const value = values[part.name]
    if (value === undefined) throw new Error(`message "${code}" needs a value for "${part.name}"`)
    text += part.form === undefined ? asOne(asWritten(value, wording)) : shape(messages, value, part.form, values, wording)
  }
  return text
}

/** Signs that turn the direction of all that follows, up to the end of the line; and letters that are written from right to left. */
const TURNS = /[\u202a-\u202e\u2066-\u2069]/g
const RIGHT_TO_LEFT = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/

/** A stranger's text inside a sentence turns nothing but itself: set apart (Unicode Standard Annex 9, isolates), its own turns left out. */
function asOne(text: string): string {
  const plain = text.replace(TURNS, '')
  return plain !== text || RIGHT_TO_LEFT.test(plain) ? `\u2068${plain}\u2069` : text
}

/** A template taken apart once: plain text, and what stands in its braces. */
type Part = string | { name: string; form: string | undefined }
const partsOf = onceEach((template): Part[] => {
  const parts: Part[] = []
  let at = 0
  for (const match of template.matchAll(PLACEHOLDER)) {
    const [whole, name = '', form] = match
    parts.push(template.slice(at, match.index), { name, form })
    at = match.index + whole.length
  }
  parts.push(template.slice(at))
  return parts.filter((part) => part !== '')
})

function shape(messages: Messages, value: number | string, form: string, values: Values, wording: Wording): string {
  if (form.includes(':')) return plural(Number(value), form, wording)
  switch (form) {
    case 'length':
      return lengthIn(Number(value), wording)
    case 'figure':
      return figureIn(Number(value), wording)
    case 'time':
      return time(messages, Number(value))
    case 'tens':
      return tens(messages, Number(value))
    case 'percent':
      return `${Math.round(Number(value))}${spokenRow(wording.language).beforeUnit}%`
    case 'money':
      return money(Number(value), wording)
    case 'day':
      return dayWords(String(value), wording, false)
    case 'date':
      return dayWords(String(value), wording, true)
    case 'unit':
      return unitSign(wording)
    default: {
      // a word from a table: the table's own messages may not begin with a capital inside a sentence
      const word = messages[`${form}.${value}`]
      if (word === undefined) throw new Error(`no word for "${form}.${value}"`)
      return word.replace(PLACEHOLDER, (_, name: string, inner?: string) => {
        const own = values[name]
        if (own === undefined) throw new Error(`word "${form}.${value}" needs a value for "${name}"`)
        return inner === undefined ? String(own) : shape(messages, own, inner, values, wording)
      })
    }
  }
}

/** Closer to an end than this a chance is said by its end: in one draw of sixteen nobody knows anything, so none comes nearer than that. */
const AT_THE_END = 0.075
/** A chance in tenths, as it is said and drawn: 0 is hardly, 10 is more than nine. */
export const inTens = (chance: number): number => (chance < AT_THE_END ? 0 : chance >= 1 - AT_THE_END ? 10 : Math.round(chance * 10))

/** Nothing is ever certain: the ends have words of their own. */
function tens(messages: Messages, chance: number): string {
  const whole = inTens(chance)
  return whole <= 0
    ? worded(messages, 'tens.hardly', {})
    : whole >= 10
      ? worded(messages, 'tens.nearly', {})
      : worded(messages, 'tens.of', { n: whole })
}

function plural(count: number, form: string, wording: Wording): string {
  const words = new Map(form.split('|').map((part) => part.split(':') as [string, string]))
  const word = words.get(pluralRules(spokenRow(wording.language).locale).select(count)) ?? words.get('other')
  if (word === undefined) throw new Error(`a plural needs the form "other": "${form}"`)
  return word
}

function time(messages: Messages, minutes: number): string {
  const whole = Math.round(minutes)
  const values = { hours: Math.floor(whole / 60), minutes: whole % 60, padded: String(whole % 60).padStart(2, '0') }
  const { hours, minutes: rest } = values
  return worded(messages, hours === 0 ? 'time.minutes' : rest === 0 ? 'time.hours' : 'time.hours-and-minutes', values)
}

/** A message of plain values. */
const worded = (messages: Messages, code: string, values: Values): string =>
  (messages[code] ?? '').replace(PLACEHOLDER, (_, name: string) => String(values[name] ?? ''))

/** 28¾ in, 73.5 cm; in German 28¾ Zoll, 73,5 cm. */
export const lengthIn = (mm: number, wording: Wording): string =>
  `${figureIn(mm, wording)}${spokenRow(wording.language).beforeUnit}${unitSign(wording)}`
/** 28¾, 73.5; in German 73,5. */
export const figureIn = (mm: number, { units, language }: Wording): string => figure(mm, units).replace('.', spokenRow(language).decimal)
/** The unit as it stands behind a figure. */
export const unitSign = ({ units, language }: Wording): string => worded(messagesIn(language), `unit-sign.${units}`, {})

function money(amount: number, wording: Wording): string {
  if (wording.currency === undefined) return plainAmount(amount, wording)
  try {
    return moneyFormat(`${localeOf(wording)} ${wording.currency}`).format(amount)
  } catch {
    return `${plainAmount(amount, wording)} ${wording.currency}`
  }
}

const moneyFormat = onceEach((key) => {
  const [locale, currency = ''] = key.split(' ')
  return new Intl.NumberFormat(locale, { style: 'currency', currency })
})

/** A day that was given as ISO date (2026-10-12), as it is written: 12 Oct, 12 Oct 2026. What is no date stays as it is. */
function dayWords(iso: string, wording: Wording, withYear: boolean): string {
  const time = Date.parse(`${iso.slice(0, 10)}T00:00:00Z`)
  if (Number.isNaN(time)) return iso
  return dayFormat(`${localeOf(wording)} ${withYear}`).format(time)
}
const dayFormat = onceEach((key) => {
  const [locale, withYear] = key.split(' ')
  const year = withYear === 'true' ? ({ year: 'numeric' } as const) : {}
  return new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', ...year, timeZone: 'UTC' })
})
/** A value as it is, a number with its decimals as the language writes them. */
const asWritten = (value: number | string, { language }: Wording): string =>
  typeof value === 'number' ? String(value).replace('.', spokenRow(language).decimal) : value
/** 24.50, without a currency. */
export const plainAmount = (amount: number, { language }: Wording): string => amount.toFixed(2).replace('.', spokenRow(language).decimal)
const localeOf = ({ language }: Wording): string => spokenRow(language).locale

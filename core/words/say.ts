/**
 * The one place where sentences are made. A message is a template in a message module (en/…); a placeholder is
 * `{name}` or `{name|form}`, and a value that is missing is a programming error and throws.
 *
 * Forms: length (28¾ in, 73 cm) · figure (28¾, 73) · time (1 h 40) · tens (8 in 10) · money · percent ·
 * point, kind, alteration, seam, body, fit, level, condition… (any name of a table: looked up as `form.value`) ·
 * plural: `{n|one:seam|other:seams}` chooses by Intl.PluralRules and writes the word alone.
 */
import { type Table, table } from '../ids/table.ts'
import { figure, formatLength, type Units } from '../length.ts'
import { en } from './en/index.ts'
import type { Reason, Saying, Values } from './reason.ts'

export interface Wording {
  units: Units
  language?: string
  /** ISO 4217; money without one is written as a plain number. */
  currency?: string | undefined
}

const LANGUAGES = table({ en })
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
const pluralRules = onceEach((language) => new Intl.PluralRules(language))

/** Is there a message with this code? (For tests and for tables that must be complete.) */
export const hasMessage = (code: string, language = 'en'): boolean => Object.hasOwn(messagesIn(language), code)

/** The sentence for a saying, in the person's units and language. Throws on an unknown code or a missing value. */
export function say(saying: Saying, wording: Wording): string {
  const messages = messagesIn(wording.language)
  return write(messages, saying.code, valuesOf(saying), wording)
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
  const phrases = sayings.map((saying) => uncapped(say(saying, wording)))
  return capped(listed(phrases, wording))
}

/** A phrase at the head of a sentence. */
export const capped = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
/** say() puts a capital at the head of every sentence; inside another sentence it is taken off. A letter that is a shape keeps it: A-line, T-shirt. */
export const uncapped = (text: string): string => (/^\p{Lu}-/u.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1))

/** Words in a row: "a, b and c". */
export const listed = (words: readonly string[], { language = 'en' }: Wording): string => listFormat(language).format(words)

/** A saying with its sentence. */
export const said = (saying: Saying, wording: Wording): Reason => ({ ...saying, text: say(saying, wording) })

const messagesOf = onceEach((language): Table<string> => LANGUAGES[language.slice(0, 2).toLowerCase()] ?? en)
const messagesIn = (language = 'en'): Table<string> => messagesOf(language)

function write(messages: Table<string>, code: string, values: Values, wording: Wording): string {
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
    text += part.form === undefined ? asOne(String(value)) : shape(messages, value, part.form, values, wording)
  }
  return capped(text)
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

function shape(messages: Table<string>, value: number | string, form: string, values: Values, wording: Wording): string {
  if (form.includes(':')) return plural(Number(value), form, wording)
  switch (form) {
    case 'length':
      return formatLength(Number(value), wording.units)
    case 'figure':
      return figure(Number(value), wording.units)
    case 'time':
      return time(Number(value))
    case 'tens':
      return tens(messages, Number(value))
    case 'percent':
      return `${Math.round(Number(value))} %`
    case 'money':
      return money(Number(value), wording)
    case 'unit':
      return wording.units
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

/** Nothing is ever certain: the ends have words of their own. */
function tens(messages: Table<string>, chance: number): string {
  const whole = Math.round(chance * 10)
  return whole <= 0 ? (messages['tens.hardly'] ?? '') : whole >= 10 ? (messages['tens.nearly'] ?? '') : `${whole} in 10`
}

function plural(count: number, form: string, wording: Wording): string {
  const words = new Map(form.split('|').map((part) => part.split(':') as [string, string]))
  const word = words.get(pluralRules(wording.language ?? 'en').select(count)) ?? words.get('other')
  if (word === undefined) throw new Error(`a plural needs the form "other": "${form}"`)
  return word
}

function time(minutes: number): string {
  const whole = Math.round(minutes)
  const hours = Math.floor(whole / 60)
  const rest = whole % 60
  if (hours === 0) return `${rest} min`
  return rest === 0 ? `${hours} h` : `${hours} h ${String(rest).padStart(2, '0')}`
}

function money(amount: number, wording: Wording): string {
  if (wording.currency === undefined) return amount.toFixed(2)
  try {
    return new Intl.NumberFormat('en-GB', { style: 'currency', currency: wording.currency }).format(amount)
  } catch {
    return `${amount.toFixed(2)} ${wording.currency}`
  }
}

/**
 * Lengths: a number of millimetres. An inch is exactly 25.4 mm (NIST SP 811, appendix B.8).
 * Reading and writing of lengths as people type them stand here; nothing else converts a unit.
 */
declare const millimetres: unique symbol
export type Millimetres = number & { readonly [millimetres]: true }
export type LengthUnit = 'in' | 'cm' | 'mm'
export type Units = 'cm' | 'in'

export const INCH_MM = 25.4
const MM_PER: Record<LengthUnit, number> = { in: INCH_MM, cm: 10, mm: 1 }

/** A value in a unit as millimetres. */
export const toMm = (value: number, unit: LengthUnit): Millimetres => (value * MM_PER[unit]) as Millimetres

/** Millimetres as a value in a unit. */
export const fromMm = (mm: number, unit: LengthUnit): number => mm / MM_PER[unit]

/** Fractions that are one character; nothing beneath (see ids/table.ts, which stands above this file). */
export const FRACTION_GLYPHS: Readonly<Record<string, number>> = Object.assign(Object.create(null), {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6
})
const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']

/** Why a typed length was not taken; each has its own sentence in the message modules. */
export type LengthProblem = 'empty' | 'not-a-number' | 'no-unit' | 'divided-by-zero' | 'negative' | 'zero' | 'too-large'
export type ParsedLength = { ok: true; mm: Millimetres; value: number; unit: LengthUnit } | { ok: false; problem: LengthProblem }

/** Nothing worn by a person is longer than this (a wedding train is the longest thing kept in mind). */
export const LONGEST_MM = 5000

/** A figure that can be a length: anything else that comes in is taken as not told. */
export const isLength = (mm: number): boolean => Number.isFinite(mm) && mm > 0 && mm <= LONGEST_MM
/** The same, where nothing at all is possible too. */
export const isDepth = (mm: number): boolean => mm === 0 || isLength(mm)

const UNIT_WORDS: [RegExp, LengthUnit][] = [
  [/(?:"|”|“|″|''|’’|′′|\binch(?:es)?|\bins?\b\.?|\bzoll)$/i, 'in'],
  [/\bmms?\b\.?$|millimet(?:re|er)s?$/i, 'mm'],
  [/\bcms?\b\.?$|centimet(?:re|er)s?$/i, 'cm']
]

/**
 * A length as a person types it into a field: `28 3/4`, `28¾`, `28.75"`, `73 cm`, `73,5`.
 * A bare number takes `fallback`; without one it has no unit. `""` is a problem, never 0.
 */
export function parseLength(typed: string, fallback?: LengthUnit): ParsedLength {
  let text = typed.replace(/\s+/g, ' ').trim()
  if (text === '') return { ok: false, problem: 'empty' }
  let unit = fallback
  // 73cm: a unit glued to its figure needs the word boundary that a space gives
  text = text.replace(/(\d)([a-z])/gi, '$1 $2')
  for (const [word, its] of UNIT_WORDS) {
    if (word.test(text)) {
      unit = its
      text = text.replace(word, '').trim()
      break
    }
  }
  const value = parseNumber(text)
  if (typeof value === 'string') return { ok: false, problem: value }
  if (unit === undefined) return { ok: false, problem: 'no-unit' }
  const mm = toMm(value, unit)
  if (mm < 0) return { ok: false, problem: 'negative' }
  if (mm === 0) return { ok: false, problem: 'zero' }
  if (mm > LONGEST_MM) return { ok: false, problem: 'too-large' }
  return { ok: true, mm, value, unit }
}

/** A plain, decimal (point or comma), mixed or glyph number; else why it is none. */
export function parseNumber(text: string): number | 'not-a-number' | 'divided-by-zero' {
  const minus = /^[-−]\s*/.exec(text)
  const rest = minus ? text.slice(minus[0].length) : text
  const sign = minus ? -1 : 1
  if (/^\d{1,6}(?:[.,]\d{1,4})?$/.test(rest)) return sign * Number(rest.replace(',', '.'))
  const glyph = /^(\d{0,4})\s?([½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚])$/.exec(rest)
  if (glyph) return sign * (Number(glyph[1]) + (FRACTION_GLYPHS[glyph[2] ?? ''] ?? 0))
  const mixed = /^(?:(\d{1,4})(?:\s|-))?(\d{1,3})\s?[/⁄]\s?(\d{1,3})$/.exec(rest)
  if (mixed) {
    const below = Number(mixed[3])
    if (below === 0) return 'divided-by-zero'
    return sign * (Number(mixed[1] ?? 0) + Number(mixed[2]) / below)
  }
  return 'not-a-number'
}

/** The figure alone: cm to one decimal, inches to the nearest eighth with the real glyphs. */
export function figure(mm: number, units: Units): string {
  const sign = mm < 0 ? '−' : ''
  const size = Math.abs(mm)
  if (units === 'cm') {
    const tenths = Math.round(size)
    return tenths === 0 ? '0' : `${sign}${tenths % 10 === 0 ? tenths / 10 : (tenths / 10).toFixed(1)}`
  }
  const eighths = Math.round((size / INCH_MM) * 8)
  if (eighths === 0) return '0'
  const whole = Math.floor(eighths / 8)
  return `${sign}${whole > 0 || eighths % 8 === 0 ? whole : ''}${EIGHTHS[eighths % 8]}`
}

/** A length with its unit, as shown everywhere: `28¾ in`, `73 cm`. */
export const formatLength = (mm: number, units: Units): string => `${figure(mm, units)} ${units}`

/** Sizes in words and letters: S/M, extra large, 42R, ages; what follows a waist on a label. */
import { table } from '../../ids/table.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'
import { type Around, LEG, within } from './size-pair.ts'

export const LETTERS = table<string>({
  small: 'S',
  medium: 'M',
  large: 'L',
  xlarge: 'XL',
  xxlarge: 'XXL',
  xsmall: 'XS',
  petite: 'petite',
  os: 'one size',
  osfa: 'one size'
})
const LETTER = /^(?:x{0,4}[sl]|m|[2-6]xl|xs|small|medium|large|xlarge|xxlarge|xsmall|os|osfa)$/
const LONGEST_LETTER = 'xxlarge'.length
/** Asked of every word, most of which are longer or begin otherwise. */
export const isLetterSize = (word: string): boolean =>
  word.length <= LONGEST_LETTER && LETTER_BEGINS.has(word.charAt(0)) && LETTER.test(word)
const LETTER_BEGINS = new Set('xslmo23456')
/** The sizes that head the rows of a table, and how long each is cut. */
export const SIZE_WORD = /^(?:x{0,4}[sl]|m|[2-6]xl|small|medium|large)$/
export const LONG_OR_SHORT = /^(?:regular|long|short|tall|petite|reg)$/

/** 8 · 8-9 (years) */
export function agesFrom({ tokens }: TextRead, one: Quantity): string {
  if (one.range) return `${one.low}-${one.high}`
  const last = tokens[one.to + 1]
  return isOneOf(tokens[one.to], '-/') && last?.kind === 'digits' ? `${one.value}-${last.text}` : String(one.value)
}

/** M · S/M · extra large · one size, after the word size. */
export function letterSize({ tokens }: Around, at: number): string | null {
  const word = tokens[at]?.text ?? ''
  const next = tokens[at + 1]?.text ?? ''
  if (word === 'one' && next === 'size') return 'one size'
  if (/^(?:extra|x)$/.test(word) && /^(?:large|small)$/.test(next)) return next === 'large' ? 'XL' : 'XS'
  // the tag's 32: no size S
  if (!isLetterSize(word) || isOneOf(tokens[at + 1], "'") || (isOneOf(tokens[at - 1], "'") && !tokens[at]?.spaced)) return null
  const first = LETTERS[word] ?? word.toUpperCase()
  const second = tokens[at + 2]
  if (isOneOf(tokens[at + 1], '/') && second?.kind === 'word' && isLetterSize(second.text))
    return `${first}/${LETTERS[second.text] ?? second.text.toUpperCase()}`
  return first
}

/** 3XL: the figure that is glued before its letters, else ''. */
export function timesLarge({ tokens }: TextRead, letters: number): string {
  const times = tokens[letters - 1]?.text ?? ''
  return tokens[letters]?.text === 'xl' && !tokens[letters]?.spaced && /^[2-6]$/.test(times) ? times : ''
}

/** “…, leg 34” after a waist size. */
export function legAfter({ tokens, terms }: Around, byFrom: Map<number, Quantity>, from: number): Quantity | null {
  let at = from
  for (let steps = 0; steps < 5; steps++, at++) {
    const quantity = byFrom.get(at)
    if (quantity) return quantity.unit === null && within(quantity.value, LEG) ? quantity : null
    const token = tokens[at]
    const point = meaning(termAt(terms, at), 'point')
    const leg = point && ['inseam', 'length', 'legLength'].includes(point.point)
    if (
      !token ||
      token.kind === 'break' ||
      (token.kind === 'word' && !leg && token.text !== 'l' && !means(termAt(terms, at), 'light', 'and'))
    )
      return null
  }
  return null
}

/** 42R · 40 L: a suit size, chest and length. */
export function suitSize({ tokens, original, legs, title }: Around, one: Quantity): string | null {
  const letter = tokens[one.to]
  if (legs || one.range || letter?.kind !== 'word' || !Number.isInteger(one.value) || one.value < 34 || one.value > 58) return null
  // “42 R” in a title, with no figure of its own behind it
  const alone = title && letter.text.length === 1 && !/^(?:\d.*|[:=-])$/.test(tokens[one.to + 1]?.text ?? '')
  if (letter.spaced && !alone && !/^(?:long|regular|short|tall|reg)$/.test(letter.text)) return null
  if (letter.spaced && !alone && !/^[.,;)]?$/.test(tokens[one.to + 1]?.text.slice(0, 1) ?? '')) return null
  if (!/^(?:r|l|s|xl|reg|regular|long|short|t|tall)$/.test(letter.text) || !/^[A-Z]/.test(original.slice(letter.start, letter.end)))
    return null
  return `${one.value}${letter.text.charAt(0).toUpperCase()}`
}

/** “jacket 40S”: a chest of 40, short; “40s” and a title all in capitals speak of the years. */
export function isShort40({ tokens, original, legs }: Around, at: number): boolean {
  const letter = tokens[at + 1]
  if (legs || letter?.text !== 's' || letter.spaced || !/^[45]0$/.test(tokens[at]?.text ?? '')) return false
  return original.slice(letter.start, letter.end) === 'S' && /\p{Ll}/u.test(original) && !/^\p{L}/u.test(original.slice(letter.end))
}

/** “tag says 13 x 36”: the second figure of a label. */
export function pairedWith({ tokens }: Around, byFrom: ReadonlyMap<number, Quantity>, one: Quantity): Quantity | null {
  const second = isOneOf(tokens[one.to], 'x/') ? byFrom.get(one.to + 1) : undefined
  return second && second.unit === null && Number.isInteger(second.value) && within(second.value, LEG) ? second : null
}

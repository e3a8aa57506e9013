/** A sum in words: “Fourteen pounds fifty”, “twenty-five quid”. */

import { amount, cue } from '../text/cues.ts'
import { meaning, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Token } from '../text/tokens.ts'

const VALUE = amount('sum')
const TIMES = amount('multiple')
const NOTES = amount('note')
const AND = cue('and')
const HUNDRED = cue('hundred')
const ONE_HUNDRED = cue('oneHundred')
/** Less is a weight, or small change. */
const LEAST = 3

export interface WordsPrice {
  amount: number
  currency: string
  from: number
  to: number
}

/** Every sum in words before a currency's word. A look at those words only. */
export function pricesInWords(text: TextRead): WordsPrice[] {
  const { tokens, terms } = text
  const found: WordsPrice[] = []
  for (const term of termsAs(terms, 'currency')) {
    const currency = meaning(term, 'currency')?.currency
    const note = NOTES.get(tokens[term.from]?.text)
    const sum = note === undefined ? sumBefore(text, term.from) : { value: note, from: term.from }
    if (currency === undefined || sum === null || sum.value < LEAST) continue
    const pence = tensAt(text, term.to)
    found.push({ amount: sum.value + pence.value / 100, currency, from: sum.from, to: pence.to })
  }
  return found
}

/** twenty · twenty five · twenty-five · a hundred and ten · cento e vinte e cinco · 一千五百 */
function sumBefore({ tokens, terms }: TextRead, end: number): { value: number; from: number } | null {
  const numeral = numeralBefore(tokens, end)
  if (numeral !== null) return numeral
  let value = 0
  let from = end
  const last = VALUE.get(tokens[from - 1]?.text) ?? meaning(termAt(terms, end - 1), 'number')?.value
  if (last !== undefined) {
    value = last
    from--
    const tens = tokens[from - 1]?.text === '-' ? from - 2 : from - 1
    const ten = VALUE.get(tokens[tens]?.text) ?? 0
    if (last < 10 && ten >= 20) {
      value += ten
      from = tens
    }
  }
  // “cento e vinte e cinco”: each greater one before it, joined by a word
  for (let joined = from - 2; value > 0 && AND.test(tokens[joined + 1]?.text); joined = from - 2) {
    const greater = VALUE.get(tokens[joined]?.text) ?? 0
    if (greater <= value || greater < 20) break
    value += greater
    from = joined
  }
  const hundred = AND.test(tokens[from - 1]?.text) ? from - 2 : from - 1
  if (HUNDRED.test(tokens[hundred]?.text)) {
    const many = VALUE.get(tokens[hundred - 1]?.text)
    if (many !== undefined || ONE_HUNDRED.test(tokens[hundred - 1]?.text)) return { value: value + (many ?? 1) * 100, from: hundred - 1 }
  }
  return value > 0 ? { value, from } : null
}

const MOST_PARTS = 12
const TEN_THOUSAND = 10_000

/** 一千五百 · 만오천 · 십이만: ones before their tens, hundreds and thousands, those before their ten thousands; with no ones it is one of them. */
function numeralBefore(tokens: readonly Token[], end: number): { value: number; from: number } | null {
  let from = end
  let multiples = 0
  while (end - from < MOST_PARTS) {
    const word = tokens[from - 1]?.kind === 'word' ? (tokens[from - 1]?.text ?? '') : ''
    const times = TIMES.get(word)
    if (times === undefined && VALUE.get(word) === undefined) break
    if (times !== undefined) multiples++
    from--
    if (tokens[from]?.spaced) break
  }
  if (multiples === 0 || tokens[from - 1]?.kind === 'digits') return null
  let whole = 0
  let part = 0
  let ones = 0
  for (let at = from; at < end; at++) {
    const word = tokens[at]?.text ?? ''
    const times = TIMES.get(word)
    if (times === undefined) ones = VALUE.get(word) ?? 0
    else if (times >= TEN_THOUSAND) {
      whole += (part + ones || 1) * times
      part = ones = 0
    } else {
      part += (ones || 1) * times
      ones = 0
    }
  }
  return { value: whole + part + ones, from }
}

/** “pounds fifty”, “euros ninety-five”. */
function tensAt({ tokens }: TextRead, at: number): { value: number; to: number } {
  const value = VALUE.get(tokens[at]?.text) ?? 0
  if (value < 10) return { value: 0, to: at }
  const next = tokens[at + 1]?.text === '-' ? at + 2 : at + 1
  const one = VALUE.get(tokens[next]?.text) ?? 10
  return value >= 20 && one < 10 ? { value: value + one, to: next + 1 } : { value, to: at + 1 }
}

const WEIGHT = cue('weight')

/** Is the currency's word a weight here: “weighs five pounds”, “ten pounds in weight”? */
export const isWeight = ({ tokens, terms }: TextRead, { from, to }: WordsPrice): boolean =>
  [from - 1, from - 2, from - 3, to, to + 1].some((at) => WEIGHT.test(tokens[at]?.text)) ||
  termAt(terms, to)?.meaning.roles.has('height') === true

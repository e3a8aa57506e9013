/** A sum in words: “Fourteen pounds fifty”, “twenty-five quid”. */

import { amount, cue } from '../text/cues.ts'
import { meaning, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'

const VALUE = amount('sum')
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
    const note = NOTES.get(tokens[term.from]?.text ?? '')
    const sum = note === undefined ? sumBefore(text, term.from) : { value: note, from: term.from }
    if (currency === undefined || sum === null || sum.value < LEAST) continue
    const pence = tensAt(text, term.to)
    found.push({ amount: sum.value + pence.value / 100, currency, from: sum.from, to: pence.to })
  }
  return found
}

/** twenty · twenty five · twenty-five · a hundred and ten */
function sumBefore({ tokens, terms }: TextRead, end: number): { value: number; from: number } | null {
  let value = 0
  let from = end
  const last = VALUE.get(tokens[from - 1]?.text ?? '') ?? meaning(termAt(terms, end - 1), 'number')?.value
  if (last !== undefined) {
    value = last
    from--
    const tens = tokens[from - 1]?.text === '-' ? from - 2 : from - 1
    const ten = VALUE.get(tokens[tens]?.text ?? '') ?? 0
    if (last < 10 && ten >= 20) {
      value += ten
      from = tens
    }
  }
  const hundred = AND.test(tokens[from - 1]?.text ?? '') ? from - 2 : from - 1
  if (HUNDRED.test(tokens[hundred]?.text ?? '')) {
    const many = VALUE.get(tokens[hundred - 1]?.text ?? '')
    if (many !== undefined || ONE_HUNDRED.test(tokens[hundred - 1]?.text ?? ''))
      return { value: value + (many ?? 1) * 100, from: hundred - 1 }
  }
  return value > 0 ? { value, from } : null
}

/** “pounds fifty”, “euros ninety-five”. */
function tensAt({ tokens }: TextRead, at: number): { value: number; to: number } {
  const value = VALUE.get(tokens[at]?.text ?? '') ?? 0
  if (value < 10) return { value: 0, to: at }
  const next = tokens[at + 1]?.text === '-' ? at + 2 : at + 1
  const one = VALUE.get(tokens[next]?.text ?? '') ?? 10
  return value >= 20 && one < 10 ? { value: value + one, to: next + 1 } : { value, to: at + 1 }
}

const WEIGHT = cue('weight')

/** Is the currency's word a weight here: “weighs five pounds”, “ten pounds in weight”? */
export const isWeight = ({ tokens, terms }: TextRead, { from, to }: WordsPrice): boolean =>
  [from - 1, from - 2, from - 3, to, to + 1].some((at) => WEIGHT.test(tokens[at]?.text ?? '')) ||
  termAt(terms, to)?.meaning.roles.has('height') === true

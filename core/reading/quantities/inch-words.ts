/** “an inch and a half left to let out”: inches in words, read only where cloth to spare is told (in prose they are anything). */

import { amount, cue } from '../text/cues.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

const REACH = 7

/** The inches that begin at a token and the token after them, or null. */
export function inchWordsAt(text: TextRead, at: number): { value: number; to: number } | null {
  const { tokens, terms } = text
  const found = wordsAt(text, at)
  if (found === null) return null
  for (let near = found.to; near < found.to + REACH; near++) {
    const token = tokens[near]
    if (token === undefined || token.kind === 'break' || token.kind === 'digits' || isOneOf(token, '.;!?')) return null
    if (means(termAt(terms, near), 'letDown', 'letOut', 'seamAllowance')) return found
  }
  return null
}

const word = ({ tokens }: TextRead, at: number): string => (tokens[at]?.kind === 'word' ? (tokens[at]?.text ?? '') : '')
const INCH = cue('inch')
const NUMBERS = amount('inches')
const ARTICLE = cue('article')
const AND = cue('and')
const COUPLE = cue('couple')
const HALF = cue('half')
const OF = cue('of')

/** May inches told in words begin with this word? */
export const mayBeginInches = (word: string): boolean => NUMBERS.get(word) !== undefined || HALF.test(word)

function wordsAt(text: TextRead, at: number): { value: number; to: number } | null {
  const first = word(text, at)
  if (HALF.test(first) && ARTICLE.test(word(text, at + 1)) && INCH.test(word(text, at + 2))) return { value: 0.5, to: at + 3 }
  const couple = first === 'a' && COUPLE.test(word(text, at + 1)) ? (OF.test(word(text, at + 2)) ? 3 : 2) : 0
  if (couple > 0) return INCH.test(word(text, at + couple)) ? { value: 2, to: at + couple + 1 } : null
  const whole = NUMBERS.get(first)
  if (whole === undefined) return null
  // one and a half inches
  if (isHalf(text, at + 1) && INCH.test(word(text, at + 4))) return { value: whole + 0.5, to: at + 5 }
  if (!INCH.test(word(text, at + 1))) return null
  // an inch and a half
  return isHalf(text, at + 2) ? { value: whole + 0.5, to: at + 5 } : { value: whole, to: at + 2 }
}

const isHalf = (text: TextRead, at: number): boolean =>
  AND.test(word(text, at)) && word(text, at + 1) === 'a' && HALF.test(word(text, at + 2))

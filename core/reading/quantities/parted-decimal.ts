/** “17. 5 inches”, “42, 5 cm”, “15 . 5"”: a decimal point or comma with a space behind it, which otherwise parts two numbers. */
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import type { NumberRead } from './numbers.ts'

/** Parts of an inch as a tape has them, in decimals. */
const TAPE_PARTS = /^(?:5|25|75|50)$/
const TENTH = /^[1-9]$/
/** A smaller whole with a part behind it is a list: 4, 5, 6. */
const LEAST_WHOLE = 7

/** The number that goes on behind a space, or null. `number`: the whole that was read at token `at`. */
export function partedDecimal(text: TextRead, at: number, number: NumberRead): NumberRead | null {
  const { tokens, terms } = text
  const point = tokens[number.next]
  const part = tokens[number.next + 1]
  if (number.next !== at + 1 || number.value < LEAST_WHOLE || !part || part.kind !== 'digits' || !part.spaced) return null
  if (point?.kind !== 'mark' || (point.text !== '.' && point.text !== ',') || termAt(terms, number.next + 1)) return null
  // 36, 5, 38: a list
  if (point.text === ',' && tokens[at - 1]?.text === ',') return null
  const next = number.next + 2
  const unit = unitBehind(text, next)
  const fits = unit === null ? TAPE_PARTS.test(part.text) && endsThere(tokens, next) : isPart(part, unit)
  if (!fits) return null
  // “waist 27, 5 cm pocket”: another figure with its own name
  const behind = termAt(terms, unit === null ? next : unit.to)
  if (point.text === ',' && behind && means(behind, 'detail', 'thing', 'letDown', 'letOut', 'fault')) return null
  return { value: Number(`${number.value}.${part.text}`), next }
}

const isPart = ({ text }: Token, { cm }: { cm: boolean }): boolean => TAPE_PARTS.test(text) || (cm && TENTH.test(text))

function unitBehind({ tokens, terms }: TextRead, at: number): { to: number; cm: boolean } | null {
  const mark = tokens[at]
  if (mark?.text === '"') return { to: at + 1, cm: false }
  const term = termAt(terms, at)
  const unit = term?.from === at ? meaning(term, 'unit')?.unit : undefined
  return term && (unit === 'cm' || unit === 'in') ? { to: term.to, cm: unit === 'cm' } : null
}

/** Nothing that could be counted follows: the line or the part of a list ends. */
const endsThere = (tokens: readonly Token[], at: number): boolean => {
  const next = tokens[at]
  return next === undefined || next.kind === 'break' || (next.kind === 'mark' && isOneOf(next, ',;/|)') && !isListed(tokens, at))
}

/** 36, 5, 8 · 29. 50/50 */
const isListed = (tokens: readonly Token[], at: number): boolean =>
  tokens[at + 1]?.kind === 'digits' && (tokens[at]?.text === ',' || !tokens[at]?.spaced)

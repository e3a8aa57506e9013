/** One number in a run of tokens: plain, decimal (point or comma), mixed (30 1/2, 30-1/2, 30½, 30 and a half). */
import { FRACTION_GLYPHS } from '../../length.ts'
import { amount, cue } from '../text/cues.ts'
import { isOneOf, type Token } from '../text/tokens.ts'

export type NumberProblem = 'divided-by-zero' | 'unclear-number'
export interface NumberRead {
  value: number
  /** The token after it. */
  next: number
  problem?: NumberProblem
}

/** Denominators that a tape has. */
const PARTS = new Set([2, 3, 4, 5, 8, 16, 32])
const LONGEST_DIGITS = 6

const isDigits = (token: Token | undefined): boolean => token?.kind === 'digits'

/** The number that begins at token `at`, or null. `halves`: words for one half (“and a half”). */
export function numberAt(tokens: readonly Token[], at: number, halves: ReadonlySet<string>): NumberRead | null {
  const first = tokens[at]
  if (first === undefined) return null
  if (first.kind === 'fraction') return { value: FRACTION_GLYPHS[first.text] ?? 0, next: at + 1 }
  if (first.kind !== 'digits' || first.text.length > LONGEST_DIGITS) return null

  const alone = simpleFraction(tokens, at)
  if (alone !== null && !isWaistAndLeg(tokens, at)) return alone

  const whole = decimal(tokens, at)
  if (whole.problem !== undefined || !Number.isInteger(whole.value)) return whole
  const part = fractionAfter(tokens, whole.next, halves)
  if (part === null) return whole
  if (part.problem !== undefined) return part
  return { value: whole.value + part.value, next: part.next }
}

/**
 * 30.5 · 30,5 · but not 30. Next · 30, 40 · 36,28,38 · 1.234.567
 *   ^        ^
 */
function decimal(tokens: readonly Token[], at: number): NumberRead {
  const first = tokens[at] as Token
  const value = Number(first.text)
  const plain: NumberRead = { value, next: at + 1 }
  const point = tokens[at + 1]
  if (point === undefined || point.spaced || (point.text !== '.' && point.text !== ',')) return plain
  const after = tokens[at + 2]
  if (after === undefined || after.spaced) return plain
  if (isOneOf(after, '.') && isDigits(tokens[at + 3]) && !tokens[at + 3]?.spaced) {
    // 3..5: two dots between digits
    return { value, next: at + 4, problem: 'unclear-number' }
  }
  if (!isDigits(after)) return plain
  // 36,28,38 is a list; 1.234.567 is nothing of ours
  const again = tokens[at + 3]
  if (point.text === ',' && again?.text === ',' && !again.spaced && isDigits(tokens[at + 4]) && !tokens[at + 4]?.spaced) return plain
  if (point.text === ',' && tokens[at - 1]?.text === ',' && !point.spaced && isDigits(tokens[at - 2])) return plain
  if (after.text.length > (point.text === ',' ? 2 : 4)) return plain
  return { value: Number(`${first.text}.${after.text}`), next: at + 3 }
}

/** 1/2 · 3/4 · 1/0: a fraction without a whole. Only those a tape has; 32/34 is a pair. */
function simpleFraction(tokens: readonly Token[], at: number): NumberRead | null {
  const above = tokens[at]
  const below = tokens[at + 2]
  if (!above || !below || !isDigits(above) || !isOneOf(tokens[at + 1], '/') || !isDigits(below)) return null
  if (above.text.length > 2 || below.text.length > 2) return null
  if (Number(below.text) === 0) return { value: 0, next: at + 3, problem: 'divided-by-zero' }
  // 12/05/2023, 1/2/3
  if (isOneOf(tokens[at + 3], '/') && isDigits(tokens[at + 4])) return null
  if (isOneOf(tokens[at - 1], '/') && isDigits(tokens[at - 2])) return null
  if (!PARTS.has(Number(below.text)) || Number(above.text) >= Number(below.text) || Number(above.text) === 0) return null
  return { value: Number(above.text) / Number(below.text), next: at + 3 }
}

/** jeans 28/32: no tape’s part, which stands behind a whole where it has so many 32nds */
const isWaistAndLeg = (tokens: readonly Token[], at: number): boolean =>
  tokens[at + 2]?.text === '32' && Number(tokens[at]?.text) >= LEAST_WAIST
/** The smallest waist that jeans are labelled with, in (common practice, no source). */
const LEAST_WAIST = 23

/** What makes a whole number mixed: ` 1/2`, `-1/2`, `½`, ` and a half`, ` & 1/2`. */
function fractionAfter(tokens: readonly Token[], at: number, halves: ReadonlySet<string>): NumberRead | null {
  const next = tokens[at]
  if (next === undefined) return null
  // 30 - 1/2 in two halves of a list is rare: a spaced hyphen before a fraction still joins them
  const isJoint = isOneOf(next, '-&+')
  const joined = isJoint || JOINS.test(next.text) ? at + 1 : at
  const first = tokens[joined]
  if (first?.kind === 'fraction') return { value: FRACTION_GLYPHS[first.text] ?? 0, next: joined + 1 }
  if (isDigits(first)) return simpleFraction(tokens, joined)
  return joined > at && !isJoint ? partInWords(tokens, joined, halves) : null
}
/** a half · a quarter · three quarters · drei Viertel: the part of an inch that words tell. */
export function partInWords(tokens: readonly Token[], at: number, halves: ReadonlySet<string>): { value: number; next: number } | null {
  const first = tokens[at]
  if (first?.kind !== 'word') return null
  const counted = COUNTS.get(first.text)
  const word = counted !== undefined || ARTICLES.test(first.text) ? tokens[at + 1] : first
  if (word?.kind !== 'word') return null
  const next = word === first ? at + 1 : at + 2
  if (counted === undefined && halves.has(word.text)) return { value: 0.5, next }
  const part = PART.get(word.text)
  if (part === undefined || (counted ?? 1) * part >= 1) return null
  return { value: (counted ?? 1) * part, next }
}
const COUNTS = amount('parts')
const PART = amount('part')
const JOINS = cue('joinsPart')
const ARTICLES = cue('onePart')

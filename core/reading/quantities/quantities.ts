/** Figures that may be lengths: a number or a range with its unit, if any, and its place. */
import type { LengthUnit } from '../../length.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'
import { inchWordsAt, mayBeginInches } from './inch-words.ts'
import { inIsUnit, isNoLength } from './not-a-length.ts'
import { type NumberProblem, numberAt, partInWords } from './numbers.ts'
import { partedDecimal } from './parted-decimal.ts'

export interface Quantity {
  /** Its tokens. */
  from: number
  to: number
  value: number
  low: number
  high: number
  unit: LengthUnit | null
  /** The unit stands at the head of its column, not beside it. */
  fromColumn?: true
  range: boolean
  problem: NumberProblem | 'negative' | null
  /** Feet and inches, metres and centimetres: somebody's height. */
  height: boolean
  /** A figure beside it that is its double, its half, or “x2”. */
  doubling: 'flat' | 'around' | null
  /** The token after all that belongs to it, what says it again included. */
  spanTo: number
  /** The same in another unit, when it cannot be the same. */
  disagrees: Quantity | null
}

/** Every quantity of a text, left to right. Linear. */
export function quantitiesOf(text: TextRead): Quantity[] {
  const { tokens } = text
  const found: Quantity[] = []
  for (let at = 0; at < tokens.length; ) {
    const one = quantityAt(text, at)
    if (one === null) at++
    else if (one === 'skip') at = pastNumber(text, at)
    else {
      found.push(one)
      at = one.to
    }
  }
  return found
}

/** A number that is no length: step over its decimals too, that 4.9 leaves no 9 behind. */
function pastNumber({ tokens }: TextRead, at: number): number {
  const point = tokens[at + 1]
  const glued = point && !point.spaced && isOneOf(point, '.,') && tokens[at + 2]?.kind === 'digits' && !tokens[at + 2]?.spaced
  return glued ? at + 3 : at + 1
}

/** A quantity as found; whoever moves its end moves `spanTo` with it. */
const make = (from: number, to: number, value: number, unit: LengthUnit | null): Quantity => ({
  from,
  to,
  value,
  low: value,
  high: value,
  unit,
  range: false,
  problem: null,
  height: false,
  doubling: null,
  spanTo: to,
  disagrees: null
})

function quantityAt(text: TextRead, at: number): Quantity | 'skip' | null {
  const { tokens, terms, trie } = text
  const token = tokens[at] as Token
  const term = termAt(terms, at)
  if (token.kind === 'word') return inWords(text, at) ?? inchesInWords(text, at)
  if (token.kind !== 'digits' && token.kind !== 'fraction') return null
  if (term) return null // p2p, 3/4 sleeve, x2
  const height = heightAt(text, at)
  if (height) return height
  const whole = numberAt(tokens, at, trie.halves)
  if (whole === null) return 'skip'
  const number = partedDecimal(text, at, whole) ?? whole
  const unit = unitAt(text, number.next, at, number.value)
  if (isNoLength(text, at, number.next, unit.unit !== null, number.value)) return 'skip'
  const one = make(at, unit.to, number.value * unit.times, unit.unit)
  one.low = one.high = one.value
  if (number.problem) return { ...one, problem: number.problem, to: number.next, spanTo: number.next }
  const ranged = rangeFrom(text, one)
  return withSign(text, ranged ?? one)
}

/** “two inches”, “twenty-two and a half inches”: numbers in words count only before a unit that is no preposition. */
function inWords({ tokens, terms, trie }: TextRead, at: number): Quantity | null {
  const term = termAt(terms, at)
  const number = meaning(term, 'number')
  if (!term || !number || term.from !== at) return null
  let { value } = number
  let to = term.to
  // twenty-two, twenty two
  const hyphen = tokens[to]?.text === '-' && !tokens[to]?.spaced ? to + 1 : to
  const ones = value >= 20 && value % 10 === 0 ? meaning(termAt(terms, hyphen), 'number')?.value : undefined
  if (ones !== undefined && ones < 10) {
    value += ones
    to = hyphen + 1
  }
  const part = means(termAt(terms, to), 'and') ? partInWords(tokens, to + 1, trie.halves) : null
  if (part) {
    value += part.value
    to = part.next
  }
  // two-inch hem
  if (tokens[to]?.text === '-' && !tokens[to]?.spaced && tokens[to + 1]?.spaced === false) to++
  const next = termAt(terms, to)
  const unit = meaning(next, 'unit')
  if (!next || next.from !== to || !unit || unit.unit === 'm' || unit.unit === 'ft' || tokens[next.from]?.text === 'in') return null
  return make(at, next.to, value, unit.unit)
}

function inchesInWords(text: TextRead, at: number): Quantity | null {
  const { tokens } = text
  const found = mayBeginInches(tokens[at]?.text ?? '') ? inchWordsAt(text, at) : null
  return found && make(at, found.to, found.value, 'in')
}

/**
 * "size 12" chest 40
 *  ^       ^ a sign that closes what was opened before a word is no inch mark
 */
function closesQuote({ tokens }: TextRead, at: number): boolean {
  for (let back = at - 1; back >= Math.max(0, at - 6); back--) {
    const token = tokens[back] as Token
    if (token.kind === 'break') return false
    if (token.text !== '"') continue
    return token.spaced && tokens[back + 1]?.kind === 'word' && tokens[back + 1]?.spaced === false
  }
  return false
}

interface UnitRead {
  unit: LengthUnit | null
  /** Metres are kept as centimetres: 100. */
  times: number
  to: number
}

/** The unit after a number: marks, words, words after a hyphen (30-inch). */
function unitAt(text: TextRead, at: number, from: number, value: number): UnitRead {
  const { tokens, terms } = text
  const none: UnitRead = { unit: null, times: 1, to: at }
  const next = tokens[at]
  if (next === undefined || next.kind === 'break') return none
  if (next.text === '"') {
    const opens = tokens[from - 1]
    const quoted = opens?.text === '"' && !tokens[from]?.spaced && !/digits|fraction/.test(tokens[from - 2]?.kind ?? '')
    if (quoted || closesQuote(text, at)) return none
    // a quotation that begins after the number: 30 "vintage"
    if (next.spaced && tokens[at + 1]?.spaced === false && tokens[at + 1]?.kind === 'word' && !means(termAt(terms, at + 1), 'point'))
      return none
    return { unit: 'in', times: 1, to: tokens[at + 1]?.text === '"' && !tokens[at + 1]?.spaced ? at + 2 : at + 1 }
  }
  if (next.text === "'" && !next.spaced) {
    if (tokens[at + 1]?.text === "'") return { unit: 'in', times: 1, to: at + 2 }
    if (tokens[at + 1]?.text === 's') return none
    return value >= 8 ? { unit: 'in', times: 1, to: at + 1 } : none
  }
  const hyphen = next.text === '-' && !next.spaced && tokens[at + 1]?.spaced === false
  const word = hyphen ? at + 1 : at
  const term = termAt(terms, word)
  const its = term?.from === word ? meaning(term, 'unit') : undefined
  if (!term || !its || its.unit === 'ft') return none
  if (its.unit === 'm') {
    const letter = tokens[word]?.text === 'm'
    const following = tokens[term.to]
    const sure =
      !letter ||
      !next.spaced ||
      !Number.isInteger(value) ||
      following === undefined ||
      following.kind !== 'word' ||
      means(termAt(terms, term.to), 'point', 'height', 'basis')
    return sure && value <= 30 ? { unit: 'cm', times: 100, to: term.to } : none
  }
  if (its.unit === 'in' && !hyphen && !inIsUnit(text, word)) return none
  return { unit: its.unit, times: 1, to: term.to }
}

/** 5'8" · 5ft 6 · 5 foot 7 inches · 1m75: heights, as inches or centimetres. */
function heightAt(text: TextRead, at: number): Quantity | null {
  const { tokens, terms } = text
  const first = tokens[at] as Token
  if (first.kind !== 'digits' || first.text.length > 1) return null
  const big = Number(first.text)
  const mark = tokens[at + 1]
  if (mark === undefined || mark.kind === 'break') return null
  const foot = (mark.text === "'" && tokens[at + 2]?.text !== "'") || meaning(termAt(terms, at + 1), 'unit')?.unit === 'ft'
  if (foot && big >= 3 && big <= 7) {
    let to = at + 2
    const small = numberAt(tokens, to, new Set())
    let value = big * 12
    if (small && small.value < 12 && tokens[to]?.kind !== 'break') {
      value += small.value
      to = small.next
      const unit = unitAt(text, to, to - 1, small.value)
      if (unit.unit === 'in' || unit.unit === null) to = unit.to
      if (tokens[to]?.text === "'" && tokens[to + 1]?.text === "'") to += 2
    }
    return { ...make(at, to, value, 'in'), height: true }
  }
  const metres = mark.text === 'm' && !mark.spaced && tokens[at + 2]?.kind === 'digits' && !tokens[at + 2]?.spaced
  if (metres && (big === 1 || big === 2) && tokens[at + 2]?.text.length === 2)
    return { ...make(at, at + 3, big * 100 + Number(tokens[at + 2]?.text), 'cm'), height: true }
  return null
}

const WIDEST_RANGE = 1.75
const JOINTS = new Set(['-', '~'])

/** 28-30" · 28" - 30" · 28 to 30 in · between 28 and 30 · 28/30": low end first, both in one unit. */
function rangeFrom(text: TextRead, low: Quantity): Quantity | null {
  const { tokens, terms, trie } = text
  const join = tokens[low.to]
  if (join === undefined) return null
  const between = means(termAt(terms, low.from - 1), 'between')
  const slash = join.text === '/'
  const word = termAt(terms, low.to)
  const joins = join.text === '-' || join.text === '~' || slash || means(word, 'to') || (between && means(word, 'and'))
  if (!joins) return null
  let at = word && means(word, 'to') && word.from === low.to ? word.to : low.to + 1
  if (tokens[at]?.text === '-' && !tokens[at]?.spaced) at++ // 28--30
  const second = tokens[at]
  if (second?.kind !== 'digits' || termAt(terms, at)) return null
  const number = numberAt(tokens, at, trie.halves)
  if (number === null || number.problem) return null
  const unit = unitAt(text, number.next, at, number.value)
  const high = number.value * unit.times
  if (isNoLength(text, at, number.next, unit.unit !== null, number.value)) return null
  if (low.unit !== null && unit.unit !== null && low.unit !== unit.unit) return null
  if (!(high > low.value) || high > low.value * WIDEST_RANGE) return null
  // 33/34 bare is between two; 32/34 may be a waist and a leg
  if (slash && (low.unit !== null || high - low.value > (unit.unit === null ? 1 : 4))) return null
  // 36-28-38 and 30-34-32: three numbers in a row are no range
  const third = tokens[unit.to]
  const goesOn = third && (third.text === join.text || (third.kind === 'mark' && JOINTS.has(third.text) && JOINTS.has(join.text)))
  if (goesOn && tokens[unit.to + 1]?.kind === 'digits' && (JOINTS.has(join.text) || slash)) return null
  const joinedBefore = tokens[low.from - 1]?.text === join.text && tokens[low.from - 2]?.kind === 'digits'
  if (joinedBefore && (join.spaced || !tokens[low.from]?.spaced)) return null
  return {
    ...low,
    to: unit.to,
    spanTo: unit.to,
    value: (low.value + high) / 2,
    low: low.value,
    high,
    unit: unit.unit ?? low.unit,
    range: true
  }
}

/** A minus is one only after a colon or an equals sign: “Waist: -4”, not “waist -30"”. */
function withSign({ tokens }: TextRead, one: Quantity): Quantity {
  const minus = tokens[one.from - 1]
  if (minus?.text !== '-' || tokens[one.from]?.spaced) return one
  const before = tokens[one.from - 2]
  if (before?.text !== ':' && before?.text !== '=') return one
  return { ...one, from: one.from - 1, value: -one.value, low: -one.value, high: -one.value, problem: 'negative' }
}

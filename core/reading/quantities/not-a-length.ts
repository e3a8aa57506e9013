/** Numbers that are no lengths by what stands glued to them or right beside them: prices, dates, percents, counts, times, degrees. */

import { isUnspaced } from '../languages/scripts.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, meansAny, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf, type Token } from '../text/tokens.ts'

/** Behind an “in” that is a unit stands one of these, or no word at all. */
const LENGTHS_BEHIND: Parameters<typeof meansAny>[1] = [
  'point',
  'basis',
  'detail',
  'letDown',
  'letOut',
  'to',
  'position',
  'and',
  'or',
  'relaxed',
  'stretched',
  'landmark',
  'inner',
  'model',
  'thing'
]

const SMALL_BEHIND: Parameters<typeof meansAny>[1] = ['light', 'from', 'front', 'back', 'measures', 'not', 'stretch', 'height']

export const CURRENCY_MARKS = new Set(['£', '€', '$', '¥', '₹', '₩'])
/** “pagato 190”: what somebody gave for it. */
export const PAID = cue('paid')
const AFTER = new Set(['%', '°', '£', '€', '$', '¥', '₩'])
const SHORTHAND = cue('shorthand')

const NUMBERED = cue('numbered')
const BEFORE_YEAR = cue('beforeYear')

/** Is the number at tokens from..to none of a length? `unit`: a unit of length was found after it. */
export function isNoLength(text: TextRead, from: number, to: number, unit: boolean, value: number): boolean {
  const { tokens, terms } = text
  const before = tokens[from - 1]
  const after = tokens[to]
  const first = tokens[from] as Token
  if (before && !first.spaced && before.kind !== 'break') {
    if (before.text === '#' || CURRENCY_MARKS.has(before.text)) return true
    // w32, waist30: a name glued to its figure; anything else is a code
    if (before.kind === 'word' && !standsGlued(before) && !SHORTHAND.test(before.text) && !means(termAt(terms, from - 1), 'point'))
      return true
    // 10:30, 12/05/2023, 3-4-5-6, 1.234.567
    if (before.text === ':' && isDigits(tokens[from - 2]) && !before.spaced && !unit) return true
    if (before.text === '.' && isDigits(tokens[from - 2]) && !before.spaced) return true
  }
  if (before && CURRENCY_MARKS.has(before.text)) return true
  const sign = before?.text === '.' ? tokens[from - 2] : before
  if (NUMBERED.test(sign?.text) || before?.text === '№') return true
  if (before && BEFORE_YEAR.test(before.text) && value >= 1900 && value <= 2035) return true
  if (unit) return false
  if (PAID.test(before?.text)) return true
  if (value >= 400 || (first.text.length > 1 && first.text.startsWith('0'))) return true
  if (isDate(text, from) || isPhone(text, from)) return true
  // 9/10: the ten of a score
  if (
    before?.text === '/' &&
    !first.spaced &&
    (value === 10 || value === 5) &&
    isDigits(tokens[from - 2]) &&
    Number(tokens[from - 2]?.text) <= value
  )
    return true
  if (after === undefined) return false
  if (!after.spaced && after.text === 's' && value >= 20 && value % 10 === 0) return true
  if (!after.spaced && after.kind === 'word' && !standsGlued(after) && !SHORTHAND.test(after.text) && !means(termAt(terms, to), 'point'))
    return true
  if (AFTER.has(after.text)) return true
  if (isCompound(text, to)) return true
  if (after.text === '+' && !after.spaced) return true
  // the beginning of 1.234.567
  if (after.text === '.' && !after.spaced && isDigits(tokens[to + 1]) && !tokens[to + 1]?.spaced) return true
  if (after.text === ':' && !after.spaced && isDigits(tokens[to + 1]) && !tokens[to + 1]?.spaced) return true
  if (after.text === '/' && !after.spaced && /^(?:10|5)$/.test(tokens[to + 1]?.text ?? '') && value <= 10) return true
  if (after.text === "'" && tokens[to + 1]?.text === 's') return true
  const term = termAt(terms, to)
  // S-17 C-21: a name of one letter, no degrees
  if (term && means(term, 'otherUnit') && !means(term, 'point') && !isLetterName(text, to)) return true
  // “8 small buttons”: a count of details two words on
  const further = termAt(terms, term ? term.to : to + 1)
  if (after.kind === 'word' && !means(term, 'point', 'basis', 'light', 'unit', 'measures') && means(further, 'otherUnit') && value <= 12)
    return true
  return false
}

/** “3-snap cuffs”, “5-pocket”: a count in front of what is counted. */
const isCompound = ({ tokens, terms }: TextRead, at: number): boolean => {
  const [hyphen, word] = [tokens[at], tokens[at + 1]]
  if (hyphen?.text !== '-' || hyphen.spaced || word?.kind !== 'word' || word.spaced) return false
  return !SHORTHAND.test(word.text) && !means(termAt(terms, at + 1), 'unit', 'point', 'landmark', 'basis', 'front', 'back')
}
/** 約52, 着丈70袖丈60: in scripts without spaces any word may stand glued to a figure. */
const standsGlued = ({ text }: Token): boolean => isUnspaced(text.charCodeAt(0))

const isLetterName = ({ tokens }: TextRead, at: number): boolean => SHORTHAND.test(tokens[at]?.text) && isOneOf(tokens[at + 1], ':=-')

const isDigits = (token: Token | undefined): boolean => token?.kind === 'digits'

/** 12/05/2023, 12.05.23, 2023-05-12. */
function isDate({ tokens }: TextRead, at: number): boolean {
  for (const first of [at, at - 2, at - 4]) {
    const [a, s, b, t, c] = tokens.slice(Math.max(0, first), Math.max(0, first) + 5)
    if (first < 0 || !a || !s || !b || !t || !c) continue
    if (!isDigits(a) || !isDigits(b) || !isDigits(c) || s.text !== t.text || s.spaced || t.spaced || b.spaced || c.spaced) continue
    if (!isOneOf(s, '/.-')) continue
    const years = [a.text, c.text].some((text) => /^(?:19|20)\d\d$/.test(text))
    if (
      years ||
      (s.text !== '-' &&
        /^\d\d$/.test(c.text) &&
        Number(a.text) <= 31 &&
        Number(b.text) <= 12 &&
        (a.text.startsWith('0') || b.text.startsWith('0')))
    )
      return true
  }
  return false
}

const joins = (token: Token | undefined): boolean => token?.text === '-' || token?.text === '(' || token?.text === ')'

/** 0555 010 203 · (555) 010-2030: groups of digits, one of them long or with a leading nought. */
function isPhone({ tokens }: TextRead, at: number): boolean {
  let from = at
  let to = at
  while (at - from < 8 && (isDigits(tokens[from - 1]) || (joins(tokens[from - 1]) && isDigits(tokens[from - 2])))) from--
  while (to - at < 8 && (isDigits(tokens[to + 1]) || (joins(tokens[to + 1]) && isDigits(tokens[to + 2])))) to++
  const groups = tokens.slice(from, to + 1).filter((token) => token.kind === 'digits')
  if (groups.length < 2) return false
  const digits = groups.reduce((sum, token) => sum + token.text.length, 0)
  return digits >= 9 && groups.some((token) => token.text.length >= 3)
}

const AFTER_PREPOSITION = cue('afterPreposition')

/** Is this 'in' a unit after a number, or the preposition? “30 in, …” against “2 in the back”, “size 8 in women's”. */
export function inIsUnit({ tokens, terms }: TextRead, at: number): boolean {
  const word = tokens[at]
  if (word?.text !== 'in') return true
  if (!word.spaced) return true
  const next = tokens[at + 1]
  if (next === undefined || next.kind !== 'word') return true
  const term = termAt(terms, at + 1)
  if (meansAny(term, LENGTHS_BEHIND)) return true
  if (AFTER_PREPOSITION.test(next.text)) return false
  if (
    meaning(term, 'colour') ||
    meaning(term, 'conditionWord') ||
    meaning(term, 'use') ||
    meaning(term, 'region') ||
    meaning(term, 'condition')
  )
    return false
  return meansAny(term, SMALL_BEHIND)
}

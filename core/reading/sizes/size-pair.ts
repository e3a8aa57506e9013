/** A waist and a leg as a pair: W32 L34, 32W 34L, 32x34; a label, or measured. */
import type { Quantity } from '../quantities/quantities.ts'
import { cue } from '../text/cues.ts'
import { meaning, means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

/** The text that size labels are looked for in. */
export interface Around extends TextRead {
  quantities: readonly Quantity[]
  /** A pair of bare numbers can only be a size on a garment with legs. */
  legs: boolean
  /** What is worn above the waist has no waist and leg on its label. */
  upper?: boolean
  /** A title: a letter alone is a size. */
  title: boolean
  language: string
}

export const WAIST = { least: 22, most: 56 }
export const LEG = { least: 24, most: 40 }
export const within = (value: number, { least, most }: { least: number; most: number }) =>
  Number.isInteger(value) && value >= least && value <= most

const WAIST_WORD = cue('waistOfSize')

const wordAt = ({ tokens }: TextRead, index: number): string | undefined =>
  tokens[index]?.kind === 'word' ? tokens[index]?.text : undefined

/** W32 L34 · Waist 32 L 34 · 32W 34L · 32x34 · 32/34 on legs; after “measures” the pair is measured. */
export function pairAt(around: Around, byFrom: Map<number, Quantity>, at: number) {
  const { tokens } = around
  // W32 L34, W 32 / L 34, Waist 32 L 34
  if (wordAt(around, at) === 'w' || (WAIST_WORD.test(wordAt(around, at)) && around.legs)) {
    const waist = byFrom.get(at + 1)
    if (!waist || waist.unit !== null || !within(waist.value, WAIST)) return null
    let next = waist.to
    if (isOneOf(tokens[next], '/,x-')) next++
    const leg = byFrom.get(next + 1)
    if (wordAt(around, next) === 'l' && leg && leg.unit === null && within(leg.value, LEG) && !moreShorthand(around, leg.to))
      return { waist, leg, measured: around.legs && saidBefore(around, at) === 'measures' }
    return null
  }
  const first = byFrom.get(at)
  if (!first || first.range || first.problem) return null
  const measured = measuredPair(around, first, byFrom)
  if (measured !== null) return measured
  if (!within(first.value, WAIST)) return null
  // 32W 34L; of a top 22W x 28L is how wide and how long
  if (!around.upper && wordAt(around, first.to) === 'w' && !tokens[first.to]?.spaced) {
    let next = first.to + 1
    if (isOneOf(tokens[next], '/,x-')) next++
    const leg = byFrom.get(next)
    if (leg && leg.unit === null && within(leg.value, LEG) && wordAt(around, leg.to) === 'l') return { waist: first, leg, measured: false }
    return null
  }
  const sign = tokens[first.to]
  const times =
    sign?.text === 'x' ||
    (sign?.text === '/' && first.unit === null) ||
    (sign?.text === '-' && around.legs && first.unit === null && around.title)
  const second = byFrom.get(first.to + 1)
  if (!times || !second || second.range || !within(second.value, LEG)) return null
  const third = tokens[second.to]
  // 30 x 20 x 10: a parcel
  if (third && third.text === sign?.text && byFrom.has(second.to + 1)) return null
  if (tokens[at - 1]?.text === sign?.text && (tokens[at - 2]?.kind === 'digits' || tokens[at - 2]?.text === '"')) return null
  const prefix = saidBefore(around, at)
  if (labelled(around, at, second.to)) return null
  if (prefix === 'measures') return { waist: first, leg: second, measured: true }
  // 36/38 on a dress is between two sizes
  if (!around.legs && (prefix !== 'size' || sign?.text === '/')) return null
  if (first.unit === 'cm' || second.unit === 'cm') return null
  return { waist: first, leg: second, measured: false }
}

/** “measures 33 x 30.5”, “actual measurements 33" x 30 1/2"” on legs: with a half a pair is no size. */
function measuredPair(around: Around, waist: Quantity, byFrom: Map<number, Quantity>) {
  const { tokens } = around
  const leg = tokens[waist.to]?.text === 'x' ? byFrom.get(waist.to + 1) : undefined
  if (!around.legs || !leg || leg.range || leg.problem || !isMeasured(around, waist, leg)) return null
  if (waist.unit === 'cm' || leg.unit === 'cm' || !between(waist.value, WAIST) || !between(leg.value, LEG)) return null
  if (tokens[leg.to]?.text === 'x' || labelled(around, waist.from, leg.to)) return null
  return { waist, leg, measured: true }
}
/** Told as measured before it or behind it; with a half a pair is no size. */
const isMeasured = (around: Around, waist: Quantity, leg: Quantity): boolean => {
  const said = saidBefore(around, waist.from)
  if (said === 'measures') return true
  const halved = !Number.isInteger(waist.value) || !Number.isInteger(leg.value)
  const behind = MEASURES.test(around.tokens[leg.to]?.text) && !isFigure(around, leg.to + 1)
  return said !== 'size' && !isAdvised(around, waist.from) && (halved || behind)
}
const isFigure = ({ tokens }: TextRead, at: number): boolean => tokens[at]?.kind === 'digits' || tokens[at + 1]?.kind === 'digits'

/** “fits like a 33 x 30”. */
export function isAdvised({ tokens, terms }: TextRead, from: number): boolean {
  for (let at = from - 1; at >= Math.max(0, from - 5) && tokens[at]?.kind === 'word'; at--)
    if (means(termAt(terms, at), 'fits')) return true
  return false
}

/** “tag says 34x32 but they’ve shrunk, I get 33 x 30”: a pair behind that of the label, and not told as a size. */
export const isOtherThanLabel = (around: Around, { waist, leg }: { waist: Quantity; leg: Quantity }, labels: readonly string[]): boolean =>
  labels.some((label) => /^W\d+ L\d+$/.test(label) && label !== `W${waist.value} L${leg.value}`) &&
  around.tokens[waist.to]?.text === 'x' &&
  saidBefore(around, waist.from) !== 'size' &&
  !isAdvised(around, waist.from)

const between = (value: number, { least, most }: { least: number; most: number }) => value >= least && value <= most

/** A name right before the pair or right behind it claims it: waist/length 32/34. */
function labelled({ tokens, terms }: Around, from: number, to: number): boolean {
  for (let at = from - 1; at >= Math.max(0, from - 3); at--) {
    const term = termAt(terms, at)
    if (tokens[at]?.kind === 'break') break
    if (means(term, 'size')) return false
    if (means(term, 'point') && !meaning(term, 'point')?.weak) return true
    if (tokens[at]?.kind === 'word' && !means(term, 'light')) break
  }
  const next = termAt(terms, to)
  return means(next, 'point') && tokens[to]?.kind === 'word' && !meaning(next, 'point')?.weak
}

const MEASURES = cue('measuresPair')

function saidBefore({ tokens, terms }: Around, from: number): 'size' | 'measures' | null {
  for (let at = from - 1; at >= Math.max(0, from - 5); at--) {
    if (tokens[at]?.kind === 'break') return null
    const term = termAt(terms, at)
    const text = tokens[at]?.text ?? ''
    // “label says 34x32 (33 x 31 actual)”: of the pair before
    if (text === '(' && tokens[at - 1]?.kind === 'digits') return null
    if (MEASURES.test(text)) return 'measures'
    if (means(term, 'size')) return 'size'
  }
  return null
}

const FURTHER_NAME = cue('furtherName')

/** More one-letter names follow: then W and L are measurements in a list. */
export const moreShorthand = ({ tokens }: TextRead, at: number): boolean => {
  const next = isOneOf(tokens[at], ',/-') ? at + 1 : at
  return FURTHER_NAME.test(tokens[next]?.text) && tokens[next]?.kind === 'word'
}

/** What the stages before would give, made by hand: so that a stage is tried without them. */

import type { PointId } from '../../../core/ids/points.ts'
import type { LengthUnit } from '../../../core/length.ts'
import type { PointName } from '../../../core/reading/languages/lexicon.ts'
import type { Link } from '../../../core/reading/links/assign.ts'
import type { Label } from '../../../core/reading/names/label.ts'
import { labelsOf } from '../../../core/reading/names/labels.ts'
import { type Quantity, quantitiesOf } from '../../../core/reading/quantities/quantities.ts'
import type { MeasureReading } from '../../../core/reading/reading.ts'
import { readText, slice, type TextRead } from '../../../core/reading/text/text.ts'

export const textOf = (words: string, language = 'en'): TextRead => readText(words, language)

/** The tokens of some words where they stand the nth time. */
function tokensAt({ original, tokens }: TextRead, words: string, nth: number): { from: number; to: number } {
  let start = -1
  for (let n = 0; n < nth; n++) start = original.indexOf(words, start + 1)
  if (start < 0) throw new Error(`"${words}" stands in "${original}" fewer than ${nth} times`)
  const from = tokens.findIndex((token) => token.start >= start)
  const behind = tokens.findIndex((token) => token.start >= start + words.length)
  return { from, to: behind < 0 ? tokens.length : behind }
}

const unitIn = (words: string): LengthUnit | null => {
  const unit = /["a-z]+$/.exec(words)?.[0]
  return unit === '"' ? 'in' : unit === 'in' || unit === 'cm' || unit === 'mm' ? unit : null
}

/** A figure at its place: 36", 91 cm, 36. */
export function figureAt(text: TextRead, words: string, more: Partial<Quantity> & { nth?: number } = {}): Quantity {
  const { nth = 1, ...rest } = more
  const { from, to } = tokensAt(text, words, nth)
  const value = Number(/\d+(?:\.\d+)?/.exec(words)?.[0])
  return {
    from,
    to,
    value,
    low: value,
    high: value,
    unit: unitIn(words),
    range: false,
    problem: null,
    height: false,
    doubling: null,
    spanTo: to,
    disagrees: null,
    ...rest
  }
}

/** A name at its place. */
export function nameAt(text: TextRead, words: string, points: PointName[], more: Partial<Label> & { nth?: number } = {}): Label {
  const { nth = 1, ...rest } = more
  return { ...tokensAt(text, words, nth), role: 'point', points, basis: null, weak: false, letter: null, ...rest }
}

/** A name and its figure; the name stands before it where it does so in the text. */
export const linkOf = (label: Label, quantity: Quantity, more: Partial<Link> = {}): Link => ({
  quantity,
  label,
  before: label.from < quantity.from,
  again: false,
  cost: 0,
  ...more
})

/** The names of a text as they are read, each with its words: "length 28 in" → ["length: length"]. */
export function namesIn(words: string, language = 'en'): string[] {
  const text = textOf(words, language)
  return labelsOf(text, quantitiesOf(text)).map(({ role, points, letter, basis, from, to }) => {
    const name = role === 'point' ? points.join('+') || letter : role
    return `${name}${basis ? ` ${basis}` : ''}: ${slice(text, from, to)}`
  })
}

/** A measure as it was read, mm, with no place in a text. */
export const measureOf = (point: PointId, mm: number, more: Partial<MeasureReading> = {}): MeasureReading => ({
  point,
  mm,
  lowMm: mm,
  highMm: mm,
  basis: 'length',
  basisFrom: 'stated',
  unitFrom: 'stated',
  stated: { text: '', start: 0, end: 0, value: mm, unit: 'mm' },
  ...more
})

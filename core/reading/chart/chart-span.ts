/** Where a text tells the bodies that sizes are cut for: “size guide” and what stands below it, or behind it in its line. */
import type { Label } from '../names/label.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { between, nextFrom } from '../text/in-order.ts'
import { meaning, means, type Term, termAt } from '../text/terms.ts'
import { isDenied, type TextRead } from '../text/text.ts'
import { isOfGarment } from './body-names.ts'

export interface ChartSpan {
  head: Term
  /** Behind the head, and the token behind its last. */
  from: number
  to: number
  /** Its lines stand below the head. */
  below: boolean
  /** Only a body can be meant. */
  sure: boolean
  /** A sentence points to it: only where several sizes follow is it a chart. */
  pointedTo: boolean
  /** The garment is measured right behind it. */
  garmentBehind: boolean
}

export interface SpanGiven {
  /** In the order of the text. */
  labels: readonly Label[]
  quantities: readonly Quantity[]
  /** The next head: no chart goes on past it. */
  limit: number
}

export function chartSpan(text: TextRead, head: Term, given: SpanGiven): ChartSpan | null {
  const { terms } = text
  if (isDenied(text, head) || means(termAt(terms, head.from - 1), 'model')) return null
  const line = endOfLine(text, head.to, given.limit)
  const figure = nextFrom(given.quantities, head.to)
  if (figure === undefined || figure.from >= given.limit) return null
  if (figure.from >= line) return listBelow(text, head, line, given)
  return opensRow(text, head, figure, given) ? rowBehind(text, head, line, given) : null
}

function endOfLine({ layout }: TextRead, at: number, limit: number): number {
  const line = layout.line[at - 1]
  let end = at
  while (end < limit && layout.line[end] === line) end++
  return end
}

const WORDS_BEFORE = 1
/** By itself on its line; “Please check the size guide.” is a sentence. */
function standsAlone({ tokens, layout }: TextRead, head: Term, end: number): boolean {
  let words = 0
  for (let at = head.from - 1; at >= 0 && layout.line[at] === layout.line[head.from]; at--)
    if (tokens[at]?.kind !== 'mark' && ++words > WORDS_BEFORE) return false
  const last = tokens[end - 1]?.kind === 'break' ? tokens[end - 2] : tokens[end - 1]
  return last?.text !== '.'
}

const TO_FIRST = 8
/** “SIZE GUIDE 24: bust 132 cm”: names and figures follow at once, in its own sentence. */
function opensRow({ layout }: TextRead, head: Term, figure: Quantity, { labels }: SpanGiven): boolean {
  const first = Math.min(figure.from, nextFrom(labels, head.to)?.from ?? figure.from)
  return first - head.to <= TO_FIRST && layout.sentence[first] === layout.sentence[head.from]
}

const isSure = (head: Term): boolean => means(head, 'bodyChart')

/** The first lines with figures below the head, to a blank line, a heading, or a line that measures the garment. */
function listBelow(text: TextRead, head: Term, from: number, { labels, quantities, limit }: SpanGiven): ChartSpan | null {
  const { terms, layout } = text
  const first = nextFrom(quantities, from)
  if (first === undefined) return null
  const span = { head, from, below: true, sure: isSure(head), pointedTo: !standsAlone(text, head, from) }
  const paragraph = layout.paragraph[first.from] as number
  // its own paragraph, or the one below it
  if (paragraph > (layout.paragraph[head.from] as number) + 1) return null
  let end = from
  while (end < limit && (layout.paragraph[end] as number) <= paragraph) end++
  const garments = new Set(between(labels, from, end).flatMap((label) => (isOfGarment(label) ? (layout.line[label.from] as number) : [])))
  for (let at = from; at < end; at++) {
    const its = termAt(terms, at)
    const heads = its?.from === at && means(its, 'heading') && !means(its, 'size')
    if (garments.has(layout.line[at] as number) || meaning(its, 'basis')?.basis === 'flat' || heads) {
      const to = startOfLine(layout.line, at)
      return to > first.from ? { ...span, to, garmentBehind: true } : null
    }
  }
  return { ...span, to: end, garmentBehind: false }
}

function startOfLine(line: readonly number[], at: number): number {
  let start = at
  while (start > 0 && line[start - 1] === line[at]) start--
  return start
}

/** To the end of its line, or to the sentence, or the part of one, in which the garment is measured. */
function rowBehind({ terms, layout }: TextRead, head: Term, end: number, { labels }: SpanGiven): ChartSpan {
  const garments = new Set(between(labels, head.to, end).flatMap((label) => (isOfGarment(label) ? label.from : [])))
  const span = { head, from: head.to, below: false, sure: isSure(head), pointedTo: false }
  let sentence = head.to
  let segment = head.to
  for (let at = head.to; at < end; at++) {
    if (layout.sentence[at] !== layout.sentence[at - 1]) sentence = at
    if (layout.segment[at] !== layout.segment[at - 1]) segment = at
    const its = termAt(terms, at)
    const later = layout.sentence[at] !== layout.sentence[head.from]
    const measured = its?.from === at && (meaning(its, 'basis')?.basis === 'flat' || (later && means(its, 'heading', 'measures', 'kind')))
    if (garments.has(at) || measured) return { ...span, to: later ? sentence : segment, garmentBehind: !later }
  }
  return { ...span, to: end, garmentBehind: false }
}

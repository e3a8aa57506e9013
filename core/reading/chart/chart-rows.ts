/** The rows of one chart: names before their figures, or columns of names with a line a size. */
import type { LengthUnit } from '../../length.ts'
import { toMm } from '../../length.ts'
import type { BodyMeasureId } from '../../wearer/body.ts'
import type { Label } from '../names/label.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { statedOf } from '../quantities/stated.ts'
import type { ChartRow } from '../reading.ts'
import type { SizeHead } from '../sizes/size-heads.ts'
import { isLetterSize, LETTERS } from '../sizes/size-words.ts'
import { lastBefore, nextFrom } from '../text/in-order.ts'
import { means, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Token } from '../text/tokens.ts'
import { bodyNamed } from './body-names.ts'

export interface RowsGiven {
  /** Those of the chart, in order. */
  labels: readonly Label[]
  quantities: readonly Quantity[]
  places: readonly SizeHead[]
  /** A name, and a size, told before the first of them. */
  first: { body: BodyMeasureId | null; size: string | null }
  /** A unit told for the chart. */
  unit: LengthUnit | null
}
interface Found {
  quantity: Quantity
  body: BodyMeasureId
  size: string | null
}

export function chartRows(text: TextRead, given: RowsGiven): ChartRow[] {
  const found = columns(text, given) ?? namesAndFigures(text, given)
  const units = given.quantities.flatMap(({ unit }) => unit ?? [])
  const common = given.unit ?? units[0] ?? judged(found)
  return found.map(({ quantity, body, size }) => {
    const unit = quantity.unit ?? common
    return {
      size,
      body,
      lowMm: toMm(quantity.low, unit),
      highMm: toMm(quantity.high, unit),
      stated: statedOf(text, quantity)
    }
  })
}

/** No girth of a grown body is 60 inches and more than few are 60 cm: bare figures up to there are inches (common practice, no source). */
const MOST_INCHES = 55
const judged = (found: readonly Found[]): LengthUnit => (found.every(({ quantity }) => quantity.high <= MOST_INCHES) ? 'in' : 'cm')

/** The first line holds names alone, each line below it as many figures, its size before them. */
function columns(text: TextRead, { labels, quantities, places }: RowsGiven): Found[] | null {
  const { layout } = text
  const head = layout.line[labels[0]?.from ?? 0] as number
  const names = labels.filter(({ from }) => layout.line[from] === head).map(bodyNamed)
  if (names.length < 2 || quantities.some(({ from }) => layout.line[from] === head)) return null
  const found: Found[] = []
  for (let from = 0, to = 0; from < quantities.length; from = to) {
    const line = layout.line[(quantities[from] as Quantity).from]
    while (to < quantities.length && layout.line[(quantities[to] as Quantity).from] === line) to++
    const row = quantities.slice(from, to)
    const sized = row.length === names.length + 1 ? (row.shift() as Quantity) : null
    if (row.length !== names.length) continue
    const size = sized === null ? sizeBefore(text, row[0] as Quantity, places) : String(sized.value)
    row.forEach((quantity, index) => {
      const body = names[index]
      if (body) found.push({ quantity, body, size })
    })
  }
  return found.length > 0 ? found : null
}

const BEFORE_FIRST = 6
/** The size in the line of a figure, before it: a place that was found, or a letter. */
function sizeBefore({ tokens, layout }: TextRead, { from }: Quantity, places: readonly SizeHead[]): string | null {
  const line = layout.line[from]
  const place = lastBefore(places, from)
  if (place !== undefined && layout.line[place.from] === line) return place.label
  for (let at = from - 1; at >= Math.max(0, from - BEFORE_FIRST) && layout.line[at] === line; at--) {
    const word = tokens[at]?.text ?? ''
    if (tokens[at]?.kind === 'word' && isLetterSize(word)) return LETTERS[word] ?? word.toUpperCase()
  }
  return null
}

/** “bust 92-97, hips 98-103”, or “28-29 waist”: whichever comes first leads. A name takes one figure. */
function namesAndFigures(text: TextRead, { labels, quantities, places, first }: RowsGiven): Found[] {
  const found: Found[] = []
  const named = labels.filter((label) => bodyNamed(label) !== null)
  const firstFigure = quantities[0]
  const figureFirst = first.body === null && firstFigure !== undefined && (named[0]?.from ?? Number.POSITIVE_INFINITY) > firstFigure.from
  const taken = new Set<Label | null>()
  for (const quantity of quantities) {
    const label = (figureFirst ? nextFrom(named, quantity.to) : lastBefore(named, quantity.from)) ?? null
    const body = label === null ? first.body : bodyNamed(label)
    if (body === null || taken.has(label) || (label !== null && !stands(text.terms, label, quantity))) continue
    taken.add(label)
    const place = lastBefore(places, quantity.from)
    const opening = letterOpening(text, quantity.from, place)
    found.push({ quantity, body, size: opening ?? place?.label ?? first.size })
  }
  return found
}

const LONGEST_ROW = 60
/** “S | bust 34 | waist 26”: a letter that opens the line, where no size stands nearer. */
function letterOpening({ tokens, layout }: TextRead, figure: number, place: SizeHead | undefined): string | null {
  const line = layout.line[figure]
  if (place !== undefined && layout.line[place.from] === line) return null
  let at = figure
  while (at > 0 && layout.line[at - 1] === line) if (figure - --at > LONGEST_ROW) return null
  while (tokens[at]?.kind === 'mark') at++
  const { kind, text: word } = tokens[at] as Token
  return kind === 'word' && isLetterSize(word) ? (LETTERS[word] ?? word.toUpperCase()) : null
}

const APART = 6
/** Near enough, with no other name between. */
function stands(terms: TextRead['terms'], label: Label, quantity: Quantity): boolean {
  const [from, to] = label.to <= quantity.from ? [label.to, quantity.from] : [quantity.to, label.from]
  if (to - from > APART) return false
  for (let at = from; at < to; at++) if (means(termAt(terms, at), 'point', 'detail', 'thing')) return false
  return true
}

/** The stage of charts: the bodies that sizes are cut for. Their figures and names are no measures and no names of the garment. */
import { toldUnits } from '../measures/unit.ts'
import type { Label } from '../names/label.ts'
import type { Quantity } from '../quantities/quantities.ts'
import type { AsideReason, ChartRow } from '../reading.ts'
import type { SizesRead } from '../sizes/read-sizes.ts'
import type { SizeHead } from '../sizes/size-heads.ts'
import { isLetterSize, LETTERS } from '../sizes/size-words.ts'
import { cue } from '../text/cues.ts'
import { between, lastBefore, type Placed } from '../text/in-order.ts'
import { means, type Term, termAt, termsAs } from '../text/terms.ts'
import { isDenied, type TextRead } from '../text/text.ts'
import { bodyInside } from './body-names.ts'
import { chartRows } from './chart-rows.ts'
import { type ChartSpan, chartSpan } from './chart-span.ts'

export interface ChartsRead {
  rows: ChartRow[]
  quantities: ReadonlySet<Quantity>
  labels: ReadonlySet<Label>
  /** Sizes that only a chart of several names: nobody says that they are for sale. */
  sizes: ReadonlySet<string>
  heads: ReadonlySet<SizeHead>
}
type Sizes = Pick<SizesRead, 'lengths' | 'places' | 'heads'>

const NONE: ChartsRead = { rows: [], quantities: new Set(), labels: new Set(), sizes: new Set(), heads: new Set() }

export function readCharts(text: TextRead, labels: readonly Label[], sizes: Sizes): ChartsRead {
  const { terms } = text
  if (!terms.by.has('sizeChart') && !terms.by.has('bodyChart')) return NONE
  const { lengths } = sizes
  const units = toldUnits(text, lengths).at.map(({ token, unit }) => ({ from: token, unit }))
  const places = [...sizes.places, ...sizes.heads].sort((a, b) => a.from - b.from)
  const read = { rows: [] as ChartRow[], quantities: new Set<Quantity>(), labels: new Set<Label>() }
  const inside = new Set<SizeHead>()
  const heads = termsAs(terms, 'sizeChart', 'bodyChart')
  for (const [index, head] of heads.entries()) {
    const limit = heads[index + 1]?.from ?? text.tokens.length
    const span = chartSpan(text, head, { labels, quantities: lengths, limit })
    if (span === null) continue
    const named = between(labels, span.from, span.to)
    const all = between(lengths, span.from, span.to).filter(({ problem }) => problem === null)
    const size = sizeOfHead(text, span, named, all)
    const quantities = size.quantity === null ? all : all.filter((one) => one !== size.quantity)
    const own = between(places, span.from, span.to)
    const unit = between(units, head.from, span.to)[0]?.unit ?? null
    const rows = chartRows(text, { labels: named, quantities, places: own, first: { body: null, size: size.label }, unit })
    if (!isOfBodies(rows, quantities, span)) continue
    for (const one of rows) read.rows.push(one)
    for (const one of all) read.quantities.add(one)
    for (const one of named) read.labels.add(one)
    for (const one of own) inside.add(one)
  }
  return { heads: inside, sizes: onlyInside(inside, places), ...read }
}

/** Of a chart of several sizes, those that stand nowhere else. */
function onlyInside(inside: ReadonlySet<SizeHead>, places: readonly SizeHead[]): Set<string> {
  const charted = new Set([...inside].map(({ label }) => label))
  if (charted.size < 2) return new Set()
  for (const one of places) if (!inside.has(one)) charted.delete(one.label)
  return charted
}

/** “SIZE GUIDE 24: …”, “Körpermaße für M: …”: a size between the head and the first name. */
function sizeOfHead(
  { tokens, original }: TextRead,
  { from, to, below }: ChartSpan,
  labels: readonly Label[],
  quantities: readonly Quantity[]
): { label: string | null; quantity: Quantity | null } {
  if (below) return { label: null, quantity: null }
  const end = Math.min(labels[0]?.from ?? to, to)
  const [first] = quantities
  if (first && first.from < end && first.unit === null && !first.range && Number.isInteger(first.value))
    return { label: String(first.value), quantity: first }
  for (let at = from; at < end; at++) {
    const { kind, text, start, end: last } = tokens[at] as (typeof tokens)[number]
    if (kind === 'word' && isLetterSize(text) && /^\P{Ll}+$/u.test(original.slice(start, last)))
      return { label: LETTERS[text] ?? text.toUpperCase(), quantity: null }
  }
  return { label: null, quantity: null }
}

/** Around a grown body no girth is less, and the largest of one is never so small, mm: below that it is a garment laid flat (from memory). */
const LEAST_GIRTH_MM = 500
const LEAST_LARGEST_MM = 660
const MOST_GIRTH_MM = 1900
const LEAST_HEIGHT_MM = 800
const LENGTHS = new Set<string>(['stature', 'insideLegLength'])

export const isGirthOfBody = ({ body, lowMm, highMm }: ChartRow): boolean =>
  LENGTHS.has(body) || (lowMm >= LEAST_GIRTH_MM && highMm <= MOST_GIRTH_MM)

function isOfBodies(rows: readonly ChartRow[], quantities: readonly Quantity[], { sure, pointedTo, garmentBehind }: ChartSpan): boolean {
  if (rows.length === 0) return false
  if (pointedTo && new Set(rows.flatMap(({ size }) => size ?? [])).size < 2) return false
  // a person is told with one height and one figure each; a size with where it begins and ends, or by its label
  const ranges = rows.some(({ lowMm, highMm }) => highMm > lowMm)
  const heights = rows.filter(({ body }) => body === 'stature')
  if (!ranges && heights.some(({ size, lowMm, highMm }) => size === null && lowMm === highMm)) return false
  if (sure) return true
  // a garment has no height of a body
  if (heights.length > 0) return heights.every(({ lowMm }) => lowMm >= LEAST_HEIGHT_MM)
  const girths = rows.filter(({ body }) => !LENGTHS.has(body))
  if (garmentBehind && !ranges && rows.every(({ size }) => size === null)) return false
  const isLarge = girths.some(({ highMm }) => highMm >= LEAST_LARGEST_MM)
  return isLarge && girths.every(isGirthOfBody) && quantities.every(({ height }) => !height)
}

/** What is left for the garment: its names, its figures, the sizes that head them. */
export function withoutCharts<S extends SizesRead>(
  sizes: S,
  labels: readonly Label[],
  charts: ChartsRead
): { sizes: S; labels: readonly Label[] } {
  if (charts.quantities.size === 0) return { sizes, labels }
  return {
    sizes: {
      ...sizes,
      lengths: sizes.lengths.filter((one) => !charts.quantities.has(one)),
      heads: sizes.heads.filter((one) => !charts.heads.has(one)),
      labels: sizes.labels.filter((label) => !charts.sizes.has(label))
    },
    labels: labels.filter((label) => !charts.labels.has(label))
  }
}

const FITS = cue('fitsFigure')

/** “to fit bust 92-97, hips 98-103”, “fits 28-29" waist”: what was left aside as advice, where it is a size’s own. */
export function readCutFor(
  text: TextRead,
  labels: readonly Label[],
  { places }: Pick<Sizes, 'places'>,
  asides: ReadonlyMap<Quantity, AsideReason>
): ChartRow[] {
  const { tokens, terms, layout } = text
  if (asides.size === 0) return []
  const advised = [...asides].flatMap(([one, because]) => (because === 'fits-advice' && one.problem === null ? [one] : []))
  if (advised.length === 0) return []
  const starts: { from: number; to: number; term: Term | null }[] = [
    ...termsAs(terms, 'cutFor').flatMap((term) => (isDenied(text, term) ? [] : [{ from: term.from, to: term.to, term }])),
    ...advised.flatMap(({ from }) => (FITS.test(tokens[from - 1]?.text) ? [{ from: from - 1, to: from, term: null }] : []))
  ].sort((a, b) => a.from - b.from)
  return starts.flatMap(({ from, to, term }, index) => {
    const next = starts[index + 1]?.from ?? tokens.length
    const own = <T extends Placed>(list: readonly T[]): T[] =>
      between(list, to, next).filter((one) => layout.sentence[one.from] === layout.sentence[from])
    const quantities = own(advised)
    if (quantities.length === 0 || isUpTo(text, to, quantities[0] as Quantity)) return []
    const place = lastBefore(places, from)
    const size = place !== undefined && layout.sentence[place.from] === layout.sentence[from] ? place.label : null
    const first = { body: term === null ? null : bodyInside(text, term), size }
    return chartRows(text, { labels: own(labels), quantities, places: own(places), first, unit: null }).filter(isGirthOfBody)
  })
}

/** “to fit up to a 40 bust”: an end, and no size. */
const isUpTo = ({ terms }: TextRead, from: number, first: Quantity): boolean => {
  for (let at = from; at < first.from; at++) if (means(termAt(terms, at), 'to', 'fits')) return true
  return false
}

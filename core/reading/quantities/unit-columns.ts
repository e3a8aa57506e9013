/** “Measure | inches | cm”, and below it lines of as many bare figures: each figure has the unit of its column. Linear. */
import type { LengthUnit } from '../../length.ts'
import { meaning, type Term, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import type { Quantity } from './quantities.ts'

const LENGTHS: ReadonlySet<string> = new Set<LengthUnit>(['in', 'cm', 'mm'])

export function inColumns(text: TextRead, quantities: readonly Quantity[]): readonly Quantity[] {
  const { layout } = text
  const heads = headsOf(text)
  if (heads.size === 0) return quantities
  const rows = new Map<number, Quantity[]>()
  for (const one of quantities) {
    const line = layout.line[one.from] as number
    const row = rows.get(line)
    if (row) row.push(one)
    else rows.set(line, [one])
  }
  const units = new Map<Quantity, LengthUnit>()
  const above = [...heads]
  // of as many columns, the head nearest above counts
  const nearest = new Map<number, Head>()
  let next = 0
  for (const [line, row] of rows) {
    for (; next < above.length && (above[next] as [number, Head])[0] < line; next++) {
      const [, head] = above[next] as [number, Head]
      nearest.set(head.columns.length, head)
    }
    const head = nearest.get(row.length)
    if (head === undefined || layout.paragraph[row[0]?.from ?? 0] !== head.paragraph) continue
    if (row.every(({ unit, problem }) => unit === null && problem === null))
      for (const [at, one] of row.entries()) units.set(one, head.columns[at] as LengthUnit)
  }
  return units.size === 0
    ? quantities
    : quantities.map((one) => (units.has(one) ? { ...one, unit: units.get(one) as LengthUnit, fromColumn: true as const } : one))
}

interface Head {
  columns: LengthUnit[]
  paragraph: number
}

/** “measured in cm (inches)”, “in inches”: not the inches of a column, as in “| in | cm |”. */
function isPreposition({ tokens, terms }: TextRead, { from, to }: Term): boolean {
  const next = meaning(termAt(terms, to), 'unit')?.unit
  return tokens[from]?.text === 'in' && next !== undefined && (next === 'in' || tokens[from - 1]?.kind === 'word')
}

/** Lines without a figure that name two units or more, each once. */
function headsOf(text: TextRead): Map<number, Head> {
  const { tokens, terms, layout } = text
  const heads = new Map<number, Head>()
  for (const term of termsAs(terms, 'unit')) {
    const unit = meaning(term, 'unit')?.unit
    if (unit === undefined || !LENGTHS.has(unit) || isPreposition(text, term)) continue
    const line = layout.line[term.from] as number
    const head = heads.get(line) ?? { columns: [], paragraph: layout.paragraph[term.from] as number }
    head.columns.push(unit as LengthUnit)
    heads.set(line, head)
  }
  for (const [line, { columns }] of heads) if (columns.length < 2 || new Set(columns).size < columns.length) heads.delete(line)
  if (heads.size === 0) return heads
  for (let at = 0; at < tokens.length; at++)
    if (/^(?:digits|fraction)$/.test(tokens[at]?.kind ?? '')) heads.delete(layout.line[at] as number)
  return heads
}

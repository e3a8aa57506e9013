/** “Measure | inches | cm”, and below it lines of as many bare figures: each figure has the unit of its column. Linear. */
import type { LengthUnit } from '../length.ts'
import type { Layout } from './layout.ts'
import type { Quantity } from './quantities.ts'
import { meaning, means, type Terms, termAt, termsAs } from './terms.ts'
import type { Token } from './tokens.ts'

const LENGTHS: ReadonlySet<string> = new Set<LengthUnit>(['in', 'cm', 'mm'])

export function inColumns(tokens: readonly Token[], terms: Terms, layout: Layout, quantities: readonly Quantity[]): readonly Quantity[] {
  const heads = headsOf(tokens, terms, layout)
  if (heads.size === 0) return quantities
  const byLine = new Map<number, Quantity[]>()
  for (const one of quantities) {
    const line = layout.line[one.from] as number
    byLine.set(line, [...(byLine.get(line) ?? []), one])
  }
  const units = new Map<Quantity, LengthUnit>()
  for (const [head, { columns, paragraph }] of heads) {
    for (const [line, row] of byLine) {
      if (line <= head || row.length !== columns.length || layout.paragraph[row[0]?.from ?? 0] !== paragraph) continue
      if (row.every(({ unit, problem }) => unit === null && problem === null))
        for (const [at, one] of row.entries()) units.set(one, columns[at] as LengthUnit)
    }
  }
  return units.size === 0
    ? quantities
    : quantities.map((one) => (units.has(one) ? { ...one, unit: units.get(one) as LengthUnit, fromColumn: true as const } : one))
}

/** Lines without a figure that name two units or more, each once. */
function headsOf(tokens: readonly Token[], terms: Terms, layout: Layout): Map<number, { columns: LengthUnit[]; paragraph: number }> {
  const heads = new Map<number, { columns: LengthUnit[]; paragraph: number }>()
  for (const term of termsAs(terms, 'unit')) {
    const unit = meaning(term, 'unit')?.unit
    // “in inches”
    if (unit === undefined || !LENGTHS.has(unit) || (tokens[term.from]?.text === 'in' && means(termAt(terms, term.to), 'unit'))) continue
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

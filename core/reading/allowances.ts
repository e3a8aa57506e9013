/** Cloth that is there to be let down or out, kept apart from the measures. */
import { type GarmentKind, SHAPE } from '../garment/kinds.ts'
import { isGirth, type PointId } from '../garment/points.ts'
import { type LengthUnit, toMm } from '../length.ts'
import type { Layout } from './layout.ts'
import type { Link } from './link.ts'
import { pointOf } from './points-by-kind.ts'
import type { Quantity } from './quantities.ts'
import type { Reading } from './reading.ts'
import type { Token } from './tokens.ts'

export interface AllowancesRead {
  allowances: Reading['allowances']
  seamAllowanceMm: number | null
  /** Figures with no unit anywhere: nobody's. */
  left: Quantity[]
}

/** (+2"): cloth to spare, of the name before it. */
export const isSpare = (tokens: readonly Token[], one: Quantity): boolean =>
  tokens[one.from - 1]?.text === '+' && !one.range && one.problem === null && one.value < 12

/** The point that an allowance is for: the name before it in its sentence, else what is let down or out on this kind. */
export function gatherAllowances(
  links: readonly Link[],
  spare: readonly Quantity[],
  layout: Layout,
  kindAt: (token: number) => GarmentKind | null,
  stated: (quantity: Quantity) => Reading['allowances'][number]['stated'],
  unitOf: (link: Link) => LengthUnit | null
): AllowancesRead {
  const read: AllowancesRead = { allowances: [], seamAllowanceMm: null, left: [] }
  const lastNamed: Record<'along' | 'around', { point: PointId; sentence: number } | null> = { along: null, around: null }
  let next = 0
  let last: { point: PointId; unit: LengthUnit | null; sentence: number } | null = null
  const spareUntil = (token: number) => {
    for (; next < spare.length && (spare[next] as Quantity).from < token; next++) {
      const one = spare[next] as Quantity
      const unit = one.unit ?? last?.unit ?? null
      if (last === null || unit === null || layout.line[one.from] !== last.sentence) read.left.push(one)
      else read.allowances.push({ point: last.point, mm: toMm(one.value, unit), stated: stated(one) })
    }
  }
  for (const link of links) {
    const { label, quantity } = link
    const kind = kindAt(quantity.from)
    spareUntil(quantity.from)
    const sentence = layout.sentence[quantity.from] as number
    if (label.role === 'point') {
      const point = label.points[0] === undefined ? null : pointOf(label.points[0], kind)
      if (point !== null) last = { point, unit: unitOf(link), sentence: layout.line[quantity.from] as number }
      if (point !== null) lastNamed[isGirth(point) ? 'around' : 'along'] = { point, sentence }
      continue
    }
    if (label.role !== 'letDown' && label.role !== 'letOut' && label.role !== 'seamAllowance') continue
    const unit = unitOf(link)
    if (unit === null) {
      read.left.push(quantity)
      continue
    }
    const mm = toMm(quantity.value, unit)
    if (label.role === 'seamAllowance') {
      read.seamAllowanceMm ??= mm
      continue
    }
    const named = lastNamed[label.role === 'letDown' ? 'along' : 'around']
    const point = named?.sentence === sentence ? named.point : usual(label.role, kind)
    read.allowances.push({ point, mm, stated: stated(quantity) })
  }
  spareUntil(Number.POSITIVE_INFINITY)
  return read
}

function usual(role: 'letDown' | 'letOut', kind: GarmentKind | null): PointId {
  const shape = kind === null ? 'none' : SHAPE[kind]
  if (role === 'letOut') return shape === 'upper' ? 'chest' : 'waist'
  if (shape === 'legs') return 'inseam'
  if (shape === 'skirt') return 'skirtLength'
  if (shape === 'whole') return 'bodyLength'
  return kind === 'jacket' || kind === 'shirt' ? 'sleeveLength' : 'bodyLength'
}

/** Every figure with its unit: its own, its list's, its neighbours', or the only plausible one; where both would do, an issue. */
import type { Issue } from '../../garment/issue.ts'
import { isGirth } from '../../ids/points.ts'
import { type LengthUnit, toMm, type Units } from '../../length.ts'
import { issue } from '../issues.ts'
import { isWearable, logLikely } from '../quantities/plausible.ts'
import { statedOf } from '../quantities/stated.ts'
import type { MeasureReading } from '../reading.ts'
import type { TextRead } from '../text/text.ts'
import type { ListBasis } from './context.ts'
import type { Aside, Figure } from './figures.ts'
import { listUnit, plausibleUnit, type ToldUnits } from './unit.ts'

/** What the text says for the figures of its list, beyond the words beside each. */
export interface ListContext {
  text: TextRead
  units: ToldUnits
  basis: ListBasis
  /** The unit commonest among all figures of the text that are of this garment, details too. */
  common: LengthUnit | null
  /** Units for the sentences. */
  words: Units
}
export interface WithUnit extends Figure {
  unit: LengthUnit
  unitFrom: MeasureReading['unitFrom']
}
/** Where doubts and leftovers go. */
export interface Findings {
  asides: Aside[]
  issues: Issue[]
}
/** So many bare figures are weighed together; a longer list says no more. */
const WEIGHED = 400

export function withUnits(figures: readonly Figure[], list: ListContext, read: Findings): WithUnit[] {
  const settled: WithUnit[] = []
  const bare: Figure[] = []
  const counts = new Map<LengthUnit, number>()
  for (const one of figures) {
    const { unit, fromColumn } = one.quantity
    if (unit !== null) {
      counts.set(unit, (counts.get(unit) ?? 0) + 1)
      settled.push(Object.assign(one, { unit, unitFrom: fromColumn ? ('list' as const) : ('stated' as const) }))
    } else bare.push(one)
  }
  const common = commonest(counts) ?? list.common
  const open: Figure[] = []
  for (const one of bare) {
    const unit = listUnit(list.units, one.label, one.quantity) ?? common
    if (unit !== null && fits(one, unit)) settled.push(Object.assign(one, { unit, unitFrom: 'list' as const }))
    else open.push(one)
  }
  judged(open, list, read, settled)
  return settled.sort((a, b) => a.quantity.from - b.quantity.from)
}

export function commonest(counts: ReadonlyMap<LengthUnit, number>): LengthUnit | null {
  let most: LengthUnit | null = null
  for (const [unit, times] of counts) if (most === null || times > (counts.get(most) ?? 0)) most = unit
  return most
}

/** Can it be worn at all, flat or around? */
export const fits = ({ point, quantity, kind }: Figure, unit: LengthUnit): boolean => isWearable(toMm(quantity.value, unit), point, kind)

/** No unit anywhere: what a garment can have decides for the list as a whole. */
function judged(open: readonly Figure[], list: ListContext, read: Findings, settled: WithUnit[]): void {
  if (open.length === 0) return
  const kind = open[0]?.kind ?? null
  const wearable = open.filter((one) => fits(one, 'in') || fits(one, 'cm'))
  for (const one of open)
    if (!fits(one, 'in') && !fits(one, 'cm') && one.cost < 0)
      settled.push(Object.assign(one, { unit: 'in' as const, unitFrom: 'judged' as const }))
  const weighed = wearable.slice(0, WEIGHED)
  const unit = plausibleUnit(
    weighed.map(({ point, quantity }) => ({ point, value: quantity.value })),
    kind
  )
  let first = true
  for (const one of wearable) {
    const its = unit !== null && fits(one, unit) ? unit : only(one)
    const stated = statedOf(list.text, one.quantity)
    if (its === null) {
      const readings = [bestMm(one, 'in'), bestMm(one, 'cm')]
      read.issues.push(
        issue(
          'reading.no-unit',
          { stated: stated.text, point: one.point, inches: readings[0] as number, centimetres: readings[1] as number },
          { stated, readings: readings.map((mm) => ({ point: one.point, mm })) },
          list.words
        )
      )
      read.asides.push({ quantity: one.quantity, because: 'unknown' })
      continue
    }
    if (first) read.issues.push(issue('reading.unit-judged', { stated: stated.text, unit: its }, { stated }, list.words))
    first = false
    settled.push(Object.assign(one, { unit: its, unitFrom: 'judged' as const }))
  }
}

/** The one unit in which a figure can be worn at all. */
function only(one: Figure): LengthUnit | null {
  const inches = fits(one, 'in')
  const centimetres = fits(one, 'cm')
  if (inches !== centimetres) return inches ? 'in' : 'cm'
  return null
}

function bestMm({ point, quantity, kind }: Figure, unit: LengthUnit): number {
  const mm = toMm(quantity.value, unit)
  if (!isGirth(point)) return mm
  return logLikely(mm * 2, point, kind) > logLikely(mm, point, kind) ? mm * 2 : mm
}

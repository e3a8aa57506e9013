/** The unit of a figure: its own, that of its label, of its list, of its neighbours, or the only plausible one. */
import type { GarmentKind } from '../../ids/kinds.ts'
import { isGirth, type PointId } from '../../ids/points.ts'
import { type LengthUnit, toMm } from '../../length.ts'
import type { Label } from '../names/label.ts'
import { logLikely } from '../quantities/plausible.ts'
import type { Quantity } from '../quantities/quantities.ts'
import { meaning, means, termAt, termsAs } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

/** Units that stand with no figure of their own: (cm) in a heading, “all in inches” in a note. */
export interface ToldUnits {
  /** By the token they stand at, rising. */
  at: { token: number; unit: LengthUnit }[]
  /** Of the whole text, when it names one only. */
  whole: LengthUnit | null
}

export function toldUnits(text: TextRead, quantities: readonly Quantity[]): ToldUnits {
  const { terms } = text
  const at: ToldUnits['at'] = []
  let quantity = 0
  for (const term of termsAs(terms, 'unit')) {
    const unit = meaning(term, 'unit')?.unit
    if (unit !== 'in' && unit !== 'cm' && unit !== 'mm') continue
    while (quantities[quantity] && (quantities[quantity] as Quantity).spanTo <= term.from) quantity++
    const one = quantities[quantity]
    if (one && one.from <= term.from) continue
    if (isTold(text, term.from, term.to)) at.push({ token: term.from, unit })
  }
  const units = new Set(at.map(({ unit }) => unit))
  return { at, whole: units.size === 1 ? (at[0]?.unit ?? null) : null }
}

/** (in) · in inches · cm: — never the preposition. */
function isTold({ tokens, terms }: TextRead, from: number, to: number): boolean {
  const before = tokens[from - 1]
  const after = tokens[to]
  const closed = after === undefined || after.kind === 'break' || isOneOf(after, '):]=,.;/|-')
  const opened = before?.text === '(' || before?.text === '[' || before?.text === '/' || before?.text === '-'
  if (tokens[from]?.text === 'in') return opened && closed
  if (before?.text === 'in' || opened) return true
  if (before?.kind === 'digits') return false
  return closed || means(termAt(terms, to), 'basis', 'light', 'and', 'all') || means(termAt(terms, from - 1), 'point', 'heading', 'basis')
}

/** The unit told nearest to a label and its figure: between them first, else the last heading before, else of the whole text. */
export function listUnit(units: ToldUnits, label: Label, quantity: Quantity): LengthUnit | null {
  const from = Math.min(label.from, quantity.from)
  const to = Math.max(label.to, quantity.spanTo)
  let before: LengthUnit | null = null
  let low = 0
  let high = units.at.length
  while (low < high) {
    const middle = (low + high) >> 1
    if ((units.at[middle] as { token: number }).token < to) low = middle + 1
    else high = middle
  }
  for (let index = low - 1; index >= 0 && index >= low - 2; index--) {
    const one = units.at[index] as { token: number; unit: LengthUnit }
    if (one.token >= from) return one.unit
    before ??= one.unit
  }
  return before ?? units.whole
}

export interface Bare {
  point: PointId
  value: number
}
/** Inches are the commoner habit where nothing tells (a share of about three in four, counted over several hundred listings). */
const INCH_HABIT = Math.log(3)
const SURE = 2

/** ln likelihood of a bare value in a unit: the better of flat and around. */
export function unitLikely({ point, value }: Bare, unit: LengthUnit, kind: GarmentKind | null): number {
  const mm = toMm(value, unit)
  const once = logLikely(mm, point, kind)
  return isGirth(point) ? Math.max(once, logLikely(mm * 2, point, kind)) : once
}

/** The unit that a whole list of bare figures must be in, or null where both would do. */
export function plausibleUnit(list: readonly Bare[], kind: GarmentKind | null): LengthUnit | null {
  if (list.length === 0) return null
  let lead = INCH_HABIT
  for (const one of list) {
    // one misread figure must not turn a list
    lead += Math.max(-8, Math.min(8, unitLikely(one, 'in', kind) - unitLikely(one, 'cm', kind)))
  }
  return lead > SURE ? 'in' : lead < -SURE ? 'cm' : null
}

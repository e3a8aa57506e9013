/** “Waist 14" relaxed, 18" stretched”: how far an elastic waist pulls out, mm around. */
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { type LengthUnit, toMm } from '../../length.ts'
import type { Figure } from '../measures/figures.ts'
import type { Quantity } from '../quantities/quantities.ts'
import type { MeasureReading } from '../reading.ts'

/** Nothing pulls out to more than this many times what it lies at, and what goes less far is said of its cloth (from memory). */
const GOES = { least: 1.01, most: 2.4 }
/** A whole waist is larger than this, a half one smaller. */
const HALF_MM = 480

export interface PulledOut {
  mm: number
  /** The figure that tells it, unless it tells too what the waist lies at (a range). */
  aside: Quantity | null
}

/** null: not told, or no figure that a waist could go to. */
export function waistPulledOut(
  stretched: readonly Figure[],
  measures: readonly MeasureReading[],
  common: LengthUnit | null
): PulledOut | null {
  const one = stretched.find(({ point }) => point === 'waist')
  if (one === undefined) return null
  const lies = measures.find(({ point, of, size }) => point === 'waist' && (of ?? null) === one.of && (size ?? null) === one.size)
  const unit = one.quantity.unit ?? lies?.stated.unit ?? common
  if (unit === null) return null
  const mm = toMm(one.quantity.value, unit)
  const times =
    one.evidence.includes('word-flat') || one.evidence.includes('name-flat') ? [2] : one.evidence.includes('word-around') ? [1] : null
  const aside = one.quantity.range ? null : one.quantity
  if (lies === undefined) return { mm: mm * (times?.[0] ?? (mm < HALF_MM ? 2 : 1)), aside }
  const likely = times ?? (lies.basis === 'flat' ? [2, 1] : [1, 2])
  const around = likely.map((times) => mm * times).find((one) => one > lies.mm * GOES.least && one < lies.mm * GOES.most)
  return around === undefined ? null : { mm: around, aside }
}

/** Trousers and skirts that pull out have elastic; of anything else it may be the cloth. */
export const isElastic = (kind: GarmentKind | null): boolean => kind !== null && (SHAPE[kind] === 'legs' || SHAPE[kind] === 'skirt')

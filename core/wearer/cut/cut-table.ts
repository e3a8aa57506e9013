/** Every row of what a cut means, and which of two rows at one point stands: the more particular facet. */
import { type Cut, FACET_IDS, type Facet } from '../../ids/cut.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { CutRow } from './cut-row.ts'
import { growthRows } from './growth.ts'
import { jacketRows } from './jackets.ts'
import { legRows } from './legs.ts'
import { shoulderRows, sleeveRows } from './shoulders.ts'
import { dressRows, eraRows, skirtRows, waistSeamRows } from './skirts.ts'
import { closenessRows, jumpsuitRows, knitRows, topRows } from './tops.ts'

/** Least particular first. */
export const CUT_ROWS: readonly CutRow[] = [
  ...eraRows,
  ...knitRows,
  ...closenessRows,
  ...skirtRows,
  ...dressRows,
  ...waistSeamRows,
  ...topRows,
  ...jumpsuitRows,
  ...jacketRows,
  ...legRows,
  ...shoulderRows,
  ...sleeveRows,
  ...growthRows
]

/** By kind and by what is said: a cut names few of the rows. */
const BY_NAME = new Map<string, number[]>()
for (const [n, { facet, values, kinds }] of CUT_ROWS.entries())
  for (const kind of kinds)
    for (const value of values) {
      const name = `${kind} ${facet} ${value}`
      BY_NAME.set(name, [...(BY_NAME.get(name) ?? []), n])
    }

/** The rows of a cut on a kind of garment, the most particular last. */
export function rowsOf(cut: Cut, kind: GarmentKind): CutRow[] {
  const found: number[] = []
  for (const [facet, value] of Object.entries(cut)) found.push(...(BY_NAME.get(`${kind} ${facet} ${value}`) ?? []))
  return found.sort((a, b) => a - b).flatMap((n) => CUT_ROWS[n] ?? [])
}

/** What decides which jobs there are, beside what the rows judge. */
const OF_THE_MAKE: readonly Facet[] = ['closing', 'turnUps', 'vent', 'boning', 'layers']
/** Where the hem falls on the body is judged by its height above the floor (hem-height.ts), not by a row. */
const HEMMED: readonly GarmentKind[] = ['skirt', 'dress', 'coat']
/** The facets that mean something on a kind of garment, in the order they are said. */
export const facetsOf = (kind: GarmentKind): Facet[] =>
  FACET_IDS.filter(
    (facet) =>
      OF_THE_MAKE.includes(facet) ||
      (facet === 'dressLength' && HEMMED.includes(kind)) ||
      CUT_ROWS.some((row) => row.facet === facet && row.kinds.includes(kind))
  )

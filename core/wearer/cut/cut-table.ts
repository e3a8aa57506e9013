/** Every row of what a cut means, and which of two rows at one point stands: the more particular facet. */
import type { Cut, Facet } from '../../ids/cut.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { CutRow } from './cut-row.ts'
import { jacketRows } from './jackets.ts'
import { legRows } from './legs.ts'
import { shoulderRows, sleeveRows } from './shoulders.ts'
import { dressRows, eraRows, skirtRows } from './skirts.ts'
import { closenessRows, jumpsuitRows, knitRows, topRows } from './tops.ts'

/** Least particular first. */
export const CUT_ROWS: readonly CutRow[] = [
  ...eraRows,
  ...knitRows,
  ...closenessRows,
  ...skirtRows,
  ...dressRows,
  ...topRows,
  ...jumpsuitRows,
  ...jacketRows,
  ...legRows,
  ...shoulderRows,
  ...sleeveRows
]

/** The rows of a cut on a kind of garment, the most particular last. */
export const rowsOf = (cut: Cut, kind: GarmentKind): CutRow[] =>
  CUT_ROWS.filter(({ facet, values, kinds }) => {
    const value = cut[facet as Facet]
    return value !== undefined && kinds.includes(kind) && (values as readonly string[]).includes(value)
  })

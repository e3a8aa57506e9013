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

/** Facets without rows: what decides which jobs there are, and the lengths that hang from the body's height (core/wearer/hem-height.ts). */
const WITHOUT_ROWS: Partial<Record<Facet, readonly GarmentKind[] | 'all'>> = {
  closing: 'all',
  turnUps: ['trousers', 'jeans', 'shorts'],
  vent: ['skirt', 'dress', 'jacket', 'coat'],
  boning: ['dress', 'shirt'],
  layers: ['skirt', 'dress'],
  dressLength: ['skirt', 'dress', 'coat']
}
/** The facets that mean something on a kind of garment, in the order they are said; worked out once a kind. */
export function facetsOf(kind: GarmentKind): readonly Facet[] {
  const facets = FACETS_OF.get(kind) ?? FACET_IDS.filter((facet) => isOfKind(facet, kind))
  FACETS_OF.set(kind, facets)
  return facets
}
const FACETS_OF = new Map<GarmentKind, readonly Facet[]>()
const isOfKind = (facet: Facet, kind: GarmentKind): boolean => {
  const others = WITHOUT_ROWS[facet]
  return others === 'all' || others?.includes(kind) === true || CUT_ROWS.some((row) => row.facet === facet && row.kinds.includes(kind))
}

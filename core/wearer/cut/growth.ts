/** Children's clothes: one size up is wanted at the chest, spare length is worn or turned up inside, and nothing is cut. */
import { type GarmentKind, LONG_LEGS } from '../../ids/kinds.ts'
import { type CutRow, free, over, row } from './cut-row.ts'

const UPPER: GarmentKind[] = ['shirt', 'knit-top', 'jumper', 'jacket', 'dress', 'jumpsuit']

export const growthRows: CutRow[] = [
  row(
    'growth',
    'child',
    UPPER,
    { chest: over(40, 100, 180), waist: over(30, 120, null), sleeveLength: over(-5, 15, 60) },
    'chest and waist MEM; sleeve CP'
  ),
  row(
    'growth',
    'child',
    ['coat'],
    { chest: over(80, 130, 240), waist: over(60, 150, null), sleeveLength: over(-5, 20, 60) },
    'chest and waist MEM; sleeve CP'
  ),
  row(
    'growth',
    'child',
    [...LONG_LEGS, 'shorts', 'skirt'],
    { waist: over(0, 15, 60), hip: over(30, 80, 180) },
    'MEM: a button elastic inside takes 40–80 in'
  ),
  // a seat 30–180 over the body has thighs to go with it: 0.55–0.65 of that, and room to sit in
  row('growth', 'child', [...LONG_LEGS, 'shorts'], { thigh: over(25, 80, 160), knee: free(25) }, 'MEM'),
  row('growth', 'child', LONG_LEGS, { inseam: over(-40, 0, 30) }, 'CP: more is turned up inside, 100 of hem for 75 of growth (BAG)')
]

/** Shoulders and sleeves: without a seam at the shoulder there is none to judge; a sleeve that is short on purpose is no lack. */
import { SLEEVED, SOFT_BODIES } from '../../ids/kinds.ts'
import { type CutRow, type Edges, free, over, row } from './cut-row.ts'

/** Elbow at 0.573 (women) and 0.565 (men) of shoulder point to wrist: ANSUR; the edges CP. A cut, never a lack: any length inside the name does. */
const onArm = ([least, , most]: Edges): CutRow['wants'] => ({
  sleeveLength: { share: [least, null, most], against: 'armLength' },
  cuff: 'skip'
})

export const shoulderRows: CutRow[] = [
  row('shoulder', 'set-in', SOFT_BODIES, { shoulderWidth: over(0, 20, 45) }, 'a shirt table set against ANSUR'),
  row(
    'shoulder',
    'drop',
    SLEEVED,
    { shoulderWidth: over(0, null, null), chest: { shift: [0, 80, null] } },
    'DROP (a few centimetres or a whole lot more); mm MEM'
  ),
  row(
    'shoulder',
    'raglan',
    SLEEVED,
    { shoulderWidth: 'skip', chest: { shift: [0, 20, 40] } },
    'KUZ (ease at the bust 20–30 % over a set-in’s); the rest CP'
  ),
  row('shoulder', 'dolman', SLEEVED, { shoulderWidth: 'skip', bicep: free(), chest: { shift: [0, 80, null] } }, 'KUZ; the rest CP'),
  row('shoulder', 'kimono', SLEEVED, { shoulderWidth: 'skip', bicep: free() }, 'CP'),
  row('shoulder', 'halter', SLEEVED, { shoulderWidth: 'skip' }, 'CP')
]

export const sleeveRows: CutRow[] = [
  // cut in from the shoulder point by 0–45 a side: hardly ever too narrow
  row('sleeve', 'sleeveless', SLEEVED, { sleeveLength: 'skip', bicep: 'skip', cuff: 'skip', shoulderWidth: 'skip' }, 'CP'),
  row('sleeve', 'cap', SLEEVED, onArm([0.04, 0.12, 0.22]), 'ANSUR, CP'),
  row('sleeve', 'short', SLEEVED, onArm([0.15, 0.36, 0.52]), 'ANSUR, CP'),
  row('sleeve', 'elbow', SLEEVED, onArm([0.45, 0.57, 0.65]), 'ANSUR, CP'),
  row('sleeve', 'three-quarter', SLEEVED, onArm([0.6, 0.74, 0.82]), 'ANSUR, CP'),
  row('sleeve', 'bracelet', SLEEVED, onArm([0.78, 0.87, 0.94]), 'ANSUR, CP'),
  row('sleeve', 'long', ['shirt', 'dress', 'jumpsuit'], { sleeveLength: over(-5, 18, 40) }, 'CP: to the root of the thumb with a cuff'),
  row(
    'sleeve',
    'long',
    ['knit-top', 'jumper'],
    { sleeveLength: over(-10, 12, 45) },
    'a text on shortening knit sleeves (wrist to thumb joint)'
  ),
  row('sleeve', 'balloon', SLEEVED, { bicep: free(), sleeveLength: over(0, 40, 110), cuff: over(15, null, null) }, 'CP; length MEM')
]

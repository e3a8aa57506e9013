/** Shirts, knits and jumpsuits: the closeness meant, the outline, the knit. */
import { type GarmentKind, KNITS, SOFT_TOPS } from '../../ids/kinds.ts'
import { type CutRow, free, over, percent, row } from './cut-row.ts'

const SHIRT: GarmentKind[] = ['shirt']
const JUMPSUIT: GarmentKind[] = ['jumpsuit']

export const knitRows: CutRow[] = [
  row('knit', 'fine', KNITS, { chest: over(-10, 50, 110), waist: over(0, 110, 220), hem: over(-80, 0, 90) }, 'chest KNIT; the rest MEM'),
  row(
    'knit',
    'standard',
    KNITS,
    { chest: over(0, 75, 130), waist: over(20, 150, 260), hem: over(-90, 0, 110) },
    'chest KNIT; the rest MEM'
  ),
  row('knit', 'chunky', KNITS, { chest: over(40, 120, 220), waist: free(60), hem: free(-60) }, 'chest KNIT; the rest MEM'),
  row('knit', 'felted', KNITS, { chest: over(40, 80, 140), waist: free(40), hem: free(20) }, 'chest KNIT; the rest MEM'),
  row('knit', 'tee', KNITS, { chest: over(10, 90, 170), waist: free(40), hem: free(-10) }, 'KNIT; the rest MEM'),
  row('knit', 'sweatshirt', KNITS, { chest: over(60, 150, 260), waist: free(), hem: over(-160, -40, 80) }, 'chest KNIT; hem MEM'),
  row('knit', 'slipover', KNITS, { chest: percent(-4, 4, 14), shoulderWidth: 'skip', sleeveLength: 'skip' }, 'chest KNIT')
]

export const closenessRows: CutRow[] = [
  row('closeness', 'fitted', KNITS, { chest: percent(-5, 0, 6), waist: free(0), hem: percent(-4, 2, 8) }, 'KNIT; the rest MEM'),
  // a rib that is meant to be close clings
  row(
    'knit',
    'ribbed',
    KNITS,
    { chest: percent(-15, -7, 3), waist: percent(-12, -2, 8), hem: percent(-15, -6, 5) },
    'chest KNIT; the rest MEM'
  ),
  row('closeness', 'fitted', ['dress', 'shirt'], { chest: over(38, 75, 105), waist: over(25, 55, 100) }, 'chest CWU16; waist MEM'),
  row('closeness', 'slim', SHIRT, { chest: over(50, 100, 135), waist: over(50, 105, 170) }, 'MEM'),
  row('closeness', 'classic', SHIRT, { chest: over(75, 160, 230), waist: over(75, 190, 320) }, 'MEM: full-cut shirts hang'),
  row('closeness', 'relaxed', [...SOFT_TOPS, 'dress'], { chest: over(80, 165, 260), waist: free(80) }, 'EASE (loose 130–203); waist MEM'),
  row(
    'closeness',
    'oversized',
    [...SOFT_TOPS, 'jacket', 'coat', 'dress'],
    {
      chest: over(120, null, null),
      waist: free(),
      hem: free(),
      hip: free(0),
      shoulderWidth: over(0, null, null),
      sleeveLength: over(-90, -30, 60)
    },
    'EASE (its word for over 203 woven, over 152–180 knit); the rest MEM'
  )
]

export const topRows: CutRow[] = [
  // worn open at the neck, in or out: no buttoned collar
  row(
    'silhouette',
    'blouse',
    SHIRT,
    { chest: over(38, 80, 150), waist: free(40), neck: 'skip', cuff: over(20, 60, 130) },
    'chest EASE; the rest MEM'
  ),
  row(
    'silhouette',
    'boxy',
    [...SOFT_TOPS, 'jacket'],
    { chest: over(60, 150, 240), waist: free(), hem: free(-40) },
    'chest EASE; the rest CP'
  ),
  row(
    'silhouette',
    'peplum',
    ['shirt', 'jacket', 'knit-top'],
    { waist: over(20, 50, 90), hem: free(), napeToWaist: over(-15, 0, 20) },
    'waist MEM; the rest CP'
  ),
  row(
    'silhouette',
    'swing',
    ['shirt', 'knit-top', 'coat', 'jacket'],
    { chest: over(45, 90, 170), waist: free(), hip: free(), hem: free() },
    'chest VT; the rest CP'
  ),
  row(
    'silhouette',
    'cocoon',
    ['coat', 'jacket'],
    { chest: over(120, null, null), waist: free(), hip: free(), hem: free(60) },
    'chest MEM; the rest CP'
  ),
  row('silhouette', ['camisole', 'sun'], ['shirt', 'knit-top'], { shoulderWidth: 'skip', sleeveLength: 'skip', armhole: 'skip' }, 'CP'),
  row(
    'topLength',
    'cropped',
    [...SOFT_TOPS, 'jacket'],
    { bodyLength: 'skip', hem: free(20, 'waistGirth') },
    'MEM; hem CP: it ends above the hip'
  ),
  // it sits where it holds, above the hip
  row('hem', 'drawn-in', ['jacket', 'coat'], { hem: free(0, 'waistGirth') }, 'CP'),
  row('hem', 'drawn-in', KNITS, { hem: free(-60, 'waistGirth') }, 'CP; ribs draw in'),
  row('topLength', 'longline', [...SOFT_TOPS, 'jacket'], { bodyLength: 'skip', hem: free(30) }, 'CP: it must close over the hip')
]

/** All round, shoulder to fork and back. Too short in the trunk cuts at the fork and the shoulder and cannot be let out. */
const TRUNK = (least: number, ideal: number, most: number) => over(least, ideal, most)
export const jumpsuitRows: CutRow[] = [
  row(
    'silhouette',
    ['sheath', 'fit-flare', 'sun'],
    JUMPSUIT,
    {
      chest: over(45, 80, 130),
      waist: over(30, 60, 110),
      hip: over(50, 80, 140),
      thigh: over(30, null, null),
      torsoLength: TRUNK(50, 100, 180)
    },
    'MEM; trunk at least 51 all round (a wearing-ease chart)'
  ),
  row(
    'silhouette',
    'boiler',
    JUMPSUIT,
    { chest: over(90, 160, 300), waist: free(110), hip: free(80), thigh: over(30, null, null), torsoLength: TRUNK(80, 150, 300) },
    'MEM'
  ),
  row(
    'silhouette',
    'dungarees',
    JUMPSUIT,
    { chest: 'skip', shoulderWidth: 'skip', waist: free(60), hip: free(50), thigh: over(30, null, null), torsoLength: TRUNK(40, 120, 280) },
    'MEM; straps CP: 80 either way by their buckles'
  ),
  row(
    'silhouette',
    'jersey',
    JUMPSUIT,
    {
      chest: percent(-10, null, null),
      waist: percent(-8, null, null),
      hip: percent(-10, null, null),
      thigh: free(0),
      torsoLength: TRUNK(-120, -20, 120)
    },
    'MEM'
  )
]

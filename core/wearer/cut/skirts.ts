/** Skirts and dresses by their silhouette, and the eras that cut them otherwise. */
import type { GarmentKind } from '../../ids/kinds.ts'
import { type CutRow, free, over, percent, row } from './cut-row.ts'

const SKIRT: GarmentKind[] = ['skirt']
const DRESS: GarmentKind[] = ['dress']
const BAND = over(5, 19, 40)
/** A waist seam of a dress, set against the back waist length. */
const SEAM_AT_WAIST = over(-15, 0, 15)

export const skirtRows: CutRow[] = [
  row('silhouette', 'pencil', SKIRT, { waist: BAND, hip: over(35, 55, 90), sweep: free(-140) }, 'waist CWU16; the rest CP'),
  row('silhouette', 'a-line', SKIRT, { waist: BAND, hip: over(40, 80, 160), sweep: free(0) }, 'waist CWU16; the rest CP'),
  row('silhouette', 'flared', SKIRT, { waist: BAND, hip: free(40), sweep: free(0) }, 'waist CWU16; the rest CP'),
  row('silhouette', 'gathered', SKIRT, { waist: BAND, hip: free(60), sweep: free(0) }, 'waist CWU16; the rest CP'),
  row('silhouette', 'circle', SKIRT, { waist: BAND, hip: free(60), sweep: free(0) }, 'waist CWU16; the rest CP'),
  row('silhouette', 'pleated', SKIRT, { waist: BAND, hip: free(40), sweep: free(0) }, 'waist CWU16; the rest CP'),
  // where it is buckled: the straps move it 60 either way
  row(
    'silhouette',
    'kilt',
    SKIRT,
    { waist: over(-60, 0, 60), hip: free(30), sweep: free(0) },
    'waist a kilt maker on wearing; the rest CP'
  ),
  row('silhouette', 'wrap', SKIRT, { waist: over(-80, 0, 60), hip: free(0), sweep: free(0) }, 'MEM'),
  row('silhouette', 'bias', SKIRT, { waist: over(0, 10, 30), hip: over(-15, 20, 70), sweep: free(0) }, 'waist CWU16; the rest CP'),
  row('silhouette', 'bodycon', SKIRT, { waist: percent(-8, -3, 2), hip: percent(-8, -3, 3), sweep: free(null) }, 'MEM'),
  row('silhouette', 'puffball', SKIRT, { waist: BAND, hip: free(60), sweep: free(null) }, 'waist CWU16; the rest CP')
]

/** Neither sleeve nor shoulder seam. */
const BARE_ARMS = { shoulderWidth: 'skip', sleeveLength: 'skip', bicep: 'skip', cuff: 'skip' } as const
export const dressRows: CutRow[] = [
  row(
    'silhouette',
    'shift',
    DRESS,
    { chest: over(50, 90, 150), waist: free(60), hip: over(35, 70, 150), sweep: free(0), napeToWaist: 'skip' },
    'chest EASE, STOCK (50 over a sheath); the rest MEM'
  ),
  row(
    'silhouette',
    ['sheath', 'pencil'],
    DRESS,
    { chest: over(28, 60, 95), waist: over(19, 38, 70), hip: over(40, 58, 90), napeToWaist: SEAM_AT_WAIST },
    'chest CWU16; the rest MEM'
  ),
  row(
    'silhouette',
    ['fit-flare', 'circle', 'gathered', 'flared', 'pleated'],
    DRESS,
    { chest: over(28, 65, 105), waist: over(19, 38, 75), hip: free(60), sweep: free(0), napeToWaist: SEAM_AT_WAIST },
    'chest CWU16; the rest MEM'
  ),
  row(
    'silhouette',
    'a-line',
    DRESS,
    { chest: over(28, 65, 105), waist: over(19, 60, 130), hip: free(40), sweep: free(0) },
    'chest CWU16; the rest MEM'
  ),
  row(
    'silhouette',
    'empire',
    DRESS,
    {
      chest: over(28, 65, 110),
      waist: free(80),
      hip: free(80),
      sweep: free(0),
      underbust: over(10, 30, 60),
      napeToWaist: over(-150, -110, -70)
    },
    'chest EASE; the rest MEM'
  ),
  row(
    'silhouette',
    'drop-waist',
    DRESS,
    { chest: over(60, 110, 200), waist: free(80), hip: over(30, 70, 150), napeToWaist: over(60, 120, 200) },
    'chest EASE; the rest MEM'
  ),
  // it is belted: the waist is free; over the buttons nothing may pull
  row(
    'silhouette',
    'shirt-dress',
    DRESS,
    { chest: over(60, 110, 180), waist: free(50), hip: free(60), sweep: free(0) },
    'chest EASE, STOCK (100 over a sheath); the rest MEM'
  ),
  row(
    'silhouette',
    'smock',
    DRESS,
    { chest: over(70, null, null), waist: free(80), hip: free(80), sweep: free(0), napeToWaist: 'skip', shoulderWidth: over(-10, 20, 80) },
    'chest EASE; shoulder CP; the rest MEM'
  ),
  row(
    'silhouette',
    'wrap',
    DRESS,
    { chest: over(-20, 30, 90), waist: over(-60, 20, 100), hip: free(0), sweep: free(0), napeToWaist: over(-15, 0, 25) },
    'MEM'
  ),
  row(
    'silhouette',
    'bodycon',
    DRESS,
    { chest: percent(-10, -4, 2), waist: percent(-8, -2, 6), hip: percent(-10, -4, 2), sweep: free(null) },
    'chest by figures of stretch cloth; the rest MEM'
  ),
  row(
    'silhouette',
    'jersey',
    DRESS,
    { chest: percent(-5, 3, 12), waist: percent(-3, null, null), hip: percent(-5, 3, 12), sweep: free(null) },
    'chest by figures of stretch cloth; the rest MEM'
  ),
  row(
    'silhouette',
    'bias',
    DRESS,
    { chest: over(0, 30, 80), waist: over(0, 50, 120), hip: over(-15, 25, 80), sweep: free(0), napeToWaist: 'skip' },
    'MEM'
  ),
  // held by its top edge: over 20 too big it falls down
  row(
    'silhouette',
    'strapless',
    DRESS,
    { chest: over(-15, 0, 15), waist: over(5, 15, 35), hip: free(35), sweep: free(0), ...BARE_ARMS },
    'STOCK (50 under a sheath); the rest MEM'
  ),
  row(
    'silhouette',
    ['sun', 'camisole'],
    DRESS,
    { chest: over(10, 45, 100), waist: free(15), hip: free(50), sweep: free(0), ...BARE_ARMS },
    'MEM; straps CP'
  ),
  row(
    'silhouette',
    'princess',
    DRESS,
    { chest: over(45, 75, 120), waist: over(30, 60, 100), hip: over(50, 80, 150), napeToWaist: 'skip' },
    'chest EASE; the rest MEM'
  ),
  row(
    'silhouette',
    'corset',
    ['dress', 'shirt'],
    { chest: over(-30, -5, 15), waist: over(-60, -20, 15), ...BARE_ARMS },
    'MEM: laced, with a gap of 50–100 at the back it is right'
  ),
  row('silhouette', 'peplum', ['dress'], { waist: over(20, 50, 90), hip: free(40), napeToWaist: over(-15, 0, 20) }, 'MEM; hip CP'),
  row(
    'silhouette',
    ['swing', 'cocoon'],
    ['dress'],
    { chest: over(45, 90, 170), waist: free(), hip: free(0), sweep: free(0), napeToWaist: 'skip' },
    'chest VT; the rest CP'
  )
]

/** Worn over foundations: bust less waist was 254 in the trade, so the waist decides first. */
const OLD: GarmentKind[] = ['dress', 'shirt', 'jacket']
export const eraRows: CutRow[] = [
  row('era', '1930s', OLD, { chest: over(25, 60, 100), waist: over(20, 60, 110), hip: over(0, 40, 90) }, 'MEM'),
  row(
    'era',
    '1940s-50s',
    OLD,
    { chest: over(25, 50, 80), waist: over(10, 25, 50), hip: over(35, null, null) },
    'chest, waist VINT; hip MEM'
  ),
  row('era', '1960s', OLD, { chest: over(45, 80, 140), waist: free(40), hip: over(40, 75, 160) }, 'VINT; hip MEM'),
  row('era', '1970s', OLD, { chest: over(20, 55, 100), waist: over(15, 40, 90), hip: over(20, 50, 100) }, 'MEM'),
  row('era', '1980s', OLD, { chest: over(80, null, null), waist: free(30), hip: free(50) }, 'MEM'),
  row('era', '2000s', OLD, { chest: over(0, 35, 80), waist: over(0, 20, 60), hip: over(0, 30, 70) }, 'MEM'),
  row('era', '1940s-50s', SKIRT, { waist: over(5, 19, 40) }, 'CWU16')
]

/** Where the seam at the waist of a dress sits, from the nape: at the waist, under the bust, on the hip. */
export const waistSeamRows: CutRow[] = [
  row('waistSeam', 'natural', DRESS, { napeToWaist: SEAM_AT_WAIST }, 'MEM'),
  row('waistSeam', 'empire', DRESS, { napeToWaist: over(-150, -110, -70) }, 'MEM'),
  row('waistSeam', 'drop', DRESS, { napeToWaist: over(60, 120, 200) }, 'MEM'),
  row('waistSeam', 'none', DRESS, { napeToWaist: 'skip' }, 'CP')
]

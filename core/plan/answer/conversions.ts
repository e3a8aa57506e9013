/**
 * Changes of kind (trousers to shorts, long sleeves to short): offered apart and never part of a plan, and only where all that stays wrong
 * would be cut away. Common practice, no source.
 */
import type { GarmentKind } from '../../ids/kinds.ts'
import type { PointId } from '../../ids/points.ts'
import type { Saying } from '../../words/reason.ts'
import type { Misfit } from '../plan.ts'

const LEG: PointId[] = ['inseam', 'outseam', 'knee', 'calf', 'legOpening']
const SLEEVE: PointId[] = ['sleeveLength', 'sleeveUnderarm', 'sleeveFromCentreBack', 'cuff', 'elbow']
const ABOVE_WAIST: PointId[] = [
  ...SLEEVE,
  'chest',
  'underbust',
  'shoulderWidth',
  'bicep',
  'neck',
  'backWidth',
  'armhole',
  'strap',
  'napeToWaist'
]
const BELOW_WAIST: PointId[] = ['hip', 'sweep', 'skirtLength', 'bodyLength']

const CONVERSIONS: { code: string; kinds: GarmentKind[]; cutsAway: PointId[] }[] = [
  { code: 'convert.to-shorts', kinds: ['trousers', 'jeans'], cutsAway: LEG },
  { code: 'convert.to-short-sleeves', kinds: ['shirt', 'knit-top', 'jumper', 'dress', 'jumpsuit'], cutsAway: SLEEVE },
  { code: 'convert.to-skirt', kinds: ['dress'], cutsAway: ABOVE_WAIST },
  { code: 'convert.to-top', kinds: ['dress'], cutsAway: BELOW_WAIST },
  { code: 'convert.to-cropped', kinds: ['shirt', 'knit-top', 'jumper'], cutsAway: ['hem', 'bodyLength'] }
]

/** Nothing where nothing stays wrong. */
export function conversionsFor(kind: GarmentKind, misfit: readonly Misfit[], markMm: number): Saying[] {
  const wrong = misfit.filter(({ mm }) => Math.abs(mm) > markMm)
  if (wrong.length === 0) return []
  return CONVERSIONS.filter(({ kinds, cutsAway }) => kinds.includes(kind) && wrong.every(({ point }) => cutsAway.includes(point))).map(
    ({ code }) => ({ code, values: {} })
  )
}

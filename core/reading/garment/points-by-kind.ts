/** Which point a seller's name means on this kind of garment. */
import type { GarmentKind, Shape } from '../../ids/kinds.ts'
import { SHAPE } from '../../ids/kinds.ts'
import { POINTS_OF, type PointId } from '../../ids/points.ts'
import type { PointName } from '../languages/lexicon.ts'

type By = Record<Shape, PointId | null>
/** Common practice, no source: on trousers a bare length is the outer leg; a hem is what the bottom edge is called there. */
const BY_SHAPE: Partial<Record<PointName, By>> = {
  length: { legs: 'outseam', skirt: 'skirtLength', upper: 'bodyLength', whole: 'bodyLength', none: null },
  legLength: { legs: 'inseam', skirt: null, upper: null, whole: 'inseam', none: 'inseam' },
  // how wide a leg is: at the top, but on shorts at its end
  legWidth: { legs: 'thigh', skirt: null, upper: null, whole: 'thigh', none: 'thigh' },
  width: { legs: 'waist', skirt: 'waist', upper: 'chest', whole: 'chest', none: null },
  // a belt on all that has no waistband
  waistband: { legs: 'waist', skirt: 'waist', upper: null, whole: null, none: null },
  topEdge: { legs: 'waist', skirt: 'waist', upper: 'chest', whole: 'chest', none: null },
  // the yoke of a skirt
  shoulderWidth: { legs: null, skirt: null, upper: 'shoulderWidth', whole: 'shoulderWidth', none: 'shoulderWidth' },
  // how wide a skirt is at the knee, or a sleeve: no point of theirs
  knee: { legs: 'knee', skirt: null, upper: null, whole: 'knee', none: 'knee' },
  rise: { legs: 'frontRise', skirt: 'frontRise', upper: 'frontRise', whole: 'frontRise', none: 'frontRise' },
  cuffEdge: { legs: 'legOpening', skirt: 'cuff', upper: 'cuff', whole: 'cuff', none: 'cuff' },
  bottomEdge: { legs: 'legOpening', skirt: 'sweep', upper: 'hem', whole: 'sweep', none: null },
  // names that are clear, on kinds that have another point there
  sweep: { legs: 'legOpening', skirt: 'sweep', upper: 'hem', whole: 'sweep', none: 'sweep' },
  hem: { legs: 'legOpening', skirt: 'sweep', upper: 'hem', whole: 'sweep', none: 'hem' },
  cuff: { legs: 'legOpening', skirt: 'cuff', upper: 'cuff', whole: 'cuff', none: 'cuff' },
  bodyLength: { legs: 'outseam', skirt: 'skirtLength', upper: 'bodyLength', whole: 'bodyLength', none: 'bodyLength' },
  skirtLength: { legs: 'outseam', skirt: 'skirtLength', upper: null, whole: 'skirtLength', none: 'skirtLength' },
  outseam: { legs: 'outseam', skirt: 'skirtLength', upper: null, whole: 'outseam', none: 'outseam' },
  armhole: { legs: null, skirt: null, upper: 'armhole', whole: 'armhole', none: 'armhole' },
  legOpening: { legs: 'legOpening', skirt: 'sweep', upper: null, whole: 'legOpening', none: 'legOpening' },
  napeToWaist: { legs: 'outseam', skirt: 'skirtLength', upper: 'napeToWaist', whole: 'napeToWaist', none: 'napeToWaist' },
  torsoLength: { legs: null, skirt: null, upper: 'bodyLength', whole: 'torsoLength', none: 'torsoLength' }
}
const LEGGED: PointName[] = ['legOpening', 'outseam', 'cuffEdge', 'legLength', 'bottomEdge', 'length']

/** The point, or null where this kind has none of that name. Jumpsuits have both halves. */
export function pointOf(name: PointName, kind: GarmentKind | null): PointId | null {
  const by = BY_SHAPE[name]
  if (by === undefined) return name as PointId
  if (name === 'legWidth' && kind === 'shorts') return 'legOpening'
  if (kind === 'jumpsuit') {
    if (name === 'length' || name === 'bodyLength') return 'bodyLength'
    if (name === 'bottomEdge' || name === 'hem' || name === 'sweep') return 'legOpening'
  } else if (
    kind !== null &&
    SHAPE[kind] === 'whole' &&
    LEGGED.includes(name) &&
    (name === 'outseam' || name === 'legOpening' || name === 'legLength')
  )
    return name === 'legOpening' ? 'sweep' : name === 'outseam' ? 'bodyLength' : null
  // a cape, a kimono and a swimsuit have a length from the shoulder
  if (kind === 'other') return by.none ?? by.upper
  return by[kind === null ? 'none' : SHAPE[kind]]
}

const SIGNS: Partial<Record<PointName, Shape>> = {
  inseam: 'legs',
  outseam: 'legs',
  legOpening: 'legs',
  rise: 'legs',
  frontRise: 'legs',
  backRise: 'legs',
  thigh: 'legs',
  legLength: 'legs',
  legWidth: 'legs',
  knee: 'legs',
  calf: 'legs',
  skirtLength: 'skirt',
  sleeveLength: 'upper',
  shoulderWidth: 'upper',
  chest: 'upper',
  bicep: 'upper',
  armhole: 'upper',
  sleeveUnderarm: 'upper',
  sleeveFromCentreBack: 'upper',
  neck: 'upper',
  backWidth: 'upper',
  underbust: 'whole',
  napeToWaist: 'whole'
}
/** The half of the body that named points tell, when no word tells the kind. */
export function shapeOfPoints(names: readonly PointName[]): Shape | null {
  const votes: Partial<Record<Shape, number>> = {}
  for (const name of names) {
    const shape = SIGNS[name]
    if (shape) votes[shape] = (votes[shape] ?? 0) + 1
  }
  const { legs = 0, upper = 0, whole = 0, skirt = 0 } = votes
  if (legs > upper + whole) return 'legs'
  if (upper + whole > 0) return names.includes('hip') && !names.includes('sleeveLength') ? 'whole' : 'upper'
  // a waist, a hip and a length, and nothing above or below: a skirt
  return skirt > 0 || (names.includes('length') && names.includes('waist') && names.includes('hip')) ? 'skirt' : null
}

/** Names for one thing on garments of different halves: a kind set right afterwards moves them. */
const SIBLINGS: PointId[][] = [
  ['outseam', 'skirtLength', 'bodyLength'],
  ['legOpening', 'sweep', 'hem']
]
/** What a point of a reading is on this kind. */
export function pointOn(kind: GarmentKind, point: PointId): PointId {
  const has = POINTS_OF[kind]
  if (kind === 'other' || has.includes(point)) return point
  return SIBLINGS.find((points) => points.includes(point))?.find((other) => has.includes(other)) ?? point
}

/** Points of measure of a garment. A girth is always around, a length along. This file imports nothing but kinds. */
import type { GarmentKind } from './kinds.ts'

export const GIRTHS = [
  'chest',
  'waist',
  'hip',
  'hem',
  'sweep',
  'bicep',
  'cuff',
  'neck',
  'thigh',
  'knee',
  'calf',
  'legOpening',
  'elbow',
  'underbust',
  'armhole'
] as const
export const LENGTHS = [
  'shoulderWidth',
  'sleeveLength',
  'sleeveFromCentreBack',
  'sleeveUnderarm',
  'bodyLength',
  'skirtLength',
  'napeToWaist',
  'backWidth',
  'inseam',
  'outseam',
  'frontRise',
  'backRise',
  'crotchLength',
  'strap',
  'torsoLength'
] as const
export const POINTS = [...GIRTHS, ...LENGTHS] as const
export type PointId = (typeof POINTS)[number]

const GIRTH_SET: ReadonlySet<string> = new Set(GIRTHS)
/** Is this point measured around (a flat figure is doubled)? */
export const isGirth = (point: PointId): boolean => GIRTH_SET.has(point)

const LEGS: PointId[] = [
  'waist',
  'hip',
  'thigh',
  'knee',
  'calf',
  'legOpening',
  'inseam',
  'outseam',
  'frontRise',
  'backRise',
  'crotchLength'
]
const UPPER: PointId[] = [
  'chest',
  'waist',
  'hem',
  'shoulderWidth',
  'sleeveLength',
  'sleeveFromCentreBack',
  'sleeveUnderarm',
  'bodyLength',
  'bicep',
  'elbow',
  'cuff',
  'neck',
  'backWidth',
  'napeToWaist',
  'armhole'
]
const SKIRT: PointId[] = ['waist', 'hip', 'sweep', 'skirtLength']
const WHOLE: PointId[] = [
  'chest',
  'underbust',
  'waist',
  'hip',
  'sweep',
  'shoulderWidth',
  'sleeveLength',
  'bodyLength',
  'skirtLength',
  'napeToWaist',
  'bicep',
  'cuff',
  'neck',
  'backWidth',
  'strap',
  'armhole'
]

/** The points that a kind of garment has, in the order they are shown. */
export const POINTS_OF: Record<GarmentKind, readonly PointId[]> = {
  trousers: LEGS,
  jeans: LEGS,
  shorts: LEGS,
  skirt: SKIRT,
  dress: WHOLE,
  jumpsuit: [
    'chest',
    'underbust',
    'waist',
    'hip',
    'thigh',
    'knee',
    'legOpening',
    'inseam',
    'torsoLength',
    'crotchLength',
    'shoulderWidth',
    'sleeveLength',
    'bicep',
    'cuff',
    'neck',
    'napeToWaist',
    'strap'
  ],
  shirt: UPPER,
  'knit-top': UPPER,
  jumper: UPPER,
  jacket: UPPER,
  coat: [...UPPER, 'hip'],
  waistcoat: ['chest', 'waist', 'hem', 'shoulderWidth', 'bodyLength', 'backWidth', 'napeToWaist', 'armhole'],
  other: POINTS
}

/** The parts of a garment's make that a page shows and lets set, by shape. The shape of a skirt and the length of sleeves are the cut's. */
import type { Made } from '../../core/garment/garment-input.ts'
import { type GarmentKind, SHAPE, type Shape } from '../../core/ids/kinds.ts'

export type YesNo = 'felledSeams' | 'tailored' | 'lined' | 'backSeam' | 'slantPockets' | 'darts' | 'elasticWaist' | 'workingCuffButtons'
export type Depth =
  | 'seamAllowanceMm'
  | 'outletMm'
  | 'hemDepthMm'
  | 'hipDepthMm'
  | 'backPocketGapMm'
  | 'pocketDepthMm'
  | 'taperLengthMm'
  | 'overlapMm'
  | 'waistStretchedMm'
export type Shown = YesNo | Depth | 'hemKind'

const YES_NO: ReadonlySet<string> = new Set<YesNo>([
  'felledSeams',
  'tailored',
  'lined',
  'backSeam',
  'slantPockets',
  'darts',
  'elasticWaist',
  'workingCuffButtons'
])
export const isYesNo = (part: Shown): part is YesNo => YES_NO.has(part)
export const isDepth = (part: Shown): part is Depth => part.endsWith('Mm')

const BY_SHAPE: Record<Shape, readonly Shown[]> = {
  legs: [
    'backSeam',
    'outletMm',
    'seamAllowanceMm',
    'felledSeams',
    'hemDepthMm',
    'hemKind',
    'backPocketGapMm',
    'taperLengthMm',
    'slantPockets',
    'elasticWaist',
    'waistStretchedMm',
    'lined'
  ],
  skirt: ['seamAllowanceMm', 'hemDepthMm', 'hemKind', 'outletMm', 'darts', 'hipDepthMm', 'elasticWaist', 'waistStretchedMm', 'lined'],
  upper: [
    'lined',
    'tailored',
    'seamAllowanceMm',
    'felledSeams',
    'hemDepthMm',
    'hemKind',
    'darts',
    'backSeam',
    'overlapMm',
    'workingCuffButtons'
  ],
  whole: ['lined', 'backSeam', 'seamAllowanceMm', 'outletMm', 'hemDepthMm', 'hemKind', 'darts', 'elasticWaist', 'waistStretchedMm'],
  none: []
}
export const HEM_KINDS = ['plain', 'original-edge', 'blind', 'knit'] as const

export const isSo = (made: Made, part: YesNo): boolean => {
  const value = made[part]
  return typeof value === 'boolean' ? value : value.length > 0
}
/** Where seams have allowances of their own, the plain one is shown. */
export const depthOf = (made: Made, part: Depth): number => {
  const value = made[part]
  return typeof value === 'number' ? value : (value.side ?? PLAIN_ALLOWANCE_MM)
}
const PLAIN_ALLOWANCE_MM = 10

/** Only an elastic waist is pulled out. */
export const partsOf = (kind: GarmentKind, { elasticWaist }: Made): readonly Shown[] =>
  BY_SHAPE[SHAPE[kind]].filter((part) => part !== 'waistStretchedMm' || elasticWaist)

/**
 * Where each body measure is taken: its number, the side of the figure, and the line of the tape on it (figure units: about
 * 480 tall, x from the centre). Measures in the terms of ISO 8559-1; what each needs is in the words.
 */
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import type { Line, Spot } from '../../../core/worksheet/outline/curve.ts'

export type Side = 'front' | 'back'
export interface BodyPlace {
  measure: BodyMeasureId
  number: number
  side: Side
  tape: Line
  /** The ring with its number. */
  ring: Spot
}

const RIGHT = 128
const LEFT = -118

/** Around: the near half of a tape, bowed a little down. */
const around = (left: number, right: number, y: number, bow = 4): Line => [
  { x: left, y },
  { x: left + (right - left) * 0.25, y: y + bow * 0.75 },
  { x: (left + right) / 2, y: y + bow },
  { x: left + (right - left) * 0.75, y: y + bow * 0.75 },
  { x: right, y }
]

/** The measures that decide most; the figure always shows them. */
export const MAIN_PLACES: readonly BodyPlace[] = [
  { measure: 'neckGirth', number: 1, side: 'front', tape: around(-11, 11, 68, 3), ring: { x: RIGHT, y: 68 } },
  { measure: 'bustGirth', number: 2, side: 'front', tape: around(-42, 42, 130, 5), ring: { x: RIGHT, y: 126 } },
  { measure: 'waistGirth', number: 3, side: 'front', tape: around(-36, 36, 176), ring: { x: RIGHT, y: 160 } },
  { measure: 'waistbandGirth', number: 4, side: 'front', tape: around(-38, 38, 200), ring: { x: RIGHT, y: 194 } },
  { measure: 'hipGirth', number: 5, side: 'front', tape: around(-44, 44, 236, 5), ring: { x: RIGHT, y: 228 } },
  { measure: 'thighGirth', number: 6, side: 'front', tape: around(3, 43, 274, 3), ring: { x: RIGHT, y: 262 } },
  { measure: 'kneeGirth', number: 7, side: 'front', tape: around(10, 35, 352, 3), ring: { x: RIGHT, y: 352 } },
  { measure: 'upperArmGirth', number: 8, side: 'front', tape: around(-60, -43, 134, 2), ring: { x: LEFT, y: 134 } },
  {
    measure: 'insideLegLength',
    number: 9,
    side: 'front',
    tape: [
      { x: -4, y: 266 },
      { x: -9, y: 320 },
      { x: -13, y: 400 },
      { x: -15, y: 474 }
    ],
    ring: { x: LEFT, y: 370 }
  },
  { measure: 'shoulderWidth', number: 10, side: 'back', tape: around(-45, 45, 94, -4), ring: { x: LEFT, y: 92 } },
  {
    measure: 'backWaistLength',
    number: 11,
    side: 'back',
    tape: [
      { x: 0, y: 74 },
      { x: 0, y: 176 }
    ],
    ring: { x: LEFT, y: 140 }
  },
  {
    measure: 'armLength',
    number: 12,
    side: 'back',
    tape: [
      { x: 47, y: 95 },
      { x: 56, y: 140 },
      { x: 66, y: 190 },
      { x: 75, y: 240 }
    ],
    ring: { x: RIGHT, y: 165 }
  },
  {
    measure: 'bandCrotchLength',
    number: 13,
    side: 'back',
    tape: [
      { x: 0, y: 200 },
      { x: 0, y: 258 }
    ],
    ring: { x: LEFT, y: 226 }
  }
]

/** Measures that few garments ask for; the figure shows one while it is being entered. */
export const MORE_PLACES: readonly BodyPlace[] = [
  {
    measure: 'stature',
    number: 14,
    side: 'front',
    tape: [
      { x: 96, y: 2 },
      { x: 96, y: 478 }
    ],
    ring: { x: RIGHT, y: 420 }
  },
  { measure: 'headGirth', number: 15, side: 'front', tape: around(-22, 22, 24, 3), ring: { x: RIGHT, y: 24 } },
  { measure: 'underbustGirth', number: 16, side: 'front', tape: around(-39, 39, 146), ring: { x: LEFT, y: 160 } },
  { measure: 'wristGirth', number: 17, side: 'front', tape: around(-79, -70, 238, 1), ring: { x: LEFT, y: 226 } },
  { measure: 'handGirth', number: 18, side: 'front', tape: around(-83, -71, 256, 1), ring: { x: LEFT, y: 270 } },
  { measure: 'calfGirth', number: 19, side: 'front', tape: around(11, 34, 386, 3), ring: { x: RIGHT, y: 386 } },
  { measure: 'ankleGirth', number: 20, side: 'front', tape: around(12, 25, 450, 2), ring: { x: RIGHT, y: 450 } },
  { measure: 'heelGirth', number: 21, side: 'front', tape: around(11, 28, 464, 3), ring: { x: RIGHT, y: 470 } },
  {
    measure: 'totalCrotchLength',
    number: 22,
    side: 'back',
    tape: [
      { x: 0, y: 176 },
      { x: 0, y: 258 }
    ],
    ring: { x: RIGHT, y: 226 }
  },
  {
    measure: 'bodyRise',
    number: 23,
    side: 'back',
    tape: [
      { x: 39, y: 176 },
      { x: 42, y: 210 },
      { x: 44, y: 250 }
    ],
    ring: { x: RIGHT, y: 206 }
  },
  {
    measure: 'trunkGirth',
    number: 24,
    side: 'front',
    tape: [
      { x: 22, y: 72 },
      { x: 24, y: 160 },
      { x: 4, y: 258 }
    ],
    ring: { x: LEFT, y: 110 }
  }
]

/** The figure's right half, from the neck down to the fork: arm, trunk and leg. */
export const HALF_FIGURE: { arm: Line; trunk: Line; leg: Line } = {
  arm: [
    { x: 10, y: 60 },
    { x: 11, y: 73 },
    { x: 26, y: 84 },
    { x: 45, y: 91 },
    { x: 54, y: 106 },
    { x: 59, y: 132 },
    { x: 63, y: 158 },
    { x: 67, y: 183 },
    { x: 73, y: 210 },
    { x: 79, y: 236 },
    { x: 83, y: 254 },
    { x: 80, y: 268 },
    { x: 74, y: 272 },
    { x: 71, y: 260 },
    { x: 69, y: 240 },
    { x: 60, y: 212 },
    { x: 54, y: 185 },
    { x: 49, y: 160 },
    { x: 44, y: 136 },
    { x: 42, y: 121 }
  ],
  trunk: [
    { x: 42, y: 121 },
    { x: 40, y: 143 },
    { x: 36, y: 162 },
    { x: 35, y: 178 },
    { x: 38, y: 200 },
    { x: 43, y: 222 },
    { x: 44, y: 241 }
  ],
  leg: [
    { x: 44, y: 241 },
    { x: 43, y: 278 },
    { x: 38, y: 318 },
    { x: 34, y: 352 },
    { x: 34, y: 378 },
    { x: 30, y: 414 },
    { x: 24, y: 452 },
    { x: 25, y: 463 },
    { x: 32, y: 472 },
    { x: 31, y: 478 },
    { x: 17, y: 478 },
    { x: 12, y: 470 },
    { x: 13, y: 456 },
    { x: 11, y: 420 },
    { x: 10, y: 384 },
    { x: 10, y: 352 },
    { x: 7, y: 316 },
    { x: 3, y: 282 },
    { x: 0, y: 262 }
  ]
}

/**
 * What an adult's measure usually lies between, mm: wide bounds that catch a wrong unit or a slip of a digit, no more.
 * From memory; a figure outside is kept and asked about.
 */
export const USUAL_MM: Record<BodyMeasureId, readonly [number, number]> = {
  stature: [1300, 2150],
  neckGirth: [260, 550],
  bustGirth: [650, 1700],
  underbustGirth: [550, 1500],
  waistGirth: [480, 1700],
  waistbandGirth: [520, 1700],
  hipGirth: [650, 1800],
  thighGirth: [350, 1000],
  kneeGirth: [260, 650],
  calfGirth: [230, 650],
  ankleGirth: [170, 400],
  heelGirth: [260, 450],
  upperArmGirth: [180, 650],
  wristGirth: [120, 280],
  handGirth: [150, 300],
  headGirth: [480, 680],
  shoulderWidth: [280, 600],
  backWaistLength: [300, 560],
  armLength: [450, 800],
  insideLegLength: [550, 1050],
  totalCrotchLength: [500, 1200],
  bandCrotchLength: [400, 1100],
  bodyRise: [170, 450],
  trunkGirth: [900, 2300]
}

/** Where the tape begins before there is a figure, mm: girths have a long upper tail, lengths have not. */
export function startMm(measure: BodyMeasureId): number {
  const [least, most] = USUAL_MM[measure]
  return measure.endsWith('Girth') ? least + (most - least) / 4 : (least + most) / 2
}

/** The first is not larger than the second on any body: a pair that is, holds a slip. */
export const NOT_LARGER: readonly (readonly [BodyMeasureId, BodyMeasureId])[] = [
  ['underbustGirth', 'bustGirth'],
  ['thighGirth', 'hipGirth'],
  ['kneeGirth', 'thighGirth'],
  ['ankleGirth', 'calfGirth'],
  ['wristGirth', 'upperArmGirth'],
  ['bandCrotchLength', 'totalCrotchLength'],
  ['insideLegLength', 'stature'],
  ['armLength', 'stature'],
  ['bodyRise', 'totalCrotchLength']
]

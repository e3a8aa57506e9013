/**
 * Invented requests of every kind from a seed: garments around what their wearer wants, made and woven every way. Prints nothing;
 * the caller names the seed.
 */

import type { GarmentInput, GarmentMeasure, Made, Trait } from '../../core/garment/garment-input.ts'
import { GARMENT_KINDS, type GarmentKind } from '../../core/ids/kinds.ts'
import { POINTS_OF, type PointId } from '../../core/ids/points.ts'
import type { Means } from '../../core/plan/means.ts'
import type { ReckonRequest } from '../../core/reckon.ts'
import type { Wearer } from '../../core/wearer/wearer.ts'

export type Random = () => number
/** mulberry32: small, good enough to spread cases about. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}
const pick = <T>(random: Random, from: readonly T[]): T => {
  const one = from[Math.floor(random() * from.length)]
  if (one === undefined) throw new Error('nothing to pick from')
  return one
}
const between = (random: Random, low: number, high: number): number => low + random() * (high - low)

/** Figures that would suit the body below, by point; a garment lies around them. */
const SUITS: Partial<Record<PointId, number>> = {
  chest: 1050,
  waist: 850,
  hip: 1050,
  hem: 1070,
  sweep: 1300,
  bicep: 380,
  cuff: 230,
  neck: 395,
  thigh: 635,
  knee: 470,
  calf: 460,
  legOpening: 400,
  elbow: 340,
  underbust: 850,
  armhole: 520,
  shoulderWidth: 440,
  sleeveLength: 610,
  sleeveFromCentreBack: 830,
  sleeveUnderarm: 480,
  bodyLength: 720,
  skirtLength: 620,
  napeToWaist: 430,
  backWidth: 400,
  inseam: 755,
  outseam: 1040,
  frontRise: 285,
  backRise: 395,
  crotchLength: 680,
  strap: 300,
  torsoLength: 1600
}
const wearer = (random: Random): Wearer => {
  const by = (mm: number) => ({ mm: Math.round(mm * between(random, 0.96, 1.04)) })
  const body: Wearer['body'] = {
    stature: by(1720),
    neckGirth: by(380),
    bustGirth: by(950),
    waistGirth: by(800),
    waistbandGirth: by(820),
    hipGirth: by(980),
    thighGirth: by(585),
    kneeGirth: by(390),
    calfGirth: by(370),
    heelGirth: by(325),
    upperArmGirth: by(300),
    wristGirth: by(165),
    handGirth: by(220),
    headGirth: by(570),
    shoulderWidth: by(420),
    armLength: by(600),
    backWaistLength: by(425),
    insideLegLength: by(780)
  }
  if (random() < 0.3) delete body.thighGirth
  if (random() < 0.3) delete body.kneeGirth
  return { fit: pick(random, ['close', 'regular', 'loose', 'oversized']), body }
}

export function requestFrom(
  random: Random,
  kinds: readonly GarmentKind[] = GARMENT_KINDS.filter((kind) => kind !== 'other')
): ReckonRequest {
  const kind = pick(random, kinds)
  const spread = pick(random, [15, 40, 90])
  const measures = POINTS_OF[kind].flatMap((point): GarmentMeasure[] => {
    const suits = SUITS[point]
    return suits === undefined || random() < 0.25
      ? []
      : [{ point, mm: Math.round(suits + between(random, -spread, spread)), source: random() < 0.8 ? 'seller' : 'own' }]
  })
  const made: Partial<Made> = {}
  if (random() < 0.5) made.seamAllowanceMm = pick(random, [7, 10, 16, 25])
  if (random() < 0.5) made.outletMm = pick(random, [0, 15, 25, 40])
  if (random() < 0.5) made.hemDepthMm = pick(random, [10, 25, 40, 60])
  if (random() < 0.3) made.backPocketGapMm = pick(random, [40, 60, 90])
  if (random() < 0.3) made.backSeam = random() < 0.5
  if (random() < 0.3) made.felledSeams = random() < 0.5 ? true : ['side', 'inseam']
  if (random() < 0.3) made.lined = random() < 0.5
  if (random() < 0.3) made.workingCuffButtons = random() < 0.5
  if (random() < 0.3) made.skirtShape = pick(random, ['straight', 'flared', 'circle', 'pleated'])
  if (random() < 0.2) made.taperLengthMm = pick(random, [100, 150, 260])
  if (random() < 0.15 && ['trousers', 'jeans', 'shorts', 'skirt', 'dress', 'jumpsuit'].includes(kind)) {
    made.elasticWaist = true
    if (random() < 0.5) made.waistStretchedMm = Math.round((SUITS.waist ?? 800) * between(random, 0.9, 1.4))
  }
  const traits: Trait[] = random() < 0.3 ? [pick(random, ['check', 'silk', 'fraying', 'pile', 'denim'])] : []
  const garment: GarmentInput = { kind, measures, made, cloth: { traits } }
  if (random() < 0.5) garment.price = { amount: Math.round(between(random, 5, 60)), postage: 4 }
  const means: Means = { level: pick(random, [1, 2, 3, 4, 5]), tailor: random() < 0.5 }
  if (random() < 0.3) means.markMm = 3.175
  if (random() < 0.5) means.hourWorth = 12
  if (random() < 0.5) means.garmentWorth = 60
  const request: ReckonRequest = { garment, wearer: wearer(random), means }
  if (random() < 0.4) {
    request.favourite = {
      measures: measures
        .filter(() => random() < 0.5)
        .map(({ point, mm }) => ({ point, mm: mm + Math.round(between(random, -spread, spread)) }))
    }
  }
  if (random() < 0.15) request.limits = { 'sides-in': 40, 'waist-in-centre-back': 20, 'waist-in-darts': 0 }
  return request
}

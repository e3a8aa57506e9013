/**
 * How likely a length is for a point of a kind of garment: a bell on the logarithm of millimetres (girths around), with hard ends.
 *
 * Centres and spreads: body girths of ANSUR II (2012: women chest 947 sd 83, waist 861 sd 100, buttock 1021 sd 76, thigh 616 sd 56,
 * biceps 306 sd 31, wrist 155; men chest 1059 sd 87, waist 941 sd 112, buttock 1020 sd 77, thigh 625 sd 58, biceps 358 sd 35, wrist 176)
 * and NHANES 2017–2020 (waist p5–p95 725–1313), with ease of finished garments: woven trousers (waist 800–1003, seat 953–1156,
 * thigh 610–711, knee 495–546, leg opening 432–483, front rise 311–337, back rise 387–413), shirts (chest 900–1340, collar 340–450,
 * shoulders 386–544, back length 640–838, sleeve 530–630, cuff 190–260; US Commercial Standard CS135-46: armhole 495–584, sleeve 375–464),
 * uniform coat (US Army TM 10-8400-201-23: half breast 559, back 757). Widened from memory for second-hand and vintage wear, which
 * runs smaller and more varied.
 */
import type { GarmentKind, Shape } from '../../ids/kinds.ts'
import { SHAPE } from '../../ids/kinds.ts'
import { isGirth, type PointId } from '../../ids/points.ts'

export interface Likely {
  /** The likeliest length, mm. */
  centre: number
  /** Spread of its natural logarithm. */
  spread: number
  least: number
  most: number
}
const bell = (centre: number, spread: number, least: number, most: number): Likely => ({ centre, spread, least, most })

const ANY: Record<PointId, Likely> = {
  chest: bell(1000, 0.14, 500, 2100),
  waist: bell(810, 0.17, 440, 1900),
  hip: bell(1010, 0.14, 560, 2100),
  hem: bell(1010, 0.17, 480, 2600),
  sweep: bell(1350, 0.45, 560, 9000),
  bicep: bell(370, 0.2, 180, 900),
  cuff: bell(235, 0.28, 120, 800),
  neck: bell(410, 0.16, 260, 1000),
  thigh: bell(610, 0.16, 330, 1150),
  knee: bell(450, 0.2, 240, 1000),
  calf: bell(400, 0.2, 230, 1000),
  legOpening: bell(400, 0.28, 190, 1400),
  elbow: bell(340, 0.2, 180, 800),
  underbust: bell(800, 0.14, 480, 1600),
  armhole: bell(470, 0.2, 240, 1000),
  shoulderWidth: bell(430, 0.15, 220, 760),
  sleeveLength: bell(570, 0.28, 60, 920),
  sleeveFromCentreBack: bell(800, 0.12, 300, 1050),
  sleeveUnderarm: bell(450, 0.22, 30, 720),
  bodyLength: bell(720, 0.24, 200, 1900),
  skirtLength: bell(640, 0.32, 180, 1400),
  napeToWaist: bell(400, 0.13, 230, 620),
  backWidth: bell(400, 0.16, 230, 760),
  inseam: bell(740, 0.18, 40, 1050),
  outseam: bell(1000, 0.14, 200, 1350),
  frontRise: bell(275, 0.15, 130, 470),
  backRise: bell(370, 0.13, 190, 560),
  crotchLength: bell(640, 0.13, 360, 1000),
  strap: bell(320, 0.4, 40, 1200),
  torsoLength: bell(700, 0.35, 200, 1900)
}
const BY_SHAPE: Partial<Record<Shape, Partial<Record<PointId, Likely>>>> = {
  legs: { waist: bell(820, 0.15, 440, 1700) },
  skirt: { waist: bell(740, 0.15, 440, 1700) },
  whole: {
    chest: bell(920, 0.13, 500, 2000),
    waist: bell(760, 0.18, 440, 1900),
    bodyLength: bell(1050, 0.18, 500, 1900),
    shoulderWidth: bell(380, 0.14, 220, 700)
  },
  upper: {
    chest: bell(1050, 0.14, 500, 2100),
    waist: bell(960, 0.21, 460, 2100),
    bodyLength: bell(690, 0.16, 200, 1500),
    hip: bell(1060, 0.14, 560, 2200)
  }
}
const BY_KIND: Partial<Record<GarmentKind, Partial<Record<PointId, Likely>>>> = {
  shorts: { inseam: bell(200, 0.45, 20, 420), outseam: bell(450, 0.22, 150, 800), legOpening: bell(580, 0.16, 320, 1300) },
  coat: { bodyLength: bell(880, 0.22, 350, 1600), chest: bell(1120, 0.13, 560, 2200), hem: bell(1180, 0.2, 560, 4500) },
  jacket: { chest: bell(1070, 0.12, 560, 2100), bodyLength: bell(700, 0.12, 300, 1100) },
  skirt: { skirtLength: bell(640, 0.3, 200, 1400) },
  jumpsuit: { bodyLength: bell(1400, 0.12, 500, 1900), outseam: bell(1000, 0.15, 250, 1350) },
  waistcoat: { bodyLength: bell(600, 0.16, 250, 1300) },
  // capes and kimonos, opened out
  other: { bodyLength: bell(880, 0.3, 200, 1700), hem: bell(1180, 0.3, 400, 4500) }
}

/** What is likely for a point of a kind (null: kind unknown). */
export const likely = (point: PointId, kind: GarmentKind | null): Likely =>
  (kind && (BY_KIND[kind]?.[point] ?? BY_SHAPE[SHAPE[kind]]?.[point])) || ANY[point]

/** Can a garment have it at all? */
export function isPossible(mm: number, point: PointId, kind: GarmentKind | null): boolean {
  const { least, most } = likely(point, kind)
  return mm >= least && mm <= most
}

/** Can a figure be of a point at all, flat or around? `mm`: as stated. */
export const isWearable = (mm: number, point: PointId, kind: GarmentKind | null): boolean =>
  isPossible(mm, point, kind) || (isGirth(point) && isPossible(mm * 2, point, kind))

/** Logarithm of how likely, up to a constant that is the same for one point; far out it falls no steeper than a line. */
export function logLikely(mm: number, point: PointId, kind: GarmentKind | null): number {
  const { centre, spread, least, most } = likely(point, kind)
  if (!(mm > 0)) return -50
  const z = Math.abs(Math.log(mm / centre)) / spread
  const inside = mm >= least && mm <= most ? 0 : 6
  return -(z <= 3 ? (z * z) / 2 : 4.5 + 3 * (z - 3)) - Math.log(spread) - inside
}

/** Where things lie on a garment when nobody told: levels down a seam, as such a garment is usually cut. Common practice, no source; mm. */
import { BELOW_KNEE } from '../alterations/leg-length.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import { type GarmentKind, LEGGED } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { Plan } from '../plan/plan.ts'
import { pointMm } from './step.ts'

export const isLegged = (kind: GarmentKind): boolean => LEGGED.includes(kind)
/** The underarm lies a little below the middle between nape and waist. */
const UNDERARM_SHARE = 0.55
const NAPE_TO_WAIST_MM = 430
/** Down the side seam from the underarm: waist, hip, hem. */
export function sideLevels(garment: Garment): { waist: number; hip: number; hem: number } {
  const toWaist = pointMm(garment, 'napeToWaist', NAPE_TO_WAIST_MM)
  const waist = (1 - UNDERARM_SHARE) * toWaist
  const hem = Math.max(waist + 60, pointMm(garment, 'bodyLength', 700) - UNDERARM_SHARE * toWaist)
  return { waist, hip: waist + garment.made.hipDepthMm, hem }
}
/** Down the inside leg from the fork: knee, calf, hem. */
export function legLevels(garment: Garment): { knee: number; calf: number; hem: number } {
  const hem = pointMm(garment, 'inseam', garment.kind === 'shorts' ? 200 : 750)
  const knee = garment.kind === 'shorts' ? hem / 2 : (1 - BELOW_KNEE) * hem
  return { knee, calf: knee + (hem - knee) / 3, hem }
}
/** Down the underarm seam of a sleeve: elbow, cuff. */
export function sleeveLevels(garment: Garment): { elbow: number; cuff: number } {
  const cuff = pointMm(garment, 'sleeveUnderarm', Math.max(80, pointMm(garment, 'sleeveLength', 600) - 140))
  return { elbow: cuff / 2, cuff }
}
/** A length as it will be once the plan is done: lines that end at an edge are told at the finished one. */
export const finishedMm = ({ after }: Plan, point: PointId, mm: number): number => after.find((one) => one.point === point)?.mm ?? mm
/** A taper at the waist is never shorter than this (as the limits reckon it). */
export const backTaperMm = ({ made }: Garment): number => Math.max(made.taperLengthMm, 90)
export const sideTaperMm = ({ made }: Garment): number => Math.max(made.taperLengthMm, made.hipDepthMm)
/** Loops on a band: five on jeans, seven on tailored trousers, evenly round it; one at the centre back. */
export const loopsOn = ({ kind }: Garment): number => (kind === 'trousers' ? 7 : 5)
/** Loops within so far of a place on the band, of those that lie evenly round it from there. */
export function loopsWithin(garment: Garment, halfSpanMm: number): number {
  const apart = pointMm(garment, 'waist', 850) / loopsOn(garment)
  return 1 + 2 * Math.floor(halfSpanMm / apart)
}

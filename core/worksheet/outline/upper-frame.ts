/** An upper garment laid flat: the spots that everything on it is drawn from. All mm. */
import type { PointId } from '../../ids/points.ts'
import { type Line, type Spot, smooth, smoothDown } from './curve.ts'
import { type OutlineDrawing, type OutlineInput, pointReader } from './outline-drawing.ts'

export type UpperCut = 'shirt' | 'jacket' | 'sleeveless' | 'dress' | 'jumpsuit'
const SHOULDER_SLOPE = Math.tan((19 * Math.PI) / 180)
const NECK_SHARE = 5.6
const ARMHOLE_DEPTH = 0.19
const WAIST_AT = 0.42
const SLEEVE_FALL: Record<UpperCut, number> = { shirt: 46, jacket: 54, sleeveless: 46, dress: 46, jumpsuit: 46 }
/** From the waist down to the hip, and to the fork, where nothing tells it. */
const HIP_BELOW = 200
const FORK_BELOW = 300
/** A natural waist below the shoulder, of a garment that goes on below it. */
const WAIST_BELOW = 400
const KNEE_OF_LEG = 0.46
/** The upper sleeve is true this far past the underarm. */
const BICEP_PAST = 46

export interface UpperFrame {
  cut: UpperCut
  neckX: number
  shoulder: Spot
  underarm: Spot
  waistY: number
  hemY: number
  /** The heights of the points that the side passes through, from the top down. */
  levels: readonly { point: PointId; y: number }[]
  side: Line
  /** The inner leg, from the fork to the hem; null: it has no legs. */
  inner: Line | null
  armhole: Line
  /** Unit vectors along the sleeve and across it. */
  along: Spot
  across: Spot
  sleeve: number
  cuff: number
  sleeveShape: Line
  /** The underside, from the underarm to the cuff. */
  underside: Line
  guessed: OutlineDrawing['guessed']
}

export function upperFrame(input: OutlineInput, cut: UpperCut): UpperFrame {
  const { points } = input
  const reader = pointReader(points)
  const { read, guessed } = reader
  const long = cut === 'dress' || cut === 'jumpsuit'
  const chest = read('chest', long ? 940 : 1080)
  const shoulders = read('shoulderWidth', chest * 0.42)
  const neck = points.neck ?? shoulders * 0.88
  const neckX = neck / NECK_SHARE
  const shoulder = { x: shoulders / 2, y: (shoulders / 2 - neckX) * SHOULDER_SLOPE }
  const underarm = { x: chest / 4, y: shoulder.y + ARMHOLE_DEPTH * chest }
  const below = cut === 'dress' ? skirtBelow : cut === 'jumpsuit' ? legsBelow : edgeBelow
  const { levels, hemY, inner } = below(input, reader, chest, underarm)
  const side = smoothDown([underarm, ...levels.map(({ x, y }) => ({ x, y }))])
  const waistY = levels.find(({ point }) => point === 'waist')?.y ?? hemY
  const inwards = Math.min(shoulder.x, underarm.x) - 12
  const armhole = smooth([shoulder, { x: inwards, y: shoulder.y + (underarm.y - shoulder.y) * 0.55 }, underarm])
  const fall = (SLEEVE_FALL[cut] * Math.PI) / 180
  const along = { x: Math.cos(fall), y: Math.sin(fall) }
  const across = { x: -Math.sin(fall), y: Math.cos(fall) }
  const isSleeved = long ? points.sleeveLength !== undefined : cut !== 'sleeveless'
  const sleeve = isSleeved ? read('sleeveLength', 620) : 0
  const cuff = points.cuff ?? (cut === 'jacket' ? 290 : 240)
  const bicep = points.bicep ?? chest * 0.36
  const step = (distance: number, side_: number): Spot => ({
    x: shoulder.x + along.x * distance + across.x * side_,
    y: shoulder.y + along.y * distance + across.y * side_
  })
  const underarmAlong = (underarm.x - shoulder.x) * along.x + (underarm.y - shoulder.y) * along.y
  const underside = smooth([underarm, step(Math.max(underarmAlong, 0) + BICEP_PAST, bicep / 2), step(sleeve, cuff / 2)])
  const sleeveShape = [...[...armhole].reverse(), step(sleeve, 0), ...[...underside].reverse()]
  const body = { cut, neckX, shoulder, underarm, waistY, hemY, side, inner, armhole }
  return { ...body, levels: [{ point: 'chest', y: underarm.y }, ...levels], along, across, sleeve, cuff, sleeveShape, underside, guessed }
}

/** What lies below the underarm: the side at its points, and where it ends. */
interface Below {
  levels: { point: PointId; x: number; y: number }[]
  hemY: number
  inner: Line | null
}
type Reader = ReturnType<typeof pointReader>

/** To a bottom edge. */
function edgeBelow(_: OutlineInput, { read }: Reader, chest: number, underarm: Spot): Below {
  const waist = read('waist', chest * 0.96)
  const hem = read('hem', chest)
  const hemY = read('bodyLength', 740)
  const waistY = underarm.y + WAIST_AT * (hemY - underarm.y)
  return {
    levels: [
      { point: 'waist', x: waist / 4, y: waistY },
      { point: 'hem', x: hem / 4, y: hemY }
    ],
    hemY,
    inner: null
  }
}

/** The waist of a garment that goes on below it: below the underarm, above its end. */
const waistAt = ({ points }: OutlineInput, underarm: Spot, endY: number): number =>
  Math.max(underarm.y + 40, Math.min(points.napeToWaist ?? WAIST_BELOW, endY - 60))

/** Over the hip to the hem of a skirt. */
function skirtBelow(input: OutlineInput, { read }: Reader, chest: number, underarm: Spot): Below {
  const waist = read('waist', chest * 0.8)
  const hip = read('hip', Math.max(waist + 180, chest))
  const sweep = read('sweep', hip * 1.25)
  const told = input.points.skirtLength
  const hemY = Math.max(
    underarm.y + 200,
    told === undefined || input.points.bodyLength !== undefined
      ? read('bodyLength', 1020)
      : (input.points.napeToWaist ?? WAIST_BELOW) + told
  )
  const waistY = waistAt(input, underarm, hemY)
  const hipY = Math.min(waistY + HIP_BELOW, waistY + (hemY - waistY) * 0.6)
  return {
    levels: [
      { point: 'waist', x: waist / 4, y: waistY },
      { point: 'hip', x: hip / 4, y: hipY },
      { point: 'sweep', x: sweep / 4, y: hemY }
    ],
    hemY,
    inner: null
  }
}

/** Over the hip to the ends of two legs. */
function legsBelow(input: OutlineInput, { read }: Reader, chest: number, underarm: Spot): Below {
  const waist = read('waist', chest * 0.85)
  const hip = read('hip', Math.max(waist + 160, chest))
  const inseam = read('inseam', 720)
  const thigh = input.points.thigh ?? hip * 0.6
  const opening = read('legOpening', Math.min(420, hip * 0.42))
  const knee = input.points.knee ?? (thigh + opening) / 2
  const waistY = waistAt(input, underarm, Number.POSITIVE_INFINITY)
  const forkY = waistY + (input.points.frontRise ?? FORK_BELOW)
  const kneeY = forkY + KNEE_OF_LEG * inseam
  const hemY = forkY + inseam
  const hipX = hip / 4
  // a leg wider than the half lies beside the other, not over it
  const kneeX = Math.max(hipX - 4, knee / 2 + 4)
  const hemX = Math.max(hipX - 10, opening / 2 + 4)
  const innerKnee = { x: kneeX - knee / 2, y: kneeY }
  return {
    levels: [
      { point: 'waist', x: waist / 4, y: waistY },
      { point: 'hip', x: hipX, y: waistY + 0.66 * (forkY - waistY) },
      { point: 'thigh', x: hipX, y: forkY },
      { point: 'knee', x: kneeX, y: kneeY },
      { point: 'legOpening', x: hemX, y: hemY }
    ],
    hemY,
    inner: smoothDown([
      { x: 0, y: forkY },
      { x: innerKnee.x * 0.42, y: forkY + (kneeY - forkY) * 0.55 },
      innerKnee,
      { x: hemX - opening / 2, y: hemY }
    ])
  }
}

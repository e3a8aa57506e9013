/** Trousers laid flat: the heights and half widths that everything on them is drawn from. All mm. */
import { type Line, smoothDown } from './curve.ts'
import { type OutlineDrawing, type OutlineInput, pointReader } from './outline-drawing.ts'

/** Of the outer seam at the knee and the hem, inside the widest part. */
const KNEE_IN = 4
const HEM_IN = 10
const HIP_OF_RISE = 0.74
const KNEE_OF_LEG = 0.46
/** A hip is drawn a little wider than a quarter of its girth: the cloth bulges where it is folded. */
const HIP_DRAWN = 1.02
const LEAST_LEG_WITH_KNEE = 380

/** The heights and half widths everything else is drawn from. */
export interface LegsFrame {
  waistX: number
  hipX: number
  hipY: number
  forkY: number
  kneeY: number | null
  hemY: number
  outer: Line
  inner: Line
  guessed: OutlineDrawing['guessed']
}

export function legsFrame({ points }: OutlineInput): LegsFrame {
  const { read, guessed } = pointReader(points)
  const inseam = read('inseam', 760)
  const rise = points.outseam !== undefined && points.outseam > inseam ? points.outseam - inseam : read('frontRise', 270)
  const waist = read('waist', 840)
  const hip = read('hip', Math.max(waist + 160, (points.thigh ?? 0) * 1.65))
  const thigh = points.thigh ?? hip * 0.6
  const opening = read('legOpening', 400)
  const forkY = rise
  const hemY = rise + inseam
  const kneeY = inseam >= LEAST_LEG_WITH_KNEE ? rise + KNEE_OF_LEG * inseam : null
  const knee = kneeY === null ? null : read('knee', Math.min(thigh, (thigh + opening) / 2))
  const hipX = (HIP_DRAWN * hip) / 4
  // a leg wider than the half lies beside the other, not over it: the whole leg moves out
  const out = Math.max(0, opening / 2 + HEM_IN + 4 - hipX, knee === null ? 0 : knee / 2 + KNEE_IN + 4 - hipX)
  const hemX = hipX - HEM_IN + out
  const kneeX = hipX - KNEE_IN + out
  const hipY = HIP_OF_RISE * rise
  const outer = smoothDown([
    { x: waist / 4, y: 0 },
    { x: hipX, y: hipY },
    { x: hipX, y: forkY },
    ...(kneeY === null ? [] : [{ x: kneeX, y: kneeY }]),
    { x: hemX, y: hemY }
  ])
  const innerHem = { x: hemX - opening / 2, y: hemY }
  const innerKnee = kneeY === null || knee === null ? null : { x: kneeX - knee / 2, y: kneeY }
  const next = innerKnee ?? innerHem
  const inner = smoothDown([
    { x: 0, y: forkY },
    { x: Math.min(4, next.x * 0.2), y: forkY + (next.y - forkY) * 0.12 },
    { x: next.x * 0.42, y: forkY + (next.y - forkY) * 0.55 },
    ...(innerKnee === null ? [] : [innerKnee]),
    innerHem
  ])
  return { waistX: waist / 4, hipX, hipY, forkY, kneeY, hemY, outer, inner, guessed }
}

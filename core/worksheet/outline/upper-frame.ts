/** An upper garment laid flat: the spots that everything on it is drawn from. All mm. */
import { type Line, type Spot, smooth, smoothDown } from './curve.ts'
import { type OutlineDrawing, type OutlineInput, pointReader } from './outline-drawing.ts'

export type UpperCut = 'shirt' | 'jacket' | 'sleeveless' | 'dress'
const SHOULDER_SLOPE = Math.tan((19 * Math.PI) / 180)
const NECK_SHARE = 5.6
const ARMHOLE_DEPTH = 0.19
const WAIST_AT = 0.42
const USUAL_NAPE_TO_WAIST = 410
const USUAL_HIP_DEPTH = 200
const SLEEVE_FALL: Record<UpperCut, number> = { shirt: 46, jacket: 54, sleeveless: 46, dress: 46 }
/** The upper sleeve is true this far past the underarm. */
const BICEP_PAST = 46

export interface UpperFrame {
  cut: UpperCut
  neckX: number
  shoulder: Spot
  underarm: Spot
  waistY: number
  /** A dress alone has a hip level of its own. */
  hipY: number | null
  hemY: number
  side: Line
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

export function upperFrame({ points, made }: OutlineInput, cut: UpperCut): UpperFrame {
  const { read, guessed } = pointReader(points)
  const chest = read('chest', 1080)
  const shoulders = read('shoulderWidth', chest * 0.42)
  const neck = points.neck ?? shoulders * 0.88
  const waist = read('waist', chest * 0.96)
  const isDress = cut === 'dress'
  const hip = isDress ? read('hip', waist + 220) : null
  const hemGirth = hip === null ? read('hem', chest) : read('sweep', hip * 1.1)
  const hemY = read('bodyLength', isDress ? 1000 : 740)
  const neckX = neck / NECK_SHARE
  const shoulder = { x: shoulders / 2, y: (shoulders / 2 - neckX) * SHOULDER_SLOPE }
  const underarm = { x: chest / 4, y: shoulder.y + ARMHOLE_DEPTH * chest }
  const below = hemY - underarm.y
  const waistY = isDress
    ? Math.min(Math.max(points.napeToWaist ?? USUAL_NAPE_TO_WAIST, underarm.y + 40), underarm.y + 0.5 * below)
    : underarm.y + WAIST_AT * below
  const hipY = hip === null ? null : Math.min(waistY + (made.hipDepthMm ?? USUAL_HIP_DEPTH), waistY + 0.7 * (hemY - waistY))
  const side = smoothDown([
    underarm,
    { x: waist / 4, y: waistY },
    ...(hip === null || hipY === null ? [] : [{ x: hip / 4, y: hipY }]),
    { x: hemGirth / 4, y: hemY }
  ])
  const inwards = Math.min(shoulder.x, underarm.x) - 12
  const armhole = smooth([shoulder, { x: inwards, y: shoulder.y + (underarm.y - shoulder.y) * 0.55 }, underarm])
  const fall = (SLEEVE_FALL[cut] * Math.PI) / 180
  const along = { x: Math.cos(fall), y: Math.sin(fall) }
  const across = { x: -Math.sin(fall), y: Math.cos(fall) }
  // whether a dress has sleeves is not to be guessed
  const sleeve = cut === 'sleeveless' ? 0 : isDress ? (points.sleeveLength ?? 0) : read('sleeveLength', 620)
  const cuff = points.cuff ?? (cut === 'jacket' ? 290 : 240)
  const bicep = points.bicep ?? chest * 0.36
  const step = (distance: number, side_: number): Spot => ({
    x: shoulder.x + along.x * distance + across.x * side_,
    y: shoulder.y + along.y * distance + across.y * side_
  })
  const underarmAlong = (underarm.x - shoulder.x) * along.x + (underarm.y - shoulder.y) * along.y
  const underside = smooth([underarm, step(Math.max(underarmAlong, 0) + BICEP_PAST, bicep / 2), step(sleeve, cuff / 2)])
  const sleeveShape = [...[...armhole].reverse(), step(sleeve, 0), ...[...underside].reverse()]
  return { cut, neckX, shoulder, underarm, waistY, hipY, hemY, side, armhole, along, across, sleeve, cuff, sleeveShape, underside, guessed }
}

/** A skirt laid flat: waist, hip and hem each a quarter from the centre. */
import { taperShare } from '../../alterations/taper.ts'
import type { Job } from '../../plan/plan.ts'
import { type Anchor, type Line, mirrored, offsetAt, part, smoothDown, xAt } from './curve.ts'
import {
  type Moved,
  movedBy,
  type OutlineDrawing,
  type OutlineInput,
  offsetAtPoint,
  pointReader,
  type View,
  waistDarts
} from './outline-drawing.ts'

const BAND = 30
const USUAL_HIP_DEPTH = 200
const USUAL_TAPER = 200
const DART_DEPTH = 120

export interface SkirtFrame {
  waistX: number
  hipY: number
  hemY: number
  side: Line
  guessed: OutlineDrawing['guessed']
}

export function skirtFrame({ points, made }: OutlineInput): SkirtFrame {
  const { read, guessed } = pointReader(points)
  const waist = read('waist', 760)
  const hip = read('hip', waist + 220)
  const hemY = read('skirtLength', 600)
  const sweep = read('sweep', hip)
  const hipY = Math.min(made.hipDepthMm ?? USUAL_HIP_DEPTH, hemY * 0.6)
  const side = smoothDown([
    { x: waist / 4, y: 0 },
    { x: hip / 4, y: hipY },
    { x: sweep / 4, y: hemY }
  ])
  return { waistX: waist / 4, hipY, hemY, side, guessed }
}

export function skirtOutline(input: OutlineInput, view: View): OutlineDrawing {
  const frame = skirtFrame(input)
  const { side, hemY, waistX } = frame
  const half: Line = [{ x: 0, y: 0 }, ...side, { x: 0, y: hemY }]
  return {
    view,
    layers: [
      {
        cloth: [...half, ...mirrored(half).reverse()],
        edges: [[...mirrored(side).reverse(), ...side], hem(frame, hemY), mirrored(hem(frame, hemY))]
      }
    ],
    seams: [
      [
        { x: -xAt(side, BAND), y: BAND },
        { x: xAt(side, BAND), y: BAND }
      ],
      ...(view === 'back'
        ? [
            [
              { x: 0, y: 0 },
              { x: 0, y: hemY }
            ]
          ]
        : []),
      ...[1, -1].map((way) => [
        { x: way * waistX * 0.5, y: BAND },
        { x: way * waistX * 0.5, y: DART_DEPTH }
      ])
    ],
    moved: input.jobs.flatMap((job) => job.lines.flatMap((line) => movedLines(frame, input, job, line, view))),
    dimensions: dimensions(frame, input),
    guessed: frame.guessed
  }
}

const hem = ({ side }: SkirtFrame, y: number): Line => [
  { x: 0, y },
  { x: xAt(side, y), y }
]

function movedLines(frame: SkirtFrame, input: OutlineInput, job: Job, line: Job['lines'][number], view: View): Moved[] {
  const { seam, offsetMm } = line
  const { both, middle } = movedBy(job, line)
  const taper = input.made.taperLengthMm ?? USUAL_TAPER
  switch (seam) {
    case 'side': {
      const anchors = anchorsOf(frame, job, offsetMm)
      const to = anchors.length > 1 ? (anchors.at(-1)?.y ?? taper) : Math.min(taper, frame.hemY)
      const at = anchors.length > 1 ? (y: number) => offsetAt(anchors, y) : (y: number) => offsetMm * taperShare(y / taper)
      const goes = part(frame.side, 0, to)
      return both(
        goes,
        goes.map(({ x, y }) => ({ x: x - at(y), y }))
      )
    }
    case 'centre-back': {
      if (view === 'front') return []
      const end = Math.min(taper, frame.hemY)
      const goes = part(
        [
          { x: 0, y: 0 },
          { x: 0, y: frame.hemY }
        ],
        0,
        end
      )
      const steps = Array.from({ length: 25 }, (_, i) => ({ x: Math.abs(offsetMm) * taperShare(i / 24), y: (end * i) / 24 }))
      return middle(goes, steps)
    }
    case 'hem':
      return both(hem(frame, frame.hemY), hem(frame, frame.hemY - offsetMm))
    case 'waistband':
    case 'waist-seam':
      return job.amounts.skirtLength === undefined
        ? []
        : both(null, [
            { x: 0, y: offsetMm },
            { x: xAt(frame.side, offsetMm), y: offsetMm }
          ])
    case 'dart': {
      if (view === 'front') return []
      return waistDarts(job, offsetMm, frame.waistX, DART_DEPTH).flatMap((dart) => both(null, dart))
    }
    default:
      return []
  }
}

function anchorsOf(frame: SkirtFrame, job: Job, offsetMm: number): Anchor[] {
  const at = { waist: 0, hip: frame.hipY, sweep: frame.hemY } as const
  const anchors: Anchor[] = []
  for (const point of ['waist', 'hip', 'sweep'] as const) {
    const offset = offsetAtPoint(job, offsetMm, point)
    if (offset !== null) anchors.push({ y: at[point], offset })
  }
  const last = anchors.at(-1)
  if (anchors.length > 1 && last !== undefined && last.y < frame.hemY) anchors.push({ y: frame.hemY, offset: 0 })
  return anchors
}

function dimensions({ waistX, hemY, side }: SkirtFrame, { points }: OutlineInput): OutlineDrawing['dimensions'] {
  const found: OutlineDrawing['dimensions'] = []
  if (points.waist !== undefined) {
    found.push({ point: 'waist', mm: points.waist / 2, flat: true, from: { x: -waistX, y: 0 }, to: { x: waistX, y: 0 } })
  }
  if (points.skirtLength !== undefined) {
    const x = -xAt(side, hemY)
    found.push({ point: 'skirtLength', mm: points.skirtLength, flat: false, from: { x, y: 0 }, to: { x, y: hemY } })
  }
  if (points.sweep !== undefined) {
    const x = xAt(side, hemY)
    found.push({ point: 'sweep', mm: points.sweep / 2, flat: true, from: { x: -x, y: hemY }, to: { x, y: hemY } })
  }
  return found
}

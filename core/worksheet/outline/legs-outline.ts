/** Trousers, jeans and shorts laid flat. The outer seam hangs straight, so the knee and the opening are true; at the fork the inner leg folds under. */
import { taperShare } from '../../alterations/taper.ts'
import type { Job } from '../../plan/plan.ts'
import { type Anchor, type Line, mirrored, offsetAt, part, xAt } from './curve.ts'
import { type LegsFrame, legsFrame } from './legs-frame.ts'
import { type Moved, movedBy, type OutlineDrawing, type OutlineInput, offsetAtPoint, type View, waistDarts } from './outline-drawing.ts'

const BAND = 40
const USUAL_TAPER = 200
const DART_DEPTH = 110
export function legsOutline(input: OutlineInput, view: View): OutlineDrawing {
  const frame = legsFrame(input)
  const { outer, inner, hemY } = frame
  const half: Line = [{ x: 0, y: 0 }, ...outer, ...[...inner].reverse()]
  const cloth = [...half, ...mirrored(half).reverse()]
  return {
    view,
    layers: [
      {
        cloth,
        edges: [[...mirrored(outer).reverse(), ...outer], [...inner], mirrored(inner), hem(frame, hemY), mirrored(hem(frame, hemY))]
      }
    ],
    seams: details(frame, view)
      .flatMap((line) => [line, mirrored(line)])
      .concat([centre(frame, view)]),
    moved: input.jobs.flatMap((job) => job.lines.flatMap((line) => movedLines(frame, input, job, line, view))),
    dimensions: dimensions(frame, input),
    guessed: frame.guessed
  }
}

const hem = ({ inner, outer }: LegsFrame, y: number): Line => [
  { x: xAt(inner, y), y },
  { x: xAt(outer, y), y }
]

const centre = ({ forkY }: LegsFrame, view: View): Line => [
  { x: 0, y: view === 'back' ? 0 : BAND },
  { x: 0, y: forkY }
]

function details({ outer, waistX, hipX, forkY, hemY, inner }: LegsFrame, view: View): Line[] {
  const pocketMouth: Line =
    view === 'front'
      ? [
          { x: waistX * 0.8, y: BAND },
          { x: xAt(outer, forkY * 0.68), y: forkY * 0.68 }
        ]
      : [
          { x: hipX * 0.22, y: forkY * 0.36 },
          { x: hipX * 0.74, y: forkY * 0.36 }
        ]
  const creaseTop = view === 'front' ? BAND : forkY * 0.62
  const crease: Line = [
    { x: hipX * 0.5, y: creaseTop },
    { x: (xAt(inner, hemY) + xAt(outer, hemY)) / 2, y: hemY }
  ]
  return [
    [
      { x: 0, y: BAND },
      { x: xAt(outer, BAND), y: BAND }
    ],
    pocketMouth,
    crease
  ]
}

/** The lines of one stitching line of a job, as far as this side of the garment shows them. */
function movedLines(frame: LegsFrame, input: OutlineInput, job: Job, line: Job['lines'][number], view: View): Moved[] {
  const { seam, offsetMm } = line
  const { both, middle } = movedBy(job, line)
  switch (seam) {
    case 'centre-back':
    case 'seat': {
      if (view === 'front') return []
      const at = (y: number) => centreOffset(frame, input, job, offsetMm, y)
      const end = seam === 'seat' ? frame.forkY : Math.min(taperLength(input), frame.forkY)
      const comes = ladder(0, end, (y) => Math.abs(at(y)))
      const goes: Line = [
        { x: 0, y: 0 },
        { x: 0, y: end }
      ]
      return middle(goes, comes)
    }
    case 'side': {
      const { from, to, at } = outerOffsets(frame, input, job, offsetMm)
      const goes = part(frame.outer, from, to)
      return both(
        goes,
        goes.map(({ x, y }) => ({ x: x - at(y), y }))
      )
    }
    case 'inseam': {
      const anchors = legAnchors(frame, job, offsetMm)
      const goes = part(frame.inner, frame.forkY, frame.hemY)
      const at = anchors.length === 0 ? (y: number) => offsetMm * taperShare((y - frame.forkY) / 200) : (y: number) => offsetAt(anchors, y)
      return both(
        goes,
        goes.map(({ x, y }) => ({ x: x + at(y), y }))
      )
    }
    case 'hem':
      // a fold of an original edge takes up twice its depth
      return both(hem(frame, frame.hemY), hem(frame, frame.hemY - (job.id === 'leg-shorten-keep-edge' ? 2 * offsetMm : offsetMm)))
    case 'waistband':
      return job.amounts.frontRise === undefined && job.amounts.backRise === undefined
        ? []
        : both(null, [
            { x: 0, y: offsetMm },
            { x: xAt(frame.outer, offsetMm), y: offsetMm }
          ])
    case 'dart': {
      if (view === 'front') return []
      return waistDarts(job, offsetMm, frame.waistX, DART_DEPTH).flatMap((dart) => both(null, dart))
    }
    default:
      return []
  }
}

const taperLength = ({ made }: OutlineInput): number => made.taperLengthMm ?? USUAL_TAPER

/** The middle seam: to nothing at the taper's end; where the hip is changed too, through it. */
function centreOffset(frame: LegsFrame, input: OutlineInput, job: Job, offsetMm: number, y: number): number {
  const hip = offsetAtPoint(job, offsetMm, 'hip')
  const waist = offsetAtPoint(job, offsetMm, 'waist')
  if (waist === null && hip !== null) {
    return offsetAt(
      [
        { y: 0, offset: 0 },
        { y: frame.hipY, offset: hip },
        { y: frame.forkY, offset: hip / 2 }
      ],
      y
    )
  }
  return (waist ?? offsetMm) * taperShare(y / taperLength(input))
}

/** The side seam: through every point the job names; from the waist alone it runs out in a taper. */
function outerOffsets(frame: LegsFrame, input: OutlineInput, job: Job, offsetMm: number) {
  const waist = offsetAtPoint(job, offsetMm, 'waist')
  const hip = offsetAtPoint(job, offsetMm, 'hip')
  const leg = legAnchors(frame, job, offsetMm)
  if (leg.length > 0) return { from: frame.forkY, to: frame.hemY, at: (y: number) => offsetAt(leg, y) }
  if (waist !== null && hip === null) {
    const length = taperLength(input)
    return { from: 0, to: length, at: (y: number) => waist * taperShare(y / length) }
  }
  const anchors: Anchor[] = [
    { y: 0, offset: waist ?? 0 },
    { y: frame.hipY, offset: hip ?? offsetMm },
    { y: frame.kneeY ?? frame.hemY, offset: 0 }
  ]
  return { from: 0, to: frame.kneeY ?? frame.hemY, at: (y: number) => offsetAt(anchors, y) }
}

function legAnchors(frame: LegsFrame, job: Job, offsetMm: number): Anchor[] {
  const anchors: Anchor[] = []
  const add = (point: 'thigh' | 'knee' | 'legOpening', y: number | null) => {
    const offset = offsetAtPoint(job, offsetMm, point)
    if (offset !== null && y !== null) anchors.push({ y, offset })
  }
  add('thigh', frame.forkY)
  add('knee', frame.kneeY)
  // a knee between two amounts that is not named stays as it is
  const bothEnds = job.amounts.thigh !== undefined && job.amounts.legOpening !== undefined
  if (bothEnds && job.amounts.knee === undefined && frame.kneeY !== null) anchors.push({ y: frame.kneeY, offset: 0 })
  add('legOpening', frame.hemY)
  const only = anchors[0]
  if (anchors.length === 1 && only !== undefined) {
    // one point alone: it runs out to nothing at the other end of the leg
    anchors.push({ y: only.y <= frame.forkY ? (frame.kneeY ?? frame.hemY) : frame.forkY, offset: 0 })
  }
  return anchors
}

/** A line that steps sideways by `x` as it goes down. */
function ladder(from: number, to: number, x: (y: number) => number): Line {
  const steps = 24
  return Array.from({ length: steps + 1 }, (_, i) => {
    const y = from + ((to - from) * i) / steps
    return { x: x(y), y }
  })
}

function dimensions({ waistX, forkY, hemY, inner, outer }: LegsFrame, { points }: OutlineInput): OutlineDrawing['dimensions'] {
  const found: OutlineDrawing['dimensions'] = []
  if (points.waist !== undefined) {
    found.push({ point: 'waist', mm: points.waist / 2, flat: true, from: { x: -waistX, y: 0 }, to: { x: waistX, y: 0 } })
  }
  if (points.inseam !== undefined) {
    const x = -xAt(outer, hemY)
    found.push({ point: 'inseam', mm: points.inseam, flat: false, from: { x, y: forkY }, to: { x, y: hemY } })
  }
  if (points.legOpening !== undefined) {
    const from = { x: -xAt(outer, hemY), y: hemY }
    found.push({ point: 'legOpening', mm: points.legOpening / 2, flat: true, from, to: { x: -xAt(inner, hemY), y: hemY } })
  }
  return found
}

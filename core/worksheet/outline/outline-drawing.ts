/** A garment laid flat, to scale: the types that every outline is drawn in. All mm; the right half as it lies, mirrored where it is. */
import type { Made } from '../../garment/garment-input.ts'
import type { PointId } from '../../ids/points.ts'
import type { SeamId } from '../../ids/seams.ts'
import type { Job } from '../../plan/plan.ts'
import { type Line, mirrored, type Spot } from './curve.ts'

export type View = 'front' | 'back'
export type Measures = Partial<Record<PointId, number>>

export interface OutlineInput {
  /** Told or worked out by the core; girths around. */
  points: Measures
  jobs: readonly Job[]
  made: Partial<Pick<Made, 'taperLengthMm' | 'hipDepthMm'>>
  /** What every point measures after the plan, where it is known. */
  after?: Measures | undefined
}
/** A stitching line that moves: where it was, where it comes to. */
export interface Moved {
  seam: SeamId
  job: Job['id']
  offsetMm: number
  goes: Line | null
  comes: Line
}
/** A figure on the drawing: a level or upright dimension line between two spots. */
export interface Dimension {
  point: PointId
  mm: number
  flat: boolean
  from: Spot
  to: Spot
}
export interface OutlineDrawing {
  view: View
  /** Pieces of cloth from back to front, each closed, with its edges in pencil; a piece hides what lies under it. */
  layers: { cloth: Line; edges: Line[] }[]
  /** Seams and details that stay. */
  seams: Line[]
  moved: Moved[]
  dimensions: Dimension[]
  /** Points that were drawn from a usual proportion, since nothing told them. */
  guessed: PointId[]
}

/** Takes a point, or a usual proportion in its place, and remembers which was guessed. */
export function pointReader(points: Measures): { read: (point: PointId, usual: number) => number; guessed: PointId[] } {
  const guessed: PointId[] = []
  return {
    guessed,
    read(point, usual) {
      const mm = points[point]
      if (mm !== undefined && mm > 0) return mm
      guessed.push(point)
      return usual
    }
  }
}

/** What a point changes by beyond what any job names for it: the side effect of a seam that runs through it. Signed. */
export function sideEffect({ points, jobs, after }: OutlineInput, point: PointId): number {
  const before = points[point]
  const then = after?.[point]
  if (before === undefined || then === undefined) return 0
  return then - before - jobs.reduce((sum, job) => sum + (job.amounts[point] ?? 0), 0)
}

/** How far a line moves at a point, where the job names several points: its deepest, in proportion. */
export function offsetAtPoint(job: Job, offsetMm: number, point: PointId): number | null {
  const amount = job.amounts[point]
  if (amount === undefined || job.amountMm === 0) return null
  return (offsetMm * Math.abs(amount)) / job.amountMm
}

/** How a line of a job is drawn as moved. All that is given lies on the right half. */
interface MovedBy {
  /** On the half it names, or on both. */
  both: (goes: Line | null, comes: Line) => Moved[]
  /** On this half alone. */
  once: (goes: Line, comes: Line) => Moved[]
  /** The middle seam: it goes from the middle and comes to either side of it. */
  middle: (goes: Line, comes: Line) => Moved[]
}
export function movedBy(job: Job, { seam, offsetMm, side }: Job['lines'][number]): MovedBy {
  const moved = (goes: Line | null, comes: Line): Moved => ({ seam, job: job.id, offsetMm, goes, comes })
  return {
    both(goes, comes) {
      const right = moved(goes, comes)
      const left = moved(goes === null ? null : mirrored(goes), mirrored(comes))
      return side === 'right' ? [right] : side === 'left' ? [left] : [right, left]
    },
    once: (goes, comes) => [moved(goes, comes)],
    middle: (goes, comes) => [moved(goes, comes), moved(null, mirrored(comes))]
  }
}

/** The darts of one half, from the waist down: one half way between centre and side, or two at the thirds where four share the amount. */
export function waistDarts({ amountMm }: Job, offsetMm: number, waistX: number, depth: number): Line[] {
  const shares = Math.round(amountMm / (2 * Math.abs(offsetMm))) > 2 ? [1 / 3, 2 / 3] : [1 / 2]
  return shares.map((share) => [
    { x: waistX * share - offsetMm, y: 0 },
    { x: waistX * share, y: depth },
    { x: waistX * share + offsetMm, y: 0 }
  ])
}

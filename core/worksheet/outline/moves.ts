/** What moves, as a list: each stitching line once, with what its point was and comes to. */
import { isGirth, POINTS, type PointId } from '../../ids/points.ts'
import type { Job, Plan } from '../../plan/plan.ts'

export interface Move {
  job: Job
  seam: Job['lines'][number]['seam']
  side: 'left' | 'right' | null
  offsetMm: number
  /** How a hem, a cuff or a band moves is told as up and down; a seam as in and out; an original edge is kept by a fold above it. */
  way: 'in' | 'out' | 'up' | 'down' | 'fold'
  point: PointId | null
  fromMm: number | null
  toMm: number | null
}

export function movesOf(plan: Plan, before: Partial<Record<PointId, number>>): Move[] {
  const after = new Map(plan.after.map(({ point, mm }) => [point, mm]))
  return plan.alterations.flatMap((job) => {
    const point = deepest(job)
    const fromMm = point === null ? null : (before[point] ?? null)
    const toMm = point === null ? null : (after.get(point) ?? null)
    return job.lines.map(({ seam, offsetMm, side }) => ({
      job,
      seam,
      side: side ?? null,
      offsetMm,
      way: job.id === 'leg-shorten-keep-edge' ? 'fold' : wayOf(seam, offsetMm, point),
      point,
      fromMm,
      toMm
    }))
  })
}

/** A line that lies across a length goes up or down; one that runs along a girth or a width goes in or out. A band taken in comes down. */
function wayOf(seam: Move['seam'], offsetMm: number, point: PointId | null): Move['way'] {
  const inwards = offsetMm >= 0
  const across = point !== null && !isGirth(point) && !WIDTHS.has(point)
  if (!across) return inwards ? 'in' : 'out'
  const fromTop = seam === 'waistband' || seam === 'waist-seam' || seam === 'shoulder' || seam === 'strap'
  return inwards === fromTop ? 'down' : 'up'
}
const WIDTHS: ReadonlySet<PointId> = new Set(['shoulderWidth', 'backWidth'])

/** The point that a job changes most. */
function deepest(job: Job): PointId | null {
  let found: PointId | null = null
  let most = 0
  for (const point of POINTS) {
    const amount = Math.abs(job.amounts[point] ?? 0)
    if (amount > most) {
      most = amount
      found = point
    }
  }
  return found
}

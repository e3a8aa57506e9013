/** How far a stitching line of a job moves where a point is measured. All mm. */
import { CATALOGUE } from '../../alterations/catalogue.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { PointId } from '../../ids/points.ts'
import type { Job } from '../../plan/plan.ts'

/** How much a job changes a point, mm, signed: what it is meant to, and what comes with it by the row it was planned from. */
export function changeAt(job: Job, garment: Garment, point: PointId): number {
  const meant = job.amounts[point]
  if (meant !== undefined) return meant
  const row = CATALOGUE.find(({ id, direction, kinds }) => id === job.id && direction === job.direction && kinds.includes(garment.kind))
  if (row === undefined) return 0
  return row.lines(garment).reduce((sum, line) => sum + Math.abs(job.amounts[line.point] ?? 0) * (line.effects[point] ?? 0), 0)
}

/** How far a stitching line of a job moves at a point: its deepest, in proportion. */
export const offsetAtPoint = (job: Job, garment: Garment, offsetMm: number, point: PointId): number =>
  job.amountMm === 0 ? 0 : (offsetMm * Math.abs(changeAt(job, garment, point))) / job.amountMm

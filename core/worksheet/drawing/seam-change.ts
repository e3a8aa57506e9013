/** How far a stitching line of a job moves where a point is measured. All mm. */
import { CATALOGUE } from '../../alterations/catalogue.ts'
import type { Row } from '../../alterations/row.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { PointId } from '../../ids/points.ts'
import type { Job } from '../../plan/plan.ts'

const rowOf = (job: Job, garment: Garment): Row | undefined =>
  CATALOGUE.find(({ id, direction, kinds }) => id === job.id && direction === job.direction && kinds.includes(garment.kind))

/** How much a job changes a point, mm, signed: what it is meant to, and what comes with it by the row it was planned from. */
export function changeAt(job: Job, garment: Garment, point: PointId): number {
  const meant = job.amounts[point]
  if (meant !== undefined) return meant
  const lines = rowOf(job, garment)?.lines(garment) ?? []
  return lines.reduce((sum, line) => sum + Math.abs(job.amounts[line.point] ?? 0) * (line.effects[point] ?? 0), 0)
}

/**
 * How far a stitching line of a job moves at a point. Where left and right differ, they do so where the job takes most; elsewhere both take the
 * amount of the point, as the steps have it.
 */
export function offsetAtPoint(job: Job, garment: Garment, { seam, offsetMm, side }: Job['lines'][number], point: PointId): number {
  const change = Math.abs(changeAt(job, garment, point))
  if (job.amountMm === 0 || change === job.amountMm) return change === 0 ? 0 : offsetMm
  if (side === undefined) return (offsetMm * change) / job.amountMm
  const seams = (rowOf(job, garment)?.lines(garment) ?? []).flatMap((line) => line.seams)
  const perOffset = seams.find((one) => one.seam === seam)?.mmPerOffset ?? 1
  return (Math.sign(offsetMm) * change) / perOffset
}

/**
 * The choice of alterations as a small exact problem (mixed-integer, linear):
 *
 *   after_p = m_p + Σ E_pa x_a            points told and wanted
 *   f_p ≥ over, f_p ≥ 3·over − 30         misfit outside the band on either side, convex
 *   d_p ≥ |after_p − ideal_p|
 *   mark·y_a ≤ x_a ≤ u_a y_a              an option is used or not; several amounts along one line differ by at most 60
 *   y_a ≤ z_q                             what it opens is opened once
 *   x ≤ beyond + (u − beyond)·y_tier      past a tier the job costs more
 *   x ≤ soft + s                          past a soft limit it burdens by the mm
 *   Σ share x ≤ budget                    shared limits
 *   y_a + y_b ≤ 1                         what excludes each other
 *
 * One weighted solve an aim: minimise W·Σf + burden + c·Σd, where
 *   least-work            c = 1/D, W = (B + 1)/mark
 *   closest-fit, tailor   c = 2,   W = (B + 2D)/mark
 * with B all burdens at their caps over all options and D the farthest reachable Σd. The weights prove themselves: another solution
 * whose Σf is smaller by one mark would save W·mark = B + 1 (or B + 2D), more than burden and distance can ever cost, so misfit is
 * within one mark of the least; and at equal misfit burden is within cΣd ≤ 1 minute (least-work) of the least.
 */
import { type Preparation, preparationsIn, SOFT_MINUTES_PER_MM } from '../../alterations/minutes.ts'
import type { Line, Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import type { Gap } from '../../wearer/gaps.ts'
import type { Aim } from '../plan.ts'

export interface PlanPoint {
  point: PointId
  mm: number
  least: number
  ideal: number
  most: number
}

export interface Problem {
  aim: Aim
  points: PlanPoint[]
  /** Sorted by key, so that the order of a request changes nothing. */
  options: Option[]
  markMm: number
  preparations: Record<Preparation, number>
  /** W, and the burden of one mm from the ideal. */
  misfitWeight: number
  distanceWeight: number
}

/** Amounts by option, by line, mm; the order of problem.options. */
export type Amounts = number[][]

/** Along one line, an amount at a point that nobody wants anything of stays as small as it can: minutes a mm. */
const IDLE_MINUTES_PER_MM = 0.001
export const idleMinutes = (line: Line, points: readonly PlanPoint[]): number =>
  points.some(({ point }) => (line.effects[point] ?? 0) !== 0) ? 0 : IDLE_MINUTES_PER_MM

export function problemFor(
  aim: Aim,
  gaps: readonly Gap[],
  allowed: readonly Option[],
  all: readonly Option[],
  markMm: number,
  factor: number
): Problem {
  const points = pointsOf(gaps)
  const preparations = preparationsIn(factor)
  const burden =
    all.reduce((sum, option) => sum + mostBurden(option), 0) + Object.values(preparations).reduce((sum, minutes) => sum + minutes, 0)
  const distance = Math.max(
    1,
    points.reduce((sum, point) => sum + farthest(point, all), 0)
  )
  const closest = aim !== 'least-work'
  return {
    aim,
    points,
    options: [...allowed].sort((one, other) => (one.key < other.key ? -1 : one.key > other.key ? 1 : 0)),
    markMm,
    preparations,
    misfitWeight: (burden + (closest ? 2 * distance : 1)) / markMm,
    distanceWeight: closest ? 2 : 1 / distance
  }
}

/** What decides: told figures against their bands. */
export const pointsOf = (gaps: readonly Gap[]): PlanPoint[] =>
  gaps.flatMap(({ point, garmentMm, band, aimMm, judged }) =>
    judged && band !== null ? [{ point, mm: garmentMm, least: band.least, ideal: aimMm, most: band.most }] : []
  )

/** Everything an option can burden, at its caps. */
function mostBurden(option: Option): number {
  const soft = option.lines.reduce(
    (sum, line) => sum + softPast(line, line.capMm) * SOFT_MINUTES_PER_MM + line.capMm * IDLE_MINUTES_PER_MM,
    0
  )
  return option.setupMinutes + option.penaltyMinutes + (option.tier?.minutes ?? 0) + soft
}

/** Millimetres past the soft limit. */
export const softPast = (line: Line, mm: number): number => (line.softMm === undefined ? 0 : Math.max(0, mm - line.softMm))

function farthest(point: PlanPoint, options: readonly Option[]): number {
  const { up, down } = reachAt(point.point, options)
  return Math.max(Math.abs(point.mm + up - point.ideal), Math.abs(point.mm - down - point.ideal))
}

/** How far all options together could move a point, mm each way. */
export function reachAt(point: PointId, options: readonly Option[]): { up: number; down: number } {
  let up = 0
  let down = 0
  for (const option of options) {
    for (const line of option.lines) {
      const effect = (line.effects[point] ?? 0) * line.capMm
      if (effect > 0) up += effect
      else down -= effect
    }
  }
  return { up, down }
}

/** Do these two never go together? */
export const excludeEachOther = (one: Option, other: Option): boolean =>
  one.key !== other.key && (one.id === other.id || one.excludes.includes(other.id) || other.excludes.includes(one.id))

/** The step of an amount: one mark of each of its stitching lines. */
export const stepOf = (line: Line, markMm: number): number => markMm * Math.max(1, ...line.seams.map((seam) => seam.mmPerOffset))

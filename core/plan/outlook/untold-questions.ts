/**
 * What no verdict or chance stands on, but may be worth asking about: points that are wanted and were neither told nor worked out (nothing is
 * inferred of them here either), and told points that nothing is known to want, because the body measure under them is missing.
 */
import { alterationsFor } from '../../alterations/alterations-for.ts'
import type { Option } from '../../alterations/row.ts'
import { type Garment, isTold, type PointTaken } from '../../garment/garment-as-worn.ts'
import type { Made } from '../../garment/garment-input.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import { isGirth, type PointId } from '../../ids/points.ts'
import type { Body, BodyMeasureId } from '../../wearer/body.ts'
import { easeFor, edgesFor } from '../../wearer/ease.ts'
import { type Gap, gapsBetween } from '../../wearer/gaps.ts'
import { targetFor } from '../../wearer/target.ts'
import type { Target } from '../../wearer/want.ts'
import type { Wearer } from '../../wearer/wearer.ts'
import type { Means } from '../means.ts'
import { reachAt } from '../solve/problem.ts'
import { singlePointReach } from '../solve/single-point-reach.ts'
import { acceptedBy, withinLevel } from '../solve/within-means.ts'
import { DRAWS } from './draws.ts'
import { bandDraws, figureDraws } from './point-draws.ts'

/** Something uncertain, and what an answer about it would say in each draw. */
export interface Answerable {
  /** A point's figure, how it is made, or a body measure that was not told. */
  what: { point: PointId; again?: true } | { about: keyof Made | 'stretch' | 'fibre' } | { body: BodyMeasureId }
  /** The answer, in sd. */
  z: Float64Array
  /** By draw, of what no chance stands on: would it alone come right? */
  wouldFit?: readonly boolean[]
}

interface Known {
  garment: Garment
  target: Target
  wearer: Wearer | undefined
  options: readonly Option[]
  means: Means
  limits: Partial<Record<AlterationId, number>>
  markMm: number
}

export const untoldQuestions = (known: Known): Answerable[] => [...untoldPoints(known), ...untoldBodyMeasures(known)]

/**
 * How far such a point lies from what is thought of it, mm (sd). Girths: makers differ by the floor of the finished-garment tables (40, from
 * memory), figures of one size by 4 in 100 (the survey's hip on waist: 41 to 45 about 1,030). Lengths: the floor of 30 and as much again.
 */
const sdOf = (point: PointId, mm: number): number => (isGirth(point) ? Math.hypot(40, 0.04 * mm) : Math.hypot(30, 30))

/** Garments are graded whole: an untold girth is thought as large beside what is wanted as the told ones are; a length as it is wanted. */
function untoldPoints({ garment, target, means, limits, markMm }: Known): Answerable[] {
  const wanted = [...target].flatMap(([point, { ideal }]): [PointId, number][] =>
    garment.points.has(point) || ideal === null ? [] : [[point, ideal]]
  )
  if (wanted.length === 0) return []
  const size = sizeBeside(garment, target)
  const thought = new Map<PointId, PointTaken>(
    wanted.map(([point, ideal]) => {
      const mm = isGirth(point) ? ideal * size : ideal
      return [point, { mm, sdMm: sdOf(point, mm), from: 'inferred' }]
    })
  )
  const whole = { ...garment, points: new Map([...garment.points, ...thought]) }
  const options = alterationsFor(whole, limits).options
  return gapsBetween(whole, target).flatMap((gap): Answerable[] => {
    const { point } = gap
    return thought.has(point) && gap.band !== null
      ? [{ what: { point }, z: figureDraws(point), wouldFit: wouldFit(gap, options, means, markMm) }]
      : []
  })
}

/** The body measure under a told point, thought to be what the garment was cut for, give or take. */
function untoldBodyMeasures({ garment, target, wearer, options, means, markMm }: Known): Answerable[] {
  if (wearer === undefined) return []
  const rows = easeFor(garment.kind).filter((row) => !target.has(row.point) && isTold(garment.points.get(row.point)))
  const thought: Body = Object.fromEntries(
    rows.map((row) => {
      const mm = (garment.points.get(row.point)?.mm ?? 0) - edgesFor(row, garment.kind, wearer.fit).ideal
      return [row.body, { mm, sdMm: sdOf(row.point, mm) }]
    })
  )
  if (rows.length === 0) return []
  const wished = targetFor(garment, { ...wearer, body: { ...thought, ...wearer.body } })
  return gapsBetween(garment, wished).flatMap((gap): Answerable[] => {
    const row = rows.find(({ point }) => point === gap.point)
    return row !== undefined && gap.band !== null
      ? [{ what: { body: row.body }, z: bandDraws(gap.point), wouldFit: wouldFit(gap, options, means, markMm) }]
      : []
  })
}

/** By draw: does this point come inside its band by what moves it, whatever becomes of the others? */
function wouldFit(
  { point, garmentMm, sdMm, band, edgeMarginMm, bandSdMm }: Gap,
  options: readonly Option[],
  means: Means,
  markMm: number
): boolean[] {
  const z = figureDraws(point)
  const shift = bandDraws(point)
  const mine = acceptedBy(means, means.tailor ? options : withinLevel(options, means.level)).filter(({ lines }) =>
    lines.some(({ effects }) => (effects[point] ?? 0) !== 0)
  )
  const { up, down } = singlePointReach(point, mine) ?? reachAt(point, mine)
  const { least, most } = band ?? { least: 0, most: Number.POSITIVE_INFINITY }
  return Array.from({ length: DRAWS }, (_, i) => {
    const mm = garmentMm + sdMm * (z[i] ?? 0)
    const off = bandSdMm * (shift[i] ?? 0)
    return mm - down <= most - edgeMarginMm + off + markMm && mm + up >= least + edgeMarginMm + off - markMm
  })
}

/** How large the told girths are beside what is wanted of them (their mean ratio; 1 where none is told). */
function sizeBeside(garment: Garment, target: Target): number {
  const ratios = [...garment.points].flatMap(([point, taken]) => {
    const ideal = target.get(point)?.ideal ?? 0
    return isGirth(point) && isTold(taken) && ideal > 0 ? [taken.mm / ideal] : []
  })
  return ratios.length === 0 ? 1 : ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length
}

/**
 * How far one point's own figure may lie off while some plan still leaves next to nothing wrong: the plan's problem with that figure as one more
 * variable, solved exactly for the farthest each way. Effects and limits that hang on the figure itself are held as they are at its start.
 */
import type { Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import { LinearModel, overAndUnder, rivalsOf, writeAmounts, writeExclusions, writeShared } from '../solve/linear-model.ts'
import type { PlanPoint } from '../solve/problem.ts'
import { solveModel } from '../solve/solve-model.ts'

/** Farther than this is any figure at all, mm. */
export const ANY_MM = 600

export interface Spans {
  /** How far below and above its start the figure may lie, mm; negative where it has to lie on the other side; undefined: no plan fits at all. */
  below: number
  above: number
}

/** `points` at their figures, the varied one at its start; at most `leftMm` wrong in all. */
export function farthestEachWay(
  points: readonly PlanPoint[],
  options: readonly Option[],
  varied: PointId,
  leftMm: number
): Spans | undefined {
  const above = farthest(points, options, varied, leftMm, 1)
  if (above === undefined) return undefined
  const below = farthest(points, options, varied, leftMm, -1)
  return below === undefined ? undefined : { below, above }
}

function farthest(
  points: readonly PlanPoint[],
  options: readonly Option[],
  varied: PointId,
  leftMm: number,
  way: 1 | -1
): number | undefined {
  const values = solveModel(farthestModel(points, options, varied, leftMm, way))
  // the figure is counted from as far as can be on the other side
  return values === undefined ? undefined : (values.get('figure') ?? 0) - ANY_MM
}

/** after = figure + moves; least − o ≤ after ≤ most + o, Σ o ≤ leftMm; as much of the figure as may be. */
export function farthestModel(
  points: readonly PlanPoint[],
  options: readonly Option[],
  varied: PointId,
  leftMm: number,
  way: 1 | -1
): LinearModel {
  const model = new LinearModel()
  model.limit('wrong', { max: leftMm })
  model.limit('figure', { max: 2 * ANY_MM })
  model.put('figure', 'figure', 1)
  model.put('figure', 'cost', -1)
  for (const { point, mm, least, most } of points) {
    const start = point === varied ? mm - way * ANY_MM : mm
    model.limit(`over.${point}`, { max: most - start })
    model.limit(`under.${point}`, { min: least - start })
    const o = `o.${point}`
    model.put(o, 'wrong', 1)
    model.put(o, `over.${point}`, -1)
    model.put(o, `under.${point}`, 1)
  }
  model.put('figure', `over.${varied}`, way)
  model.put('figure', `under.${varied}`, way)
  const rowsOf = overAndUnder(points.map(({ point }) => point))
  for (const [a, option] of options.entries()) {
    const binary = option.fixedMm !== undefined || rivalsOf(options, a).length > 0
    writeAmounts(model, option, a, rowsOf, binary, (k) => option.lines[k]?.capMm ?? 0)
  }
  writeExclusions(model, options)
  writeShared(model, options)
  return model
}

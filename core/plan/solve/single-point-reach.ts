/** One point by itself: how far some plan moves it, up and down. Every figure between can be had, so nothing has to be solved. */
import type { Line, Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import { rivalsOf } from './linear-model.ts'

/** mm each way; undefined where it is not so simple: fixed steps, limits that options share, lines that hold each other back. */
export function singlePointReach(point: PointId, options: readonly Option[]): { up: number; down: number } | undefined {
  const groups = options.flatMap(({ shared }) => shared.map(({ group }) => group))
  const simple = options.every(
    ({ fixedMm, lines, smoothMm }) => fixedMm === undefined && lines.every((line) => lines.length === 1 || line.capMm <= smoothMm)
  )
  if (!simple || new Set(groups).size < groups.length) return undefined
  const moves = options.map((option) => ({ up: reach(point, option, 1), down: reach(point, option, -1) }))
  const rivals = options.map((_, a) => rivalsOf(options, a))
  return {
    up: best(
      moves.map(({ up }) => up),
      rivals
    ),
    down: best(
      moves.map(({ down }) => down),
      rivals
    )
  }
}

function reach(point: PointId, option: Option, way: 1 | -1): number {
  return option.lines.reduce((sum, line, k) => sum + Math.max(0, way * (line.effects[point] ?? 0)) * capOf(option, line, k), 0)
}

/** The cap, or what a limit of its own leaves of it. */
export const capOf = (option: Option, line: Line, k: number): number =>
  option.shared.reduce((cap, { shares, budgetMm }) => ((shares[k] ?? 0) > 0 ? Math.min(cap, budgetMm / (shares[k] ?? 1)) : cap), line.capMm)

/** The largest sum of which no two are rivals. */
function best(values: readonly number[], rivals: readonly number[][], from = 0, barred: ReadonlySet<number> = new Set()): number {
  for (let a = from; a < values.length; a++) {
    const mine = values[a] ?? 0
    if (mine <= 0 || barred.has(a)) continue
    const against = (rivals[a] ?? []).filter((b) => b > a && (values[b] ?? 0) > 0 && !barred.has(b))
    const withIt = mine + best(values, rivals, a + 1, new Set([...barred, ...against]))
    return against.length === 0 ? withIt : Math.max(withIt, best(values, rivals, a + 1, barred))
  }
  return 0
}

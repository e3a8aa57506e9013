/** Points that no option, shared limit or choice between rivals ties together are separate questions. */
import type { Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import { excludeEachOther } from './problem.ts'

export interface PartOf {
  /** Places among all points. */
  places: number[]
  points: PointId[]
  /** Keys of the options that touch them. */
  keys: ReadonlySet<string>
}

/** Over every option that may occur (of any make). */
export function partsOf(points: readonly PointId[], options: readonly Option[]): PartOf[] {
  const group = points.map((_, p) => p)
  const rootOf = (p: number): number => {
    const parent = group[p] ?? p
    return parent === p ? p : rootOf(parent)
  }
  const join = (places: readonly number[]) => {
    const [first, ...rest] = places
    if (first !== undefined) for (const place of rest) group[rootOf(place)] = rootOf(first)
  }
  const placesOf = (option: Option): number[] => [...points.keys()].filter((p) => touches(option, points[p]))
  const places = new Map(options.map((option) => [option, placesOf(option)]))
  for (const [one, mine] of places) {
    join(mine)
    for (const [other, theirs] of places) {
      const tied = excludeEachOther(one, other) || one.shared.some(({ group: name }) => other.shared.some((limit) => limit.group === name))
      if (tied && mine.length > 0 && theirs.length > 0) join([...mine, ...theirs])
    }
  }
  const byRoot = new Map<number, number[]>()
  for (const p of points.keys()) byRoot.set(rootOf(p), [...(byRoot.get(rootOf(p)) ?? []), p])
  return [...byRoot.values()].map((mine) => ({
    places: mine,
    points: mine.flatMap((p) => points[p] ?? []),
    keys: new Set(options.filter((option) => placesOf(option).some((p) => mine.includes(p))).map(({ key }) => key))
  }))
}

const touches = (option: Option, point: PointId | undefined): boolean =>
  point !== undefined && option.lines.some((line) => (line.effects[point] ?? 0) !== 0)

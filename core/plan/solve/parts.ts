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
  const moving = options.flatMap((option) => {
    const places = [...points.keys()].filter((p) => touches(option, points[p]))
    return places.length === 0 ? [] : [{ option, places }]
  })
  for (const [n, { option, places }] of moving.entries()) {
    join(places)
    for (let k = n + 1; k < moving.length; k++) {
      const other = moving[k]
      if (other !== undefined && areTied(option, other.option)) join([...places, ...other.places])
    }
  }
  const byRoot = new Map<number, number[]>()
  for (const p of points.keys()) byRoot.set(rootOf(p), [...(byRoot.get(rootOf(p)) ?? []), p])
  return [...byRoot.values()].map((mine) => ({
    places: mine,
    points: mine.flatMap((p) => points[p] ?? []),
    keys: new Set(moving.filter(({ places }) => places.some((p) => mine.includes(p))).map(({ option }) => option.key))
  }))
}

/** Rivals, or two that draw on one shared limit. */
const areTied = (one: Option, other: Option): boolean =>
  excludeEachOther(one, other) || one.shared.some(({ group }) => other.shared.some((limit) => limit.group === group))

const touches = (option: Option, point: PointId | undefined): boolean =>
  point !== undefined && option.lines.some((line) => (line.effects[point] ?? 0) !== 0)

/** Which points stand in the way where it does not work out: of the draws that fail, in how many does each? */
import type { PointId } from '../../ids/points.ts'
import type { PartOf } from '../solve/parts.ts'
import { type DrawnPoint, figuresFor, writeDraw } from './drawn-points.ts'
import type { PlanSearch } from './plan-search.ts'

export interface PointDoubt {
  point: PointId
  /** Of the draws that fail, the share in which this point stands in the way, 0 to 1: with another or alone. */
  share: number
  /** Of those, in how many is it too big or too long rather than too small or too short? */
  over: number
}

/** What was searched for one pair of hands, and the draws in which they find nothing that fits. */
export interface Searched {
  search: PlanSearch
  parts: readonly PartOf[]
  makes: number
  fails: readonly number[]
}

/** The points by how often they stand in the way, most first; none where nothing fails. */
export function pointDoubts(points: readonly DrawnPoint[], { search, parts, makes, fails }: Searched): PointDoubt[] {
  const figures = figuresFor(parts)
  const times = new Float64Array(points.length)
  const over = new Float64Array(points.length)
  for (const draw of fails) {
    writeDraw(points, parts, draw, figures)
    for (const [part, places] of search.hindering(draw % makes, figures).entries()) {
      for (const place of places) {
        const p = parts[part]?.places[place] ?? -1
        times[p] = (times[p] ?? 0) + 1
        if ((figures[part]?.at[place] ?? 0) > (figures[part]?.most[place] ?? 0)) over[p] = (over[p] ?? 0) + 1
      }
    }
  }
  return points
    .flatMap(({ gap: { point } }, p): PointDoubt[] => {
      const n = times[p] ?? 0
      return n === 0 ? [] : [{ point, share: n / fails.length, over: (over[p] ?? 0) / n }]
    })
    .sort((one, other) => other.share - one.share)
}

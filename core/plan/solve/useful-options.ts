/**
 * Options that could matter: a fixpoint on summed overshoot. A side of a point (too big, too small) is in need when the garment may be past
 * that edge, or could be pushed past it by options already useful, all together at their caps; an option is useful when it moves some
 * needy side back. Where distance from the ideal is weighed too, the ideal is the edge on both sides, and an option whose set-up alone
 * is dearer than all the distance it could save, and which cannot lower any misfit, falls away. An option left out can only add burden.
 */
import type { Line, Option } from '../../alterations/row.ts'
import type { PointId } from '../../ids/points.ts'
import { type PlanPoint, type Problem, reachAt } from './problem.ts'

/** Where a point may be, and the edges it should lie between. */
export interface Needs {
  point: PointId
  lowMm: number
  highMm: number
  least: number
  most: number
}

export function usefulOptions(problem: Problem): Option[] {
  const forMisfit = optionsThatCouldHelp(problem.points.map(asItIs), problem.options)
  if (problem.aim === 'least-work') return forMisfit
  const misfit = new Set(forMisfit)
  const byIdeal = problem.points.map(({ point, mm, ideal }) => ({ point, lowMm: mm, highMm: mm, least: ideal, most: ideal }))
  return optionsThatCouldHelp(byIdeal, problem.options).filter(
    (option) => misfit.has(option) || option.setupMinutes + option.penaltyMinutes < problem.distanceWeight * mostSaved(problem, option)
  )
}

/** Without the rescues that nothing needs: a panel or a re-cut is no way to come nearer to the ideal. */
export function withoutIdleRescues(points: readonly PlanPoint[], options: readonly Option[]): Option[] {
  const needed = new Set(optionsThatCouldHelp(points.map(asItIs), options))
  return options.filter((option) => !option.rescue || needed.has(option))
}

const asItIs = ({ point, mm, least, most }: PlanPoint): Needs => ({ point, lowMm: mm, highMm: mm, least, most })

export function optionsThatCouldHelp(points: readonly Needs[], options: readonly Option[]): Option[] {
  let useful: Option[] = []
  for (;;) {
    const needy: Needy = new Map()
    for (const { point, lowMm, highMm, least, most } of points) {
      const { up, down } = reachAt(point, useful)
      const [big, small] = [highMm + up > most, lowMm - down < least]
      if (big || small) needy.set(point, { big, small })
    }
    const next = options.filter((option) => option.lines.some((line) => movesBack(line, needy)))
    if (next.length === useful.length) return next
    useful = next
  }
}

/** By point: is it too big somewhere, or too small? */
type Needy = Map<PointId, { big: boolean; small: boolean }>
function movesBack({ effects }: Line, needy: Needy): boolean {
  for (const [point, { big, small }] of needy) {
    const effect = effects[point] ?? 0
    if ((effect < 0 && big) || (effect > 0 && small)) return true
  }
  return false
}

/** The most distance from the ideal that an option could save, mm: everything it can move. */
function mostSaved(problem: Problem, option: Option): number {
  return problem.points.reduce((sum, { point }) => {
    const { up, down } = reachAt(point, [option])
    return sum + Math.max(up, down)
  }, 0)
}

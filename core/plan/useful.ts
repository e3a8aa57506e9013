/**
 * Options that could matter: a fixpoint on summed overshoot. A side of a point (too big, too small) is in need when the garment is past
 * that edge, or could be pushed past it by options already useful, all together at their caps; an option is useful when it moves some
 * needy side back. Where distance from the ideal is weighed too, the ideal is the edge on both sides, and an option whose set-up alone
 * is dearer than all the distance it could save, and which cannot lower any misfit, falls away. An option left out can only add burden.
 */
import type { Option } from '../alterations/row.ts'
import type { PointId } from '../garment/points.ts'
import { type Problem, reachAt } from './problem.ts'

export function usefulOptions(problem: Problem): Option[] {
  const forMisfit = fixpoint(problem, false)
  if (problem.aim === 'least-work') return forMisfit
  const misfit = new Set(forMisfit)
  return fixpoint(problem, true).filter(
    (option) => misfit.has(option) || option.setupMinutes + option.penaltyMinutes < problem.distanceWeight * mostSaved(problem, option)
  )
}

function fixpoint(problem: Problem, byIdeal: boolean): Option[] {
  let useful: Option[] = []
  for (;;) {
    const needy = new Map<PointId, { big: boolean; small: boolean }>()
    for (const point of problem.points) {
      const { up, down } = reachAt(point.point, useful)
      const most = byIdeal ? point.ideal : point.most
      const least = byIdeal ? point.ideal : point.least
      needy.set(point.point, { big: point.mm + up > most, small: point.mm - down < least })
    }
    const next = problem.options.filter((option) =>
      option.lines.some((line) =>
        Object.entries(line.effects).some(([point, effect]) => {
          const need = needy.get(point as PointId)
          return need !== undefined && ((effect < 0 && need.big) || (effect > 0 && need.small))
        })
      )
    )
    if (next.length === useful.length) return next
    useful = next
  }
}

/** The most distance from the ideal that an option could save, mm: everything it can move. */
function mostSaved(problem: Problem, option: Option): number {
  return problem.points.reduce((sum, { point }) => {
    const { up, down } = reachAt(point, [option])
    return sum + Math.max(up, down)
  }, 0)
}

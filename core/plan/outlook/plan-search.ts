/** Is there some plan of these options that fits? Asked draw by draw, in every make. */
import type { Option } from '../../alterations/row.ts'
import { ROUNDING } from '../rounding.ts'
import type { Figures } from '../solve/dual-bound.ts'
import type { PartOf } from '../solve/parts.ts'
import { Feasibility, FeasibilityCache } from './feasibility.ts'

/** Whether some plan of somebody's options fits, in every make: the question in its independent parts, each with the cache of what was found so far. */
export class PlanSearch {
  private readonly markMm: number
  private readonly byScenario: Feasibility[][]

  constructor(parts: readonly PartOf[], options: readonly (readonly Option[])[], markMm: number) {
    this.markMm = markMm
    const caches = parts.map(() => new FeasibilityCache())
    const known: { options: readonly Option[]; feasibility: Feasibility }[][] = parts.map(() => [])
    this.byScenario = options.map((some) =>
      parts.map(({ points, keys }, part) => {
        const mine = some.filter(({ key }) => keys.has(key))
        // where a make leaves a part as another did, what was worked out for it stands
        const same = known[part]?.find((one) => one.options.length === mine.length && one.options.every((option, a) => option === mine[a]))
        if (same !== undefined) return same.feasibility
        const feasibility = new Feasibility(points, mine, markMm, caches[part])
        known[part]?.push({ options: mine, feasibility })
        return feasibility
      })
    )
  }

  /** No more than one mark of misfit over all the parts together? */
  fits(scenario: number, figures: readonly Figures[]): boolean {
    const parts = this.byScenario[scenario] ?? []
    if (parts.some((feasibility, part) => figures[part] !== undefined && feasibility.outOfReach(figures[part]))) return false
    const known = parts.map((feasibility, part) => (figures[part] === undefined ? 0 : feasibility.misfitKnown(figures[part])))
    let left = known.reduce((sum, mm) => sum + mm, 0)
    for (const [part, feasibility] of parts.entries()) {
      if (left <= this.markMm + ROUNDING) return true
      const mine = figures[part]
      if (mine !== undefined && (known[part] ?? 0) > 0) left += feasibility.leastMisfit(mine) - (known[part] ?? 0)
    }
    return left <= this.markMm + ROUNDING
  }
}

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
  /** Room for what plans already known leave wrong in each part: filled anew for every draw. */
  private readonly known: Float64Array

  constructor(parts: readonly PartOf[], options: readonly (readonly Option[])[], markMm: number) {
    this.markMm = markMm
    this.known = new Float64Array(parts.length)
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
    for (let part = 0; part < parts.length; part++) {
      const mine = figures[part]
      if (mine !== undefined && parts[part]?.outOfReach(mine)) return false
    }
    // first as far as plans already known bring each part
    let left = 0
    for (let part = 0; part < parts.length; part++) {
      const mine = figures[part]
      const known = mine === undefined ? 0 : (parts[part]?.misfitKnown(mine) ?? 0)
      this.known[part] = known
      left += known
    }
    for (let part = 0; part < parts.length; part++) {
      if (left <= this.markMm + ROUNDING) return true
      const mine = figures[part]
      const known = this.known[part] ?? 0
      if (mine === undefined || known === 0) continue
      const least = parts[part]?.leastMisfit(mine) ?? 0
      // what this part leaves wrong no other part mends
      if (least > this.markMm + ROUNDING) return false
      left += least - known
    }
    return left <= this.markMm + ROUNDING
  }
}

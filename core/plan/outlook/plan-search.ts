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

  /**
   * Where nothing fits: which points stand in the way, as places in each part. Those that no work brings between their edges; where there is none,
   * of those that lie outside them in a part that does not come out, as far as is known, those without which all would fit, or else every one.
   */
  hindering(scenario: number, figures: readonly Figures[]): number[][] {
    const parts = this.byScenario[scenario] ?? []
    const outside = figures.map((mine) => [...mine.at.keys()].filter((p) => isOutside(p, mine)))
    const beyond = outside.map((places, part) => places.filter((p) => isBeyondIn(parts[part], p, figures[part])))
    if (countOf(beyond) > 0) return beyond
    const left = figures.map((mine, part) => (outside[part]?.length === 0 ? 0 : (parts[part]?.misfitKnown(mine) ?? 0)))
    // no part alone is off by more than a mark: then all that are off together
    const least = Math.max(...left) > this.markMm + ROUNDING ? this.markMm + ROUNDING : 0
    const off = outside.map((places, part) => ((left[part] ?? 0) > least ? places : []))
    if (countOf(off) < 2) return off
    const alone = off.map((places, part) => places.filter((p) => this.fitsWithout(part, p, scenario, figures)))
    return countOf(alone) > 0 ? alone : off
  }

  /** Would it fit, were any figure right at this point? */
  private fitsWithout(part: number, p: number, scenario: number, figures: readonly Figures[]): boolean {
    const mine = figures[part]
    if (mine === undefined) return false
    const [least, most] = [mine.least[p] ?? 0, mine.most[p] ?? 0]
    mine.least[p] = least - FREE_MM
    mine.most[p] = most + FREE_MM
    const fits = this.fits(scenario, figures)
    mine.least[p] = least
    mine.most[p] = most
    return fits
  }
}

/** So far out no edge binds anything, mm. */
const FREE_MM = 10_000
const countOf = (places: readonly (readonly number[])[]): number => places.reduce((n, some) => n + some.length, 0)
const isOutside = (p: number, { at, least, most }: Figures): boolean => (at[p] ?? 0) > (most[p] ?? 0) || (at[p] ?? 0) < (least[p] ?? 0)
const isBeyondIn = (part: Feasibility | undefined, p: number, mine: Figures | undefined): boolean =>
  part !== undefined && mine !== undefined && part.isBeyond(p, mine)

/** How sure: over the draws of what is uncertain, in how many does some plan leave no misfit, and in how many would doing nothing? */
import type { Option } from '../alterations/row.ts'
import { POINTS, type PointId } from '../garment/points.ts'
import type { Gap } from '../wearer/gaps.ts'
import { DRAWS, normalDraws } from './draws.ts'
import { Feasibility } from './feasible.ts'

export interface Outlook {
  asItIs: number
  own: number
  tailor: number | null
  /** By draw: does it work out, with whoever is at hand? */
  works: boolean[]
  /** By uncertain point: the draws of its figure, in sd. */
  uncertain: { point: PointId; z: Float64Array; sdMm: number }[]
}

/** Each point has two dimensions of its own, by its place among all points: its figure's error and its band's. */
const dimensionOf = (point: PointId): number => POINTS.indexOf(point) * 2

export function outlookOf(gaps: readonly Gap[], own: readonly Option[], tailor: readonly Option[] | null, markMm: number): Outlook {
  const drawn = gaps.filter((gap) => gap.band !== null)
  const points = drawn.map((gap) => gap.point)
  const none = new Feasibility(points, [], markMm)
  const mine = new Feasibility(points, own, markMm)
  const theirs = tailor === null ? null : new Feasibility(points, tailor, markMm)
  const z = normalDraws()
  const at = new Float64Array(points.length)
  const least = new Float64Array(points.length)
  const most = new Float64Array(points.length)
  const count = { asItIs: 0, own: 0, tailor: 0 }
  const works: boolean[] = []
  for (let i = 0; i < DRAWS; i++) {
    drawn.forEach((gap, p) => {
      const d = dimensionOf(gap.point)
      at[p] = gap.garmentMm + gap.sdMm * (z[d]?.[i] ?? 0)
      const shift = gap.bandSdMm * (z[d + 1]?.[i] ?? 0)
      least[p] = (gap.band?.least ?? 0) + gap.slackMm + shift
      most[p] = (gap.band?.most ?? 0) - gap.slackMm + shift
    })
    const already = none.fits(at, least, most)
    const byOwn = already || mine.fits(at, least, most)
    const byTailor = theirs === null ? false : byOwn || theirs.fits(at, least, most)
    if (already) count.asItIs++
    if (byOwn) count.own++
    if (byTailor) count.tailor++
    works.push(byOwn || byTailor)
  }
  return {
    asItIs: count.asItIs / DRAWS,
    own: count.own / DRAWS,
    tailor: theirs === null ? null : count.tailor / DRAWS,
    works,
    uncertain: drawn.flatMap((gap) => {
      const draws = z[dimensionOf(gap.point)]
      return draws === undefined || gap.from === 'own' ? [] : [{ point: gap.point, z: draws, sdMm: gap.sdMm }]
    })
  }
}

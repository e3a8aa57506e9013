/** How sure: over the draws of what is uncertain, in how many does some plan leave no misfit, and in how many would doing nothing? */
import type { AlterationId } from '../alterations/ids.ts'
import type { Garment } from '../garment/garment-as-worn.ts'
import type { Made } from '../garment/garment-input.ts'
import { POINTS, type PointId } from '../garment/points.ts'
import type { Gap } from '../wearer/gaps.ts'
import { DRAWS, normalDraws } from './draws.ts'
import { Feasibility, Found } from './feasible.ts'
import type { Means } from './means.ts'
import { scenariosOf } from './scenarios.ts'
import { withinLevel } from './within-means.ts'

export interface Outlook {
  asItIs: number
  own: number
  tailor: number | null
  /** By draw: does it work out, with whoever is at hand? */
  works: boolean[]
  /** What is uncertain: the draws of a point's figure, or of how it is made. */
  uncertain: { what: { point: PointId } | { about: keyof Made }; z: Float64Array }[]
}

/** Each point has two dimensions of its own, by its place among all points: its figure's error and its band's. Then one for the seller. */
const dimensionOf = (point: PointId): number => POINTS.indexOf(point) * 2
const SELLER_DIMENSION = POINTS.length * 2

/** Of the variance of one seller's figures so much is common to all of them: the same tape, the same habit (from memory). */
const COMMON_SHARE = 0.3

export interface Uncertain {
  garment: Garment
  gaps: readonly Gap[]
  means: Means
  limits: Partial<Record<AlterationId, number>>
  markMm: number
}

export function outlookOf({ garment, gaps, means, limits, markMm }: Uncertain): Outlook {
  const drawn = gaps.filter((gap) => gap.band !== null)
  const points = drawn.map((gap) => gap.point)
  const scenarios = scenariosOf(garment, limits)
  const none = new Feasibility(points, [], markMm)
  const foundByMe = new Found()
  const foundByTailor = new Found()
  const mine = scenarios.all.map(({ options }) => new Feasibility(points, withinLevel(options, means.level), markMm, foundByMe))
  const theirs = means.tailor ? scenarios.all.map(({ options }) => new Feasibility(points, options, markMm, foundByTailor)) : null
  const errors = drawn.map((gap) => errorDraws(gap))
  const bands = drawn.map((gap) => normalDraws()[dimensionOf(gap.point) + 1])
  const at = new Float64Array(points.length)
  const least = new Float64Array(points.length)
  const most = new Float64Array(points.length)
  const count = { asItIs: 0, own: 0, tailor: 0 }
  const works: boolean[] = []
  for (let i = 0; i < DRAWS; i++) {
    const s = i % scenarios.all.length
    drawn.forEach((gap, p) => {
      at[p] = gap.garmentMm + gap.sdMm * (errors[p]?.[i] ?? 0)
      const shift = gap.bandSdMm * (bands[p]?.[i] ?? 0)
      least[p] = (gap.band?.least ?? 0) + gap.slackMm + shift
      most[p] = (gap.band?.most ?? 0) - gap.slackMm + shift
    })
    const already = none.fits(at, least, most)
    const byOwn = already || (mine[s]?.fits(at, least, most) ?? false)
    const byTailor = theirs !== null && (byOwn || (theirs[s]?.fits(at, least, most) ?? false))
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
    uncertain: [
      ...drawn.flatMap((gap, p) => {
        const z = errors[p]
        return z === undefined || gap.from === 'own' ? [] : [{ what: { point: gap.point }, z }]
      }),
      ...scenarios.uncertain.map(({ about, z }) => ({
        what: { about },
        z: Float64Array.from({ length: DRAWS }, (_, i) => z[i % scenarios.all.length] ?? 0)
      }))
    ]
  }
}

/** A figure's error in sd: of the seller's, a share is common to all of them. */
function errorDraws(gap: Gap): Float64Array {
  const own = normalDraws()[dimensionOf(gap.point)] ?? new Float64Array(DRAWS)
  if (gap.from !== 'seller') return own
  const common = normalDraws()[SELLER_DIMENSION] ?? new Float64Array(DRAWS)
  return own.map((z, i) => Math.sqrt(COMMON_SHARE) * (common[i] ?? 0) + Math.sqrt(1 - COMMON_SHARE) * z)
}

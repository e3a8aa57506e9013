/** How sure: over the draws of what is uncertain, in how many does some plan leave no misfit, and in how many would doing nothing? */

import type { Option } from '../../alterations/row.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { Made } from '../../garment/garment-input.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import { isGirth } from '../../ids/points.ts'
import { type Belief, updated } from '../../wearer/diary.ts'
import type { Gap } from '../../wearer/gaps.ts'
import type { Target } from '../../wearer/want.ts'
import type { Wearer } from '../../wearer/wearer.ts'
import type { Means } from '../means.ts'
import { ROUNDING } from '../rounding.ts'
import type { Figures } from '../solve/dual-bound.ts'
import { type PartOf, partsOf } from '../solve/parts.ts'
import type { Needs } from '../solve/useful-options.ts'
import { withinLevel } from '../solve/within-means.ts'
import { DRAWS } from './draws.ts'
import { Feasibility, FeasibilityCache } from './feasibility.ts'
import { bandDraws, elasticDraws, figureDraws, secondReadings, sellersDraws } from './point-draws.ts'
import { scenariosOf } from './scenarios.ts'
import { type Answerable, untoldQuestions } from './untold-questions.ts'

export interface Outlook {
  asItIs: number
  own: number
  tailor: number | null
  /** The share of draws that work out, with whoever is at hand. */
  likely: number
  /** By draw: does it? */
  works: boolean[]
  /** What is uncertain, and what an answer about it would say in each draw. */
  uncertain(): Answerable[]
}

export interface Uncertain {
  garment: Garment
  target: Target
  wearer: Wearer | undefined
  gaps: readonly Gap[]
  /** As the make is assumed. */
  options: readonly Option[]
  means: Means
  limits: Partial<Record<AlterationId, number>>
  markMm: number
}

export function outlookOf({ garment, target, wearer, gaps, options, means, limits, markMm }: Uncertain): Outlook {
  const drawn = gaps.filter((gap) => gap.band !== null)
  const points = drawn.map((gap) => gap.point)
  const scenarios = scenariosOf(garment, limits, drawn.map(needsOf), options)
  const parts = partsOf(points, scenarios.widest)
  const figures = parts.map(({ places }) => ({
    at: new Float64Array(places.length),
    least: new Float64Array(places.length),
    most: new Float64Array(places.length)
  }))
  const asItIs = new PlanSearch(parts, [[]], markMm)
  const own = new PlanSearch(
    parts,
    scenarios.all.map(({ options }) => withinLevel(options, means.level)),
    markMm
  )
  const tailors = means.tailor
    ? new PlanSearch(
        parts,
        scenarios.all.map(({ options }) => options),
        markMm
      )
    : undefined
  const likely = drawn.map(likelyFigure)
  const errors = drawn.map(({ point, from, readings }) => (from === 'seller' ? sellersDraws(point, readings) : figureDraws(point)))
  const bands = drawn.map(({ point }) => bandDraws(point))
  const goes = elasticDraws()
  const count = { asItIs: 0, own: 0, tailor: 0 }
  const works: boolean[] = []
  for (let i = 0; i < DRAWS; i++) {
    const s = i % scenarios.all.length
    for (const [part, { places }] of parts.entries()) {
      const mineHere = figures[part]
      for (const [place, p] of places.entries()) {
        const gap = drawn[p]
        if (gap?.band == null || mineHere === undefined) continue
        const figure = likely[p] ?? { mm: gap.garmentMm, sdMm: gap.sdMm }
        mineHere.at[place] = figure.mm + figure.sdMm * (errors[p]?.[i] ?? 0)
        const shift = gap.bandSdMm * (bands[p]?.[i] ?? 0)
        const most = gap.band.most - gap.edgeMarginMm + shift
        const least = gap.band.least + gap.edgeMarginMm + shift
        mineHere.most[place] = most
        mineHere.least[place] = gap.leastSdMm === undefined ? least : Math.min(most, least - gap.leastSdMm * (goes[i] ?? 0))
      }
    }
    const already = asItIs.fits(0, figures)
    const byOwn = already || own.fits(s, figures)
    const byTailor = tailors !== undefined && (byOwn || tailors.fits(s, figures))
    if (already) count.asItIs++
    if (byOwn) count.own++
    if (byTailor) count.tailor++
    works.push(byOwn || byTailor)
  }
  return {
    asItIs: count.asItIs / DRAWS,
    own: count.own / DRAWS,
    tailor: tailors === undefined ? null : count.tailor / DRAWS,
    likely: (tailors === undefined ? count.own : count.tailor) / DRAWS,
    works,
    uncertain: () => [
      ...drawn.flatMap((gap, p) => {
        const z = errors[p]
        if (z === undefined || gap.from === 'own' || (gap.from === 'seller' && (gap.readings ?? 1) > 1)) return []
        return [
          gap.from === 'seller'
            ? { what: { point: gap.point, again: true as const }, z: secondReadings(gap.point) }
            : { what: { point: gap.point }, z }
        ]
      }),
      ...untoldQuestions({ garment, target, wearer, options, means, limits, markMm }),
      ...drawn.flatMap(({ want }, p) => {
        const z = bands[p]
        return z === undefined || want?.measure === undefined || want.basedOn.length === 0 ? [] : [{ what: { body: want.measure }, z }]
      }),
      // how far elastic goes is what leaves such a band unsure
      ...(drawn.some(({ leastSdMm }) => leastSdMm !== undefined) && garment.assumed.includes('waistStretchedMm')
        ? [{ what: { about: 'waistStretchedMm' as const }, z: goes }]
        : []),
      ...scenarios.uncertain
        .filter(({ about }) => canBeSeen(garment, about))
        .map(({ about, z }) => ({
          what: { about },
          z: Float64Array.from({ length: DRAWS }, (_, i) => z[i % scenarios.all.length] ?? 0)
        }))
    ]
  }
}

/** A seller cannot look inside a seam that the lining covers. */
const INSIDE: ReadonlySet<keyof Made> = new Set<keyof Made>(['outletMm', 'seamAllowanceMm', 'hemDepthMm'])
const canBeSeen = ({ made }: Garment, about: keyof Made): boolean => !(made.lined && INSIDE.has(about))

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

/**
 * What a seller's figure most likely is, seen beside the others of the same garment and beside what people look at: the told figure, what the
 * tables expect and what is wanted, weighed by their precision (the normal–normal update of any textbook on Bayesian statistics).
 */
function likelyFigure({ point, from, garmentMm, sdMm, expected, band }: Gap): Belief {
  if (from !== 'seller') return { mm: garmentMm, sdMm }
  const evidence: Belief[] = expected === undefined ? [] : [expected]
  if (band !== null) evidence.push({ mm: band.ideal, sdMm: LOOKED_AT_MM[isGirth(point) ? 'girth' : 'length'] })
  return updated({ mm: garmentMm, sdMm }, evidence)
}

/** Garments that are looked at lie about one's own size: so far around what is wanted, mm (sd; from memory). */
const LOOKED_AT_MM = { girth: 75, length: 50 }

/** As far out as the draws go: the outermost of 256 lies at 2.9 sd, with heavy tails at 4.4. */
const FARTHEST_SD = 4.5

function needsOf({ point, garmentMm, sdMm, band, edgeMarginMm, bandSdMm, leastSdMm = 0 }: Gap): Needs {
  const off = FARTHEST_SD * (sdMm + bandSdMm + leastSdMm)
  return {
    point,
    lowMm: garmentMm - off,
    highMm: garmentMm + off,
    least: (band?.least ?? 0) + edgeMarginMm,
    most: (band?.most ?? 0) - edgeMarginMm
  }
}

/** How sure: over the draws of what is uncertain, in how many does some plan leave no misfit, and in how many would doing nothing? */
import type { Option } from '../../alterations/row.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { Made } from '../../garment/garment-input.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import type { PointId } from '../../ids/points.ts'
import type { BodyMeasureId } from '../../wearer/body.ts'
import type { Gap } from '../../wearer/gaps.ts'
import type { Target } from '../../wearer/want.ts'
import type { Wearer } from '../../wearer/wearer.ts'
import { HARDEST, type Means } from '../means.ts'
import { partsOf } from '../solve/parts.ts'
import { withinLevel } from '../solve/within-means.ts'
import { type PointDoubt, pointDoubts, type Searched } from './doubts.ts'
import { type DrawnPoint, drawnPoints, figuresFor, needsOf, writeDraw } from './drawn-points.ts'
import { DRAWS } from './draws.ts'
import { PlanSearch } from './plan-search.ts'
import { bandDraws, elasticDraws } from './point-draws.ts'
import { SCENARIOS, type Scenarios, scenariosOf } from './scenarios.ts'
import { type Answerable, untoldQuestions } from './untold-questions.ts'

/** Who does the work: nobody, the person, or a tailor. */
export type Hands = 'asItIs' | 'own' | 'tailor'

export interface Outlook {
  asItIs: number
  own: number
  tailor: number | null
  /** The share of draws that work out, with whoever is at hand. */
  likely: number
  /** By draw: does it? */
  works: boolean[]
  /** The chances where what these conditions speak of is as they ask. */
  ifTheyHold(conditions: readonly { point?: PointId; body?: BodyMeasureId }[]): { own: number; tailor: number | null }
  /** That a point's true figure, or the body measure under it, lies there. */
  chanceThat(point: PointId, interval: Between): number | null
  /** How often a point lies outside its edges as it is. */
  outside(point: PointId): number
  chanceOfBody(point: PointId, bodyMm: number, interval: Between): number | null
  /** Where it does not work out by these hands: which points stand in the way, most first. */
  doubts(hands: Hands): PointDoubt[]
  /** What is uncertain, and what an answer about it would say in each draw. */
  uncertain(): Answerable[]
}

/** null: open. */
interface Between {
  least: number | null
  most: number | null
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

export function outlookOf(asked: Uncertain): Outlook {
  const { garment, gaps, options, means, limits } = asked
  const points = drawnPoints(gaps, garment)
  const scenarios = scenariosOf(garment, limits, points.map(needsOf), options, means)
  const { asItIs, own, tailor, works, searched } = overDraws(points, scenarios, asked)
  const nameOf = (some: readonly DrawnPoint[]): string => some.map(({ gap }) => gap.point).join()
  const held = new Map<string, { own: number; tailor: number | null }>([[nameOf(points), { own, tailor }]])
  return {
    asItIs,
    own,
    tailor,
    likely: tailor ?? own,
    works,
    // what could help some of the points is among what could help them all
    ifTheyHold: (conditions) => {
      const left = points.filter(holding(conditions))
      const key = nameOf(left)
      const known = held.get(key) ?? overDraws(left, scenarios, asked)
      held.set(key, known)
      return known
    },
    chanceThat: (point, interval) => {
      const drawn = points.find(({ gap }) => gap.point === point)
      return drawn === undefined ? null : shareIn(drawn.truth, interval)
    },
    outside: (point) => shareOutside(points.find(({ gap }) => gap.point === point)),
    chanceOfBody: (point, bodyMm, interval) => {
      const drawn = points.find(({ gap }) => gap.point === point)
      const sdMm = drawn?.gap.want?.sdMm
      return sdMm === undefined
        ? null
        : shareIn(
            bandDraws(point).map((z) => bodyMm + sdMm * z),
            interval
          )
    },
    doubts: (hands) => {
      const by = searched[hands]
      return by === undefined ? [] : pointDoubts(points, by)
    },
    uncertain: () => [
      ...againOrFirst(points),
      ...untoldQuestions(asked),
      ...ownMeasures(points),
      ...elasticOf(garment, points),
      ...makeOf(garment, scenarios)
    ]
  }
}

const shareIn = (figures: Float64Array, { least, most }: Between): number =>
  figures.reduce((n, mm) => (mm >= (least ?? mm) && mm <= (most ?? mm) ? n + 1 : n), 0) / figures.length

function shareOutside(drawn: DrawnPoint | undefined): number {
  if (drawn === undefined) return 0
  let out = 0
  for (let i = 0; i < DRAWS; i++) {
    const mm = drawn.truth[i] ?? 0
    if (mm < (drawn.least[i] ?? mm) || mm > (drawn.most[i] ?? mm)) out++
  }
  return out / DRAWS
}

/** A point that a condition speaks of, or whose body measure it speaks of, drops out: it suits. */
const holding =
  (conditions: readonly { point?: PointId; body?: BodyMeasureId }[]) =>
  ({ gap }: DrawnPoint): boolean =>
    !conditions.some(({ point, body }) => point === gap.point || (body !== undefined && body === gap.want?.measure))

/**
 * In one draw of eight the tables do not speak of this person or this garment, and it is even whether it works out (from memory): so no chance is
 * ever 0 or 1. Every make loses as many of its draws, half of them work.
 */
function beyondTables(draw: number): boolean | undefined {
  const place = Math.floor(draw / SCENARIOS) + (draw % SCENARIOS)
  return place % BEYOND === 0 ? (place / BEYOND) % 2 === 0 : undefined
}
const BEYOND = 8

/** Shares of the draws in which doing nothing, the wearer's own hands, or a tailor's leave no misfit; by draw, whether whoever is at hand can. */
function overDraws(points: readonly DrawnPoint[], scenarios: Scenarios, { means, markMm }: Uncertain) {
  const parts = partsOf(
    points.map(({ gap }) => gap.point),
    scenarios.widest
  )
  const searchWithin = (level: number) =>
    new PlanSearch(
      parts,
      scenarios.all.map((scenario) => withinLevel(scenario.options, level)),
      markMm
    )
  const asItIs = new PlanSearch(parts, [[]], markMm)
  const own = searchWithin(means.level)
  const tailors = means.tailor ? searchWithin(HARDEST) : undefined
  const count = { asItIs: 0, own: 0, tailor: 0 }
  const fails: Record<Hands, number[]> = { asItIs: [], own: [], tailor: [] }
  const works: boolean[] = []
  const figures = figuresFor(parts)
  for (let i = 0; i < DRAWS; i++) {
    const evenOdds = beyondTables(i)
    if (evenOdds === undefined) writeDraw(points, parts, i, figures)
    const scenario = i % scenarios.all.length
    const already = evenOdds ?? asItIs.fits(0, figures)
    const byOwn = already || (evenOdds ?? own.fits(scenario, figures))
    const byTailor = tailors !== undefined && (byOwn || (evenOdds ?? tailors.fits(scenario, figures)))
    if (already) count.asItIs++
    if (byOwn) count.own++
    if (byTailor) count.tailor++
    works.push(byOwn || byTailor)
    if (evenOdds !== undefined) continue
    if (!already) fails.asItIs.push(i)
    if (!byOwn) fails.own.push(i)
    if (!byTailor) fails.tailor.push(i)
  }
  const makes = scenarios.all.length
  return {
    asItIs: count.asItIs / DRAWS,
    own: count.own / DRAWS,
    tailor: tailors === undefined ? null : count.tailor / DRAWS,
    works,
    searched: {
      asItIs: { search: asItIs, parts, makes: 1, fails: fails.asItIs },
      own: { search: own, parts, makes, fails: fails.own },
      tailor: tailors === undefined ? undefined : { search: tailors, parts, makes, fails: fails.tailor }
    } satisfies Record<Hands, Searched | undefined>
  }
}

/** A seller's figure that was read once is worth a second look; one that was only worked out, a first. */
const againOrFirst = (points: readonly DrawnPoint[]): Answerable[] =>
  points.flatMap(({ gap: { point, from, readings = 1 }, answer }): Answerable[] => {
    if (from === 'own' || (from === 'seller' && readings > 1)) return []
    return [{ what: from === 'seller' ? { point, again: true } : { point }, z: answer() }]
  })

/** A body measure that was worked out from others. */
const ownMeasures = (points: readonly DrawnPoint[]): Answerable[] =>
  points.flatMap(({ gap: { point, want } }): Answerable[] =>
    want?.measure === undefined || want.basedOn.length === 0 ? [] : [{ what: { body: want.measure }, z: bandDraws(point) }]
  )

/** How far elastic goes, or woven cloth stretches, where that is what leaves a band unsure; a knit's stretch is asked by answers (cloth-answers.ts). */
function elasticOf({ assumed, made, cloth }: Garment, points: readonly DrawnPoint[]): Answerable[] {
  if (!points.some(({ gap }) => gap.leastSdMm !== undefined)) return []
  if (made.elasticWaist) return assumed.includes('waistStretchedMm') ? [{ what: { about: 'waistStretchedMm' }, z: elasticDraws() }] : []
  return cloth.structure === 'woven' && cloth.assumed.includes('stretch') ? [{ what: { about: 'stretch' }, z: elasticDraws() }] : []
}

/** What was not told of the make, as far as a seller can see it. */
const makeOf = (garment: Garment, { uncertain, all }: Scenarios): Answerable[] =>
  uncertain.filter(({ about }) => canBeSeen(garment, about)).map(({ about, z }) => ({ what: { about }, z: againAndAgain(z, all.length) }))

/** What differs by make alone, over all draws. */
function againAndAgain(z: ArrayLike<number>, makes: number): Float64Array {
  const all = new Float64Array(DRAWS)
  for (let i = 0; i < DRAWS; i++) all[i] = z[i % makes] ?? 0
  return all
}

/** A seller cannot look inside a seam that the lining covers. */
const INSIDE: ReadonlySet<keyof Made> = new Set<keyof Made>(['outletMm', 'seamAllowanceMm', 'hemDepthMm'])
const canBeSeen = ({ made }: Garment, about: keyof Made): boolean => !(made.lined && INSIDE.has(about))

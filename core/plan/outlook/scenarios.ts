/**
 * What was not told of the make, made uncertain: a handful of fixed scenarios, each a whole construction, with the options it leaves.
 * Spreads and shares are from memory. A scenario differs from the assumed make only in what was not told.
 */
import { alterationsFor, OptionsByMake } from '../../alterations/alterations-for.ts'
import type { Option } from '../../alterations/row.ts'
import type { Garment } from '../../garment/garment-as-worn.ts'
import type { Made } from '../../garment/garment-input.ts'
import type { AlterationId } from '../../ids/alterations.ts'
import type { GarmentKind } from '../../ids/kinds.ts'
import type { Means } from '../means.ts'
import { type Needs, optionsThatCouldHelp } from '../solve/useful-options.ts'
import { acceptedBy } from '../solve/within-means.ts'
import { normalDraws, normalQuantile } from './draws.ts'
import { FIRST_OF_MAKE } from './point-draws.ts'

/** So many makes; the draws are dealt among them. */
export const SCENARIOS = 16

/** A length that was not told: its sd as a share of what is assumed, and at least so much. */
const SPREAD: Partial<Record<keyof Made, { share: number; leastMm: number; kinds?: GarmentKind[] }>> = {
  outletMm: { share: 0.4, leastMm: 0 },
  seamAllowanceMm: { share: 0.25, leastMm: 2 },
  hemDepthMm: { share: 0.3, leastMm: 3 },
  backPocketGapMm: { share: 0.2, leastMm: 10, kinds: ['trousers', 'jeans', 'shorts'] },
  overlapMm: { share: 0.25, leastMm: 3 }
}
/** How often it is otherwise than assumed. */
const OTHERWISE: { part: 'backSeam' | 'workingCuffButtons' | 'darts' | 'lined'; kinds: GarmentKind[]; share: number }[] = [
  { part: 'backSeam', kinds: ['trousers', 'jeans', 'shorts'], share: 0.03 },
  { part: 'backSeam', kinds: ['skirt'], share: 0.35 },
  { part: 'backSeam', kinds: ['jacket', 'coat', 'dress'], share: 0.12 },
  { part: 'workingCuffButtons', kinds: ['jacket', 'coat'], share: 0.12 },
  { part: 'darts', kinds: ['skirt'], share: 0.25 },
  { part: 'lined', kinds: ['jacket', 'coat'], share: 0.1 }
]

export interface Scenario {
  options: Option[]
}
export interface Scenarios {
  /** Every option that some make allows: what may tie points together. */
  widest: Option[]
  all: Scenario[]
  /** What is uncertain of the make, and how it lies in each scenario (in sd, or −1 and 1). */
  uncertain: { about: keyof Made; z: readonly number[] }[]
}

/** As far out as a length of the make is thought of, sd. */
const MOST_SD = 2

/** `needs` says where each point may be over the draws: options that could help none of them are not worked out. */
export function scenariosOf(
  garment: Garment,
  limits: Partial<Record<AlterationId, number>>,
  needs: readonly Needs[],
  asAssumed: readonly Option[],
  means: Means
): Scenarios {
  const uncertain: { about: keyof Made; z: readonly number[]; value(z: number): Partial<Made> }[] = []
  const parts = Object.keys(SPREAD) as (keyof Made)[]
  for (const [place, part] of parts.entries()) {
    const spread = SPREAD[part]
    const assumed = garment.made[part]
    if (spread === undefined || spread.kinds?.includes(garment.kind) === false) continue
    if (typeof assumed !== 'number' || assumed === 0 || !garment.assumed.includes(part)) continue
    const sd = Math.max(spread.leastMm, spread.share * assumed)
    uncertain.push({ about: part, z: strata(FIRST_OF_MAKE + place), value: (z) => ({ [part]: Math.max(0, assumed + sd * z) }) })
  }
  for (const [place, { part, kinds, share }] of OTHERWISE.entries()) {
    if (!kinds.includes(garment.kind) || !garment.assumed.includes(part)) continue
    const assumed = garment.made[part]
    const ranks = ranksOf(strata(FIRST_OF_MAKE + parts.length + (place % 3)))
    const z = ranks.map((rank) => ((rank + 0.5) / SCENARIOS < share ? 1 : -1))
    uncertain.push({ about: part, z, value: (sign) => ({ [part]: sign > 0 ? !assumed : assumed }) })
  }
  const madeWith = (values: (one: (typeof uncertain)[number]) => Partial<Made>): Garment => ({
    ...garment,
    made: Object.assign({}, garment.made, ...uncertain.map(values))
  })
  // every option that some make allows, each at about its most: as assumed, and otherwise in everything
  const widest = acceptedBy(means, [
    ...asAssumed,
    ...alterationsFor(
      madeWith(({ value }) => value(MOST_SD)),
      limits
    ).options
  ])
  const only = new Set(optionsThatCouldHelp(needs, widest).map(({ key }) => key))
  const byMake = new OptionsByMake(garment, limits, only)
  const all = Array.from(
    { length: uncertain.length === 0 || only.size === 0 ? 1 : SCENARIOS },
    (_, s): Scenario => ({ options: only.size === 0 ? [] : byMake.with(madeWith(({ z, value }) => value(z[s] ?? 0)).made) })
  )
  return {
    widest: widest.filter(({ key }) => only.has(key)),
    all,
    uncertain: uncertain.map(({ about, z }) => ({ about, z: all.length === 1 ? [] : z }))
  }
}

/** The first SCENARIOS draws of a dimension, brought to evenly spread normal places by their rank; made once. */
function strata(dimension: number): readonly number[] {
  const known = strataKnown.get(dimension)
  if (known !== undefined) return known
  const draws = normalDraws()[dimension] ?? new Float64Array(SCENARIOS)
  const made = ranksOf([...draws.slice(0, SCENARIOS)]).map((rank) => MIDDLES[rank] ?? 0)
  strataKnown.set(dimension, made)
  return made
}
const strataKnown = new Map<number, readonly number[]>()

const ranksOf = (values: readonly number[]): number[] => {
  const order = [...values.keys()].sort((one, other) => (values[one] ?? 0) - (values[other] ?? 0) || one - other)
  const ranks = values.map(() => 0)
  order.forEach((place, rank) => {
    ranks[place] = rank
  })
  return ranks
}

/** Middles of equal shares of the standard normal. */
const MIDDLES = Array.from({ length: SCENARIOS }, (_, rank) => normalQuantile((rank + 0.5) / SCENARIOS))

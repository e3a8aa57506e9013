/**
 * Which kinds a garment may be whose kind no word tells: how well the points that were told, and their sizes, suit the rows of each kind, and what
 * was seen of its cloth and make. The order in which kinds are offered hangs on it, and a share of what decides the kind (kind-figures.ts).
 */

import { COMMON_SHARE, SD_MM } from '../../garment/garment-as-worn.ts'
import type { Structure } from '../../garment/garment-input.ts'
import { evidenceOf, type Observed } from '../../garment/model/garment-belief.ts'
import { shareOfWomens } from '../../garment/model/whose.ts'
import { GARMENT_KINDS, type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { isGirth, POINTS_OF, type PointId } from '../../ids/points.ts'
import type { Reading } from '../reading.ts'
import { byKind } from './by-kind.ts'
import { pointOn } from './points-by-kind.ts'

export interface KindShare {
  kind: GarmentKind
  /** Of all kinds, 0..1. */
  share: number
}
export type Told = Pick<Reading, 'garment' | 'measures' | 'cloth' | 'made' | 'whose'>

/** How often each is for sale second hand (from memory). */
const USUAL: Partial<Record<GarmentKind, number>> = {
  trousers: 0.11,
  jeans: 0.1,
  shorts: 0.06,
  skirt: 0.09,
  dress: 0.15,
  jumpsuit: 0.03,
  shirt: 0.13,
  'knit-top': 0.11,
  jumper: 0.09,
  jacket: 0.08,
  coat: 0.04,
  waistcoat: 0.01
}
/** What a kind is seldom made of: so much less likely then (from memory). */
const SELDOM = 0.1
const KNITTED: readonly GarmentKind[] = ['knit-top', 'jumper']
const IN_DENIM: readonly GarmentKind[] = ['jeans', 'jacket', 'skirt', 'shorts', 'jumpsuit']

/** The likeliest first; empty where nothing was measured, or what was measured is of no kind together. */
export function likelyKinds(told: Told): KindShare[] {
  const scored = [...evidenceOfKinds(told)].map(([kind, log]) => ({ kind, log }))
  const most = Math.max(...scored.map(({ log }) => log))
  const all = scored.reduce((sum, { log }) => sum + Math.exp(log - most), 0)
  return scored.map(({ kind, log }) => ({ kind, share: Math.exp(log - most) / all })).sort((a, b) => b.share - a.share)
}

/** How likely what was told is of each kind that has all its points (natural logarithm, none normed). */
export function evidenceOfKinds(told: Told): Map<GarmentKind, number> {
  const logs = new Map<GarmentKind, number>()
  const measures = ofOne(told.measures)
  if (measures.length === 0) return logs
  const observed = measures.map(({ point, mm }): Observed => ({ point, mm, ...AS_TOLD[isGirth(point) ? 'girth' : 'length'] }))
  const pointsOn = measures.map(({ point }) => POINT_ON(point))
  for (const [place, kind] of GARMENT_KINDS.entries()) {
    const usual = USUAL[kind]
    if (usual === undefined || !isOn(place, pointsOn)) continue
    // the measures as they are called on this kind
    for (const [index, one] of observed.entries()) one.point = pointsOn[index]?.[place] as PointId
    const log = evidenceOf(
      { kind, elasticWaist: told.made.elasticWaist ?? false, womens: shareOfWomens(kind, told.whose ?? undefined, undefined) },
      observed
    )
    if (log !== undefined) logs.set(kind, log + Math.log(usual * seen(kind, told)))
  }
  return logs
}
/** What a seller's figure is good for. */
const AS_TOLD = {
  girth: { sdMm: SD_MM.seller.girth, commonShare: COMMON_SHARE },
  length: { sdMm: SD_MM.seller.length, commonShare: COMMON_SHARE }
}
/** What a point is called on each kind; null: it has no such point. */
const POINT_ON = byKind<PointId, PointId | null>((named, kind) => {
  const point = pointOn(kind, named)
  return POINTS_OF[kind].includes(point) ? point : null
})
/** Has a kind all of these points? */
function isOn(place: number, points: readonly (readonly (PointId | null)[])[]): boolean {
  for (const one of points) if (one[place] === null) return false
  return true
}

/** All kinds as they are offered: the likeliest first where no word tells the kind, and else in their usual order. */
export function kindsOffered(told: Told): readonly GarmentKind[] {
  if (told.garment.kind !== null) return GARMENT_KINDS
  const likely = likelyKinds(told).map(({ kind }) => kind)
  return [...likely, ...GARMENT_KINDS.filter((kind) => !likely.includes(kind))]
}

/** Of several garments, or of several sizes, the first; each point once. */
function ofOne(measures: Told['measures']): Told['measures'] {
  const [first] = measures
  const its = measures.filter(({ of, size }) => of === first?.of && size === first?.size)
  return its.filter(({ point }, index) => its.findIndex((one) => one.point === point) === index)
}

/** How well its cloth and its make suit the kind, 0..1. */
function seen(kind: GarmentKind, { cloth, made }: Told): number {
  const upper = SHAPE[kind] === 'upper' || SHAPE[kind] === 'whole'
  return (
    (suitsStructure(kind, cloth.structure) ? 1 : SELDOM) *
    (cloth.traits.includes('denim') && !IN_DENIM.includes(kind) ? SELDOM : 1) *
    (made.shortSleeves && !upper ? SELDOM : 1) *
    (made.skirtShape && kind !== 'skirt' && kind !== 'dress' ? SELDOM : 1)
  )
}
function suitsStructure(kind: GarmentKind, structure: Structure | null): boolean {
  if (structure === null) return true
  if (structure === 'knit') return KNITTED.includes(kind) || SHAPE[kind] !== 'upper'
  if (structure === 'leather') return !KNITTED.includes(kind) && kind !== 'shirt'
  return !KNITTED.includes(kind)
}

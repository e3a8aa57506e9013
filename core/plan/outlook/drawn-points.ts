/** Each point with a band, as it is drawn: what the garment truly measures there and where its band lies, in every draw. */
import { COMMON_SHARE, type Garment, SD_MM } from '../../garment/garment-as-worn.ts'
import type { GarmentBelief } from '../../garment/model/garment-belief.ts'
import { choleskyOf } from '../../garment/model/joint-normal.ts'
import { type GarmentKind, OVER_A_SHIRT } from '../../ids/kinds.ts'
import { isGirth, type PointId } from '../../ids/points.ts'
import { holdsUp } from '../../wearer/ease.ts'
import type { Band, Gap } from '../../wearer/gaps.ts'
import type { Figures } from '../solve/dual-bound.ts'
import type { PartOf } from '../solve/parts.ts'
import type { Needs } from '../solve/useful-options.ts'
import { DRAWS } from './draws.ts'
import {
  againDraws,
  bandDraws,
  elasticDraws,
  errorDraws,
  figureDraws,
  habitDraws,
  slipDraws,
  tasteDraws,
  widthDraws
} from './point-draws.ts'
import { mayBeSlip, slipOf } from './slips.ts'

export interface DrawnPoint {
  gap: Gap & { band: Band }
  /** What the garment truly measures there, mm, by draw. */
  truth: Float64Array
  /** What the seller would say if asked (again), mm, by draw: off by their habit and by the tape that is laid then. */
  answer: () => Float64Array
  /** The edges it should lie between, on today's tape, mm, by draw. */
  least: Float64Array
  most: Float64Array
}

/**
 * Told and untold points are drawn together, as the garment's belief has them: a waist that is truly larger than told makes the untold hip larger
 * too. A told figure may be a slip (slips.ts): in so many of the draws it tells next to nothing.
 */
export function drawnPoints(gaps: readonly Gap[], { kind, belief }: Pick<Garment, 'kind' | 'belief'>): DrawnPoint[] {
  const wanted = gaps.flatMap((gap) => (gap.band === null ? [] : [{ ...gap, band: gap.band }]))
  const told = wanted.filter(({ from }) => from !== 'inferred')
  const drawn = drawTogether([...told, ...wanted.filter(({ from }) => from === 'inferred')], kind, belief)
  // in the order of the points
  return wanted.flatMap((gap) => drawn.get(gap.point) ?? [])
}

type Wanted = Gap & { band: Band }

function drawTogether(wanted: readonly Wanted[], kind: GarmentKind, belief: GarmentBelief | undefined): Map<PointId, DrawnPoint> {
  const joint = belief === undefined ? undefined : lookedAt(belief, wanted)
  const inBelief = wanted.filter(({ point }) => belief?.placeOf(point) !== undefined)
  const places = inBelief.flatMap(({ point }) => belief?.placeOf(point) ?? [])
  // last the habit
  const lower = joint === undefined ? new Float64Array(0) : choleskyOf(joint, [...places, joint.size - 1])
  const n = places.length + 1
  const columns = [...inBelief.map(({ point, from }) => (from === 'seller' ? errorDraws(point) : figureDraws(point))), habitDraws()]
  const along = (row: number, from = 0): Float64Array => {
    const sum = new Float64Array(DRAWS).fill(from)
    for (let k = 0; k <= row; k++) {
      const weight = lower[row * n + k] ?? 0
      const column = columns[k]
      if (weight !== 0 && column !== undefined) for (let i = 0; i < DRAWS; i++) sum[i] = (sum[i] as number) + weight * (column[i] as number)
    }
    return sum
  }
  const habit = joint === undefined ? new Float64Array(DRAWS) : along(n - 1)
  const slips = slipsOf(inBelief, belief)
  return new Map(
    wanted.map((gap): [PointId, DrawnPoint] => {
      const row = inBelief.indexOf(gap)
      const place = belief?.placeOf(gap.point)
      const truth =
        row < 0 || joint === undefined || place === undefined
          ? figureDraws(gap.point).map((z) => gap.garmentMm + gap.sdMm * z)
          : along(row, (joint.mean[place] ?? 0) + sideOff(gap, belief))
      const slip = slips.get(gap.point)
      if (slip !== undefined) slip.into(truth)
      return [
        gap.point,
        {
          gap,
          truth,
          answer: () => answersOf(gap.point, truth, habit),
          ...edgesOf(kind, gap)
        }
      ]
    })
  )
}

/** Where left and right differ, the worse side is judged: so far from the figure that is believed. */
const sideOff = ({ point, garmentMm, from }: Gap, belief: GarmentBelief | undefined): number =>
  from === 'inferred' ? 0 : garmentMm - (belief?.told.get(point)?.mm ?? garmentMm)

/** Who likes one thing close likes all of them so: of the variance of taste so much is common (from memory). */
const COMMON_TASTE = 0.5
/**
 * A table's edges are where a careful tailor begins to alter; people let more pass, and how much is hardly known of anybody: half or twice as much is
 * ordinary, at all points alike (the sd of the logarithm). The middle person's band is so many times as wide as the table's below the ideal and above it
 * (from memory; above the ideal of a girth: an ease chart has 60 to 100 at the bust of a shirt as usual and calls it wide from 180 only,
 * monsterkonstruktion.se/en/ease; half-way lies more than twice as far from 80 as 100). What the garment hangs from, a waistband or the shoulders,
 * slips or pinches, for one person much as for another; what is tailored is looked at more closely; and much too small is too small for everybody.
 */
const WIDER = {
  under: { girth: 2.5, length: 1.6 },
  over: { girth: 2.5, length: 2.2, tailored: 1.4 },
  hangs: { band: 1.6, soft: 1.6, tailored: 0.9 },
  sd: { free: 0.8, hangs: 0.4 }
}
const MOST_UNDER_MM = 40
const overAt = (point: PointId, kind: GarmentKind): number =>
  isGirth(point) ? (OVER_A_SHIRT.includes(kind) ? WIDER.over.tailored : WIDER.over.girth) : WIDER.over.length

/** How much wider what the garment hangs from is let pass: a band and tailored shoulders hardly, soft shoulders more; undefined elsewhere. */
const hangsAt = (point: PointId, kind: GarmentKind): number | undefined =>
  point === 'shoulderWidth'
    ? WIDER.hangs[OVER_A_SHIRT.includes(kind) ? 'tailored' : 'soft']
    : holdsUp(point, kind)
      ? WIDER.hangs.band
      : undefined

/** Where the person's own edges lie: the band moved by taste and by what is unsure of body and cloth, and wider or narrower about its ideal. */
function edgesOf(
  kind: GarmentKind,
  { point, band, edgeMarginMm, bandSdMm, leastSdMm = 0, want }: Wanted
): Pick<DrawnPoint, 'least' | 'most'> {
  const taste = want?.tasteSdMm ?? 0
  const common = Math.sqrt(COMMON_TASTE) * taste
  const own = Math.sqrt(Math.max(0, bandSdMm ** 2 - common ** 2))
  const [off, liking, elastic] = [bandDraws(point), tasteDraws(), elasticDraws()]
  const [least, most] = [new Float64Array(DRAWS), new Float64Array(DRAWS)]
  const plain = { least: band.least + edgeMarginMm, most: band.most - edgeMarginMm }
  const under = taste === 0 || want?.bound !== undefined || want?.ideal === null ? undefined : Math.max(0, band.ideal - plain.least)
  const over = taste === 0 || want?.ideal === null || want?.freeAbove === true ? undefined : Math.max(0, plain.most - band.ideal)
  const hangs = hangsAt(point, kind)
  const farther = hangs ?? overAt(point, kind)
  const closer = hangs ?? WIDER.under[isGirth(point) ? 'girth' : 'length']
  const width = widthsOf(hangs === undefined ? WIDER.sd.free : WIDER.sd.hangs)
  for (let i = 0; i < DRAWS; i++) {
    const wider = width[i] ?? 1
    const shift = own * (off[i] ?? 0) + common * (liking[i] ?? 0)
    const upper = (over === undefined ? plain.most : band.ideal + farther * wider * over) + shift
    const lower = (under === undefined ? plain.least : Math.max(plain.least - MOST_UNDER_MM, band.ideal - closer * wider * under)) + shift
    most[i] = upper
    least[i] = leastSdMm === 0 ? lower : Math.min(upper, lower - leastSdMm * (elastic[i] ?? 0))
  }
  return { least, most }
}

/** How many times as wide a person's band is as the middle person's, by draw; the same for every point of one sd, and made once. */
const widths = new Map<number, Float64Array>()
function widthsOf(sd: number): Float64Array {
  const known = widths.get(sd) ?? widthDraws().map((z) => Math.exp(sd * z))
  widths.set(sd, known)
  return known
}

const SHARED = Math.sqrt(COMMON_SHARE)
const OWN = Math.sqrt(1 - COMMON_SHARE)
/** A seller's tape laid once, now. */
function answersOf(point: PointId, truth: Float64Array, habit: Float64Array): Float64Array {
  const sd = SD_MM.seller[isGirth(point) ? 'girth' : 'length']
  const again = againDraws()
  const answers = new Float64Array(DRAWS)
  for (let i = 0; i < DRAWS; i++) answers[i] = (truth[i] ?? 0) + sd * (SHARED * (habit[i] ?? 0) + OWN * (again[i] ?? 0))
  return answers
}

/** Where each told figure may be a slip: what is drawn instead, and in which draws. */
function slipsOf(wanted: readonly Wanted[], belief: GarmentBelief | undefined): Map<PointId, { into(truth: Float64Array): void }> {
  const found = new Map<PointId, { into(truth: Float64Array): void }>()
  const which = slipDraws()
  let from = 0
  for (const gap of wanted) {
    if (!mayBeSlip(gap) || belief === undefined) continue
    const { point, garmentMm, sdMm } = gap
    const slip = slipOf(point, garmentMm, sdMm, belief)
    if (slip === undefined) continue
    const [first, last] = [from, from + slip.chance]
    from = last
    const z = figureDraws(point)
    found.set(point, {
      into(truth) {
        for (let i = 0; i < DRAWS; i++) {
          const u = which[i] ?? 0
          if (u >= first && u < last) truth[i] = slip.mm + slip.sdMm * (z[i] ?? 0)
        }
      }
    })
  }
  return found
}

/** Garments that are looked at lie about one's own size: so far around what is wanted, mm (sd; from memory). */
const LOOKED_AT_MM = { girth: 75, length: 50 }

/** The belief, drawn towards what people look at by the told points. */
function lookedAt(belief: GarmentBelief, wanted: readonly Wanted[]) {
  const joint = belief.joint.copy()
  for (const { point, from, band } of wanted) {
    const place = belief.placeOf(point)
    if (from === 'seller' && place !== undefined) joint.observe([[place, 1]], band.ideal, LOOKED_AT_MM[isGirth(point) ? 'girth' : 'length'])
  }
  return joint
}

/** Room for the figures of each part: filled anew for every draw. */
export const figuresFor = (parts: readonly PartOf[]): Figures[] =>
  parts.map(({ places }) => ({
    at: new Float64Array(places.length),
    least: new Float64Array(places.length),
    most: new Float64Array(places.length)
  }))

/** The i-th draw of every point, written into the figures of its part. */
export function writeDraw(points: readonly DrawnPoint[], parts: readonly PartOf[], i: number, figures: readonly Figures[]): void {
  for (let part = 0; part < parts.length; part++) {
    const places = parts[part]?.places ?? []
    const mine = figures[part]
    for (let place = 0; place < places.length; place++) {
      const drawn = points[places[place] ?? -1]
      if (drawn === undefined || mine === undefined) continue
      mine.at[place] = drawn.truth[i] ?? drawn.gap.garmentMm
      mine.least[place] = drawn.least[i] ?? 0
      mine.most[place] = drawn.most[i] ?? 0
    }
  }
}

/** Where a point lies over all draws beside its edges: least and most so that what lies between never needs anything. */
export function needsOf({ gap, truth, least, most }: DrawnPoint): Needs {
  let [low, high] = [0, 0]
  for (let i = 0; i < DRAWS; i++) {
    low = Math.max(low, (least[i] ?? 0) - (truth[i] ?? 0))
    high = Math.max(high, (truth[i] ?? 0) - (most[i] ?? 0))
  }
  const { point, band } = gap
  return { point, lowMm: band.least - low, highMm: band.most + high, least: band.least, most: band.most }
}

/** Each point with a band, as it is drawn: its figure and its band in every draw. */
import { isGirth } from '../../ids/points.ts'
import { type Belief, updated } from '../../wearer/diary.ts'
import type { Band, Gap } from '../../wearer/gaps.ts'
import type { Figures } from '../solve/dual-bound.ts'
import type { PartOf } from '../solve/parts.ts'
import type { Needs } from '../solve/useful-options.ts'
import { bandDraws, elasticDraws, figureDraws, sellersDraws } from './point-draws.ts'

export interface DrawnPoint {
  gap: Gap & { band: Band }
  figure: Belief
  /** By draw, in sd: how far the figure is off, how far the band, and how much further elastic goes than thought. */
  off: Float64Array
  bandOff: Float64Array
  elasticGoes: Float64Array
}

export const drawnPoints = (gaps: readonly Gap[]): DrawnPoint[] =>
  gaps.flatMap((gap): DrawnPoint[] => {
    const { point, from, readings, band } = gap
    if (band === null) return []
    return [
      {
        gap: { ...gap, band },
        figure: likelyFigure(gap),
        off: from === 'seller' ? sellersDraws(point, readings) : figureDraws(point),
        bandOff: bandDraws(point),
        elasticGoes: elasticDraws()
      }
    ]
  })

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
      const { gap, figure, off, bandOff, elasticGoes } = drawn
      mine.at[place] = figure.mm + figure.sdMm * (off[i] ?? 0)
      const shift = gap.bandSdMm * (bandOff[i] ?? 0)
      const most = gap.band.most - gap.edgeMarginMm + shift
      const least = gap.band.least + gap.edgeMarginMm + shift
      mine.most[place] = most
      mine.least[place] = gap.leastSdMm === undefined ? least : Math.min(most, least - gap.leastSdMm * (elasticGoes[i] ?? 0))
    }
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

/** Where a point may be over all draws, and the edges it should lie between. */
export function needsOf({ point, garmentMm, sdMm, band, edgeMarginMm, bandSdMm, leastSdMm = 0 }: Gap): Needs {
  const off = FARTHEST_SD * (sdMm + bandSdMm + leastSdMm)
  return {
    point,
    lowMm: garmentMm - off,
    highMm: garmentMm + off,
    least: (band?.least ?? 0) + edgeMarginMm,
    most: (band?.most ?? 0) - edgeMarginMm
  }
}

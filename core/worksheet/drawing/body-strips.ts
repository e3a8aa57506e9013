/** Strips for the bodies of upper garments and dresses: the side seams from the underarm, the centre back of a jacket, a coat or a dress. */
import type { PointId } from '../../ids/points.ts'
import { type Anchor, offsetsThrough } from '../seam-line.ts'
import { sideLevels } from '../shapes.ts'
import { offsetAtPoint } from './seam-change.ts'
import { seamStrip } from './seam-strip.ts'
import { type Asked, figureOf, type Template } from './template.ts'
import { type JobLine, named, stripNotes } from './waist-strips.ts'

/** A boned bodice runs out below the waist over a hand's breadth (common practice). */
const BELOW_BODICE_MM = 80
/** Below the hip of a jumpsuit the line is back on the old one after this (common practice); of a dress or coat it runs on to the hem. */
const JUMPSUIT_RUN_MM = 200
/** What the levels are reckoned from where neither is told. */
const USUAL_NAPE_TO_WAIST_MM = 430
const USUAL_LENGTH_MM = 700

interface Heights {
  /** From the underarm down. */
  waist: number
  hip: number
  hem: number
  assumed: string[]
}

/** Where waist, hip and bottom edge lie below the underarm, and what of it was not told. */
function heightsOf(asked: Asked): Heights {
  const levels = sideLevels(asked.garment)
  const assumed = [
    ...figureOf(asked, 'napeToWaist', USUAL_NAPE_TO_WAIST_MM).assumed,
    ...figureOf(asked, 'bodyLength', USUAL_LENGTH_MM).assumed
  ]
  return { ...levels, assumed }
}

/** The side seams through chest, waist and what lies lowest. */
export function bodySides(asked: Asked, line: JobLine): Template | null {
  const { job, garment, t } = asked
  const heights = heightsOf(asked)
  const at = (point: PointId) => offsetAtPoint(job, garment, line, point)
  const toHip = garment.kind === 'dress' || garment.kind === 'jumpsuit' || garment.kind === 'coat'
  const hip = at('hip')
  const offsets = offsetsThrough([{ y: 0, offset: at('chest') }, { y: heights.waist, offset: at('waist') }, ...lowest(asked, heights, at)])
  if (offsets === null || offsets.to <= offsets.from) return null
  return seamStrip(asked, {
    ...named(asked, line, 'template.title.strip'),
    seams: [line.seam],
    offsets,
    head: t(offsets.from === 0 ? 'template.head.underarm' : 'template.at.waist'),
    headIsEdge: false,
    foot: t(toHip ? 'template.at.hip' : 'template.at.hem'),
    places: [{ y: heights.waist, text: t('template.at.waist') }],
    notes: [
      ...stripNotes(asked, line.seam, line.offsetMm, true),
      ...(toHip && isOn(asked) && hip !== 0 ? [t('template.goes-on', { mm: Math.abs(hip) })] : [])
    ],
    assumed: heights.assumed
  })
}
/** Below the waist: to the hem, or to the hip and on as far as it was moved there, or to where it runs out. */
function lowest({ job, garment }: Asked, { waist, hip, hem }: Heights, at: (point: PointId) => number): Anchor[] {
  if (job.id === 'bodice-boned-in') return [{ y: waist + BELOW_BODICE_MM, offset: 0 }]
  if (garment.kind === 'jumpsuit')
    return [
      { y: hip, offset: at('hip') },
      { y: hip + JUMPSUIT_RUN_MM, offset: 0 }
    ]
  return garment.kind === 'dress' || garment.kind === 'coat' ? [{ y: hip, offset: at('hip') }] : [{ y: hem, offset: at('hem') }]
}
/** Does what the hip takes go on to the hem? */
const isOn = ({ garment }: Asked): boolean => garment.kind === 'dress' || garment.kind === 'coat'

/** So far above the underarm the centre back leaves the old line (common practice). */
const ABOVE_UNDERARM_MM = 60

/** The centre back: most at the waist, and below it what comes with it by the row; a waistcoat is taken in at the chest too. */
export function middleBack(asked: Asked, line: JobLine): Template | null {
  const { job, garment, t } = asked
  const heights = heightsOf(asked)
  const at = (point: PointId) => offsetAtPoint(job, garment, line, point)
  const isWaistcoat = garment.kind === 'waistcoat'
  const lowest = isWaistcoat ? at('waist') : garment.kind === 'dress' ? at('hip') : at('hem')
  const atHip = garment.kind === 'coat' ? at('hip') : lowest
  const below = heights.hip < heights.hem - 1 && !isWaistcoat ? [{ y: heights.hip, offset: atHip }] : []
  const offsets = offsetsThrough([
    isWaistcoat ? { y: 0, offset: at('chest') } : { y: -ABOVE_UNDERARM_MM, offset: 0 },
    { y: heights.waist, offset: at('waist') },
    ...below,
    { y: Math.max(heights.hem, heights.waist + 40), offset: lowest }
  ])
  if (offsets === null || offsets.to <= offsets.from) return null
  return seamStrip(asked, {
    ...named(asked, line, 'template.title.strip'),
    seams: [line.seam],
    offsets,
    head: isWaistcoat ? t('template.head.underarm') : t('template.head.above-chest', { mm: ABOVE_UNDERARM_MM }),
    headIsEdge: false,
    foot: t('template.at.hem'),
    places: [{ y: heights.waist, text: t('template.at.waist') }],
    notes: stripNotes(asked, line.seam, line.offsetMm, true),
    assumed: heights.assumed
  })
}

/** Strips for the bodies of upper garments and dresses: the side seams from the underarm, the centre back of a jacket, a coat or a dress. */
import type { PointId } from '../../ids/points.ts'
import type { Measures } from '../outline/outline-drawing.ts'
import { type UpperFrame, upperFrame } from '../outline/upper-frame.ts'
import { offsetAtPoint, offsetsThrough } from './seam-offsets.ts'
import { seamStrip } from './seam-strip.ts'
import { type Asked, figureOf, type Template } from './template.ts'
import { type JobLine, named, stripNotes } from './waist-strips.ts'

/** How far the seam runs on above the underarm and below the hip until it is the old one again (common practice). */
const ABOVE_UNDERARM = 0.55
const BELOW_HIP_MM = 160

interface Heights {
  frame: UpperFrame
  /** From the underarm down. */
  waist: number
  hip: number
  hem: number
  assumed: string[]
}

/** Where waist, hip and bottom edge lie below the underarm. */
function heightsOf(asked: Asked): Heights {
  const { garment } = asked
  const points: Measures = Object.fromEntries([...garment.points].map(([point, { mm }]) => [point, mm]))
  const frame = upperFrame({ points, jobs: [], made: {} }, 'shirt')
  const length = figureOf(asked, 'bodyLength', 740)
  const isWhole = garment.kind === 'dress' || garment.kind === 'jumpsuit'
  const napeToWaist = garment.points.get('napeToWaist')?.mm
  const hem = Math.max(frame.hemY - frame.underarm.y, 120)
  const waist = isWhole || napeToWaist !== undefined ? (napeToWaist ?? 410) - frame.underarm.y : frame.waistY - frame.underarm.y
  const kept = Math.min(Math.max(waist, 60), 0.8 * hem)
  return { frame, waist: kept, hip: Math.min(kept + garment.made.hipDepthMm, hem), hem, assumed: length.assumed }
}

/** The side seams through chest, waist and what lies lowest. */
export function bodySides(asked: Asked, line: JobLine): Template | null {
  const { job, garment, t } = asked
  const heights = heightsOf(asked)
  const at = (point: PointId) => offsetAtPoint(job, garment, line.offsetMm, point)
  const toHip = garment.kind === 'dress' || garment.kind === 'jumpsuit' || garment.kind === 'coat'
  const hip = at('hip')
  // past the hip the seam goes on as far as it was moved there, or runs out where the row stops
  const below = toHip ? [{ y: heights.hip, offset: hip }, ...(isOn(asked) ? [] : [{ y: heights.hip + BELOW_HIP_MM, offset: 0 }])] : []
  const offsets = offsetsThrough([
    { y: 0, offset: at('chest') },
    { y: heights.waist, offset: at('waist') },
    ...(toHip ? below : [{ y: heights.hem, offset: at('hem') }])
  ])
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
/** Does what the hip takes go on to the hem? */
const isOn = ({ garment }: Asked): boolean => garment.kind === 'dress' || garment.kind === 'coat'

/** The centre back: most at the waist, what comes with it at the chest and below. */
export function middleBack(asked: Asked, line: JobLine): Template | null {
  const { job, garment, t } = asked
  const heights = heightsOf(asked)
  const at = (point: PointId) => offsetAtPoint(job, garment, line.offsetMm, point)
  const chest = at('chest')
  const low = garment.kind === 'dress' ? at('hip') : at('hem')
  const lowest = garment.kind === 'dress' ? heights.hip : heights.hem
  const offsets = offsetsThrough([
    { y: -ABOVE_UNDERARM * heights.frame.underarm.y, offset: 0 },
    { y: 0, offset: chest },
    { y: heights.waist, offset: at('waist') },
    { y: lowest, offset: low },
    ...(garment.kind === 'dress' ? [{ y: lowest + BELOW_HIP_MM, offset: 0 }] : [])
  ])
  if (offsets === null || offsets.to <= offsets.from) return null
  return seamStrip(asked, {
    ...named(asked, line, 'template.title.strip'),
    seams: [line.seam],
    offsets,
    head: t('template.head.above-chest', { mm: Math.abs(offsets.from) }),
    headIsEdge: false,
    foot: t('template.at.hem'),
    places: [
      { y: 0, text: t('template.at.chest') },
      { y: heights.waist, text: t('template.at.waist') }
    ],
    notes: stripNotes(asked, line.seam, line.offsetMm, true),
    assumed: heights.assumed
  })
}

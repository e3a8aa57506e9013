/** Strips for legs and sleeves: inside and outside leg from the fork or the knee to the finished hem, the underarm seam, the armhole. */
import type { PointId } from '../../ids/points.ts'
import { offsetsThrough, taperDown } from '../seam-line.ts'
import { finishedMm, legLevels, sleeveLevels } from '../shapes.ts'
import { offsetAtPoint } from './seam-change.ts'
import { seamStrip } from './seam-strip.ts'
import { type Asked, figureOf, makeOf, type Template } from './template.ts'
import { type JobLine, moves, named, stripNotes } from './waist-strips.ts'

/** Leg seams: alike on both, so one strip serves both. */
export function legStrip(asked: Asked, line: JobLine, other: JobLine | undefined): Template | null {
  const { job, garment, t } = asked
  const at = (point: PointId) => offsetAtPoint(job, garment, line, point)
  const told = figureOf(asked, 'inseam', legLevels(garment).hem)
  const length = finishedMm(asked.plan, 'inseam', told.mm)
  const { knee, calf: calfAt } = legLevels(garment)
  const isLong = length > knee + 60
  const calf = job.amounts.calf === undefined ? [] : [{ y: calfAt, offset: at('calf') }]
  const anchors = [
    { y: 0, offset: at('thigh') },
    ...(isLong ? [{ y: knee, offset: at('knee') }, ...calf] : []),
    { y: length, offset: at('legOpening') }
  ]
  const offsets = offsetsThrough(anchors)
  if (offsets === null || offsets.to <= offsets.from) return null
  const hem = makeOf(asked, 'hemDepthMm')
  const reachesHem = offsets.to === length && at('legOpening') !== 0
  const name = named(asked, line, 'template.title.strip')
  return seamStrip(asked, {
    id: name.id,
    title: other === undefined ? name.title : t('template.title.strip-two', { seam: line.seam, other: other.seam }),
    seams: [line.seam],
    offsets,
    head: t(offsets.from === 0 ? 'template.head.fork' : 'template.head.knee', { mm: offsets.from }),
    headIsEdge: false,
    ...(reachesHem ? { foot: t('template.at.finished-hem'), turnsUpMm: hem.mm } : { foot: t('template.at.knee') }),
    places: isLong ? [{ y: knee, text: t('template.at.knee') }] : [],
    notes: [
      t(line.offsetMm < 0 ? 'template.lay.out' : 'template.lay.in', { seam: line.seam }),
      ...(other === undefined ? [] : [t('template.lay.both', { seam: line.seam, other: other.seam })]),
      t('template.turn-over-legs')
    ],
    assumed: told.assumed
  })
}

export function underarmStrip(asked: Asked, line: JobLine): Template | null {
  const { job, garment, t } = asked
  const at = (point: PointId) => offsetAtPoint(job, garment, line, point)
  const told = figureOf(asked, 'sleeveUnderarm', sleeveLevels(garment).cuff)
  const length = finishedMm(asked.plan, 'sleeveUnderarm', told.mm)
  const offsets = offsetsThrough([
    { y: 0, offset: at('bicep') },
    { y: length, offset: at('cuff') }
  ])
  if (offsets === null || offsets.to <= offsets.from) return null
  return seamStrip(asked, {
    ...named(asked, line, 'template.title.strip'),
    seams: [line.seam],
    offsets,
    head: t('template.head.underarm'),
    headIsEdge: false,
    foot: t('template.at.sleeve-end'),
    notes: stripNotes(asked, line.seam, line.offsetMm, false),
    assumed: told.assumed
  })
}

/** Of a garment's chest, the armhole goes round so much of it (from memory; of invented and measured shirts 0.45 to 0.5). */
export const ARMHOLE_OF_CHEST = 0.47
const USUAL_CHEST = 1050

export function armholeOf(asked: Asked): { mm: number; assumed: string[] } {
  const chest = asked.garment.points.get('chest')?.mm ?? USUAL_CHEST
  return figureOf(asked, 'armhole', ARMHOLE_OF_CHEST * chest)
}

/** All of it at the shoulder's end, back on the old line at the notches half way down (common practice). */
const NOTCH_MM = 130

/** The armhole from the shoulder to the notch: a strip for the front and, turned over, the back. */
export function armholeStrip(asked: Asked, line: JobLine): Template {
  return seamStrip(asked, {
    ...named(asked, line, 'template.title.taper'),
    seams: [line.seam],
    offsets: taperDown(line.offsetMm, NOTCH_MM),
    head: asked.t('template.head.shoulder'),
    headIsEdge: false,
    notes: stripNotes(asked, line.seam, line.offsetMm, true),
    assumed: []
  })
}

/** A side seam raised at the armhole: in at its top, to nothing a hand below. */
const RAISED_OVER_MM = 150
export const raisedSide = (asked: Asked, line: JobLine): Template | null =>
  moves(asked, 'armhole')
    ? seamStrip(asked, {
        ...named(asked, line, 'template.title.taper'),
        seams: [line.seam],
        offsets: taperDown(line.offsetMm, RAISED_OVER_MM),
        head: asked.t('template.head.armhole'),
        headIsEdge: true,
        notes: stripNotes(asked, line.seam, line.offsetMm, false),
        assumed: []
      })
    : null

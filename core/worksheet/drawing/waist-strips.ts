/** Strips for the seams from the waist down to the seat: tapers at the centre back and the sides, the seat seam, the sides of a skirt. */
import type { PointId } from '../../ids/points.ts'
import type { SeamId } from '../../ids/seams.ts'
import { skirtFrame } from '../outline/skirt-outline.ts'
import { offsetsThrough, taperDown } from '../seam-line.ts'
import { backTaperMm, sideTaperMm } from '../shapes.ts'
import { changeAt, offsetAtPoint } from './seam-change.ts'
import { type Strip, seamStrip } from './seam-strip.ts'
import { type Asked, figureOf, makeOf, type Template } from './template.ts'

export type JobLine = Asked['job']['lines'][number]

/** `Back seam, left`: what a template of this line is called, and what tells it from the others of its plan. */
export function named({ job, t }: Asked, line: JobLine, code: string): { id: string; title: string } {
  const title = t(code, { seam: line.seam, alteration: job.id })
  const id = [job.id, job.direction, line.seam, ...(line.side === undefined ? [] : [line.side])].join('.')
  return { id, title: line.side === undefined ? title : t(`template.side.${line.side}`, { title }) }
}

/** In or out, how it is laid on and what becomes of the cloth. */
export function stripNotes({ t }: Asked, seam: SeamId, offsetMm: number, curved: boolean): string[] {
  return [
    t(offsetMm < 0 ? 'template.lay.out' : 'template.lay.in', { seam }),
    ...(curved ? [t('template.walk')] : []),
    t('template.turn-over')
  ]
}

/** From the waistband down a seam, running out over the taper's length. */
const taperStrip = (asked: Asked, line: JobLine, lengthMm: number, own: Pick<Strip, 'places' | 'notes' | 'assumed'>): Template =>
  seamStrip(asked, {
    ...named(asked, line, 'template.title.taper'),
    seams: [line.seam],
    offsets: taperDown(line.offsetMm, lengthMm),
    head: asked.t('template.head.band'),
    headIsEdge: true,
    ...own
  })

/** The centre back from the waist. */
export function centreBackTaper(asked: Asked, line: JobLine): Template {
  const { garment, t } = asked
  const takesIn = line.offsetMm >= 0
  return taperStrip(asked, line, backTaperMm(garment), {
    places: [
      { y: garment.made.pocketDepthMm, text: t('template.at.pockets') },
      { y: makeOf(asked, 'hipDepthMm').mm, text: t('template.at.hip') }
    ],
    notes: [
      ...stripNotes(asked, line.seam, line.offsetMm, false),
      ...(takesIn ? [t('template.band.less', { mm: 2 * line.offsetMm })] : [])
    ],
    assumed: makeOf(asked, 'taperLengthMm').assumed
  })
}

/** Both side seams from the waist; the taper reaches at least to the hip, as the planner takes it. */
export function sideTaper(asked: Asked, line: JobLine): Template {
  const hip = makeOf(asked, 'hipDepthMm')
  return taperStrip(asked, line, sideTaperMm(asked.garment), {
    places: [{ y: hip.mm, text: asked.t('template.at.hip') }],
    notes: stripNotes(asked, line.seam, line.offsetMm, true),
    assumed: [...new Set([...makeOf(asked, 'taperLengthMm').assumed, ...hip.assumed])]
  })
}

/** From the hip down into the fork the seat line runs out over so much (common practice). */
const FORK_RUN_MM = 100

export function seatStrip(asked: Asked, line: JobLine): Template {
  const { t } = asked
  const hip = makeOf(asked, 'hipDepthMm')
  const end = hip.mm + FORK_RUN_MM
  const offsets = offsetsThrough([
    { y: 0, offset: 0 },
    { y: hip.mm, offset: line.offsetMm },
    { y: end, offset: 0 }
  ])
  return seamStrip(asked, {
    ...named(asked, line, 'template.title.strip'),
    seams: [line.seam],
    offsets: offsets ?? taperDown(line.offsetMm, end),
    head: t('template.head.band'),
    headIsEdge: true,
    places: [{ y: hip.mm, text: t('template.at.hip') }],
    notes: stripNotes(asked, line.seam, line.offsetMm, true),
    assumed: hip.assumed
  })
}

/** The sides of a skirt through waist, hip and hem. */
export function skirtSides(asked: Asked, line: JobLine): Template | null {
  const { job, garment, t } = asked
  const at = (point: PointId) => offsetAtPoint(job, garment, line, point)
  const hip = makeOf(asked, 'hipDepthMm')
  const length = figureOf(asked, 'skirtLength', 600)
  const frame = skirtFrame({ points: { skirtLength: length.mm }, jobs: [], made: { hipDepthMm: hip.mm } })
  const sweep = at('sweep')
  const offsets = offsetsThrough([
    { y: 0, offset: at('waist') },
    { y: frame.hipY, offset: at('hip') },
    { y: frame.hemY, offset: sweep }
  ])
  if (offsets === null) return null
  return seamStrip(asked, {
    ...named(asked, line, 'template.title.strip'),
    seams: [line.seam],
    offsets,
    head: t(offsets.from === 0 ? 'template.head.band' : 'template.at.hip'),
    headIsEdge: offsets.from === 0,
    foot: t(offsets.to === frame.hemY ? 'template.at.hem' : 'template.at.hip'),
    places: [{ y: frame.hipY, text: t('template.at.hip') }],
    notes: stripNotes(asked, line.seam, line.offsetMm, true),
    assumed: [...hip.assumed, ...(sweep === 0 ? [] : length.assumed)]
  })
}

/** Is anything changed at this point? */
export const moves = ({ job, garment }: Asked, point: PointId): boolean => changeAt(job, garment, point) !== 0

/** A strip to lay on an old seam: the new stitching line beside it at true scale, with a cross to chalk at every step. */
import type { SeamId } from '../../ids/seams.ts'
import type { SeamOffsets } from '../seam-line.ts'
import { labelBox, spread, whole } from './label-box.ts'
import { down, type Line, type Spot } from './line-work.ts'
import { type Asked, allowances, type Label, SEAM_LEFT_MM, type Template, type TemplateLine } from './template.ts'

/** Match marks, mm: two inches or five centimetres. */
export const STEP_MM = { cm: 50, in: 50.8 } as const
const CROSS_MM = 1.6
const BELOW_END_MM = 10
const APART_MM = 4.6
/** A figure beside its cross. */
const ROOM_FOR_FIGURE = 11
const ARROW_MM = 90

export interface Strip {
  id: string
  title: string
  seams: SeamId[]
  offsets: SeamOffsets
  /** What the top of the strip is laid on. */
  head: string
  /** Is the top an edge of the cloth, so that a line lies across it? */
  headIsEdge: boolean
  /** Where it ends below, when it does not run out. */
  foot?: string
  /** Places of the garment that it passes. */
  places?: { y: number; text: string }[]
  /** The line goes on so far past its end as a mirror of itself, so that a hem turned up lies flat. */
  turnsUpMm?: number
  notes: string[]
  assumed: string[]
}

export function seamStrip(asked: Asked, strip: Strip): Template {
  const { garment, t, units } = asked
  const { offsets } = strip
  const { thereMm, leaveMm } = allowances(garment, strip.seams[0] as SeamId)
  const outwards = offsets.at((offsets.from + offsets.to) / 2) < 0
  const end = offsets.to + (strip.turnsUpMm ?? 0)
  const at = (y: number): number => (y <= offsets.to ? offsets.at(y) : offsets.at(2 * offsets.to - y))
  // where a straight piece ends, its corner is drawn exactly
  const stops = [offsets.from, ...(strip.places ?? []).map(({ y }) => y).filter((y) => y > offsets.from && y < offsets.to), offsets.to]
  const line = [...new Set([...stops, end])].slice(1).flatMap((to, i) => down(stops[i] ?? offsets.to, to, at).slice(i === 0 ? 0 : 1))
  const cut = outwards || leaveMm === null ? [] : cutLine(line, thereMm, leaveMm)
  const lines: TemplateLine[] = [
    { role: 'edge', line: upDown(-thereMm, offsets.from, end) },
    { role: 'goes', line: upDown(0, offsets.from, end) },
    { role: 'makes', line },
    ...(cut.length > 1 ? [{ role: 'cut' as const, line: cut }] : []),
    ...(offsets.runsOut.below ? [{ role: 'edge' as const, line: upDown(0, end, end + BELOW_END_MM) }] : [])
  ]
  const right = Math.max(0, ...line.map(({ x }) => x))
  if (strip.headIsEdge) lines.push({ role: 'edge', line: across(offsets.from, -thereMm - 4, right + 14) })
  if (strip.turnsUpMm !== undefined) lines.push({ role: 'fold', line: across(offsets.to, -thereMm - 4, right + 14) })
  const marked = marks(strip, at, t, STEP_MM[units], thereMm)
  lines.push(...marked.lines)
  const beyond = Math.max(right, ...marked.labels.filter(({ anchor }) => anchor === 'start').map((label) => labelBox(label).right)) + 2
  const told = sideNotes(strip, line, cut, beyond, t)
  const arrow = widestGap([offsets.from, ...told.heights, end])
  lines.push(grain(beyond + 8, arrow.from, arrow.to))
  const grainLabel: Label = {
    at: { x: beyond + 6.5, y: (arrow.from + arrow.to) / 2 },
    text: t('template.grain'),
    anchor: 'middle',
    upright: true
  }
  return whole({
    id: strip.id,
    alteration: asked.job.id,
    title: strip.title,
    notes: strip.notes,
    assumed: strip.assumed,
    lines,
    labels: [
      { at: { x: -thereMm - 4, y: offsets.from - 3 }, text: strip.head, anchor: 'start' },
      ...marked.labels,
      ...told.labels,
      grainLabel
    ],
    lengths: { seam: offsets.to - offsets.from, deepest: Math.max(...line.map(({ x }) => Math.abs(x))) }
  })
}

const upDown = (x: number, from: number, to: number): Line => [
  { x, y: from },
  { x, y: to }
]
const across = (y: number, from: number, to: number): Line => [
  { x: from, y },
  { x: to, y }
]

/** Where cloth is trimmed beside the new line, as far as there is more than what is left. */
const cutLine = (line: Line, thereMm: number, leaveMm: number): Line =>
  line.map(({ x, y }) => ({ x: x - leaveMm, y })).filter(({ x }) => x > -thereMm + 0.5)

/** A cross at every half step of the new line with its figure, a tick on the old seam with its depth at every step. */
function marks({ offsets }: Strip, at: (y: number) => number, t: Asked['t'], step: number, thereMm: number) {
  const lines: TemplateLine[] = []
  const labels: Label[] = []
  const { from, to } = offsets
  const count = Math.floor((to - from) / (step / 2) + 1e-9)
  const nought = t('template.figure', { mm: 0 })
  const heights = Array.from({ length: count + 1 }, (_, n) => from + (n * step) / 2)
  if (to - (heights.at(-1) ?? from) > 0.01) heights.push(to)
  for (const [n, y] of heights.entries()) {
    const x = at(y)
    lines.push(...cross({ x, y }), { role: 'mark', line: across(y, -2, 2) })
    const isLast = y === to
    // the end has its figure too, unless the one before stands in its way
    const crowded = isLast && n > 0 && y - (heights[n - 1] ?? y) < APART_MM
    if (t('template.figure', { mm: Math.abs(x) }) !== nought && !crowded) {
      const deepest = n === 0
      const text = t(deepest ? 'template.length' : 'template.figure', { mm: Math.abs(x) })
      labels.push({
        at: { x: Math.max(x, 0) + 4, y: y + (deepest ? 5 : 1.1) },
        text,
        anchor: 'start',
        ...(deepest ? { look: 'strong' as const } : {})
      })
    }
    if (n > 0 && (n % 2 === 0 || isLast) && !crowded)
      labels.push({ at: { x: -thereMm - 2, y: y + 1 }, text: t('template.figure', { mm: y - from }), anchor: 'end', look: 'faint' })
  }
  return { lines, labels }
}

const cross = ({ x, y }: Spot): TemplateLine[] => [
  {
    role: 'mark',
    line: [
      { x: x - CROSS_MM, y: y - CROSS_MM },
      { x: x + CROSS_MM, y: y + CROSS_MM }
    ]
  },
  {
    role: 'mark',
    line: [
      { x: x - CROSS_MM, y: y + CROSS_MM },
      { x: x + CROSS_MM, y: y - CROSS_MM }
    ]
  }
]

/** What each line is, in a column to the right, each led to its line; and the places of the garment that are passed. */
function sideNotes(strip: Strip, line: Line, cut: Line, x: number, t: Asked['t']) {
  const { from, to } = strip.offsets
  const tall = to - from
  const nearest = (y: number): Spot =>
    line.reduce((best, spot) => (Math.abs(spot.y - y) < Math.abs(best.y - y) ? spot : best), line[0] as Spot)
  const wanted: { y: number; to: Spot; text: string; strong?: boolean }[] = []
  const trimmed = cut[Math.floor(cut.length * 0.4)]
  if (trimmed !== undefined) wanted.push({ y: trimmed.y, to: trimmed, text: t('template.trim', { mm: SEAM_LEFT_MM }) })
  wanted.push({ y: from + tall * 0.3 + 7, to: nearest(from + tall * 0.3 + 7), text: t('template.new-line'), strong: true })
  wanted.push({ y: from + tall * 0.62, to: { x: 0, y: from + tall * 0.62 }, text: t('template.old-seam') })
  for (const { y, text } of strip.places ?? []) if (y > from + 1 && y < to - 1) wanted.push({ y, to: { x: 2, y }, text })
  const foot = strip.offsets.runsOut.below ? t('template.ends') : strip.foot
  if (foot !== undefined)
    wanted.push({
      y: to,
      to: { x: strip.offsets.runsOut.below ? 1 : Math.max(0, strip.offsets.at(to)) + ROOM_FOR_FIGURE, y: to },
      text: foot
    })
  wanted.sort((a, b) => a.y - b.y)
  const heights = spread(
    wanted.map(({ y }) => y),
    APART_MM
  )
  const labels = wanted.map(
    ({ text, to: lead, strong }, i): Label => ({
      at: { x: x + 4, y: (heights[i] ?? 0) + 1.1 },
      text,
      anchor: 'start',
      lead,
      ...(strong ? { look: 'strong' as const } : {})
    })
  )
  return { heights, labels }
}

/** Where an arrow has room between words: the middle of the widest gap, no longer than it need be. */
function widestGap(heights: readonly number[]): { from: number; to: number } {
  const gaps = heights.slice(1).map((to, i) => ({ from: heights[i] ?? to, to }))
  const widest = gaps.reduce((best, gap) => (gap.to - gap.from > best.to - best.from ? gap : best), { from: 0, to: 0 })
  const [middle, half] = [(widest.from + widest.to) / 2, Math.min(ARROW_MM, (widest.to - widest.from - 6) / 0.32 / 2)]
  return { from: middle - half, to: middle + half }
}

/** An arrow down the seam, nearly the grain. */
export function grain(x: number, from: number, to: number): TemplateLine {
  const [a, b] = [from + (to - from) * 0.34, from + (to - from) * 0.66]
  const head = Math.min(3, (b - a) / 4)
  return {
    role: 'grain',
    line: [
      { x: x - head / 2, y: a + head },
      { x, y: a },
      { x: x + head / 2, y: a + head },
      { x, y: a },
      { x, y: b },
      { x: x - head / 2, y: b - head },
      { x, y: b },
      { x: x + head / 2, y: b - head }
    ]
  }
}

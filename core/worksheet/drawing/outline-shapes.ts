/** The garment to scale, front and back, with the lines of a plan: solid what is, dashed what comes, dotted what goes, each with its figure. */
import { garmentAsWorn } from '../../garment/garment-as-worn.ts'
import type { PointId } from '../../ids/points.ts'
import type { Plan } from '../../plan/plan.ts'
import type { ReckonRequest } from '../../plan/request.ts'
import { bodyOf, seenOn } from '../../wearer/target.ts'
import { listed, say, sayInside, type Wording } from '../../words/say.ts'
import { leadsTo } from '../outline/leads.ts'
import { type Move, movesOf } from '../outline/moves.ts'
import type { Dimension, Measures, OutlineDrawing, OutlineInput, View } from '../outline/outline-drawing.ts'
import { boxOf, outlineOf, pathOf } from '../outline/outline-geometry.ts'
import { LABEL_MM } from './label-box.ts'
import type { Line, Spot } from './line-work.ts'
import { type Shape, toSvg } from './shapes.ts'
import { inInk, stroke, words } from './strokes.ts'
import { textWidth, wrapped } from './text-size.ts'

export interface OutlineShown {
  view: View
  /** One to so many. */
  scale: number
  /** The whole of it in words, for those who do not see it. */
  says: string
  tree: Shape
  svg: string
}

const ROOM_MM = 14
const SCALES = [4, 5, 6, 8, 10, 12, 15, 20]
const SMALLEST = 25
const TEXT_MM = 2.9
const TWO_LINES_MM = 8.5
const NOTE_TALL = 4

/**
 * Front and back of a request's garment with the lines of a plan, each no wider and no taller than asked, mm, at a whole scale. Empty for a kind
 * that has no outline.
 */
export function drawOutlines(
  plan: Plan,
  { garment: input, wearer }: ReckonRequest,
  wording: Wording,
  most: { wideMm: number; tallMm: number } = { wideMm: 120, tallMm: 150 }
): OutlineShown[] {
  const garment = seenOn(garmentAsWorn(input, wearer?.sizes), bodyOf(wearer))
  const points: Measures = Object.fromEntries([...garment.points].map(([point, { mm }]) => [point, mm]))
  const after: Measures = Object.fromEntries(plan.after.map(({ point, mm }) => [point, mm]))
  const { taperLengthMm, hipDepthMm } = garment.made
  const given: OutlineInput = { points, jobs: plan.alterations, made: { taperLengthMm, hipDepthMm }, after }
  const inferred = new Set([...garment.points].filter(([, { from }]) => from === 'inferred').map(([point]) => point))
  const drawings = (['front', 'back'] as const).flatMap((view) => {
    const drawing = outlineOf(garment.kind, given, view)
    if (drawing === null) return []
    const moves = movesOf(plan, points).filter(({ job, seam }) =>
      drawing.moved.some((moved) => moved.job === job.id && moved.seam === seam)
    )
    return [{ view, drawing, moves, column: columnFor(moves, wording) }]
  })
  // both sides at one scale, so that they can be set beside each other
  const scale = Math.max(...drawings.map(({ drawing, column }) => scaleFor(drawing, column, most)))
  return drawings.map(({ view, drawing, moves, column }) => {
    const says = saysOf(garment.kind, view, moves, wording)
    const shown = drawing.dimensions.map(({ point }) => point)
    const guessed = [...new Set([...drawing.guessed, ...shown.filter((point) => inferred.has(point))])]
    const tree = drawn(drawing, { moves, column, scale, after, guessed, says }, wording)
    return { view, scale, says, tree, svg: toSvg(tree) }
  })
}

/** The largest whole scale at which a drawing and its column of figures fit; the smallest there is where none does. */
function scaleFor(drawing: OutlineDrawing, column: number, most: { wideMm: number; tallMm: number }): number {
  const { left, right, top, bottom } = boxOf(drawing)
  const fits = (scale: number) =>
    (right - left) / scale + 2 * ROOM_MM + column <= most.wideMm && (bottom - top) / scale + 2 * ROOM_MM <= most.tallMm
  return SCALES.find(fits) ?? SMALLEST
}
const columnFor = (moves: readonly Move[], wording: Wording): number =>
  Math.max(0, ...moves.flatMap((move) => figuresOf(move, wording)).map((text) => textWidth(text, TEXT_MM) + 8))

function saysOf(kind: string, view: View, moves: readonly Move[], wording: Wording): string {
  const head = say({ code: `outline.says.${view}`, values: { kind } }, wording)
  const told = moves.map(({ seam, way, offsetMm }) =>
    say({ code: `outline.says.${way}`, values: { seam, mm: Math.abs(offsetMm) } }, wording)
  )
  return [head, ...new Set(told)].join(' ')
}

interface Shown {
  moves: readonly Move[]
  column: number
  scale: number
  after: Measures
  guessed: readonly PointId[]
  says: string
}

function drawn(drawing: OutlineDrawing, { moves, column, scale, after, guessed, says }: Shown, wording: Wording): Shape {
  const box = boxOf(drawing)
  const place = ({ x, y }: Spot): Spot => ({ x: (x - box.left) / scale + ROOM_MM, y: (y - box.top) / scale + ROOM_MM })
  const on = (line: Line): Line => line.map(place)
  const right = (box.right - box.left) / scale + 2 * ROOM_MM
  const leads = leadsTo(drawing.moved, moves, place, { x: right, apart: TWO_LINES_MM, above: 2 })
  const lowest = Math.max(0, ...leads.map(({ to }) => to.y + 4))
  const tall = Math.max((box.bottom - box.top) / scale + 2 * ROOM_MM, lowest + 2)
  const wide = right + column
  const notes = [
    say({ code: 'template.outline.scale', values: { scale } }, wording),
    ...(guessed.length === 0 ? [] : [`${say({ code: 'moves.guessed', values: {} }, wording)} ${namesOf(guessed, wording)}`])
  ].flatMap((note) => wrapped(note, TEXT_MM, wide - 4))
  const children: Shape[] = [
    { tag: 'title', attributes: {}, text: says },
    ...drawing.layers.flatMap(({ cloth, edges }) => [cover(on(cloth)), ...edges.map((edge) => stroke('edge', on(edge)))]),
    ...drawing.seams.map((seam) => stroke('grain', on(seam))),
    ...drawing.moved.flatMap(({ goes, comes }) => [...(goes === null ? [] : [stroke('goes', on(goes))]), stroke('makes', on(comes))]),
    ...drawing.dimensions.flatMap((dimension) => dimensionShapes(dimension, after, place, wording)),
    ...leads.flatMap(({ move, from, to }): Shape[] => {
      const [first, second] = figuresOf(move, wording)
      return [
        stroke('mark', [from, { x: to.x - 1, y: to.y }]),
        words({ at: { x: to.x, y: to.y + 1 }, text: first, size: TEXT_MM, bold: true }),
        words({ at: { x: to.x, y: to.y + 4.6 }, text: second, size: TEXT_MM })
      ]
    }),
    ...notes.map((text, i) => words({ at: { x: 2, y: tall + 2 + NOTE_TALL * i }, text, size: TEXT_MM }))
  ]
  const foot = tall + NOTE_TALL * notes.length
  return inInk({
    tag: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${round(wide)} ${round(foot)}`,
      width: `${round(wide)}mm`,
      height: `${round(foot)}mm`,
      role: 'img'
    },
    children
  })
}
const round = (mm: number): number => Math.ceil(mm * 10) / 10
const namesOf = (points: readonly PointId[], wording: Wording): string =>
  listed(
    points.map((point) => sayInside({ code: 'moves.point', values: { point } }, wording)),
    wording
  )

/** A piece of cloth hides what lies under it. A page gives it its own ground by the class. */
const cover = (line: Line): Shape => ({
  tag: 'path',
  attributes: { class: 'o-fill', d: `${pathOf(line, 1, { x: 0, y: 0 })}Z`, fill: '#fff' }
})

/** How far a line moves, and which it is. */
const figuresOf = ({ way, offsetMm, seam, side }: Move, wording: Wording): [string, string] => [
  say({ code: `moves.${way}`, values: { mm: Math.abs(offsetMm) } }, wording),
  say({ code: side === null ? 'moves.seam' : `moves.seam.${side}`, values: { seam } }, wording)
]

/** A level or upright dimension line with what it measures, and what it comes to. */
function dimensionShapes(
  { point, mm, flat, from, to }: Dimension,
  after: Measures,
  place: (spot: Spot) => Spot,
  wording: Wording
): Shape[] {
  const [a, b] = [place(from), place(to)]
  const then = after[point]
  const halved = flat && then !== undefined && mm < 0.75 * then ? then / 2 : then
  const code = flat ? 'outline.across' : 'outline.along'
  const now = say({ code, values: { point, mm } }, wording)
  const text =
    halved === undefined || Math.abs(halved - mm) < 0.5
      ? now
      : say({ code: 'template.outline.becomes', values: { now, mm: halved } }, wording)
  if (Math.abs(a.y - b.y) < 0.01) {
    const under = from.y > 0
    const y = a.y + (under ? 4 : -4)
    return [
      stroke('mark', [
        { x: a.x, y },
        { x: b.x, y }
      ]),
      ...[a.x, b.x].map((x) =>
        stroke('mark', [
          { x, y: y - 1.2 },
          { x, y: y + 1.2 }
        ])
      ),
      words({
        at: { x: Math.max((a.x + b.x) / 2, textWidth(text, TEXT_MM) / 2 + 1), y: under ? y + LABEL_MM + 0.6 : y - 1.6 },
        text,
        size: TEXT_MM,
        anchor: 'middle'
      })
    ]
  }
  const x = Math.max(5, a.x - 6)
  return [
    stroke('mark', [
      { x, y: a.y },
      { x, y: b.y }
    ]),
    ...[a.y, b.y].map((y) =>
      stroke('mark', [
        { x: x - 1.2, y },
        { x: x + 1.2, y }
      ])
    ),
    words({ at: { x: x - 1.5, y: (a.y + b.y) / 2 }, text, size: TEXT_MM, anchor: 'middle', upright: true })
  ]
}

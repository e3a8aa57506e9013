/**
 * Plans of the real planner, drawn, and then measured on the drawing with a ruler that knows nothing but lines: what is read
 * off must be what the plan says comes out (`after`), within 2 mm.
 */
import { describe, expect, it } from 'vitest'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import { reckon } from '../../../core/reckon.ts'
import type { Body } from '../../../core/wearer/body.ts'
import type { Measures, OutlineDrawing } from '../../../core/worksheet/outline/outline-drawing.ts'
import { outlineOf } from '../../../core/worksheet/outline/outline-geometry.ts'

const body: Body = {
  stature: { mm: 1750 },
  waistGirth: { mm: 800 },
  waistbandGirth: { mm: 815 },
  hipGirth: { mm: 980 },
  thighGirth: { mm: 570 },
  insideLegLength: { mm: 770 },
  bustGirth: { mm: 960 },
  shoulderWidth: { mm: 420 },
  armLength: { mm: 600 }
}
const GARMENTS: [string, GarmentKind, Measures][] = [
  ['trousers too big and long', 'trousers', { waist: 890, hip: 1060, thigh: 640, knee: 500, legOpening: 420, inseam: 800, outseam: 1075 }],
  ['trousers much too big', 'trousers', { waist: 930, hip: 1120, thigh: 720, knee: 560, legOpening: 480, inseam: 760, frontRise: 290 }],
  ['jeans too long', 'jeans', { waist: 850, hip: 1030, thigh: 620, legOpening: 400, inseam: 860, frontRise: 280 }],
  ['a skirt too big', 'skirt', { waist: 900, hip: 1090, sweep: 1300, skirtLength: 650 }],
  ['a shirt too full', 'shirt', { chest: 1160, waist: 1120, hem: 1150, shoulderWidth: 440, sleeveLength: 650, bodyLength: 760 }],
  ['a jacket too full', 'jacket', { chest: 1100, waist: 1040, hem: 1140, shoulderWidth: 450, sleeveLength: 640, bodyLength: 740 }]
]

interface Spot {
  x: number
  y: number
}
function crossings(line: readonly Spot[], y: number): number[] {
  const found: number[] = []
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1] as Spot
    const b = line[i] as Spot
    const t = (y - a.y) / (b.y - a.y)
    if (a.y !== b.y && t >= 0 && t <= 1) found.push(a.x + t * (b.x - a.x))
  }
  return found
}
const widest = (xs: number[]): number => Math.max(...xs) - Math.min(...xs)

/** One layer of the garment across a height: the cloth, less what is seamed away at the sides, the middle and the darts. */
function across(drawing: OutlineDrawing, y: number, after: boolean): number {
  const cloth = drawing.layers.at(-1)?.cloth ?? []
  let width = widest(crossings(cloth, y))
  if (!after) return width
  for (const { seam, goes, comes } of drawing.moved) {
    const to = crossings(comes, y)[0]
    if (seam === 'side' && goes !== null && to !== undefined) width -= Math.abs((crossings(goes, y)[0] ?? to) - to)
    if (seam === 'centre-back' && to !== undefined) width -= Math.abs(to)
    if (seam === 'dart' && crossings(comes, y).length > 1) width -= widest(crossings(comes, y))
  }
  return width
}

/** A leg across a height, both seams of it. */
function leg(drawing: OutlineDrawing, y: number): number {
  const xs = crossings(drawing.layers.at(-1)?.cloth ?? [], y).filter((x) => x > 0)
  const line = (seam: string) => drawing.moved.find((one) => one.seam === seam && one.comes.every(({ x }) => x > 0))?.comes
  const outer = crossings(line('side') ?? [], y)[0] ?? Math.max(...xs)
  const inner = crossings(line('inseam') ?? [], y)[0] ?? Math.min(...xs)
  return 2 * (outer - inner)
}

const lowestHem = (drawing: OutlineDrawing): number =>
  drawing.moved.find(({ seam }) => seam === 'hem')?.comes[0]?.y ?? Math.max(...(drawing.layers.at(-1)?.cloth ?? []).map(({ y }) => y))

function sleeve(drawing: OutlineDrawing, before: number): number {
  const end = drawing.moved.find(({ comes, goes }) => goes !== null && comes.length === 2 && comes[0]?.y !== comes[1]?.y)
  if (end === undefined) return before
  const [a, b] = [end.goes?.[0] as Spot, end.comes[0] as Spot]
  return before - Math.hypot(a.x - b.x, a.y - b.y)
}

type Ruler = (front: OutlineDrawing, back: OutlineDrawing) => number
/** How each point is read off the two drawings; heights are those of the garment, told by its own figures. */
function rulers(kind: GarmentKind, m: Measures): Partial<Record<PointId, Ruler>> {
  const girth =
    (y: number): Ruler =>
    (front, back) =>
      across(front, y, true) + across(back, y, true)
  if (kind === 'skirt') return { waist: girth(0.001), hip: girth(200), skirtLength: (front) => lowestHem(front) }
  if (kind === 'trousers' || kind === 'jeans') {
    const fork = m.outseam === undefined ? (m.frontRise ?? 0) : m.outseam - (m.inseam ?? 0)
    return {
      waist: girth(0.001),
      knee: (front) => leg(front, fork + 0.46 * (m.inseam ?? 0)),
      inseam: (front) => lowestHem(front) - fork
    }
  }
  const shoulders = m.shoulderWidth ?? 0
  const top = (shoulders / 2 - (shoulders * 0.88) / 5.6) * Math.tan((19 * Math.PI) / 180) + 0.19 * (m.chest ?? 0)
  const length = m.bodyLength ?? 0
  return {
    waist: girth(top + 0.42 * (length - top)),
    hem: girth(length - 0.001),
    sleeveLength: (front) => sleeve(front, m.sleeveLength ?? 0)
  }
}

describe.each(GARMENTS)('%s', (_, kind, measures) => {
  const points = Object.entries(measures) as [PointId, number][]
  const reckoning = reckon(
    {
      garment: { kind, measures: points.map(([point, mm]) => ({ point, mm, source: 'own' })) },
      wearer: { body, fit: 'regular' },
      means: { level: 5, tailor: true, markMm: 2 }
    },
    { outlook: false }
  )
  it('has plans to draw', () => {
    expect(reckoning.plans.some((plan) => plan.alterations.length > 0)).toBe(true)
  })
  it.each(reckoning.plans.map((plan) => [plan.aim, plan] as const))('%s: the drawing measures what the plan says', (_aim, plan) => {
    const after: Measures = Object.fromEntries(plan.after.map(({ point, mm }) => [point, mm]))
    const input = { points: measures, jobs: plan.alterations, made: {}, after }
    const front = outlineOf(kind, input, 'front')
    const back = outlineOf(kind, input, 'back')
    if (front === null || back === null) throw new Error('no outline')
    // a button moved or an elastic drawn in changes a girth without any seam that could be drawn
    const isUndrawn = ({ lines }: (typeof plan.alterations)[number]) =>
      lines.length === 0 || lines.some(({ seam }) => seam === 'front-edge' || seam === 'waistband')
    const undrawn = new Set<string>(plan.alterations.filter(isUndrawn).flatMap(({ amounts }) => Object.keys(amounts)))
    // front buttons close every girth down to the edge
    if (plan.alterations.some(({ id }) => id === 'front-button-move')) undrawn.add('hem')
    let measured = 0
    for (const [point, read] of Object.entries(rulers(kind, measures)) as [PointId, Ruler][]) {
      const says = after[point]
      if (says === undefined || undrawn.has(point)) continue
      const seen = read(front, back)
      expect(Math.abs(seen - says), `${point}: drawn ${seen.toFixed(1)}, planned ${says}`).toBeLessThan(2)
      measured++
    }
    expect(measured).toBeGreaterThan(0)
  })
})

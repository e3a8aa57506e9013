/** Shirt and jacket laid flat, one sleeve whole; the second is begun and cut with a wave. Chest, waist, bottom edge, shoulders and sleeve are true. */
import type { PointId } from '../../ids/points.ts'
import type { Job } from '../../plan/plan.ts'
import { type Anchor, type Line, mirrored, offsetAt, part, type Spot, smooth, xAt } from './curve.ts'
import { type Moved, movedBy, type OutlineDrawing, type OutlineInput, offsetAtPoint, sideEffect, type View } from './outline-drawing.ts'
import { type UpperCut, type UpperFrame, upperFrame } from './upper-frame.ts'

export function upperOutline(input: OutlineInput, cut: UpperCut, view: View): OutlineDrawing {
  const frame = upperFrame(input, cut)
  const { side, armhole, hemY, neckX, shoulder } = frame
  const neckDrop = view === 'front' ? (cut === 'jacket' ? 8 : 70) : 18
  const neckline = smooth([
    { x: 0, y: neckDrop },
    { x: neckX * 0.6, y: neckDrop * 0.6 },
    { x: neckX, y: 0 }
  ])
  const edge: Line = [...neckline, shoulder, ...armhole, ...side]
  const half: Line = [...edge, ...(frame.inner === null ? [{ x: 0, y: hemY }] : [...frame.inner].reverse())]
  const sleeved = frame.sleeve > 0
  const legs = frame.inner === null ? [] : [frame.inner, mirrored(frame.inner)]
  const body = {
    cloth: [...half, ...mirrored(half).reverse()],
    edges: [[...mirrored(edge).reverse(), ...edge], hem(frame, hemY), mirrored(hem(frame, hemY)), ...legs]
  }
  const sleeve = { cloth: frame.sleeveShape, edges: [[shoulder, ...frame.sleeveShape.slice(armhole.length)]] }
  return {
    view,
    layers: sleeved ? [sleeve, cutSleeve(frame), body] : [body],
    seams: details(frame, view, neckDrop),
    moved: input.jobs.flatMap((job) => job.lines.flatMap((line) => movedLines(frame, input, job, line, view))),
    dimensions: dimensions(frame, input),
    guessed: frame.guessed
  }
}

const hem = ({ side, inner, hemY }: UpperFrame, y: number): Line => [
  { x: inner === null ? 0 : xAt(inner, Math.min(y, hemY)), y },
  { x: inner === null ? (side.at(-1)?.x ?? 0) : xAt(side, Math.min(y, hemY)), y }
]

/** The second sleeve: its two edges begun, and a wave where the drawing stops. */
function cutSleeve(frame: UpperFrame): OutlineDrawing['layers'][number] {
  const { shoulder, along, across, underarm, armhole, sleeve } = frame
  const reach = Math.min(90, sleeve * 0.3)
  const top = { x: shoulder.x + along.x * reach, y: shoulder.y + along.y * reach }
  const under = { x: underarm.x + along.x * 34, y: underarm.y + along.y * 34 }
  const wave = smooth(
    [0, 0.25, 0.5, 0.75, 1].map((share, i) => ({
      x: top.x + (under.x - top.x) * share + (i % 2 === 1 ? 9 : -4) * across.y,
      y: top.y + (under.y - top.y) * share
    }))
  )
  const cloth = [...[...armhole].reverse(), top, ...wave, under]
  return { cloth: mirrored(cloth), edges: [mirrored([shoulder, top]), mirrored(wave), mirrored([under, underarm])] }
}

function details(frame: UpperFrame, view: View, neckDrop: number): Line[] {
  const { cut, hemY, waistY, side, inner, neckX, shoulder, armhole, sleeve, cuff, along, across } = frame
  const onSleeve = (distance: number, side: number): Spot => ({
    x: shoulder.x + along.x * distance + across.x * side,
    y: shoulder.y + along.y * distance + across.y * side
  })
  const lines: Line[] = [armhole, mirrored(armhole)]
  if (cut === 'dress' || cut === 'jumpsuit') {
    lines.push([
      { x: -xAt(side, waistY), y: waistY },
      { x: xAt(side, waistY), y: waistY }
    ])
  }
  if (inner !== null) {
    lines.push([
      { x: 0, y: waistY },
      { x: 0, y: inner[0]?.y ?? waistY }
    ])
  }
  if (cut === 'shirt') lines.push([onSleeve(sleeve - 60, 0), onSleeve(sleeve - 60, cuff / 2 + 6)])
  if (view === 'back') {
    if (cut === 'jacket') {
      lines.push([
        { x: 0, y: neckDrop },
        { x: 0, y: hemY }
      ])
    }
    return lines
  }
  if (cut === 'jacket') {
    const break_ = { x: 8, y: hemY * 0.52 }
    const lapel: Line = [
      { x: neckX, y: 0 },
      { x: neckX + 44, y: hemY * 0.1 },
      { x: neckX + 10, y: hemY * 0.16 },
      { x: neckX + 62, y: hemY * 0.17 },
      break_
    ]
    const welt: Line = [
      { x: neckX + 60, y: hemY * 0.66 },
      { x: neckX + 200, y: hemY * 0.64 }
    ]
    lines.push(lapel, mirrored(lapel), [{ x: neckX, y: 0 }, break_], mirrored([{ x: neckX, y: 0 }, break_]), welt, mirrored(welt), [
      break_,
      { x: 0, y: hemY }
    ])
  } else if (cut === 'shirt') {
    const collar: Line = [
      { x: neckX, y: 0 },
      { x: neckX + 20, y: 60 },
      { x: 0, y: neckDrop }
    ]
    lines.push(collar, mirrored(collar))
    for (const x of [-16, 16]) {
      lines.push([
        { x, y: neckDrop + 4 },
        { x, y: hemY }
      ])
    }
  }
  return lines
}

function movedLines(frame: UpperFrame, input: OutlineInput, job: Job, line: Job['lines'][number], view: View): Moved[] {
  const { seam, offsetMm } = line
  const { both, once, middle } = movedBy(job, line)
  const sleeveEnd = job.amounts.sleeveLength !== undefined || job.amounts.sleeveFromCentreBack !== undefined
  switch (seam) {
    case 'side': {
      const anchors = bodyAnchors(frame, job, offsetMm)
      const goes = part(frame.side, frame.underarm.y, frame.hemY)
      return both(
        goes,
        goes.map(({ x, y }) => ({ x: x - offsetAt(anchors, y), y }))
      )
    }
    case 'hem':
    case 'cuff':
      if (sleeveEnd) return frame.sleeve === 0 ? [] : once(acrossSleeve(frame, 0), acrossSleeve(frame, offsetMm))
      return seam === 'hem' ? both(hem(frame, frame.hemY), hem(frame, frame.hemY - offsetMm)) : []
    case 'armhole':
      if (sleeveEnd && job.amounts.shoulderWidth === undefined) return []
      return both(
        frame.armhole,
        frame.armhole.map((spot, i) => ({ x: spot.x - offsetMm * (1 - i / (frame.armhole.length - 1)), y: spot.y }))
      )
    case 'underarm':
      return frame.sleeve === 0 ? [] : once(frame.underside, undersideMoved(frame, job, offsetMm))
    case 'centre-back': {
      if (view === 'front') return []
      const anchors = middleAnchors(frame, input, job, offsetMm)
      const comes = Array.from({ length: 25 }, (_, i) => {
        const y = frame.underarm.y + ((frame.hemY - frame.underarm.y) * i) / 24
        return { x: Math.abs(offsetAt(anchors, y)), y }
      })
      const goes: Line = [
        { x: 0, y: frame.underarm.y },
        { x: 0, y: frame.hemY }
      ]
      return middle(goes, comes)
    }
    case 'waist-seam':
      return both(
        [
          { x: 0, y: frame.waistY },
          { x: xAt(frame.side, frame.waistY), y: frame.waistY }
        ],
        [
          { x: 0, y: frame.waistY - offsetMm },
          { x: xAt(frame.side, frame.waistY - offsetMm), y: frame.waistY - offsetMm }
        ]
      )
    case 'dart': {
      const bust = job.amounts.chest !== undefined && job.amounts.waist === undefined
      if (bust !== (view === 'front')) return []
      return both(null, bust ? bustDart(frame, offsetMm) : backDart(frame, offsetMm))
    }
    default:
      return []
  }
}

/** From the side seam, a hand below the underarm, towards the bust. */
function bustDart({ underarm, side }: UpperFrame, offsetMm: number): Line {
  const y = underarm.y + 70
  const x = xAt(side, y)
  return [
    { x, y: y - offsetMm },
    { x: underarm.x * 0.55, y: y - 20 },
    { x, y: y + offsetMm }
  ]
}

/** A long dart, widest at the waist. */
function backDart({ underarm, waistY, hemY }: UpperFrame, offsetMm: number): Line {
  const x = underarm.x * 0.45
  const top = underarm.y + 20
  return [
    { x, y: top },
    { x: x - offsetMm, y: waistY },
    { x, y: waistY + (hemY - waistY) * 0.6 },
    { x: x + offsetMm, y: waistY },
    { x, y: top }
  ]
}

/** The middle seam: what it takes at the chest and the bottom edge comes with what it is meant to take at the waist. */
function middleAnchors(frame: UpperFrame, input: OutlineInput, job: Job, offsetMm: number): Anchor[] {
  const at = (point: PointId): number => offsetAtPoint(job, offsetMm, point) ?? Math.abs(sideEffect(input, point)) / 2
  return frame.levels.map(({ point, y }) => ({ y, offset: at(point) }))
}

/** What the line moves at each point of the side, from the chest to the bottom edge; one the job does not name stays where it is. */
const bodyAnchors = (frame: UpperFrame, job: Job, offsetMm: number): Anchor[] =>
  frame.levels.map(({ point, y }) => ({ y, offset: offsetAtPoint(job, offsetMm, point) ?? 0 }))

/** The line across the sleeve, so far up from its end. */
function acrossSleeve({ shoulder, along, across, sleeve, cuff }: UpperFrame, up: number): Line {
  const at = (side: number): Spot => ({
    x: shoulder.x + along.x * (sleeve - up) + across.x * side,
    y: shoulder.y + along.y * (sleeve - up) + across.y * side
  })
  return [at(0), at(cuff / 2)]
}

function undersideMoved({ underside, across }: UpperFrame, job: Job, offsetMm: number): Line {
  const from = offsetAtPoint(job, offsetMm, 'bicep') ?? 0
  const to = offsetAtPoint(job, offsetMm, 'cuff') ?? (job.amounts.bicep === undefined ? offsetMm : 0)
  return underside.map(({ x, y }, i) => {
    const move = from + ((to - from) * i) / (underside.length - 1)
    return { x: x - across.x * move, y: y - across.y * move }
  })
}

function dimensions({ shoulder, underarm, hemY, side, inner }: UpperFrame, { points }: OutlineInput): OutlineDrawing['dimensions'] {
  const found: OutlineDrawing['dimensions'] = []
  if (points.shoulderWidth !== undefined) {
    const y = Math.min(0, shoulder.y)
    found.push({ point: 'shoulderWidth', mm: points.shoulderWidth, flat: true, from: { x: -shoulder.x, y }, to: { x: shoulder.x, y } })
  }
  if (points.inseam !== undefined && inner !== null) {
    const x = -xAt(side, hemY)
    found.push({ point: 'inseam', mm: points.inseam, flat: false, from: { x, y: inner[0]?.y ?? 0 }, to: { x, y: hemY } })
  }
  if (points.bodyLength !== undefined && inner === null) {
    const x = -(side.at(-1)?.x ?? underarm.x)
    found.push({ point: 'bodyLength', mm: points.bodyLength, flat: false, from: { x, y: 0 }, to: { x, y: hemY } })
  }
  if (points.chest !== undefined) {
    found.push({ point: 'chest', mm: points.chest / 2, flat: true, from: { x: -underarm.x, y: hemY }, to: { x: underarm.x, y: hemY } })
  }
  return found
}

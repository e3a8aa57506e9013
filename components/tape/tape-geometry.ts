/**
 * Where everything on a drawn tape lies, in px at the measured width. Pure; lengths in are mm.
 * The lanes are fixed and never scaled: 0–11 figure now, 15–23 span, 13–26 mark, 25–49 tape, 50–60 tacking, 62–76 figure after.
 */
import { fromMm, INCH_MM, type Units } from '../../core/length.ts'
import type { BandShown } from '../../core/reckon.ts'

/** ±1.645 standard deviations hold nine in ten of a normal spread (ISO 3534-1 quantile 0.95). */
export const NINE_IN_TEN = 1.645

export interface TapeNow {
  mm: number
  sdMm: number
  /** false: worked out, never drawn solid. */
  told: boolean
}
export interface TapeInput {
  now: TapeNow | null
  band: BandShown | null
  /** Where the plan brings it; null without a plan for this point. */
  afterMm: number | null
}
export interface Stretch {
  fromMm: number
  toMm: number
}
export interface Tick {
  x: number
  length: number
}
export interface TapeDrawing {
  width: number
  height: number
  ticks: Tick[]
  numerals: { x: number; text: string }[]
  /** An edge that the cut leaves free lies at the strip's end and has no bracket. */
  band: { from: number; to: number; closedFrom: boolean; closedTo: boolean; best: number | null } | null
  hatch: string
  now: { x: number; from: number; to: number; told: boolean } | null
  after: { x: number; stitched: boolean } | null
  /** Where a label of this width (px) stands when it wants its middle at x. */
  clamp: (x: number, labelWidth: number) => number
}

export const TAPE_TOP = 25
export const TAPE_BOTTOM = 49
const HATCH_STEP = 6
const NUMERAL_CHAR = 5.85
const NUMERAL_CLEAR = 2
const SHORTEST_STRETCH: Record<Units, number> = { in: 5 * INCH_MM, cm: 120 }
const NUMBERED: Record<Units, { unitMm: number; steps: readonly number[] }> = {
  in: { unitMm: INCH_MM, steps: [1, 2, 4, 6, 12] },
  cm: { unitMm: 10, steps: [1, 2, 5, 10, 20] }
}
/** Finest ticks in parts of the unit: ⅛ ¼ ½ 1 in; 1 5 10 20 mm. */
const FINEST: Record<Units, readonly number[]> = { in: [1 / 8, 1 / 4, 1 / 2, 1], cm: [0.1, 0.5, 1, 2] }
const LEAST_NUMBERED_PX = 27
const LEAST_TICK_PX = 4.6
const LEAST_STITCHED_PX = 14

/** The stretch of tape that shows everything there is to show, never shorter than 5 in or 12 cm. */
export function stretchOf(inputs: readonly TapeInput[], units: Units): Stretch {
  const marks = inputs.flatMap(({ now, band, afterMm }) => [
    ...(band === null ? [] : [band.least, band.most].filter((mm) => mm !== null)),
    ...(now === null ? [] : [now.mm - NINE_IN_TEN * now.sdMm, now.mm + NINE_IN_TEN * now.sdMm]),
    ...(afterMm === null ? [] : [afterMm])
  ])
  const shortest = SHORTEST_STRETCH[units]
  if (marks.length === 0) return { fromMm: 0, toMm: shortest }
  const low = Math.min(...marks)
  const high = Math.max(...marks)
  const span = Math.max(1.22 * Math.max(high - low, 0.72 * shortest), shortest)
  const middle = (low + high) / 2
  return { fromMm: middle - span / 2, toMm: middle + span / 2 }
}

/** Everything on a tape `width` px wide. `stretch` is given when tapes are compared, so that they stand level. */
export function drawTape(input: TapeInput, units: Units, width: number, stretch = stretchOf([input], units)): TapeDrawing {
  const span = stretch.toMm - stretch.fromMm
  const at = (mm: number) => ((mm - stretch.fromMm) / span) * width
  const { now, band, afterMm } = input
  const drawnBand = band === null ? null : bandAt(band, at, width)
  const nowX = now === null ? null : at(now.mm)
  const after = afterMm === null ? null : { x: at(afterMm), stitched: nowX !== null && Math.abs(at(afterMm) - nowX) >= LEAST_STITCHED_PX }
  const marks = [
    ...(drawnBand === null ? [] : marksOf(drawnBand)),
    ...(nowX === null ? [] : now?.told ? [nowX] : [nowX - 2, nowX + 2]),
    ...(after === null ? [] : [after.x])
  ]
  const pxPerUnit = (width / span) * NUMBERED[units].unitMm
  const numbered = firstApart(NUMBERED[units].steps, pxPerUnit, LEAST_NUMBERED_PX)
  const finest = Math.min(firstApart(FINEST[units], pxPerUnit, LEAST_TICK_PX), numbered)
  return {
    width,
    height: after === null ? 68 : 76,
    ticks: ticksOf(stretch, units, at, numbered, finest),
    numerals: numeralsOf(stretch, units, at, numbered, marks, width),
    band: drawnBand,
    hatch: drawnBand === null ? '' : hatchOf(drawnBand.from, drawnBand.to),
    now:
      now === null || nowX === null
        ? null
        : { x: nowX, from: at(now.mm - NINE_IN_TEN * now.sdMm), to: at(now.mm + NINE_IN_TEN * now.sdMm), told: now.told },
    after,
    clamp: (x, labelWidth) => Math.min(Math.max(x, labelWidth / 2), Math.max(width - labelWidth / 2, labelWidth / 2))
  }
}

/** The band in px: a free edge is the end of the strip. */
const bandAt = ({ least, ideal, most }: BandShown, at: (mm: number) => number, width: number): NonNullable<TapeDrawing['band']> => ({
  from: least === null ? 0 : at(least),
  to: most === null ? width : at(most),
  closedFrom: least !== null,
  closedTo: most !== null,
  best: ideal === null ? null : at(ideal)
})
/** What no numeral may cross. */
const marksOf = ({ from, to, closedFrom, closedTo, best }: NonNullable<TapeDrawing['band']>): number[] => [
  ...(closedFrom ? [from] : []),
  ...(closedTo ? [to] : []),
  ...(best === null ? [] : [best])
]

/** The brackets at the closed edges, turned inward; '' where both are free. Top and bottom in px, feet as long as asked. */
export const bracketsOf = (
  { from, to, closedFrom, closedTo }: NonNullable<TapeDrawing['band']>,
  top: number,
  bottom: number,
  foot: number
): string =>
  [
    closedFrom ? `M${tenth(from + foot)} ${top}H${tenth(from)}V${bottom}h${foot}` : '',
    closedTo ? `M${tenth(to - foot)} ${top}H${tenth(to)}V${bottom}h${-foot}` : ''
  ].join('')
const tenth = (value: number): number => Math.round(value * 10) / 10

const NUMERALS_APART = 4
const halfOf = (text: string): number => (text.length * NUMERAL_CHAR) / 2
const firstApart = (steps: readonly number[], pxPerUnit: number, least: number): number =>
  steps.find((step) => step * pxPerUnit >= least) ?? (steps.at(-1) as number)

/** Counts of `step` that lie on the stretch, in units. */
function multiples(stretch: Stretch, units: Units, step: number): number[] {
  const first = Math.ceil(fromMm(stretch.fromMm, units) / step - 1e-9)
  const last = Math.floor(fromMm(stretch.toMm, units) / step + 1e-9)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i)
}

function ticksOf(stretch: Stretch, units: Units, at: (mm: number) => number, numbered: number, finest: number): Tick[] {
  const isMultiple = (value: number, step: number) => Math.abs(value / step - Math.round(value / step)) < 1e-6
  return multiples(stretch, units, finest).map((count) => {
    const value = count * finest
    const length = isMultiple(value, numbered) ? 10 : isMultiple(value, 1) ? 9 : isMultiple(value, 0.5) ? 7 : 4
    return { x: at(value * NUMBERED[units].unitMm), length }
  })
}

/**
 * Under its tick, else right of it, else left, wherever it keeps 2 px from the marks and 4 from the numeral before; else left
 * out: the mark has its own figure.
 */
function numeralsOf(stretch: Stretch, units: Units, at: (mm: number) => number, step: number, marks: number[], width: number) {
  const placed: { x: number; text: string }[] = []
  for (const count of multiples(stretch, units, step)) {
    const value = count * step
    if (value < 0) continue
    const text = String(Math.round(value))
    const half = halfOf(text)
    const tick = at(value * NUMBERED[units].unitMm)
    const aside = half + NUMERAL_CLEAR + 1
    const before = placed.at(-1)
    const free = before === undefined ? 0 : before.x + halfOf(before.text) + NUMERALS_APART
    const fits = (x: number) =>
      x - half >= free && x + half <= width && marks.every((mark) => Math.abs(mark - x) >= half + NUMERAL_CLEAR + 1 - 1e-9)
    const x = [tick, tick + aside, tick - aside].find(fits)
    if (x !== undefined) placed.push({ x, text })
  }
  return placed
}

/** Diagonals of 45° every 6 px that cover the band; they are clipped to it. */
function hatchOf(from: number, to: number): string {
  const rise = TAPE_BOTTOM - TAPE_TOP
  const first = Math.floor((from - rise) / HATCH_STEP) * HATCH_STEP
  let path = ''
  for (let x = first; x < to; x += HATCH_STEP) path += `M${x} ${TAPE_BOTTOM}l${rise} ${-rise}`
  return path
}

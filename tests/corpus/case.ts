/** A corpus case: the text as a seller would write it, all that must be read in it, and what it teaches. */
import type { ConditionId, Made, Structure, Trait, Use } from '../../core/garment/garment-input.ts'
import type { Whose } from '../../core/garment/model/whose.ts'
import type { Cut } from '../../core/ids/cut.ts'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { PointId } from '../../core/ids/points.ts'
import type { AsideReason, Basis, ListingText } from '../../core/reading/reading.ts'
import type { BodyMeasureId } from '../../core/wearer/body.ts'

type Unit = 'in' | 'cm' | 'mm'
/** Where a figure stands: its text, and which of its occurrences (1 is the first). */
export interface Place {
  text: string
  nth: number
  value: number
  unit: Unit | null
}
export interface ExpectedMeasure {
  point: PointId
  place: Place
  mm: number
  lowMm: number
  highMm: number
  basis: Basis
  basisFrom: 'stated' | 'judged'
  unitFrom: 'stated' | 'list' | 'judged'
  of?: GarmentKind
  size?: string
}
export interface ExpectedIssue {
  code: string
  /** The text of the figure it is about. */
  about?: string
  readings?: [PointId, number][]
}
/** A body that a size is cut for, as its maker says. */
export interface ExpectedChartRow {
  size: string | null
  body: BodyMeasureId
  place: Place
  lowMm: number
  highMm: number
}
/** What is not named is expected to be empty (or null). */
export interface Expected {
  kind: GarmentKind | null
  measures?: ExpectedMeasure[]
  fibres?: [string, number | null][]
  traits?: Trait[]
  stretchPercent?: number | null
  structure?: Structure | null
  /** false: told to be never washed. */
  washed?: boolean | null
  made?: Partial<Made>
  /** What is told of the cut, read by eye in the text. */
  cut?: Cut
  use?: Use | null
  whose?: Whose | null
  sizeChart?: ExpectedChartRow[]
  language?: string
  colour?: string | null
  condition?: string | null
  mending?: ConditionId[]
  price?: { amount: number; currency: string } | null
  sizeLabels?: string[]
  faults?: string[]
  allowances?: { point: PointId; mm: number; place: Place }[]
  leftAside?: { place: Place; because: AsideReason }[]
  issues?: ExpectedIssue[]
  /** What the title tells beyond the text, read behind it. */
  added?: string
}
export interface Case {
  name: string
  teaches: string
  /** A trap, or nothing to read. */
  trap?: true
  listing: ListingText
  expect: Expected
}

const MM: Record<Unit, number> = { in: 25.4, cm: 10, mm: 1 }

interface More {
  nth?: number
  value?: number
  low?: number
  high?: number
  of?: GarmentKind
  size?: string
}
type How = `${Unit} ${'flat' | 'around' | 'length'}${'' | ' judged'}${'' | ' list' | ' guessed'}`

const number = (text: string): number => Number(/\d+(?:\.\d+)?/.exec(text)?.[0])
export const place = (text: string, unit: Unit | null, value = number(text), nth = 1): Place => ({ text, nth, value, unit })

/** A measure: point, its text, `unit basis [judged] [list|guessed]`. The figure in mm is worked out here, not by the code under test. */
export function m(point: PointId, text: string, how: How, more: More = {}): ExpectedMeasure {
  const [unit, basis, ...rest] = how.split(' ') as [Unit, Basis, ...string[]]
  const value = more.value ?? number(text)
  const factor = MM[unit] * (basis === 'flat' ? 2 : 1)
  const stands = /["″”“'’]|in|cm|mm/i.test(text) ? unit : null
  return {
    point,
    place: place(text, stands, value, more.nth),
    mm: value * factor,
    lowMm: (more.low ?? value) * factor,
    highMm: (more.high ?? value) * factor,
    basis,
    basisFrom: rest.includes('judged') ? 'judged' : 'stated',
    unitFrom: rest.includes('list') ? 'list' : rest.includes('guessed') ? 'judged' : 'stated',
    ...(more.of === undefined ? {} : { of: more.of }),
    ...(more.size === undefined ? {} : { size: more.size })
  }
}
export const aside = (because: AsideReason, text: string, unit: Unit | null = null, nth = 1, value = number(text)) => ({
  place: place(text, unit, value, nth),
  because
})
/** A row of a size chart: for which size, which part of the body, its text in the text's unit. */
export const cutFor = (
  size: string | null,
  body: BodyMeasureId,
  text: string,
  unit: Unit,
  [low, high]: readonly [number, number],
  more: { nth?: number; bare?: true } = {}
): ExpectedChartRow => ({
  size,
  body,
  place: place(text, more.bare ? null : unit, (low + high) / 2, more.nth),
  lowMm: low * MM[unit],
  highMm: high * MM[unit]
})

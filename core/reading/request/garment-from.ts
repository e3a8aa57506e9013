/** The one way from a reading to a request: what was read, set right by the person, as the garment to reckon with. */

import type { Cloth, GarmentInput, GarmentMeasure, Made } from '../../garment/garment-input.ts'
import type { Stated } from '../../garment/issue.ts'
import type { Cut } from '../../ids/cut.ts'
import { type GarmentKind, SHAPE } from '../../ids/kinds.ts'
import { isGirth, type PointId } from '../../ids/points.ts'
import { toMm } from '../../length.ts'
import { pointOn } from '../garment/points-by-kind.ts'
import { logLikely } from '../quantities/plausible.ts'
import type { Basis, ChartRow, Correction, MeasureReading, Reading } from '../reading.ts'
import { chartEvidence, rowsForSale } from '../sizes/chart-evidence.ts'
import { labelEvidence } from '../sizes/label-evidence.ts'
import { countsToo } from './second-look.ts'

export interface GarmentFromOptions {
  /** The person's currency (ISO 4217): a price in another is left out. Not told: the price is taken as it is. */
  currency?: string
  /** The size that is for sale, when the text has figures of several and no correction says which. */
  size?: string
}

/** A seller's flat tape, as the standard deviation of the girth it makes, and of a length (from memory, settings). */
const SELLER_GIRTH_SD = 12
const SELLER_LENGTH_SD = 8
/** A close call between flat and around (from memory): the other reading is far off, so this only weakens the figure. */
const BASIS_DOUBT_SD = 40

type Quoted = Extract<Correction, { quote: string }>
interface Held {
  measure: MeasureReading
  source: 'seller' | 'own'
  added: boolean
}

/** Corrections are applied in order, later ones over earlier; what they set right keeps its doubt no longer. */
export function garmentFrom(reading: Reading, corrections: readonly Correction[], options: GarmentFromOptions = {}): GarmentInput {
  let kind: GarmentKind = reading.garment.kind ?? 'other'
  let made: Partial<Made> = { ...reading.made }
  let cut: Cut = toldCut(reading.cut)
  let own: Cloth = {}
  let { whose } = reading
  let { size } = options
  for (const one of corrections) {
    if ('kind' in one) kind = one.kind
    else if ('whose' in one) whose = one.whose
    else if ('size' in one) size = one.size
    else if ('made' in one) made = { ...made, ...one.made }
    else if ('cut' in one) {
      cut = { ...cut, ...one.cut }
      made = withoutSaidBy(one.cut, made)
    } else if ('cloth' in one) own = { ...own, ...one.cloth }
  }
  const settled = new Set<MeasureReading>()
  let held: Held[] = ofSale(reading, kind, size).map((measure) => ({ measure, source: 'seller', added: false }))
  for (const one of corrections) {
    if ('quote' in one) held = corrected(held, one, reading, kind, settled)
    else if ('add' in one) held = [...held.filter(({ measure }) => measure.point !== one.add), added(one)]
  }
  const measures: GarmentMeasure[] = []
  for (const { measure, source, added: typed } of held) {
    const point = pointOn(kind, measure.point)
    if (measures.some((other) => other.point === point)) continue
    if (typed) {
      measures.push({ point, mm: measure.mm, source })
      continue
    }
    measures.push({ point, mm: measure.mm, sdMm: sdOf(measure, reading, settled.has(measure)), source })
    if (settled.has(measure)) continue
    for (const older of reading.superseded ?? [])
      if (countsToo(measure, older)) measures.push({ point, mm: older.mm, sdMm: sdOf(older, reading, false), source })
  }
  // a maker's own chart says more than what such labels usually mean
  const likely = [
    ...chartEvidence(chartForSale(reading, corrections, size), kind),
    ...labelsOf(reading, corrections).flatMap((label) => labelEvidence(label, kind))
  ]
  for (const { point, mm, sdMm } of likely)
    if (!measures.some((other) => other.point === point)) measures.push({ point, mm, sdMm, source: 'label' })
  const { cloth } = reading
  const price = priceFor(reading, options.currency)
  return {
    kind,
    ...(whose === null ? {} : { whose }),
    measures,
    cloth: {
      ...(cloth.fibres.length > 0 ? { fibres: cloth.fibres } : {}),
      ...(cloth.structure === null ? {} : { structure: cloth.structure }),
      ...(cloth.stretchPercent === null ? {} : { stretchPercent: cloth.stretchPercent }),
      ...(cloth.traits.length > 0 ? { traits: cloth.traits } : {}),
      ...(cloth.washed === null ? {} : { washed: cloth.washed }),
      ...own
    },
    made,
    ...(Object.keys(cut).length > 0 ? { cut } : {}),
    ...(reading.use ? { use: reading.use } : {}),
    ...(reading.mending.length > 0 ? { condition: reading.mending.map((job) => ({ job })) } : {}),
    ...(price === null ? {} : { price: { amount: price } })
  }
}

/** A facet that is set takes the place of what its words told of the make. */
function withoutSaidBy({ silhouette, sleeve }: Cut, made: Partial<Made>): Partial<Made> {
  const { skirtShape, shortSleeves, ...rest } = made
  return {
    ...rest,
    ...(silhouette === undefined && skirtShape !== undefined ? { skirtShape } : {}),
    ...(sleeve === undefined && shortSleeves !== undefined ? { shortSleeves } : {})
  }
}

/** The cut as its words tell it. */
const toldCut = (cut: Reading['cut']): Cut => Object.fromEntries(Object.entries(cut).map(([facet, { value }]) => [facet, value])) as Cut

/** The size labels: the one that was typed stands for those that were read. */
export function labelsOf({ sizeLabels }: Pick<Reading, 'sizeLabels'>, corrections: readonly Correction[]): string[] {
  const typed = corrections.findLast((one) => 'label' in one)
  return typed === undefined ? sizeLabels : [typed.label].filter((label) => label.trim() !== '')
}

/** The rows of a chart of bodies that are of the size for sale, `size` where it was chosen among several. */
export const chartForSale = (
  reading: Pick<Reading, 'sizeChart' | 'sizeLabels'>,
  corrections: readonly Correction[],
  size = corrections.findLast((one) => 'size' in one)?.size
): ChartRow[] => rowsForSale(reading.sizeChart, size ? [size] : labelsOf(reading, corrections))

/** The price in the person's currency, or null: then the page says so (`reading.other-currency`). */
export const priceFor = ({ price }: Pick<Reading, 'price'>, currency: string | undefined): number | null =>
  price === null || (currency !== undefined && currency !== '' && price.currency !== '' && price.currency !== currency)
    ? null
    : price.amount

/** The figures of this garment and size, where the text has several. */
function ofSale({ measures }: Reading, kind: GarmentKind, size: string | undefined): MeasureReading[] {
  const several = measures.some(({ of }) => of !== undefined)
  const mine = several ? measures.filter(({ of }) => of === undefined || of === kind || SHAPE[of] === SHAPE[kind]) : measures
  const sizes = [...new Set(mine.flatMap((one) => (one.size === undefined ? [] : [one.size])))]
  if (sizes.length === 0) return mine
  const chosen = size !== undefined && sizes.includes(size) ? size : sizes.length === 1 ? sizes[0] : undefined
  return mine.filter((one) => one.size === undefined || one.size === chosen)
}

const added = ({ add, mm, source }: Extract<Correction, { add: PointId }>): Held => ({
  added: true,
  source,
  measure: {
    point: add,
    mm,
    lowMm: mm,
    highMm: mm,
    basis: isGirth(add) ? 'around' : 'length',
    basisFrom: 'stated',
    unitFrom: 'stated',
    stated: { text: '', start: 0, end: 0, value: mm, unit: 'mm' }
  }
})

const plain = (text: string): string => text.toLowerCase().replace(/[”“″]/g, '"').replace(/[’′]/g, "'").replace(/\s+/g, ' ').trim()

/** Of the places with these words the nearest to where they stood: an edited text moves them. */
function nearest<T extends { stated: Stated }>(places: readonly T[], { quote, start }: Quoted): T | null {
  const exact = places.filter(({ stated }) => stated.text === quote)
  const alike = exact.length > 0 ? exact : places.filter(({ stated }) => stated.text !== '' && plain(stated.text) === plain(quote))
  return alike.reduce<T | null>(
    (best, one) => (best === null || Math.abs(one.stated.start - start) < Math.abs(best.stated.start - start) ? one : best),
    null
  )
}

function corrected(held: readonly Held[], correction: Quoted, reading: Reading, kind: GarmentKind, settled: Set<MeasureReading>): Held[] {
  const own = held.filter(({ added: typed }) => !typed).map(({ measure }) => measure)
  const aside = [...reading.leftAside, ...reading.allowances, ...reading.issues.flatMap(({ stated }) => (stated ? [{ stated }] : []))]
  const place = nearest([...own, ...aside], correction)
  if (place === null) return [...held]
  const here = held.filter(
    ({ measure, added: typed }) => !typed && measure.stated.start === place.stated.start && measure.stated.text === place.stated.text
  )
  if (here.length === 0) {
    const fresh = measureAt(place.stated, correction, kind)
    if (fresh === null) return [...held]
    settled.add(fresh)
    return [...held.filter(({ measure }) => measure.point !== fresh.point), { measure: fresh, source: 'seller', added: false }]
  }
  // a joint label has several points at one place: a new point is for the one already so named, else for the first
  const named = here.find(({ measure }) => measure.point === correction.point) ?? (here[0] as Held)
  return held.flatMap((one) => {
    if (!here.includes(one) || (correction.point !== undefined && correction.point !== null && one !== named)) return [one]
    if (correction.point === null) return []
    const measure = change(one.measure, correction, kind)
    settled.add(measure)
    return [{ ...one, measure }]
  })
}

/** A measure with its point, unit or basis set right, worked out anew from what was stated. */
function change(measure: MeasureReading, correction: Quoted, kind: GarmentKind): MeasureReading {
  const point = correction.point ?? measure.point
  const before = measure.basis === 'flat' ? 2 : 1
  const used = measure.mm / before / measure.stated.value
  const perUnit = correction.unit === undefined ? used : toMm(1, correction.unit)
  const stated = measure.stated.value * perUnit
  const basis = basisOn(
    point,
    correction.basis ?? (point === measure.point || isGirth(point) === isGirth(measure.point) ? measure.basis : undefined),
    stated,
    kind
  )
  const factor = basis === 'flat' ? 2 : 1
  const scale = (factor * perUnit) / (before * used)
  const low = correction.mm ?? measure.lowMm * scale
  const high = correction.mm ?? measure.highMm * scale
  return {
    ...measure,
    point,
    basis,
    basisFrom: 'stated',
    unitFrom: correction.unit ? 'stated' : measure.unitFrom,
    mm: correction.mm ?? measure.mm * scale,
    lowMm: low,
    highMm: high
  }
}

/** A figure that was left aside and is a measure after all: it needs a point, and a unit or its millimetres. */
function measureAt(stated: Stated, correction: Quoted, kind: GarmentKind): MeasureReading | null {
  const { point, mm } = correction
  const unit = correction.unit ?? stated.unit
  if (point === undefined || point === null || (unit === null && mm === undefined)) return null
  const size = unit === null ? 0 : toMm(Math.abs(stated.value), unit)
  const basis = basisOn(point, correction.basis, size, kind)
  const whole = mm ?? size * (basis === 'flat' ? 2 : 1)
  return { point, mm: whole, lowMm: whole, highMm: whole, basis, basisFrom: 'stated', unitFrom: 'stated', stated }
}

function basisOn(point: PointId, given: Basis | undefined, mm: number, kind: GarmentKind): Basis {
  if (!isGirth(point)) return 'length'
  if (given === 'flat' || given === 'around') return given
  return logLikely(mm * 2, point, kind) > logLikely(mm, point, kind) ? 'flat' : 'around'
}

function sdOf(measure: MeasureReading, { issues }: Reading, settled: boolean): number {
  const tape = isGirth(measure.point) ? SELLER_GIRTH_SD : SELLER_LENGTH_SD
  const range = (measure.highMm - measure.lowMm) / Math.sqrt(12)
  return Math.hypot(tape, range, settled ? 0 : doubtSd(measure, issues))
}

/** How far the other readings of its point lie off, as a standard deviation. */
function doubtSd({ point, stated }: MeasureReading, issues: Reading['issues']): number {
  let sd = 0
  for (const { code, stated: about, readings } of issues) {
    if (!readings.some((one) => one.point === point)) continue
    if (code === 'reading.basis-doubt') {
      if (about?.start === stated.start) sd = Math.hypot(sd, BASIS_DOUBT_SD)
    } else if (code === 'reading.contradiction' || (code === 'reading.units-disagree' && about?.start === stated.start)) {
      const figures = readings.map(({ mm }) => mm)
      sd = Math.hypot(sd, (Math.max(...figures) - Math.min(...figures)) / Math.sqrt(12))
    }
  }
  return sd
}

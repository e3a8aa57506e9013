/** A text in the manner of real listings, and what a careful buyer reads in it: kind, cut, measures, price, fibres, lining. */
import type { Cut } from '../../../core/ids/cut.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import { pointOn } from '../../../core/reading/garment/points-by-kind.ts'
import { readListing } from '../../../core/reading/read-listing.ts'
import type { Basis, MeasureReading, Reading } from '../../../core/reading/reading.ts'

export interface WrittenMeasure {
  point: PointId
  /** The figure as it stands in the text, and which of its occurrences (1 is the first). */
  text: string
  nth?: number
  value: number
  unit: 'in' | 'cm' | 'mm' | 'yd'
  basis: Basis
  low?: number
  high?: number
  of?: GarmentKind
}

export interface WrittenCase {
  id: string
  /** What is hard in it. */
  class: string
  lang: string
  title?: string
  /** The path of the page's address. */
  path?: string
  text: string
  kind: GarmentKind | null
  /** A bag, shoes, cloth, a pattern: nothing to wear and measure. */
  noGarment?: true
  /** A shop's front or a search page: no single thing for sale. */
  noSingle?: true
  measures: WrittenMeasure[]
  /** The other figure of a point that has two: stretched, cuffed, laid open. Told, and no measure. */
  second?: Pick<WrittenMeasure, 'point' | 'text'>[]
  /** Figures that must not be taken for measures. */
  aside?: string[]
  price: { amount: number; currency: string } | null
  fibres: [string, number | null][]
  lined?: 'full' | 'half' | 'none' | null
  cut?: Cut
}

const MM = { in: 25.4, cm: 10, mm: 1, yd: 914.4 }
const NEAR_MM = 0.6

/** Around for a girth, as a reading is. */
export const mmOf = ({ value, unit, basis }: WrittenMeasure): number => value * MM[unit] * (basis === 'flat' ? 2 : 1)

export interface Compared {
  reading: Reading
  found: WrittenMeasure[]
  /** The right point and figure, but taken flat where it is around or the other way. */
  otherBasis: WrittenMeasure[]
  missed: WrittenMeasure[]
  wrong: MeasureReading[]
}

export const readWritten = ({ title, text, lang, path }: WrittenCase): Reading =>
  readListing({ text, language: lang, ...(title === undefined ? {} : { title }), ...(path === undefined ? {} : { address: path }) })

/** The bottom edge of a coat is its hem here, of a skirt its sweep, whatever it is called. */
const pointHere = ({ point, of }: WrittenMeasure, { kind }: WrittenCase): PointId => {
  const garment = of ?? kind
  return garment === null ? point : pointOn(garment, point)
}

/** What was found, missed and wrongly given, each measure once. Of two garments, the one a measure is of is not asked here. */
export function compare(one: WrittenCase): Compared {
  const reading = readWritten(one)
  const left = [...reading.measures]
  const take = (is: (read: MeasureReading) => boolean): boolean => {
    const at = left.findIndex(is)
    if (at >= 0) left.splice(at, 1)
    return at >= 0
  }
  const found: WrittenMeasure[] = []
  const otherBasis: WrittenMeasure[] = []
  const missed: WrittenMeasure[] = []
  for (const measure of one.measures) {
    const mm = mmOf(measure)
    const by = (factor: number) => (read: MeasureReading) =>
      read.point === pointHere(measure, one) && Math.abs(read.mm - mm * factor) < NEAR_MM
    if (take(by(1))) found.push(measure)
    else if (take(by(2)) || take(by(0.5))) otherBasis.push(measure)
    else missed.push(measure)
  }
  return { reading, found, otherBasis, missed, wrong: left }
}

/** Hides are told as a structure of the cloth. */
const HIDES: readonly string[] = ['leather', 'suede']

/** The shares as told; a fibre that is named without one must be found where the buyer names it too, and may be where not. */
function sameFibres(told: WrittenCase['fibres'], { cloth }: Reading): boolean {
  const shares = (fibres: readonly (readonly [string, number | null])[]) =>
    JSON.stringify(
      fibres
        .filter(([, percent]) => percent !== null)
        .map(String)
        .sort()
    )
  const read = cloth.fibres.map(({ fibre, percent }) => [fibre, percent] as const)
  const named = new Set<string>([...cloth.fibres.map(({ fibre }) => fibre), cloth.structure ?? ''])
  return shares(told) === shares(read) && told.every(([fibre]) => named.has(fibre) || (HIDES.includes(fibre) && named.has('leather')))
}

/** All in which the reading is not the buyer's. */
export function unlike(one: WrittenCase, compared = compare(one)): string[] {
  const { reading, otherBasis, missed, wrong } = compared
  const faults: string[] = []
  if (reading.garment.kind !== one.kind) faults.push(`kind: ${reading.garment.kind}, not ${one.kind}`)
  for (const [told, code] of [
    [one.noGarment, 'reading.no-garment'],
    [one.noSingle, 'reading.no-single-listing']
  ] as const) {
    const said = reading.issues.some((issue) => issue.code === code)
    if (said !== (told ?? false)) faults.push(`${code}: ${said}`)
  }
  for (const { point, text } of missed) faults.push(`missed: ${point} ${text}`)
  for (const { point, text } of one.second ?? [])
    if (!reading.seconds?.some((second) => second.point === point && second.stated.text === text))
      faults.push(`second lost: ${point} ${text}`)
  for (const { point, text } of otherBasis) faults.push(`flat or around: ${point} ${text}`)
  for (const { point, stated } of wrong) faults.push(`wrong: ${point} ${stated.text}`)
  const { price } = reading
  if (price?.amount !== one.price?.amount || price?.currency !== one.price?.currency)
    faults.push(`price: ${price?.amount} ${price?.currency}, not ${one.price?.amount} ${one.price?.currency}`)
  if (!sameFibres(one.fibres, reading)) faults.push(`fibres: ${JSON.stringify(reading.cloth.fibres)}`)
  // lined in part is left open on purpose: what opening it costs is not told
  const lined = one.lined === 'half' ? [undefined, true] : [one.lined === 'full']
  if (one.lined && !lined.includes(reading.made.lined)) faults.push(`lined: ${reading.made.lined}`)
  for (const [facet, value] of Object.entries(one.cut ?? {}))
    if (reading.cut[facet as keyof Cut]?.value !== value) faults.push(`${facet}: ${reading.cut[facet as keyof Cut]?.value}, not ${value}`)
  return faults
}

/** A row for every point there is something to say of: what was stated, where it lies, what the plan makes of it. Pure. */
import type { Stated } from '../../core/garment/issue.ts'
import { keyPoints } from '../../core/garment/key-points.ts'
import { type GarmentKind, SHAPE } from '../../core/ids/kinds.ts'
import { isGirth, POINTS_OF, type PointId } from '../../core/ids/points.ts'
import { figure, type LengthUnit, toMm, type Units } from '../../core/length.ts'
import type { Basis, Correction, MeasureReading } from '../../core/reading/reading.ts'
import { countsToo } from '../../core/reading/request/second-look.ts'
import type { GapShown, Reckoning } from '../../core/reckon.ts'
import { chosenPlan, type Judged } from '../judged.ts'
import { gapState, isMeasured, type PointShown } from '../tape/tape-words.ts'

export interface Said {
  reading: MeasureReading
  from: 'listing' | 'answer'
  on: string | null
  /** Is it reckoned with? The newest is, and an older one that lies near it by one tape. */
  counts: boolean
}
/** A figure as it stands in the field. */
export interface StatedNow {
  typed: string
  unit: 'in' | 'cm'
  basis: Basis
}
export interface PointRow {
  point: PointId
  shown: PointShown
  afterMm: number | null
  /** What the listing, or a later answer of the seller, says; the newest first. */
  said: Said[]
  /** What the person set. */
  correction: Correction | null
  stated: StatedNow | null
  /** Where a hem ends on this body; null: it is none, or the body does not tell. */
  ends: string | null
  /** What made the band what it is, each as a sentence. */
  why: string[]
  /** Measured and outside, or moved by the plan: it gets a whole tape. */
  whole: boolean
  /** Only worked out, and nothing hangs on it. */
  folded: boolean
}

type FigureAs = (mm: number, units: Units) => string
type Quoted = Extract<Correction, { quote: string }>
export const isQuoted = (correction: Correction): correction is Quoted => 'quote' in correction

const LEAST_MOVE_MM = 0.5

/** `figureAs`: how a figure is typed, in a language with its own sign for decimals. */
export function pointRows(judged: Judged, units: Units, figureAs: FigureAs = figure): PointRow[] {
  const { reckoning, kind } = judged
  const gaps = new Map(reckoning?.gaps.map((gap) => [gap.point, gap]))
  const untold = new Map(reckoning?.untold.filter(({ point }) => matters(reckoning, point)).map(({ point, band }) => [point, band]))
  // nobody follows the plan of what is to be left
  const plan = reckoning?.verdict === 'leave-it' ? null : chosenPlan(judged)
  const after = new Map(plan?.after.map(({ point, mm }) => [point, mm]))
  const sayingsOf = saidOf(judged)
  const order: readonly PointId[] = kind === null ? [...sayingsOf.keys()] : POINTS_OF[kind]
  const weighty = new Set<PointId | undefined>([...keysOf(judged), ...(reckoning?.conditions.map(({ point }) => point) ?? [])])
  const rows: PointRow[] = []
  for (const point of order) {
    const gap = gaps.get(point)
    const sayings = sayingsOf.get(point) ?? []
    const correction = correctionOf(judged.corrections, point, sayings[0]?.reading ?? null)
    const band = gap?.band ?? untold.get(point) ?? null
    if (gap === undefined && sayings.length === 0 && correction === null && band === null) continue
    const stated = statedNow(point, correction, sayings[0]?.reading ?? null, units, figureAs)
    // before anything is reckoned the figures stand as they were told, judged by nothing
    const toldMm = reckoning === null && stated !== null ? toldLength(correction, sayings[0]?.reading ?? null) : null
    const shown: PointShown = gap ?? { point, garmentMm: toldMm, from: toldMm === null ? 'inferred' : 'seller', sdMm: 0, band, gapMm: 0 }
    const afterMm = after.get(point) ?? null
    const moved = afterMm !== null && shown.garmentMm !== null && Math.abs(afterMm - shown.garmentMm) > LEAST_MOVE_MM
    const said = sayings.length > 0 || correction !== null
    rows.push({
      point,
      shown,
      afterMm: moved ? afterMm : null,
      said: sayings,
      correction,
      stated,
      ...whyWanted(gap),
      whole: needsWholeTape(shown, moved),
      folded: !said && !weighty.has(point) && isAside(shown)
    })
  }
  return rows.sort((a, b) => urgency(a) - urgency(b))
}

/** What is said of a band beside its figures. */
const whyWanted = (gap: GapShown | undefined): Pick<PointRow, 'ends' | 'why'> => ({
  ends: gap?.because.find(({ code }) => code === 'target.ends-at')?.text ?? null,
  why: (gap?.because ?? []).filter(({ code }) => code !== 'target.ends-at').map(({ text }) => text)
})

/** Outside first, then unsure, then not told, then the rest: what was measured, then what was worked out; alike in the garment's own order. */
function urgency({ shown, whole }: PointRow): number {
  const state = gapState(shown)
  if (state === 'over' || state === 'under') return whole ? 0 : 1.5
  if (whole) return 1
  if (state === 'not-told') return 3
  return isMeasured(shown.from) ? (state === 'inside' || state === 'not-judged' ? 4 : 2) : 5
}

/** What is not told takes room only where it would change the answer; every other point can be added by hand. */
const matters = ({ verdict, ask }: Reckoning, point: PointId): boolean =>
  verdict === 'too-little-told' || ask.some((one) => one.point === point)

/** The points that decide for such a garment. */
const keysOf = ({ kind, cut }: Pick<Judged, 'kind' | 'cut'>): readonly PointId[] => (kind === null ? [] : keyPoints(kind, cut))

/** Worked out, and not outside what is wanted: what stays wrong there is named by the answer. */
function isAside(shown: PointShown): boolean {
  const state = gapState(shown)
  return shown.garmentMm !== null && shown.from === 'inferred' && state !== 'over' && state !== 'under'
}

function needsWholeTape(shown: PointShown, moved: boolean): boolean {
  const state = gapState(shown)
  return shown.band !== null && (moved || (isMeasured(shown.from) && (state === 'over' || state === 'under')))
}

/** Where a text tells of several garments (a suit), the figures of this one. */
const isOf = ({ of }: MeasureReading, kind: GarmentKind | null): boolean => of === undefined || kind === null || SHAPE[of] === SHAPE[kind]

/** Everything that was read of each point, the newest first. */
function saidOf({ reading, answers, kind }: Pick<Judged, 'reading' | 'answers' | 'kind'>): Map<PointId, PointRow['said']> {
  const found = new Map<PointId, PointRow['said']>()
  const add = (one: MeasureReading, from: 'listing' | 'answer', on: string | null) => {
    found.set(one.point, [{ reading: one, from, on, counts: true }, ...(found.get(one.point) ?? [])])
  }
  for (const one of reading.measures.filter((measure) => isOf(measure, kind)).reverse()) add(one, 'listing', null)
  for (const answer of answers) for (const one of answer.reading.measures) add(one, 'answer', answer.on)
  for (const [newest, ...older] of found.values())
    for (const one of older) one.counts = newest !== undefined && newest.from === 'answer' && countsToo(newest.reading, one.reading)
  return found
}

/** The last correction that sets this point. */
export function correctionOf(corrections: readonly Correction[], point: PointId, reading: MeasureReading | null): Correction | null {
  return (
    corrections.findLast((correction) => {
      if ('add' in correction) return correction.add === point
      // what was set for an older reading gives way to a newer one
      if (!isQuoted(correction)) return false
      return reading === null ? correction.point === point : isAbout(correction, reading)
    }) ?? null
  )
}
const isAbout = (correction: Quoted, { stated }: MeasureReading): boolean =>
  correction.quote === stated.text && correction.start === stated.start && correction.end === stated.end

function statedNow(
  point: PointId,
  correction: Correction | null,
  reading: MeasureReading | null,
  units: Units,
  figureAs: FigureAs
): StatedNow | null {
  if (correction !== null && 'add' in correction) {
    return { typed: figureAs(correction.mm, units), unit: units, basis: isGirth(point) ? 'around' : 'length' }
  }
  if (correction !== null && isQuoted(correction)) {
    if (correction.point === null) return null
    const mm = correction.mm ?? reading?.mm
    if (mm === undefined) return null
    const basis = correction.basis ?? reading?.basis ?? (isGirth(point) ? 'around' : 'length')
    const unit = fieldUnit(correction.unit ?? reading?.stated.unit ?? 'cm')
    return { typed: figureAs(basis === 'flat' ? mm / 2 : mm, unit), unit, basis }
  }
  if (reading === null) return null
  const unit = fieldUnit(reading.stated.unit ?? 'cm')
  const value = reading.basis === 'flat' ? reading.mm / 2 : reading.mm
  return { typed: figureAs(value, unit), unit, basis: reading.basis }
}
const toldLength = (correction: Correction | null, reading: MeasureReading | null): number | null =>
  correction !== null && 'mm' in correction && correction.mm !== undefined ? correction.mm : (reading?.mm ?? null)
const fieldUnit = (unit: LengthUnit): 'in' | 'cm' => (unit === 'in' ? 'in' : 'cm')

/** A field's figure as the point's own length: a flat girth is doubled. */
export const aroundMm = (value: number, unit: LengthUnit, basis: Basis): number => toMm(value, unit) * (basis === 'flat' ? 2 : 1)

/** The corrections with this point set anew; an earlier setting of the same place gives way. */
export function withPoint(
  judged: Pick<Judged, 'corrections'>,
  row: Pick<PointRow, 'point' | 'said'>,
  set: { mm: number; unit: LengthUnit; basis: Basis } | 'not-this-point'
): Correction[] {
  const reading = row.said[0]?.reading ?? null
  const others = withoutPoint(judged, row)
  if (reading === null) return set === 'not-this-point' ? others : [...others, { add: row.point, mm: set.mm, source: 'seller' }]
  const { text: quote, start, end } = reading.stated
  if (set === 'not-this-point') return [...others, { quote, start, end, point: null }]
  return [...others, { quote, start, end, point: row.point, mm: set.mm, unit: set.unit, basis: set.basis }]
}

/** A doubtful figure taken as one of its readings. */
export function withReading(
  { corrections }: Pick<Judged, 'corrections'>,
  { text: quote, start, end }: Stated,
  taken: { point: PointId; mm: number }
): Correction[] {
  const others = corrections.filter((one) => !(isQuoted(one) && one.quote === quote && one.start === start && one.end === end))
  return [...others, { quote, start, end, point: taken.point, mm: taken.mm }]
}

/** The corrections without what was set for this point. */
export function withoutPoint(
  { corrections }: Pick<Judged, 'corrections'>,
  { point, said }: Pick<PointRow, 'point' | 'said'>
): Correction[] {
  return corrections.filter((correction) => {
    if ('add' in correction) return correction.add !== point
    if (!isQuoted(correction)) return true
    if (correction.point === point) return false
    return !said.some(({ reading }) => isAbout(correction, reading))
  })
}

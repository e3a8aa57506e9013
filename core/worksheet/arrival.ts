/**
 * From the parcel to the finished piece: the buyer's own tape beside the seller's and what that does to the plan, what is looked at, and what the sewn
 * result teaches. Values alone: nothing is kept here, and every lesson says what stood before it, so that the caller can undo it. All lengths mm.
 */
import { mendingOf } from '../garment/condition.ts'
import { SD_MM } from '../garment/garment-as-worn.ts'
import type { GarmentInput, GarmentMeasure, Made } from '../garment/garment-input.ts'
import type { AlterationId } from '../ids/alterations.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import { isGirth, type PointId } from '../ids/points.ts'
import { isLength } from '../length.ts'
import type { Plan } from '../plan/plan.ts'
import type { ReckonRequest } from '../plan/request.ts'
import type { Reason } from '../words/reason.ts'
import { said, type Wording } from '../words/say.ts'

/** One point by one's own tape; girths around. */
export interface OwnFigure {
  point: PointId
  mm: number
}
export interface TapeBeside {
  point: PointId
  /** null: the seller did not tell it. */
  sellerMm: number | null
  ownMm: number
  /** Own less the seller's; + larger than was said. */
  differenceMm: number | null
  /** Further apart than two tapes usually are (twice the sd of both, common practice): measure again, then ask the seller. */
  isBeyond: boolean
  says: Reason
}
/** Differences under this are none: the finest mark. */
const SAME_MM = 2

const usualSd = (source: 'seller' | 'own', point: PointId): number => SD_MM[source][isGirth(point) ? 'girth' : 'length']
const meanOf = (measures: readonly GarmentMeasure[]): number | null =>
  measures.length === 0 ? null : measures.reduce((sum, { mm }) => sum + mm, 0) / measures.length

/** Point by point, in the order given. A figure that is no length is left out. */
export function besideSeller({ measures }: Pick<GarmentInput, 'measures'>, own: readonly OwnFigure[], wording: Wording): TapeBeside[] {
  return own
    .filter(({ mm }) => isLength(mm))
    .map(({ point, mm }): TapeBeside => {
      const sellerMm = meanOf(measures.filter((measure) => measure.point === point && measure.source === 'seller' && isLength(measure.mm)))
      const differenceMm = sellerMm === null ? null : mm - sellerMm
      const apart = Math.abs(differenceMm ?? 0)
      const isBeyond = apart > 2 * Math.hypot(usualSd('seller', point), usualSd('own', point))
      return {
        point,
        sellerMm,
        ownMm: mm,
        differenceMm,
        isBeyond,
        says: said({ code: codeOf(differenceMm, isBeyond), values: { mm: apart }, point }, wording)
      }
    })
}
function codeOf(differenceMm: number | null, isBeyond: boolean): string {
  if (differenceMm === null) return 'arrived.new'
  if (Math.abs(differenceMm) < SAME_MM) return 'arrived.same'
  if (differenceMm > 0) return isBeyond ? 'arrived.much-larger' : 'arrived.larger'
  return isBeyond ? 'arrived.much-smaller' : 'arrived.smaller'
}

/** The request with one's own figures: they stand in place of earlier ones of one's own; what the seller said stays beside them, and counts less. */
export function withOwnTape(request: ReckonRequest, own: readonly OwnFigure[]): ReckonRequest {
  const figures = own.filter(({ mm }) => isLength(mm))
  const measured = new Set(figures.map(({ point }) => point))
  return {
    ...request,
    garment: {
      ...request.garment,
      measures: [
        ...request.garment.measures.filter(({ point, source }) => source !== 'own' || !measured.has(point)),
        ...figures.map(({ point, mm }): GarmentMeasure => ({ point, mm, source: 'own' }))
      ]
    }
  }
}

export interface JobChange {
  id: AlterationId
  direction: 'less' | 'more'
  /** null: it was not, or is no longer, planned. */
  wasMm: number | null
  isMm: number | null
  says: Reason
}
export interface PlanChange {
  /** The same jobs by the same amounts, within the finest mark. */
  stays: boolean
  jobs: JobChange[]
  minutes: { was: number; is: number }
}

/** What one's own tape did to the plan: jobs that fell away, came, or changed their amount by a mark or more. */
export function planChange(was: Plan | undefined, is: Plan | undefined, wording: Wording, markMm = SAME_MM): PlanChange {
  const before = amountsOf(was)
  const after = amountsOf(is)
  const jobs = [...new Map([...before, ...after]).keys()].flatMap((key): JobChange[] => {
    const wasMm = before.get(key) ?? null
    const isMm = after.get(key) ?? null
    if (wasMm !== null && isMm !== null && Math.abs(isMm - wasMm) < markMm) return []
    const [id, direction] = key.split('/') as [AlterationId, 'less' | 'more']
    const code = isMm === null ? 'arrived.job-gone' : wasMm === null ? 'arrived.job-new' : 'arrived.job-changed'
    return [{ id, direction, wasMm, isMm, says: said({ code, values: { was: wasMm ?? 0, is: isMm ?? 0 }, alteration: id }, wording) }]
  })
  return { stays: jobs.length === 0, jobs, minutes: { was: was?.minutes ?? 0, is: is?.minutes ?? 0 } }
}
const amountsOf = (plan: Plan | undefined): Map<string, number> =>
  new Map((plan?.alterations ?? []).map(({ id, direction, amountMm }) => [`${id}/${direction}`, amountMm]))

export interface Inspected {
  /** What is looked at. */
  look: Reason
  /** What may be found out there and typed in, instead of what is assumed. */
  about?: keyof Made
}
interface LookRow {
  id: string
  kinds?: readonly GarmentKind[]
  when?(input: GarmentInput): boolean
  about?: keyof Made
}
const LEGS: GarmentKind[] = ['trousers', 'jeans', 'shorts', 'jumpsuit']
const SLEEVED: GarmentKind[] = ['shirt', 'dress', 'knit-top', 'jumper', 'jacket', 'coat', 'jumpsuit']
const KNITS: GarmentKind[] = ['knit-top', 'jumper']
const TAILORED: GarmentKind[] = ['jacket', 'coat', 'waistcoat']
const ZIPPED: GarmentKind[] = [...LEGS, 'skirt', 'dress', 'jacket', 'coat']
const HEMMED: GarmentKind[] = [...LEGS, 'skirt', 'dress', 'coat', 'jacket', 'shirt']
/** In the order they are looked at: closed, outside, inside, worn (common practice). Each is the message `inspect.<id>`. */
const LOOKS: readonly LookRow[] = [
  { id: 'pests' },
  { id: 'smell' },
  { id: 'light' },
  { id: 'label' },
  { id: 'seams' },
  { id: 'fork', kinds: LEGS },
  { id: 'pockets', kinds: [...LEGS, ...TAILORED] },
  { id: 'underarms', kinds: SLEEVED },
  { id: 'collar', kinds: ['shirt', 'jacket', 'coat'] },
  { id: 'elbows', kinds: ['shirt', 'jumper', 'jacket', 'coat'] },
  { id: 'cuffs', kinds: ['shirt', 'jumper', 'jacket', 'coat'] },
  { id: 'runs', kinds: KNITS },
  { id: 'pills', kinds: [...KNITS, 'coat'] },
  { id: 'zip', kinds: ZIPPED },
  { id: 'buttons', kinds: ['shirt', 'coat', 'jacket', 'waistcoat', 'trousers', 'jeans', 'skirt'] },
  { id: 'elastic', when: ({ made }) => made?.elasticWaist === true, about: 'waistStretchedMm' },
  { id: 'lining', kinds: [...TAILORED, 'skirt', 'dress'], about: 'lined' },
  { id: 'pads', kinds: ['jacket', 'coat'] },
  { id: 'back-seam', kinds: ['trousers', 'jeans', 'shorts', 'skirt', ...TAILORED], about: 'outletMm' },
  { id: 'side-seams', kinds: ['trousers', 'skirt', 'dress', 'shirt', ...TAILORED], about: 'seamAllowanceMm' },
  { id: 'hem', kinds: HEMMED, about: 'hemDepthMm' },
  { id: 'cuff-buttons', kinds: ['jacket', 'coat'], about: 'workingCuffButtons' },
  { id: 'leather', when: ({ cloth }) => cloth?.structure === 'leather' },
  { id: 'beads', when: ({ cloth }) => cloth?.traits?.includes('beaded') === true },
  { id: 'earlier' },
  { id: 'twist', kinds: LEGS }
]

/** What is looked at on such a garment when it comes, in order; with what the finding may replace of what was assumed. */
export function inspectionFor(input: GarmentInput, wording: Wording): Inspected[] {
  return LOOKS.filter(({ kinds, when }) => (kinds === undefined || kinds.includes(input.kind)) && (when === undefined || when(input))).map(
    ({ id, about }) => ({ look: said({ code: `inspect.${id}`, values: {} }, wording), ...(about === undefined ? {} : { about }) })
  )
}

/** A piece that was sewn: by which plan, and how long it took in all, minutes. */
export interface Sewn {
  request: ReckonRequest
  plan: Plan
  ownMinutes: number
}
/** What a finished piece teaches: what stood before, and what stands now. To undo it, write `was` back. */
export interface Lesson<Value> {
  was: Value
  is: Value
  /** Of how many pieces or figures. */
  from: number
}

/** A lesson of pace, with what it stands on: minutes taken and minutes of the table, mending taken off both. */
export interface PaceLesson extends Lesson<number> {
  own: number
  table: number
}

/** The table's minutes of a plan's jobs, without mending and at nobody's pace. */
export function tableMinutes({ request, plan }: Pick<Sewn, 'request' | 'plan'>): number {
  const pace = plan.aim === 'tailor' ? 1 : (request.means.pace ?? 1)
  return (plan.minutes - mendingOf(request.garment).minutes) / pace
}

/**
 * Own minutes ÷ the table's, over all pieces together, so that long work counts as long as it took. Mending is taken off both. null: no piece has
 * minutes to compare. `was`: the pace until now; not told, 1.
 */
export function paceTaught(sewn: readonly Sewn[], was = 1): PaceLesson | null {
  const usable = sewn
    .map((one) => ({ table: tableMinutes(one), own: one.ownMinutes - mendingOf(one.request.garment).minutes }))
    .filter(({ table, own }) => Number.isFinite(own) && table > 0 && own > 0)
  if (usable.length === 0) return null
  const sum = (of: 'own' | 'table') => usable.reduce((all, one) => all + one[of], 0)
  const [own, table] = [sum('own'), sum('table')]
  return { was, is: own / table, from: usable.length, own, table }
}

/** How far a seller's figures may be off, mm (sd), around for girths. */
export interface SellerSd {
  girth: number
  length: number
}
/** The usual sd counts as much as four figures measured again (common practice). */
const USUAL_COUNTS = 4

/**
 * What own tapes say of one seller's: the variance of all sellers, taken as four figures, together with the squares of the differences seen, less what
 * one's own tape is off by (the posterior mean scale of a normal variance). `was`: what stood until now; not told, the usual sd. null: nothing to compare.
 */
export function sellerTaught(beside: readonly TapeBeside[], was: SellerSd = SD_MM.seller): Lesson<SellerSd> | null {
  const seen = beside.filter(({ differenceMm }) => differenceMm !== null)
  if (seen.length === 0) return null
  const sdOf = (what: 'girth' | 'length'): number => {
    const mine = seen.filter(({ point }) => isGirth(point) === (what === 'girth'))
    const squares = mine.reduce((sum, { differenceMm }) => sum + (differenceMm ?? 0) ** 2 - SD_MM.own[what] ** 2, 0)
    return Math.sqrt((USUAL_COUNTS * was[what] ** 2 + Math.max(0, squares)) / (USUAL_COUNTS + mine.length))
  }
  return { was, is: { girth: sdOf('girth'), length: sdOf('length') }, from: seen.length }
}

/** What is measured in the shop and what it must be, on the tape that is held to it; and the price that pays. Pure. */
import { isGirth, type PointId } from '../../../core/ids/points.ts'
import { INCH_MM, type Units } from '../../../core/length.ts'
import type { Condition } from '../../../core/plan/conditions/conditions-of.ts'
import type { ListingShown } from '../shown.ts'
import { chanceIfOf, conditionsOf } from './listing-order.ts'

/** mm; null: open. */
export interface Range {
  least: number | null
  most: number | null
}
export interface CardRow {
  point: PointId
  /** Laid flat; null: it is no girth that is laid flat. */
  flat: Range | null
  /** All around, or along; null: whatever it is, it is not known what would suit. */
  whole: Range | null
}

/** A collar is opened and measured along. */
const isLaidFlat = (point: PointId): boolean => isGirth(point) && point !== 'neck'
/** People read a tape to half a centimetre or a quarter of an inch, mm. */
const READ_TO_MM: Record<Units, number> = { cm: 5, in: INCH_MM / 4 }
/** Below what any tape shows, mm. */
const ROUNDING = 1e-6

/** Rounded inwards to what a tape is read to, where that leaves anything: as the condition is said in words. */
function readable({ least, most }: Range, units: Units): Range {
  const step = READ_TO_MM[units]
  const up = least === null ? null : Math.ceil(least / step - ROUNDING) * step
  const down = most === null ? null : Math.floor(most / step + ROUNDING) * step
  return up === null || down === null || up < down ? { least: up, most: down } : { least, most }
}
const times = ({ least, most }: Range, share: number): Range => ({
  least: least === null ? null : least * share,
  most: most === null ? null : most * share
})

function rowOf(point: PointId, range: Range | null, units: Units): CardRow {
  if (range === null) return { point, flat: null, whole: null }
  if (!isLaidFlat(point)) return { point, flat: null, whole: readable(range, units) }
  const flat = readable(times(range, 1 / 2), units)
  return { point, flat, whole: times(flat, 2) }
}

/** What decides and is not told; where nothing can be judged yet, also what is asked for and has no range. */
export function cardRows(listing: ListingShown, units: Units): CardRow[] {
  const ranged = conditionsOf(listing).flatMap(({ point, ...range }) => (point === undefined ? [] : [rowOf(point, range, units)]))
  const { now } = listing
  if (now?.verdict !== 'too-little-told') return ranged
  const others = now.ask.flatMap(({ point }) => (point === undefined || ranged.some((row) => row.point === point) ? [] : [point]))
  return [...ranged, ...others.map((point) => rowOf(point, null, units))]
}

/** What the person measures of their own. */
export const ownConditions = (listing: ListingShown): Condition[] => conditionsOf(listing).filter(({ body }) => body !== undefined)

/**
 * The asking prices up to which buying pays on average: as things stand, and once all that was measured suits. What fails costs its price and
 * postage. null: it can't be said.
 */
export function pricesThatPay(listing: ListingShown): { now: number | null; ifSo: number | null } {
  const worth = listing.now?.worth ?? null
  const chance = chanceIfOf(listing)
  const postage = listing.money.postage ?? 0
  const ifSo = worth === null || worth.upTo === null || chance === null ? null : Math.max(0, chance * (worth.upTo + postage) - postage)
  return { now: worth?.risk ?? null, ifSo }
}

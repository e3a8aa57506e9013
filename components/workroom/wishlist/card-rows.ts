/** What is measured in the shop and what it must be, on the tape that is held to it; and the price that pays. Pure. */
import type { PointId } from '../../../core/ids/points.ts'
import type { Units } from '../../../core/length.ts'
import { onTape } from '../../../core/plan/answer/conditions-said.ts'
import { payingAt } from '../../../core/plan/answer/worth.ts'
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

const twice = ({ least, most }: Range): Range => ({
  least: least === null ? null : least * 2,
  most: most === null ? null : most * 2
})

function rowOf(point: PointId, range: Range | null, units: Units): CardRow {
  if (range === null) return { point, flat: null, whole: null }
  const { flat, ...shown } = onTape({ point, ...range }, units)
  return flat ? { point, flat: shown, whole: twice(shown) } : { point, flat: null, whole: shown }
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

/** The asking prices up to which buying pays on average: as things stand, and once all that was measured suits. null: it can't be said. */
export function pricesThatPay(listing: ListingShown): { now: number | null; ifSo: number | null } {
  const worth = listing.now?.worth ?? null
  const chance = chanceIfOf(listing)
  return { now: worth?.risk ?? null, ifSo: worth === null || chance === null ? null : payingAt(worth, listing.money.postage ?? 0, chance) }
}

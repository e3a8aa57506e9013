/** What it comes to in money: all the person's own numbers, nothing looked up. */
import { mendingOf } from '../../garment/condition.ts'
import type { GarmentInput } from '../../garment/garment-input.ts'
import { PLAIN_STAKES, type Stakes } from '../ask/ask.ts'
import type { Means } from '../means.ts'

export interface Worth {
  /** Price, postage, notions, own hours or the tailor. */
  spend: number
  /** What such a garment is worth to the person; null: not told. */
  against: number | null
  /** The asking price at which it would break even; null: not told. */
  upTo: number | null
  /** The asking price up to which buying pays on average, at the chance that it works out: what fails costs its price and postage; null: not told. */
  risk: number | null
  /** Does `risk` reckon with altering what seems right as it is and may turn out not to be? */
  riskOrAltered?: true
}

/** What mending and care alone cost: bought things and own hours; null where an hour's worth is missing. */
export function mendingCost(input: GarmentInput, means: Means): number | null {
  const { minutes, cost } = mendingOf(input)
  if (minutes > 0 && means.hourWorth === undefined) return null
  return cost + (minutes / 60) * (means.hourWorth ?? 0)
}

/** The work on a garment that seems right as it is where it turns out not to be: an hour of one's own (from memory). */
const SMALL_WORK_HOURS = 1

/**
 * null without a price, or where the work has no price yet. `chance`: that the advised plan, or doing nothing, works out. `orAltered`, where
 * nothing is to be done as things stand: that doing nothing or some of one's own work does.
 */
export function worthOf(
  price: GarmentInput['price'],
  workCost: number | null,
  means: Means,
  chance: number | null,
  orAltered: number | null = null
): Worth | null {
  if (price === undefined || workCost === null) return null
  const postage = price.postage ?? 0
  const rest = postage + workCost
  const against = means.garmentWorth ?? null
  const left = against === null ? null : against - workCost
  const leftAltered = left === null || means.hourWorth === undefined ? null : left - SMALL_WORK_HOURS * means.hourWorth
  const rescued =
    chance === null || orAltered === null || leftAltered === null ? 0 : Math.max(0, orAltered - chance) * Math.max(0, leftAltered)
  return {
    spend: price.amount + rest,
    against,
    upTo: against === null ? null : Math.max(0, against - rest),
    risk: left === null || chance === null ? null : Math.max(0, chance * left + rescued - postage),
    ...(rescued > 0 ? { riskOrAltered: true as const } : {})
  }
}

/** The asking price up to which buying would pay on average at another chance: what fails costs its price and postage; null: not told. */
export const payingAt = ({ upTo }: Worth, postage: number, chance: number): number | null =>
  upTo === null ? null : Math.max(0, chance * (upTo + postage) - postage)

/** What is at stake in buying: in money where all of it is known, else a plain score. */
export function stakesOf(price: GarmentInput['price'], worth: Worth | null): Stakes {
  if (price === undefined || worth === null || worth.against === null) return PLAIN_STAKES
  return { gain: Math.max(0, worth.against - worth.spend), loss: price.amount + (price.postage ?? 0), unit: 'money' }
}

/** What the person can do and pay. */
import type { AlterationId } from '../ids/alterations.ts'

export type Level = 1 | 2 | 3 | 4 | 5
/** A tailor's. */
export const HARDEST: Level = 5
export interface Means {
  /** The hardest level done alone: a bound. */
  level: Level
  /** Is a tailor at hand? */
  tailor: boolean
  /** Rescues this person would wear; not told: none. */
  acceptRescues?: AlterationId[]
  /** Own minutes ÷ the table's. */
  pace?: number
  /** The finest mark: 2, or 3.175 (1/8 in). */
  markMm?: number
  hourWorth?: number
  tailorPrices?: Partial<Record<AlterationId, number>>
  notions?: Partial<Record<AlterationId, number>>
  garmentWorth?: number
}
/** The person's own limit replaces the default, within what is physically there; 0 forbids. */
export type OwnLimits = Partial<Record<AlterationId, number>>

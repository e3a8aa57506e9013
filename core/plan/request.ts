/** What is asked of the planner. All lengths mm, girths around. */
import type { GarmentInput } from '../garment/garment-input.ts'
import type { Favourite, Tried, Wearer } from '../wearer/wearer.ts'
import type { Means, OwnLimits } from './means.ts'

export interface ReckonRequest {
  garment: GarmentInput
  wearer?: Wearer
  favourite?: Favourite
  /** Pinched or gaping on the body. */
  tried?: Tried[]
  means: Means
  limits?: OwnLimits
}

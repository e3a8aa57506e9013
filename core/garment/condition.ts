/** Mending and care: usual minutes and bought things, when the person has not said otherwise. From memory; costs are 0 until told. */
import type { ConditionId, GarmentInput } from './garment-input.ts'

export const CONDITION_WORK: Record<ConditionId, { minutes: number; cost: number }> = {
  'replace-button': { minutes: 10, cost: 0 },
  'sew-shank': { minutes: 8, cost: 0 },
  'close-seam': { minutes: 15, cost: 0 },
  darn: { minutes: 30, cost: 0 },
  patch: { minutes: 40, cost: 0 },
  'replace-zip': { minutes: 75, cost: 0 },
  'replace-elastic': { minutes: 30, cost: 0 },
  'lift-crease': { minutes: 20, cost: 0 },
  'lift-fade': { minutes: 30, cost: 0 },
  'de-pill': { minutes: 20, cost: 0 },
  're-line-pocket': { minutes: 45, cost: 0 },
  clean: { minutes: 30, cost: 0 },
  dye: { minutes: 60, cost: 0 },
  're-proof': { minutes: 40, cost: 0 },
  'polish-leather': { minutes: 30, cost: 0 },
  're-heel': { minutes: 30, cost: 0 },
  'block-knit': { minutes: 30, cost: 0 },
  'treat-pests': { minutes: 30, cost: 0 },
  'collar-turn': { minutes: 60, cost: 0 }
}

/**
 * All the mending and care that a garment needs: minutes, and money for bought things.
 * Felt does not come back: blocking it is no job (a how-to on felted wool).
 */
export const mendingOf = (input: GarmentInput): { minutes: number; cost: number } =>
  (input.condition ?? [])
    .filter(({ job }) => !(job === 'block-knit' && input.cut?.knit === 'felted'))
    .reduce(
      (sum, { job, minutes, cost }) => ({
        minutes: sum.minutes + (minutes ?? CONDITION_WORK[job].minutes),
        cost: sum.cost + (cost ?? CONDITION_WORK[job].cost)
      }),
      { minutes: 0, cost: 0 }
    )

import type { GarmentInput, GarmentMeasure, Made } from '../../../core/garment/garment-input.ts'
import type { AlterationId } from '../../../core/ids/alterations.ts'
import type { GarmentKind } from '../../../core/ids/kinds.ts'
import type { PointId } from '../../../core/ids/points.ts'
import type { ReckonRequest, Verdict } from '../../../core/reckon.ts'

/** One case: what is asked, what must come of it, and what it teaches. */
export interface PlanCase {
  name: string
  teaches: string
  request: ReckonRequest
  expect: {
    verdict: Verdict
    /** The advised plan's jobs, exactly these ids, each amount within its range in mm. */
    advised?: Partial<Record<AlterationId, [number, number]>>
    /** Some plan of this aim has exactly these jobs. */
    plan?: { aim: 'least-work' | 'closest-fit' | 'tailor'; jobs: Partial<Record<AlterationId, [number, number]>> }
    /** In no plan. */
    forbidden: AlterationId[]
    /** No plan has any job. */
    noJobs?: true
    /** Points that stay wrong in the advised plan, exactly these. */
    staysWrong?: PointId[]
    /** Codes that must be among the reasons. */
    because?: string[]
  }
}

/** A garment with every figure told by the seller. */
export function garment(
  kind: GarmentKind,
  figures: Partial<Record<PointId, number>>,
  made: Partial<Made> = {},
  more: Partial<GarmentInput> = {}
): GarmentInput {
  const measures = Object.entries(figures).map(([point, mm]): GarmentMeasure => ({ point: point as PointId, mm, source: 'seller' }))
  return { kind, measures, made, ...more }
}

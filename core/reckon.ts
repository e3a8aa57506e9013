import type { GarmentInput, Made } from './garment/garment-input.ts'
import type { Issue } from './garment/issue.ts'
import type { PointId } from './garment/points.ts'
import type { Means, OwnLimits } from './plan/means.ts'
import type { Misfit, Plan } from './plan/plan.ts'
import type { Favourite, Tried, Wearer } from './wearer/wearer.ts'
import type { Reason } from './words/reason.ts'

export interface ReckonRequest {
  garment: GarmentInput
  wearer?: Wearer
  favourite?: Favourite
  tried?: Tried[]
  means: Means
  limits?: OwnLimits
}
export type Verdict = 'wears-as-is' | 'alters-to-fit' | 'needs-a-tailor' | 'comes-close' | 'leave-it' | 'too-little-told'
export interface Band {
  least: number
  ideal: number
  most: number
}
export interface GapShown {
  point: PointId
  /** The tape today. */
  garmentMm: number
  from: 'seller' | 'own' | 'label' | 'inferred'
  sdMm: number
  band: Band | null
  /** + too big, − too small, 0 inside. */
  gapMm: number
}
export interface Ask {
  point?: PointId
  about?: keyof Made | 'stretch' | 'fibre'
  worth: number
  unit: 'money' | 'score'
  question: string
}
export interface Worth {
  spend: number
  against: number | null
  upTo: number | null
}
export interface Reckoning {
  verdict: Verdict
  because: Reason[]
  gaps: GapShown[]
  asItIs: { misfit: Misfit[]; chance: number | null }
  plans: Plan[]
  chance: number | null
  ask: Ask[]
  worth: Worth | null
  cautions: string[]
  issues: Issue[]
}
/** Temporary until the planner lands: the shape only. */
export function reckon(
  _request: ReckonRequest,
  _options?: { outlook?: boolean; units?: 'cm' | 'in'; language?: string; currency?: string }
): Reckoning {
  throw new Error('not built yet')
}

/** What is told of a garment, from a listing, a label or one's own tape. All lengths mm, girths around. */
import type { Cut } from '../ids/cut.ts'
import type { GarmentKind } from '../ids/kinds.ts'
import type { PointId } from '../ids/points.ts'
import type { SeamId } from '../ids/seams.ts'
import type { Whose } from './model/whose.ts'

export const TRAITS = [
  'rigid',
  'denim',
  'pile',
  'nap',
  'check',
  'stripe',
  'large-print',
  'sheer',
  'slippery',
  'fraying',
  'beaded',
  'pleated',
  'suede',
  'vinyl',
  'coated',
  'silk',
  'taffeta'
] as const
export type Trait = (typeof TRAITS)[number]
export type Structure = 'woven' | 'knit' | 'leather'

export const CONDITIONS = [
  'replace-button',
  'sew-shank',
  'close-seam',
  'darn',
  'patch',
  'replace-zip',
  'replace-elastic',
  'lift-crease',
  'lift-fade',
  'de-pill',
  're-line-pocket',
  'clean',
  'dye',
  're-proof',
  'polish-leather',
  're-heel',
  'block-knit',
  'treat-pests',
  'collar-turn'
] as const
export type ConditionId = (typeof CONDITIONS)[number]

export type Source = 'seller' | 'own' | 'label'
export const USES = ['ordinary', 'child', 'protective', 'child-sleepwear', 'medical-compression'] as const
export type Use = (typeof USES)[number]

export interface Cloth {
  fibres?: { fibre: string; percent: number | null }[]
  structure?: Structure
  /** How far it stretches, % of its length at rest. */
  stretchPercent?: number
  /** Not told: taken as washed, and said as assumed. */
  washed?: boolean
  traits?: Trait[]
}

export interface Made {
  tailored: boolean
  lined: boolean
  backSeam: boolean
  /** true: every seam. */
  felledSeams: boolean | SeamId[]
  seamAllowanceMm: number | Partial<Record<SeamId, number>>
  /** The back seam's own allowance; wins over seamAllowanceMm['centre-back']. */
  outletMm: number
  /** All the cloth turned up, folds included. */
  hemDepthMm: number
  hemKind: 'plain' | 'original-edge' | 'blind' | 'knit'
  /** Waistband to hip level. */
  hipDepthMm: number
  backPocketGapMm: number
  pocketDepthMm: number
  taperLengthMm: number
  slantPockets: boolean
  darts: boolean
  elasticWaist: boolean
  /** An elastic waist pulled out as far as it goes, around. Not told: a quarter more than it lies. */
  waistStretchedMm: number
  skirtShape: 'straight' | 'flared' | 'circle' | 'pleated'
  workingCuffButtons: boolean
  /** Short, three-quarter or none: how long they are is the cut, and no fault. */
  shortSleeves: boolean
  overlapMm: number
  /** Where it opens: zips, plackets, vents. */
  opens: PointId[]
}

export interface GarmentMeasure {
  point: PointId
  mm: number
  /** Around, not flat. Not told: by source and point. */
  sdMm?: number
  source: Source
  side?: 'left' | 'right'
}

export interface GarmentInput {
  kind: GarmentKind
  /** Whose sizes it is cut for, where that is told. */
  whose?: Whose
  measures: GarmentMeasure[]
  cloth?: Cloth
  made?: Partial<Made>
  /** As told or set by the person; else seen in the figures, else assumed by kind. */
  cut?: Cut
  use?: Use
  condition?: { job: ConditionId; minutes?: number; cost?: number }[]
  price?: { amount: number; postage?: number }
}

/** A plan: the jobs, what comes of them and what stays wrong. All lengths mm. */
import type { AlterationId } from '../ids/alterations.ts'
import type { PointId } from '../ids/points.ts'
import type { SeamId } from '../ids/seams.ts'

export type Aim = 'least-work' | 'closest-fit' | 'tailor'

export interface Job {
  id: AlterationId
  /** Always positive, the largest where several points change. */
  amountMm: number
  direction: 'less' | 'more'
  /** Each point it is meant to change, signed: + larger or longer. */
  amounts: Partial<Record<PointId, number>>
  /** How far each stitching line moves at its deepest; + inwards; a hem's fold is a line. */
  lines: { seam: SeamId; offsetMm: number; side?: 'left' | 'right' }[]
  limitMm: number
  limitBecause: string
  /** Past a soft limit: warned, not forbidden. */
  softLimit: boolean
  /** It shows: a panel, a band, elastic where none was. */
  rescue?: true
  /** The misfit that would stay without this job (its effect subtracted). */
  withoutIt: { point: PointId; mm: number }[]
}

export interface Misfit {
  point: PointId
  /** + too big, − too small. */
  mm: number
  because: string
}

export interface Plan {
  aim: Aim
  alterations: Job[]
  /** Every told point, by tape. */
  after: { point: PointId; mm: number }[]
  misfit: Misfit[]
  /** Share of draws in which some plan within this plan's means leaves no misfit; null without outlook. */
  chance: number | null
  /** 0: no jobs. */
  level: 0 | 1 | 2 | 3 | 4 | 5
  minutes: number
  /** The work alone; null: a price is missing. */
  cost: number | null
}

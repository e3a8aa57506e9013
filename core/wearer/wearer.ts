/** Who it is for: a body, a fit, and garments that are liked. All lengths mm, girths around. */

import type { Cloth } from '../garment/garment-input.ts'
import type { Cut } from '../ids/cut.ts'
import type { PointId } from '../ids/points.ts'
import type { Body, Fit, Sizes } from './body.ts'

export interface Wearer {
  body: Body
  fit: Fit
  /** Whose sizes they wear; not said: both, as doubt. */
  sizes?: Sizes
  /** The person's own ease (or what the diary taught), instead of the table's. */
  ease?: Partial<Record<PointId, { mm: number; sdMm: number; from: 'own' | 'diary' }>>
}

export interface Favourite {
  measures: { point: PointId; mm: number }[]
  /** Its own cloth and cut: a stretch favourite beside rigid cloth is not like for like. */
  cloth?: Cloth
  cut?: Cut
  toleranceMm?: Partial<Record<PointId, number | { under: number; over: number }>>
}

/** Pinched or gaping on the body: evidence about garment and target together. */
export interface Tried {
  point: PointId
  spareMm?: number
  shortMm?: number
  sdMm?: number
}

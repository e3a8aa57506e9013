/** A listing that tells little, and what a tailor makes of it. All lengths mm, girths around. */
import type { PointId } from '../../../core/ids/points.ts'
import type { Level } from '../../../core/plan/means.ts'
import type { Verdict } from '../../../core/reckon.ts'
import type { BodyMeasureId, Fit, Sizes } from '../../../core/wearer/body.ts'

/** An end that a tailor would put somewhere between these; null: that end does not matter. */
export type End = readonly [number, number] | null
export interface ToldCase {
  name: string
  text: string
  body: Partial<Record<BodyMeasureId, number>>
  sizes?: Sizes
  fit: Fit
  level: Level
  tailor: boolean
  /** Any of these will do. */
  verdict: readonly Verdict[]
  asFarAsTold: boolean
  /** Of the untold points that truly decide. */
  conditions: readonly { point: PointId; least: End; most: End }[]
  /** Any of these may be asked first; empty: nothing need be. */
  askFirst: readonly string[]
  why: string
}

/**
 * Whole cases as a tailor sees them: the seller's text, the person, and what a good tailor would say, argued in trade terms. Written before any run
 * by someone who had not read the code; every text, figure and person is invented. Lengths and girths in mm, girths around: a flat figure in a text
 * is doubled in the argument.
 *
 * Where the argument departs from the tables it says why: trousers 90 too long can't be walked in, so a child's are turned up though spare length is
 * wanted; a maxi skirt ending at 0.065 of the stature is a length one wears; a fitted blazer 230 over the waist hangs like a box whatever its chest
 * measures; a women's blazer 40 shorter than half of nape to floor is a cut; a low band is kept at the large end of what such bands measure; a told
 * inch at each side gives more than ready-made seams do.
 */
import type { PointId } from '../../../core/ids/points.ts'
import type { Level } from '../../../core/plan/means.ts'
import type { Verdict } from '../../../core/reckon.ts'
import type { BodyMeasureId, Fit, Sizes } from '../../../core/wearer/body.ts'

export interface TailorJob {
  about: string
  point: PointId
  /** How much less or more of it, mm: from, to. */
  lessMm?: [number, number]
  moreMm?: [number, number]
}

export interface TailorCase {
  name: string
  text: string
  body: Partial<Record<BodyMeasureId, number>>
  sizes?: Sizes
  fit: Fit
  level: Level
  tailor: boolean
  /** Any of these is a good answer. */
  verdict: Verdict | Verdict[]
  jobs: TailorJob[]
  /** Points that must not be called wrong as the garment is. */
  notWrong: PointId[]
  /** Points that must. */
  wrong?: PointId[]
  /** What must be asked of the seller. */
  ask?: string[]
  why: string
}

/** A doubt about what was told: where it stands, what it could mean, and a sentence that says what to do next. */

import type { PointId } from '../ids/points.ts'
import type { LengthUnit } from '../length.ts'
import type { Values } from '../words/reason.ts'

/** What was written, and where: text.slice(start, end) reproduces `text`. */
export interface Stated {
  text: string
  start: number
  end: number
  value: number
  unit: LengthUnit | null
}

export interface Issue {
  code: string
  stated?: Stated
  /** Each way it could be read; a page offers them to choose from. */
  readings: { point: PointId; mm: number }[]
  /** What say() needs to say it again in other units. */
  values: Values
  text: string
}

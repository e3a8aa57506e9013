/** What is wanted at a point, before the cloth. All mm. */
import type { PointId } from '../ids/points.ts'
import type { Saying } from '../words/reason.ts'
import type { BodyMeasureId } from './body.ts'

export interface Want {
  least: number
  /** null: any figure inside the bounds will do, so the garment's own is the best. */
  ideal: number | null
  most: number
  /** The cut stands free of the body here: `most` binds nothing. */
  freeAbove?: boolean
  /** How unsure the whole band is, mm (sd): the body's own measuring and inferring. */
  sdMm: number
  /** How unsure the person's own taste leaves the whole band, mm (sd); not given: told or learnt. It bears on the chance alone. */
  tasteSdMm?: number
  /** How unsure the lower edge is beside that, mm (sd): elastic may go further or less far. */
  leastSdMm?: number
  from: 'body' | 'favourite' | 'bound'
  /** The body measure it stands on, and what it is, mm. */
  measure?: BodyMeasureId
  bodyMm?: number
  /** Not told of the body but worked out from these. */
  basedOn: BodyMeasureId[]
  /** The body cannot pass or sit below this, whatever is liked. */
  bound?: number
  because: Saying[]
}
export type Target = ReadonlyMap<PointId, Want>

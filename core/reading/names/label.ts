/** What a figure can be of. */
import type { PointName } from '../languages/lexicon.ts'

export type LabelRole = 'point' | 'detail' | 'thing' | 'height' | 'letDown' | 'letOut' | 'seamAllowance' | 'fault'
export interface Label {
  from: number
  to: number
  role: LabelRole
  /** More than one: bust/waist. */
  points: PointName[]
  basis: 'flat' | 'around' | null
  weak: boolean
  /** A one-letter name, settled by what its figure can be. */
  letter: string | null
}

/** Something the core has to say: a code with values. `text` is made from it by say(), nowhere else. */
import type { AlterationId } from '../ids/alterations.ts'
import type { PointId } from '../ids/points.ts'

export type Values = Record<string, number | string>
/** What say() needs. Lengths are mm, minutes are minutes, chances 0..1, money in the person's currency. */
export interface Saying {
  code: string
  values: Values
  point?: PointId
  alteration?: AlterationId
}
export interface Reason extends Saying {
  text: string
}

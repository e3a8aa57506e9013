/** Issues of a reading: a code with values, its sentence made by say(). */
import type { Issue, Stated } from '../garment/issue.ts'
import type { PointId } from '../ids/points.ts'
import type { Units } from '../length.ts'
import type { Values } from '../words/reason.ts'
import { say, type Wording } from '../words/say.ts'

export type ReadingIssue =
  | 'reading.no-name'
  | 'reading.no-unit'
  | 'reading.unit-judged'
  | 'reading.divided-by-zero'
  | 'reading.unclear-number'
  | 'reading.negative'
  | 'reading.too-large'
  | 'reading.too-small'
  | 'reading.contradiction'
  | 'reading.basis-doubt'
  | 'reading.units-disagree'
  | 'reading.no-garment'
  | 'reading.no-single-listing'
  | 'reading.several-garments'
  | 'reading.several-sizes'
  | 'reading.percent-sum'
  | 'reading.structured-broken'
  | 'reading.markup'
  | 'reading.long-text'

/** What seems to be no garment, or a page of many things: nothing is measured, and it is asked about before any answer. */
export const noListingIn = (issues: readonly Issue[]): Issue | undefined =>
  issues.find(({ code }) => code === 'reading.no-garment' || code === 'reading.no-single-listing')

/** Makes an issue; `units` only set its sentence. */
export function issue(
  code: ReadingIssue,
  values: Values,
  more: { stated?: Stated; readings?: { point: PointId; mm: number }[] },
  units: Units
): Issue {
  return {
    code,
    ...(more.stated === undefined ? {} : { stated: more.stated }),
    readings: more.readings ?? [],
    values,
    text: say({ code, values }, { units })
  }
}

/** The same reading, its doubts said in these words: a reading is made once, whatever language it is shown in. */
export const withIssuesIn = <T extends { issues: readonly Issue[] }>(reading: T, wording: Wording): T => ({
  ...reading,
  issues: reading.issues.map((one) => ({ ...one, text: say({ code: one.code, values: one.values }, wording) }))
})

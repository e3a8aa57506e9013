/** Told figures that cannot all be true of one garment. Nothing is thrown away: the person is shown both and asked to look. */

import type { PointId } from '../ids/points.ts'
import { said, type Wording } from '../words/say.ts'
import { type Garment, isTold } from './garment-as-worn.ts'
import type { Issue } from './issue.ts'

/** `small` is never larger than `large`, but for what a tape may be off. */
const ORDER: { small: PointId; large: PointId; spareMm: number }[] = [
  { small: 'thigh', large: 'hip', spareMm: 0 },
  { small: 'knee', large: 'thigh', spareMm: 20 },
  { small: 'inseam', large: 'outseam', spareMm: 0 },
  { small: 'sleeveUnderarm', large: 'sleeveLength', spareMm: 0 },
  { small: 'sleeveLength', large: 'sleeveFromCentreBack', spareMm: 0 },
  { small: 'bicep', large: 'chest', spareMm: 0 },
  { small: 'cuff', large: 'bicep', spareMm: 30 },
  { small: 'frontRise', large: 'outseam', spareMm: 0 }
]
/** Waist and hip this far apart are more likely one measured flat, one around. */
const DOUBLE = 1.7

export function contradictions(garment: Garment, wording: Wording): Issue[] {
  const issues: Issue[] = []
  const both = (one: PointId, other: PointId, code: string) => {
    const first = garment.points.get(one)
    const second = garment.points.get(other)
    if (first === undefined || second === undefined) return
    const values = { point: one, other, first: first.mm, second: second.mm }
    issues.push({
      code,
      readings: [
        { point: one, mm: first.mm },
        { point: other, mm: second.mm }
      ],
      values,
      text: said({ code, values }, wording).text
    })
  }
  for (const { small, large, spareMm } of ORDER) {
    const one = garment.points.get(small)
    const other = garment.points.get(large)
    if (isTold(one) && isTold(other) && one.mm > other.mm + spareMm) both(small, large, 'garment.contradiction')
  }
  for (const [one, other] of [
    ['waist', 'hip'],
    ['waist', 'chest'],
    ['hem', 'chest']
  ] as [PointId, PointId][]) {
    const first = garment.points.get(one)
    const second = garment.points.get(other)
    const flared = one === 'hem' && garment.kind === 'coat'
    if (isTold(first) && isTold(second) && !flared && Math.max(first.mm / second.mm, second.mm / first.mm) > DOUBLE)
      both(one, other, 'garment.flat-and-around')
  }
  return issues
}

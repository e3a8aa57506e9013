/** Told figures that cannot all be true of one garment. Nothing is thrown away: the person is shown both and asked to look. */

import type { PointId } from '../ids/points.ts'
import type { Values } from '../words/reason.ts'
import { said, type Wording } from '../words/say.ts'
import { type Garment, isTold } from './garment-as-worn.ts'
import type { Issue } from './issue.ts'
import { oddFigures } from './model/odd-figures.ts'

/** Laws of geometry: a part is never larger than the whole it is part of. What is a matter of proportion, the model of garments tells. */
const PARTS: [part: PointId, whole: PointId][] = [
  // one leg, and both with the seat between
  ['thigh', 'hip'],
  ['inseam', 'outseam'],
  ['frontRise', 'outseam'],
  ['sleeveUnderarm', 'sleeveLength'],
  ['sleeveLength', 'sleeveFromCentreBack']
]

export function contradictions(garment: Garment, wording: Wording): Issue[] {
  const issues: Issue[] = []
  const told = new Map([...garment.points].filter(([, taken]) => isTold(taken)).map(([point, { mm }]) => [point, mm]))
  const both = (point: PointId, other: PointId, code: string, more: Values = {}): void => {
    const [first, second] = [garment.points.get(point)?.mm, garment.points.get(other)?.mm]
    if (first === undefined || second === undefined) return
    const values = { point, other, first, second, ...more }
    const readings = [
      { point, mm: first },
      { point: other, mm: second }
    ]
    issues.push({ code, readings, values, text: said({ code, values }, wording).text })
  }
  const named = new Set<PointId>()
  for (const [part, whole] of PARTS) {
    if ((told.get(part) ?? 0) <= (told.get(whole) ?? Number.POSITIVE_INFINITY)) continue
    both(part, whole, 'garment.contradiction')
    named.add(part).add(whole)
  }
  if (garment.belief === undefined) return issues
  for (const { point, beside, likely, how, sizes } of oddFigures(garment.belief, new Set(told.keys()))) {
    if (named.has(point)) continue
    if (how === 'flat-and-around') both(point, beside, 'garment.flat-and-around')
    else if (how === 'larger') both(point, beside, 'garment.elsewhere.larger', { sizes, likely: likely.mm })
    else both(point, beside, 'garment.elsewhere.smaller', { sizes, likely: likely.mm })
  }
  return issues
}

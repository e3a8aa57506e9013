/** Which part of a body a seller’s name is of, in a chart of bodies. */

import type { BodyMeasureId } from '../../wearer/body.ts'
import type { PointName } from '../languages/lexicon.ts'
import type { Label } from '../names/label.ts'
import type { Node } from '../text/phrase-trie.ts'
import type { Term } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'

const BODIES: Partial<Record<PointName, BodyMeasureId>> = {
  chest: 'bustGirth',
  underbust: 'underbustGirth',
  waist: 'waistGirth',
  hip: 'hipGirth',
  inseam: 'insideLegLength',
  legLength: 'insideLegLength'
}

export function bodyNamed({ role, points }: Label): BodyMeasureId | null {
  if (role === 'height') return 'stature'
  return role === 'point' && points.length === 1 ? (BODIES[points[0] as PointName] ?? null) : null
}

/** Laid flat, or a place that no chart of bodies names: a garment alone has it. */
export const isOfGarment = ({ role, basis, points }: Label): boolean =>
  role === 'point' && (basis === 'flat' || points.some((point) => BODIES[point] === undefined))

/** “to fit bust”: the name that the phrase itself ends with. */
export function bodyInside({ tokens, trie }: TextRead, { from, to }: Term): BodyMeasureId | null {
  for (let start = from + 1; start < to; start++) {
    let node: Node | undefined = trie.from(tokens[start]?.text ?? '')?.root
    for (let at = start + 1; at < to && node !== undefined; at++) node = node.next.get(tokens[at]?.text ?? '')
    const point = node?.meaning?.senses.find((sense) => sense.role === 'point')?.point
    const body = point === undefined ? undefined : BODIES[point]
    if (body !== undefined) return body
  }
  return null
}

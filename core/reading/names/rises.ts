/** Front and back rise told in one name. */
import type { PointName } from '../languages/lexicon.ts'
import { means, type Term, termAt } from '../text/terms.ts'
import type { TextRead } from '../text/text.ts'
import { isOneOf } from '../text/tokens.ts'

const JOINTS = new Set(['/', '&', '+'])
export const RISES = new Set<PointName>(['rise', 'frontRise', 'backRise'])

/** front/back rise 11/15 · rise (front & back): two names in one. */
export function bothRises(
  { tokens, terms }: TextRead,
  term: Term,
  name: PointName
): { from: number; to: number; points: PointName[] } | null {
  const joint = (at: number): boolean => JOINTS.has(tokens[at]?.text ?? '') || means(termAt(terms, at), 'and')
  const side = (one: Term | undefined): PointName | null =>
    one && !means(one, 'point') ? (means(one, 'front') ? 'frontRise' : means(one, 'back') ? 'backRise' : null) : null
  const before = joint(term.from - 1) ? termAt(terms, term.from - 2) : undefined
  const first = side(before)
  if (before && first !== null && name !== 'rise' && first !== name) return { from: before.from, to: term.to, points: [first, name] }
  let at = term.to
  if (isOneOf(tokens[at], '([')) at++
  const own = name === 'rise' ? termAt(terms, at) : undefined
  const start = name === 'rise' ? side(own) : name
  if (name === 'rise') at = own?.to ?? at
  const after = joint(at) ? termAt(terms, at + 1) : undefined
  const second = side(after)
  return after && start !== null && second !== null && start !== second ? { from: term.from, to: after.to, points: [start, second] } : null
}

/** What looks like a slip in a body's figures. They are kept all the same: a doubt asks, it does not refuse. Pure. */
import { fromMm, toMm } from '../../../core/length.ts'
import type { BodyMeasureId } from '../../../core/wearer/body.ts'
import type { Values } from '../../../core/words/reason.ts'
import { NOT_LARGER, USUAL_MM } from './body-places.ts'

export interface Doubt {
  code: string
  values: Values
}

/** Doubts about one measure, given the others. */
export function doubtsOf(measure: BodyMeasureId, body: ReadonlyMap<BodyMeasureId, number>, units: 'cm' | 'in'): Doubt[] {
  const mm = body.get(measure)
  if (mm === undefined) return []
  const [least, most] = USUAL_MM[measure]
  const doubts: Doubt[] = []
  if (mm < least || mm > most) {
    const other = units === 'cm' ? 'in' : 'cm'
    const inOther = toMm(fromMm(mm, units), other)
    const slip = inOther >= least && inOther <= most
    doubts.push({ code: slip ? `body.doubt.unit-${other}` : 'body.doubt.unusual', values: { measure, mm, least, most } })
  }
  for (const [smaller, larger] of NOT_LARGER) {
    const [small, large] = [body.get(smaller), body.get(larger)]
    if (measure !== smaller && measure !== larger) continue
    if (small !== undefined && large !== undefined && small > large) doubts.push({ code: 'body.doubt.larger', values: { smaller, larger } })
  }
  return doubts
}

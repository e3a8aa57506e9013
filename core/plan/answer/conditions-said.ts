/** Conditions in words: on the seller's tape, where a girth is laid flat. */
import { isGirth } from '../../ids/points.ts'
import { INCH_MM, type Units } from '../../length.ts'
import type { Saying } from '../../words/reason.ts'
import { listed, say, sayInside, type Wording } from '../../words/say.ts'
import type { Condition } from '../conditions/conditions-of.ts'
import { ROUNDING } from '../rounding.ts'

export interface ConditionShown extends Condition {
  /** "the hip, laid flat, is 49 to 54 cm": a clause. */
  text: string
}

/** A collar is opened and measured along. */
const ALONG = new Set(['neck'])

/** People read a tape to half a centimetre or a quarter of an inch, mm. */
const READ_TO_MM = { cm: 5, in: INCH_MM / 4 }

/** What a tape may show: laid flat where `flat`, mm; null: open. */
export interface OnTape {
  flat: boolean
  least: number | null
  most: number | null
}

/** On the tape that is held to it: rounded inwards to what a tape is read to, where that leaves anything. */
export function onTape(condition: Pick<Condition, 'point' | 'least' | 'most'>, units: Units): OnTape {
  const { point } = condition
  const flat = point !== undefined && isGirth(point) && !ALONG.has(point)
  const share = flat ? 2 : 1
  const step = READ_TO_MM[units]
  const least = condition.least === null ? null : condition.least / share
  const most = condition.most === null ? null : condition.most / share
  const up = least === null ? null : Math.ceil(least / step - ROUNDING) * step
  const down = most === null ? null : Math.floor(most / step + ROUNDING) * step
  const isLeft = up === null || down === null || up < down
  return isLeft ? { flat, least: up, most: down } : { flat, least, most }
}

/** Which ends there are, and where. */
const endsOf = ({ least, most }: OnTape): { ends: 'between' | 'least' | 'most'; values: Record<string, number> } => ({
  ends: least === null ? 'most' : most === null ? 'least' : 'between',
  values: { ...(least === null ? {} : { least }), ...(most === null ? {} : { most }) }
})

export function conditionShown(condition: Condition, wording: Wording): ConditionShown {
  const { point, body } = condition
  const tape = onTape(condition, wording.units)
  const { ends, values } = endsOf(tape)
  const kind = body !== undefined ? 'body' : tape.flat ? 'flat' : 'along'
  const saying: Saying = {
    code: `condition.${kind}.${ends}`,
    values: body === undefined ? values : { ...values, body },
    ...(point === undefined ? {} : { point })
  }
  return { ...condition, text: sayInside(saying, wording) }
}

/** "49 to 54 cm would suit." */
export function suitsText(condition: Condition, wording: Wording): string {
  const { ends, values } = endsOf(onTape(condition, wording.units))
  return say({ code: `suits.${ends}`, values }, wording)
}

/** What the untold must be, as one sentence's end. */
export const conditionsTogether = (conditions: readonly ConditionShown[], wording: Wording): string =>
  listed(
    conditions.map(({ text }) => text),
    wording
  )

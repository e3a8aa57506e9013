/** The seller's questions, said anew in another language: a seller is asked in the language of the listing. */

import type { Wording } from '../../words/say.ts'
import { type Ask, questionOf } from '../ask/ask.ts'
import { type ConditionShown, suitsText } from './conditions-said.ts'

/** `conditions`: of the same answer, for what would suit. */
export const asksIn = (asks: readonly Ask[], conditions: readonly ConditionShown[], wording: Wording): Ask[] =>
  asks.map((ask) => {
    const condition = ask.suits === undefined ? undefined : conditions.find(({ point }) => point === ask.point)
    const what = ask.point !== undefined ? { point: ask.point, again: ask.again } : ask.about !== undefined ? { about: ask.about } : null
    return {
      ...ask,
      question: what === null ? ask.question : questionOf(what, wording),
      ...(condition === undefined ? {} : { suits: suitsText(condition, wording) })
    }
  })

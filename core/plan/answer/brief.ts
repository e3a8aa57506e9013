/** An answer in short: the figures that a list is found, filtered and ordered by, and what a row of it is drawn from. Pure. */
import type { AlterationId } from '../../ids/alterations.ts'
import type { Verdict } from '../../ids/verdicts.ts'
import type { Plan } from '../plan.ts'
import type { Reckoning } from './answer.ts'

/** What of an answer is kept with each find. Minutes, money in the person's currency, chances 0..1. */
export interface AnswerBrief {
  verdict: Verdict
  chance: number | null
  chanceIf: number | null
  /** Of the plan that is followed: 0 where there is none. */
  minutes: number
  level: number
  spend: number | null
}

/** What a row and a comparison are drawn from: of the whole answer what they show, by the same names. */
export type AnswerShown = Pick<Reckoning, 'verdict' | 'chance' | 'chanceIf' | 'conditions' | 'because' | 'gaps' | 'plans' | 'worth' | 'ask'>

/** What is to be done; null: nothing, or it is to be left, and nobody follows its plan. */
export const planFollowed = ({ verdict, plans }: Pick<AnswerShown, 'verdict' | 'plans'>): Plan | null =>
  verdict === 'leave-it' || verdict === 'too-little-told' ? null : (plans[0] ?? null)

export function briefOf(answer: Pick<AnswerShown, 'verdict' | 'chance' | 'chanceIf' | 'plans' | 'worth'>): AnswerBrief {
  const plan = planFollowed(answer)
  const { verdict, chance, chanceIf, worth } = answer
  return { verdict, chance, chanceIf, minutes: plan?.minutes ?? 0, level: plan?.level ?? 0, spend: worth?.spend ?? null }
}

/** Every job that some plan of the answer has, each once. */
export const jobsIn = ({ plans }: Pick<Reckoning, 'plans'>): AlterationId[] => [
  ...new Set(plans.flatMap(({ alterations }) => alterations.map(({ id }) => id)))
]

/** The answer without what no row shows: the first plan alone, the first reason beside the conditional one, bands without their reasons. */
export function shownInRow({ verdict, chance, chanceIf, conditions, because, gaps, plans, worth, ask }: Reckoning): AnswerShown {
  const reason = because.find(({ code }) => code !== 'verdict.if')
  return {
    ...{ verdict, chance, chanceIf, conditions, worth },
    because: reason === undefined ? [] : [reason],
    gaps: gaps.map((gap) => ({ ...gap, because: [] })),
    plans: plans.slice(0, 1),
    ask: ask.slice(0, 0)
  }
}

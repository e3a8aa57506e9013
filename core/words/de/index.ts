/**
 * German, whole, in the same parts as English. Names stand with the capital they keep inside a sentence; a phrase that may stand inside
 * one begins as it does there. The person is addressed as "du", and a name mostly stands alone before a colon, so that it needs no case.
 */
import { ofAnswers } from './of-answers.ts'
import { ofWorkroom } from './of-workroom.ts'

export const parts: Record<string, Record<string, string>> = { ...ofAnswers, ...ofWorkroom }

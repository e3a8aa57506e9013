/** English, whole. One part a file, so that a part can be read; a code stands in one part only (a test holds it). */
import { ofAnswers } from './of-answers.ts'
import { ofWorkroom } from './of-workroom.ts'

export const parts: Record<string, Record<string, string>> = { ...ofAnswers, ...ofWorkroom }
/** With nothing beneath: a code or a word that no part has is none, whatever objects have of their own. */
export const en: Readonly<Record<string, string>> = Object.freeze(Object.assign(Object.create(null), ...Object.values(parts)))

/** English as pages have it that open at a press of a button: what answers say; what the workroom says besides is brought by it. */
import { ofAnswers } from './en/of-answers.ts'

export const AT_FIRST: 'answers' | 'workroom' = 'answers'
export const ENGLISH: Readonly<Record<string, string>> = Object.freeze(Object.assign(Object.create(null), ...Object.values(ofAnswers)))
export const englishOfWorkroom = async (): Promise<Record<string, Record<string, string>>> =>
  (await import('./en/of-workroom.ts')).ofWorkroom

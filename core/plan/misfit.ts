/** How much is wrong in all. */
import type { Gap } from '../wearer/gaps.ts'
import type { Misfit, Plan } from './plan.ts'
import { ROUNDING } from './rounding.ts'

/** What lies outside at all points together, mm. */
export const totalOf = (misfit: readonly Pick<Misfit, 'mm'>[]): number => misfit.reduce((sum, { mm }) => sum + Math.abs(mm), 0)
/** Within one mark in all: it fits. */
export const fits = ({ misfit }: Plan, markMm: number): boolean => totalOf(misfit) <= markMm + ROUNDING
/** Do the points that are judged lie outside by more than a mark in all, as the garment is? */
export const isWrong = (gaps: readonly Gap[], markMm: number): boolean =>
  totalOf(gaps.flatMap(({ judged, gapMm }) => (judged ? [{ mm: gapMm }] : []))) > markMm + ROUNDING

/** What a kept listing tells of the work on it: one's own figures apart from the listing's, and the plan that its sheet was made from. Pure. */
import type { Plan } from '../plan/plan.ts'
import type { Correction } from '../reading/reading.ts'
import { type Reckoning, type ReckonRequest, reckon } from '../reckon.ts'
import type { OwnFigure, Sewn } from '../worksheet/arrival.ts'
import { isOwnFigure } from './own-figure.ts'
import type { ListingKept, Look } from './schemas.ts'

/** Girths around, mm. */
export const ownFigures = (corrections: readonly Correction[]): OwnFigure[] =>
  corrections.filter(isOwnFigure).map(({ add, mm }) => ({ point: add, mm }))

/** What a listing tells without one's own tape and without what was found when it was tried on. */
export const asListed = (corrections: readonly Correction[]): Correction[] =>
  corrections.filter((one) => !isOwnFigure(one) && !('tried' in one))

/** The plans of a request without the outlook, which no sheet needs. */
export const plansOf = (request: ReckonRequest, units: 'cm' | 'in', language?: string): Reckoning =>
  reckon(request, { outlook: false, units, language })

/** The plan that a sheet was made from: the one chosen, else the advised one; null: there is none. */
export type PlanOf = (request: ReckonRequest, choice: Look['aim']) => Plan | null

/** The pieces that were finished by one's own hands, with the minutes they took; a tailor's are nobody's pace. */
export const sewnOf = (listings: readonly Pick<ListingKept, 'work'>[], planOf: PlanOf): Sewn[] =>
  listings.flatMap(({ work }): Sewn[] => {
    if (!work?.finishedAt || work.sheet === null || work.minutes === null) return []
    const plan = planOf(work.sheet.request, work.sheet.plan)
    return plan === null || plan.aim === 'tailor' ? [] : [{ request: work.sheet.request, plan, ownMinutes: work.minutes }]
  })

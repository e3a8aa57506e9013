/** What finished work and measured arrivals teach, over everything that is kept: shown with its numbers, and used only when the person says so. Pure. */
import { isGirth } from '../ids/points.ts'
import type { Plan } from '../plan/plan.ts'
import type { Correction } from '../reading/reading.ts'
import { type ReckonRequest, reckon } from '../reckon.ts'
import type { ListingKept, Look } from './schemas.ts'

/** The plan that a sheet was made from: the one chosen, else the advised one; null: there is none, or it can't be worked out any more. */
export type PlanOf = (request: ReckonRequest, choice: Look['aim']) => Plan | null

export interface Pace {
  n: number
  /** Minutes in all: what it took, and what the table has for the same work. */
  own: number
  table: number
  /** Own ÷ table. */
  pace: number
}

/** null: nothing was finished with its minutes told. The pieces of one person alone. */
export function paceFrom(listings: readonly Pick<ListingKept, 'work'>[], planOf: PlanOf): Pace | null {
  let [n, own, table] = [0, 0, 0]
  for (const { work } of listings) {
    if (!work?.finishedAt || work.sheet === null || work.minutes === null || work.minutes <= 0) continue
    const { request, plan: choice } = work.sheet
    const plan = planOf(request, choice)
    // a tailor's minutes are nobody's pace
    if (plan === null || plan.aim === 'tailor' || plan.minutes <= 0) continue
    n++
    own += work.minutes
    table += plan.minutes / (request.means.pace ?? 1)
  }
  return n === 0 ? null : { n, own, table, pace: Math.round((own / table) * 100) / 100 }
}

/** Points that were measured again: by the seller's figure and by one's own tape, mm, girths around. */
export interface MeasuredAgain {
  point: ListingPoint
  sellerMm: number
  ownMm: number
}
type ListingPoint = Extract<Correction, { add: unknown }>['add']

/** How far sellers' figures were off, as laid flat, mm; null: none was measured again. */
export function sellersOff(measured: readonly MeasuredAgain[]): { n: number; mm: number } | null {
  if (measured.length === 0) return null
  const off = measured.map(({ point, sellerMm, ownMm }) => Math.abs(ownMm - sellerMm) / (isGirth(point) ? 2 : 1))
  return { n: off.length, mm: off.reduce((sum, mm) => sum + mm, 0) / off.length }
}

/** One's own figures among the corrections: those of a tape laid after it arrived. */
export const isOwnFigure = (one: Correction): one is Extract<Correction, { add: unknown }> => 'add' in one && one.source === 'own'

/** What a listing tells without one's own tape and without what was found when it was tried on. */
export const asListed = (corrections: readonly Correction[]): Correction[] =>
  corrections.filter((one) => !isOwnFigure(one) && !('tried' in one))

/** The plans of a request as they are without the outlook, which no sheet needs. */
export const plansOf = (request: ReckonRequest, units: 'cm' | 'in', language?: string) =>
  reckon(request, { outlook: false, units, ...(language === undefined ? {} : { language }) })

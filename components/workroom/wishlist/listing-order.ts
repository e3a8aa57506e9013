/** Finding and ordering kept listings. Pure. */
import { VERDICTS, type Verdict } from '../../../core/ids/verdicts.ts'
import type { Condition } from '../../../core/plan/conditions/conditions-of.ts'
import type { ListingShown, Status } from '../shown.ts'

export const ORDERS = ['kept', 'verdict', 'chance', 'spend', 'minutes', 'title'] as const
export type Order = (typeof ORDERS)[number]

export interface Search {
  find: string
  order: Order
  /** null: any. */
  status: Status | null
  verdict: Verdict | null
}

export const verdictOf = (listing: ListingShown): Verdict | null => listing.now?.verdict ?? listing.verdictThen?.verdict ?? null
export const chanceOf = (listing: ListingShown): number | null => listing.now?.chance ?? listing.verdictThen?.chance ?? null
/** The chance if what is untold is as it must be. */
export const chanceIfOf = (listing: ListingShown): number | null =>
  (listing.now === null ? listing.verdictThen?.chanceIf : listing.now.chanceIf) ?? null
/** What the untold must be: as of now, or as of when it was kept while there is no answer. */
export const conditionsOf = (listing: ListingShown): readonly Condition[] =>
  (listing.now === null ? listing.verdictThen?.conditions : listing.now.conditions) ?? []
export const spendOf = (listing: ListingShown): number | null =>
  (listing.now === null ? listing.verdictThen?.spend : listing.now.worth?.spend) ?? listing.price
export const minutesOf = (listing: ListingShown): number | null =>
  listing.now === null ? (listing.verdictThen?.minutes ?? null) : (listing.now.plans[0]?.minutes ?? 0)
export const levelOf = (listing: ListingShown): number | null =>
  listing.now === null ? (listing.verdictThen?.level ?? null) : (listing.now.plans[0]?.level ?? 0)

/** The listings that have every word looked for, in the order asked for. */
export function found(listings: readonly ListingShown[], search: Search): ListingShown[] {
  const words = search.find.toLowerCase().split(/\s+/).filter(Boolean)
  const wanted = listings.filter((listing) => {
    if (search.status !== null && listing.status !== search.status) return false
    if (search.verdict !== null && verdictOf(listing) !== search.verdict) return false
    const text = [listing.title, listing.site, listing.notes, listing.kind ?? '', ...listing.tags].join(' ').toLowerCase()
    return words.every((word) => text.includes(word))
  })
  return wanted.sort((a, b) => compare(a, b, search.order) || (a.keptAt < b.keptAt ? 1 : -1))
}

function compare(a: ListingShown, b: ListingShown, order: Order): number {
  switch (order) {
    case 'kept':
      return 0
    case 'title':
      return a.title.localeCompare(b.title)
    case 'verdict':
      return rank(a) - rank(b)
    case 'chance':
      return last(chanceOf(b), -1) - last(chanceOf(a), -1)
    case 'spend':
      return last(spendOf(a)) - last(spendOf(b))
    case 'minutes':
      return last(minutesOf(a)) - last(minutesOf(b))
  }
}
const rank = (listing: ListingShown): number => {
  const verdict = verdictOf(listing)
  return verdict === null ? VERDICTS.length : VERDICTS.indexOf(verdict)
}
/** What is not known comes after all that is. */
const last = (value: number | null, missing = Number.MAX_VALUE): number => value ?? missing

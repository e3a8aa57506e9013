/** Finding, filtering and ordering kept listings. Pure. */

import type { GarmentKind } from '../../../core/ids/kinds.ts'
import { STATUSES } from '../../../core/ids/listing-statuses.ts'
import { VERDICTS, type Verdict } from '../../../core/ids/verdicts.ts'
import type { Condition } from '../../../core/plan/conditions/conditions-of.ts'
import type { Plan } from '../../../core/plan/plan.ts'
import type { ListingShown, Status } from '../shown.ts'

/** What the list may be ordered by, and which way it goes at first: what one looks for stands on top. */
export const ORDERS = {
  kept: 'descending',
  title: 'ascending',
  verdict: 'descending',
  minutes: 'ascending',
  spend: 'ascending',
  chance: 'descending',
  status: 'ascending'
} as const
export type Order = keyof typeof ORDERS
export type Way = (typeof ORDERS)[Order]
export const ORDER_IDS = Object.keys(ORDERS) as Order[]

export interface Search {
  find: string
  order: Order
  /** Against the way it goes at first. */
  turned: boolean
  /** null: any. */
  status: Status | null
  verdict: Verdict | null
  kind: GarmentKind | null
  /** Work of no more than this, minutes. */
  minutesMost: number | null
  /** No more than this in all, in the person's currency. */
  spendMost: number | null
}
export const SEARCH_ALL: Search = {
  find: '',
  order: 'kept',
  turned: false,
  status: null,
  verdict: null,
  kind: null,
  minutesMost: null,
  spendMost: null
}

/** Which way the list goes now by what it is ordered by. */
export const wayOf = ({ order, turned }: Pick<Search, 'order' | 'turned'>): Way =>
  turned ? (ORDERS[order] === 'ascending' ? 'descending' : 'ascending') : ORDERS[order]

/** A column's head was pressed: its order, or the other way about. */
export const ordered = (search: Search, order: Order): Search => ({
  ...search,
  order,
  turned: search.order === order ? !search.turned : false
})

/** How many filters are set. */
export const filtersSet = ({ status, verdict, kind, minutesMost, spendMost }: Search): number =>
  [status, verdict, kind, minutesMost, spendMost].filter((one) => one !== null).length

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
/** What is to be done; null: nothing, or it is to be left, and nobody follows its plan. */
export const planOf = ({ now }: Pick<ListingShown, 'now'>): Plan | null =>
  now === null || now.verdict === 'leave-it' || now.verdict === 'too-little-told' ? null : (now.plans[0] ?? null)
export const minutesOf = (listing: ListingShown): number | null =>
  listing.now === null ? thenOf(listing, 'minutes') : (planOf(listing)?.minutes ?? 0)
export const levelOf = (listing: ListingShown): number | null =>
  listing.now === null ? thenOf(listing, 'level') : (planOf(listing)?.level ?? 0)
const thenOf = ({ verdictThen }: ListingShown, what: 'minutes' | 'level'): number | null =>
  verdictThen?.verdict === 'leave-it' ? 0 : (verdictThen?.[what] ?? null)

/** The listings that pass every filter and have every word looked for, in the order asked for. Titles go by the language's alphabet. */
export function found(listings: readonly ListingShown[], search: Search, language?: string): ListingShown[] {
  const words = search.find.toLowerCase().split(/\s+/).filter(Boolean)
  const wanted = listings.filter((listing) => {
    if (!passes(listing, search)) return false
    const text = [listing.title, listing.site, listing.notes, listing.kind ?? '', ...listing.tags].join(' ').toLowerCase()
    return words.every((word) => text.includes(word))
  })
  const sign = wayOf(search) === 'ascending' ? 1 : -1
  const collator = new Intl.Collator(language)
  return wanted.sort((a, b) => compare(a, b, search.order, sign, collator) || (a.keptAt < b.keptAt ? 1 : -1))
}

function passes(listing: ListingShown, { status, verdict, kind, minutesMost, spendMost }: Search): boolean {
  return (
    (status === null || listing.status === status) &&
    (verdict === null || verdictOf(listing) === verdict) &&
    (kind === null || listing.kind === kind) &&
    (minutesMost === null || atMost(minutesOf(listing), minutesMost)) &&
    (spendMost === null || atMost(spendOf(listing), spendMost))
  )
}
/** What is not known does not pass. */
const atMost = (value: number | null, most: number): boolean => value !== null && value <= most

/** What is not known comes after all that is, whichever way it goes. */
function compare(a: ListingShown, b: ListingShown, order: Order, sign: 1 | -1, collator: Intl.Collator): number {
  if (order === 'title') return sign * collator.compare(a.title, b.title)
  if (order === 'kept') return a.keptAt === b.keptAt ? 0 : a.keptAt < b.keptAt ? -sign : sign
  const [one, other] = [rank(a, order), rank(b, order)]
  if (one === null || other === null) return one === other ? 0 : one === null ? 1 : -1
  return sign * (one - other)
}

function rank(listing: ListingShown, order: Exclude<Order, 'title' | 'kept'>): number | null {
  switch (order) {
    case 'verdict': {
      const verdict = verdictOf(listing)
      // the best has the highest rank
      return verdict === null ? null : VERDICTS.length - VERDICTS.indexOf(verdict)
    }
    case 'chance':
      return chanceOf(listing)
    case 'spend':
      return spendOf(listing)
    case 'minutes':
      return minutesOf(listing)
    case 'status':
      return STATUSES.indexOf(listing.status)
  }
}

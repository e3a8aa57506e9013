/** Finding, filtering and ordering kept listings. Pure. */

import type { GarmentKind } from '../../../core/ids/kinds.ts'
import { STATUSES } from '../../../core/ids/listing-statuses.ts'
import { VERDICTS, type Verdict } from '../../../core/ids/verdicts.ts'
import { type AnswerBrief, briefOf, planFollowed } from '../../../core/plan/answer/brief.ts'
import type { Condition } from '../../../core/plan/conditions/conditions-of.ts'
import { LIKELY } from '../../../core/plan/keys.ts'
import type { Plan } from '../../../core/plan/plan.ts'
import { DOUBTED } from '../../judged.ts'
import type { FindShown, ListingShown, Status } from '../shown.ts'

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

/** The figures of the answer as of now; null: there is none. */
export function briefNow(find: FindShown | ListingShown): AnswerBrief | null {
  if (find.brief !== undefined) return find.brief
  return 'now' in find && find.now !== null ? briefOf(find.now) : null
}
export const verdictOf = (find: FindShown): Verdict | null => briefNow(find)?.verdict ?? find.verdictThen?.verdict ?? null
export const chanceOf = (find: FindShown): number | null => briefNow(find)?.chance ?? find.verdictThen?.chance ?? null
/** What a find's verdict is said by: a yes that is more likely not so than so is asked, as in the answer itself. */
export function verdictCode(find: FindShown): 'answer.verdict-doubtful' | 'wishlist.verdict' {
  const [verdict, chance] = [verdictOf(find), chanceOf(find)]
  return verdict !== null && DOUBTED.has(verdict) && chance !== null && chance < LIKELY ? 'answer.verdict-doubtful' : 'wishlist.verdict'
}
/** The work in one phrase; null: what is to be left, or can't be judged, has no work to it. */
export function workOf(find: FindShown): { code: 'wishlist.by-tailor' | 'wishlist.no-time' | 'wishlist.minutes'; minutes: number } | null {
  const [verdict, minutes] = [verdictOf(find), minutesOf(find)]
  if (verdict === 'leave-it' || verdict === 'too-little-told' || minutes === null) return null
  return { code: verdict === 'needs-a-tailor' ? 'wishlist.by-tailor' : minutes === 0 ? 'wishlist.no-time' : 'wishlist.minutes', minutes }
}
/** The chance if what is untold is as it must be. */
export function chanceIfOf(find: FindShown): number | null {
  const now = briefNow(find)
  return (now === null ? find.verdictThen?.chanceIf : now.chanceIf) ?? null
}
/** What the untold must be: as of now, or as of when it was kept while there is no answer. */
export function conditionsOf(listing: ListingShown): readonly Condition[] {
  if (listing.now !== null) return listing.now.conditions
  return briefNow(listing) === null ? (listing.verdictThen?.conditions ?? []) : []
}
export function spendOf(find: FindShown): number | null {
  const now = briefNow(find)
  return (now === null ? find.verdictThen?.spend : now.spend) ?? find.price
}
/** What is to be done; null: nothing, or it is to be left, and nobody follows its plan. */
export const planOf = ({ now }: Pick<ListingShown, 'now'>): Plan | null => (now === null ? null : planFollowed(now))
export function minutesOf(find: FindShown): number | null {
  const now = briefNow(find)
  return now === null ? thenOf(find, 'minutes') : now.minutes
}
export function levelOf(find: FindShown): number | null {
  const now = briefNow(find)
  return now === null ? thenOf(find, 'level') : now.level
}
const thenOf = ({ verdictThen }: FindShown, what: 'minutes' | 'level'): number | null =>
  verdictThen?.verdict === 'leave-it' ? 0 : (verdictThen?.[what] ?? null)

/** The listings that pass every filter and have every word looked for, in the order asked for. Titles go by the language's alphabet. */
export function found<F extends FindShown>(listings: readonly F[], search: Search, language?: string): F[] {
  const words = search.find.toLowerCase().split(/\s+/).filter(Boolean)
  const wanted = listings.filter(
    (listing) => passes(listing, search) && (words.length === 0 || words.every((word) => textOf(listing).includes(word)))
  )
  const sign = wayOf(search) === 'ascending' ? 1 : -1
  const by = search.order === 'title' ? titleRanks(listings, language) : null
  return wanted.sort((a, b) => compare(a, b, search.order, sign, by) || (a.keptAt < b.keptAt ? 1 : -1))
}

/** What the words that are looked for may stand in; made once for each find as it is now. */
function textOf(find: FindShown): string {
  const known = texts.get(find)
  if (known !== undefined) return known
  const text = [find.title, find.site, find.notes, find.kind ?? '', ...find.tags].join(' ').toLowerCase()
  texts.set(find, text)
  return text
}
const texts = new WeakMap<FindShown, string>()

/** The place of every title in the language's alphabet; titles that are alike to it have the same. Kept until there is a title that it has not. */
function titleRanks(listings: readonly FindShown[], language: string | undefined): ReadonlyMap<string, number> {
  const known = ranksOf.get(language)
  if (known !== undefined && known.size <= 2 * listings.length && listings.every(({ title }) => known.has(title))) return known
  const { compare: inAlphabet } = collatorOf(language)
  const ranks = new Map<string, number>()
  let [rank, before] = [0, '']
  for (const title of [...new Set(listings.map((listing) => listing.title))].sort(inAlphabet)) {
    if (ranks.size > 0 && inAlphabet(before, title) !== 0) rank++
    ranks.set(title, rank)
    before = title
  }
  ranksOf.set(language, ranks)
  return ranks
}
const ranksOf = new Map<string | undefined, ReadonlyMap<string, number>>()

/** Making one takes longer than many comparisons. */
function collatorOf(language: string | undefined): Intl.Collator {
  const known = collators.get(language)
  if (known !== undefined) return known
  const made = new Intl.Collator(language)
  collators.set(language, made)
  return made
}
const collators = new Map<string | undefined, Intl.Collator>()

function passes(listing: FindShown, { status, verdict, kind, minutesMost, spendMost }: Search): boolean {
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
function compare(a: FindShown, b: FindShown, order: Order, sign: 1 | -1, titles: ReadonlyMap<string, number> | null): number {
  if (order === 'title') return sign * ((titles?.get(a.title) ?? 0) - (titles?.get(b.title) ?? 0))
  if (order === 'kept') return a.keptAt === b.keptAt ? 0 : a.keptAt < b.keptAt ? -sign : sign
  const [one, other] = [rank(a, order), rank(b, order)]
  if (one === null || other === null) return one === other ? 0 : one === null ? 1 : -1
  return sign * (one - other)
}

function rank(listing: FindShown, order: Exclude<Order, 'title' | 'kept'>): number | null {
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

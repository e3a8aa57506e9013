/**
 * What a list needs of a kept listing, kept beside it in a table of its own, so that ten thousand are found, filtered and ordered without
 * reading one of them. It is made of the listing alone, anew with each write (see summing.ts), and is in no backup. Pure.
 */
import * as z from 'zod/mini'
import { GARMENT_KINDS } from '../ids/kinds.ts'
import { markOf } from './mark.ts'
import { conflictsIn } from './merge.ts'
import { isOwnFigure } from './own-figure.ts'
import { passes } from './passes.ts'
import { isRow } from './row.ts'
import { isRecordOf, type ListingKept, listingKept } from './schemas.ts'

/** The way summaries are made; another number, and all are made anew. */
export const SUMMARY_FORMAT = 1

const of = listingKept.shape

/** A listing that is there. */
const there = z.object({
  id: z.string(),
  state: z.literal('there'),
  /** Which write it was: rows that were written together have the same number, later ones a higher. */
  written: z.int(),
  createdAt: of.createdAt,
  updatedAt: of.updatedAt,
  keptAt: of.keptAt,
  title: of.title,
  site: of.site,
  notes: of.notes,
  tags: of.tags,
  status: of.status,
  price: of.price,
  money: of.money,
  personId: of.personId,
  verdictThen: of.verdictThen,
  /** The kind when it was kept; null: there was nothing to reckon. */
  kindThen: z.nullable(z.enum(GARMENT_KINDS)),
  hasPicture: z.boolean(),
  /** A mark of all that its reading and its request stand on: while it stays, so does the answer for the same person. */
  told: z.string(),
  /** It was measured with one's own tape; it was sewn and finished: what the work teaches is learnt from these alone. */
  measured: z.boolean(),
  sewn: z.boolean(),
  /** How many fields two devices changed apart; left out: none. An index finds those that have any. */
  conflicts: z.exactOptional(z.int())
})
/** Removed, or not to be read: only that it is so. */
const gone = z.object({ id: z.string(), state: z.enum(['removed', 'unreadable']), written: z.int(), keptAt: z.literal('') })

export type Summary = z.infer<typeof there>
export type SummaryRow = Summary | z.infer<typeof gone>
const summaryRow = z.union([there, gone])

export const isSummaryRow = (row: unknown): row is SummaryRow => passes(summaryRow)(row)
export const isThere = (row: SummaryRow): row is Summary => row.state === 'there'

/** Rows that were found whole a moment ago, by who is about to write them: they need not be asked again. */
const vouchedFor = new WeakSet<object>()
export const vouch = (row: object): void => void vouchedFor.add(row)

/** What is kept beside a row of `listingsKept`, whatever the row is; null: it has no id to be known by. */
export function summaryOf(row: unknown, written: number): SummaryRow | null {
  if (!isRow(row) || typeof row.id !== 'string' || row.id === '') return null
  if (!isListing(row)) return goneSummary(row.id, 'unreadable', written)
  return row.deletedAt === null ? listingSummary(row, written) : goneSummary(row.id, 'removed', written)
}
/** No date: so that it stands in the index by state all the same. */
export const goneSummary = (id: string, state: 'removed' | 'unreadable', written: number): SummaryRow => ({
  id,
  state,
  written,
  keptAt: ''
})
const isListing = (row: object): row is ListingKept => vouchedFor.has(row) || isRecordOf('listingsKept', row)

function listingSummary(listing: ListingKept, written: number): Summary {
  const { id, createdAt, updatedAt, keptAt, title, site, notes, tags, status, price, money, personId, verdictThen, request, work } = listing
  const conflicts = conflictsIn(listing).length
  return {
    ...{ id, state: 'there', written, createdAt, updatedAt, keptAt, title, site, notes, tags, status, price, money, personId, verdictThen },
    kindThen: request?.garment.kind ?? null,
    hasPicture: typeof listing.picture === 'string',
    told: toldMark(listing),
    measured: listing.corrections.some(isOwnFigure),
    sewn: Boolean(work?.finishedAt),
    ...(conflicts > 0 ? { conflicts } : {})
  }
}

/** The fields that readSaved and listingRequest take of a listing. */
export const toldOf = (listing: ListingKept) => {
  const { text, title, structured, address, answers, corrections, price, money, personId, fit, favouriteId } = listing
  return { text, title, structured, address, answers, corrections, price, money, personId, fit, favouriteId }
}

export const toldMark = (listing: ListingKept): string => markOf(JSON.stringify(Object.values(toldOf(listing))))

/** Reading the finds by their summaries, filling summaries that are missing, and keeping answers. Nothing here reads a listing but to fill and to answer. */
import { Dexie } from 'dexie'
import type { Records, StoreName } from './database.ts'
import type { FindAnswer } from './find-answer.ts'
import { isRow } from './row.ts'
import { isRecordOf, type ListingKept } from './schemas.ts'
import { batchedNow, eachBatch, lastBatched } from './spread-summaries.ts'
import { isSummaryRow, isThere, SUMMARY_FORMAT, type Summary, type SummaryRow, summaryOf } from './summaries.ts'
import { BATCHES } from './summary-batches.ts'
import { type AnswerRow, isAnswerRow, isVerdictRow, type VerdictRow } from './verdicts.ts'

/** Summaries and the answers kept with them. */
export interface FindRows {
  summaries: SummaryRow[]
  verdicts: VerdictRow[]
}
/** How far a reader has come in each of the two tables. */
export interface Written {
  summaries: number
  verdicts: number
}

export interface FirstFinds extends FindRows {
  /** What the rows in view are drawn from. */
  answers: AnswerRow[]
  /** How many there are in all. */
  count: number
  written: Written
}

/** How far each of the two tables is written. */
export async function writtenSoFar(records: Records): Promise<Written> {
  const [summaries, verdicts] = await Promise.all([lastSummary(records), lastWritten(records, 'verdicts')])
  return { summaries, verdicts }
}
/** In their table or in a batch. */
const lastSummary = async (records: Records): Promise<number> =>
  Math.max(...(await Promise.all([lastWritten(records, 'summaries'), lastBatched(records)])))

const lastWritten = async (records: Records, table: 'summaries' | 'verdicts'): Promise<number> => {
  const last = await records.rows(table).orderBy('written').reverse().limit(1).keys()
  return typeof last[0] === 'number' ? last[0] : 0
}

/** The finds kept last, all that is needed to draw them, and how many there are: one short reading, however many there are. */
export async function firstFinds(records: Records, most: number): Promise<FirstFinds> {
  return records.together('r', ['summaries', 'verdicts', 'answers', BATCHES], async (records) => {
    // counted and asked for side by side: the count of many takes longest
    const counted = Promise.all([inState(records, 'there').count(), writtenSoFar(records)])
    const [rows, batched] = await Promise.all([inState(records, 'there').reverse().limit(most).toArray(), batchedNow(records)])
    const inTable = rows.filter(isSummaryRow)
    const summaries = batched.length === 0 ? inTable : [...inTable, ...batched].sort(keptLater).slice(0, most)
    const ids = summaries.map(({ id }) => id)
    const [verdicts, answers] = await Promise.all([records.rows('verdicts').bulkGet(ids), records.rows('answers').bulkGet(ids)])
    const [count, written] = await counted
    return {
      summaries,
      verdicts: verdicts.filter(isVerdictRow),
      answers: answers.filter(isAnswerRow),
      count: count + batched.length,
      written
    }
  })
}
/** The order of the index, from its end. */
const keptLater = (a: SummaryRow, b: SummaryRow): number =>
  a.keptAt !== b.keptAt ? (a.keptAt < b.keptAt ? 1 : -1) : a.id < b.id ? 1 : a.id > b.id ? -1 : 0

const inState = (records: Records, state: SummaryRow['state']) =>
  records.rows('summaries').where('[state+keptAt]').between([state, Dexie.minKey], [state, Dexie.maxKey])
export const countFinds = async (records: Records): Promise<number> =>
  (await inState(records, 'there').count()) + (await batchedNow(records)).length
/** How many kept listings can't be read. */
export const countUnreadableFinds = (records: Records): Promise<number> => inState(records, 'unreadable').count()

/** So many of each table as are read in one piece: few enough for a page to go on between two. */
const SLICE = 400

/** All finds, a slice at a time: their answers first, so that each find comes with its own. */
export async function everyFind(records: Records, take: (rows: FindRows) => void, isWanted: () => boolean): Promise<void> {
  for await (const rows of slices(records, 'verdicts', SLICE)) {
    if (!isWanted()) return
    take({ summaries: [], verdicts: rows.filter(isVerdictRow) })
  }
  // before the table: what is spread meanwhile is met there
  for await (const summaries of eachBatch(records)) {
    if (!isWanted()) return
    take({ summaries, verdicts: [] })
  }
  for await (const rows of slices(records, 'summaries', SLICE)) {
    if (!isWanted()) return
    take({ summaries: rows.filter(isSummaryRow), verdicts: [] })
  }
}

/** The rows of a table in the order of their ids, whatever those are, so many at a time. */
export async function* slices(records: Records, table: StoreName, size: number): AsyncGenerator<unknown[]> {
  let rows: unknown[] = await records.rows(table).orderBy(':id').limit(size).toArray()
  while (rows.length > 0) {
    yield rows
    const end = rows.at(-1)
    if (rows.length < size || !isRow(end)) return
    rows = await records.rows(table).where(':id').above(end.id).limit(size).toArray()
  }
}

/** More than this many at once are not handed over as changes: everything is read anew, in slices. */
export const MANY_AT_ONCE = 500

/** What was written since, up to one more than MANY_AT_ONCE of each: to be watched. */
export async function findsSince(records: Records, since: Written): Promise<FindRows> {
  const most = MANY_AT_ONCE + 1
  const of = (table: 'summaries' | 'verdicts') => records.rows(table).where('written').above(since[table]).limit(most).toArray()
  const [batched, summaries, verdicts] = await Promise.all([batchedSince(records, since.summaries, most), of('summaries'), of('verdicts')])
  // of one that is in both the table has the later
  return { summaries: [...batched, ...summaries.filter(isSummaryRow)], verdicts: verdicts.filter(isVerdictRow) }
}

async function batchedSince(records: Records, since: number, most: number): Promise<Summary[]> {
  const found: Summary[] = []
  for await (const rows of eachBatch(records, since)) if (found.push(...rows) >= most) break
  return found
}

/** What rows are drawn from, of those that have it. */
export const answersOf = async (records: Records, ids: readonly string[]): Promise<AnswerRow[]> =>
  (await records.rows('answers').bulkGet([...ids])).filter(isAnswerRow)

/** Kept listings by their ids, those that are there and can be read. */
export async function listingsOf(records: Records, ids: readonly string[]): Promise<ListingKept[]> {
  const rows = await records.rows('listingsKept').bulkGet([...ids])
  return rows.filter((row): row is ListingKept => isRecordOf('listingsKept', row) && row.deletedAt === null)
}

/** An answer and what it stands on. */
export interface Answered extends FindAnswer {
  of: string
  /** The mark of the listing that it was worked out from. */
  told: string
  worded: string
}

/** Keeps answers with their finds; one whose listing was changed meanwhile is left out. */
export async function keepAnswers(records: Records, answered: readonly Answered[]): Promise<void> {
  await records.together('rw', ['summaries', 'verdicts', 'answers'], async (records) => {
    const now = await records.rows('summaries').bulkGet(answered.map(({ id }) => id))
    const standing = answered.filter(({ told }, place) => {
      const row = now[place]
      return isSummaryRow(row) && isThere(row) && row.told === told
    })
    const written = (await lastWritten(records, 'verdicts')) + 1
    const verdicts = standing.map(({ id, of, kind, brief, jobs }): VerdictRow => ({ id, written, of, kind, brief, jobs }))
    const answers = standing.flatMap(({ id, of, worded, answer }): AnswerRow[] => (answer === null ? [] : [{ id, of, worded, answer }]))
    await records.rows('verdicts').bulkPut(verdicts)
    await records.rows('answers').bulkPut(answers)
  })
}

/** How far the summaries are made: the last id; null: to the end. */
interface Filled {
  key: string
  format: number
  through: string | null
}
const FILLED = 'summaries'
const FILL_SLICE = 100

const filledIn = (row: unknown): Filled => {
  const isOurs = isRow(row) && row.format === SUMMARY_FORMAT && (row.through === null || typeof row.through === 'string')
  return { key: FILLED, format: SUMMARY_FORMAT, through: isOurs && typeof row.through !== 'undefined' ? asThrough(row.through) : '' }
}
const asThrough = (through: unknown): string | null => (typeof through === 'string' ? through : null)

/** Are there summaries still to be made? */
export const isFilled = async (records: Records): Promise<boolean> => filledIn(await records.rows('local').get(FILLED)).through === null

/**
 * Makes the summaries of finds that were saved before there were any, or otherwise than they are made now, a slice at a time: each slice is
 * one transaction with how far it came, so that it goes on from there. New finds have theirs already.
 */
export async function fillSummaries(records: Records, made: (so: number) => void, rest: () => Promise<void>): Promise<void> {
  let so = 0
  for (;;) {
    const count = await records.together('rw', ['listingsKept', 'summaries', BATCHES, 'local'], fillSlice)
    so += Math.abs(count)
    made(so)
    if (count <= 0) return
    await rest()
  }
}

/** The number of rows it made; not above 0 where it was the last slice. */
async function fillSlice(records: Records): Promise<number> {
  const filled = filledIn(await records.rows('local').get(FILLED))
  if (filled.through === null) return 0
  const rows: unknown[] = await records.rows('listingsKept').where(':id').above(filled.through).limit(FILL_SLICE).toArray()
  const written = (await lastSummary(records)) + 1
  await records.rows('summaries').bulkPut(rows.flatMap((row) => summaryOf(row, written) ?? []))
  const end = rows.at(-1)
  const isLast = rows.length < FILL_SLICE || !isRow(end) || typeof end.id !== 'string'
  await records.rows('local').put({ ...filled, through: isLast ? null : end.id })
  return isLast ? -rows.length : rows.length
}

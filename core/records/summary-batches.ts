/**
 * Summaries of many finds that came at once, kept together in a few rows: ten thousand rows, each in three indexes, would take longer than the finds
 * themselves. A list reads them with the others, and they are spread over the table of summaries behind it (spread-summaries.ts). Pure.
 */
import * as z from 'zod/mini'
import { isSummaryRow, isThere, type Summary } from './summaries.ts'

export const BATCHES = 'summaryBatches'

export interface SummaryBatch {
  key: string
  /** Which write it was, as in each of its rows. */
  written: number
  /** Of finds that had no summary until then. */
  rows: readonly Summary[]
}
const batch = z.object({ key: z.string(), written: z.int(), rows: z.array(z.unknown()) })

/** Written out in so many digits, numbers are sorted as text. */
const DIGITS = 16
const inDigits = (number: number): string => String(number).padStart(DIGITS, '0')
/** Batches are in the order in which they were written; `place`: among those of one write. */
export const batchKey = (written: number, place: number): string => `${inDigits(written)} ${inDigits(place)}`
/** The number of the write in a key; 0: it is none. */
export const writtenIn = (key: unknown): number => (typeof key === 'string' && Number(key.slice(0, DIGITS))) || 0

/** What a batch holds, of whatever is found in its place. */
export const batched = (row: unknown): Summary[] => {
  const { success, data } = batch.safeParse(row)
  return success ? data.rows.filter(isSummaryRow).filter(isThere) : []
}

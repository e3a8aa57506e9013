/** Summaries that are kept together: read with those in their table, and spread over it behind what brought them. */
import type { Records } from './database.ts'
import { isRow } from './row.ts'
import { rowsThere } from './rows-there.ts'
import type { Summary } from './summaries.ts'
import { BATCHES, batched, batchKey, writtenIn } from './summary-batches.ts'

/** Are there any? */
export const areBatched = async (records: Records): Promise<boolean> => (await records.rows(BATCHES).count()) > 0

/** What stands in batches alone; a find that was written again since has its summary in the table. */
export async function batchedNow(records: Records): Promise<Summary[]> {
  const all = (await records.rows(BATCHES).toArray()).flatMap(batched)
  if (all.length === 0) return []
  const inTable = new Set(await records.rows('summaries').toCollection().primaryKeys())
  return all.filter(({ id }) => !inTable.has(id))
}

/** The number of the last write that left any; 0: there are none. */
export const lastBatched = async (records: Records): Promise<number> =>
  writtenIn((await records.rows(BATCHES).toCollection().reverse().limit(1).primaryKeys())[0])

/** What is batched, one batch after the other: all of it, or what was written behind a number. */
export async function* eachBatch(records: Records, since = 0): AsyncGenerator<Summary[]> {
  const keys = await records
    .rows(BATCHES)
    .where('key')
    .aboveOrEqual(batchKey(since + 1, 0))
    .primaryKeys()
  // one that is spread meanwhile is in the table
  for (const key of keys) yield batched(await records.rows(BATCHES).get(key))
}

/** Spreads them over the table, each batch in a transaction of its own: left at any moment, it goes on from there. `made`: how many so far. */
export async function spreadBatches(records: Records, made: (so: number) => void, rest: () => Promise<void>): Promise<void> {
  let so = 0
  for (;;) {
    const count = await records.together('rw', ['summaries', BATCHES], spreadFirst)
    if (count === null) return
    so += count
    made(so)
    await rest()
  }
}

/** How many finds the first batch had; null: there is none. */
async function spreadFirst(records: Records): Promise<number | null> {
  const [first]: unknown[] = await records.rows(BATCHES).toCollection().limit(1).toArray()
  if (first === undefined) return null
  const rows = batched(first)
  // what is in the table by now was written later
  const later = await rowsThere(records, 'summaries', rows)
  await records.rows('summaries').bulkPut(rows.filter(({ id }) => !later.has(id)))
  if (isRow(first)) await records.rows(BATCHES).delete(String(first.key))
  return rows.length
}

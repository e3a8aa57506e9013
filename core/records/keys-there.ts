/** Asking a table beneath Dexie which rows are there, by keys alone. */
import type { DBCoreTable, DBCoreTransaction } from 'dexie'

/** DBCoreRangeType.Range and .Any, which Dexie declares for types alone. */
export const RANGE = 2
export const ANY = 3
/** Where so many times as many keys lie between the first and the last, asking for each is no slower. */
export const MOST_BETWEEN = 4

/** Which of these ids have a row, found by one look at the keys from the first to the last of them; null: too many others lie between. */
export function keysThere(table: DBCoreTable, trans: DBCoreTransaction, ids: readonly string[]): Promise<ReadonlySet<string> | null> {
  const sorted = ids.toSorted()
  const [lower, upper] = [sorted[0], sorted.at(-1)]
  if (lower === undefined) return Promise.resolve(new Set())
  const limit = ids.length * MOST_BETWEEN
  const query = { index: table.schema.primaryKey, range: { type: RANGE, lower, upper } }
  // a promise of Dexie's own, chained: it keeps within the transaction
  return table.query({ trans, values: false, limit, query }).then(({ result }) => (result.length < limit ? new Set<string>(result) : null))
}

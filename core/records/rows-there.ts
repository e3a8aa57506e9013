import type { Records, StoreName } from './database.ts'
import { idOf } from './find.ts'
import { MOST_BETWEEN } from './keys-there.ts'

/** The rows that are there of some, by their ids. Of many that are new none is asked for alone. */
export async function rowsThere(records: Records, table: StoreName, some: readonly { id: string }[]): Promise<Map<string, unknown>> {
  const ids = [...new Set(some.map(({ id }) => id))]
  const sorted = ids.toSorted()
  const [first, last] = [sorted[0], sorted.at(-1)]
  if (first === undefined || last === undefined) return new Map()
  const limit = ids.length * MOST_BETWEEN
  const between = new Set(await records.rows(table).where(':id').between(first, last, true, true).limit(limit).primaryKeys())
  const wanted = between.size < limit ? ids.filter((id) => between.has(id)) : ids
  const rows = wanted.length === 0 ? [] : await records.rows(table).bulkGet(wanted)
  return new Map(rows.flatMap((row) => (row === undefined ? [] : [[idOf(row), row] as const])))
}

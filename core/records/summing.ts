/**
 * Each write to the kept listings writes their summaries in the same transaction, whoever writes and however: it stands between Dexie and the
 * browser's database, so that no way leads past it.
 */
import type { DBCore, DBCoreMutateRequest, DBCoreMutateResponse, DBCoreTable, DBCoreTransaction, Middleware } from 'dexie'
import { goneSummary, summaryOf } from './summaries.ts'

export const SUMMARISED = 'listingsKept'
export const SUMMARIES = 'summaries'

export const summing: Middleware<DBCore> = {
  stack: 'dbcore',
  name: 'summaries',
  create: (core) => {
    // a database of a version before there were any
    if (!core.schema.tables.some(({ name }) => name === SUMMARIES)) return {}
    return {
      transaction: (stores, mode, options) =>
        core.transaction(
          mode === 'readwrite' && stores.includes(SUMMARISED) ? [...new Set([...stores, SUMMARIES])] : stores,
          mode,
          options
        ),
      table: (name) => (name === SUMMARISED ? withSummaries(core.table(name), core.table(SUMMARIES)) : core.table(name))
    }
  }
}

/** Promises of Dexie's own are chained: they keep within the transaction. */
const withSummaries = (table: DBCoreTable, summaries: DBCoreTable): DBCoreTable => ({
  ...table,
  mutate: (request) => {
    const { trans } = request
    if (request.type === 'deleteRange') {
      const query = { index: table.schema.primaryKey, range: request.range }
      return table.query({ trans, values: false, query }).then(({ result }) => write(result.map(String)))
    }
    return write(request.type === 'delete' ? request.keys.map(String) : [])

    function write(removed: readonly string[]) {
      return table.mutate(request).then((response) =>
        nextNumber(summaries, trans).then((written) => {
          const gone = removed.map((id) => goneSummary(id, 'removed', written))
          const rows = [...writtenBy(request, response).flatMap((row) => summaryOf(row, written) ?? []), ...gone]
          return rows.length === 0 ? response : summaries.mutate({ type: 'put', trans, values: rows }).then(() => response)
        })
      )
    }
  }
})

/** The rows that a request wrote; several at once may in part have failed. */
const writtenBy = (request: DBCoreMutateRequest, { failures }: DBCoreMutateResponse): readonly unknown[] =>
  request.type === 'put' || request.type === 'add' ? request.values.filter((_, place) => failures[place] === undefined) : []

/** One more than the highest there is. */
function nextNumber(summaries: DBCoreTable, trans: DBCoreTransaction): Promise<number> {
  const index = summaries.schema.getIndexByKeyPath('written')
  if (index === undefined) throw new Error('the summaries have no index of their writes')
  const range = { type: ANY, lower: undefined, upper: undefined }
  return summaries
    .openCursor({ trans, values: false, reverse: true, query: { index, range } })
    .then((cursor) => (cursor === null ? 1 : Number(cursor.key) + 1))
}
/** DBCoreRangeType.Any, which Dexie declares for types alone. */
const ANY = 3

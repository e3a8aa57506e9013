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
      const numbered = numberIn(trans, summaries)
      const beside = (values: readonly unknown[]) =>
        numbered.then((written) => {
          const gone = removed.map((id) => goneSummary(id, 'removed', written))
          const rows = [...values.flatMap((row) => summaryOf(row, written) ?? []), ...gone]
          return rows.length === 0 ? null : summaries.mutate({ type: 'put', trans, values: rows })
        })
      // what is added may be there already; what is put is written, or the transaction breaks off with all of it
      if (request.type === 'add') return table.mutate(request).then((response) => beside(writtenBy(request, response)).then(() => response))
      const summed = beside(request.type === 'put' ? request.values : [])
      return table.mutate(request).then((response) => summed.then(() => response))
    }
  }
})

/** The rows that a request wrote; several at once may in part have failed. */
const writtenBy = (request: DBCoreMutateRequest, { failures }: DBCoreMutateResponse): readonly unknown[] =>
  request.type === 'put' || request.type === 'add' ? request.values.filter((_, place) => failures[place] === undefined) : []

/** The number of what a transaction writes: one more than the highest there is, the same for all of it. */
function numberIn(trans: DBCoreTransaction, summaries: DBCoreTable): Promise<number> {
  const known = numbers.get(trans)
  if (known !== undefined) return known
  const index = summaries.schema.getIndexByKeyPath('written')
  if (index === undefined) throw new Error('the summaries have no index of their writes')
  const range = { type: ANY, lower: undefined, upper: undefined }
  const number = summaries
    .openCursor({ trans, values: false, reverse: true, query: { index, range } })
    .then((cursor) => (cursor === null ? 1 : Number(cursor.key) + 1))
  numbers.set(trans, number)
  return number
}
const numbers = new WeakMap<DBCoreTransaction, Promise<number>>()
/** DBCoreRangeType.Any, which Dexie declares for types alone. */
const ANY = 3

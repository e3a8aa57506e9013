/**
 * Each write to the kept listings writes their summaries in the same transaction, whoever writes and however: it stands between Dexie and the
 * browser's database, so that no way leads past it.
 */
import type { DBCore, DBCoreIndex, DBCoreMutateRequest, DBCoreMutateResponse, DBCoreTable, DBCoreTransaction, Middleware } from 'dexie'
import { ANY, keysThere } from './keys-there.ts'
import { goneSummary, isThere, type Summary, type SummaryRow, summaryOf } from './summaries.ts'
import { BATCHES, batched, batchKey, type SummaryBatch, writtenIn } from './summary-batches.ts'

export const SUMMARISED = 'listingsKept'
export const SUMMARIES = 'summaries'

export const summing: Middleware<DBCore> = {
  stack: 'dbcore',
  name: 'summaries',
  create: (core) => {
    // a database of a version before there were any
    if (!core.schema.tables.some(({ name }) => name === SUMMARIES)) return {}
    const batches = core.schema.tables.some(({ name }) => name === BATCHES) ? [BATCHES] : []
    return {
      transaction: (stores, mode, options) =>
        core.transaction(
          mode === 'readwrite' && stores.includes(SUMMARISED) ? [...new Set([...stores, SUMMARIES, ...batches])] : stores,
          mode,
          options
        ),
      table: (name) => (name === SUMMARISED ? withSummaries(core, batches.length > 0) : core.table(name))
    }
  }
}

/** Promises of Dexie's own are chained: they keep within the transaction. */
function withSummaries(core: DBCore, hasBatches: boolean): DBCoreTable {
  const table = core.table(SUMMARISED)
  return {
    ...table,
    mutate: (request) => {
      const { trans } = request
      if (request.type === 'deleteRange') {
        const query = { index: table.schema.primaryKey, range: request.range }
        return table.query({ trans, values: false, query }).then(({ result }) => write(result.map(String)))
      }
      return write(request.type === 'delete' ? request.keys.map(String) : [])

      function write(removed: readonly string[]) {
        const numbered = numberIn(trans, core, hasBatches)
        const beside = (values: readonly unknown[]) =>
          numbered.then((number) => {
            const written = number + (writing.get(trans)?.batches ?? 0)
            const gone = removed.map((id) => goneSummary(id, 'removed', written))
            const rows = [...values.flatMap((row) => summaryOf(row, written) ?? []), ...gone]
            return hasBatches && rows.length > FEW ? writeMany(core, trans, rows, written) : writeEach(core, trans, rows)
          })
        // what is added may be there already; what is put is written, or the transaction breaks off with all of it
        if (request.type === 'add')
          return table.mutate(request).then((response) => beside(writtenBy(request, response)).then(() => response))
        const summed = beside(request.type === 'put' ? request.values : [])
        return table.mutate(request).then((response) => summed.then(() => response))
      }
    }
  }
}

const writeEach = (core: DBCore, trans: DBCoreTransaction, values: readonly SummaryRow[]): Promise<unknown> =>
  values.length === 0 ? Promise.resolve() : core.table(SUMMARIES).mutate({ type: 'put', trans, values })

/** So many are written at once before their summaries are kept together; and so many are kept in one row. */
const FEW = 100
const MOST_TOGETHER = 250

/** Summaries of finds that are new, and nothing but there, are kept together; the others each in its place. */
function writeMany(core: DBCore, trans: DBCoreTransaction, rows: readonly SummaryRow[], written: number): Promise<unknown> {
  const byId = new Map(rows.map((row) => [row.id, row]))
  const known = Promise.all([keysThere(core.table(SUMMARIES), trans, [...byId.keys()]), batchedIn(core, trans)])
  return known.then(([inTable, { ids }]) => {
    const isNew = (row: SummaryRow): row is Summary =>
      inTable !== null && !inTable.has(row.id) && !ids.has(row.id) && isThere(row) && row.conflicts === undefined
    const together = [...byId.values()].filter(isNew)
    const others = [...byId.values()].filter((row) => !isNew(row))
    const values = inBatches(together, written, trans)
    return writeEach(core, trans, others).then(() =>
      values.length === 0 ? null : core.table(BATCHES).mutate({ type: 'put', trans, values })
    )
  })
}

/** What a transaction knows of batches: the ids of all finds in one, its own among them, and how many it wrote. */
interface Writing {
  ids: Set<string>
  batches: number
}
const writing = new WeakMap<DBCoreTransaction, Writing>()

function batchedIn(core: DBCore, trans: DBCoreTransaction): Promise<Writing> {
  const known = writing.get(trans)
  if (known !== undefined) return Promise.resolve(known)
  const batches = core.table(BATCHES)
  const query = { index: batches.schema.primaryKey, range: { type: ANY, lower: undefined, upper: undefined } }
  return batches.query({ trans, values: true, query }).then(({ result }) => {
    const found = writing.get(trans) ?? { ids: new Set(result.flatMap(batched).map(({ id }) => id)), batches: 0 }
    writing.set(trans, found)
    return found
  })
}

/** A find is in one batch at most; what a transaction writes behind a batch has a higher number, so that the later of two is told apart. */
function inBatches(rows: readonly Summary[], written: number, trans: DBCoreTransaction): SummaryBatch[] {
  const made: SummaryBatch[] = []
  const its = writing.get(trans)
  for (let at = 0; at < rows.length && its !== undefined; at += MOST_TOGETHER) {
    made.push({ key: batchKey(written, its.batches++), written, rows: rows.slice(at, at + MOST_TOGETHER) })
  }
  for (const { id } of rows) its?.ids.add(id)
  return made
}

/** The rows that a request wrote; several at once may in part have failed. */
const writtenBy = (request: DBCoreMutateRequest, { failures }: DBCoreMutateResponse): readonly unknown[] =>
  request.type === 'put' || request.type === 'add' ? request.values.filter((_, place) => failures[place] === undefined) : []

/** The number of what a transaction writes: one more than the highest there is, the same for all of it until it writes a batch. */
function numberIn(trans: DBCoreTransaction, core: DBCore, hasBatches: boolean): Promise<number> {
  const known = numbers.get(trans)
  if (known !== undefined) return known
  const summaries = core.table(SUMMARIES)
  const index = summaries.schema.getIndexByKeyPath('written')
  if (index === undefined) throw new Error('the summaries have no index of their writes')
  const highest = (table: DBCoreTable, index: DBCoreIndex): Promise<unknown> =>
    table
      .openCursor({ trans, values: false, reverse: true, query: { index, range: { type: ANY, lower: undefined, upper: undefined } } })
      .then((cursor): unknown => cursor?.key)
  const number = highest(summaries, index).then((each) => {
    const inTable = Number(each ?? 0)
    if (!hasBatches) return inTable + 1
    const batches = core.table(BATCHES)
    return highest(batches, batches.schema.primaryKey).then((key) => Math.max(inTable, writtenIn(key)) + 1)
  })
  numbers.set(trans, number)
  return number
}
const numbers = new WeakMap<DBCoreTransaction, Promise<number>>()

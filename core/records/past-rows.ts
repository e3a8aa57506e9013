/**
 * Earlier states of everything, without a copy of everything: a snapshot is a mark (snapshots.ts), and a row is kept as it was when it is
 * changed for the first time behind the newest mark, in the transaction that changes it. So a mark costs the same however much is saved, what
 * never changes is kept once, and no write goes by it, whoever writes. Before the first mark nothing is kept.
 */
import type { DBCore, DBCoreKeyRange, DBCoreMutateRequest, DBCoreTable, DBCoreTransaction, Dexie } from 'dexie'
import { isRow } from './row.ts'
import { TABLES, type TableName } from './schemas.ts'

/** A row as it was at a mark; null: it was not there. */
export interface PastRow {
  key: string
  /** The key of the mark. */
  snapshot: string
  table: TableName
  id: string
  row: unknown
  /** How much room it takes, characters, roughly. */
  weight: number
  /** The version of what is saved then: a migration behind it has not seen this row. */
  version: number
}

export const SNAPSHOTS = 'snapshots'
export const PAST = 'past'

export const pastKey = (snapshot: string, table: string, id: string): string => `${snapshot} ${table} ${id}`

/** Of this many rows and fewer each is asked for alone. */
const FEW = 8
/** Of an object or a list, characters; of a row with nothing in it. */
const NESTED_WEIGHT = 500
const LEAST_WEIGHT = 200

/** From now on each write of this database keeps what it changes. Called before it is opened. */
export function keepPastRows(db: Dexie, version: number): void {
  db.use({
    stack: 'dbcore',
    name: 'past rows',
    create: (down) => ({
      ...down,
      transaction: (stores, mode, options) =>
        down.transaction(mode === 'readwrite' && stores.some(isTable) ? [...new Set([...stores, SNAPSHOTS, PAST])] : stores, mode, options),
      table: (name) => (isTable(name) ? keeping(down, name, version) : down.table(name))
    })
  })
}

const isTable = (name: string): name is TableName => TABLES.some((table) => table === name)

/** The table, of which each row is kept before it is changed. */
function keeping(down: DBCore, name: TableName, version: number): DBCoreTable {
  const table = down.table(name)
  const mutate: DBCoreTable['mutate'] = (request) => {
    const { trans } = request
    // a migration changes what the past is compared with: past rows go through it when they are wanted
    if ('mode' in trans && trans.mode === 'versionchange') return table.mutate(request)
    return newestMark(down, trans)
      .then((mark) => (mark === undefined ? undefined : keysOf(table, request).then((ids) => keep(mark, ids, trans))))
      .then(() => table.mutate(request))
  }
  return { ...table, mutate }

  function keep(mark: string, ids: readonly unknown[], trans: DBCoreTransaction): Promise<void> {
    return keptAlready(down, trans, mark, name, ids).then((known) => {
      const missing = ids.filter((id) => !known.has(pastKey(mark, name, String(id))))
      if (missing.length === 0) return
      return table.getMany({ trans, keys: [...missing] }).then((rows) => {
        const values = missing.map((id, at): PastRow => {
          const row: unknown = rows[at] ?? null
          return { key: pastKey(mark, name, String(id)), snapshot: mark, table: name, id: String(id), row, weight: weightOf(row), version }
        })
        return down
          .table(PAST)
          .mutate({ type: 'put', trans, values })
          .then(({ numFailures, failures }) => {
            if (numFailures > 0) throw Object.values(failures)[0]
          })
      })
    })
  }
}

/** Everything in a store; `type` is what Dexie calls any range. */
const everything = (down: DBCore): DBCoreKeyRange => ({ type: 3, lower: down.MIN_KEY, upper: down.MAX_KEY })

/** Keys of marks are of one length and count up. */
function newestMark(down: DBCore, trans: DBCoreTransaction): Promise<string | undefined> {
  const table = down.table(SNAPSHOTS)
  const query = { index: table.schema.primaryKey, range: everything(down) }
  return table.query({ trans, values: false, query }).then(({ result }): string | undefined => result.at(-1))
}

/** The ids of the rows that a request writes. */
function keysOf(table: DBCoreTable, request: DBCoreMutateRequest): Promise<readonly unknown[]> {
  const { primaryKey } = table.schema
  if (request.type === 'deleteRange') {
    const query = { index: primaryKey, range: request.range }
    return table.query({ trans: request.trans, values: false, query }).then(({ result }) => result)
  }
  if (request.type === 'delete') return Promise.resolve(request.keys)
  return Promise.resolve(request.keys ?? request.values.map((value) => primaryKey.extractKey?.(value)))
}

/** Which of these are kept for the mark already, by key; their rows are not read. */
function keptAlready(down: DBCore, trans: DBCoreTransaction, mark: string, name: TableName, ids: readonly unknown[]): Promise<Set<string>> {
  const table = down.table(PAST)
  const index = table.schema.primaryKey
  const within = (lower: string, upper: string) => {
    const query = { index, range: { type: 2, lower, upper } }
    return table.query({ trans, values: false, query }).then(({ result }): string[] => result)
  }
  const keys = ids.map((id) => pastKey(mark, name, String(id)))
  const sorted = ids.length <= FEW ? [] : keys.toSorted()
  const asked = ids.length <= FEW ? keys.map((key) => within(key, key)) : [within(sorted[0] ?? '', sorted.at(-1) ?? '')]
  return Promise.all(asked).then((found) => new Set(found.flat()))
}

function weightOf(row: unknown): number {
  if (!isRow(row)) return LEAST_WEIGHT
  let weight = LEAST_WEIGHT
  for (const value of Object.values(row)) {
    if (typeof value === 'string') weight += value.length
    else if (typeof value === 'object' && value !== null) weight += NESTED_WEIGHT
  }
  return weight
}

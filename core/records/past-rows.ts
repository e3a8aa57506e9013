/**
 * Earlier states of everything, without a copy of everything: a snapshot is a mark (snapshots.ts), and a row is kept as it was when it is
 * changed for the first time behind the newest mark, in the transaction that changes it. So a mark costs the same however much is saved, what
 * never changes is kept once, and no write goes by it, whoever writes. Before the first mark nothing is kept.
 */
import type { DBCore, DBCoreKeyRange, DBCoreMutateRequest, DBCoreTable, DBCoreTransaction, Dexie } from 'dexie'
import { ANY, keysThere, RANGE } from './keys-there.ts'
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

/** Rows that were not there at a mark and came together, in one row for all of them. */
export interface CameTogether {
  key: string
  snapshot: string
  table: TableName
  /** Their ids. What this says of one goes before what a row of its own says for the same mark. */
  came: readonly string[]
  weight: number
  version: number
}

export const SNAPSHOTS = 'snapshots'
export const PAST = 'past'

export const pastKey = (snapshot: string, table: string, id: string): string => `${snapshot} ${table} ${id}`

/** Beside the name of a table in the key of what came together; no table is called so. */
const TOGETHER = '+'
/** The key of what came together as the so-and-so-many-th of its table behind a mark. */
const cameKey = (snapshot: string, table: string, place: number, first: string): string =>
  pastKey(snapshot, table + TOGETHER, `${place} ${first}`)
/** Is it the key of rows that came together? Ids may be anything: what is before them decides. */
export const isCameKey = (key: string): boolean => key.split(' ', 2)[1]?.endsWith(TOGETHER) ?? false

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
      table: (name) => (isTable(name) ? keeping(down, name, version) : name === SNAPSHOTS ? marking(down.table(name)) : down.table(name))
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

  /** What is asked is asked side by side: each answer waits for all that is being written before it. */
  function keep(mark: string, ids: readonly unknown[], trans: DBCoreTransaction): Promise<void> {
    const asked = Promise.all([keptAlready(down, trans, mark, name, ids), newAmong(table, trans, ids), cameBefore(mark, ids, trans)])
    return asked.then(([known, isNew, before]) => {
      const missing = ids.filter((id) => !known.has(pastKey(mark, name, String(id))))
      const came = missing.filter((id) => typeof id === 'string').filter((id) => isNew.has(id))
      const others = came.length <= FEW ? missing : missing.filter((id) => typeof id !== 'string' || !isNew.has(id))
      if (missing.length === 0) return
      return (others.length === 0 ? Promise.resolve([]) : table.getMany({ trans, keys: [...others] }))
        .then((rows) => {
          const values: (PastRow | CameTogether)[] = others.map((id, at) => pastRow(mark, id, rows[at]))
          if (came.length > FEW) values.push(cameTogether(mark, came, before))
          return down.table(PAST).mutate({ type: 'put', trans, values })
        })
        .then(({ numFailures, failures }) => {
          if (numFailures > 0) throw Object.values(failures)[0]
        })
    })
  }

  function pastRow(mark: string, id: unknown, found: unknown): PastRow {
    const row: unknown = found ?? null
    return { key: pastKey(mark, name, String(id)), snapshot: mark, table: name, id: String(id), row, weight: weightOf(row), version }
  }

  /** How many rows there are of what came together behind a mark, where another may come. */
  function cameBefore(mark: string, ids: readonly unknown[], trans: DBCoreTransaction): Promise<number> {
    if (ids.length <= FEW) return Promise.resolve(0)
    const past = down.table(PAST)
    const all = pastKey(mark, name + TOGETHER, '')
    const query = { index: past.schema.primaryKey, range: { type: RANGE, lower: all, upper: `${all}\uffff` } }
    return past.count({ trans, query })
  }

  /** Another key than any of this mark before it: none of them is written over. */
  function cameTogether(mark: string, came: readonly string[], before: number): CameTogether {
    const key = cameKey(mark, name, before, came[0] ?? '')
    return { key, snapshot: mark, table: name, came, weight: came.reduce((sum, id) => sum + id.length, LEAST_WEIGHT), version }
  }
}

/** Those of many that are not there yet, where that is quickly told. */
function newAmong(table: DBCoreTable, trans: DBCoreTransaction, ids: readonly unknown[]): Promise<ReadonlySet<string>> {
  const texts = ids.filter((id) => typeof id === 'string')
  if (texts.length <= FEW) return Promise.resolve(new Set<string>())
  return keysThere(table, trans, texts).then((there) => new Set(there === null ? [] : texts.filter((id) => !there.has(id))))
}

/** The table of marks, of which the newest is known until another is written. */
const marking = (table: DBCoreTable): DBCoreTable => ({
  ...table,
  mutate: (request) => {
    newest.delete(request.trans)
    return table.mutate(request)
  }
})
const newest = new WeakMap<DBCoreTransaction, Promise<string | undefined>>()

/** Everything in a store. */
const everything = (down: DBCore): DBCoreKeyRange => ({ type: ANY, lower: down.MIN_KEY, upper: down.MAX_KEY })

/** Keys of marks are of one length and count up. */
function newestMark(down: DBCore, trans: DBCoreTransaction): Promise<string | undefined> {
  const known = newest.get(trans)
  if (known !== undefined) return known
  const table = down.table(SNAPSHOTS)
  const query = { index: table.schema.primaryKey, range: everything(down) }
  const asked = table.query({ trans, values: false, query }).then(({ result }): string | undefined => result.at(-1))
  newest.set(trans, asked)
  return asked
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
    const query = { index, range: { type: RANGE, lower, upper } }
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

import { Dexie, type DexieOptions, liveQuery, type Table, type Transaction } from 'dexie'
import { currentVersion, MIGRATIONS, type Migration } from './migrations.ts'
import { keepPastRows, PAST, SNAPSHOTS } from './past-rows.ts'
import type { Row } from './row.ts'
import { TABLES, type TableName } from './schemas.ts'
import type { BATCHES } from './summary-batches.ts'
import { summing } from './summing.ts'
import { troubleOf } from './trouble.ts'

/** `summaries`, `verdicts` and `answers` are made of the others, and anew where they are missing (see summaries.ts, verdicts.ts). */
type Beside = 'summaries' | typeof BATCHES | 'verdicts' | 'answers'
export type StoreName = TableName | 'setAside' | 'local' | Beside | typeof SNAPSHOTS | typeof PAST
/** Everything that is saved, in one transaction. */
export const EVERY_STORE: readonly StoreName[] = [...TABLES, 'setAside', 'local', SNAPSHOTS, PAST]

/** The database, open. Rows are unknown until a schema has said what they are. */
export interface Records {
  db: Dexie
  version: number
  rows: (table: StoreName) => Table<unknown, string>
  /**
   * Several reads and writes as one transaction over these tables: answered once it is committed, and where anything fails nothing is
   * written. Only what is asked of the records handed to `act` is of it; within another it is part of that one.
   */
  together: <T>(mode: 'r' | 'rw', tables: readonly StoreName[], act: (records: Records) => Promise<T>) => Promise<T>
  /** Why nothing can be read or saved through this connection any more; null while it stands. */
  ended: () => Ending | null
  /** Calls back when it ends; it ends once, for good: a page that was open meanwhile never writes into what came after. */
  onEnded: (tell: (why: Ending) => void) => void
}

/** `outdated`: a later version of this program opened what is saved. `deleted`: it was deleted, by another page or with the browser's data. */
export type Ending = 'outdated' | 'deleted'

/**
 * `newer`: saved by a later version of this program; it was not touched. `unavailable`: the browser gives no database
 * (a private window, storage switched off, a broken disk). `full`: there is no room even to open it.
 */
export type Opened = { ok: true; records: Records } | { ok: false; problem: 'newer' | 'unavailable' | 'full'; detail: string }

export const DATABASE_NAME = 'seam-reckoner'
/** Dexie multiplies its version numbers by ten. */
const NATIVE = 10

/**
 * Opens what is saved, brought to this program's version. Never throws. It may wait as long as the browser does: while a page of an
 * older version holds the database, `onBlocked` is called and the answer comes once that page is closed.
 */
export async function openRecords(
  name = DATABASE_NAME,
  migrations: readonly Migration[] = MIGRATIONS,
  onBlocked: () => void = () => undefined
): Promise<Opened> {
  try {
    // Dexie would open a newer database and could mend its schema: so the version is read first, by hand
    const installed = (await installedVersion(name)) / NATIVE
    const own = currentVersion(migrations)
    if (Math.floor(installed) > own) return { ok: false, problem: 'newer', detail: `${Math.floor(installed)} > ${own}` }
    const db = new Dexie(name, OPTIONS)
    db.use(summing)
    db.on('blocked', onBlocked)
    if (migrations.some(({ stores }) => PAST in stores)) keepPastRows(db, own)
    for (const { number, stores, change, together } of migrations) {
      const version = db.version(number).stores(stores)
      if (change === undefined && together === undefined) continue
      version.upgrade(async (transaction) => {
        if (change !== undefined) for (const table of transaction.storeNames) await changeRows(transaction.table(table), change)
        if (together !== undefined) await changeTogether(transaction, together)
      })
    }
    await db.open()
    return { ok: true, records: recordsIn(db, own) }
  } catch (error) {
    const problem = troubleOf(error) === 'full' ? 'full' : 'unavailable'
    return { ok: false, problem, detail: error instanceof Error ? `${error.name}: ${error.message}` : String(error) }
  }
}

function recordsIn(db: Dexie, version: number): Records {
  const records: Records = { db, version, rows: (table) => db.table<unknown, string>(table), together, ...endingOf(db) }
  return records

  function together<T>(mode: 'r' | 'rw', tables: readonly StoreName[], act: (records: Records) => Promise<T>): Promise<T> {
    // a promise of the page's own kind: what awaits it has left the transaction
    return new Promise((resolve, reject) => {
      const stores = tables.map((table) => records.rows(table))
      db.transaction(mode, stores, (transaction) => act(within(transaction))).then(resolve, reject)
    })
  }

  /** Dexie follows which transaction an async function is in, and loses it in a long one: here each table is told its own. */
  function within(transaction: Transaction): Records {
    const its: Records = {
      ...records,
      rows: (table) => transaction.table<unknown, string>(table),
      together: (_mode, _tables, act) => act(its)
    }
    return its
  }
}

/**
 * What is said to be saved is on the disk, as far as the browser can tell (`durability: 'strict'` of the IndexedDB standard; where a browser
 * does not know it, its own usage); nothing is shown before it is saved; a connection that was given up is never opened again unasked.
 */
const OPTIONS: DexieOptions = { chromeTransactionDurability: 'strict', cache: 'disabled', autoOpen: false }

/** Gives the connection up when another page wants the database in a later version, or deleted; and tells it. */
function endingOf(db: Dexie): Pick<Records, 'ended' | 'onEnded'> {
  let ending: Ending | null = null
  const told: ((why: Ending) => void)[] = []
  const end = (why: Ending) => {
    if (ending !== null) return
    ending = why
    db.close()
    for (const tell of told) tell(why)
  }
  db.on('versionchange', ({ newVersion }) => {
    end(newVersion === null || newVersion === 0 ? 'deleted' : 'outdated')
    // Dexie's own answer would open the database again, even a later version's
    return false
  })
  // the browser closes it by force when its data are cleared
  db.backendDB().addEventListener('close', () => end('deleted'))
  return {
    ended: () => ending,
    onEnded: (tell) => {
      if (ending === null) told.push(tell)
      else tell(ending)
    }
  }
}

const changeRows = (table: Table<Row>, change: NonNullable<Migration['change']>) =>
  table.toCollection().modify((row, cursor) => {
    cursor.value = change(table.name, row)
  })

async function changeTogether(transaction: Transaction, { tables, change }: NonNullable<Migration['together']>): Promise<void> {
  const before = new Map<string, unknown[]>()
  for (const name of tables) before.set(name, await transaction.table(name).toArray())
  const after = change(Object.fromEntries(before))
  for (const name of tables) {
    const changed = after[name]?.filter((row, place) => row !== before.get(name)?.[place]) ?? []
    await transaction.table(name).bulkPut(changed)
  }
}

/** The native version on disk, 0 for none; opens nothing for good and makes nothing. */
function installedVersion(name: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name)
    let fresh = false
    request.onupgradeneeded = () => {
      fresh = true
      request.transaction?.abort()
    }
    request.onsuccess = () => {
      const { version } = request.result
      request.result.close()
      resolve(version)
    }
    request.onerror = (event) => {
      event.preventDefault()
      if (fresh) resolve(0)
      else reject(request.error)
    }
  })
}

/** Calls back with the answer of a query now and whenever what it read changes, in this page or another. Returns the way to stop. */
export function watch<T>(query: () => Promise<T>, onValue: (value: T) => void, onError: (error: unknown) => void): () => void {
  // Dexie follows a query past its first await only when the function it is given is itself declared async: a plain one that
  // hands on a promise is watched for its first table alone, and changes of the others go unseen in a real browser
  const subscription = liveQuery(async () => await query()).subscribe({ next: onValue, error: onError })
  return () => subscription.unsubscribe()
}

/** This browser's own id, made once; it is in no backup. */
export async function deviceId(records: Records, newId: () => string): Promise<string> {
  const known = async (from: Records): Promise<string | null> => {
    const row = await from.rows('local').get('device')
    return typeof row === 'object' && row !== null && 'value' in row && typeof row.value === 'string' ? row.value : null
  }
  // mostly it is there, and nothing has to be written
  const before = await known(records)
  if (before !== null) return before
  return records.together('rw', ['local'], async (records) => {
    const meanwhile = await known(records)
    if (meanwhile !== null) return meanwhile
    const value = newId()
    await records.rows('local').put({ key: 'device', value })
    return value
  })
}

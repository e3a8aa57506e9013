import { Dexie, liveQuery, type Table, type Transaction } from 'dexie'
import { currentVersion, MIGRATIONS, type Migration } from './migrations.ts'
import type { Row } from './row.ts'
import type { TableName } from './schemas.ts'

/** The database, open. Rows are unknown until a schema has said what they are. */
export interface Records {
  db: Dexie
  version: number
  rows: (table: TableName | 'setAside' | 'local') => Table<unknown, string>
}

/**
 * `newer`: saved by a later version of this program; it was not touched. `unavailable`: the browser gives no database
 * (a private window, storage switched off, a full disk).
 */
export type Opened = { ok: true; records: Records } | { ok: false; problem: 'newer' | 'unavailable'; detail: string }

export const DATABASE_NAME = 'seam-reckoner'
/** Dexie multiplies its version numbers by ten. */
const NATIVE = 10

/** Opens what is saved, brought to this program's version. Never throws. */
export async function openRecords(name = DATABASE_NAME, migrations: readonly Migration[] = MIGRATIONS): Promise<Opened> {
  try {
    // Dexie would open a newer database and could mend its schema: so the version is read first, by hand
    const installed = (await installedVersion(name)) / NATIVE
    const own = currentVersion(migrations)
    if (Math.floor(installed) > own) return { ok: false, problem: 'newer', detail: `${Math.floor(installed)} > ${own}` }
    const db = new Dexie(name)
    for (const { number, stores, change, together } of migrations) {
      const version = db.version(number).stores(stores)
      if (change === undefined && together === undefined) continue
      version.upgrade(async (transaction) => {
        if (change !== undefined) for (const table of transaction.storeNames) await changeRows(transaction.table(table), change)
        if (together !== undefined) await changeTogether(transaction, together)
      })
    }
    await db.open()
    return { ok: true, records: { db, version: own, rows: (table) => db.table<unknown, string>(table) } }
  } catch (error) {
    return { ok: false, problem: 'unavailable', detail: error instanceof Error ? `${error.name}: ${error.message}` : String(error) }
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
  return records.db.transaction('rw', records.rows('local'), async () => {
    const row = await records.rows('local').get('device')
    if (typeof row === 'object' && row !== null && 'value' in row && typeof row.value === 'string') return row.value
    const value = newId()
    await records.rows('local').put({ key: 'device', value })
    return value
  })
}

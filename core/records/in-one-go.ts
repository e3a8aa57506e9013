import type { Records } from './database.ts'
import { TABLES } from './schemas.ts'

/**
 * One act of saving, whole or not at all: its answer comes once everything that it wrote is committed, and where anything in it
 * fails nothing of it is written. Pages save through this alone (entrypoints/view/saving.ts). Rejects as the database does; see troubleOf.
 */
export function inOneGo<T>(records: Records, act: () => Promise<T>): Promise<T> {
  const stores = [...TABLES, 'setAside' as const, 'local' as const].map((table) => records.rows(table))
  // a promise of the page's own kind: what awaits it leaves the transaction
  return new Promise((resolve, reject) => records.db.transaction('rw', stores, act).then(resolve, reject))
}

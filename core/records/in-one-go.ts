import type { Records } from './database.ts'
import { TABLES } from './schemas.ts'

/**
 * One act of saving, whole or not at all: its answer comes once everything that it wrote is committed, and where anything in it
 * fails nothing of it is written. Pages save through this alone (entrypoints/view/saving.ts). Rejects as the database does; see troubleOf.
 */
export function inOneGo<T>(records: Records, act: (records: Records) => Promise<T>): Promise<T> {
  return records.together('rw', [...TABLES, 'setAside', 'local'], act)
}

import { EVERY_STORE, type Records } from './database.ts'
import { letSnapshotsGo } from './snapshots.ts'
import { troubleOf } from './trouble.ts'

/**
 * One act of saving, whole or not at all: its answer comes once everything that it wrote is committed, and where anything in it
 * fails nothing of it is written. Pages save through this alone (entrypoints/view/saving.ts). Where there is no room, the snapshots are given up
 * for it, and it is done once more. Rejects as the database does; see troubleOf.
 */
export async function inOneGo<T>(records: Records, act: (records: Records) => Promise<T>): Promise<T> {
  const once = () => records.together('rw', EVERY_STORE, act)
  try {
    return await once()
  } catch (error) {
    if (troubleOf(error) !== 'full' || !(await roomMade(records))) throw error
    return once()
  }
}

async function roomMade(records: Records): Promise<boolean> {
  try {
    return await letSnapshotsGo(records)
  } catch {
    // not even room to give up room: what the act said of it counts
    return false
  }
}

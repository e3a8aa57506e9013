/** Keeps how everything is, once a day: behind the first drawing of a page, so that opening it waits for nothing. */
import type { Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import { letSnapshotsGo, snapshotOfTheDay } from '../../core/records/snapshots.ts'
import { troubleOf } from '../../core/records/trouble.ts'

/** A page that is closed sooner leaves it to the next. */
const AFTER_MS = 3000

export function keepDayByDay(records: Records, stamp: () => Stamp, afterMs = AFTER_MS): void {
  setTimeout(() => void keepToday(records, stamp()), afterMs)
}

/** Nobody waits for it and nobody typed it: where it fails the page goes on, and where there is no room the earlier ones go. */
export async function keepToday(records: Records, stamp: Stamp): Promise<void> {
  if (records.ended() !== null) return
  try {
    await snapshotOfTheDay(records, stamp)
  } catch (error) {
    console.error(error)
    if (troubleOf(error) === 'full') await letSnapshotsGo(records).catch(console.error)
  }
}

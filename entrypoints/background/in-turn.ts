import { openRecords, type Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import { troubleOf } from '../../core/records/trouble.ts'
import { newStamps, stampsOf } from '../platform/stamp.ts'
import { tellPages } from '../platform/troubles.ts'

export type Work = (records: Records, stamp: () => Stamp) => Promise<void>

let last: Promise<void> = Promise.resolve()
let ready: Promise<{ records: Records; stamp: () => Stamp } | null> | null = null

/**
 * Does one piece of work after those before it, so that events take effect in the order they came in. Where the records
 * can't be opened or written nothing is done: the pages that are open say so, and the next event tries again.
 */
export function inTurn(work: Work): Promise<void> {
  last = last.then(async () => {
    ready ??= open()
    const opened = await ready
    if (opened === null) {
      ready = null
      tellPages('unavailable')
      return
    }
    try {
      await work(opened.records, opened.stamp)
    } catch (error) {
      console.error(error)
      tellPages(opened.records.ended() ?? troubleOf(error))
      opened.records.db.close()
      ready = null
    }
  })
  return last
}

async function open() {
  const opened = await openRecords()
  if (!opened.ok) return null
  // without room for this browser's own id the pages still follow their tabs as far as they can
  return { records: opened.records, stamp: await stampsOf(opened.records).catch(() => newStamps()) }
}

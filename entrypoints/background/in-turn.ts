import { openRecords, type Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import { stampsOf } from '../platform/stamp.ts'

export type Work = (records: Records, stamp: () => Stamp) => Promise<void>

let last: Promise<void> = Promise.resolve()
let ready: Promise<{ records: Records; stamp: () => Stamp } | null> | null = null

/**
 * Does one piece of work after those before it, so that events take effect in the order they came in. Where the records
 * can't be opened nothing is done: the pages say so, and the next event tries again.
 */
export function inTurn(work: Work): Promise<void> {
  last = last.then(async () => {
    ready ??= open()
    const opened = await ready
    if (opened === null) {
      ready = null
      return
    }
    try {
      await work(opened.records, opened.stamp)
    } catch (error) {
      console.error(error)
      opened.records.db.close()
      ready = null
    }
  })
  return last
}

async function open() {
  const opened = await openRecords()
  return opened.ok ? { records: opened.records, stamp: await stampsOf(opened.records) } : null
}

import type { Records } from '../../core/records/database.ts'
import type { Look, Stamp } from '../../core/records/schemas.ts'

/** A tab as the browser tells it; address and title only where the person's click allows it. */
export interface TabToRead {
  id: number
  windowId: number
  url?: string | undefined
  title?: string | undefined
}

/**
 * Reads the page in a tab (the click that called this grants it) and stores what was found as a look: the same look
 * again when the same page was read before, so that corrections, answers and notes stay. Never throws: a page that
 * can't be read is a look with a `problem`.
 */
export async function captureTab(_tab: TabToRead, _records: Records, _stamp: Stamp): Promise<Look> {
  throw new Error('not built yet')
}

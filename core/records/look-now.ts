/** The one look that a page shows, by its id or by where its page is: the others, with their texts, are not read. */
import { Dexie } from 'dexie'
import type { Records } from './database.ts'
import { one } from './find.ts'
import { lookFor } from './look-pages.ts'
import { isRecordOf, type Look } from './schemas.ts'

/** A look; one whose listing was removed is kept no longer. null: there is none. */
export async function lookNow(records: Records, id: string): Promise<Look | null> {
  const look = await one(records, 'looks', id)
  return look === null ? null : asKept(records, look)
}

async function asKept(records: Records, look: Look): Promise<Look> {
  if (look.keptId === null || (await one(records, 'listingsKept', look.keptId)) !== null) return look
  return { ...look, keptId: null }
}

/** The look to show beside a window (null: whichever was read last), as lookFor chooses it among all. */
export async function lookBeside(records: Records, windowId: number | null, frontTabId: number | null): Promise<Look | null> {
  if (windowId === null) return lastLook(records)
  const looks = records.rows('looks')
  const inFront: unknown[] = await looks.where('[windowId+page]').equals([windowId, 'in-front']).toArray()
  const near = [
    ...inFront,
    ...(frontTabId === null ? [] : await newest(records, '[tabId+capturedAt]', frontTabId)),
    ...(await newest(records, '[windowId+capturedAt]', windowId))
  ].filter(isPresent)
  const look = lookFor([...new Map(near.map((one) => [one.id, one])).values()], windowId, frontTabId)
  return look === null ? lastLook(records, (one) => one.windowId === null) : asKept(records, look)
}

/** The last read of a tab or a window that can be read. */
async function newest(records: Records, index: string, of: number): Promise<unknown[]> {
  const all = records.rows('looks').where(index).between([of, Dexie.minKey], [of, Dexie.maxKey]).reverse()
  return all.filter(isPresent).limit(1).toArray()
}

/** The look that was read last, of those that pass; null: there is none. */
export async function lastLook(records: Records, passes: (look: Look) => boolean = () => true): Promise<Look | null> {
  const all = records.rows('looks').orderBy('capturedAt').reverse()
  const [look] = await all
    .filter((row) => isPresent(row) && passes(row))
    .limit(1)
    .toArray()
  return isPresent(look) ? asKept(records, look) : null
}

const isPresent = (row: unknown): row is Look => isRecordOf('looks', row) && row.deletedAt === null

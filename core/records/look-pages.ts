/** Where the pages of the looks are: told by tab events, which need no permission and say no address. */
import { patch } from './change.ts'
import type { Records } from './database.ts'
import { all } from './find.ts'
import type { Fields, Look, PageMark, Stamp } from './schemas.ts'

type Mark = Partial<Pick<Fields<'looks'>, 'page' | 'tabId' | 'windowId'>>

/** Another tab came forward in a window. */
export const tabCameForward = (records: Records, windowId: number, tabId: number, stamp: Stamp): Promise<void> =>
  markAll(records, stamp, (look) => {
    if (look.tabId === tabId && (look.page === 'behind' || look.page === 'in-front')) return { page: 'in-front', windowId }
    if (look.windowId === windowId && look.page === 'in-front') return { page: 'behind' }
    return null
  })

/** The page in a tab gave way to another (or to itself, loaded anew: it is to be read again). */
export const tabNavigated = (records: Records, tabId: number, stamp: Stamp): Promise<void> =>
  markAll(records, stamp, (look) => (look.tabId === tabId && isOpen(look.page) ? { page: 'navigated' } : null))

/** A page that was left came back as it was (the browser kept it whole). */
export const pageCameBack = (records: Records, tabId: number, pageAddress: string, stamp: Stamp): Promise<void> =>
  markAll(records, stamp, (look) =>
    look.tabId === tabId && look.page === 'navigated' && look.pageAddress === pageAddress ? { page: 'in-front' } : null
  )

/** A tab was closed. */
export const tabClosed = (records: Records, tabId: number, stamp: Stamp): Promise<void> =>
  markAll(records, stamp, (look) => (look.tabId === tabId ? { page: 'closed', tabId: null } : null))

/** A tab was moved to another window. */
export const tabMoved = (records: Records, tabId: number, windowId: number, stamp: Stamp): Promise<void> =>
  markAll(records, stamp, (look) => (look.tabId === tabId ? { windowId } : null))

/**
 * The browser was started: tabs and windows have new numbers, so no look knows its page until it is read again. Looks that
 * nothing was typed into and that were read before `forgetBefore` are taken away for good.
 */
export async function browserStarted(records: Records, forgetBefore: string, stamp: Stamp): Promise<void> {
  await markAll(records, stamp, (look) => (look.page === 'none' ? { windowId: null } : { page: 'unknown', tabId: null, windowId: null }))
  const old = (await all(records, 'looks')).filter((look) => look.capturedAt < forgetBefore && isUntouched(look))
  await records.rows('looks').bulkDelete(old.map((look) => look.id))
}

/** The look a panel shows beside a window: of the tab in front, else the latest of the window, else the latest of no window. */
export function lookFor(looks: readonly Look[], windowId: number, frontTabId: number | null = null): Look | null {
  const newest = [...looks].sort((a, b) => (a.capturedAt < b.capturedAt ? 1 : -1))
  const here = newest.filter((look) => look.windowId === windowId)
  const inFront = here.find((look) => look.page === 'in-front')
  const ofTab = newest.find((look) => frontTabId !== null && look.tabId === frontTabId)
  return inFront ?? ofTab ?? here[0] ?? newest.find((look) => look.windowId === null) ?? null
}

const isOpen = (page: PageMark): boolean => page === 'in-front' || page === 'behind'
const isUntouched = (look: Look): boolean => look.undo.length === 0 && look.keptId === null && Object.keys(look.drafts).length === 0

async function markAll(records: Records, stamp: Stamp, mark: (look: Look) => Mark | null): Promise<void> {
  await records.db.transaction('rw', records.rows('looks'), async () => {
    for (const look of await all(records, 'looks')) {
      const changes = mark(look)
      if (changes !== null && differs(look, changes)) await patch(records, 'looks', look.id, changes, stamp)
    }
  })
}

const differs = (look: Look, { page = look.page, tabId = look.tabId, windowId = look.windowId }: Mark): boolean =>
  page !== look.page || tabId !== look.tabId || windowId !== look.windowId

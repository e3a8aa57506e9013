/** Where the pages of the looks are: told by tab events, which need no permission and say no address. */
import { patch } from './change.ts'
import type { Records } from './database.ts'
import { all, where } from './find.ts'
import { pageAddressOf } from './look-text.ts'
import type { Fields, Look, PagePlace, Stamp } from './schemas.ts'

type PlaceChange = Partial<Pick<Fields<'looks'>, 'page' | 'tabId' | 'windowId'>>

/** Another tab came forward in a window. */
export const tabCameForward = (records: Records, windowId: number, tabId: number, stamp: Stamp): Promise<void> =>
  changePlaces(records, stamp, { windowId, tabId }, (look) => {
    if (look.tabId === tabId) return isOpen(look.page) ? { page: 'in-front', windowId } : null
    return look.page === 'in-front' ? { page: 'behind' } : null
  })

/**
 * A page began to load, or an address changed, in a tab. Where the address can't be seen every look of the tab is left;
 * where it can, a look of the same address stays or comes back, and the others are left.
 */
export const tabShows = (records: Records, tabId: number, address: string | null, inFront: boolean, stamp: Stamp): Promise<void> =>
  changePlaces(records, stamp, { tabId }, (look) => {
    const same = address !== null && look.pageAddress === pageAddressOf(address)
    if (same) return look.page === 'navigated' ? { page: inFront ? 'in-front' : 'behind' } : null
    return isOpen(look.page) ? { page: 'navigated' } : null
  })

/** A tab was closed. */
export const tabClosed = (records: Records, tabId: number, stamp: Stamp): Promise<void> =>
  changePlaces(records, stamp, { tabId }, () => ({ page: 'closed', tabId: null }))

/** A tab was moved to another window. */
export const tabMoved = (records: Records, tabId: number, windowId: number, stamp: Stamp): Promise<void> =>
  changePlaces(records, stamp, { tabId }, () => ({ windowId }))

/**
 * The browser was started: tabs and windows have new numbers, so no look knows its page until it is read again. Looks that
 * nothing was typed into and that were read before `forgetBefore` are taken away for good.
 */
export async function browserStarted(records: Records, forgetBefore: string, stamp: Stamp): Promise<void> {
  await changePlaces(records, stamp, {}, (look) =>
    look.page === 'none' ? { windowId: null } : { page: 'unknown', tabId: null, windowId: null }
  )
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

const isOpen = (page: PagePlace): boolean => page === 'in-front' || page === 'behind'
const isUntouched = (look: Look): boolean => look.undo.length === 0 && look.keptId === null && Object.keys(look.drafts).length === 0

/** Marks the looks of a tab or a window (all of them where none is named); those it says nothing of are not read. */
async function changePlaces(
  records: Records,
  stamp: Stamp,
  of: { tabId?: number; windowId?: number },
  mark: (look: Look) => PlaceChange | null
): Promise<void> {
  await records.together('rw', ['looks'], async (records) => {
    for (const look of await looksOf(records, of)) {
      const changes = mark(look)
      if (changes !== null && differs(look, changes)) await patch(records, 'looks', look.id, changes, stamp)
    }
  })
}

async function looksOf(records: Records, { tabId, windowId }: { tabId?: number; windowId?: number }): Promise<Look[]> {
  if (tabId === undefined && windowId === undefined) return all(records, 'looks')
  const ofTab = tabId === undefined ? [] : await where(records, 'looks', 'tabId', tabId)
  const ofWindow = windowId === undefined ? [] : await where(records, 'looks', 'windowId', windowId)
  return [...ofTab, ...ofWindow.filter((look) => look.tabId !== tabId)]
}

const differs = (look: Look, { page = look.page, tabId = look.tabId, windowId = look.windowId }: PlaceChange): boolean =>
  page !== look.page || tabId !== look.tabId || windowId !== look.windowId

/** Whether an answer is about the page in front of the person. Pure: what the records and the browser say comes in. */
import type { Place } from '../../components/judged.ts'
import { lookFor } from '../../core/records/look-pages.ts'
import type { Look } from '../../core/records/schemas.ts'

/** What a window shows, as far as it is known. */
export interface InFront {
  windowId: number | null
  /** null: not known. */
  tabId: number | null
}
export interface Standing {
  look: Look | null
  place: Place
}

/**
 * The look to show beside a window and how it stands to the page in front of it. It is of the page in front only when the
 * record says so and the browser shows that very tab: while the two disagree (a tab just came forward and the record is not
 * yet changed) the answer is marked. After a restart no look knows its page, so each is marked until it is read again.
 */
export function standingOf(looks: readonly Look[], { windowId, tabId }: InFront): Standing {
  const look = windowId === null ? (newest(looks) ?? null) : lookFor(looks, windowId, tabId)
  return { look, place: look === null ? 'none' : placeOf(look, { windowId, tabId }) }
}

export function placeOf(look: Pick<Look, 'page' | 'tabId' | 'windowId'>, { windowId, tabId }: InFront): Place {
  if (look.page === 'none') return 'none'
  const sameTab = look.tabId !== null && look.tabId === tabId
  const sameWindow = windowId === null || look.windowId === windowId
  return look.page === 'in-front' && sameTab && sameWindow ? 'here' : 'elsewhere'
}

const newest = (looks: readonly Look[]): Look | undefined => [...looks].sort((a, b) => (a.capturedAt < b.capturedAt ? 1 : -1))[0]

/** What the worker could not save is said by the pages that are open: it has no page of its own. */
import { browser } from 'wxt/browser'
import * as z from 'zod/mini'
import { TROUBLES, type Trouble } from '../../core/records/trouble.ts'

const message = z.object({ is: z.literal('not-saved'), trouble: z.enum(TROUBLES) })

/** Tells the pages that are open; where none is, nobody is there to be told, and the next reading tries again. */
export function tellPages(trouble: Trouble): void {
  browser.runtime.sendMessage({ is: 'not-saved', trouble }).catch(() => undefined)
}

/** Calls back with what the worker could not save. Returns the way to stop. */
export function onTrouble(tell: (trouble: Trouble) => void): () => void {
  const hear = (heard: unknown): undefined => {
    const parsed = message.safeParse(heard)
    if (parsed.success) tell(parsed.data.trouble)
  }
  browser.runtime.onMessage.addListener(hear)
  return () => browser.runtime.onMessage.removeListener(hear)
}

import { browser } from 'wxt/browser'
import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script'
import type { PageFound } from './page-found.ts'
import type { PageMessage } from './page-message.ts'
import { readPage } from './read-page.ts'
import { watchPage } from './watch-page.ts'

/** Injected on a click; what it returns is the result of the injection. */
export default defineUnlistedScript((): PageFound => {
  watchPage(document, tell)
  return readPage(document)
})

/** Nobody may be listening any more, and the page goes on without us. */
function tell(message: PageMessage): void {
  try {
    browser.runtime.sendMessage(message).catch(() => undefined)
  } catch {
    // the extension was taken away or renewed
  }
}

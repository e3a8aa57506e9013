/** Why a page could not be read, from what the browser says and what the page gave. */
import type { LookProblem } from '../../core/records/schemas.ts'
import type { PageFound } from './page-found.ts'

/** Browsers keep extensions off the pages of their own extension stores. */
const STORES =
  /^https:\/\/(chromewebstore\.google\.com|chrome\.google\.com\/webstore|addons\.mozilla\.org|microsoftedge\.microsoft\.com\/addons)(\/|$)/
const OWN_PAGES = /^(?!https?:|file:|ftp:|data:|blob:)[a-z][a-z-]*:/i
const PDF = /\.pdf($|[?#])/i

/** A refusal in the browser's own words (Chromium's and Firefox's), with the address where it is to be seen. */
export function problemOfRefusal(message: string, address: string): LookProblem {
  if (/no tab with id|invalid tab id|tab was closed|frame was removed|no frame with id/i.test(message)) return 'tab-gone'
  if (STORES.test(address) || /extensions gallery/i.test(message)) return 'store-page'
  if (OWN_PAGES.test(address) || /cannot access (contents of url )?(a |an )?["']?(?!https?:|file:)[a-z-]+:|error page/i.test(message))
    return 'browser-page'
  if (PDF.test(address)) return 'pdf'
  if (/cannot access contents|missing host permission|must request permission|policy/i.test(message)) return 'no-permission'
  return 'failed'
}

/** With less text of its own than this, a page whose window is filled by another origin's frame is that frame. */
const FRAME_TEXT = 600
const FRAME_SHARE = 0.3

/** A page that was read and gave nothing to go on; null when it gave something. */
export function problemOfPage(found: PageFound): LookProblem | null {
  if (found.selection !== '') return null
  if (found.contentType === 'application/pdf' || (found.text === '' && PDF.test(found.pageAddress))) return 'pdf'
  if (found.text.length < FRAME_TEXT && found.frames.largestShare >= FRAME_SHARE) return 'other-origin-frame'
  return found.text === '' ? 'empty' : null
}

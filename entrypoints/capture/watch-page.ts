import type { PageMessage } from './page-message.ts'

const CHECK_MS = 1000
const watched = new WeakSet<Document>()

/**
 * Tells when the page that was read goes or turns into another (also where no page is loaded: an address changed by script).
 * The teller may fail at any time: the extension is gone, the page is unloading.
 */
export function watchPage(page: Document, tell: (message: PageMessage) => void): void {
  const view = page.defaultView
  if (view === null || watched.has(page)) return
  watched.add(page)
  let address = page.location.href
  const check = () => {
    if (page.location.href === address) return
    address = page.location.href
    tell({ about: 'page', is: 'shown', address })
  }
  view.addEventListener('pagehide', () => tell({ about: 'page', is: 'left', address }))
  view.addEventListener('pageshow', (event) => {
    if (event.persisted) tell({ about: 'page', is: 'shown', address: page.location.href })
  })
  view.addEventListener('popstate', check)
  const timer = view.setInterval(check, CHECK_MS)
  view.addEventListener('pagehide', (event) => {
    if (!event.persisted) view.clearInterval(timer)
  })
}

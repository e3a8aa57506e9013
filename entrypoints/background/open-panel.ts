import { browser } from 'wxt/browser'

/** Opens the panel beside the pages of a window: the side panel, or Firefox's sidebar. Only within an act of the person's. */
export function openPanel(windowId: number): void {
  const opened = browser.sidePanel === undefined ? openSidebar() : browser.sidePanel.open({ windowId })
  // without a gesture, or where the person has switched it off, the answer waits in the records until the panel is opened
  opened.catch(() => undefined)
}

async function openSidebar(): Promise<void> {
  const host: object = browser
  if (!('sidebarAction' in host)) return
  const sidebar = host.sidebarAction
  if (typeof sidebar === 'object' && sidebar !== null && 'open' in sidebar && typeof sidebar.open === 'function') await sidebar.open()
}

import { browser } from 'wxt/browser'

/** Opens the panel beside the pages of a window: the side panel, or Firefox's sidebar. Only within an act of the person's. */
export function openPanel(windowId: number): void {
  const opened = browser.sidePanel === undefined ? openSidebar() : browser.sidePanel.open({ windowId })
  // without a gesture, or where the person has switched it off, the answer waits in the records until the panel is opened
  opened.catch(() => undefined)
}

/**
 * The same once something is saved that the panel is to find. Chromium closes the popup as the panel opens, perhaps before it was written, and lets
 * it open a moment after the press; Firefox opens its sidebar within the press alone, and leaves the popup.
 */
export async function openPanelOnceSaved(windowId: number, save: () => Promise<boolean>): Promise<boolean> {
  if (browser.sidePanel === undefined) openPanel(windowId)
  const saved = await save()
  if (saved && browser.sidePanel !== undefined) openPanel(windowId)
  return saved
}

async function openSidebar(): Promise<void> {
  const host: object = browser
  if (!('sidebarAction' in host)) return
  const sidebar = host.sidebarAction
  if (typeof sidebar === 'object' && sidebar !== null && 'open' in sidebar && typeof sidebar.open === 'function') await sidebar.open()
}

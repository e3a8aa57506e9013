import { type Browser, browser } from 'wxt/browser'
import { defineBackground } from 'wxt/utils/define-background'
import { browserStarted, tabCameForward, tabClosed, tabMoved, tabShows } from '../../core/records/look-pages.ts'
import { captureTab, type Picked } from '../capture/capture-tab.ts'
import { pageMessage } from '../capture/page-message.ts'
import { inTurn, type Work } from './in-turn.ts'
import { openPanel } from './open-panel.ts'

/** The ids that the browser knows the menu entry and the command by; the manifest names the command too. */
const MENU_READ = 'read-these-measurements'
const COMMAND_READ = 'read-this-page'
/** An untouched look is forgotten after this long. */
const LOOK_DAYS = 30

/**
 * The worker may be stopped at any moment and started by the next event, so it keeps nothing: every listener stands here
 * at the top, and each event is one piece of work on the records.
 */
export default defineBackground(() => {
  browser.runtime.onInstalled.addListener(() => {
    void makeMenu()
    // pages opened before an update no longer tell when they go
    void inTurn(started)
  })
  browser.runtime.onStartup.addListener(() => void inTurn(started))

  browser.contextMenus.onClicked.addListener((info, tab) => {
    if (info.menuItemId !== MENU_READ || tab === undefined || !info.selectionText) return
    readInPanel(tab, { text: info.selectionText, frameId: info.frameId })
  })
  browser.commands.onCommand.addListener((command, tab) => {
    if (command === COMMAND_READ && tab !== undefined) readInPanel(tab, null)
  })

  browser.tabs.onActivated.addListener(
    ({ tabId, windowId }) => void inTurn((records, stamp) => tabCameForward(records, windowId, tabId, stamp()))
  )
  browser.tabs.onRemoved.addListener((tabId) => void inTurn((records, stamp) => tabClosed(records, tabId, stamp())))
  browser.tabs.onAttached.addListener(
    (tabId, { newWindowId }) => void inTurn((records, stamp) => tabMoved(records, tabId, newWindowId, stamp()))
  )
  browser.tabs.onUpdated.addListener((tabId, change, tab) => {
    const address = change.url ?? tab.url ?? null
    // where the address can't be seen, only the beginning of a load says that the page goes
    if (address === null ? change.status !== 'loading' : change.status === undefined && change.url === undefined) return
    void inTurn((records, stamp) => tabShows(records, tabId, address, tab.active, stamp()))
  })
  browser.runtime.onMessage.addListener((message: unknown, sender) => {
    const parsed = pageMessage.safeParse(message)
    const tab = sender.tab
    if (!parsed.success || tab?.id === undefined) return
    const { id, active } = tab
    const address = parsed.data.is === 'shown' ? parsed.data.address : null
    void inTurn((records, stamp) => tabShows(records, id, address, active, stamp()))
  })
})

const started: Work = (records, stamp) => {
  const now = stamp()
  const forgetBefore = new Date(Date.parse(now.now) - LOOK_DAYS * 86_400_000).toISOString()
  return browserStarted(records, forgetBefore, now)
}

async function makeMenu(): Promise<void> {
  await browser.contextMenus.removeAll()
  browser.contextMenus.create({ id: MENU_READ, contexts: ['selection'], title: browser.i18n.getMessage('readTheseMeasurements') })
}

/** Reads and shows. The panel is opened first: the browser allows it only while it handles the person's own act. */
function readInPanel(tab: Browser.tabs.Tab, picked: Picked | null): void {
  const { id, windowId, url, title } = tab
  openPanel(windowId)
  if (id === undefined) return
  void inTurn(async (records, stamp) => {
    await captureTab({ id, windowId, url, title }, records, stamp(), picked)
  })
}

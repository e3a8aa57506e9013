/** The worker behind the pages: it may be stopped at any moment, and its menu reads what is selected, in frames too. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { Popup } from './rig/popup.ts'
import { Rig, until } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'
import { introduce } from './rig/workroom.ts'

/** What the worker has of the browser, as far as it is used here. */
declare const chrome: {
  tabs: { query: (of: { active: boolean }) => Promise<{ url?: string }[]> }
  contextMenus: {
    update: (id: string, changes: object) => Promise<void>
    onClicked: { dispatch: (info: object, tab: object | undefined) => void }
  }
}

let shop: Shop
let rig: Rig
beforeAll(async () => {
  shop = await openShop()
  rig = await Rig.start()
  await introduce(rig)
})
afterAll(async () => {
  await rig?.close()
  await shop?.close()
})

/** What is saved of the listings looked at. */
const looks = async () => {
  const page = await rig.tab(rig.address('popup.html?records'))
  const rows = await page.evaluate(
    () =>
      new Promise<{ title: string; text: string; readBy: string; page: string; problem: string | null }[]>((done, fail) => {
        const request = indexedDB.open('seam-reckoner')
        request.onerror = () => fail(request.error)
        request.onsuccess = () => {
          const all = request.result.transaction('looks').objectStore('looks').getAll()
          all.onsuccess = () => {
            request.result.close()
            done(all.result)
          }
        }
      })
  )
  await page.close()
  return rows
}

/** The worker, started again where the browser has stopped it. */
const worker = async () => rig.context.serviceWorkers()[0] ?? (await rig.context.waitForEvent('serviceworker'))

test('text selected in a frame of another origin comes through the menu, under the title of its page', async () => {
  const page = await rig.tab(shop.item('text-in-a-frame'))
  const popup = await Popup.over(rig, page)
  expect(await popup.says()).toContain('The listing is in a frame from another address')
  await page.bringToFront()
  // no menu opens without a screen; the press on the button has given what the choice in the menu would give
  await (await worker()).evaluate(async () => {
    const { tabs, contextMenus } = chrome
    const [tab] = await tabs.query({ active: true })
    const info = { menuItemId: 'read-these-measurements', selectionText: 'Chest 52 cm flat. Length 70 cm.', frameId: 4, editable: false }
    contextMenus.onClicked.dispatch({ ...info, pageUrl: tab?.url }, tab)
  })
  const read = await until('the selection to be kept', async () => (await looks()).find(({ readBy }) => readBy === 'menu'))
  expect(read).toMatchObject({ text: 'Chest 52 cm flat. Length 70 cm.', problem: null })
  expect(read.title).not.toBe('')
  await page.close()
})

test('the menu entry is there', async () => {
  const there = await (await worker()).evaluate(async () => {
    await chrome.contextMenus.update('read-these-measurements', {})
    return true
  })
  expect(there).toBe(true)
})

test('a worker that was stopped takes up where it was: tabs are followed, nothing is forgotten', async () => {
  const first = await rig.tab(shop.item('charcoal-wool-trousers'))
  const second = await rig.tab(shop.item('indigo-jeans'))
  const panel = await (await Popup.over(rig, first)).openBeside()
  await Popup.over(rig, second)
  await until('the jeans to be shown', async () => (await panel.title()) === 'Indigo jeans, straight leg')

  const own = await rig.tab(rig.address('workroom.html'))
  const session = await rig.context.newCDPSession(own)
  const states: string[] = []
  session.on('ServiceWorker.workerVersionUpdated', ({ versions }) => {
    states.push(...versions.map(({ runningStatus }) => runningStatus))
  })
  await session.send('ServiceWorker.enable')
  await session.send('ServiceWorker.stopAllWorkers')
  await until('the worker to stop', async () => states.includes('stopped'))

  await first.bringToFront()
  await until('the trousers to come back with their tab', async () => {
    const { title, marked } = await panel.stands()
    return title === 'Charcoal wool trousers, pleated' && !marked
  })
})

/** The wishlist shows what is kept as it stands: after each Keep and each Remove, with nothing else touched in between. */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { Popup } from './rig/popup.ts'
import { Rig, until } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'
import { introduce, Workroom } from './rig/workroom.ts'

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

/** The titles that stand in the list, read from the page without touching it: it may lie behind another tab. */
const titles = (page: Page): Promise<string[]> =>
  page.evaluate(() => [...document.querySelectorAll('main tbody th button')].map((one) => one.textContent ?? ''))

const shows = (page: Page, wanted: string[]): Promise<true> =>
  until(`the wishlist to show ${JSON.stringify(wanted)}`, async () => JSON.stringify(await titles(page)) === JSON.stringify(wanted))

const TROUSERS = 'Charcoal wool trousers, pleated'
const JEANS = 'Indigo jeans, straight leg'

test('what is kept beside a page stands in the open wishlist at once, and what is removed there is gone at once', async () => {
  const workroom = await Workroom.open(rig, 'wishlist')
  expect(await titles(workroom.page)).toEqual([])
  const popup = await Popup.over(rig, await rig.tab(shop.item('charcoal-wool-trousers')))
  const panel = await popup.openBeside()
  await panel.settled()
  await panel.keep('A first note.')
  await shows(workroom.page, [TROUSERS])

  await workroom.page.bringToFront()
  await workroom.page.getByRole('button', { name: `Remove ${TROUSERS}` }).click()
  await shows(workroom.page, [])
  await workroom.page.getByRole('button', { name: 'Undo' }).click()
  await shows(workroom.page, [TROUSERS])

  const jeans = await Popup.over(rig, await rig.tab(shop.item('indigo-jeans')))
  await jeans.page.getByRole('button', { name: 'Keep for later' }).click()
  await until('both to be kept', async () => (await titles(workroom.page)).length === 2)
  expect(await titles(workroom.page)).toContain(JEANS)
})

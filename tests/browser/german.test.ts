/** In a German browser the extension speaks German from the first click, and a setting changes that at once. */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { Popup } from './rig/popup.ts'
import { Rig } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'

let shop: Shop
let rig: Rig
beforeAll(async () => {
  shop = await openShop()
  rig = await Rig.start({ language: 'de' })
})
afterAll(async () => {
  await rig.close()
  await shop.close()
})

const language = (page: Page) => page.evaluate(() => document.documentElement.lang)
const over = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

test('the popup, the workroom and the browser’s own words of the extension are German', async () => {
  const listing = await rig.tab(shop.item('charcoal-wool-trousers'))
  const popup = await Popup.over(rig, listing)
  expect(await language(popup.page)).toBe('de-DE')
  expect(await popup.says()).toContain('Für wen ist es?')
  expect(await popup.says()).not.toMatch(/\b(?:the|and|with|your)\b(?![^“]*”)/)
  const opening = rig.context.waitForEvent('page')
  await popup.leaveBy('Körpermaße eintragen')
  const workroom = await opening
  await workroom.getByRole('heading', { name: 'Was suchst du?' }).waitFor()
  expect(await language(workroom)).toBe('de-DE')
  expect(await workroom.title()).toMatch(/ – Seam Reckoner$/)
  for (const width of [320, 360, 400, 1280]) {
    await workroom.setViewportSize({ width, height: 800 })
    expect(await over(workroom), `${width} wide`).toBe(0)
  }
  const own = await workroom.evaluate(() => {
    const { chrome } = globalThis as unknown as { chrome: { i18n: { getMessage: (name: string) => string } } }
    return ['extensionDescription', 'readTheseMeasurements'].map((name) => chrome.i18n.getMessage(name))
  })
  expect(own[0]).toMatch(/^Stellt die Maße/)
  expect(own[1]).toBe('Diese Maße lesen')
})

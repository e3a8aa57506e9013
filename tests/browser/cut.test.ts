/** The cut in the real side panel: read in one line, set by keyboard, the answer anew at once; as read and undo take it back. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { Popup } from './rig/popup.ts'
import { Rig, until } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'
import { introduce } from './rig/workroom.ts'

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

test('a jacket too wide for a tailored one is right for a loose one, and the answer says so as soon as it is set', async () => {
  const popup = await Popup.over(rig, await rig.tab(shop.item('slate-jacket-sham-cuffs')))
  const panel = await popup.openBeside()
  const { page } = panel
  const first = await panel.settled()
  expect(await panel.verdict()).toBe('Leave it')
  const line = page.getByRole('region', { name: 'Cut' }).getByRole('paragraph').first()
  expect(await line.textContent()).toBe('Long sleeves, buttons')

  await page.getByRole('button', { name: 'Change the cut' }).focus()
  await page.keyboard.press('Enter')
  const kind = page.getByRole('combobox', { name: 'Kind of coat or jacket' })
  expect(await kind.locator('option:checked').textContent()).toBe('Suit jacket (as read)')
  await kind.focus()
  await page.keyboard.type('boy')
  // on the way to it other letters choose other kinds
  const isWorn = async () => /^Wears as it is\??$/.test((await panel.verdict()) ?? '')
  await until('the answer of a loose jacket', isWorn)
  const loose = await panel.changedFrom(first)
  expect(await isWorn()).toBe(true)
  expect(await line.textContent()).toBe('Long sleeves, boyfriend blazer, buttons')
  // the choice has the focus still, and nothing was scrolled away
  expect(await kind.evaluate((one) => one === document.activeElement)).toBe(true)

  await kind.selectOption({ index: 0 })
  await panel.changedFrom(loose)
  expect(await panel.verdict()).toBe('Leave it')
  await panel.undo()
  await until('the cut that was set to come back', isWorn)
  expect(await line.textContent()).toBe('Long sleeves, boyfriend blazer, buttons')

  // at the narrowest nothing runs out of the panel
  await page.setViewportSize({ width: 320, height: 800 })
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320)
})

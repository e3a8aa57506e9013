/** The keyboard commands and the browser's own menu, pressed on a real screen. Headless browsers have none: without one these count as skipped. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { Rig, until } from './rig/rig.ts'
import { openScreen, type Screen } from './rig/screen.ts'
import { openShop, type Shop } from './rig/shop.ts'

let screen: Screen | null
let shop: Shop
beforeAll(async () => {
  screen = await openScreen()
  shop = await openShop()
})
afterAll(async () => {
  screen?.close()
  await shop.close()
})

test.for([
  ['alt+shift+m', 'popup'],
  ['alt+shift+k', 'sidepanel']
] as const)('%s opens the %s', async ([key, surface], { skip }) => {
  if (screen === null) return skip('Xvfb and xdotool are not installed')
  const rig = await Rig.start({ display: screen.display })
  try {
    const page = await rig.tab(shop.item('charcoal-wool-trousers'))
    await page.bringToFront()
    expect(await rig.isOpen(surface)).toBe(false)
    // a window that has only just come forward may lose the first press
    await until(`${key} to be taken`, async () => {
      screen?.press(key)
      await page.waitForTimeout(1500)
      return rig.isOpen(surface)
    })
    expect(await (await rig.surface(surface)).title()).not.toBe('')
  } finally {
    await rig.close()
  }
})

test('the menu on selected text opens the panel', async ({ skip }) => {
  if (screen === null) return skip('Xvfb and xdotool are not installed')
  const rig = await Rig.start({ display: screen.display })
  try {
    const page = await rig.tab(shop.item('charcoal-wool-trousers'))
    await page.bringToFront()
    const line = page.getByText('Laid flat')
    await line.selectText()
    // the press ends only when the menu has gone; the page itself takes no letters
    const pressed = line.click({ button: 'right' })
    await until('the menu to take the letter', async () => {
      await page.waitForTimeout(500)
      screen?.choose('r')
      return rig.isOpen('sidepanel')
    })
    await pressed
    expect(await (await rig.surface('sidepanel')).title()).not.toBe('')
  } finally {
    await rig.close()
  }
})

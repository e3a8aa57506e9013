/** Every surface in light and dark, from narrow to wide: nothing runs over its edge, and axe finds no fault. Pictures go to test-results/screens. */
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { inRoot } from '../../entrypoints/companion/places.mjs'
import type { Panel } from './rig/panel.ts'
import { Popup } from './rig/popup.ts'
import { Rig } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'
import { introduce, Workroom } from './rig/workroom.ts'

const SCREENS = inRoot('test-results/screens')
mkdirSync(SCREENS, { recursive: true })

/** A picture, and what it can't show: whether anything is wider than the window. */
async function look(page: Page, name: string, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 800 })
  await page.waitForTimeout(250)
  await page.screenshot({ path: join(SCREENS, `${name}-${width}.png`), fullPage: true })
  const over = await page.evaluate(() => {
    const edge = document.documentElement.clientWidth
    const tooWide = [...document.querySelectorAll('body *')].filter((one) => {
      const { right, width: itsWidth } = one.getBoundingClientRect()
      return itsWidth > 1 && right > edge + 1 && one.closest('svg') === null
    })
    return { page: document.documentElement.scrollWidth - edge, parts: tooWide.slice(0, 3).map((one) => `${one.tagName} ${one.className}`) }
  })
  expect(over, `${name} at ${width}`).toEqual({ page: 0, parts: [] })
}

async function faults(page: Page, inPlace = false): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(inPlace).analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`)
}

// what is laid out is the same in every colour: in the dark narrow and wide are enough
const WIDTHS = { light: { panel: [320, 360, 400], workroom: [320, 400, 1280] }, dark: { panel: [320], workroom: [320, 1280] } }

describe.for(['light', 'dark'] as const)('in %s', (colourScheme) => {
  const widths = WIDTHS[colourScheme]
  let shop: Shop
  let rig: Rig
  let panel: Panel
  beforeAll(async () => {
    shop = await openShop()
    rig = await Rig.start({ colourScheme })
    await introduce(rig)
  })
  afterAll(async () => {
    await rig.close()
    await shop.close()
  })

  test('the popup', async () => {
    const popup = await Popup.over(rig, await rig.tab(shop.item('charcoal-wool-trousers')))
    await popup.page.screenshot({ path: join(SCREENS, `popup-${colourScheme}.png`) })
    expect(await popup.page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0)
    // in the place where it stands: a new tab would close the popup
    expect(await faults(popup.page, true)).toEqual([])
    panel = await popup.openBeside()
    await panel.settled()
  })

  test('the panel, closed and with every part open', async () => {
    for (const width of widths.panel) await look(panel.page, `panel-${colourScheme}`, width)
    expect(await faults(panel.page)).toEqual([])
    await panel.field('waist')
    const closed = panel.page.locator('details:not([open]) > summary')
    while ((await closed.count()) > 0) await closed.first().click()
    for (const width of widths.panel) await look(panel.page, `panel-open-${colourScheme}`, width)
    expect(await faults(panel.page)).toEqual([])
    await panel.keep('A note.')
  })

  test.for(['wishlist', 'wardrobe', 'body', 'backup'] as const)('the workroom: %s', async (part) => {
    const workroom = await Workroom.open(rig, part)
    for (const width of widths.workroom) await look(workroom.page, `workroom-${part}-${colourScheme}`, width)
    expect(await faults(workroom.page)).toEqual([])
  })

  test('the card for the shop, on a screen and on one small page', async () => {
    const { page } = await Workroom.open(rig, 'wishlist')
    await page
      .getByRole('link', { name: /^Card for the shop/ })
      .first()
      .click()
    await page.getByRole('button', { name: 'Print the card' }).waitFor()
    for (const width of widths.workroom) await look(page, `workroom-card-${colourScheme}`, width)
    expect(await faults(page)).toEqual([])
    const printed = await page.pdf({ preferCSSPageSize: true, path: join(SCREENS, `workroom-card-${colourScheme}.pdf`) })
    expect(printed.toString('latin1').match(/\/Type ?\/Page\b/g)).toHaveLength(1)
  })
})

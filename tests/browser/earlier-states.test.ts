/** Earlier states in a real browser: kept by itself, told before anything changes, gone back to, noticed on another page; and what is asked of the browser. */
import { mkdirSync, rmSync } from 'node:fs'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { inRoot } from '../../entrypoints/companion/places.mjs'
import { built, introduced, KillablePage, sendGarment, served } from './faults/page.ts'
import { until } from './rig/rig.ts'

const SCREENS = inRoot('test-results/screens')
const WIDTHS = [360, 1280]

let folder = ''
beforeAll(async () => {
  folder = await built(false)
  mkdirSync(SCREENS, { recursive: true })
}, 120_000)
afterAll(() => {
  if (folder !== '') rmSync(folder, { recursive: true, force: true })
})

/** A picture of the part as it is now, narrow and wide, light and dark. */
async function pictures(page: Page, name: string): Promise<void> {
  for (const width of WIDTHS) {
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.setViewportSize({ width, height: 900 })
      await page.emulateMedia({ colorScheme })
      await page.screenshot({ path: `${SCREENS}/backup-${name}-${width}-${colorScheme}.png`, fullPage: true })
    }
  }
}

const told = (page: Page, text: string | RegExp) => page.getByText(text).first().waitFor()
const names = (page: Page) => page.locator('.wr-garment h2, .wr-garment h3').allTextContents()

test('a day’s state is kept by itself; going back is told first, seen on another page, and taken back', { timeout: 120_000 }, async () => {
  const { address, profile, end } = await served(folder)
  const opened = await KillablePage.open(profile, `${address}#body`)
  const { page } = opened
  const go = (part: string) => page.evaluate((hash) => location.assign(hash), `#${part}`)
  try {
    await introduced(page)
    await go('backup')
    await told(page, 'There is none yet.')
    await pictures(page, 'states-none')
    await go('wardrobe')
    for (const name of ['Grey flannels', 'Cords']) {
      await sendGarment(page, name)
      await told(page, `${name} saved.`)
    }
    await page.reload()
    await until('the first state to be kept', async () => (await opened.rows('snapshots')).length === 1)
    await sendGarment(page, 'Kilt')
    await told(page, 'Kilt saved.')
    await page.getByRole('button', { name: 'Remove Cords' }).click()
    await told(page, /Cords.*removed/)
    const other = await page.context().newPage()
    await other.goto(`${address}#wardrobe`)
    await told(other, 'Kilt')
    const before = await names(other)

    await go('backup')
    await told(page, 'as that day began')
    await page.getByRole('button', { name: /^What would going back to / }).click()
    await told(page, '1 record comes back')
    await told(page, '1 that came since is removed')
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([])
    await pictures(page, 'states-planned')
    expect(await names(other)).toEqual(before)
    await page.getByRole('button', { name: 'Go back to it' }).click()
    await told(page, /^Everything is as it was on .*\.$/)
    await told(page, 'before going back')
    await pictures(page, 'states-went')

    await told(other, 'On another page, everything was taken back to an earlier state.')
    await other.getByText('Kilt').waitFor({ state: 'detached' })
    await told(other, 'Cords')
    await page.getByRole('button', { name: 'Undo' }).click()
    await told(other, 'Kilt')
    await other.getByText('Cords').waitFor({ state: 'detached' })
    expect(await names(other)).toEqual(before)
  } finally {
    await opened.close()
    await end()
  }
})

test('the browser is asked not to clear what is saved once something typed is saved, and not before', { timeout: 60_000 }, async () => {
  const { address, profile, end } = await served(folder)
  const opened = await KillablePage.open(profile, `${address}#body`)
  const { page } = opened
  try {
    await page.context().addInitScript(() => {
      Object.assign(window, { asked: 0 })
      const { persist } = StorageManager.prototype
      StorageManager.prototype.persisted = async () => false
      StorageManager.prototype.persist = function () {
        Object.assign(window, { asked: Number(Reflect.get(window, 'asked')) + 1 })
        return persist.call(this)
      }
    })
    await page.reload()
    const asked = () => page.evaluate(() => Number(Reflect.get(window, 'asked')))
    await page.getByRole('button', { name: /^Skip, / }).click()
    await page.getByRole('textbox', { name: 'Name' }).fill('Wren')
    expect(await asked()).toBe(0)
    await page.getByRole('button', { name: 'Save' }).click()
    await page.getByRole('heading', { name: /^Wren: / }).waitFor()
    await until('the browser to be asked', async () => (await asked()) === 1)
    await page.evaluate(() => location.assign('#wardrobe'))
    await sendGarment(page, 'Kilt')
    await told(page, 'Kilt saved.')
    expect(await asked()).toBe(1)
  } finally {
    await opened.close()
    await end()
  }
})

test('the sample is nothing to lose, and how it was is kept before it is removed', { timeout: 60_000 }, async () => {
  const { address, profile, end } = await served(folder)
  const opened = await KillablePage.open(profile, `${address}#first`)
  const { page } = opened
  try {
    await page.getByRole('button', { name: 'Try it with a sample' }).click()
    await told(page, 'Sample: cream cotton shirt')
    expect(await page.getByText('No backup was saved from here yet.').count()).toBe(0)
    await page.getByRole('button', { name: 'Remove the sample' }).click()
    await page.getByRole('button', { name: 'Remove the sample' }).waitFor({ state: 'detached' })
    await page.evaluate(() => location.assign('#backup'))
    await told(page, 'before the sample was removed')
    await told(page, '3 kept listings, 2 garments, 1 person')
  } finally {
    await opened.close()
    await end()
  }
})

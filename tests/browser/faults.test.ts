/**
 * Faults of the disk and of the browser, in a real one: every write of an act broken off, and the process killed. What was said to be saved is
 * there; what is not was said not to be. Power loss is not claimed: nobody here can pull a plug. `npm run test:faults` runs the long form.
 */
import { rmSync } from 'node:fs'
import type { Locator } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { randomFrom } from '../bench/simulated/chance.ts'
import { kills } from './faults/kills.ts'
import { built, introduced, KillablePage, sendGarment, served } from './faults/page.ts'
import { until } from './rig/rig.ts'

const ON_ACKNOWLEDGEMENT = Number(process.env.FAULTS_ACKNOWLEDGED ?? 3)
const AT_RANDOM = Number(process.env.FAULTS_RANDOM ?? 2)
const EACH_MS = 20_000
const SETTLED_MS = 250

let folder = ''
let control = ''
beforeAll(async () => {
  folder = await built(false)
  control = await built(true)
}, 120_000)
afterAll(() => {
  for (const one of [folder, control]) if (one !== '') rmSync(one, { recursive: true, force: true })
})

test('all that was acknowledged is there after kills on the acknowledgement', {
  timeout: 60_000 + ON_ACKNOWLEDGEMENT * EACH_MS
}, async () => {
  const figures = await kills(folder, ON_ACKNOWLEDGEMENT, 'acknowledged', Math.random)
  console.log(`on the acknowledgement: ${figures.kills} kills, ${figures.acknowledged} acknowledged, ${figures.lost.length} lost`)
  expect(figures.acknowledged).toBeGreaterThanOrEqual(ON_ACKNOWLEDGEMENT)
  expect(figures.lost).toEqual([])
})

test('and after kills at random', { timeout: 60_000 + AT_RANDOM * EACH_MS }, async () => {
  const figures = await kills(folder, AT_RANDOM, 'random', randomFrom(20261130))
  console.log(`at random: ${figures.kills} kills, ${figures.acknowledged} acknowledged, ${figures.lost.length} lost`)
  expect(figures.lost).toEqual([])
})

test('a build that acknowledges before the commit is caught', { timeout: 180_000 }, async () => {
  const figures = await kills(control, 3, 'acknowledged', Math.random)
  console.log(`control: ${figures.kills} kills, ${figures.acknowledged} acknowledged, ${figures.lost.length} lost`)
  expect(figures.lost.length).toBeGreaterThan(0)
})

describe('each write of an act broken off', () => {
  /** Does an act with its first, second… write broken off, until one goes through; how often it was. */
  async function brokenOff(
    page: KillablePage,
    table: string,
    act: () => Promise<void>,
    form: Locator,
    stays: () => Promise<void>,
    again: () => Promise<void>
  ): Promise<number> {
    const broken = page.page.getByText('This was not saved: the browser broke it off.')
    for (let write = 1; ; write++) {
      const before = await page.rows(table)
      await page.page.evaluate((failAt) => Object.assign(window, { writes: { count: 0, failAt } }), write)
      await act()
      // the bar may still say that something before this was saved: only the form tells how this one went
      await until('the act to be saved or not', async () => (await broken.isVisible()) || (await form.count()) === 0)
      if (!(await broken.isVisible())) return write - 1
      expect(await page.rows(table)).toEqual(before)
      await stays()
      await page.page.evaluate(() => Object.assign(window, { writes: { count: 0, failAt: 0 } }))
      await again()
      await page.page.getByText('This was not saved').waitFor({ state: 'detached' })
    }
  }

  test('a person, a garment and its change: nothing is half written, the text stays, and goes through when sent again', {
    timeout: 180_000
  }, async () => {
    const { address, profile, end } = await served(folder)
    const opened = await KillablePage.open(profile, `${address}#body`)
    const { page } = opened
    try {
      await introduced(page)
      await page.goto(`${address}#wardrobe`)
      // behind it each write keeps how it was before, in the same transaction
      await page.reload()
      await until('the first earlier state to be kept', async () => (await opened.rows('snapshots')).length === 1)
      let made = 0
      const name = () => page.getByRole('textbox', { name: 'Name' })
      const press = () => page.getByRole('button', { name: 'Save', exact: true }).click()
      const closed = () => name().waitFor({ state: 'detached' })
      const added = await brokenOff(
        opened,
        'garmentsOwned',
        () => sendGarment(page, `Garment ${++made}`),
        name(),
        async () => expect(await name().inputValue()).toBe(`Garment ${made}`),
        () => press().then(closed)
      )
      // that it was not there, and the garment
      expect(added).toBe(2)
      await page.getByRole('button', { name: 'Change Garment 1' }).click()
      const changed = await brokenOff(
        opened,
        'garmentsOwned',
        async () => {
          if ((await name().count()) === 0) await page.getByRole('button', { name: 'Change Garment 1' }).click()
          await page.getByRole('textbox', { name: 'Notes' }).fill(`mended ${++made}`)
          await press()
        },
        name(),
        async () => expect(await page.getByRole('textbox', { name: 'Notes' }).inputValue()).toBe(`mended ${made}`),
        () => press().then(closed)
      )
      expect(changed).toBe(1)
      console.log(`broken off: ${added} of ${added} writes of adding, ${changed} of ${changed} of changing`)
    } finally {
      await opened.close()
      await end()
    }
  })

  test('the sample, of many writes, is there whole or not at all', { timeout: 240_000 }, async () => {
    const { address, profile, end } = await served(folder)
    const opened = await KillablePage.open(profile, `${address}#first`)
    const { page } = opened
    try {
      const done = page.getByRole('button', { name: 'Remove the sample' })
      const saved = async () => (await opened.rows('people')).length + (await opened.rows('listingsKept')).length
      let broken = 0
      await page.evaluate(() => Object.assign(window, { writes: { count: 0, failAt: 1 } }))
      await page.getByRole('button', { name: 'Try it with a sample' }).click()
      await page.getByText('This was not saved: the browser broke it off.').waitFor()
      for (let write = 1; (await done.count()) === 0; write++) {
        broken++
        expect(await saved()).toBe(0)
        await page.evaluate((failAt) => Object.assign(window, { writes: { count: 0, failAt } }), write + 1)
        await page.getByRole('button', { name: 'Try again' }).click()
        await until('the sample to be tried again', async () => {
          const told = await page.evaluate(() => 'writes' in window && JSON.stringify(window.writes))
          const { count, failAt } = JSON.parse(told || '{"count":0,"failAt":1}')
          return count >= failAt || (await done.count()) > 0
        })
        // what was broken off has been told, or all is there
        await page.waitForTimeout(SETTLED_MS)
      }
      console.log(`broken off: ${broken} of ${broken} writes of the sample`)
      expect(broken).toBeGreaterThan(10)
      expect((await opened.rows('listingsKept')).length).toBe(3)
    } finally {
      await opened.close()
      await end()
    }
  })
})

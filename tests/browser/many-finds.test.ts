/**
 * The wishlist with thousands of finds, the panel under a slowed processor, and a large backup: the short form of tests/bench/pages.ts. Each fails
 * only at twice what is aimed for, so that a busy machine is no fault.
 */
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { engineMark } from '../../entrypoints/companion/engine.mjs'
import { backupOf, fillWith, firstRow, keyed, openedAt, rawPuts, sampled } from '../bench/in-pages.ts'
import { keptAnswers, keptFinds } from '../bench/kept-finds.ts'
import { median } from '../bench/results.ts'
import { Rig, until } from './rig/rig.ts'

const FEW = 10
const MANY = 1200
const IN_BACKUP = 2000

let few: Rig
let many: Rig
let page: Page
beforeAll(async () => {
  few = await filled(FEW)
  many = await filled(MANY)
}, 120_000)
afterAll(async () => {
  await few?.close()
  await many?.close()
})

/** A workroom in which so many finds have stood for a while, each with its answer. */
async function filled(count: number): Promise<Rig> {
  const rig = await Rig.start()
  const rows = keptFinds(count)
  await fillWith(rig, rows, keptAnswers(rows, engineMark()))
  const page = await openedAt(rig, 'workroom.html#wishlist')
  await until('the list to be ready', async () => (await page.getByText(`${count} listings kept.`).count()) > 0, 60_000)
  await until('all summaries', async () => (await page.getByText('Getting the list ready').count()) === 0, 60_000)
  await page.close()
  return rig
}

/** The median time to the first row, and the page that was opened last. */
async function opened(rig: Rig): Promise<{ ms: number; page: Page }> {
  const taken: number[] = []
  for (;;) {
    const page = await openedAt(rig, 'workroom.html#wishlist')
    taken.push(await firstRow(page))
    if (taken.length === 3) return { ms: median(taken), page }
    await page.close()
  }
}

/** Which write of the answers was the last. */
const lastAnswered = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise((told, failed) => {
        const request = indexedDB.open('seam-reckoner')
        request.onerror = failed
        request.onsuccess = () => {
          const cursor = request.result.transaction('verdicts').objectStore('verdicts').index('written').openKeyCursor(null, 'prev')
          cursor.onerror = failed
          cursor.onsuccess = () => {
            request.result.close()
            told(Number(cursor.result?.key))
          }
        }
      })
  )

test('the first row stands nearly as soon as with ten, the rows near the screen alone are drawn, and nothing is worked out anew', async () => {
  const ten = await opened(few)
  await ten.page.close()
  const thousands = await opened(many)
  page = thousands.page
  // aimed for: 1.3 times
  expect(thousands.ms / ten.ms).toBeLessThan(2.6)
  await page.waitForTimeout(1500)
  expect(await page.locator('tr[data-listing]').count()).toBeLessThan(40)
  expect(await page.getByRole('table').getAttribute('aria-rowcount')).toBe(String(MANY + 1))
  expect(await page.getByText('Working out answers').count()).toBe(0)
  expect(await lastAnswered(page)).toBe(1)
}, 120_000)

test('filters and words are answered at once', async () => {
  const ten = await openedAt(few, 'workroom.html#wishlist')
  await firstRow(ten)
  for (const [how, label, values] of [
    ['select', 'Status', ['asked', 'any']],
    ['input', 'Find', ['corduroy', '']]
  ] as const) {
    const beside = await sampled(ten, 3, how, label, values)
    // aimed for: 50 ms; on a machine where ten take longer than that, as much longer
    expect(await sampled(page, 3, how, label, values)).toBeLessThan(2 * Math.max(50, 1.5 * beside))
  }
  await ten.close()
}, 60_000)

test('by keys: on from row to row, past those that were drawn; to the end of the page and back to the row that has the focus', async () => {
  await page.evaluate(() => window.scrollTo(0, 0))
  const first = page.locator('tr[data-listing] .wr-title').first()
  await first.focus()
  const title = await first.textContent()
  for (let row = 0; row < 14; row++) {
    const before: unknown = await page.evaluate(() => document.activeElement?.closest('tr')?.getAttribute('aria-rowindex'))
    await until('the next row', async () => {
      await page.keyboard.press('Tab')
      const now = await page.evaluate(() => document.activeElement?.closest('tr')?.getAttribute('aria-rowindex'))
      return now !== undefined && now !== before
    })
  }
  expect(await page.evaluate(() => document.activeElement?.closest('tr')?.getAttribute('aria-rowindex'))).toBe('16')
  await page.evaluate(() => window.scrollTo(0, 0))
  await page.locator('tr[aria-rowindex="2"] .wr-title').focus()
  await page.keyboard.press('End')
  await until('the last row', async () => (await page.locator(`tr[aria-rowindex="${MANY + 1}"]`).count()) === 1)
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(title)
}, 60_000)

test('a figure typed under a processor of a quarter of the speed is answered at once', async () => {
  const panel = await openedAt(many, 'workroom.html#wishlist/l-000000')
  const open = panel.getByRole('button', { name: /^Correct / }).first()
  await open.click()
  await panel.waitForTimeout(1000)
  const session = await panel.context().newCDPSession(panel)
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  const taken: number[] = []
  for (let n = 0; n < 3; n++) taken.push((await keyed(panel, n % 2 === 0 ? '35' : '44')).verdict)
  // aimed for: 100 ms
  expect(median(taken)).toBeLessThan(200)
  await panel.close()
}, 60_000)

test('a changed body makes answers stale: those in view are worked out first, the rest can be stopped and gone on with', async () => {
  const body = await openedAt(many, 'workroom.html#body')
  await body.getByRole('textbox', { name: 'Hip', exact: true }).fill('103')
  await body.keyboard.press('Tab')
  await body.getByText('Hip: 103 cm saved.').waitFor()
  await body.close()
  await page.bringToFront()
  await page.evaluate(() => window.scrollTo(0, 0))
  await page.getByText(/^Working out answers: \d+ of/).waitFor()
  await until('the rows in view to have their answers', async () => (await page.locator('tr[data-listing] .wr-tapes').count()) > 3)
  await page.getByRole('button', { name: 'Stop' }).click()
  await page.getByText(/^Stopped: \d+ of/).waitFor()
  // the few that were being worked out then are finished
  await page.waitForTimeout(500)
  const count = await page.getByText(/^Stopped: /).textContent()
  expect(Number(/(\d+) of/.exec(count ?? '')?.[1])).toBeLessThan(MANY / 2)
  await page.waitForTimeout(500)
  expect(await page.getByText(/^Stopped: /).textContent()).toBe(count)
  await page.getByRole('button', { name: 'Go on' }).click()
  await page.getByText(/^Working out answers: \d+ of/).waitFor()
}, 60_000)

test('a large backup comes in at no more than twice what it takes', async () => {
  const rig = await Rig.start()
  try {
    const rows = keptFinds(IN_BACKUP)
    const page = await openedAt(rig, 'workroom.html#backup')
    await page.getByRole('heading', { level: 1 }).waitFor()
    const raw = median([await rawPuts(page, rows), await rawPuts(page, rows), await rawPuts(page, rows)])
    const { planned, brought } = await backupOf(page, rows)
    // aimed for: 1.5 times the same rows put bare, and twice with the preview
    expect(brought / raw).toBeLessThan(3)
    expect((planned + brought) / raw).toBeLessThan(4)
  } finally {
    await rig.close()
  }
}, 120_000)

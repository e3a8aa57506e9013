/** The work on a bought garment in the built extension: measured again, tried on, sewn from the sheet, finished; kept, and there again when it is reopened. */
import AxeBuilder from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { Popup } from './rig/popup.ts'
import { Rig, until } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'
import { introduce, Workroom } from './rig/workroom.ts'

let shop: Shop
let rig: Rig
let page: Page
beforeAll(async () => {
  shop = await openShop()
  rig = await Rig.start()
  await introduce(rig)
  const popup = await Popup.over(rig, await rig.tab(shop.item('charcoal-wool-trousers')))
  await popup.page.getByRole('button', { name: /^Keep/ }).click()
  await popup.page.getByText('Kept on your wishlist.').waitFor()
  page = (await Workroom.open(rig, 'wishlist')).page
  await page.getByRole('button', { name: 'Charcoal wool trousers, pleated', exact: true }).click()
  await page.getByRole('link', { name: 'Work sheet' }).click()
  await page.getByRole('heading', { name: 'On arrival' }).waitFor()
})
afterAll(async () => {
  await rig?.close()
  await shop?.close()
})

const verdictNow = () => page.getByText(/^With (?:the seller’s|your) figures: /).textContent()
/** Errors of one part of the page by the outside's rules. */
const faults = async () =>
  (await new AxeBuilder({ page }).include('.wk').analyze()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)

test('a figure of one’s own tape counts instead of the seller’s, says how far off it was, and can be taken back', async () => {
  expect(await verdictNow()).toMatch(/^With the seller’s figures: Alters to fit\./)
  // the seller says 16 in flat, which is 40.6; the band is loose by far more than the cloth of a seam
  const waist = page.getByRole('textbox', { name: 'Your tape: waist' })
  await waist.fill('37.5')
  await page.getByRole('row', { name: /Waist/ }).getByText('3.1 cm less').waitFor()
  expect(await verdictNow()).toMatch(/^With your figures: /)
  await page.getByRole('button', { name: 'Take your figure away: waist' }).click()
  await until('the seller’s figure to count again', async () => (await waist.inputValue()) === '')
})

test('a pinch is three presses and changes the plan; taken back, the plan is as before', async () => {
  const before = await page.locator('.wk-arrival + p').textContent()
  await page.getByRole('radiogroup', { name: 'Where does it not sit well?' }).getByText('Hip', { exact: true }).click()
  await page.getByRole('radiogroup', { name: 'Is there too much, or too little?' }).getByText('Spare: I can pinch it').click()
  for (let i = 0; i < 5; i++) await page.getByRole('button', { name: 'More', exact: true }).click()
  await page.getByText('A fold 4 cm deep takes 8 cm out, all around.').waitFor()
  await page.getByRole('button', { name: 'Take it into account' }).click()
  await page.getByText('Hip: 8 cm too much on you').waitFor()
  await page.getByRole('button', { name: 'Take it back: hip' }).click()
  await until('the answer to be as before', async () => (await page.locator('.wk-arrival + p').textContent()) === before)
})

test('the sheet is made, ticked off with a note, kept, and the same when the page is opened again', async () => {
  await page.getByRole('button', { name: 'Make the work sheet' }).click()
  const steps = page.locator('.wk-steps input[type=checkbox]')
  await steps.first().waitFor()
  const all = await steps.count()
  expect(all).toBeGreaterThan(8)
  await steps.nth(0).check()
  await steps.nth(1).check()
  await page.getByText(`2 of ${all} steps done`).waitFor()
  await page.getByRole('button', { name: 'Note 2', exact: true }).click()
  await page.getByRole('textbox', { name: 'Note on step 2' }).fill('Loops 1 cm wide')
  await page.keyboard.press('Tab')
  await page.waitForTimeout(300)
  await page.reload()
  await page.getByText(`2 of ${all} steps done`).waitFor()
  expect(await page.getByRole('textbox', { name: 'Note on step 2' }).inputValue()).toBe('Loops 1 cm wide')
  expect(await faults()).toEqual([])
})

test('on a narrow screen nothing runs over', async () => {
  for (const width of [320, 360, 400, 1280]) {
    await page.setViewportSize({ width, height: 800 })
    expect(await page.evaluate(() => document.documentElement.scrollWidth), `${width}`).toBeLessThanOrEqual(width)
  }
})

test('printed alone: the templates on sheets of the chosen paper, at true scale; the sheet without what is only for the screen', async () => {
  await page.getByRole('radiogroup', { name: 'Paper' }).getByText('A4', { exact: true }).click()
  const pdfOf = async (what: string, paper: string) => {
    await page.evaluate(([one, two]) => Object.assign(document.documentElement.dataset, { print: one, paper: two }), [what, paper])
    const file = (await page.pdf({ preferCSSPageSize: true })).toString('latin1')
    await page.evaluate(() => {
      delete document.documentElement.dataset.print
      delete document.documentElement.dataset.paper
    })
    return [...file.matchAll(/\/MediaBox\s*\[([^\]]*)\]/g)].map(([, box]) => (box ?? '').trim().split(/\s+/).map(Number).slice(2))
  }
  const points = (mm: number) => (mm / 25.4) * 72
  const templates = await pdfOf('templates', 'A4')
  expect(templates).toHaveLength(await page.locator('.wk-paper').count())
  for (const [wide, tall] of templates) {
    expect(Math.abs((wide ?? 0) - points(210))).toBeLessThan(1)
    expect(Math.abs((tall ?? 0) - points(297))).toBeLessThan(1)
  }
  const sheet = await pdfOf('sheet', 'A4')
  expect(sheet.length).toBeGreaterThan(0)
  expect(sheet.length).toBeLessThanOrEqual(4)
})

test('finished: what it took and what it measures teach a pace that is used only when asked, and can be taken back', async () => {
  await page.getByRole('textbox', { name: 'Minutes it really took' }).fill('ninety')
  await page.getByText('Type whole minutes, such as 90.').waitFor()
  await page.getByRole('textbox', { name: 'Minutes it really took' }).fill('200')
  await page.getByRole('button', { name: 'It is finished' }).click()
  await page.getByText(/^For 1 piece you took .+; we had reckoned .+\. That is [\d.]+ times as long\./).waitFor()
  const use = page.getByRole('button', { name: /^Reckon with / })
  await use.click()
  await page.getByText(/Your times are reckoned [\d.]+ times as long/).waitFor()
  await page.getByRole('button', { name: 'Undo', exact: true }).last().click()
  await use.waitFor()
  await page.reload()
  await page.getByRole('button', { name: 'Not finished after all' }).waitFor()
})

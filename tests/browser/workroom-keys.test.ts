/** The workroom by keyboard alone, with where the focus is after each act; every page for axe and in every room. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { ALL_PAGES } from '../../components/workroom/frame.tsx'
import { addressOf } from '../../entrypoints/workroom/use-route.ts'
import { Rig, until } from './rig/rig.ts'

let rig: Rig
let page: Page
beforeAll(async () => {
  rig = await Rig.start()
  page = await rig.tab(rig.address('workroom.html'))
  await page.getByRole('button', { name: 'Try it with a sample' }).click()
  await page.getByRole('row').filter({ hasText: 'cream cotton shirt' }).getByText('Wears as it is', { exact: true }).waitFor()
}, 60_000)
afterAll(() => rig?.close())

/** What has the focus, by its name. */
const focused = (): Promise<string> =>
  page.evaluate(() => {
    const its = document.activeElement
    if (its === null || its === document.body) return ''
    const by = its.getAttribute('aria-labelledby')
    const label = its.id === '' ? null : document.querySelector(`label[for="${CSS.escape(its.id)}"]`)
    return (
      its.getAttribute('aria-label') ??
      by
        ?.split(' ')
        .map((id) => document.getElementById(id)?.textContent?.trim())
        .join(' ') ??
      label?.textContent ??
      its.textContent ??
      ''
    ).trim()
  })
const focusOn = (name: string) => until(`the focus on “${name}”`, async () => (await focused()) === name)
const said = (text: string) => page.getByRole('status').getByText(text).waitFor()
const titles = () => page.locator('tbody .wr-title').allTextContents()
const SHIRT = 'Sample: cream cotton shirt'
const JACKET = 'Sample: brown checked jacket'

test('the wishlist by keys: order, status, notes, the form and its Escape, remove and undo', async () => {
  await page.goto(rig.address('workroom.html#wishlist'))
  const head = page.getByRole('button', { name: 'Chance', exact: true })
  await head.focus()
  await page.keyboard.press('Enter')
  await focusOn('Chance')
  expect(await page.getByRole('columnheader', { name: 'Chance' }).getAttribute('aria-sort')).toBe('descending')
  const once = await titles()
  await page.keyboard.press('Space')
  expect(await page.getByRole('columnheader', { name: 'Chance' }).getAttribute('aria-sort')).toBe('ascending')
  expect(await titles()).toEqual(once.toReversed())
  await focusOn('Chance')

  // a status changed in its row keeps the focus, even where the row moves by it
  await page.getByRole('button', { name: 'Status', exact: true }).press('Enter')
  await page.getByRole('combobox', { name: `Status of ${JACKET}` }).focus()
  await page.keyboard.type('Not')
  await said(`${JACKET}: not for me.`)
  await focusOn(`Status of ${JACKET}`)
  await until('the row to be the last', async () => (await titles()).at(-1) === JACKET)

  const notes = page.getByRole('textbox', { name: `Notes on ${SHIRT}` })
  await notes.focus()
  await page.keyboard.type('ask about the collar')
  await page.keyboard.press('Escape')
  expect(await notes.inputValue()).toBe('')
  await page.keyboard.type('two-piece collar')
  await page.keyboard.press('Enter')
  await said(`Note on ${SHIRT} saved.`)
  await focusOn(`Notes on ${SHIRT}`)
  await page.getByRole('button', { name: 'Undo' }).press('Enter')
  await said('Undone.')
  await until('the focus to be somewhere', async () => (await focused()) !== '')
  expect(await notes.inputValue()).toBe('')

  await page.getByRole('button', { name: `Change ${SHIRT}` }).press('Enter')
  await focusOn('Price')
  expect(await faults()).toEqual([])
  await page.keyboard.press('Escape')
  await focusOn(`Change ${SHIRT}`)

  await page.getByRole('button', { name: `Remove ${SHIRT}` }).press('Enter')
  await said(`${SHIRT} removed.`)
  await until('the next row to have the focus', async () => (await titles()).includes(await focused()))
  await page.getByRole('button', { name: 'Undo' }).press('Enter')
  await until('it to be back', async () => (await titles()).includes(SHIRT))
  await until('the focus to be somewhere', async () => (await focused()) !== '')
}, 60_000)

test('a picture is made small, kept, shown in the row, and taken away with a way back', async () => {
  await page.goto(rig.address('workroom.html#wishlist'))
  await page.getByRole('button', { name: `Change ${SHIRT}` }).click()
  // a photograph would be larger than what is kept: noise, which no painter makes small, of 1600 × 1200
  const noise = await page.evaluate(async () => {
    const canvas = document.createElement('canvas')
    canvas.width = 1600
    canvas.height = 1200
    const pen = canvas.getContext('2d')
    if (pen === null) throw new Error('nothing to paint with')
    const image = pen.createImageData(1600, 1200)
    let seed = 7
    for (let i = 0; i < image.data.length; i++) {
      seed = (seed * 1103515245 + 12345) % 2147483648
      image.data[i] = i % 4 === 3 ? 255 : seed % 256
    }
    pen.putImageData(image, 0, 0)
    return canvas.toDataURL('image/png').split(',')[1] ?? ''
  })
  await page.getByLabel('Add a picture').setInputFiles({ name: 'shirt.png', mimeType: 'image/png', buffer: Buffer.from(noise, 'base64') })
  await said(`Picture kept with ${SHIRT}.`)
  const size = await page.locator('.wr-picture img').evaluate((one) => {
    const its = one as HTMLImageElement
    return { longest: Math.max(its.naturalWidth, its.naturalHeight), bytes: (its.src.length * 3) / 4, type: its.src.slice(0, 15) }
  })
  expect(size.longest).toBeLessThanOrEqual(640)
  expect(size.bytes).toBeLessThan(81_000)
  expect(size.type).toBe('data:image/jpeg')
  expect(await faults()).toEqual([])
  await page
    .getByLabel('Choose another picture')
    .setInputFiles({ name: 'no.txt', mimeType: 'text/plain', buffer: Buffer.from('no picture') })
  await page.getByText('This file is not a picture we can read.').waitFor()
  await page.getByRole('button', { name: 'Cancel' }).click()
  await page.getByRole('img', { name: `Your picture of ${SHIRT}` }).waitFor()
  await page.getByRole('button', { name: `Change ${SHIRT}` }).click()
  await page.getByRole('button', { name: 'Remove the picture' }).click()
  await said(`Picture removed from ${SHIRT}.`)
  await focusOn('Add a picture Choose a file')
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('button', { name: 'Remove the picture' }).waitFor()
  await page.getByRole('button', { name: 'Cancel' }).click()
}, 60_000)

test('a garment is added and given up by keys, and the focus comes back', async () => {
  await page.goto(rig.address('workroom.html#wardrobe'))
  await page.getByRole('button', { name: 'Add a garment' }).press('Enter')
  await focusOn('Name')
  await page.keyboard.press('Escape')
  await focusOn('Add a garment')
}, 30_000)

/** What axe finds wrong with the page as it is now. */
const faults = async (): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`))
}
/** How far the page runs past its right edge, px. */
const over = (): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
/** What can be pressed and is smaller than 24 px either way; a link within a sentence may be. */
const small = (): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, a, select, input, textarea, summary')].flatMap((one) => {
      const box = (one.closest('label') ?? one).getBoundingClientRect()
      const isShown = box.width > 0 && !one.closest('.sr, thead') && !one.classList.contains('wr-skip')
      const isInText = one.tagName === 'A' && (one.parentElement?.tagName === 'P' || one.parentElement?.tagName === 'LI')
      return isShown && !isInText && Math.min(box.width, box.height) < 23.5
        ? [`${one.tagName} ${one.textContent} ${Math.round(box.width)}×${Math.round(box.height)}`]
        : []
    })
  )

test.each(ALL_PAGES.filter((one) => one !== 'card'))(
  'the page %s is sound to axe, large enough to press, and runs over in no room',
  async (name) => {
    await page.setViewportSize({ width: 1280, height: 800 })
    await page.goto(rig.address(`workroom.html${addressOf(name)}`))
    await page.locator('main').waitFor()
    await page.waitForTimeout(300)
    for (const scheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme: scheme })
      expect(await faults(), scheme).toEqual([])
    }
    await page.emulateMedia({ colorScheme: 'light' })
    for (const [width, letters] of [
      [1280, 100],
      [400, 100],
      [320, 100],
      [1280, 200],
      [320, 200]
    ] as const) {
      await page.setViewportSize({ width, height: width === 320 ? 200 : 800 })
      await page.evaluate((share) => {
        document.documentElement.style.fontSize = `${share}%`
      }, letters)
      await expect.poll(over, { message: `${width} px, letters ${letters} %` }).toBe(0)
      expect(await small(), `${width} px, letters ${letters} %`).toEqual([])
    }
    await page.evaluate(() => {
      document.documentElement.style.fontSize = ''
    })
    await page.setViewportSize({ width: 1280, height: 800 })
  },
  60_000
)

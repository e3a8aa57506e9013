/** Pages that give nothing: each is told apart, says what happened and what to do, and the listing can be pasted. */
import { afterAll, beforeAll, expect, test } from 'vitest'
import { portOf, serve, stop } from '../../entrypoints/companion/serve.mjs'
import { Popup } from './rig/popup.ts'
import { Rig } from './rig/rig.ts'
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

const UNREADABLE: [name: string, address: () => string, sentence: string][] = [
  ['a page of the browser', () => 'chrome://version/', 'This is one of the browser’s own pages'],
  ['a PDF', () => `${shop.front}size-guide.pdf`, 'This page is a PDF'],
  ['an empty page', () => shop.item('empty-page'), 'This page gives no text'],
  ['text in a frame of another origin', () => shop.item('text-in-a-frame'), 'The listing is in a frame from another address']
]

test.for(UNREADABLE)('%s has a sentence of its own', async ([, address, sentence]) => {
  const page = await rig.tab(address())
  const popup = await Popup.over(rig, page)
  expect(await popup.says()).toContain(sentence)
  expect(await popup.says()).toMatch(/paste it here|Mark the description|Mark its text/)
  await page.close()
})

test('what can’t be read can be pasted, and is judged', async () => {
  const panel = await (await Popup.over(rig, await rig.tab(shop.item('empty-page')))).openBeside()
  await panel.page
    .getByRole('textbox', { name: 'The listing’s words' })
    .fill('Wool trousers, laid flat: waist 16", hip 21", thigh 12", inside leg 31".')
  await panel.page.getByRole('button', { name: 'Read it' }).click()
  await panel.page.getByRole('button', { name: 'Correct waist' }).waitFor()
  expect(await panel.settled()).toContain('Alters to fit')
})

test('text without a single measure says so, and judges nothing', async () => {
  const popup = await Popup.over(rig, await rig.tab(shop.item('plum-skirt-no-figures')))
  expect(await popup.verdict()).toBe('Too little stated')
})

test('markup and script in a title and a text are shown as text, and nothing runs', async () => {
  const page = await rig.tab(shop.item('markup-in-the-title'))
  const popup = await Popup.over(rig, page)
  expect(await popup.title()).toContain('<img src=x onerror=')
  expect(await popup.page.title()).not.toBe('run')
  const panel = await popup.openBeside()
  expect(await panel.title()).toContain('<script>')
  expect(await panel.page.title()).not.toBe('run')
  expect(await panel.page.locator('img, main script, iframe').count()).toBe(0)
})

test('what is selected goes before the whole page', async () => {
  const page = await rig.tab(shop.item('rust-cord-trousers'))
  await page.evaluate(() => {
    const paragraph = document.createElement('p')
    paragraph.id = 'picked'
    paragraph.textContent = 'Trousers: waist 14" flat, hip 19" flat.'
    document.querySelector('article')?.append(paragraph)
  })
  await page.locator('#picked').selectText()
  const popup = await Popup.over(rig, page)
  expect(await popup.figure('Waist')).toBe('71.1')
})

test('five megabytes of text are read as far as they are kept, and the page stays usable', async () => {
  const line = 'Soft wool, worn twice, from a home without smoke or pets, sent within two days of payment. '
  const body = `<!doctype html><title>Trousers</title><main><h1>Trousers</h1><p>Waist 16" flat, hip 21" flat.</p><p>${line.repeat(57_000)}</p></main>`
  expect(body.length).toBeGreaterThan(5_000_000)
  const server = await serve({ port: 0, answers: () => ({ type: 'text/html; charset=utf-8', body }) })
  try {
    const page = await rig.tab(`http://127.0.0.1:${portOf(server)}/`)
    const began = performance.now()
    const popup = await Popup.over(rig, page)
    expect(await popup.figure('Waist')).toBe('81.3')
    expect(performance.now() - began).toBeLessThan(15_000)
    await page.close()
  } finally {
    await stop(server)
  }
})

import 'fake-indexeddb/auto'
import { describe, expect, test, vi } from 'vitest'
import { all } from '../../../core/records/find.ts'
import { captureTab, type RunScript } from '../../../entrypoints/capture/capture-tab.ts'
import type { PageFound } from '../../../entrypoints/capture/page-found.ts'
import { problemOfPage, problemOfRefusal } from '../../../entrypoints/capture/page-problem.ts'
import { clock, freshRecords } from '../records/fixtures.ts'

vi.mock('wxt/browser', () => ({ browser: {} }))

const tab = { id: 10, windowId: 1, url: 'https://rail-and-peg.example/item/4', title: 'Flannels | Rail and Peg' }
const found: PageFound = {
  contentType: 'text/html',
  title: 'Flannels',
  pageAddress: tab.url,
  address: tab.url,
  selection: '',
  text: 'Waist 16 in flat',
  fullLength: 16,
  structured: [],
  price: { amount: 20, currency: 'GBP' },
  images: [],
  frames: { count: 0, largestShare: 0 }
}
const gives =
  (over: Partial<PageFound>): RunScript =>
  async () => ({ ...found, ...over })
const refuses =
  (message: string): RunScript =>
  async () => {
    throw new Error(message)
  }

describe('reading a tab', () => {
  test('a page that is read', async () => {
    const look = await captureTab(tab, await freshRecords(), clock()(), null, gives({}))
    expect(look).toMatchObject({
      title: 'Flannels',
      text: 'Waist 16 in flat',
      readBy: 'page',
      problem: null,
      price: { amount: 20 },
      tabId: 10
    })
  })

  test('a selection goes before the page', async () => {
    const look = await captureTab(tab, await freshRecords(), clock()(), null, gives({ selection: 'Hip 20 in' }))
    expect(look).toMatchObject({ text: 'Hip 20 in', readBy: 'selection', problem: null })
  })

  test('a page that is longer than what came over says so', async () => {
    expect(await captureTab(tab, await freshRecords(), clock()(), null, gives({ fullLength: 5_000_000 }))).toMatchObject({
      textCutFrom: 5_000_000
    })
  })

  test('a refusal is a look with its problem, the title and address where they are to be seen, and no text', async () => {
    const look = await captureTab({ id: 10, windowId: 1 }, await freshRecords(), clock()(), null, refuses('Cannot access a chrome:// URL'))
    expect(look).toMatchObject({ problem: 'browser-page', text: '', title: '', address: '' })
    const store = await captureTab(
      { ...tab, url: 'https://addons.mozilla.org/en-GB/' },
      await freshRecords(),
      clock()(),
      null,
      refuses('Missing host permission for the tab')
    )
    expect(store).toMatchObject({ problem: 'store-page', address: 'https://addons.mozilla.org/en-GB/', title: tab.title })
  })

  test('an answer of another shape is no answer', async () => {
    expect(await captureTab(tab, await freshRecords(), clock()(), null, async () => ({ text: 7 }))).toMatchObject({ problem: 'failed' })
    expect(await captureTab(tab, await freshRecords(), clock()(), null, async () => undefined)).toMatchObject({ problem: 'failed' })
  })

  test('read twice it is one look', async () => {
    const records = await freshRecords()
    const stamp = clock()
    await captureTab(tab, records, stamp(), null, gives({}))
    await captureTab(tab, records, stamp(), null, gives({}))
    expect(await all(records, 'looks')).toHaveLength(1)
  })
})

describe('text picked through the menu', () => {
  const picked = { text: 'Waist 16 in Hip 20 in', frameId: 5 }
  test('takes the line breaks of the same selection on the page', async () => {
    const look = await captureTab(tab, await freshRecords(), clock()(), picked, gives({ selection: 'Waist 16 in\nHip 20 in' }))
    expect(look).toMatchObject({ text: 'Waist 16 in\nHip 20 in', readBy: 'menu', title: 'Flannels' })
  })
  test('or of the frame it stands in', async () => {
    const run: RunScript = async (_, frameId) => ({ ...found, selection: frameId === 5 ? 'Waist 16 in\nHip 20 in' : '' })
    expect(await captureTab(tab, await freshRecords(), clock()(), picked, run)).toMatchObject({ text: 'Waist 16 in\nHip 20 in' })
  })
  test('is taken as it is from a frame that can not be read, also on a page that can not', async () => {
    const look = await captureTab(tab, await freshRecords(), clock()(), picked, refuses('Cannot access contents of the page.'))
    expect(look).toMatchObject({ text: picked.text, readBy: 'menu', problem: null, title: tab.title })
  })
})

describe('why a page gives nothing', () => {
  // the sentences are Chromium's and Firefox's own, from memory unless a browser test meets them
  test.each([
    ['Cannot access a chrome:// URL', '', 'browser-page'],
    ['Cannot access contents of url "chrome-extension://abc/"', '', 'browser-page'],
    ['Cannot access contents of url "file:///home/list.html"', '', 'no-permission'],
    ['Cannot access contents of url "https://a.example/"', '', 'no-permission'],
    ['Missing host permission for the tab', 'about:addons', 'browser-page'],
    ['Cannot access a chrome-extension:// URL of different extension', '', 'browser-page'],
    ['Frame with ID 0 is showing error page', 'https://gone.example/', 'browser-page'],
    ['The extensions gallery cannot be scripted.', '', 'store-page'],
    ['Missing host permission for the tab', 'https://addons.mozilla.org/', 'store-page'],
    ['Missing host permission for the tab', 'https://a.example/chart.pdf', 'pdf'],
    ['Cannot access contents of the page. Extension manifest must request permission to access the respective host.', '', 'no-permission'],
    ['Missing host permission for the tab, and any iframes', '', 'no-permission'],
    ['This page cannot be scripted due to an ExtensionsSettings policy.', 'https://a.example/', 'no-permission'],
    ['No tab with id: 10.', '', 'tab-gone'],
    ['The tab was closed.', '', 'tab-gone'],
    ['Invalid tab ID: 10', '', 'tab-gone'],
    ['the page did not answer', 'https://a.example/', 'failed']
  ])('%s at "%s": %s', (message, address, problem) => {
    expect(problemOfRefusal(message, address)).toBe(problem)
  })

  test.each<[string, Partial<PageFound>, ReturnType<typeof problemOfPage>]>([
    ['an ordinary page', {}, null],
    ['a PDF viewer', { contentType: 'application/pdf', text: '' }, 'pdf'],
    ['no text at all', { text: '' }, 'empty'],
    ['no text, though a structured block', { text: '', structured: ['{}'] }, 'empty'],
    ['a large frame of another origin', { frames: { count: 1, largestShare: 0.6 } }, 'other-origin-frame'],
    ['a large frame, and much text', { text: 'x'.repeat(2000), frames: { count: 1, largestShare: 0.6 } }, null],
    ['a small frame', { frames: { count: 2, largestShare: 0.1 } }, null],
    ['a selection beside a large frame', { selection: 'Waist 80', frames: { count: 1, largestShare: 0.9 } }, null]
  ])('%s', (_, over, problem) => {
    expect(problemOfPage({ ...found, ...over })).toBe(problem)
  })
})

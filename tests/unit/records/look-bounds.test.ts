/** How much of a page is kept, at each bound; addresses; and which look a reading belongs to. */
import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { all, one } from '../../../core/records/find.ts'
import { browserStarted, lookFor, tabCameForward, tabClosed, tabMoved, tabShows } from '../../../core/records/look-pages.ts'
import {
  keptAddress,
  keptImages,
  keptStructured,
  keptText,
  keptTitle,
  pageAddressOf,
  siteOf,
  TEXT_KEPT,
  withoutTracking
} from '../../../core/records/look-text.ts'
import { keepDraft, pasteInto, pasteNew, storeLook } from '../../../core/records/looks.ts'
import { clock, freshRecords, seen, there } from './fixtures.ts'

describe('what is kept of a page', () => {
  test('text up to its bound, whole at the bound itself', () => {
    const full = 'a'.repeat(TEXT_KEPT)
    expect(keptText(full)).toEqual({ text: full, textCutFrom: null })
    expect(keptText(`${full}b`)).toEqual({ text: full, textCutFrom: TEXT_KEPT + 1 })
    // half a sign at the end of what was handed over is no cut of ours
    expect(keptText('a\ud83e')).toEqual({ text: 'a\ud83e', textCutFrom: null })
    for (const [code, length] of [
      [0xd7ff, TEXT_KEPT],
      [0xd800, TEXT_KEPT - 1],
      [0xdbff, TEXT_KEPT - 1],
      [0xdc00, TEXT_KEPT]
    ] as const)
      expect(keptText(`${full.slice(1)}${String.fromCharCode(code)}bc`).text.length, code.toString(16)).toBe(length)
  })

  test('structured blocks while there is room for them; of a broken one its first 80 characters', () => {
    const block = (length: number) => JSON.stringify('x'.repeat(length - 2))
    const lengths = (...blocks: string[]) => keptStructured(blocks).map((one) => String(one).length)
    expect(lengths(block(100_000))).toEqual([99_998])
    expect(lengths(block(100_001), '[]')).toEqual([0])
    expect(lengths(block(60_000), block(50_000), block(40_000), '7')).toEqual([59_998, 39_998])
    expect(keptStructured([`{${'y'.repeat(200)}`])).toEqual([`{${'y'.repeat(79)}`])
  })

  test('twelve addresses of pictures of the web, each once, none of them endless', () => {
    const at = (n: number) => `https://a.example/${n}.jpg`
    expect(keptImages(Array.from({ length: 20 }, (_, n) => at(n)))).toEqual(Array.from({ length: 12 }, (_, n) => at(n)))
    const long = (length: number) => `https://a.example/${'x'.repeat(length - 18)}`
    expect(keptImages([long(2_000), long(2_001), 'HTTP://a.example/1', 'ftp://a.example/1', ' https://a.example/2'])).toEqual([
      long(2_000),
      'HTTP://a.example/1'
    ])
  })

  test('a title in one line, of 500 characters at most', () => {
    expect(keptTitle('  Grey \n\t flannels \u202d\u2069')).toBe('Grey flannels')
    expect(keptTitle('x'.repeat(501))).toHaveLength(500)
    expect(keptTitle('a\u2065b\u206ac\u2029d')).toBe('a\u2065b\u206ac d')
  })

  test.each([
    ['https://a.example/i?a=1', 'https://a.example/i?a=1'],
    ['https://a.example/i?mc_cid=1&mc_eid=2&_ga=3&_gl=4&igshid=5&yclid=6&wbraid=7&gbraid=8&msclkid=9', 'https://a.example/i?msclkid=9'],
    ['https://a.example/i?UTM_Source=x&a=', 'https://a.example/i?a='],
    ['https://a.example/i?xutm_source=x&utm=1&lid=4&abcdclid=5', 'https://a.example/i?xutm_source=x&utm=1&lid=4&abcdclid=5'],
    ['https://a.example/i?gclid', 'https://a.example/i'],
    ['https://a.example/i?gclid=1#p', 'https://a.example/i#p'],
    ['https://a.example/i#p?gclid=1', 'https://a.example/i#p?gclid=1'],
    ['https://a.example/i#p', 'https://a.example/i#p'],
    ['https://a.example/i?', 'https://a.example/i']
  ])('of %s what follows somebody about is left out: %s', (address, plain) => expect(withoutTracking(address)).toBe(plain))

  test('an address that is endless is none, by what is kept of it', () => {
    const long = (length: number) => `https://a.example/${'x'.repeat(length - 18)}`
    expect(keptAddress(long(2_000))).toBe(long(2_000))
    expect(keptAddress(long(2_001))).toBe('')
    expect(keptAddress(`${long(1_990)}?utm_source=letters`)).toBe(long(1_990))
  })

  test.each([
    ['http://www.a.example:8080/x', 'a.example:8080'],
    ['https://wwwa.example/', 'wwwa.example'],
    ['https://shop.www.example/', 'shop.www.example'],
    ['file:///tmp/x', ''],
    ['', '']
  ])('the site of %s: %s', (address, site) => expect(siteOf(address)).toBe(site))

  test.each([
    ['https://a.example/x', 'https://a.example/x'],
    ['https://a.example/x#', 'https://a.example/x'],
    ['https://a.example/x#a/b', 'https://a.example/x'],
    ['https://a.example/x#/b', 'https://a.example/x#/b'],
    ['https://a.example/x?gclid=1#y', 'https://a.example/x']
  ])('the page of %s: %s', (address, page) => expect(pageAddressOf(address)).toBe(page))
})

describe('which look a reading belongs to', () => {
  const page = (tabId: number | null, path: string, more: Parameters<typeof seen>[0] = {}) =>
    seen({ tabId, pageAddress: `https://a.example/${path}`, address: '', title: path, ...more })

  test('of two looks of one page the one in this tab, else one whose page is open no more', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const first = await storeLook(records, page(1, 'x'), stamp())
    const second = await storeLook(records, page(2, 'x'), stamp())
    expect((await storeLook(records, page(1, 'x'), stamp())).id).toBe(first.id)
    await tabClosed(records, 2, stamp())
    const third = await storeLook(records, page(3, 'x'), stamp())
    expect(third).toMatchObject({ id: second.id, tabId: 3, page: 'in-front' })
    // both open: another one
    expect([first.id, second.id]).not.toContain((await storeLook(records, page(4, 'x'), stamp())).id)
  })

  test('an own address is the same page under the same title alone; without one nothing is', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const own = { address: 'https://a.example/own', title: 'Kilt' }
    const first = await storeLook(records, page(1, 'x', own), stamp())
    expect((await storeLook(records, page(1, 'y', own), stamp())).id).toBe(first.id)
    expect((await storeLook(records, page(1, 'z', { ...own, title: 'Plaid' }), stamp())).id).not.toBe(first.id)
    const hidden = await storeLook(records, page(7, 'h', { pageAddress: '', title: 'Kilt' }), stamp())
    expect(hidden.id).not.toBe(first.id)
    expect((await storeLook(records, page(8, 'h', { pageAddress: '', title: 'Kilt' }), stamp())).id).not.toBe(hidden.id)
  })

  test('a reading of no tab leaves the others where they are', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const first = await storeLook(records, page(1, 'x'), stamp())
    const free = await storeLook(records, page(null, 'y'), stamp())
    expect(free).toMatchObject({ page: 'none', tabId: null })
    expect(await one(records, 'looks', first.id)).toEqual(first)
  })

  test('read again by the menu it takes the place of what was pasted; read whole it does not, nor where nothing is given', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const look = await storeLook(records, page(1, 'x'), stamp())
    await pasteInto(records, look.id, 'Hip 50 cm', stamp())
    const again = (more: Parameters<typeof seen>[0]) => storeLook(records, page(1, 'x', { windowId: 5, ...more }), stamp())
    expect(await again({})).toMatchObject({ text: 'Hip 50 cm', readBy: 'pasted', windowId: 5 })
    expect(await again({ text: '', problem: 'empty', readBy: 'menu' })).toMatchObject({ text: 'Hip 50 cm', problem: null })
    expect(await again({ text: 'Hip 51 cm', readBy: 'menu' })).toMatchObject({ text: 'Hip 51 cm', readBy: 'menu' })
    expect(await again({})).toMatchObject({ text: 'Hip 51 cm', readBy: 'menu' })
  })

  test('the same text again leaves no step to take back; a first text for an empty look neither', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const price = { amount: 9, currency: 'GBP' }
    const empty = await storeLook(records, page(1, 'x', { text: '', problem: 'failed' }), stamp())
    expect(empty.problem).toBe('failed')
    expect(await storeLook(records, page(1, 'x', { price }), stamp())).toMatchObject({ undo: [], problem: null, price })
    // a price stands as long as the text does
    expect(await storeLook(records, page(1, 'x'), stamp())).toMatchObject({ undo: [], price })
    const changed = await storeLook(records, page(1, 'x', { text: 'Sold' }), stamp())
    expect(changed).toMatchObject({ price: null, undo: [{ text: 'Waist 16 in flat', price }] })
  })

  test('half-typed text is forgotten by null and by nothing', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { id } = await pasteNew(records, 'Chest 52 cm', 1, stamp())
    for (const nothing of [null, '']) {
      await keepDraft(records, id, 'hip', '5', stamp())
      expect(there(await keepDraft(records, id, 'hip', nothing, stamp())).after.drafts).toEqual({})
    }
  })
})

describe('where pages are', () => {
  async function threeTabs() {
    const records = await freshRecords()
    const stamp = clock()
    const at = (tabId: number, windowId: number) =>
      storeLook(records, seen({ tabId, windowId, pageAddress: `https://a.example/${tabId}`, address: '' }), stamp())
    const looks = [await at(1, 1), await at(2, 1), await at(3, 2)]
    const places = async () => (await all(records, 'looks')).map(({ page, tabId, windowId }) => `${page} ${tabId} ${windowId}`)
    return { records, stamp, looks, places }
  }

  test.each<[string, (records: Awaited<ReturnType<typeof freshRecords>>, stamp: ReturnType<typeof clock>) => Promise<unknown>, string[]]>([
    ['nothing', async () => null, ['behind 1 1', 'in-front 2 1', 'in-front 3 2']],
    ['1 comes forward', (records, stamp) => tabCameForward(records, 1, 1, stamp()), ['in-front 1 1', 'behind 2 1', 'in-front 3 2']],
    [
      '3 comes forward in window 1',
      (records, stamp) => tabCameForward(records, 1, 3, stamp()),
      ['behind 1 1', 'behind 2 1', 'in-front 3 1']
    ],
    ['2 is moved to window 2', (records, stamp) => tabMoved(records, 2, 2, stamp()), ['behind 1 1', 'in-front 2 2', 'in-front 3 2']],
    ['2 is closed', (records, stamp) => tabClosed(records, 2, stamp()), ['behind 1 1', 'closed null 1', 'in-front 3 2']],
    [
      '2 shows it knows not what',
      (records, stamp) => tabShows(records, 2, null, true, stamp()),
      ['behind 1 1', 'navigated 2 1', 'in-front 3 2']
    ],
    [
      '2 shows another page and comes back behind',
      async (records, stamp) => {
        await tabShows(records, 2, 'https://a.example/other', true, stamp())
        await tabShows(records, 2, 'https://a.example/2#photos', false, stamp())
      },
      ['behind 1 1', 'behind 2 1', 'in-front 3 2']
    ],
    [
      '2 was left, and comes forward as something else',
      async (records, stamp) => {
        await tabShows(records, 2, null, true, stamp())
        await tabCameForward(records, 1, 2, stamp())
      },
      ['behind 1 1', 'navigated 2 1', 'in-front 3 2']
    ],
    [
      'the browser starts',
      (records, stamp) => browserStarted(records, '2000', stamp()),
      ['unknown null null', 'unknown null null', 'unknown null null']
    ]
  ])('%s', async (_, act, after) => {
    const { records, stamp, places } = await threeTabs()
    await act(records, stamp)
    expect(await places()).toEqual(after)
  })

  test('at a start a look without a page stays one, of no window; what was read since, kept or half typed is not forgotten', async () => {
    const { records, stamp, looks, places } = await threeTabs()
    const pasted = await pasteNew(records, 'Chest 52 cm', 1, stamp())
    await keepDraft(records, there(looks[0]).id, 'hip', '5', stamp())
    await browserStarted(records, there(looks[2]).capturedAt, stamp())
    expect((await all(records, 'looks')).map(({ id }) => id)).toEqual([looks[0]?.id, looks[2]?.id, pasted.id])
    expect((await places()).at(-1)).toBe('none null null')
  })

  test('beside a window: in front, else of the tab, else the latest of the window, else of none', async () => {
    const { records } = await threeTabs()
    const looks = await all(records, 'looks')
    const [a, b, c] = [there(looks[0]), there(looks[1]), there(looks[2])]
    const behind = { ...b, page: 'behind' as const }
    expect(lookFor([a, b, c], 1, 3)?.id).toBe(b.id)
    expect(lookFor([a, behind, c], 1, 3)?.id).toBe(c.id)
    expect(lookFor([a, behind, c], 1, null)?.id).toBe(b.id)
    expect(lookFor([behind, a, c], 1, 99)?.id).toBe(b.id)
    expect(lookFor([a, b, c], 9, null)).toBeNull()
    expect(lookFor([a, { ...b, windowId: null, tabId: null, page: 'none' }], 9, null)?.id).toBe(b.id)
  })
})

import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { all, one } from '../../../core/records/find.ts'
import { browserStarted, lookFor, tabCameForward, tabClosed, tabMoved, tabShows } from '../../../core/records/look-pages.ts'
import { keptAddress, keptImages, keptStructured, keptText, pageAddressOf, siteOf, TEXT_KEPT } from '../../../core/records/look-text.ts'
import { addAnswer, choose, keepDraft, pasteInto, pasteNew, storeLook, undoChoice } from '../../../core/records/looks.ts'
import { readAnswer } from '../../../core/records/read-saved.ts'
import type { Look } from '../../../core/records/schemas.ts'
import { clock, freshRecords, seen, there } from './fixtures.ts'

describe('reading a page', () => {
  test('a first reading makes a look of its tab, in front, with nothing chosen', async () => {
    const records = await freshRecords()
    const look = await storeLook(records, seen({ structured: ['{"name":"Flannels"}', '{broken'] }), clock()())
    expect(look).toMatchObject({
      windowId: 1,
      tabId: 10,
      page: 'in-front',
      text: 'Waist 16 in flat',
      textCutFrom: null,
      structured: [{ name: 'Flannels' }, '{broken'],
      corrections: [],
      answers: [],
      undo: [],
      keptId: null,
      problem: null
    })
  })

  test('the same page read again keeps corrections, answers and notes, and takes the new text', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const first = await storeLook(records, seen(), stamp())
    await choose(records, first.id, { notes: 'ask about the hem', corrections: [{ kind: 'jeans' }] }, stamp())
    const again = await storeLook(records, seen({ text: 'Waist 17 in flat' }), stamp())
    expect(again).toMatchObject({ id: first.id, text: 'Waist 17 in flat', notes: 'ask about the hem', corrections: [{ kind: 'jeans' }] })
    // and the text before can be had back
    expect(there(await undoChoice(records, first.id, stamp())).after.text).toBe('Waist 16 in flat')
  })

  test('another page in the tab makes another look and marks the first as left', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const first = await storeLook(records, seen(), stamp())
    const second = await storeLook(
      records,
      seen({ pageAddress: 'https://rail-and-peg.example/item/5', address: 'https://rail-and-peg.example/item/5', title: 'Jeans' }),
      stamp()
    )
    expect(second.id).not.toBe(first.id)
    expect(await one(records, 'looks', first.id)).toMatchObject({ page: 'navigated' })
  })

  test('an own address that two listings share does not make them one', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const stale = 'https://rail-and-peg.example/'
    const first = await storeLook(records, seen({ address: stale, title: 'Flannels' }), stamp())
    const second = await storeLook(
      records,
      seen({ address: stale, title: 'Jeans', pageAddress: 'https://rail-and-peg.example/item/5' }),
      stamp()
    )
    expect(second.id).not.toBe(first.id)
  })

  test('a fragment is the same page, a route in the fragment is not', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const first = await storeLook(records, seen(), stamp())
    expect((await storeLook(records, seen({ pageAddress: `${seen().pageAddress}#photos` }), stamp())).id).toBe(first.id)
    const routed = seen({ pageAddress: 'https://rail-and-peg.example/#/item/5', address: 'https://rail-and-peg.example/#/item/5' })
    expect((await storeLook(records, routed, stamp())).id).not.toBe(first.id)
    expect(pageAddressOf('https://a.example/x#y')).toBe('https://a.example/x')
    expect(pageAddressOf('https://a.example/x#!/y')).toBe('https://a.example/x#!/y')
  })

  test('a tab in the same window goes behind, one in another window stays in front', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const a = await storeLook(records, seen({ tabId: 10, pageAddress: 'https://a.example/', address: 'https://a.example/' }), stamp())
    const b = await storeLook(
      records,
      seen({ tabId: 20, windowId: 2, pageAddress: 'https://b.example/', address: 'https://b.example/' }),
      stamp()
    )
    const c = await storeLook(records, seen({ tabId: 11, pageAddress: 'https://c.example/', address: 'https://c.example/' }), stamp())
    const marks = Object.fromEntries((await all(records, 'looks')).map((look) => [look.id, look.page]))
    expect(marks).toEqual({ [a.id]: 'behind', [b.id]: 'in-front', [c.id]: 'in-front' })
  })

  test('the same listing open in two tabs is two looks', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const a = await storeLook(records, seen({ tabId: 10 }), stamp())
    const b = await storeLook(records, seen({ tabId: 11 }), stamp())
    expect(b.id).not.toBe(a.id)
  })

  test('text that was pasted stays when the page is read whole or gives nothing; a selection takes its place', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const blocked = await storeLook(records, seen({ text: '', problem: 'empty' }), stamp())
    await pasteInto(records, blocked.id, 'Waist 40 cm flat', stamp())
    expect(await storeLook(records, seen({ text: '', problem: 'empty' }), stamp())).toMatchObject({
      text: 'Waist 40 cm flat',
      readBy: 'pasted',
      problem: null
    })
    expect(await storeLook(records, seen(), stamp())).toMatchObject({ text: 'Waist 40 cm flat', readBy: 'pasted' })
    expect(await storeLook(records, seen({ readBy: 'selection', text: 'Hip 50 cm' }), stamp())).toMatchObject({
      text: 'Hip 50 cm',
      readBy: 'selection'
    })
  })

  test('a page that hides its address is the same only while its tab has not moved on', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const hidden = seen({ pageAddress: '', address: '', title: '', text: '', problem: 'browser-page' })
    const first = await storeLook(records, hidden, stamp())
    expect((await storeLook(records, hidden, stamp())).id).toBe(first.id)
    await tabShows(records, 10, null, true, stamp())
    expect((await storeLook(records, hidden, stamp())).id).not.toBe(first.id)
  })
})

describe('bounds', () => {
  test('of five million characters the first part is kept, and how long it was', async () => {
    const records = await freshRecords()
    const text = 'Waist 16 in. '.repeat(400_000)
    const look = await storeLook(records, seen({ text }), clock()())
    expect(look.text.length).toBe(TEXT_KEPT)
    expect(look.textCutFrom).toBe(text.length)
    expect(text.startsWith(look.text)).toBe(true)
  })

  test('a cut never halves a character', () => {
    const kept = keptText(`${'a'.repeat(TEXT_KEPT - 1)}🧵 and more`)
    expect(kept.text.length).toBe(TEXT_KEPT - 1)
    expect(keptText('short')).toEqual({ text: 'short', textCutFrom: null })
    expect(keptText('short', 900_000)).toEqual({ text: 'short', textCutFrom: 900_000 })
  })

  test('a broken structured block stays to be told; giant ones and addresses that are none are left out', () => {
    expect(keptStructured(['{"a":1}', '{', `"${'x'.repeat(200_000)}"`, '[2]'])).toEqual([{ a: 1 }, '{', [2]])
    expect(keptImages(['https://a.example/1.jpg', 'https://a.example/1.jpg', 'data:image/png;base64,AA', 'javascript:1'])).toEqual([
      'https://a.example/1.jpg'
    ])
    expect(siteOf('https://www.rail-and-peg.example/item/4')).toBe('rail-and-peg.example')
    expect(siteOf('chrome://settings')).toBe('')
    expect(siteOf('nonsense')).toBe('')
  })
})

test('a title keeps no sign that would turn the rest of a line', async () => {
  const records = await freshRecords()
  const look = await storeLook(records, seen({ title: 'Kilt \u202egnp\u2066.exe' }), clock()())
  expect(look.title).toBe('Kilt gnp.exe')
})

test.each([
  ['https://a.example/i?utm_source=letter&id=4&gclid=x#p', 'https://a.example/i?id=4#p'],
  ['https://a.example/i?fbclid=x', 'https://a.example/i'],
  ['https://a.example/i?size=M&colour=red', 'https://a.example/i?size=M&colour=red'],
  ['https://a.example/#/i?utm_source=x', 'https://a.example/#/i?utm_source=x'],
  ['', '']
])('the address %s is kept as %s', (address, kept) => expect(keptAddress(address)).toBe(kept))

test('a page that was reached by a letter is the same page', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const first = await storeLook(records, seen({ pageAddress: 'https://a.example/i?id=4', address: '' }), stamp())
  const again = await storeLook(records, seen({ pageAddress: 'https://a.example/i?id=4&utm_source=letter', address: '' }), stamp())
  expect(again.id).toBe(first.id)
})

describe('choosing', () => {
  test('each choice can be taken back in order, then there is nothing left', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { id } = await storeLook(records, seen(), stamp())
    await choose(records, id, { fit: 'loose' }, stamp())
    await choose(records, id, { fit: 'close', notes: 'snug' }, stamp())
    await choose(records, id, { personId: 'p' }, stamp())
    const fits: unknown[] = []
    for (let step = 0; step < 4; step++) {
      const change = await undoChoice(records, id, stamp())
      fits.push(change === null ? 'none' : [change.after.personId, change.after.fit, change.after.notes])
    }
    expect(fits).toEqual([[null, 'close', 'snug'], [null, 'loose', ''], [null, null, ''], 'none'])
  })

  test('what is chosen again as it is leaves no step to take back', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { id } = await storeLook(records, seen(), stamp())
    await choose(records, id, { notes: 'once' }, stamp())
    await choose(records, id, { notes: 'once' }, stamp())
    expect(there(await undoChoice(records, id, stamp())).after.notes).toBe('')
    expect(await undoChoice(records, id, stamp())).toBeNull()
  })

  test('undo brings back what was chosen, and nothing that came meanwhile', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { id } = await storeLook(records, seen(), stamp())
    await choose(records, id, { fit: 'loose' }, stamp())
    await keepDraft(records, id, 'waist', '84', stamp())
    expect(there(await undoChoice(records, id, stamp())).after).toMatchObject({ fit: null, drafts: { waist: '84' } })
  })

  test('a seller’s answer takes the place of what was added by hand for its point, and undo brings that back with it gone', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { id } = await storeLook(records, seen(), stamp())
    const added = (point: 'hip' | 'thigh') => ({ add: point, mm: 1000, source: 'own' as const })
    await choose(records, id, { corrections: [{ kind: 'trousers' }, added('hip'), added('thigh')] }, stamp())
    const answer = { id: 'a', text: 'The hips are 52 cm across', at: '2026-03-01T09:00:00.000Z' }
    const { after } = there(await addAnswer(records, id, answer, readAnswer(answer.text, 'trousers', 'cm'), stamp()))
    expect(after).toMatchObject({ answers: [answer], corrections: [{ kind: 'trousers' }, added('thigh')] })
    expect(there(await undoChoice(records, id, stamp())).after).toMatchObject({
      answers: [],
      corrections: [{ kind: 'trousers' }, added('hip'), added('thigh')]
    })
  })

  test('half-typed text is kept by field and forgotten when it was taken, without a step of undo', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { id } = await storeLook(records, seen(), stamp())
    await keepDraft(records, id, 'waist', '1/0', stamp())
    await keepDraft(records, id, 'answer', 'The hem is', stamp())
    await keepDraft(records, id, 'waist', null, stamp())
    expect(await one(records, 'looks', id)).toMatchObject({ drafts: { answer: 'The hem is' }, undo: [] })
  })

  test('pasted text without a page is a look of no tab', async () => {
    const records = await freshRecords()
    expect(await pasteNew(records, 'Chest 52 cm', 1, clock()())).toMatchObject({ tabId: null, windowId: 1, page: 'none', readBy: 'pasted' })
  })

  test('pasted text is all that such a look has', async () => {
    const stamp = clock()()
    expect(await pasteNew(await freshRecords(), 'Chest 52 cm', null, stamp)).toMatchObject({
      ...{ text: 'Chest 52 cm', textCutFrom: null, pageAddress: '', address: '', title: '', structured: [], price: null, images: [] },
      ...{ problem: null, capturedAt: stamp.now, drafts: {}, undo: [], keptId: null, windowId: null }
    })
  })
})

describe('where the pages are', () => {
  const marks = async (records: Awaited<ReturnType<typeof freshRecords>>) => (await all(records, 'looks')).map((look) => look.page)
  const two = async () => {
    const records = await freshRecords()
    const stamp = clock()
    const a = await storeLook(records, seen({ tabId: 10, pageAddress: 'https://a.example/', address: 'https://a.example/' }), stamp())
    const b = await storeLook(records, seen({ tabId: 11, pageAddress: 'https://b.example/', address: 'https://b.example/' }), stamp())
    return { records, stamp, a, b }
  }

  test('a tab that comes forward brings its look, and the other goes behind', async () => {
    const { records, stamp, a } = await two()
    expect(await marks(records)).toEqual(['behind', 'in-front'])
    await tabCameForward(records, 1, 10, stamp())
    expect(await marks(records)).toEqual(['in-front', 'behind'])
    expect(lookFor(await all(records, 'looks'), 1)?.id).toBe(a.id)
    await tabCameForward(records, 1, 99, stamp())
    expect(await marks(records)).toEqual(['behind', 'behind'])
  })

  test('a load with a hidden address marks the look as left, and coming forward does not bring it back', async () => {
    const { records, stamp } = await two()
    await tabShows(records, 11, null, true, stamp())
    expect(await marks(records)).toEqual(['behind', 'navigated'])
    await tabCameForward(records, 1, 11, stamp())
    expect(await marks(records)).toEqual(['behind', 'navigated'])
  })

  test('a load of the same address keeps the look; another address leaves it; going back brings it back', async () => {
    const { records, stamp } = await two()
    await tabShows(records, 11, 'https://b.example/#photos', true, stamp())
    expect(await marks(records)).toEqual(['behind', 'in-front'])
    await tabShows(records, 11, 'https://b.example/next', true, stamp())
    expect(await marks(records)).toEqual(['behind', 'navigated'])
    await tabShows(records, 11, 'https://b.example/', true, stamp())
    expect(await marks(records)).toEqual(['behind', 'in-front'])
  })

  test('a closed tab and a moved tab', async () => {
    const { records, stamp, a, b } = await two()
    await tabClosed(records, 10, stamp())
    await tabMoved(records, 11, 7, stamp())
    expect(await one(records, 'looks', a.id)).toMatchObject({ page: 'closed', tabId: null })
    expect(await one(records, 'looks', b.id)).toMatchObject({ page: 'in-front', windowId: 7 })
  })

  test('after a restart no look knows its page until the page is read again', async () => {
    const { records, stamp, b } = await two()
    await choose(records, b.id, { notes: 'keep me' }, stamp())
    await browserStarted(records, '2020-01-01T00:00:00.000Z', stamp())
    expect(await marks(records)).toEqual(['unknown', 'unknown'])
    const again = await storeLook(
      records,
      seen({ tabId: 3, windowId: 9, pageAddress: 'https://b.example/', address: 'https://b.example/' }),
      stamp()
    )
    expect(again).toMatchObject({ id: b.id, page: 'in-front', tabId: 3, windowId: 9, notes: 'keep me' })
  })

  test('old looks nothing was typed into are forgotten at a start, others stay', async () => {
    const { records, stamp, a, b } = await two()
    await choose(records, b.id, { notes: 'keep me' }, stamp())
    await browserStarted(records, '2027-01-01T00:00:00.000Z', stamp())
    expect((await all(records, 'looks')).map((look) => look.id)).toEqual([b.id])
    expect(await records.rows('looks').get(a.id)).toBeUndefined()
  })

  test('marks write no revision when nothing changes', async () => {
    const { records, stamp, b } = await two()
    const before = there(await one(records, 'looks', b.id))
    await tabCameForward(records, 1, 11, stamp())
    expect(await one(records, 'looks', b.id)).toEqual(before)
  })

  test('the panel shows the look in front, else of the tab in front, else the latest of the window', () => {
    const look = (over: Partial<Look>): Look => ({ ...shell, ...over })
    const older = look({ id: 'older', capturedAt: '2026-03-01T08:00:00.000Z', page: 'navigated', tabId: 10 })
    const newer = look({ id: 'newer', capturedAt: '2026-03-01T09:00:00.000Z', page: 'behind', tabId: 11 })
    const pasted = look({ id: 'pasted', windowId: null, tabId: null, page: 'none', capturedAt: '2026-03-01T10:00:00.000Z' })
    expect(lookFor([older, newer, pasted], 1)?.id).toBe('newer')
    expect(lookFor([older, newer, pasted], 1, 10)?.id).toBe('older')
    expect(lookFor([older, { ...newer, page: 'in-front' }, pasted], 1, 10)?.id).toBe('newer')
    expect(lookFor([older, newer, pasted], 2)?.id).toBe('pasted')
    expect(lookFor([], 2)).toBeNull()
  })
})

const shell: Look = {
  id: 'x',
  device: 'd',
  revision: 1,
  createdAt: '2026-03-01T08:00:00.000Z',
  updatedAt: '2026-03-01T08:00:00.000Z',
  deletedAt: null,
  address: '',
  title: '',
  text: '',
  textCutFrom: null,
  structured: [],
  price: null,
  money: { price: null, postage: null, worth: null },
  images: [],
  corrections: [],
  answers: [],
  notes: '',
  personId: null,
  fit: null,
  favouriteId: null,
  aim: null,
  windowId: 1,
  tabId: 1,
  pageAddress: '',
  capturedAt: '2026-03-01T08:00:00.000Z',
  readBy: 'page',
  problem: null,
  page: 'behind',
  drafts: {},
  undo: [],
  keptId: null
}

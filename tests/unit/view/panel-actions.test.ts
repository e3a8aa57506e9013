// @vitest-environment happy-dom
/** What is done in the panel while nothing can be saved: told, held, and saved later whole; no draft is forgotten meanwhile. */
import 'fake-indexeddb/auto'
import { afterEach, expect, test, vi } from 'vitest'
import { all, one } from '../../../core/records/find.ts'
import { keepDraft, storeLook } from '../../../core/records/looks.ts'
import { panelActions } from '../../../entrypoints/view/panel-actions.ts'
import { Saving } from '../../../entrypoints/view/saving.ts'
import { clock, freshRecords, seen, there } from '../records/fixtures.ts'

vi.mock('wxt/browser', () => ({ browser: {} }))
afterEach(() => {
  vi.restoreAllMocks()
})

async function panel() {
  const records = await freshRecords()
  const stamp = clock()
  const saving = new Saving(records)
  const look = await storeLook(records, seen(), stamp())
  await keepDraft(records, look.id, 'answer', 'The thigh is 32 cm.', stamp())
  await keepDraft(records, look.id, 'notes', 'for the wedding', stamp())
  const actions = panelActions({ stamp, saving, look, judgedLook: null, person: null, windowId: 1 })
  const idle = () => vi.waitFor(() => expect(saving.now().is).not.toBe('saving'))
  return { records, saving, actions, idle, now: async () => there(await one(records, 'looks', look.id)) }
}

function breakDisk() {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
  const writes = [IDBObjectStore.prototype, IDBCursor.prototype] as const
  const broken = () => {
    throw Object.assign(new Error(''), { name: 'QuotaExceededError' })
  }
  vi.spyOn(writes[0], 'put').mockImplementation(broken)
  vi.spyOn(writes[0], 'add').mockImplementation(broken)
}

test('an answer that could not be saved leaves its draft, and both are settled when it is tried again', async () => {
  const { saving, actions, idle, now } = await panel()
  breakDisk()
  actions.onAnswer('The thigh is 32 cm.')
  actions.onDraft('answer', null)
  await idle()
  vi.restoreAllMocks()
  expect(saving.now()).toEqual({ is: 'not-saved', trouble: 'full', waiting: 2, clashes: [] })
  expect(await now()).toMatchObject({ answers: [], drafts: { answer: 'The thigh is 32 cm.' } })
  await saving.again()
  expect(await now()).toMatchObject({ answers: [{ text: 'The thigh is 32 cm.' }], drafts: { notes: 'for the wedding' } })
  expect((await now()).drafts).not.toHaveProperty('answer')
})

test('notes that could not be saved stay a draft', async () => {
  const { actions, idle, now } = await panel()
  breakDisk()
  actions.onNotes('for the wedding', '')
  actions.onDraft('notes', null)
  await idle()
  vi.restoreAllMocks()
  expect(await now()).toMatchObject({ notes: '', drafts: { notes: 'for the wedding' } })
})

test('keeping and passing on is one act', async () => {
  const { records, saving, actions, idle } = await panel()
  actions.onPass()
  await idle()
  expect(await all(records, 'listingsKept')).toMatchObject([{ status: 'passed', notes: 'for the wedding' }])
  expect(saving.now().is).toBe('saved')
})

test('a look that was removed on another page is said, whatever is done to it', async () => {
  const { records, saving, actions, idle, now } = await panel()
  await records.rows('looks').delete((await now()).id)
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
  actions.onNotes('new', '')
  await idle()
  expect(saving.now()).toEqual({ is: 'not-saved', trouble: 'gone', waiting: 0, clashes: [] })
})

test('chosen again before the page has heard of the choice before it: the later one counts, another choice beside it stays, nobody is asked', async () => {
  const { saving, actions, idle, now } = await panel()
  // typed letter by letter into a list: the first letter chooses another than the whole word
  actions.onCorrections([{ cut: { leg: 'bootcut' } }])
  actions.onCorrections([{ cut: { leg: 'flared' } }])
  actions.onMoney({ price: 20, postage: null, worth: null })
  await idle()
  expect(saving.now()).toEqual({ is: 'saved', trouble: null, waiting: 0, clashes: [] })
  expect(await now()).toMatchObject({ corrections: [{ cut: { leg: 'flared' } }], money: { price: 20 } })
})

test('what was kept a moment ago can be taken back before the page has heard of it', async () => {
  const { records, actions, idle } = await panel()
  expect(await actions.onKeep()).toBe(true)
  expect(await all(records, 'listingsKept')).toHaveLength(1)
  expect(await actions.onTakeBack(null)).toBe(true)
  await idle()
  expect(await all(records, 'listingsKept')).toEqual([])
})

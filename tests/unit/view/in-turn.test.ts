/** The worker's work: in order, tried again after a failure, and told to the pages that are open. */
import 'fake-indexeddb/auto'
import { afterEach, expect, test, vi } from 'vitest'
import { DATABASE_NAME } from '../../../core/records/database.ts'
import { all } from '../../../core/records/find.ts'
import { storeLook } from '../../../core/records/looks.ts'
import { seen } from '../records/fixtures.ts'

const { sent } = vi.hoisted(() => ({ sent: [] as unknown[] }))
vi.mock('wxt/browser', () => ({
  browser: { runtime: { sendMessage: async (message: unknown) => void sent.push(message), onMessage: { addListener: () => undefined } } }
}))

import { inTurn } from '../../../entrypoints/background/in-turn.ts'

afterEach(() => {
  vi.restoreAllMocks()
  sent.length = 0
})

const texts: string[][] = []
const listed = () => inTurn(async (records) => void texts.push((await all(records, 'looks')).map(({ text }) => text)))
const stored = (text: string) => inTurn(async (records, stamp) => void (await storeLook(records, seen({ text }), stamp())))

test('what could not be written is told, and the next event is written', async () => {
  await stored('one')
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
  const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw Object.assign(new Error(''), { name: 'QuotaExceededError' })
  })
  await stored('two')
  expect(sent).toEqual([{ is: 'not-saved', trouble: 'full' }])
  full.mockRestore()
  await stored('three')
  await listed()
  expect(texts.at(-1)).toEqual(['three'])
})

test('everything deleted under the worker is told once it is needed, and then begun anew', async () => {
  await stored('one')
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
  await new Promise((done) => {
    indexedDB.deleteDatabase(DATABASE_NAME).onsuccess = done
  })
  await stored('two')
  expect(sent).toEqual([{ is: 'not-saved', trouble: 'deleted' }])
  await stored('three')
  await listed()
  expect(texts.at(-1)).toEqual(['three'])
})

test('no database at all is told, and tried again', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
  await new Promise((done) => {
    indexedDB.deleteDatabase(DATABASE_NAME).onsuccess = done
  })
  await stored('lost')
  const off = vi.spyOn(indexedDB, 'open').mockImplementation(() => {
    throw Object.assign(new Error(''), { name: 'SecurityError' })
  })
  await stored('lost too')
  expect(sent.at(-1)).toEqual({ is: 'not-saved', trouble: 'unavailable' })
  off.mockRestore()
  await stored('there')
  await listed()
  expect(texts.at(-1)).toEqual(['there'])
})

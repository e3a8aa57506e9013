/** How everything is is kept once a day, and no page waits for it or fails with it. */
import 'fake-indexeddb/auto'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { patch, put } from '../../../core/records/change.ts'
import { makeSnapshot, snapshots, snapshotsLetGo } from '../../../core/records/snapshots.ts'
import { keepDayByDay, keepToday } from '../../../entrypoints/view/day-by-day.ts'
import { clock, freshRecords, WREN } from '../records/fixtures.ts'

beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  vi.restoreAllMocks()
})

test('a while after the page is drawn', async () => {
  const records = await freshRecords()
  const stamp = clock()
  await put(records, 'people', WREN, stamp())
  keepDayByDay(records, stamp, 5)
  expect(await snapshots(records)).toEqual([])
  await vi.waitFor(async () => expect(await snapshots(records)).toMatchObject([{ because: 'day', counts: { people: 1 } }]))
})

test('where there is no room the earlier ones are given up, and it is known', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const { after } = await put(records, 'people', WREN, stamp())
  await makeSnapshot(records, 'day', stamp())
  await patch(records, 'people', after.id, { name: 'Lark' }, stamp())
  const { put: write } = IDBObjectStore.prototype
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
    if (this.name === 'snapshots') throw new DOMException('no room', 'QuotaExceededError')
    return write.call(this, value, key)
  })
  const tomorrow = { ...stamp(), now: '2026-03-02T09:00:00.000Z' }
  await keepToday(records, tomorrow)
  expect(await snapshots(records)).toEqual([])
  expect(await snapshotsLetGo(records)).toBe(true)
})

test('a page whose records have ended keeps nothing', async () => {
  const records = await freshRecords()
  records.db.close()
  await keepToday({ ...records, ended: () => 'deleted' }, clock()())
  expect(console.error).not.toHaveBeenCalled()
})

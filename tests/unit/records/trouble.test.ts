/** Saving that fails: the reason is told, nothing is half written, and “saved” comes after the commit alone. */
import 'fake-indexeddb/auto'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { patch, put } from '../../../core/records/change.ts'
import { openRecords } from '../../../core/records/database.ts'
import { all } from '../../../core/records/find.ts'
import { inOneGo } from '../../../core/records/in-one-go.ts'
import { MIGRATIONS } from '../../../core/records/migrations.ts'
import { Gone, there, troubleOf } from '../../../core/records/trouble.ts'
import { clock, freshName, freshRecords, WREN } from './fixtures.ts'

afterEach(() => {
  vi.restoreAllMocks()
  vi.unstubAllGlobals()
})

const named = (name: string, message = ''): Error => Object.assign(new Error(message), { name })

describe('the reason is found', () => {
  test.each([
    ['full', named('QuotaExceededError')],
    ['full', Object.assign(named('AbortError'), { inner: named('QuotaExceededError') })],
    ['full', Object.assign(named('OpenFailedError'), { inner: named('UnknownError', 'Internal error: quota exceeded') })],
    ['full', new Error('outside', { cause: named('QuotaExceededError') })],
    ['broken-off', named('AbortError')],
    ['broken-off', named('TransactionInactiveError')],
    ['gone', new Gone('')],
    ['unavailable', named('SecurityError')],
    ['unavailable', named('DatabaseClosedError')],
    ['unavailable', 'a text'],
    ['unavailable', null]
  ])('%s: %s', (trouble, error) => expect(troubleOf(error)).toBe(trouble))

  test('an error that holds itself ends', () => {
    const round: Error & { inner?: unknown } = named('Odd')
    round.inner = { name: 'Inner', inner: round }
    expect(troubleOf(round)).toBe('unavailable')
  })

  test('nothing to change is Gone', () => {
    expect(there(3)).toBe(3)
    expect(() => there(null)).toThrow(Gone)
  })
})

describe('one act', () => {
  test('asks for strict durability', async () => {
    const asked = vi.spyOn(IDBDatabase.prototype, 'transaction')
    const records = await freshRecords()
    asked.mockClear()
    await inOneGo(records, () => put(records, 'people', WREN, clock()()))
    expect(asked.mock.calls.map(([, mode, options]) => [mode, options])).toEqual([['readwrite', { durability: 'strict' }]])
  })

  test('is written whole or not at all', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const act = async () => {
      await put(records, 'people', WREN, stamp())
      there(await patch(records, 'people', 'nobody', { name: 'X' }, stamp()))
    }
    await expect(inOneGo(records, act)).rejects.toThrow(Gone)
    expect(await all(records, 'people')).toEqual([])
  })

  test('a record that would not fit is no record', async () => {
    const records = await freshRecords()
    const failed = await inOneGo(records, () => put(records, 'people', { ...WREN, name: '' }, clock()())).catch(troubleOf)
    expect(failed).toBe('misfit')
  })

  test('is answered after the commit, not before', async () => {
    const order: string[] = []
    const begin = IDBDatabase.prototype.transaction
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...given) {
      const transaction = begin.apply(this, given)
      if (transaction.mode === 'readwrite') transaction.addEventListener('complete', () => order.push('committed'))
      return transaction
    })
    const records = await freshRecords()
    order.length = 0
    await inOneGo(records, () => put(records, 'people', WREN, clock()())).then(() => order.push('answered'))
    expect(order).toEqual(['committed', 'answered'])
  })

  test('broken off by the browser after the last write it is not saved', async () => {
    const records = await freshRecords()
    const put0 = IDBObjectStore.prototype.add
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(function (this: IDBObjectStore, ...given) {
      const request = put0.apply(this, given)
      request.addEventListener('success', () => this.transaction.abort())
      return request
    })
    expect(await inOneGo(records, () => put(records, 'people', WREN, clock()())).catch(troubleOf)).toBe('broken-off')
    vi.restoreAllMocks()
    expect(await all(records, 'people')).toEqual([])
  })
})

describe('opening', () => {
  test('without a database in the browser there is a reason', async () => {
    vi.stubGlobal('indexedDB', undefined)
    expect(await openRecords(freshName())).toMatchObject({ ok: false, problem: 'unavailable' })
  })

  test('a disk that is full at the first opening is told as such', async () => {
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw named('QuotaExceededError')
    })
    expect(await openRecords(freshName())).toMatchObject({ ok: false, problem: 'full' })
  })
})

describe('a page that is older than what another page did', () => {
  const LATER = { number: MIGRATIONS.length + 1, title: 'later', why: 'for this test', stores: { people: 'id, name' } }

  test('gives way to a later version, says so once, and never writes into it', async () => {
    const name = freshName()
    const old = await freshRecords(name)
    const told: string[] = []
    old.onEnded((why) => told.push(why))
    const later = await openRecords(name, [...MIGRATIONS, LATER])
    if (!later.ok) throw new Error(later.detail)
    expect(told).toEqual(['outdated'])
    expect(old.ended()).toBe('outdated')
    await expect(put(old, 'people', WREN, clock()())).rejects.toMatchObject({ name: 'DatabaseClosedError' })
    await expect(all(old, 'people')).rejects.toMatchObject({ name: 'DatabaseClosedError' })
    expect(await later.records.rows('people').toArray()).toEqual([])
    const late: string[] = []
    old.onEnded((why) => late.push(why))
    expect(late).toEqual(['outdated'])
    later.records.db.close()
  })

  test('sees that everything was deleted, and does not make it anew', async () => {
    const name = freshName()
    const records = await freshRecords(name)
    await put(records, 'people', WREN, clock()())
    const deleted = new Promise((done, failed) => {
      const request = indexedDB.deleteDatabase(name)
      request.onsuccess = done
      request.onerror = failed
      request.onblocked = failed
    })
    await deleted
    expect(records.ended()).toBe('deleted')
    await expect(put(records, 'people', WREN, clock()())).rejects.toMatchObject({ name: 'DatabaseClosedError' })
    expect((await indexedDB.databases()).map((one) => one.name)).not.toContain(name)
  })

  test('one that will not give way is told while opening waits', async () => {
    const name = freshName()
    const holder = await new Promise<IDBDatabase>((done) => {
      const request = indexedDB.open(name, MIGRATIONS.length * 10)
      request.onupgradeneeded = () => {
        const old = request.result
        for (const table of ['people', 'bodyMeasurements', 'garmentsOwned', 'listingsKept', 'looks', 'settings', 'setAside'])
          old.createObjectStore(table, { keyPath: 'id' })
        old.createObjectStore('local', { keyPath: 'key' })
      }
      request.onsuccess = () => done(request.result)
    })
    let blocked = 0
    const opening = openRecords(name, [...MIGRATIONS, LATER], () => {
      blocked++
      setTimeout(() => holder.close(), 5)
    })
    const opened = await opening
    expect(blocked).toBe(1)
    expect(opened.ok).toBe(true)
    if (opened.ok) opened.records.db.close()
  })
})

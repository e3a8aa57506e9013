// @vitest-environment happy-dom
/** A page is never blank: what holds it up is said, with the way on. */
import 'fake-indexeddb/auto'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { DATABASE_NAME, openRecords } from '../../../core/records/database.ts'
import { MIGRATIONS } from '../../../core/records/migrations.ts'
import { type PageProps, startPage } from '../../../entrypoints/view/page-start.tsx'
import { keepPasteDraft, pasteDraft } from '../../../entrypoints/view/paste-draft.ts'
import { textOf } from '../on-page.tsx'

let props: PageProps | null = null
const Page = (given: PageProps) => {
  props = given
  return <p>the page</p>
}
const shown = (): string => textOf(document.getElementById('page'))
const shows = (text: string) => vi.waitFor(() => expect(shown()).toContain(text), { timeout: 6000, interval: 20 })

beforeEach(() => {
  document.body.innerHTML = '<div id="page"></div>'
  props = null
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(async () => {
  props?.records.db.close()
  vi.restoreAllMocks()
  vi.unstubAllGlobals()
  await new Promise((done) => {
    const request = indexedDB.deleteDatabase(DATABASE_NAME)
    request.onsuccess = done
    request.onerror = done
    request.onblocked = done
  })
})

test('the page, once what is saved is open', async () => {
  await startPage(Page, 'house.name')
  expect(shown()).toBe('the page')
})

test('no database at all', async () => {
  vi.stubGlobal('indexedDB', undefined)
  await startPage(Page, 'house.name')
  expect(shown()).toContain('The browser gives no place to save here')
  expect(shown()).toContain('Reload this page')
  vi.unstubAllGlobals()
})

test('a disk that is full at the first opening', async () => {
  vi.spyOn(indexedDB, 'open').mockImplementation(() => {
    throw Object.assign(new Error(''), { name: 'QuotaExceededError' })
  })
  await startPage(Page, 'house.name')
  expect(shown()).toContain('no room even to open')
})

test('saved by a later version', async () => {
  const later = { number: MIGRATIONS.length + 1, title: 'later', why: 'for this test', stores: {} }
  const opened = await openRecords(DATABASE_NAME, [...MIGRATIONS, later])
  if (opened.ok) opened.records.db.close()
  await startPage(Page, 'house.name')
  expect(shown()).toContain('saved by a later version')
})

test('an opening that never answers is told, first as such and then as long', async () => {
  const open = indexedDB.open.bind(indexedDB)
  vi.spyOn(indexedDB, 'open').mockImplementation((name) => {
    const request = open(`${name}-elsewhere`)
    Object.defineProperty(request, 'onsuccess', { set: () => undefined })
    Object.defineProperty(request, 'onupgradeneeded', { set: () => undefined })
    return request
  })
  void startPage(Page, 'house.name')
  await shows('Opening what is saved.')
  await shows('The browser has not opened what is saved yet.')
  expect(shown()).toContain('Reload this page')
}, 10_000)

test('held by a page of an older version, it is told, and goes on by itself', async () => {
  const holder = await new Promise<IDBDatabase>((done) => {
    const request = indexedDB.open(DATABASE_NAME, 10)
    request.onupgradeneeded = () => {
      for (const table of ['people', 'bodyMeasurements', 'garmentsOwned', 'listingsKept', 'looks', 'settings', 'setAside'])
        request.result.createObjectStore(table, { keyPath: 'id' })
      request.result.createObjectStore('local', { keyPath: 'key' })
    }
    request.onsuccess = () => done(request.result)
  })
  void startPage(Page, 'house.name')
  await shows('Another page of Seam Reckoner still uses what is saved')
  holder.close()
  await shows('the page')
})

test('a browser whose own id can’t be kept is read from all the same, and says that it can’t save', async () => {
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw Object.assign(new Error(''), { name: 'QuotaExceededError' })
  })
  await startPage(Page, 'house.name')
  await shows('the page')
  expect(shown()).toContain('the browser has no room left')
  expect(props?.stamp().device).toMatch(/^[0-9a-f-]{36}$/)
})

test('everything deleted under an open page is said, and a typed text is told to be copied', async () => {
  await startPage(Page, 'house.name')
  await new Promise((done) => {
    indexedDB.deleteDatabase(DATABASE_NAME).onsuccess = done
  })
  await shows('has been deleted')
  expect(shown()).toContain('Copy what you typed')
})

test('a draft that can’t be kept is not passed over', () => {
  keepPasteDraft('Waist 40 cm')
  expect(pasteDraft()).toBe('Waist 40 cm')
  vi.stubGlobal('localStorage', {
    getItem: () => null,
    setItem: () => {
      throw Object.assign(new Error(''), { name: 'QuotaExceededError' })
    }
  })
  expect(() => keepPasteDraft('more')).toThrow()
  expect(pasteDraft()).toBe('')
})

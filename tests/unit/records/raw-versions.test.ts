/**
 * Databases as the browser keeps them, of every version there has been: made by the standard's own calls from a layout that is written down here
 * and rows that stand in `raw`, with nothing of this program's. A version's layout and rows are written once and never changed.
 */
import 'fake-indexeddb/auto'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { exportBackup } from '../../../core/records/backup.ts'
import { openRecords, type Records } from '../../../core/records/database.ts'
import { all, one, unreadable } from '../../../core/records/find.ts'
import { firstFinds, isFilled } from '../../../core/records/finds.ts'
import { MIGRATIONS } from '../../../core/records/migrations.ts'
import { settingsOf } from '../../../core/records/owned.ts'
import { TABLES } from '../../../core/records/schemas.ts'
import { unsettled } from '../../../core/records/settle.ts'
import { previewRestore, restore, snapshots } from '../../../core/records/snapshots.ts'
import { spreadBatches } from '../../../core/records/spread-summaries.ts'
import { clock, freshName, there } from './fixtures.ts'

interface Store {
  keyPath: string
  /** Each index with what it is of. */
  indexes: Readonly<Record<string, string | string[]>>
}
type Layout = Readonly<Record<string, Store>>

const ofId = (...indexed: string[]): Store => ({ keyPath: 'id', indexes: Object.fromEntries(indexed.map((name) => [name, name])) })

const FIRST: Layout = {
  people: ofId(),
  bodyMeasurements: ofId('personId'),
  garmentsOwned: ofId('personId'),
  listingsKept: ofId('address'),
  looks: ofId('windowId', 'tabId', 'address', 'pageAddress', 'keptId'),
  settings: ofId(),
  setAside: ofId(),
  local: { keyPath: 'key', indexes: {} }
}
const WITH_EARLIER_STATES: Layout = {
  ...FIRST,
  people: ofId('deletedAt'),
  garmentsOwned: ofId('personId', 'deletedAt'),
  listingsKept: ofId('address', 'deletedAt'),
  snapshots: { keyPath: 'key', indexes: {} },
  past: { keyPath: 'key', indexes: { '[snapshot+weight]': ['snapshot', 'weight'] } }
}
const FINDS_BESIDE: Layout = {
  ...WITH_EARLIER_STATES,
  summaries: { keyPath: 'id', indexes: { 'written': 'written', '[state+keptAt]': ['state', 'keptAt'], 'conflicts': 'conflicts' } },
  verdicts: ofId('written'),
  answers: ofId(),
  looks: {
    keyPath: 'id',
    indexes: {
      ...ofId('windowId', 'tabId', 'address', 'pageAddress', 'keptId', 'capturedAt').indexes,
      '[windowId+page]': ['windowId', 'page'],
      '[windowId+capturedAt]': ['windowId', 'capturedAt'],
      '[tabId+capturedAt]': ['tabId', 'capturedAt']
    }
  }
}
const TOLD_TOGETHER: Layout = { ...FINDS_BESIDE, summaryBatches: { keyPath: 'key', indexes: {} } }
const LAYOUTS: readonly Layout[] = [...[FIRST, FIRST, FIRST, FIRST, FIRST, FIRST], ...[WITH_EARLIER_STATES, FINDS_BESIDE, TOLD_TOGETHER]]
/** The browser's own number of a version. */
const NATIVE = 10

const versions = LAYOUTS.map((layout, at) => ({ version: at + 1, layout }))
const folder = new URL('./raw/', import.meta.url)
const rowsOf = (version: number): Record<string, Record<string, unknown>[]> =>
  JSON.parse(readFileSync(new URL(`version-${version}.json`, folder), 'utf8'))

/** The database as that version left it, closed. */
function written(name: string, version: number, layout: Layout): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, version * NATIVE)
    request.onupgradeneeded = () => {
      for (const [store, { keyPath, indexes }] of Object.entries(layout)) {
        const made = request.result.createObjectStore(store, { keyPath })
        for (const [index, of] of Object.entries(indexes)) made.createIndex(index, of)
      }
    }
    request.onerror = () => reject(request.error)
    request.onsuccess = () => {
      const db = request.result
      const transaction = db.transaction(Object.keys(layout), 'readwrite')
      for (const [store, rows] of Object.entries(rowsOf(version))) for (const row of rows) transaction.objectStore(store).put(row)
      transaction.onerror = () => reject(transaction.error)
      transaction.oncomplete = () => {
        db.close()
        resolve()
      }
    }
  })
}

/** What the browser has of a database: stores, keys, indexes. */
function layoutOf(name: string): Promise<{ version: number; layout: Layout }> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name)
    request.onerror = () => reject(request.error)
    request.onsuccess = () => {
      const db = request.result
      const transaction = db.transaction([...db.objectStoreNames], 'readonly')
      const layout = Object.fromEntries(
        [...db.objectStoreNames].map((store) => {
          const its = transaction.objectStore(store)
          const indexes = Object.fromEntries([...its.indexNames].map((index) => [index, its.index(index).keyPath]))
          return [store, { keyPath: String(its.keyPath), indexes }]
        })
      )
      db.close()
      resolve({ version: db.version, layout })
    }
  })
}

async function openedToday(version: number, layout: Layout): Promise<Records> {
  const name = freshName()
  await written(name, version, layout)
  const opened = await openRecords(name)
  if (!opened.ok) throw new Error(opened.detail)
  return opened.records
}

test('every version there has been is here, and today’s is laid out as it is written down', async () => {
  expect(versions.map(({ version }) => version)).toEqual(MIGRATIONS.map(({ number }) => number))
  const name = freshName()
  const opened = await openRecords(name)
  if (!opened.ok) throw new Error(opened.detail)
  opened.records.db.close()
  const { version, layout } = await layoutOf(name)
  expect({ version, layout }).toEqual({ version: MIGRATIONS.length * NATIVE, layout: LAYOUTS.at(-1) })
})

describe.each(versions)('version $version', ({ version, layout }) => {
  test('is opened, brought to today’s layout, and everything in it can be read', async () => {
    const rows = rowsOf(version)
    const records = await openedToday(version, layout)
    expect(records.version).toBe(MIGRATIONS.length)
    for (const [store, its] of Object.entries(rows)) expect(await records.db.table(store).count(), store).toBe(its.length)
    for (const table of TABLES) expect((await all(records, table)).length, table).toBeGreaterThan(0)
    // what could not be read then can't be now, and is shown
    expect((await unreadable(records)).map(({ id }) => id).toSorted()).toEqual(['p9', 's1'])
    expect(await records.rows('people').get('p9')).toEqual({ id: 'p9', name: 7, thimble: true })
    expect(await one(records, 'garmentsOwned', 'g2')).toBeNull()
    expect((await exportBackup(records, clock()())).tables.garmentsOwned).toHaveLength(2)
    expect(await records.rows('local').get('device')).toEqual({ key: 'device', value: 'chalk' })
    const { name } = records.db
    records.db.close()
    expect((await layoutOf(name)).layout).toEqual(LAYOUTS.at(-1))
  })

  test('says what it said then', async () => {
    const rows = rowsOf(version)
    const records = await openedToday(version, layout)
    for (const table of ['people', 'bodyMeasurements', 'garmentsOwned', 'listingsKept', 'settings'] as const) {
      for (const now of await all(records, table)) {
        const then = there(rows[table]?.find(({ id }) => id === now.id))
        // version 2 brought a listing and its look together; all else is as it was
        const { corrections: _, money: __, ...its } = then
        expect(now).toMatchObject(version === 1 && table === 'listingsKept' ? { ...its, revision: expect.anything() } : then)
      }
    }
    expect(await settingsOf(records)).toMatchObject({ theme: 'dark', personId: 'p1' })
    records.db.close()
  })
})

test('of the first version a look and its listing, which had come apart, agree, and nothing of either is lost', async () => {
  const records = await openedToday(1, FIRST)
  const [listing, look] = [there(await one(records, 'listingsKept', 'l1')), there(await one(records, 'looks', 'k1'))]
  // corrections were made in the panel; notes and money could be changed in the wishlist, too
  expect(listing.corrections).toEqual([{ add: 'hip', mm: 1020, source: 'own' }])
  for (const name of ['corrections', 'notes', 'money'] as const) expect(look[name], name).toEqual(listing[name])
  expect(listing.notes).toBe('ask for the rise')
  records.db.close()
})

test('of the sixth, what two devices changed apart still waits to be settled; of the seventh, an earlier state to go back to', async () => {
  const sixth = await openedToday(6, FIRST)
  expect(await unsettled(sixth)).toMatchObject([{ table: 'garmentsOwned', id: 'g1', field: 'notes', value: 'take to the tailor' }])
  sixth.db.close()
  const seventh = await openedToday(7, WITH_EARLIER_STATES)
  const [made] = await snapshots(seventh)
  expect(made).toMatchObject({ because: 'import', counts: { people: 1 } })
  expect(await previewRestore(seventh, there(made).key)).toEqual({ back: 0, changed: 1, removed: 1 })
  seventh.db.close()
})

test('of the eighth and of the ninth an earlier state, whether each row that came is told alone or with others', async () => {
  for (const [version, layout] of [
    [8, FINDS_BESIDE],
    [9, TOLD_TOGETHER]
  ] as const) {
    const records = await openedToday(version, layout)
    const [made] = await snapshots(records)
    expect(await previewRestore(records, there(made).key)).toEqual({ back: 0, changed: 1, removed: 1 })
    await restore(records, there(made).key, clock()())
    expect(await one(records, 'listingsKept', 'l1')).toBeNull()
    expect(await one(records, 'garmentsOwned', 'g1')).toMatchObject({ name: 'Cords, brown' })
    records.db.close()
  }
})

test('of the ninth, a find whose summary waits among others is shown, and brought to its place', async () => {
  const records = await openedToday(9, TOLD_TOGETHER)
  expect(await isFilled(records)).toBe(true)
  const { summaries, count } = await firstFinds(records, 12)
  expect({ ids: summaries.map(({ id }) => id), count }).toEqual({ ids: ['l1'], count: 1 })
  await spreadBatches(
    records,
    () => undefined,
    async () => undefined
  )
  expect(await records.rows('summaries').get('l1')).toEqual(summaries[0])
  expect(await firstFinds(records, 12)).toMatchObject({ summaries, count })
  records.db.close()
})

test('of a version that is not yet nothing is opened and nothing touched', async () => {
  const name = freshName()
  await new Promise<void>((resolve, reject) => {
    const request = indexedDB.open(name, (MIGRATIONS.length + 1) * NATIVE)
    request.onupgradeneeded = () => request.result.createObjectStore('people', { keyPath: 'id' }).put({ id: 'p1', of: 'tomorrow' })
    request.onerror = () => reject(request.error)
    request.onsuccess = () => {
      request.result.close()
      resolve()
    }
  })
  const before = await layoutOf(name)
  expect(await openRecords(name)).toMatchObject({ ok: false, problem: 'newer' })
  expect(await layoutOf(name)).toEqual(before)
})

import 'fake-indexeddb/auto'
import { describe, expect, test, vi } from 'vitest'
import { patch, put } from '../../../core/records/change.ts'
import { deviceId, openRecords, watch } from '../../../core/records/database.ts'
import { all } from '../../../core/records/find.ts'
import { checkMigrations, MIGRATIONS, type Migration, migrated } from '../../../core/records/migrations.ts'
import { NEW_PERSON } from '../../../core/records/owned.ts'
import { TABLES } from '../../../core/records/schemas.ts'
import { clock, freshName, freshRecords, WREN } from './fixtures.ts'

const NEXT: Migration = {
  number: MIGRATIONS.length + 1,
  title: 'A test of the next version',
  why: 'A note is wanted for every person.',
  stores: { people: 'id, name' },
  change: (table, row) => (table === 'people' ? { ...row, note: `about ${String(row.name)}` } : row)
}

describe('versions', () => {
  test('a new database has every table', async () => {
    const records = await freshRecords()
    expect(records.db.tables.map((table) => table.name).sort()).toEqual(
      [...TABLES, 'setAside', 'local', 'summaries', 'summaryBatches', 'verdicts', 'answers', 'snapshots', 'past'].sort()
    )
    expect(records.version).toBe(MIGRATIONS.length)
  })

  test('an older database is brought to the newest version, row by row', async () => {
    const name = freshName()
    const old = await freshRecords(name)
    await put(old, 'people', WREN, clock()())
    old.db.close()
    const opened = await openRecords(name, [...MIGRATIONS, NEXT])
    if (!opened.ok) throw new Error(opened.detail)
    expect(await opened.records.rows('people').toArray()).toMatchObject([{ name: 'Wren', note: 'about Wren', revision: 1 }])
    expect(opened.records.version).toBe(NEXT.number)
    opened.records.db.close()
  })

  test('a database of a later version is refused and not touched', async () => {
    const name = freshName()
    const later = await openRecords(name, [...MIGRATIONS, NEXT])
    if (!later.ok) throw new Error(later.detail)
    await later.records.rows('people').put({ id: 'a', strange: true })
    later.records.db.close()
    const before = await indexedDB.databases()

    expect(await openRecords(name)).toMatchObject({ ok: false, problem: 'newer' })

    expect(await indexedDB.databases()).toEqual(before)
    const again = await openRecords(name, [...MIGRATIONS, NEXT])
    if (!again.ok) throw new Error(again.detail)
    expect(await again.records.rows('people').toArray()).toEqual([{ id: 'a', strange: true }])
    expect(again.records.db.table('people').schema.indexes.map((index) => index.name)).toEqual(['name'])
    again.records.db.close()
  })

  test('people from before there was a fit as it is cut keep theirs; a program from then is refused, and nobody seems gone', async () => {
    const name = freshName()
    const stamp = clock()
    const before = await openRecords(name, MIGRATIONS.slice(0, 2))
    if (!before.ok) throw new Error(before.detail)
    await put(before.records, 'people', WREN, stamp())
    before.records.db.close()
    const now = await openRecords(name)
    if (!now.ok) throw new Error(now.detail)
    expect(await now.records.rows('people').toArray()).toMatchObject([{ name: 'Wren', fit: 'regular', revision: 1 }])
    await put(now.records, 'people', { ...NEW_PERSON, name: 'Linnet', sizes: 'women' }, stamp())
    now.records.db.close()
    expect(await openRecords(name, MIGRATIONS.slice(0, 2))).toMatchObject({ ok: false, problem: 'newer' })
  })

  test('no database at all is a sentence, not an exception', async () => {
    vi.stubGlobal('indexedDB', {
      open: () => {
        throw new DOMException('storage is off', 'SecurityError')
      }
    })
    expect(await openRecords(freshName())).toMatchObject({ ok: false, problem: 'unavailable' })
    vi.unstubAllGlobals()
  })

  test('migrations are numbered without a gap and say why', () => {
    expect(() => checkMigrations([...MIGRATIONS, NEXT])).not.toThrow()
    expect(() => checkMigrations([...MIGRATIONS, { ...NEXT, number: NEXT.number + 1 }])).toThrow(`place ${NEXT.number}`)
    expect(() => checkMigrations([...MIGRATIONS, { ...NEXT, why: '' }])).toThrow('why')
  })

  test('a row goes only through the migrations after its own version, and is not changed itself', () => {
    const row = Object.freeze({ id: 'a', name: 'Wren' })
    const people = (version: number) => migrated({ people: [row] }, version, [...MIGRATIONS, NEXT]).people
    expect(people(MIGRATIONS.length)).toEqual([{ id: 'a', name: 'Wren', note: 'about Wren' }])
    expect(people(MIGRATIONS.length + 1)).toEqual([row])
  })
})

test('the device id is made once', async () => {
  const name = freshName()
  const records = await freshRecords(name)
  expect(await deviceId(records, () => 'first')).toBe('first')
  expect(await deviceId(records, () => 'second')).toBe('first')
  records.db.close()
  expect(await deviceId(await freshRecords(name), () => 'third')).toBe('first')
})

test('a watcher is told now and after each change, until it stops', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const told: string[][] = []
  const stop = watch(
    async () => (await all(records, 'people')).map((person) => person.name),
    (names) => told.push(names),
    (error) => {
      throw error
    }
  )
  await vi.waitFor(() => expect(told).toEqual([[]]))
  const { after } = await put(records, 'people', WREN, stamp())
  await vi.waitFor(() => expect(told.at(-1)).toEqual(['Wren']))
  await patch(records, 'people', after.id, { name: 'Lark' }, stamp())
  await vi.waitFor(() => expect(told.at(-1)).toEqual(['Lark']))
  stop()
  const count = told.length
  await patch(records, 'people', after.id, { name: 'Finch' }, stamp())
  expect(await all(records, 'people')).toMatchObject([{ name: 'Finch' }])
  expect(told.length).toBe(count)
})

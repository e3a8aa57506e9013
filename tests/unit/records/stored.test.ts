/**
 * A database of each released version, as it was saved then. A file is written once and never changed: what it holds must be
 * read by every later version.
 */
import 'fake-indexeddb/auto'
import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { exportBackup, importBackup } from '../../../core/records/backup.ts'
import { openRecords } from '../../../core/records/database.ts'
import { all, countUnreadable, unreadable } from '../../../core/records/find.ts'
import { MIGRATIONS } from '../../../core/records/migrations.ts'
import { setSettings, settingsOf } from '../../../core/records/owned.ts'
import { TABLES } from '../../../core/records/schemas.ts'
import { clock, freshName, freshRecords } from './fixtures.ts'

const folder = new URL('./stored/', import.meta.url)
const files = readdirSync(folder)

test('there is one for each version', () => {
  expect(files.toSorted()).toEqual(MIGRATIONS.map(({ number }) => `version-${number}.json`).toSorted())
})

test.each(files)('%s is read whole, every table of it', async (file) => {
  const text = readFileSync(new URL(file, folder), 'utf8')
  const stored: { tables: Record<string, unknown[]> } = JSON.parse(text)
  const records = await freshRecords()
  expect(await importBackup(records, text, clock()())).toMatchObject({ ok: true, replaced: 0, left: 0, setAside: 0 })
  expect(await unreadable(records)).toEqual([])
  for (const table of TABLES) {
    expect(stored.tables[table]?.length, table).toBeGreaterThan(0)
    expect((await all(records, table)).length, table).toBeGreaterThan(0)
    expect(await records.rows(table).count(), table).toBe(stored.tables[table]?.length)
  }
  expect((await exportBackup(records, clock()())).version).toBe(MIGRATIONS.length)
})

test.each(MIGRATIONS.map(({ number }) => number))('a database that version %i left is opened and read whole', async (number) => {
  const stored: { tables: Record<string, unknown[]> } = JSON.parse(readFileSync(new URL(`version-${number}.json`, folder), 'utf8'))
  const name = freshName()
  const then = await openRecords(name, MIGRATIONS.slice(0, number))
  if (!then.ok) throw new Error(then.detail)
  for (const table of TABLES) await then.records.rows(table).bulkPut(stored.tables[table] ?? [])
  then.records.db.close()
  const now = await openRecords(name)
  if (!now.ok) throw new Error(now.detail)
  expect(now.records.version).toBe(MIGRATIONS.length)
  expect(await unreadable(now.records)).toEqual([])
  for (const table of TABLES) expect(await now.records.rows(table).count(), table).toBe(stored.tables[table]?.length)
  now.records.db.close()
})

test('settings that can’t be read can be set all the same, and what was there is kept', async () => {
  const records = await freshRecords()
  await records.rows('settings').put({ id: 'settings', theme: 'mauve' })
  expect((await settingsOf(records)).theme).toBe('system')
  expect(await countUnreadable(records, 'settings')).toBe(1)
  await setSettings(records, { theme: 'dark' }, clock()())
  await setSettings(records, { personId: 'p' }, clock()())
  expect(await settingsOf(records)).toMatchObject({ theme: 'dark', personId: 'p' })
  expect(await unreadable(records)).toMatchObject([
    { table: 'settings', row: { theme: 'mauve' }, fields: expect.arrayContaining(['theme']) }
  ])
})

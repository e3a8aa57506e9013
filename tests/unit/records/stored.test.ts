/**
 * A database of each released version, as it was saved then. A file is written once and never changed: what it holds must be
 * read by every later version.
 */
import 'fake-indexeddb/auto'
import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { exportBackup, importBackup } from '../../../core/records/backup.ts'
import { all, unreadable } from '../../../core/records/find.ts'
import { MIGRATIONS } from '../../../core/records/migrations.ts'
import { TABLES } from '../../../core/records/schemas.ts'
import { clock, freshRecords } from './fixtures.ts'

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

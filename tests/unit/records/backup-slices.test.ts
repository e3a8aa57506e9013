/** A backup in slices: its text is what it was whole, it is opened the same slowly as at once, and broken off in any slice nothing of it is there. */
import 'fake-indexeddb/auto'
import { afterEach, expect, test, vi } from 'vitest'
import { backupText, exportBackup, importBackup, previewBackup } from '../../../core/records/backup.ts'
import { patch, put } from '../../../core/records/change.ts'
import type { Records } from '../../../core/records/database.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { storeLook } from '../../../core/records/looks.ts'
import { openBackup, openBackupSlowly } from '../../../core/records/open-backup.ts'
import { TABLES } from '../../../core/records/schemas.ts'
import { clock, freshRecords, owned, seen, there, WREN } from './fixtures.ts'

vi.setConfig({ testTimeout: 60_000 })
afterEach(() => {
  vi.restoreAllMocks()
})

const MANY = 620

/** More listings than stand in two slices, each with a look, and rows that can't be read among them. */
async function filled(): Promise<Records> {
  const records = await freshRecords()
  const stamp = clock()
  await put(records, 'people', WREN, stamp())
  await put(records, 'garmentsOwned', owned(), stamp())
  const look = await storeLook(records, seen(), stamp())
  const listing = there(await keepLook(records, look.id, null, stamp())).after
  const many = Array.from({ length: MANY }, (_, n) => n)
  await records
    .rows('listingsKept')
    .bulkPut(many.map((n) => ({ ...listing, id: `l${n}`, title: `find “${n}”\n`, ...(n % 200 === 3 ? { status: 'odd' } : {}) })))
  await records.rows('looks').bulkPut(many.map((n) => ({ ...look, id: `k${n}`, keptId: `l${n}` })))
  return records
}
const everything = async (records: Records): Promise<string> =>
  JSON.stringify(await Promise.all([...TABLES, 'setAside' as const].map((table) => records.rows(table).toArray())))

test('the text in pieces is the text of the whole, of much, of little and of nothing; rows with ids of another kind are in it', async () => {
  const records = await filled()
  await records.rows('looks').put({ id: 7, odd: true })
  const told: number[] = []
  const backup = await exportBackup(records, clock()(), (done) => told.push(done))
  expect(backup.tables.looks).toHaveLength(MANY + 2)
  expect(told.length).toBeGreaterThan(6)
  expect(told.at(-1)).toBe(Object.values(backup.tables).reduce((sum, rows) => sum + (rows?.length ?? 0), 0))
  const few = { ...backup, tables: { looks: [], people: [{ id: 'a', none: undefined }] }, setAside: [] }
  for (const one of [backup, few, { ...backup, tables: {} }])
    expect(JSON.parse([...backupText(one)].join(''))).toEqual(JSON.parse(JSON.stringify(one)))
  expect([...backupText(backup)].join('')).toBe(JSON.stringify(backup))
})

test('opened slowly it is what it is at once, with rests between, and what is refused is refused alike', async () => {
  const records = await filled()
  const text = JSON.stringify(await exportBackup(records, clock()()))
  const rest = vi.fn(async () => undefined)
  const told = vi.fn()
  const deep = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`
  const files = [
    text,
    '{"kind"',
    '[]',
    deep(300),
    JSON.stringify({
      kind: 'seam-reckoner-records',
      version: 1,
      savedAt: '',
      device: '',
      tables: { looks: [JSON.parse(deep(250))] },
      setAside: []
    }),
    JSON.stringify({ kind: 'seam-reckoner-records', version: 99, savedAt: '', device: '', tables: {}, setAside: [] })
  ]
  const problems: unknown[] = []
  for (const file of files) {
    const atOnce = openBackup(file, records.version)
    expect(await openBackupSlowly(file, records.version, { rest, told })).toEqual(atOnce)
    problems.push(atOnce.ok ? null : atOnce.problem)
  }
  expect(problems).toEqual([null, 'not-json', 'not-ours', 'too-deep', 'too-deep', 'newer'])
  expect(rest.mock.calls.length).toBeGreaterThan((2 * MANY) / 100)
  expect(Math.max(...told.mock.calls.map(([, of]) => Number(of)))).toBe(2 * MANY + 4)
})

test('what is planned is what comes; brought in again nothing changes; progress is told to the last row', async () => {
  const records = await filled()
  const opened = openBackup(JSON.stringify(await exportBackup(records, clock()())), records.version)
  if (!opened.ok) throw new Error(opened.problem)
  const to = await freshRecords()
  const planned = await previewBackup(to, opened, clock('home')())
  const told: number[] = []
  expect(await importBackup(to, opened, clock('home')(), undefined, (done) => told.push(done))).toEqual(planned)
  expect(planned).toMatchObject({ ok: true, added: 2 * MANY, setAside: 4 })
  expect(told.at(-1)).toBe(opened.count)
  expect(await to.rows('listingsKept').count()).toBe(MANY + 1 - 4)
  const before = await everything(to)
  expect(await importBackup(to, opened, clock('home')())).toMatchObject({ added: 0, replaced: 0, setAside: 0 })
  expect(await everything(to)).toBe(before)
})

test.each([1, 300, 640, 1240])('broken off at write %i, nothing of it is there, and no summary', async (failAt) => {
  const from = await filled()
  const text = JSON.stringify(await exportBackup(from, clock()()))
  const to = await freshRecords()
  const { after } = await put(to, 'people', { ...WREN, name: 'Lark' }, clock('home')())
  await patch(to, 'people', after.id, { units: 'cm' }, clock('home')())
  const before = await everything(to)
  let count = 0
  const { put: write } = IDBObjectStore.prototype
  IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof write>) {
    const request = write.apply(this, given)
    if (++count === failAt) request.addEventListener('success', () => this.transaction.abort())
    return request
  }
  try {
    await expect(importBackup(to, text, clock('home')())).rejects.toThrow()
  } finally {
    IDBObjectStore.prototype.put = write
  }
  expect(count).toBeGreaterThanOrEqual(failAt)
  expect(await everything(to)).toBe(before)
  expect(await to.rows('summaries').count()).toBe(0)
})

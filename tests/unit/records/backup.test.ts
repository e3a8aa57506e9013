import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { exportBackup, importBackup } from '../../../core/records/backup.ts'
import { patch, put, remove } from '../../../core/records/change.ts'
import { all, one, unreadable } from '../../../core/records/find.ts'
import { storeLook } from '../../../core/records/looks.ts'
import { MIGRATIONS } from '../../../core/records/migrations.ts'
import { clock, freshRecords, owned, seen, there, WREN } from './fixtures.ts'

const asFile = async (records: Awaited<ReturnType<typeof freshRecords>>) => JSON.stringify(await exportBackup(records, clock()()))

describe('a backup', () => {
  test('brings everything into an empty database as it was', async () => {
    const from = await freshRecords()
    const stamp = clock()
    const { after } = await put(from, 'people', WREN, stamp())
    const garment = await put(from, 'garmentsOwned', owned({ personId: after.id }), stamp())
    await remove(from, 'garmentsOwned', garment.after.id, stamp())
    const to = await freshRecords()
    expect(await importBackup(to, await asFile(from), clock('home')())).toEqual({
      ok: true,
      added: 2,
      replaced: 0,
      left: 0,
      setAside: 0,
      conflicts: 0
    })
    expect(await one(to, 'people', after.id)).toEqual(after)
    // a deletion comes along as a deletion
    expect(await all(to, 'garmentsOwned')).toEqual([])
    expect(await to.rows('garmentsOwned').toArray()).toEqual(await from.rows('garmentsOwned').toArray())
  })

  test('merged twice changes nothing the second time', async () => {
    const from = await freshRecords()
    await put(from, 'people', WREN, clock()())
    const file = await asFile(from)
    const to = await freshRecords()
    await importBackup(to, file, clock()())
    expect(await importBackup(to, file, clock()())).toEqual({ ok: true, added: 0, replaced: 0, left: 1, setAside: 0, conflicts: 0 })
  })

  test('the later edit wins, on whichever side it is; of two that knew nothing of each other the other is kept beside; both sides agree', async () => {
    const one_ = await freshRecords()
    const two = await freshRecords()
    const stamp = clock('one')
    const later = { ...clock('two')(), now: '2026-04-01T00:00:00.000Z' }
    const { after } = await put(one_, 'people', WREN, stamp())
    await importBackup(two, await asFile(one_), stamp())
    await patch(one_, 'people', after.id, { name: 'Lark' }, stamp())
    expect(await importBackup(one_, await asFile(two), stamp())).toMatchObject({ left: 1, replaced: 0 })
    expect(await one(one_, 'people', after.id)).toMatchObject({ name: 'Lark' })
    // the same revision, written on two devices
    await patch(two, 'people', after.id, { name: 'Finch' }, later)
    const [a, b] = [await asFile(one_), await asFile(two)]
    expect(await importBackup(one_, b, stamp())).toMatchObject({ replaced: 1, conflicts: 1 })
    expect(await importBackup(two, a, stamp())).toMatchObject({ replaced: 1, conflicts: 1 })
    expect(await one(one_, 'people', after.id)).toEqual(await one(two, 'people', after.id))
    expect(await one(one_, 'people', after.id)).toMatchObject({ name: 'Finch' })
  })

  test('what is no backup of ours is refused with its reason', async () => {
    const records = await freshRecords()
    expect(await importBackup(records, '{"kind"', clock()())).toEqual({ ok: false, problem: 'not-json' })
    expect(await importBackup(records, '[]', clock()())).toEqual({ ok: false, problem: 'not-ours' })
    expect(await importBackup(records, '{"kind":"recipes","version":1}', clock()())).toEqual({ ok: false, problem: 'not-ours' })
    const newer = { ...(await exportBackup(records, clock()())), version: records.version + 1 }
    expect(await importBackup(records, JSON.stringify(newer), clock()())).toEqual({ ok: false, problem: 'newer' })
  })

  test('an older file goes through the migrations', async () => {
    const from = await freshRecords()
    await put(from, 'people', WREN, clock()())
    const file = await asFile(from)
    const number = MIGRATIONS.length + 1
    const to = { ...(await freshRecords()), version: number }
    const second = { number, title: 't', why: 'w', stores: {}, change: (_: string, row: object) => ({ ...row, note: 'carried' }) }
    await importBackup(to, file, clock()(), [...MIGRATIONS, second])
    expect(await to.rows('people').toArray()).toMatchObject([{ name: 'Wren', note: 'carried' }])
  })

  test('a row that can not be read is set aside once, shown, and goes out again with the next backup', async () => {
    const from = await freshRecords()
    const { after } = await put(from, 'people', WREN, clock()())
    await from.rows('people').put({ ...after, units: 'ells' })
    const file = await asFile(from)
    const to = await freshRecords()
    expect(await importBackup(to, file, clock('home')())).toMatchObject({ added: 0, setAside: 1 })
    expect(await importBackup(to, file, clock('home')())).toMatchObject({ setAside: 0 })
    expect(await unreadable(to)).toMatchObject([{ table: 'people', row: { id: after.id, units: 'ells' }, fields: ['units'] }])
    expect(JSON.parse(await asFile(to)).setAside).toMatchObject([{ from: 'people', row: { units: 'ells' } }])
    const third = await freshRecords()
    expect(await importBackup(third, await asFile(to), clock('third')())).toMatchObject({ setAside: 1 })
    expect(await unreadable(third)).toMatchObject([{ table: 'people', row: { units: 'ells' } }])
  })

  test('a readable record takes the place of an unreadable one, which is kept beside', async () => {
    const from = await freshRecords()
    const { after } = await put(from, 'people', WREN, clock()())
    const to = await freshRecords()
    await to.rows('people').put({ id: after.id, name: 7 })
    expect(await importBackup(to, await asFile(from), clock('home')())).toMatchObject({ replaced: 1, setAside: 1 })
    expect(await one(to, 'people', after.id)).toEqual(after)
    expect(await unreadable(to)).toMatchObject([{ table: 'people', row: { id: after.id, name: 7 } }])
  })

  test('fields that this version does not know come along', async () => {
    const from = await freshRecords()
    const { after } = await put(from, 'people', WREN, clock()())
    await from.rows('people').put({ ...after, thimble: { size: 8 } })
    const to = await freshRecords()
    await importBackup(to, await asFile(from), clock()())
    expect(await to.rows('people').get(after.id)).toMatchObject({ thimble: { size: 8 } })
  })

  test('a look from elsewhere belongs to no tab here', async () => {
    const from = await freshRecords()
    const look = await storeLook(from, seen(), clock()())
    const to = await freshRecords()
    await importBackup(to, await asFile(from), clock()())
    expect(there(await one(to, 'looks', look.id))).toMatchObject({ tabId: null, windowId: null, page: 'unknown' })
  })
})

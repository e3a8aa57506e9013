/** Earlier states of everything: what is kept of them, how long, and going back as a whole. */
import 'fake-indexeddb/auto'
import { afterEach, describe, expect, test, vi } from 'vitest'
import { exportBackup, importBackup } from '../../../core/records/backup.ts'
import { patch, put, remove } from '../../../core/records/change.ts'
import { openRecords, type Records } from '../../../core/records/database.ts'
import { all, one, unreadable } from '../../../core/records/find.ts'
import { inOneGo } from '../../../core/records/in-one-go.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { storeLook } from '../../../core/records/looks.ts'
import { MIGRATIONS, type Migration } from '../../../core/records/migrations.ts'
import { setSettings, settingsOf } from '../../../core/records/owned.ts'
import { type Stamp, TABLES } from '../../../core/records/schemas.ts'
import {
  kept,
  letSnapshotsGo,
  makeSnapshot,
  previewRestore,
  restore,
  type Snapshot,
  snapshotOfTheDay,
  snapshots,
  snapshotsLetGo,
  unneeded
} from '../../../core/records/snapshots.ts'
import { clock, freshName, freshRecords, owned, seen, there, WREN } from './fixtures.ts'

afterEach(() => {
  vi.restoreAllMocks()
})

/** Everything that is there, without what tells one revision from the next. */
async function contentOf(records: Records): Promise<unknown[]> {
  const content: unknown[] = []
  for (const table of TABLES) {
    for (const row of await all(records, table)) {
      const { revision: _, updatedAt: __, device: ___, ...its } = row
      content.push({ ...its, seen: null, wrote: null })
    }
  }
  return content
}

/** A garment that will be changed, one that will be removed, one that will stay; then a snapshot, then all that. */
async function changedBehind() {
  const records = await freshRecords()
  const stamp = clock()
  const changed = (await put(records, 'garmentsOwned', owned(), stamp())).after
  const gone = (await put(records, 'garmentsOwned', owned({ name: 'Cords' }), stamp())).after
  await put(records, 'garmentsOwned', owned({ name: 'Kilt' }), stamp())
  await setSettings(records, { theme: 'dark' }, stamp())
  const made = await makeSnapshot(records, 'import', stamp())
  const before = await contentOf(records)
  await patch(records, 'garmentsOwned', changed.id, { notes: 'once' }, stamp())
  await patch(records, 'garmentsOwned', changed.id, { notes: 'twice', name: 'Flannels' }, stamp())
  await remove(records, 'garmentsOwned', gone.id, stamp())
  const came = (await put(records, 'people', WREN, stamp())).after
  await setSettings(records, { theme: 'light' }, stamp())
  return { records, stamp, made, before, changed, gone, came }
}

const WREN_ROW = {
  ...WREN,
  device: 'd',
  revision: 1,
  createdAt: '2026-03-01T08:00:00.000Z',
  updatedAt: '2026-03-01T08:00:00.000Z',
  deletedAt: null
}

/** Two people; then a snapshot, then they and sixty others, all in one write. */
async function cameTogether() {
  const records = await freshRecords()
  const stamp = clock()
  const people = Array.from({ length: 62 }, (_, n) => ({ ...WREN_ROW, id: `w-${n}`, name: `came ${n}` }))
  await records.rows('people').bulkPut(people.slice(0, 2).map((one, n) => ({ ...one, name: `was ${n}` })))
  const made = await makeSnapshot(records, 'import', stamp())
  await records.rows('people').bulkPut(people)
  return { records, stamp, made, people }
}

describe('going back', () => {
  test('everything is as it was, and it was told before what would change', async () => {
    const { records, stamp, made, before, came } = await changedBehind()
    const told = await previewRestore(records, made.key)
    expect(told).toEqual({ back: 1, changed: 2, removed: 1 })
    const whole = await exportBackup(records, stamp())
    expect(await previewRestore(records, made.key)).toEqual(told)
    expect((await exportBackup(records, stamp())).tables).toEqual(whole.tables)
    expect(await restore(records, made.key, stamp())).toMatchObject({ back: 1, changed: 2, removed: 1, left: 0 })
    expect(await contentOf(records)).toEqual(before)
    expect(await one(records, 'people', came.id)).toBeNull()
    expect(await previewRestore(records, made.key)).toEqual({ back: 0, changed: 0, removed: 0 })
    expect((await settingsOf(records)).theme).toBe('dark')
  })

  test('a record that goes back has a new revision, so that a backup from before does not undo it', async () => {
    const { records, stamp, made, before } = await changedBehind()
    const later = JSON.stringify(await exportBackup(records, stamp()))
    await restore(records, made.key, stamp())
    expect(await importBackup(records, later, stamp())).toMatchObject({ ok: true, added: 0, replaced: 0, conflicts: 0 })
    expect(await contentOf(records)).toEqual(before)
  })

  test('it can be taken back, but for what was changed again since', async () => {
    const { records, stamp, made, changed, gone } = await changedBehind()
    const after = await contentOf(records)
    const undo = await makeSnapshot(records, 'restoring', stamp(), { stays: made.key })
    const went = there(await restore(records, made.key, stamp()))
    expect(there(await restore(records, undo.key, stamp(), went.written))).toMatchObject({ left: 0 })
    expect(await contentOf(records)).toEqual(after)

    const again = await makeSnapshot(records, 'restoring', stamp(), { stays: made.key })
    const wentAgain = there(await restore(records, made.key, stamp()))
    await patch(records, 'garmentsOwned', changed.id, { notes: 'typed meanwhile' }, stamp())
    const came = (await put(records, 'garmentsOwned', owned({ name: 'New since' }), stamp())).after
    expect(there(await restore(records, again.key, stamp(), wentAgain.written))).toMatchObject({ left: 1, removed: 1 })
    expect(await one(records, 'garmentsOwned', changed.id)).toMatchObject({ notes: 'typed meanwhile' })
    expect(await one(records, 'garmentsOwned', came.id)).not.toBeNull()
    expect(await one(records, 'garmentsOwned', gone.id)).toBeNull()
  })

  test('of several made on one day for one reason the newest is there to go back to', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { after } = await put(records, 'garmentsOwned', owned({ notes: '0' }), stamp())
    const made: Snapshot[] = []
    for (const notes of ['1', '2', '3']) {
      made.push(await makeSnapshot(records, 'import', stamp()))
      await patch(records, 'garmentsOwned', after.id, { notes }, stamp())
    }
    // of three made on one day for the same reason the newest stays
    expect((await snapshots(records)).map(({ key }) => key)).toEqual([made[2]?.key])
    expect(await restore(records, made[0]?.key ?? '', stamp())).toBeNull()
    await restore(records, made[2]?.key ?? '', stamp())
    expect(await one(records, 'garmentsOwned', after.id)).toMatchObject({ notes: '2' })
  })

  test('of an older state that stays, rows that a dropped one kept are used', async () => {
    const records = await freshRecords()
    const at = (day: number) => ({ ...clock(`d${day}`)(), now: new Date(Date.UTC(2026, 2, day, 9)).toISOString() })
    const { after } = await put(records, 'garmentsOwned', owned({ notes: '0' }), at(1))
    const change = (notes: string, day: number) => patch(records, 'garmentsOwned', after.id, { notes }, at(day))
    for (let day = 2; day <= 20; day++) {
      await makeSnapshot(records, 'day', at(day))
      if (day % 3 === 0) await change(`changed on ${day}`, day)
    }
    const days = (await snapshots(records)).map(({ madeAt }) => Number(madeAt.slice(8, 10)))
    // Friday the 20th, the day before, the Sunday before: the 15th; there was no earlier month
    expect(days).toEqual([20, 19, 15])
    const then = new Map([
      [20, 'changed on 18'],
      [19, 'changed on 18'],
      [15, 'changed on 12']
    ])
    for (const { key, madeAt } of (await snapshots(records)).toReversed()) {
      const copy = there(await previewRestore(records, key))
      const day = Number(madeAt.slice(8, 10))
      expect(copy.changed, `${day}`).toBe(day === 15 ? 1 : 0)
    }
    const oldest = there((await snapshots(records)).at(-1))
    await restore(records, oldest.key, at(21))
    expect(await one(records, 'garmentsOwned', after.id)).toMatchObject({ notes: then.get(15) })
  })

  test('a kept listing and its look go back together, and the look stays at its page', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const look = await storeLook(records, seen(), stamp())
    const listing = there(await keepLook(records, look.id, null, stamp())).after
    const made = await makeSnapshot(records, 'day', stamp())
    await patch(records, 'listingsKept', listing.id, { notes: 'changed' }, stamp())
    await patch(records, 'looks', look.id, { notes: 'changed', tabId: 77, page: 'behind' }, stamp())
    const other = await storeLook(
      records,
      seen({ tabId: 12, pageAddress: 'https://peg.example/9', address: 'https://peg.example/9' }),
      stamp()
    )
    expect(await previewRestore(records, made.key)).toEqual({ back: 0, changed: 2, removed: 0 })
    expect(await records.rows('summaries').get(listing.id)).toMatchObject({ notes: 'changed' })
    await restore(records, made.key, stamp())
    expect(await one(records, 'looks', look.id)).toMatchObject({ notes: '', tabId: 77, page: 'behind' })
    expect(await one(records, 'listingsKept', listing.id)).toMatchObject({ notes: '' })
    // and what a list shows of it
    expect(await records.rows('summaries').get(listing.id)).toMatchObject({ state: 'there', notes: '' })
    // what is looked at in another tab just now is nobody's mistake
    expect(await one(records, 'looks', other.id)).not.toBeNull()
  })

  test('where the page of a look is now is no change of it, each part of that alone; what is typed into it is', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const look = await storeLook(records, seen(), stamp())
    const made = await makeSnapshot(records, 'day', stamp())
    const nothing = { back: 0, changed: 0, removed: 0 }
    for (const place of [{ windowId: 9 }, { tabId: 77 }, { page: 'behind' }] as const) {
      await patch(records, 'looks', look.id, place, stamp())
      expect(await previewRestore(records, made.key), JSON.stringify(place)).toEqual(nothing)
    }
    await patch(records, 'looks', look.id, { drafts: { hip: '5' } }, stamp())
    expect(await previewRestore(records, made.key)).toEqual({ ...nothing, changed: 1 })
    await restore(records, made.key, stamp())
    expect(await one(records, 'looks', look.id)).toMatchObject({ windowId: 9, tabId: 77, page: 'behind', drafts: {} })
  })

  test('a look that came since goes where its page is not open any more, and one that was forgotten since stays so', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const forgotten = await storeLook(records, seen(), stamp())
    const made = await makeSnapshot(records, 'day', stamp())
    await records.rows('looks').delete(forgotten.id)
    const at = (tabId: number | null, windowId: number | null) =>
      storeLook(records, seen({ tabId, windowId, pageAddress: `https://a.example/${tabId}${windowId}`, address: '' }), stamp())
    const [closed, ofTab, ofWindow] = [await at(null, null), await at(3, null), await at(null, 4)]
    expect(await previewRestore(records, made.key)).toEqual({ back: 0, changed: 0, removed: 1 })
    await restore(records, made.key, stamp())
    expect((await all(records, 'looks')).map(({ id }) => id)).toEqual([ofTab.id, ofWindow.id])
    expect(await one(records, 'looks', closed.id)).toBeNull()
  })

  test('what could not be read then stays as it is now; what can’t be read now gives way and is set aside', async () => {
    const records = await freshRecords()
    const stamp = clock()
    await records.rows('people').put({ id: 'odd', name: 7 })
    const { after } = await put(records, 'people', WREN, stamp())
    const made = await makeSnapshot(records, 'day', stamp())
    await records.rows('people').put({ ...after, id: 'odd' })
    const torn = { ...after, name: 7 }
    await records.rows('people').put(torn)
    expect(await previewRestore(records, made.key)).toEqual({ back: 1, changed: 0, removed: 0 })
    await restore(records, made.key, stamp())
    expect(await one(records, 'people', 'odd')).toMatchObject({ name: 'Wren' })
    expect(await one(records, 'people', after.id)).toEqual(after)
    expect(await records.rows('setAside').toArray()).toEqual([{ id: expect.any(String), from: 'people', row: torn }])
  })

  test('a whole import is gone back on: what it brought is removed', async () => {
    const from = await freshRecords()
    const elsewhere = clock('elsewhere')
    const { after } = await put(from, 'people', WREN, elsewhere())
    await storeLook(from, seen(), elsewhere())
    const records = await freshRecords()
    const stamp = clock()
    const made = await makeSnapshot(records, 'import', stamp())
    await importBackup(records, JSON.stringify(await exportBackup(from, elsewhere())), stamp())
    expect(await restore(records, made.key, stamp())).toMatchObject({ removed: 2 })
    expect(await one(records, 'people', after.id)).toBeNull()
    expect(await all(records, 'looks')).toEqual([])
  })

  test('of many that came together one row is kept; gone back on, all of them are removed, and what was there is as it was', async () => {
    const { records, stamp, made, people } = await cameTogether()
    const past = await records.rows('past').toArray()
    // the two that were there before, and one for the sixty that were not
    expect(past).toHaveLength(3)
    expect(past).toContainEqual(expect.objectContaining({ came: people.slice(2).map(({ id }) => id) }))
    // changed behind it, one is kept once more; what it was at the mark counts
    await patch(records, 'people', 'w-30', { name: 'changed' }, stamp())
    await remove(records, 'people', 'w-31', stamp())
    await records.rows('people').delete('w-32')
    const told = { back: 0, changed: 2, removed: 58 }
    expect(await previewRestore(records, made.key)).toEqual(told)
    expect(await restore(records, made.key, stamp())).toMatchObject(told)
    expect((await all(records, 'people')).map(({ name }) => name)).toEqual(['was 0', 'was 1'])
  })

  test('put together again after one of them was deleted for good, none of those that came before is forgotten', async () => {
    const { records, stamp, made, people } = await cameTogether()
    await records.rows('people').delete('w-2')
    const more = Array.from({ length: 30 }, (_, n) => ({ ...there(people[0]), id: `z-${n}` }))
    await records.rows('people').bulkPut([there(people[2]), ...more])
    expect(await previewRestore(records, made.key)).toEqual({ back: 0, changed: 2, removed: 90 })
    await restore(records, made.key, stamp())
    expect(await all(records, 'people')).toHaveLength(2)
  })

  test('what was there, deleted for good and came again with others, is there again', async () => {
    const { records, stamp, people } = await cameTogether()
    const made = await makeSnapshot(records, 'day', stamp())
    await records.rows('people').clear()
    await records.rows('people').bulkPut(people.map((one) => ({ ...one, id: `${one.id}${one.id < 'w-3' ? '' : '-new'}`, name: 'new' })))
    const here = people.filter(({ id }) => id < 'w-3').length
    expect(await previewRestore(records, made.key)).toEqual({ back: 62 - here, changed: here, removed: 62 - here })
    await restore(records, made.key, stamp())
    expect((await all(records, 'people')).every(({ name }) => name !== 'new')).toBe(true)
    expect(await all(records, 'people')).toHaveLength(62)
  })

  test('of marks that are dropped, what came together stays for the older one, and goes with the oldest', async () => {
    const { records, stamp, made } = await cameTogether()
    const later = (day: number): Stamp => ({ ...stamp(), now: new Date(Date.UTC(2026, 2, day, 12)).toISOString() })
    for (let day = 2; day <= 4; day++) {
      await makeSnapshot(records, 'day', later(day))
      await records.rows('people').bulkPut(Array.from({ length: 20 }, (_, n) => ({ ...WREN_ROW, id: `day-${day}-${n}` })))
    }
    // one for each day, and the import: of the third day nothing has to be dropped for the import to be gone back on
    expect((await snapshots(records)).map(({ madeAt }) => Number(madeAt.slice(8, 10)))).toEqual([4, 3, 1])
    expect(await previewRestore(records, made.key)).toEqual({ back: 0, changed: 2, removed: 60 + 3 * 20 })
    await letSnapshotsGo(records)
    expect(await records.rows('past').count()).toBe(0)
  })

  test('what can’t be read stays, then and now; what gives way is set aside whole', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { after } = await put(records, 'people', WREN, stamp())
    await records.rows('people').put({ id: 'odd', name: 7 })
    const made = await makeSnapshot(records, 'day', stamp())
    await records.rows('people').put({ ...after, units: 'ells' })
    await records.rows('people').put({ ...after, id: 'odd' })
    await records.rows('garmentsOwned').put({ id: 'new', odd: true })
    expect(await previewRestore(records, made.key)).toEqual({ back: 1, changed: 0, removed: 0 })
    await restore(records, made.key, stamp())
    expect(await one(records, 'people', after.id)).toMatchObject({ units: 'in' })
    expect(await one(records, 'people', 'odd')).toMatchObject({ name: 'Wren' })
    const rows = (await unreadable(records)).map(({ row }) => row)
    expect(rows).toEqual(expect.arrayContaining([expect.objectContaining({ units: 'ells' }), { id: 'new', odd: true }]))
    expect(rows).toHaveLength(2)
  })

  test('a row that a migration changed meanwhile is brought to today before it is compared', async () => {
    const name = freshName()
    const stamp = clock()
    const old = await freshRecords(name)
    const { after } = await put(old, 'people', WREN, stamp())
    const still = (await put(old, 'people', { ...WREN, name: 'Lark' }, stamp())).after
    const made = await makeSnapshot(old, 'day', stamp())
    await patch(old, 'people', after.id, { name: 'Finch' }, stamp())
    old.db.close()
    const next: Migration = {
      number: MIGRATIONS.length + 1,
      title: 't',
      why: 'w',
      stores: {},
      change: (table, row) => (table === 'people' ? { ...row, note: 'carried' } : row)
    }
    const opened = await openRecords(name, [...MIGRATIONS, next])
    if (!opened.ok) throw new Error(opened.detail)
    const { records } = opened
    expect(await records.rows('past').count()).toBe(1)
    await restore(records, made.key, stamp())
    expect(await one(records, 'people', after.id)).toMatchObject({ name: 'Wren' })
    expect(await one(records, 'people', still.id)).toMatchObject({ name: 'Lark', note: 'carried' })
    records.db.close()
  })
})

describe('what is kept', () => {
  test('nothing before the first snapshot; then each row once, with the write that changes it', async () => {
    const { records, changed } = await changedBehind()
    const rows = await records.rows('past').toArray()
    expect(rows).toHaveLength(4)
    expect(rows).toContainEqual(
      expect.objectContaining({ table: 'garmentsOwned', id: changed.id, row: changed, version: MIGRATIONS.length })
    )
  })

  test('a write that fails keeps nothing either', async () => {
    const { records, changed, stamp } = await changedBehind()
    await makeSnapshot(records, 'import', stamp())
    const before = await records.rows('past').toArray()
    const failing = inOneGo(records, async (records) => {
      await patch(records, 'garmentsOwned', changed.id, { notes: 'never' }, stamp())
      throw new Error('broken off')
    })
    await expect(failing).rejects.toThrow('broken off')
    expect(await records.rows('past').toArray()).toEqual(before)
  })

  test('whichever way it is written: in bulk, cleared, deleted for good', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const people = []
    for (let n = 0; n < 30; n++) people.push((await put(records, 'people', { ...WREN, name: `${n}` }, stamp())).after)
    const made = await makeSnapshot(records, 'day', stamp())
    await records.rows('people').bulkPut(people.map((one) => ({ ...one, name: 'all the same' })))
    await records.rows('people').bulkDelete(people.slice(0, 10).map(({ id }) => id))
    await records.rows('people').clear()
    expect(await previewRestore(records, made.key)).toEqual({ back: 30, changed: 0, removed: 0 })
    await restore(records, made.key, stamp())
    expect((await all(records, 'people')).map(({ name }) => name).toSorted()).toEqual(people.map(({ name }) => name).toSorted())
  })

  test('a backup file has none of it', async () => {
    const { records, stamp, changed } = await changedBehind()
    const backup = JSON.stringify(await exportBackup(records, stamp()))
    expect(backup).toContain(changed.id)
    expect(backup).not.toMatch(/snapshot|"past"/)
    expect(Object.keys(JSON.parse(backup).tables).toSorted()).toEqual([...TABLES].toSorted())
  })

  test('with each is told when, why and how much was there', async () => {
    const { records, made } = await changedBehind()
    expect(await snapshots(records)).toEqual([made])
    expect(made).toMatchObject({ because: 'import', counts: { people: 0, garmentsOwned: 3, listingsKept: 0 } })
  })

  test('what is removed is not counted', async () => {
    const records = await freshRecords()
    const stamp = clock()
    await records.together('rw', ['people'], async (records) => {
      for (let n = 0; n < 5; n++) await put(records, 'people', { ...WREN, name: `${n}` }, stamp())
    })
    await remove(records, 'people', 'bench-3', stamp())
    expect((await makeSnapshot(records, 'day', stamp())).counts.people).toBe(4)
  })
})

describe('how long', () => {
  const mark = (key: string, madeAt: string, because: Snapshot['because'] = 'day'): Snapshot => ({
    key,
    madeAt: `${madeAt}T09:00:00.000Z`,
    because,
    counts: { people: 0, garmentsOwned: 0, listingsKept: 0 },
    by: ''
  })

  test('today, the day before, the week before, the month before, and before the last import and the last going back', () => {
    const all = [
      mark('9', '2026-11-26'),
      mark('8', '2026-11-26'),
      mark('7', '2026-11-25'),
      mark('6', '2026-11-24'),
      mark('5', '2026-11-22'),
      mark('4', '2026-11-20', 'import'),
      mark('3', '2026-11-03', 'restoring'),
      mark('2', '2026-10-31'),
      mark('1', '2026-10-02')
    ]
    expect(kept(all).map(({ key }) => key)).toEqual(['9', '7', '5', '4', '3', '2'])
    expect(kept([])).toEqual([])
  })

  test('over a year, day by day, there are never more than six, and always one of the month before', () => {
    let all: Snapshot[] = []
    for (let day = 0; day < 400; day++) {
      const madeAt = new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10)
      all = kept([mark(String(day).padStart(8, '0'), madeAt, day % 40 === 7 ? 'import' : day % 30 === 3 ? 'removing' : 'day'), ...all])
      expect(all.length).toBeLessThanOrEqual(6)
      if (day < 40) continue
      const ages = all.map((one) => (Date.parse(`${madeAt}T09:00:00.000Z`) - Date.parse(one.madeAt)) / 86_400_000)
      expect(ages[0]).toBe(0)
      expect(ages[1]).toBe(1)
      expect(ages.some((age) => age >= 1 && age <= 7)).toBe(true)
      expect(ages.some((age) => age >= 1 && age <= 31)).toBe(true)
      expect(all.some(({ because }) => because === 'import')).toBe(true)
    }
  })

  test('of what is kept for dropped ones only what an older one needs stays', () => {
    const key = (number: number, row: string) => `${String(number).padStart(8, '0')} people ${row}`
    const keys = [key(1, 'a'), key(2, 'a'), key(3, 'a'), key(3, 'b'), key(4, 'a'), key(5, 'b')]
    const stay = ['00000005', '00000002']
    expect(unneeded(keys, stay)).toEqual([key(1, 'a'), key(3, 'a'), key(4, 'a')])
    const together = (number: number) => `${String(number).padStart(8, '0')} people+ 0 a`
    expect(unneeded([together(1), together(2), together(3), together(5)], stay)).toEqual([together(1)])
  })

  test('one a day, and only where something is there and was changed', async () => {
    const records = await freshRecords()
    const at = (day: number, hour = 9): Stamp => ({
      ...clock(`${day} ${hour}`)(),
      now: new Date(Date.UTC(2026, 2, day, hour)).toISOString()
    })
    expect(await snapshotOfTheDay(records, at(1))).toBeNull()
    const { after } = await put(records, 'people', WREN, at(1))
    expect(await snapshotOfTheDay(records, at(1, 10))).toMatchObject({ because: 'day', counts: { people: 1 } })
    await patch(records, 'people', after.id, { name: 'Lark' }, at(1, 11))
    expect(await snapshotOfTheDay(records, at(1, 12))).toBeNull()
    expect(await snapshotOfTheDay(records, at(2))).not.toBeNull()
    expect(await snapshotOfTheDay(records, at(3))).toBeNull()
    await patch(records, 'people', after.id, { name: 'Finch' }, at(3))
    expect(await snapshotOfTheDay(records, at(3, 10))).not.toBeNull()
    // of Monday the 2nd the day before is another week
    expect(await snapshots(records)).toHaveLength(3)
  })

  test('too much kept, the oldest go; the newest stays', async () => {
    const records = await freshRecords()
    const at = (day: number): Stamp => ({ ...clock(`${day}`)(), now: new Date(Date.UTC(2026, 2, day)).toISOString() })
    await put(records, 'people', WREN, at(1))
    const first = await makeSnapshot(records, 'day', at(1))
    const heavy = {
      key: `${first.key} people x`,
      snapshot: first.key,
      table: 'people',
      id: 'x',
      row: null,
      weight: 200_000_000,
      version: 7
    }
    await records.rows('past').put(heavy)
    const second = await makeSnapshot(records, 'day', at(2))
    expect((await snapshots(records)).map(({ key }) => key)).toEqual([second.key])
    expect(await records.rows('past').count()).toBe(0)
  })
})

describe('a full disk', () => {
  test('the snapshots are given up, and what was typed is saved', async () => {
    const { records, stamp, changed } = await changedBehind()
    await makeSnapshot(records, 'import', stamp())
    // there is room for what was typed, and for no past row beside it
    const { put: write } = IDBObjectStore.prototype
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
      if (this.name === 'past') throw new DOMException('no room', 'QuotaExceededError')
      return write.call(this, value, key)
    })
    const typed = inOneGo(records, (records) => patch(records, 'garmentsOwned', changed.id, { notes: 'typed' }, stamp()))
    await expect(typed).resolves.toMatchObject({ after: { notes: 'typed' } })
    expect(await one(records, 'garmentsOwned', changed.id)).toMatchObject({ notes: 'typed' })
    expect(await snapshots(records)).toEqual([])
    expect(await snapshotsLetGo(records)).toBe(true)
    await makeSnapshot(records, 'day', stamp())
    expect(await snapshotsLetGo(records)).toBe(false)
  })

  test('where nothing can be given up it is said as before', async () => {
    const records = await freshRecords()
    expect(await letSnapshotsGo(records)).toBe(false)
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError')
    })
    await expect(inOneGo(records, (records) => put(records, 'people', WREN, clock()()))).rejects.toMatchObject({
      inner: { name: 'QuotaExceededError' }
    })
  })
})

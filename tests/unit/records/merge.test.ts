/** Backups of several devices brought together: by field, in any order, as often as one likes; what can't be had both ways is kept side by side. */
import 'fake-indexeddb/auto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { exportBackup, importBackup, LONGEST_FILE, previewBackup } from '../../../core/records/backup.ts'
import { patch, put, remove } from '../../../core/records/change.ts'
import type { Records } from '../../../core/records/database.ts'
import { all, one, unreadable } from '../../../core/records/find.ts'
import { settle, unsettled } from '../../../core/records/settle.ts'
import { clock, freshRecords, owned, there, WREN } from './fixtures.ts'

const file = async (records: Records): Promise<string> => JSON.stringify(await exportBackup(records, clock()()))
const rows = async (records: Records) => records.rows('garmentsOwned').orderBy('id').toArray()

/** Two devices with the same garment, each with its own clock; `late` is later than `early` throughout. */
async function twoDevices() {
  const [early, late] = [await freshRecords(), await freshRecords()]
  const stamps = { early: clock('early'), late: after(clock('late')) }
  const { after: garment } = await put(early, 'garmentsOwned', owned(), stamps.early())
  await importBackup(late, await file(early), stamps.late())
  return { early, late, stamps, id: garment.id }
}
const after = (stamp: ReturnType<typeof clock>) => () => {
  const its = stamp()
  return { ...its, now: its.now.replace('2026-03-01', '2026-04-01') }
}

describe('two devices', () => {
  test('other fields of one record stay both', async () => {
    const { early, late, stamps, id } = await twoDevices()
    await patch(early, 'garmentsOwned', id, { name: 'Flannels' }, stamps.early())
    await patch(early, 'garmentsOwned', id, { kind: 'jeans' }, stamps.early())
    await patch(late, 'garmentsOwned', id, { notes: 'press first' }, stamps.late())
    const [a, b] = [await file(early), await file(late)]
    expect(await importBackup(early, b, stamps.early())).toMatchObject({ replaced: 1, conflicts: 0 })
    await importBackup(late, a, stamps.late())
    expect(await one(early, 'garmentsOwned', id)).toMatchObject({ name: 'Flannels', kind: 'jeans', notes: 'press first' })
    expect(await rows(early)).toEqual(await rows(late))
  })

  test('an edit that knew of the other counts, whatever its clock says', async () => {
    const { early, late, stamps, id } = await twoDevices()
    await patch(late, 'garmentsOwned', id, { notes: 'first' }, stamps.late())
    await importBackup(early, await file(late), stamps.early())
    await patch(early, 'garmentsOwned', id, { notes: 'second' }, stamps.early())
    expect(await importBackup(late, await file(early), stamps.late())).toMatchObject({ replaced: 1, conflicts: 0 })
    expect(await one(late, 'garmentsOwned', id)).toMatchObject({ notes: 'second' })
    expect(await importBackup(early, await file(late), stamps.early())).toMatchObject({ left: 1 })
  })

  test.each([
    ['now', 'late'],
    ['other', 'early']
  ] as const)('the same field otherwise: the later counts, the other is shown till it is settled (%s)', async (takes, notes) => {
    const { early, late, stamps, id } = await twoDevices()
    await patch(early, 'garmentsOwned', id, { notes: 'early' }, stamps.early())
    await patch(late, 'garmentsOwned', id, { notes: 'late' }, stamps.late())
    const older = await file(early)
    expect(await importBackup(late, older, stamps.late())).toMatchObject({ conflicts: 1 })
    expect(await unsettled(late)).toMatchObject([
      { table: 'garmentsOwned', name: 'Grey flannels', field: 'notes', now: 'late', value: 'early' }
    ])
    // loaded again it is no second conflict, and goes out with a backup
    expect(await importBackup(late, older, stamps.late())).toMatchObject({ left: 1, conflicts: 0 })
    const third = await freshRecords()
    await importBackup(third, await file(late), stamps.late())
    expect(await unsettled(third)).toHaveLength(1)
    await settle(late, { ...there((await unsettled(late))[0]), table: 'garmentsOwned' }, takes, stamps.late())
    expect(await unsettled(late)).toEqual([])
    expect(await one(late, 'garmentsOwned', id)).toMatchObject({ notes })
    // settled here it is settled everywhere, and no old file brings it back
    await importBackup(third, await file(late), stamps.late())
    await importBackup(late, older, stamps.late())
    expect(await unsettled(late)).toEqual([])
    expect(await unsettled(third)).toEqual([])
    expect(await one(third, 'garmentsOwned', id)).toMatchObject({ notes })
  })

  test('removed on one and changed on the other it stays, and the removal is shown', async () => {
    const { early, late, stamps, id } = await twoDevices()
    await remove(late, 'garmentsOwned', id, stamps.late())
    await patch(early, 'garmentsOwned', id, { notes: 'mended' }, stamps.early())
    const [a, b] = [await file(early), await file(late)]
    for (const [records, other] of [
      [early, b],
      [late, a]
    ] as const) {
      await importBackup(records, other, stamps.late())
      expect(await one(records, 'garmentsOwned', id)).toMatchObject({ notes: 'mended' })
      expect(await unsettled(records)).toMatchObject([{ field: 'deletedAt', now: null }])
      expect(await importBackup(records, other, stamps.late())).toMatchObject({ left: 1 })
    }
    await settle(early, { ...there((await unsettled(early))[0]), table: 'garmentsOwned' }, 'other', stamps.early())
    expect(await all(early, 'garmentsOwned')).toEqual([])
    await importBackup(late, await file(early), stamps.late())
    expect(await all(late, 'garmentsOwned')).toEqual([])
  })
})

test('three devices, any changes: whatever the order of the files and however often, all end alike and no value is lost', {
  timeout: 120_000
}, async () => {
  const change = fc.record({
    device: fc.integer({ min: 0, max: 2 }),
    field: fc.constantFrom('name', 'notes', 'favourite', 'deletedAt'),
    value: fc.constantFrom('x', 'y', 'z')
  })
  let conflicts = 0
  await fc.assert(
    fc.asyncProperty(
      fc.array(change, { minLength: 1, maxLength: 6 }),
      fc.shuffledSubarray([0, 1, 2], { minLength: 3 }),
      async (changes, order) => {
        const devices = [await freshRecords(), await freshRecords(), await freshRecords()]
        const stamps = devices.map((_, at) => clock(`device-${at}`))
        const stamp = (at: number) => there(stamps[at])()
        const { after: garment } = await put(there(devices[0]), 'garmentsOwned', owned(), stamp(0))
        for (const at of [1, 2]) await importBackup(there(devices[at]), await file(there(devices[0])), stamp(at))
        for (const { device, field, value } of changes) {
          const its = there(devices[device])
          if (field === 'deletedAt') await remove(its, 'garmentsOwned', garment.id, stamp(device))
          else
            await patch(
              its,
              'garmentsOwned',
              garment.id,
              field === 'favourite' ? { favourite: value === 'x' } : { [field]: value },
              stamp(device)
            )
        }
        const files = await Promise.all(devices.map(file))
        const ends: unknown[] = []
        for (const turns of [order, order.toReversed()]) {
          const fresh = await freshRecords()
          for (const at of [...turns, ...turns]) await importBackup(fresh, there(files[at]), clock('fresh')())
          ends.push(await rows(fresh))
          conflicts += (await unsettled(fresh)).length
          fresh.db.close()
        }
        expect(ends[1]).toEqual(ends[0])
        for (const records of devices) records.db.close()
      }
    ),
    { numRuns: 60, seed: 20261130 }
  )
  expect(conflicts).toBeGreaterThan(5)
})

describe('strange files', () => {
  const withRows = async (people: unknown[], setAside: unknown[] = []) => {
    const empty = await freshRecords()
    return JSON.stringify({ ...(await exportBackup(empty, clock()())), tables: { people }, setAside })
  }

  test('thousands of unreadable rows are set aside in time that grows with them', { timeout: 120_000 }, async () => {
    const took = async (count: number) => {
      const text = await withRows(Array.from({ length: count }, (_, n) => ({ id: `p${n}`, name: n })))
      const records = await freshRecords()
      const began = process.cpuUsage().user
      expect(await importBackup(records, text, clock()())).toMatchObject({ ok: true, setAside: count })
      return process.cpuUsage().user - began
    }
    await took(100)
    const [few, many] = [await took(1000), await took(4000)]
    expect(many / few).toBeLessThan(10)
  })

  test('a field named like what every object has is a field like any other', async () => {
    const { early, late, stamps, id } = await twoDevices()
    await patch(early, 'garmentsOwned', id, { notes: 'early' }, stamps.early())
    await patch(late, 'garmentsOwned', id, { notes: 'late' }, stamps.late())
    const backup = await exportBackup(late, stamps.late())
    for (const name of ['constructor', 'toString', '__proto__']) {
      const written = JSON.stringify(backup).replace('"notes":"late"', `"notes":"late","${name}":"thimble"`)
      expect(await importBackup(early, written, stamps.early())).toMatchObject({ ok: true, setAside: 0 })
    }
    const marks = JSON.stringify(backup).replace(
      '"wrote":{',
      '"wrote":{"valueOf":{"device":"late","revision":2,"at":"2026-04-01T09:00:00.000Z"},'
    )
    expect(await importBackup(early, marks, stamps.early())).toMatchObject({ ok: true })
    expect(there(await one(early, 'garmentsOwned', id))).toMatchObject({ notes: 'late', constructor: 'thimble' })
  })

  test('what was set aside without an id of its own is set aside once', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const backup = { ...(await exportBackup(records, stamp())), setAside: [{ found: 'in a drawer' }, { found: 'in a drawer' }, 7, [], [7]] }
    expect(await importBackup(records, JSON.stringify(backup), stamp())).toMatchObject({ setAside: 4 })
    expect(await importBackup(records, JSON.stringify(backup), stamp())).toMatchObject({ setAside: 0 })
    expect(await records.rows('setAside').count()).toBe(4)
  })

  test('a row set aside never takes the place of another that has its id', async () => {
    const records = await freshRecords()
    const file = await withRows(
      [],
      [
        { id: 'a', row: 1 },
        { id: 'a', row: 2 },
        { id: 'a', odd: true }
      ]
    )
    expect(await importBackup(records, file, clock('n')())).toMatchObject({ setAside: 3 })
    expect(await records.rows('setAside').count()).toBe(3)
    expect(await importBackup(records, file, clock('m')())).toMatchObject({ setAside: 0 })
  })

  test('a revision past counting is no row of ours: it is set aside, and the record here can still be changed', async () => {
    const records = await freshRecords()
    const { after: wren } = await put(records, 'people', WREN, clock()())
    const text = await withRows([{ ...wren, name: 'Odd', revision: Number.MAX_SAFE_INTEGER }])
    expect(await importBackup(records, text, clock()())).toMatchObject({ ok: true, setAside: 1, replaced: 0 })
    expect(await patch(records, 'people', wren.id, { name: 'Lark' }, clock()())).not.toBeNull()
  })

  test.each([300, 5_000, 100_000])('nested %i deep it is refused with a reason', async (depth) => {
    const records = await freshRecords()
    const deep = `${'['.repeat(depth)}${']'.repeat(depth)}`
    const text = (await withRows([])).replace('"setAside":[]', `"setAside":[${deep}]`)
    expect(await importBackup(records, text, clock()())).toEqual({ ok: false, problem: 'too-deep' })
    expect(await importBackup(records, deep, clock()())).toEqual({ ok: false, problem: 'too-deep' })
  })

  test('fifty megabytes are read; past the bound they are refused', { timeout: 120_000 }, async () => {
    const records = await freshRecords()
    const { after: wren } = await put(await freshRecords(), 'people', WREN, clock()())
    const text = await withRows([{ ...wren, attic: 'x'.repeat(50_000_000) }])
    expect(await previewBackup(records, text, clock()())).toMatchObject({ ok: true, added: 1 })
    const over = { length: LONGEST_FILE + 1 } as string
    expect(await previewBackup(records, over, clock()())).toEqual({ ok: false, problem: 'too-long' })
  })

  test('names that every object has are names', async () => {
    const records = await freshRecords()
    const tables = '{"__proto__":[1],"people":[{"__proto__":{"id":"x"}}]}'
    const text = `{"kind":"seam-reckoner-records","version":1,"savedAt":"","device":"","setAside":[{"__proto__":1}],"tables":${tables}}`
    const imported = await importBackup(records, text, clock()())
    expect(imported.ok ? imported.setAside : imported.problem).toBe(2)
  })
})

test('a preview tells what would come and changes nothing', async () => {
  const { early, late, stamps, id } = await twoDevices()
  await patch(early, 'garmentsOwned', id, { notes: 'early' }, stamps.early())
  await put(early, 'people', WREN, stamps.early())
  await patch(late, 'garmentsOwned', id, { notes: 'late' }, stamps.late())
  const before = await file(late)
  const text = await file(early)
  const planned = await previewBackup(late, text, stamps.late())
  expect(planned).toEqual({ ok: true, added: 1, replaced: 1, left: 0, setAside: 0, conflicts: 1 })
  expect(await file(late)).toBe(before)
  expect(await importBackup(late, text, stamps.late())).toEqual(planned)
  expect(await unreadable(late)).toEqual([])
})

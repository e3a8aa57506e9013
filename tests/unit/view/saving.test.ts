/** The one way in which pages save: what it says, when, and what it holds. */
import 'fake-indexeddb/auto'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { patch, put } from '../../../core/records/change.ts'
import { all } from '../../../core/records/find.ts'
import { there } from '../../../core/records/trouble.ts'
import { Saving } from '../../../entrypoints/view/saving.ts'
import { clock, freshName, freshRecords, WREN } from '../records/fixtures.ts'

beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  vi.restoreAllMocks()
})

/** From now on every write fails as a full disk does, until it is mended. */
function fullDisk(): { mend: () => void } {
  const full = () => {
    throw Object.assign(new Error('no room'), { name: 'QuotaExceededError' })
  }
  const spies = [vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(full)]
  spies.push(vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(full))
  return { mend: () => spies.forEach((spy) => void spy.mockRestore()) }
}

async function begun() {
  const records = await freshRecords(freshName())
  const saving = new Saving(records)
  const said: string[] = []
  saving.watch(({ is }) => {
    if (said.at(-1) !== is) said.push(is)
  })
  return { records, saving, said, stamp: clock() }
}

test('an act is being saved, then saved, and only then done', async () => {
  const { records, saving, said, stamp } = await begun()
  const done: string[] = []
  expect(saving.now().is).toBe('saved')
  expect(await saving.run(() => put(records, 'people', WREN, stamp()), { saved: ({ after }) => done.push(after.name) })).toBe(true)
  expect(said).toEqual(['saving', 'saved'])
  expect(done).toEqual(['Wren'])
})

test('what could not be saved is told with its reason, held, and saved when it is tried again', async () => {
  const { records, saving, said, stamp } = await begun()
  const done: string[] = []
  const disk = fullDisk()
  expect(await saving.run(() => put(records, 'people', WREN, stamp()), { saved: () => done.push('done') })).toBe(false)
  expect(saving.now()).toEqual({ is: 'not-saved', trouble: 'full', waiting: 1, clashes: [] })
  await saving.again()
  expect(saving.now()).toEqual({ is: 'not-saved', trouble: 'full', waiting: 1, clashes: [] })
  expect(done).toEqual([])
  disk.mend()
  await saving.again()
  expect(saving.now()).toEqual({ is: 'saved', trouble: null, waiting: 0, clashes: [] })
  expect(done).toEqual(['done'])
  expect(said.at(-1)).toBe('saved')
  expect((await all(records, 'people')).map(({ name }) => name)).toEqual(['Wren'])
})

test('several that failed are tried again in their order', async () => {
  const { records, saving, stamp } = await begun()
  const { after } = await put(records, 'people', WREN, stamp())
  const disk = fullDisk()
  for (const name of ['One', 'Two', 'Three']) void saving.run(() => patch(records, 'people', after.id, { name }, stamp()))
  await saving.run(async () => undefined)
  disk.mend()
  expect(saving.now().waiting).toBe(3)
  await saving.again()
  expect((await all(records, 'people')).map(({ name }) => name)).toEqual(['Three'])
  expect(saving.now().waiting).toBe(0)
})

test('a later act that can be saved does not unsay the one that waits', async () => {
  const { records, saving, stamp } = await begun()
  const disk = fullDisk()
  await saving.run(() => put(records, 'people', WREN, stamp()))
  disk.mend()
  expect(await saving.run(() => put(records, 'people', { ...WREN, name: 'Linnet' }, stamp()))).toBe(true)
  expect(saving.now()).toEqual({ is: 'not-saved', trouble: 'full', waiting: 1, clashes: [] })
})

test('what stands in a form is not held: the form is sent again', async () => {
  const { records, saving, stamp } = await begun()
  const disk = fullDisk()
  expect(await saving.run(() => put(records, 'people', WREN, stamp()), { inForm: true })).toBe(false)
  expect(saving.now()).toEqual({ is: 'not-saved', trouble: 'full', waiting: 0, clashes: [] })
  disk.mend()
  expect(await saving.run(() => put(records, 'people', WREN, stamp()), { inForm: true })).toBe(true)
  expect(saving.now().is).toBe('saved')
  expect(await all(records, 'people')).toHaveLength(1)
})

test('a draft is not forgotten while what it was typed for is not saved, and is once it is', async () => {
  const { records, saving, stamp } = await begun()
  const forgotten: string[] = []
  const disk = fullDisk()
  void saving.run(() => put(records, 'people', WREN, stamp()))
  expect(await saving.forget(async () => forgotten.push('draft'))).toBe(false)
  expect(forgotten).toEqual([])
  disk.mend()
  await saving.again()
  expect(forgotten).toEqual(['draft'])
})

test('what was removed elsewhere is said, and nothing else is written in its place', async () => {
  const { records, saving, stamp } = await begun()
  const change = async () => {
    await put(records, 'people', WREN, stamp())
    there(await patch(records, 'people', 'removed', { name: 'X' }, stamp()))
  }
  expect(await saving.run(change)).toBe(false)
  expect(saving.now()).toEqual({ is: 'not-saved', trouble: 'gone', waiting: 0, clashes: [] })
  expect(await all(records, 'people')).toEqual([])
})

test('once everything was deleted under the page nothing is said to be saved', async () => {
  const name = freshName()
  const records = await freshRecords(name)
  const saving = new Saving(records)
  await new Promise((done) => {
    indexedDB.deleteDatabase(name).onsuccess = done
  })
  expect(saving.now().trouble).toBe('deleted')
  expect(await saving.run(() => put(records, 'people', WREN, clock()()))).toBe(false)
  expect(saving.now()).toEqual({ is: 'not-saved', trouble: 'deleted', waiting: 1, clashes: [] })
  saving.read()
  expect(saving.now().is).toBe('not-saved')
})

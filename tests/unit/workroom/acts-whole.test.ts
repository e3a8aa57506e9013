/** Every act of the workroom and the panel is one: with any of its writes broken off nothing of it is there, and without it is saved. */
import 'fake-indexeddb/auto'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { importBackup } from '../../../core/records/backup.ts'
import { put } from '../../../core/records/change.ts'
import type { Records } from '../../../core/records/database.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { keepDraft, storeLook } from '../../../core/records/looks.ts'
import { setSettings } from '../../../core/records/owned.ts'
import { TABLES } from '../../../core/records/schemas.ts'
import { panelActions } from '../../../entrypoints/view/panel-actions.ts'
import { Saving } from '../../../entrypoints/view/saving.ts'
import { addSample } from '../../../entrypoints/workroom/sample.ts'
import { type Done, workroomActions } from '../../../entrypoints/workroom/workroom-actions.ts'
import { clock, freshRecords, owned, seen, there, WREN } from '../records/fixtures.ts'

vi.mock('wxt/browser', () => ({ browser: {} }))
beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  vi.restoreAllMocks()
})

const everything = async (records: Records): Promise<string> =>
  JSON.stringify(await Promise.all([...TABLES, 'setAside' as const].map((table) => records.rows(table).toArray())))

/** The transaction behind the write with this number is broken off; gives how many writes there were. */
function breaking(failAt: number): { count: () => number; mend: () => void } {
  let count = 0
  const { put: write, add } = IDBObjectStore.prototype
  const broken = (of: typeof write) =>
    function (this: IDBObjectStore, ...given: Parameters<typeof write>) {
      const request = of.apply(this, given)
      if (++count === failAt) request.addEventListener('success', () => this.transaction.abort())
      return request
    }
  IDBObjectStore.prototype.put = broken(write)
  IDBObjectStore.prototype.add = broken(add)
  return {
    count: () => count,
    mend: () => {
      IDBObjectStore.prototype.put = write
      IDBObjectStore.prototype.add = add
    }
  }
}

async function world() {
  const records = await freshRecords()
  const stamp = clock()
  const saving = new Saving(records)
  let last: Done | null = null
  const workroom = workroomActions(
    records,
    clock('acts'),
    (done) => {
      last = done
    },
    saving
  )
  const person = (await put(records, 'people', WREN, stamp())).after
  await setSettings(records, { personId: person.id }, stamp())
  const garment = (await put(records, 'garmentsOwned', owned({ favourite: true }), stamp())).after
  const other = (await put(records, 'garmentsOwned', owned({ name: 'Cords' }), stamp())).after
  const look = await storeLook(records, seen(), stamp())
  await keepDraft(records, look.id, 'notes', 'half', stamp())
  const listing = there(await keepLook(records, look.id, null, stamp())).after
  const kept = { ...look, keptId: listing.id, notes: 'half' }
  const panel = panelActions({ stamp: clock('panel'), saving, look: kept, judgedLook: null, person: null, windowId: 1 })
  const idle = async () => {
    await vi.waitFor(() => expect(saving.now().is).not.toBe('saving'))
    return saving.now().is === 'saved'
  }
  return { records, saving, workroom, panel, idle, person, garment, other, look, listing, undo: () => last?.undo?.() }
}
type World = Awaited<ReturnType<typeof world>>

/** Something that answers nothing was done: waits until it is saved, or is not. */
const done = (_: unknown, idle: () => Promise<boolean>): Promise<boolean> => idle()

const GARMENT = { name: 'Flannels', kind: 'trousers' as const, measures: [], notes: '' }
const ACTS: Record<string, (world: World) => Promise<unknown>> = {
  meet: ({ workroom }) => workroom.meet(WREN, [{ measure: 'hipGirth', mm: 1000, stated: '100' }], GARMENT, '2026-03-01'),
  addPerson: ({ workroom }) => workroom.addPerson(WREN),
  editPerson: ({ workroom, person }) => workroom.editPerson(person.id, { name: 'Lark' }, 'Wren', person),
  removePerson: ({ workroom, person }) => workroom.removePerson(person.id, ''),
  measured: ({ workroom, person }) => workroom.measured(person.id, 'hipGirth', 1000, '100', '2026-03-01'),
  addGarment: ({ workroom, person }) => workroom.addGarment(person.id, GARMENT),
  editGarment: ({ workroom, garment }) => workroom.editGarment(garment.id, { ...garment, notes: 'mended' }, garment),
  favourite: ({ workroom, other }) => workroom.favourite(other.id, '', true),
  editListing: ({ workroom, listing }) => workroom.editListing(listing.id, { notes: 'new', status: 'asked' }, '', listing),
  removeListing: ({ workroom, listing }) => workroom.removeListing(listing.id, ''),
  addSample: ({ workroom }) => workroom.addSample('2026-03-01'),
  removeSample: ({ workroom }) => workroom.removeSample(),
  onPass: ({ panel, idle }) => done(panel.onPass(), idle),
  onNotes: ({ panel, idle }) => done(panel.onNotes('new', 'half'), idle),
  onAnswer: ({ panel, idle }) => done(panel.onAnswer('The thigh is 32 cm.'), idle),
  onPaste: ({ panel, idle }) => done(panel.onPaste('Waist 40 cm'), idle),
  onKeep: ({ panel, idle }) => done(panel.onKeep(), idle),
  importBackup: async ({ saving, garment }) => {
    const rows = Array.from({ length: 40 }, (_, n) => ({ ...garment, id: `g${n}`, ...(n % 3 === 0 ? { kind: 'ells' } : {}) }))
    const file = { kind: 'seam-reckoner-records', version: 1, savedAt: '', device: '', tables: { garmentsOwned: rows }, setAside: [] }
    return saved(saving, file)
  },
  importLooks: async ({ saving, look, listing }) => {
    const many = Array.from({ length: 25 }, (_, n) => String(n))
    const listingsKept = many.map((n) => ({ ...listing, id: `l${n}`, notes: `of the listing ${n}` }))
    const looks = many.map((n) => ({ ...look, id: `k${n}`, keptId: `l${n}`, notes: `of the look ${n}` }))
    return saved(saving, {
      kind: 'seam-reckoner-records',
      version: 3,
      savedAt: '',
      device: '',
      tables: { listingsKept, looks },
      setAside: []
    })
  }
}
const saved = (saving: Saving, file: object): Promise<boolean> =>
  saving.run((records) => importBackup(records, JSON.stringify(file), clock('file')()))

test.each(Object.keys(ACTS))('%s', { timeout: 120_000 }, async (name) => {
  let broken = 0
  for (let failAt = 1; ; failAt++) {
    const its = await world()
    if (name === 'removeSample') await addSample(its.records, clock('sample'), '2026-03-01')
    const before = await everything(its.records)
    const writes = breaking(failAt)
    const saved = await there(ACTS[name])(its)
    writes.mend()
    if (writes.count() < failAt) {
      expect(saved, 'with nothing broken off').toBe(true)
      expect((await everything(its.records)) === before).toBe(false)
      its.records.db.close()
      break
    }
    broken++
    expect(saved, `write ${failAt}`).toBe(false)
    expect(its.saving.now().trouble).toBe('broken-off')
    expect((await everything(its.records)) === before, `write ${failAt} left everything as it was`).toBe(true)
    its.records.db.close()
  }
  expect(broken).toBeGreaterThan(0)
})

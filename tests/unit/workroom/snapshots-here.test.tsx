// @vitest-environment happy-dom
/** Earlier states on the Backup page: shown, looked at, gone back to and taken back; and told on another page that is open. */
import 'fake-indexeddb/auto'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { patch, put, remove } from '../../../core/records/change.ts'
import type { Records } from '../../../core/records/database.ts'
import { all, one } from '../../../core/records/find.ts'
import { letSnapshotsGo, makeSnapshot, snapshots } from '../../../core/records/snapshots.ts'
import { loadWords } from '../../../core/words/languages.ts'
import { say } from '../../../core/words/say.ts'
import { Saving } from '../../../entrypoints/view/saving.ts'
import { SnapshotsHere, useWentBackElsewhere } from '../../../entrypoints/workroom/snapshots-here.tsx'
import type { Done } from '../../../entrypoints/workroom/workroom-actions.ts'
import { hide, press, show, shownText } from '../on-page.tsx'
import { clock, freshRecords, owned, there, WREN } from '../records/fixtures.ts'

vi.mock('wxt/browser', () => ({ browser: {} }))
beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  hide()
  vi.restoreAllMocks()
})

const failed = vi.fn()

/** The part over records, and what it said was done. */
async function begun(language?: string) {
  const records = await freshRecords()
  const saving = new Saving(records)
  const stamp = clock('here')
  const dones: Done[] = []
  const part = (
    <SnapshotsHere records={records} saving={saving} stamp={stamp} page="this one" done={(done) => dones.push(done)} onError={failed} />
  )
  show(part, language === undefined ? {} : { language })
  const last = () => there(dones.at(-1))
  const said = () => say(last(), { units: 'cm', language: language ?? 'en' })
  return { records, saving, stamp, last, said, dones }
}
const shows = (text: string | RegExp) => vi.waitFor(() => expect(shownText()).toMatch(text))

async function world(records: Records, stamp: ReturnType<typeof clock>) {
  await put(records, 'people', WREN, stamp())
  const garment = (await put(records, 'garmentsOwned', owned(), stamp())).after
  const other = (await put(records, 'garmentsOwned', owned({ name: 'Cords' }), stamp())).after
  await makeSnapshot(records, 'import', stamp())
  await patch(records, 'garmentsOwned', garment.id, { notes: 'changed' }, stamp())
  await remove(records, 'garmentsOwned', other.id, stamp())
  await put(records, 'garmentsOwned', owned({ name: 'Kilt' }), stamp())
  return { garment, other }
}

test('none yet is said, and so is that they were given up', async () => {
  const { records, stamp } = await begun()
  await shows('There is none yet.')
  await makeSnapshot(records, 'day', stamp())
  await shows('as that day began')
  await letSnapshotsGo(records)
  await shows('no room left, so the earlier states were given up')
  expect(shownText()).not.toContain('There is none yet.')
})

test('one is told with its day, reason and counts; what would change is told before; then it is gone back to, and taken back', async () => {
  const { records, stamp, said, last } = await begun()
  const { garment } = await world(records, stamp)
  await shows(/1 Mar 2026, \d\d:\d\d, before a file was brought in0 kept listings, 2 garments, 1 person/)
  press(/^What would going back to 1 Mar 2026, \d\d:\d\d change\?$/)
  await shows('1 record comes back1 is again as it was1 that came since is removed')
  expect(await one(records, 'garmentsOwned', garment.id)).toMatchObject({ notes: 'changed' })
  press('Leave everything as it is')
  await vi.waitFor(() => expect(shownText()).not.toContain('Nothing is changed yet'))
  press(/^What would going back/)
  await shows('Nothing is changed yet')
  press('Go back to it')
  await vi.waitFor(() => expect(said()).toMatch(/^Everything is as it was on 1 Mar 2026, \d\d:\d\d\.$/))
  expect((await all(records, 'garmentsOwned')).map(({ name }) => name)).toEqual(['Grey flannels', 'Cords'])
  expect(await one(records, 'garmentsOwned', garment.id)).toMatchObject({ notes: '' })
  await shows('before going back')
  expect(await last().undo?.()).toBe(true)
  expect((await all(records, 'garmentsOwned')).map(({ name }) => name)).toEqual(['Grey flannels', 'Kilt'])
  expect(await one(records, 'garmentsOwned', garment.id)).toMatchObject({ notes: 'changed' })
})

test('what would change nothing is said to', async () => {
  const { records, stamp } = await begun()
  await put(records, 'people', WREN, stamp())
  await makeSnapshot(records, 'day', stamp())
  await shows('as that day began')
  press(/^What would going back/)
  await shows('there is nothing to go back to')
  press('Close')
  await vi.waitFor(() => expect(shownText()).not.toContain('there is nothing to go back to'))
})

test('what was changed again since is not taken back with it, and that is said', async () => {
  const { records, stamp, last, dones } = await begun()
  const { garment } = await world(records, stamp)
  await shows('before a file was brought in')
  press(/^What would going back/)
  await shows('Nothing is changed yet')
  press('Go back to it')
  await vi.waitFor(() => expect(dones).toHaveLength(1))
  await patch(records, 'garmentsOwned', garment.id, { notes: 'typed meanwhile' }, stamp())
  expect(await last().undo?.()).toBe(false)
  expect(await one(records, 'garmentsOwned', garment.id)).toMatchObject({ notes: 'typed meanwhile' })
})

test('one that another page has dropped meanwhile is said to be gone, and nothing is changed', async () => {
  const { records, stamp, said } = await begun()
  await world(records, stamp)
  await shows('before a file was brought in')
  const dropped = there((await snapshots(records))[0])
  await records.rows('snapshots').delete(dropped.key)
  press(/^What would going back/)
  await vi.waitFor(() => expect(said()).toBe('This earlier state is not there any more.'))
})

test('in German', async () => {
  await loadWords('de')
  const { records, stamp } = await begun('de')
  await shows('Noch gibt es keinen.')
  await world(records, stamp)
  await shows(/1\. März 2026, \d\d:\d\d, bevor eine Datei übernommen wurde0 Angebote, 2 Stücke, 1 Person/)
  press(/^Was würde sich ändern: zurück/)
  await shows('1 Eintrag kommt wieder1 ist wieder wie damals1, der seitdem dazukam, wird entfernt')
})

test('a page that is open meanwhile is told, once; the page that went back is not', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const tell = vi.fn()
  const Other = ({ page }: { page: string }) => {
    useWentBackElsewhere(records, page, tell, failed)
    return <p>open</p>
  }
  await makeSnapshot(records, 'restoring', stamp(), { by: 'long ago' })
  show(<Other page="this one" />)
  await new Promise((done) => setTimeout(done, 20))
  await makeSnapshot(records, 'restoring', stamp(), { by: 'this one' })
  await makeSnapshot(records, 'day', stamp())
  await new Promise((done) => setTimeout(done, 20))
  expect(tell).not.toHaveBeenCalled()
  await makeSnapshot(records, 'restoring', stamp(), { by: 'another' })
  await vi.waitFor(() => expect(tell).toHaveBeenCalledExactlyOnceWith({ code: 'snapshots.elsewhere', values: {}, undo: null }))
})

/** Favourites and settings: what one choice does to the others. */
import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { put, remove } from '../../../core/records/change.ts'
import { all, one } from '../../../core/records/find.ts'
import { markFavourite, setSettings, settingsOf } from '../../../core/records/owned.ts'
import { clock, freshRecords, owned } from './fixtures.ts'

/** Wren's two trousers, of which the first is the favourite, her favourite shirt, and a favourite pair of somebody else's. */
async function wardrobe() {
  const records = await freshRecords()
  const stamp = clock()
  const garments = [
    ['mine', { favourite: true }],
    ['other', {}],
    ['shirt', { kind: 'shirt', favourite: true }],
    ['theirs', { personId: 'q', favourite: true }]
  ] as const
  for (const [id, over] of garments) await put(records, 'garmentsOwned', owned({ name: id, ...over }), stamp(), id)
  const favourites = async () => (await all(records, 'garmentsOwned')).filter(({ favourite }) => favourite).map(({ id }) => id)
  return { records, stamp, favourites }
}

test.each([
  ['another of the same person and kind takes the mark', 'other', true, ['other', 'shirt', 'theirs'], ['mine', 'other']],
  ['marked again nothing changes', 'mine', true, ['mine', 'shirt', 'theirs'], []],
  ['unmarked it alone changes', 'mine', false, ['shirt', 'theirs'], ['mine']],
  ['unmarked, one that has no mark leaves the others theirs', 'other', false, ['mine', 'shirt', 'theirs'], []],
  ['another kind keeps its own', 'shirt', false, ['mine', 'theirs'], ['shirt']],
  ['one that is not there changes nothing', 'nowhere', true, ['mine', 'shirt', 'theirs'], []]
] as const)('of favourites, %s', async (_, id, on, left, changed) => {
  const { records, stamp, favourites } = await wardrobe()
  const changes = await markFavourite(records, id, on, stamp())
  expect(await favourites()).toEqual(left)
  expect(changes.map(({ after }) => after.id)).toEqual(changed)
})

test('a garment that was removed takes nobody’s mark', async () => {
  const { records, stamp, favourites } = await wardrobe()
  await remove(records, 'garmentsOwned', 'other', stamp())
  expect(await markFavourite(records, 'other', true, stamp())).toEqual([])
  expect(await favourites()).toEqual(['mine', 'shirt', 'theirs'])
})

test('settings begin as the system’s theme and nobody’s body; each set alone leaves the other', async () => {
  const records = await freshRecords()
  const stamp = clock()
  expect(await settingsOf(records)).toEqual({ theme: 'system', personId: null })
  await setSettings(records, { personId: 'p' }, stamp())
  expect(await settingsOf(records)).toMatchObject({ theme: 'system', personId: 'p', revision: 1 })
  await setSettings(records, { theme: 'dark' }, stamp())
  expect(await settingsOf(records)).toMatchObject({ theme: 'dark', personId: 'p', revision: 2 })
  expect(await records.rows('setAside').count()).toBe(0)
})

test('settings that can’t be read begin anew, and what was there is set aside whole', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const row = { id: 'settings', theme: 'tartan' }
  await records.rows('settings').put(row)
  await setSettings(records, { theme: 'dark' }, stamp())
  expect(await one(records, 'settings', 'settings')).toMatchObject({ theme: 'dark', personId: null, revision: 1 })
  expect(await records.rows('setAside').toArray()).toEqual([{ id: expect.any(String), from: 'settings', row }])
})

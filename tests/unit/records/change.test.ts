import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { patch, put, remove, undo } from '../../../core/records/change.ts'
import { all, one, unreadable, where } from '../../../core/records/find.ts'
import { clock, freshRecords, owned, there, WREN } from './fixtures.ts'

test('a new record carries its id, device, first revision and both times', async () => {
  const records = await freshRecords()
  const { after } = await put(records, 'people', WREN, clock('tin')())
  expect(after).toMatchObject({
    ...WREN,
    id: 'tin-0',
    device: 'tin',
    revision: 1,
    createdAt: '2026-03-01T09:00:00.000Z',
    updatedAt: '2026-03-01T09:00:00.000Z',
    deletedAt: null
  })
  expect(await one(records, 'people', 'tin-0')).toEqual(after)
})

test('a change keeps the rest, counts the revision up and names the device that made it', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const { after } = await put(records, 'people', WREN, stamp())
  const change = there(await patch(records, 'people', after.id, { name: 'Wren B.' }, { ...stamp(), device: 'other' }))
  expect(change.before).toEqual(after)
  expect(change.after).toMatchObject({ name: 'Wren B.', units: 'in', revision: 2, device: 'other', updatedAt: '2026-03-01T09:01:00.000Z' })
  // who wrote which field, and what of whom is in it
  const first = { device: 'bench', revision: 1, at: '2026-03-01T09:00:00.000Z' }
  expect(change.after).toMatchObject({
    seen: { bench: 1, other: 2 },
    wrote: { name: { device: 'other', revision: 2, at: '2026-03-01T09:01:00.000Z' }, units: first, deletedAt: first }
  })
})

test('what is deleted is gone from every list and stays in the database with its time', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const { after } = await put(records, 'garmentsOwned', owned(), stamp())
  await remove(records, 'garmentsOwned', after.id, stamp())
  expect(await all(records, 'garmentsOwned')).toEqual([])
  expect(await where(records, 'garmentsOwned', 'personId', 'p')).toEqual([])
  expect(await one(records, 'garmentsOwned', after.id)).toBeNull()
  expect(await records.rows('garmentsOwned').get(after.id)).toMatchObject({ deletedAt: '2026-03-01T09:01:00.000Z', revision: 2 })
  expect(await patch(records, 'garmentsOwned', after.id, { name: 'x' }, stamp())).toBeNull()
  expect(await remove(records, 'garmentsOwned', after.id, stamp())).toBeNull()
})

test('undo brings back what was deleted, what was changed, and takes away what was new', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const made = await put(records, 'garmentsOwned', owned(), stamp())
  const id = made.after.id

  const gone = there(await remove(records, 'garmentsOwned', id, stamp()))
  there(await undo(records, gone, stamp()))
  expect(await one(records, 'garmentsOwned', id)).toMatchObject({ name: 'Grey flannels', revision: 3, deletedAt: null })

  const renamed = there(await patch(records, 'garmentsOwned', id, { name: 'Brown cords', notes: 'too warm' }, stamp()))
  const back = there(await undo(records, renamed, stamp()))
  expect(back.after).toMatchObject({ name: 'Grey flannels', notes: '', revision: 5 })
  // an undo can be undone
  expect(there(await undo(records, back, stamp())).after).toMatchObject({ name: 'Brown cords', revision: 6 })

  const second = await put(records, 'garmentsOwned', owned({ name: 'New' }), stamp())
  there(await undo(records, second, stamp()))
  expect((await all(records, 'garmentsOwned')).map((garment) => garment.name)).toEqual(['Brown cords'])
})

test('undo refuses when the record was changed again since', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const { after } = await put(records, 'people', WREN, stamp())
  const first = there(await patch(records, 'people', after.id, { currency: 'EUR' }, stamp()))
  await patch(records, 'people', after.id, { name: 'Wren B.' }, stamp())
  expect(await undo(records, first, stamp())).toBeNull()
  expect(await one(records, 'people', after.id)).toMatchObject({ name: 'Wren B.', currency: 'EUR' })
})

test('a record that does not fit its schema is refused when it is written', async () => {
  const records = await freshRecords()
  await expect(put(records, 'garmentsOwned', owned({ measures: [{ point: 'waist', mm: -4, stated: '-4' }] }), clock()())).rejects.toThrow(
    'does not fit'
  )
  expect(await records.rows('garmentsOwned').count()).toBe(0)
})

test('fields that this version does not know survive a change, also deep inside', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const { after } = await put(records, 'people', WREN, stamp())
  await records.rows('people').put({ ...after, glove: 8, means: { ...after.means, thimble: true } })
  await patch(records, 'people', after.id, { name: 'Wren B.' }, stamp())
  expect(await records.rows('people').get(after.id)).toMatchObject({ name: 'Wren B.', glove: 8, means: { level: 3, thimble: true } })
})

test('a row that can not be read is listed with the fields at fault, left whole, and hides no other', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const good = await put(records, 'people', WREN, stamp())
  const bad = { ...good.after, id: 'bad', units: 'ells', means: { level: 9, tailor: false } }
  await records.rows('people').put(bad)
  expect((await all(records, 'people')).map((person) => person.id)).toEqual([good.after.id])
  expect(await one(records, 'people', 'bad')).toBeNull()
  expect(await patch(records, 'people', 'bad', { name: 'x' }, stamp())).toBeNull()
  expect(await unreadable(records)).toEqual([{ table: 'people', id: 'bad', row: bad, fields: ['units', 'means.level'] }])
  expect(await records.rows('people').get('bad')).toEqual(bad)
})

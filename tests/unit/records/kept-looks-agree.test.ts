import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { exportBackup, importBackup } from '../../../core/records/backup.ts'
import { openRecords } from '../../../core/records/database.ts'
import { all, unreadable } from '../../../core/records/find.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { keptLooksAgree } from '../../../core/records/kept-looks-agree.ts'
import { storeLook } from '../../../core/records/looks.ts'
import { MIGRATIONS } from '../../../core/records/migrations.ts'
import type { Tables } from '../../../core/records/row.ts'
import { sharedOf } from '../../../core/records/shared-fields.ts'
import { clock, freshName, freshRecords, seen, there } from './fixtures.ts'

const same = { updatedAt: '2026-03-01T09:00:00.000Z', deletedAt: null, answers: [], notes: 'a', money: { worth: 1 } }
const listing = { id: 'l', ...same }
const look = { id: 'k', keptId: 'l', ...same, drafts: {}, undo: [] }
const agreed = (over: { look?: object; listing?: object }) => {
  const { looks, listingsKept } = keptLooksAgree({ looks: [{ ...look, ...over.look }], listingsKept: [{ ...listing, ...over.listing }] })
  return { look: looks?.[0], listing: listingsKept?.[0] }
}

describe('a kept look and its listing that came apart before version 2', () => {
  test('what only the panel could change is the look’s', () => {
    const now = agreed({ look: { answers: [{ text: 'later' }] } })
    expect(now.listing).toMatchObject({ answers: [{ text: 'later' }], notes: 'a' })
    expect(now.look).toMatchObject({ answers: [{ text: 'later' }], undo: [] })
  })
  test('notes and money that the look never had were written in the wishlist: they count, and undo has the look’s', () => {
    const now = agreed({ listing: { notes: 'wishlist', money: { worth: 2 } } })
    for (const one of [now.look, now.listing]) expect(one).toMatchObject({ notes: 'wishlist', money: { worth: 2 } })
    expect(now.look).toMatchObject({ undo: [{ notes: 'a', money: { worth: 1 } }] })
  })
  test('notes that the look had and moved on from are the older ones', () => {
    const now = agreed({ look: { notes: 'b', undo: [{ notes: 'a' }] } })
    for (const one of [now.look, now.listing]) expect(one).toMatchObject({ notes: 'b', money: { worth: 1 } })
    expect(now.look).toMatchObject({ undo: [{ notes: 'a' }] })
  })
  test('half-typed notes of the look go into its undo where the wishlist’s count', () => {
    const now = agreed({ look: { drafts: { notes: 'half', hip: '5' } }, listing: { notes: 'wishlist' } })
    expect(now.look).toMatchObject({ notes: 'wishlist', drafts: { hip: '5' }, undo: [{ notes: 'half' }] })
  })
  test('steps of undo that are none are left out', () => {
    const torn = agreed({ look: { undo: [7, { fit: 'loose' }, 'torn'] }, listing: { notes: 'wishlist' } })
    expect(torn.look).toMatchObject({ notes: 'wishlist', undo: [{ fit: 'loose' }, { notes: 'a' }] })
    for (const undo of [undefined, 'torn', { fit: 'loose' }])
      expect(agreed({ look: { undo }, listing: { notes: 'wishlist' } }).look).toMatchObject({ undo: [{ notes: 'a' }] })
  })
  test('of two looks the one changed last speaks, and both say the same then', () => {
    const later = { ...look, id: 'k2', updatedAt: '2026-03-02T09:00:00.000Z', answers: ['x'] }
    const { looks, listingsKept } = keptLooksAgree({ looks: [later, look], listingsKept: [listing] })
    expect(listingsKept).toMatchObject([{ answers: ['x'] }])
    expect(looks).toMatchObject([{ answers: ['x'] }, { answers: ['x'], undo: [{ answers: [] }] }])
  })
  test('what agrees, is kept as nothing, is deleted or is no record stays the very same row', () => {
    const rows: Tables = {
      looks: [look, { ...look, id: 'free', keptId: null, notes: 'own' }, { ...look, id: 'gone', deletedAt: 'then', notes: 'x' }, 7, null],
      listingsKept: [listing, { ...listing, id: 'other' }, 'torn']
    }
    const now = keptLooksAgree(rows)
    for (const [place, row] of (rows.looks ?? []).entries()) expect(now.looks?.[place]).toBe(row)
    expect(now.listingsKept).toEqual(rows.listingsKept)
  })
})

/** A database as version 1 left it: the look has an answer more, the listing other notes. */
async function apart(name: string) {
  const first = await openRecords(name, MIGRATIONS.slice(0, 1))
  if (!first.ok) throw new Error(first.detail)
  const stamp = clock()
  const { id } = await storeLook(first.records, seen(), stamp())
  const kept = there(await keepLook(first.records, id, null, stamp())).after
  const answers = [{ id: 'a', text: 'The thigh is 32 cm flat.', at: '2026-03-01T09:00:00.000Z' }]
  await first.records.rows('looks').update(id, { answers })
  await first.records.rows('listingsKept').update(kept.id, { notes: 'wishlist' })
  const file = JSON.stringify(await exportBackup(first.records, stamp()))
  first.records.db.close()
  return { answers, file }
}

test('the database and a backup file of version 1 come to the same', async () => {
  const name = freshName()
  const { answers, file } = await apart(name)
  const opened = await openRecords(name)
  if (!opened.ok) throw new Error(opened.detail)
  const read = await freshRecords()
  expect(await importBackup(read, file, clock('home')())).toMatchObject({ added: 2, setAside: 0 })
  for (const records of [opened.records, read]) {
    const [looks, listings] = [await all(records, 'looks'), await all(records, 'listingsKept')]
    expect(listings).toMatchObject([{ notes: 'wishlist', answers }])
    expect(looks.map(sharedOf)).toEqual(listings.map(sharedOf))
    expect(await unreadable(records)).toEqual([])
  }
})

import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { Reckoning } from '../../../core/reckon.ts'
import { patch, put, remove } from '../../../core/records/change.ts'
import { all, one, unreadable } from '../../../core/records/find.ts'
import { keepLook, openKept } from '../../../core/records/kept.ts'
import { choose, keepDraft, storeLook } from '../../../core/records/looks.ts'
import { markFavourite, setSettings, settingsOf } from '../../../core/records/owned.ts'
import { personFor } from '../../../core/records/person-for.ts'
import { clock, freshRecords, owned, seen, there, WREN } from './fixtures.ts'

const reckoning: Reckoning = {
  conversions: [],
  notTaken: [],
  untold: [],
  assumed: [],
  verdict: 'alters-to-fit',
  cut: {},
  asFarAsTold: false,
  conditions: [],
  chanceIf: null,
  wearsAs: null,
  doubts: [],
  because: [],
  gaps: [],
  asItIs: { misfit: [], chance: 0.1 },
  plans: [
    {
      aim: 'least-work',
      alterations: [
        {
          id: 'waist-in-centre-back',
          amountMm: 50,
          direction: 'less',
          amounts: { waist: -50 },
          lines: [],
          limitMm: 60,
          limitBecause: '',
          softLimit: false,
          rescue: false,
          withoutIt: []
        }
      ],
      after: [],
      misfit: [],
      chance: 0.8,
      level: 3,
      minutes: 90,
      cost: 12
    }
  ],
  chance: 0.8,
  ask: [],
  worth: { spend: 32, against: null, upTo: null, risk: null },
  cautions: [],
  issues: []
}
const request = { garment: { kind: 'trousers' as const, measures: [] }, means: { level: 3 as const, tailor: false } }

describe('keeping', () => {
  test('a price that was only read from the text is kept with it, in its own currency; one that the page tells apart goes before it', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const read = { amount: 8, currency: 'USD' }
    const look = await storeLook(records, seen({ price: null }), stamp())
    const kept = there(await keepLook(records, look.id, { request, reckoning, price: read }, stamp()))
    expect(kept.after.price).toEqual(read)
    expect(there(await one(records, 'looks', look.id))).toMatchObject({ keptId: kept.after.id, price: read, undo: [] })
    // the same page read again tells no price of its own either
    await storeLook(records, seen({ price: null }), stamp())
    expect(there(await one(records, 'listingsKept', kept.after.id)).price).toEqual(read)
    const told = { amount: 24, currency: 'GBP' }
    const other = await storeLook(records, seen({ price: told, address: 'https://rail.example/other' }), stamp())
    expect(there(await keepLook(records, other.id, { request, reckoning, price: read }, stamp())).after.price).toEqual(told)
  })
  test('a look is kept with its text, corrections, site, request and the answer then', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const look = await storeLook(records, seen(), stamp())
    await choose(records, look.id, { corrections: [{ kind: 'jeans' }, { whose: 'men' }], notes: 'nice cloth' }, stamp())
    const { after } = there(await keepLook(records, look.id, { request, reckoning }, stamp()))
    expect(after).toMatchObject({
      title: 'Charcoal flannel trousers',
      text: 'Waist 16 in flat',
      site: 'rail-and-peg.example',
      corrections: [{ kind: 'jeans' }, { whose: 'men' }],
      notes: 'nice cloth',
      status: 'watching',
      keptAt: '2026-03-01T09:02:00.000Z',
      request,
      verdictThen: { verdict: 'alters-to-fit', chance: 0.8, level: 3, minutes: 90, spend: 32, jobs: ['waist-in-centre-back'] }
    })
    expect(await one(records, 'looks', look.id)).toMatchObject({ keptId: after.id })
  })

  test('what the untold must be is kept with the answer then, without its sentence, and read again', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const hip = { point: 'hip' as const, least: 1026, most: null, chance: 0.3 }
    const own = { body: 'thighGirth' as const, least: null, most: 620, chance: null }
    const hanging = { ...reckoning, chanceIf: 0.9, conditions: [hip, own].map((one) => ({ ...one, text: 'said in some unit' })) }
    const look = await storeLook(records, seen(), stamp())
    const { after } = there(await keepLook(records, look.id, { request, reckoning: hanging }, stamp()))
    expect(after.verdictThen).toMatchObject({ conditions: [hip, own], chanceIf: 0.9 })
    expect(JSON.stringify(after)).not.toContain('said in some unit')
    expect((await all(records, 'listingsKept'))[0]?.verdictThen?.conditions).toEqual([hip, own])
    expect(await unreadable(records)).toEqual([])
  })

  test('one that was kept before there were any is read as it was', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const look = await storeLook(records, seen(), stamp())
    const { after } = there(await keepLook(records, look.id, { request, reckoning }, stamp()))
    const { conditions, chanceIf, ...before } = there(after.verdictThen)
    expect([conditions, chanceIf]).toEqual([[], null])
    await patch(records, 'listingsKept', after.id, { verdictThen: before }, stamp())
    expect((await one(records, 'listingsKept', after.id))?.verdictThen).toEqual(before)
  })

  test('kept again it is the same listing, with its status, tags and first date', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const look = await storeLook(records, seen(), stamp())
    const first = there(await keepLook(records, look.id, null, stamp())).after
    await patch(records, 'listingsKept', first.id, { status: 'asked', tags: ['wool'] }, stamp())
    await keepDraft(records, look.id, 'notes', 'asked about the hem', stamp())
    const again = there(await keepLook(records, look.id, { request, reckoning }, stamp())).after
    expect(again).toMatchObject({ id: first.id, status: 'asked', tags: ['wool'], keptAt: first.keptAt, notes: 'asked about the hem' })
    expect(await all(records, 'listingsKept')).toHaveLength(1)
  })

  test('kept again after it was deleted it is a new listing', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const look = await storeLook(records, seen(), stamp())
    const first = there(await keepLook(records, look.id, null, stamp())).after
    await remove(records, 'listingsKept', first.id, stamp())
    const second = there(await keepLook(records, look.id, null, stamp())).after
    expect(second.id).not.toBe(first.id)
    expect(await one(records, 'looks', look.id)).toMatchObject({ keptId: second.id })
    expect(await keepLook(records, 'nowhere', null, stamp())).toBeNull()
  })

  test('a kept listing opens in the look it came from, brought up to date, or in one of its own', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const look = await storeLook(records, seen(), stamp())
    const { after } = there(await keepLook(records, look.id, null, stamp()))
    expect((await openKept(records, after.id, stamp()))?.id).toBe(look.id)
    await patch(records, 'listingsKept', after.id, { notes: 'from the wishlist' }, stamp())
    expect(await openKept(records, after.id, stamp())).toMatchObject({ id: look.id, notes: 'from the wishlist' })
    await remove(records, 'looks', look.id, stamp())
    const fresh = there(await openKept(records, after.id, stamp()))
    expect(fresh).toMatchObject({ keptId: after.id, text: 'Waist 16 in flat', tabId: null, page: 'none', capturedAt: after.keptAt })
    expect((await openKept(records, after.id, stamp()))?.id).toBe(fresh.id)
    expect(await openKept(records, 'nowhere', stamp())).toBeNull()
  })
})

describe('favourites', () => {
  test('there is one for a person and kind; others give the mark up', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const a = (await put(records, 'garmentsOwned', owned({ name: 'a', favourite: true }), stamp())).after
    const b = (await put(records, 'garmentsOwned', owned({ name: 'b' }), stamp())).after
    const c = (await put(records, 'garmentsOwned', owned({ name: 'c', kind: 'shirt', favourite: true }), stamp())).after
    const d = (await put(records, 'garmentsOwned', owned({ name: 'd', personId: 'q', favourite: true }), stamp())).after
    await markFavourite(records, b.id, true, stamp())
    const marked = (await all(records, 'garmentsOwned')).filter((garment) => garment.favourite)
    expect(marked.map((garment) => garment.id)).toEqual([b.id, c.id, d.id])
    await markFavourite(records, b.id, false, stamp())
    const left = (await all(records, 'garmentsOwned')).filter((garment) => garment.favourite)
    expect(left.map((garment) => garment.id)).toEqual([c.id, d.id])
    expect(a.favourite).toBe(true)
  })
})

test('settings are made when first set, and one record', async () => {
  const records = await freshRecords()
  const stamp = clock()
  expect(await settingsOf(records)).toEqual({ theme: 'system', personId: null })
  await setSettings(records, { theme: 'dark' }, stamp())
  await setSettings(records, { personId: 'p' }, stamp())
  expect(await settingsOf(records)).toMatchObject({ theme: 'dark', personId: 'p', revision: 2 })
  expect(await records.rows('settings').count()).toBe(1)
})

test('whose body counts: the one asked for, else the one set, else the first', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const a = (await put(records, 'people', WREN, stamp())).after
  const b = (await put(records, 'people', { ...WREN, name: 'Lark' }, stamp())).after
  expect(personFor([a, b], b.id, a.id)?.id).toBe(b.id)
  expect(personFor([a, b], 'gone', b.id)?.id).toBe(b.id)
  expect(personFor([a, b], null, 'gone')?.id).toBe(a.id)
  expect(personFor([], null, null)).toBeNull()
})

/** Bringing changes together, row by row of a list; editing what was changed elsewhere; settling; why something was not saved. */
import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import { exportBackup, importBackup } from '../../../core/records/backup.ts'
import { patch, put, remove } from '../../../core/records/change.ts'
import { Clashing, changesSince, edit } from '../../../core/records/edit.ts'
import { all, countUnreadable, idOf, one, unreadable } from '../../../core/records/find.ts'
import { settle, unsettled } from '../../../core/records/settle.ts'
import { same, together } from '../../../core/records/three-way.ts'
import { Gone, troubleOf } from '../../../core/records/trouble.ts'
import { clock, freshRecords, owned, there, WREN } from './fixtures.ts'

describe('rows of a list are the same row', () => {
  const both = (was: unknown, mine: unknown, theirs: unknown) => together({ l: [was] }, { l: [mine] }, { l: [theirs] })
  test.each<[string, object]>([
    ['by id', { id: 'a' }],
    ['by what is quoted', { start: 1, end: 4, quote: 'hip' }],
    ['by what is added', { add: 'hip' }],
    ['by point', { point: 'hip' }],
    ['by point, kind and fit', { kind: 'jeans', fit: 'close', point: 'hip' }]
  ])('%s: each change of it is kept', (_, row) => {
    const found = both({ ...row, mm: 1, sdMm: 1 }, { ...row, mm: 2, sdMm: 1 }, { ...row, mm: 1, sdMm: 3 })
    expect(found).toEqual({ value: { l: [{ ...row, mm: 2, sdMm: 3 }] }, clashes: [] })
  })
  test.each<[string, object, object]>([
    ['quoted elsewhere', { start: 1, end: 4, quote: 'hip' }, { start: 9, end: 12, quote: 'hip' }],
    ['of another kind', { kind: 'jeans', fit: 'close', point: 'hip' }, { kind: 'skirt', fit: 'close', point: 'hip' }],
    ['in another fit', { kind: 'jeans', fit: 'close', point: 'hip' }, { kind: 'jeans', fit: 'loose', point: 'hip' }],
    ['a point added and one told', { add: 'hip', mm: 1 }, { point: 'hip', mm: 1 }],
    ['of two fields and no name', { a: 1, b: 1 }, { a: 1, b: 2 }]
  ])('and another where it is %s', (_, mine, theirs) => {
    expect(together({ l: [] }, { l: [mine] }, { l: [theirs] })).toEqual({ value: { l: [theirs, mine] }, clashes: [] })
  })
  test('a list beside something else is one value', () => {
    expect(together({ l: [] }, { l: [1] }, { l: { a: 1 } }).clashes).toEqual([{ path: ['l'], mine: [1], theirs: { a: 1 } }])
    expect(together({}, { l: { b: 2 } }, { l: { a: 1 } }).value).toEqual({ l: { a: 1, b: 2 } })
    expect(together({ l: 7 }, { l: ['x'] }, { l: ['y'] }).value).toEqual({ l: ['y', 'x'] })
  })
  test.each([
    [Number.NaN, Number.NaN, true],
    [0, -0, false],
    [[1, 2], [1, 2], true],
    [[1, 2], [1], false],
    [[1], [2], false],
    [[], {}, false],
    [{ a: 1, b: 2 }, { b: 2, a: 1 }, true],
    [{ a: 1 }, { a: 1, b: undefined }, false],
    [{ a: undefined }, { b: undefined }, false],
    [null, {}, false],
    ['1', 1, false]
  ])('%j and %j are the same: %s', (a, b, are) => expect(same(a, b)).toBe(are))
})

describe('edited', () => {
  test('what one changed, and nothing of what one left', () => {
    const began = { name: 'Kilt', notes: '', tags: ['a'] }
    const now = { name: 'Plaid', notes: '', tags: ['a'], other: 1 }
    expect(changesSince<typeof now>(began, { ...began, notes: 'hem' }, now, null)).toEqual({ notes: 'hem' })
    expect(changesSince<typeof now>(began, began, now, null)).toEqual({})
    expect(changesSince<typeof now>(began, { ...began, name: 'Plaid' }, now, null)).toEqual({})
  })
  test('where both changed it, neither is written but by a word; the clash says where', () => {
    const [began, mine, now] = [
      { name: 'Kilt', notes: '' },
      { name: 'Mine', notes: 'mine' },
      { name: 'Theirs', notes: 'theirs' }
    ]
    expect(() => changesSince(began, mine, now, null)).toThrow(Clashing)
    expect(() => changesSince(began, mine, now, null)).toThrow('name, notes')
    expect(changesSince(began, mine, now, 'mine')).toEqual(mine)
    expect(changesSince(began, mine, now, 'theirs')).toEqual({})
  })
  test('written to what is there; gone where it was removed', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const { after } = await put(records, 'garmentsOwned', owned(), stamp())
    const change = { began: { notes: '' }, mine: { notes: 'hem' }, settle: null }
    expect(await edit(records, 'garmentsOwned', after.id, change, stamp())).toMatchObject({
      before: { notes: '' },
      after: { notes: 'hem' }
    })
    await remove(records, 'garmentsOwned', after.id, stamp())
    await expect(edit(records, 'garmentsOwned', after.id, change, stamp())).rejects.toThrow(Gone)
    expect((await records.rows('garmentsOwned').toArray()).length).toBe(1)
  })
})

describe('settling', () => {
  async function apart() {
    const [here, away] = [await freshRecords(), await freshRecords()]
    const [stamp, awayStamp] = [clock('here'), clock('there')]
    const { id } = (await put(here, 'garmentsOwned', owned(), stamp())).after
    await put(here, 'people', WREN, stamp())
    await importBackup(away, JSON.stringify(await exportBackup(here, stamp())), awayStamp())
    for (const notes of ['once', 'away']) await patch(away, 'garmentsOwned', id, { notes, name: 'Away' }, awayStamp())
    await patch(here, 'garmentsOwned', id, { notes: 'here', name: 'Here' }, stamp())
    await importBackup(here, JSON.stringify(await exportBackup(away, awayStamp())), stamp())
    return { records: here, stamp, id }
  }

  test('each conflict by itself, under the name of its record, with what counts meanwhile', async () => {
    const { records, stamp, id } = await apart()
    const found = await unsettled(records)
    expect(found.map(({ table, id, field, name }) => [table, id, field, name])).toEqual([
      ['garmentsOwned', id, 'name', found[0]?.now],
      ['garmentsOwned', id, 'notes', found[0]?.now]
    ])
    const [names, notes] = [there(found[0]), there(found[1])]
    await settle(records, { ...names, table: 'garmentsOwned' }, 'other', stamp())
    expect(await one(records, 'garmentsOwned', id)).toMatchObject({ name: names.value, notes: notes.now })
    expect((await unsettled(records)).map(({ field }) => field)).toEqual(['notes'])
    // settled already, or of another change
    await expect(settle(records, { ...names, table: 'garmentsOwned' }, 'now', stamp())).rejects.toThrow(Gone)
    for (const other of [{ field: 'kind' }, { device: 'nobody' }, { revision: 99 }])
      await expect(settle(records, { ...notes, ...other, table: 'garmentsOwned' }, 'now', stamp())).rejects.toThrow(Gone)
    await settle(records, { ...notes, table: 'garmentsOwned' }, 'now', stamp())
    expect(await unsettled(records)).toEqual([])
    expect(await one(records, 'garmentsOwned', id)).toMatchObject({ notes: notes.now })
  })
})

describe('what is there', () => {
  test('oldest first, of one moment by id; what is deleted or can’t be read is left out, and that is counted', async () => {
    const records = await freshRecords()
    const { after } = await put(records, 'people', WREN, clock()())
    const at = (id: string, createdAt: string) => ({ ...after, id, createdAt })
    await records
      .rows('people')
      .bulkPut([
        at('c', '2026-01-02T00:00:00.000Z'),
        at('b', '2026-01-02T00:00:00.000Z'),
        at('z', '2026-01-01T00:00:00.000Z'),
        { ...at('gone', '2026-01-01T00:00:00.000Z'), deletedAt: '2026-01-03T00:00:00.000Z' },
        { ...at('odd', '2026-01-01T00:00:00.000Z'), units: 'ells' }
      ])
    expect((await all(records, 'people')).map(({ id }) => id)).toEqual(['z', 'b', 'c', after.id])
    expect(await countUnreadable(records, 'people')).toBe(1)
    expect(await countUnreadable(records, 'looks')).toBe(0)
  })
  test('what was set aside is listed with its table, where it has one', async () => {
    const records = await freshRecords()
    const row = { id: 'x', name: 7 }
    await records.rows('setAside').bulkPut([
      { id: 'a', from: 'people', row },
      { id: 'b', from: 'nowhere', row },
      { id: 'c', from: 'people' },
      { id: 'd', row }
    ])
    const found = await unreadable(records)
    expect(found.map(({ table, id, row }) => [table, id, row])).toEqual([['people', 'a', row]])
    expect(found[0]?.fields).toContain('name')
    expect(found[0]?.fields).not.toContain('id')
  })
  test.each([
    [{ id: 'a' }, 'a'],
    [{ id: 7 }, ''],
    [{}, ''],
    [null, ''],
    ['a', '']
  ])('the id of %j is "%s"', (row, id) => expect(idOf(row)).toBe(id))
})

describe('why it was not saved', () => {
  const named = (name: string, more: object = {}) => ({ name, ...more })
  test.each([
    ['misfit', named('Misfit')],
    ['full', named('NS_ERROR_FILE_NO_DEVICE_SPACE')],
    ['full', named('NS_ERROR_DOM_QUOTA_REACHED')],
    ['full', { message: 'The QUOTA has been exceeded' }],
    ['full', named('BulkError', { failures: [named('QuotaExceededError')] })],
    ['broken-off', named('BulkError', { failures: [named('AbortError'), named('QuotaExceededError')] })],
    ['broken-off', named('InvalidStateError')],
    ['broken-off', named('PrematureCommitError')],
    ['broken-off', named('TimeoutError')],
    ['gone', named('AbortError', { inner: named('Gone') })],
    ['misfit', named('AbortError', { cause: named('Misfit') })],
    // seven links are followed, and an error is not its own cause
    ['gone', [1, 2, 3, 4, 5, 6, 7].reduce<object>((inner) => ({ inner }), named('Gone'))],
    ['unavailable', [1, 2, 3, 4, 5, 6, 7, 8].reduce<object>((inner) => ({ inner }), named('Gone'))],
    ['unavailable', { name: 7, message: 7, failures: 'none' }]
  ])('%s: %j', (trouble, error) => expect(troubleOf(error)).toBe(trouble))
  test('an error that says it is its own inside is asked for its cause', () => {
    const round: { name: string; inner?: unknown; cause: unknown } = { name: 'Odd', cause: named('Gone') }
    round.inner = round
    expect(troubleOf(round)).toBe('gone')
  })
})

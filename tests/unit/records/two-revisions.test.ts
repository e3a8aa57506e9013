/** Two revisions of one record, without a database: what each mark says, and what comes of each pair. */
import { describe, expect, test } from 'vitest'
import { conflictsIn, marked, merged, type Wrote } from '../../../core/records/merge.ts'
import type { Row } from '../../../core/records/row.ts'

const at = (minute: number): string => `2026-03-01T09:${String(minute).padStart(2, '0')}:00.000Z`
const by = (device: string, revision: number, minute: number): Wrote => ({ device, revision, at: at(minute) })
const BASE = by('base', 1, 0)
const began: Row = {
  id: 'g',
  createdAt: at(0),
  updatedAt: at(0),
  device: 'base',
  revision: 1,
  deletedAt: null,
  name: 'Kilt',
  notes: '',
  seen: { base: 1 },
  wrote: { deletedAt: BASE, name: BASE, notes: BASE }
}
/** The next revision of a row, as a device writes it. */
function edited(row: Row, device: string, minute: number, changes: Row, anew: readonly string[] = []): Row {
  const revision = Number(row.revision) + 1
  const { conflicts: _, ...content } = { conflicts: null, ...row, ...changes, device, revision, updatedAt: at(minute) }
  return { ...content, ...marked(row, content, { device, revision, at: at(minute) }, anew) }
}
/** Both ways about: it is the same whichever is here. */
function bothWays(a: Row, b: Row): Row {
  const [one, other] = [merged(a, b), merged(b, a)]
  expect(other).toEqual(one)
  return one
}

describe('the marks of a revision', () => {
  test('a new record is written whole by its first change', () => {
    const first = by('here', 1, 3)
    expect(marked(null, { id: 'g', name: 'Kilt', notes: '', revision: 1 }, first)).toEqual({
      seen: { here: 1 },
      wrote: { name: first, notes: first }
    })
  })

  test('a field that stays keeps who wrote it, unless it is said anew; one that nobody wrote is written now', () => {
    const second = by('here', 2, 3)
    const after = { ...began, name: 'Plaid' }
    expect(marked(began, after, second)).toEqual({
      seen: { base: 1, here: 2 },
      wrote: { deletedAt: BASE, name: second, notes: BASE }
    })
    expect(marked(began, after, second, ['notes']).wrote).toEqual({ deletedAt: BASE, name: second, notes: second })
    expect(marked({ ...began, wrote: { name: BASE } }, began, second).wrote).toEqual({ deletedAt: second, name: BASE, notes: second })
    expect(marked({ ...began, wrote: 'torn' }, began, second).wrote).toEqual({ deletedAt: second, name: second, notes: second })
  })

  test('marks that are none count as not written and not seen', () => {
    const torn = { ...began, seen: { base: 1, odd: 'two' }, wrote: { name: { device: 'base', revision: 'one', at: at(0) }, notes: BASE } }
    const second = by('here', 2, 3)
    expect(marked(torn, began, second)).toEqual({ seen: { base: 1, here: 2 }, wrote: { deletedAt: second, name: second, notes: BASE } })
    for (const odd of [{ revision: 1, at: at(0) }, { device: 'base', revision: 1 }, { ...BASE, at: 7 }, 7, null])
      expect(marked({ ...began, wrote: { name: odd } }, began, second).wrote.name).toEqual(second)
  })
})

describe('of two revisions', () => {
  test('the one that has all of the other is it, untouched', () => {
    const later = edited(began, 'here', 5, { notes: 'press' })
    expect(merged(later, began)).toBe(later)
    expect(merged(began, later)).toBe(later)
    expect(merged(later, { ...later })).toBe(later)
  })

  test('other fields come together, under the change made last', () => {
    const a = edited(began, 'a', 5, { notes: 'press' })
    const b = edited(edited(began, 'b', 6, { name: 'Plaid' }), 'b', 7, { name: 'Tartan' })
    expect(bothWays(a, b)).toEqual({
      ...began,
      name: 'Tartan',
      notes: 'press',
      device: 'b',
      updatedAt: at(7),
      revision: 3,
      seen: { a: 2, b: 3, base: 1 },
      wrote: { deletedAt: BASE, name: by('b', 3, 7), notes: by('a', 2, 5) }
    })
  })

  test('the same field written twice: the later counts, the other stands beside it', () => {
    const a = edited(began, 'a', 5, { notes: 'press' })
    const b = edited(began, 'b', 6, { notes: 'hem' })
    const both = bothWays(a, b)
    expect(both).toMatchObject({ notes: 'hem', device: 'b', updatedAt: at(6), wrote: { notes: by('b', 2, 6) } })
    expect(both.conflicts).toEqual([{ ...by('a', 2, 5), field: 'notes', value: 'press', against: `b 2 ${at(6)}` }])
  })

  test('of one moment the device whose name comes last counts', () => {
    const a = edited(began, 'a', 5, { notes: 'press' })
    const b = edited(began, 'b', 5, { notes: 'hem' })
    expect(bothWays(a, b)).toMatchObject({ notes: 'hem', conflicts: [{ value: 'press' }] })
  })

  test('written alike on both it is no conflict, nor where nobody is asked', () => {
    const same = [edited(began, 'a', 5, { notes: 'hem' }), edited(began, 'b', 6, { notes: 'hem' })] as const
    expect(bothWays(...same)).not.toHaveProperty('conflicts')
    for (const name of [
      'windowId',
      'tabId',
      'page',
      'undo',
      'drafts',
      'capturedAt',
      'readBy',
      'problem',
      'pageAddress',
      'verdictThen',
      'request'
    ]) {
      const look = { ...began, [name]: 0, wrote: { deletedAt: BASE, name: BASE, notes: BASE, [name]: BASE } }
      const both = bothWays(edited(look, 'a', 5, { [name]: 1 }), edited(look, 'b', 6, { [name]: 2 }))
      expect(both[name], name).toBe(2)
      expect(both, name).not.toHaveProperty('conflicts')
    }
  })

  test('an edit that knew of the other counts, though its clock is behind', () => {
    const a = edited(began, 'a', 30, { notes: 'press' })
    const knew = edited(a, 'b', 5, { notes: 'hem' })
    const other = edited(a, 'a', 40, { name: 'Plaid' })
    const both = bothWays(other, knew)
    expect(both).toMatchObject({ name: 'Plaid', notes: 'hem' })
    expect(both).not.toHaveProperty('conflicts')
  })

  test('a row without marks is one whole: the higher revision, else the later, else by device', () => {
    const { seen: _, wrote: __, ...plain } = began
    const row = (revision: number, minute: number, device: string): Row => ({ ...plain, revision, updatedAt: at(minute), device })
    const pairs: [Row, Row][] = [
      [row(3, 1, 'a'), row(2, 9, 'b')],
      [row(2, 9, 'a'), row(2, 8, 'b')],
      [row(2, 9, 'b'), row(2, 9, 'a')],
      [row(3, 1, 'a'), { ...began, revision: 2, updatedAt: at(9) }],
      [{ ...began, revision: 2, updatedAt: at(9) }, row(1, 1, 'z')],
      [row(1, 1, 'a'), { ...row(2, 9, 'b'), revision: 'two' }],
      [row(3, 1, 'a'), { ...began, wrote: null }],
      [row(3, 1, 'a'), { ...began, seen: 7 }]
    ]
    for (const [wins, loses] of pairs) {
      expect(merged(wins, loses)).toBe(wins)
      expect(merged(loses, wins)).toBe(wins)
    }
    const twin = row(2, 9, 'a')
    expect(merged(twin, { ...twin })).toBe(twin)
  })

  test('a field that one alone has stays, and so does one that nobody wrote', () => {
    const a = edited(began, 'a', 5, { attic: 'box' })
    const b = edited(began, 'b', 6, { notes: 'hem' })
    expect(bothWays(a, b)).toMatchObject({ attic: 'box', notes: 'hem', wrote: { attic: by('a', 2, 5) } })
    // written by nobody: from where it stands, and no mark is made up for it
    const unmarked = bothWays({ ...a, cellar: 'crate' }, b)
    expect(unmarked).toMatchObject({ attic: 'box', cellar: 'crate' })
    expect(unmarked.wrote).not.toHaveProperty('cellar')
    // a mark goes before none
    const known = bothWays({ ...edited(began, 'a', 5, {}), shelf: 'old' }, edited(began, 'b', 6, { shelf: 'new' }))
    expect(known).toMatchObject({ shelf: 'new', wrote: { shelf: by('b', 2, 6) } })
  })

  test('names that every object has beneath it are not taken for fields', () => {
    const a = edited(began, 'a', 5, { notes: 'press' })
    const b = edited(began, 'b', 6, { name: 'Plaid' })
    const both = merged({ ...a, constructor: 'thimble' }, b)
    expect(Object.hasOwn(both, 'constructor') && both.constructor).toBe('thimble')
    expect(Object.hasOwn(merged(a, b), 'constructor')).toBe(false)
  })
})

describe('removed on one device', () => {
  const removed = (device: string, minute: number) => edited(began, device, minute, { deletedAt: at(minute) })

  test('and changed on the other it stays, whichever was later, and the removal is shown', () => {
    for (const [gone, kept] of [
      [5, 6],
      [6, 5]
    ] as const) {
      const both = bothWays(removed('a', gone), edited(began, 'b', kept, { notes: 'hem' }))
      expect(both).toMatchObject({ deletedAt: null, notes: 'hem', wrote: { deletedAt: BASE } })
      expect(both.conflicts).toEqual([{ ...by('a', 2, gone), field: 'deletedAt', value: at(gone), against: `base 1 ${at(0)}` }])
    }
  })

  test('and not changed on the other, or changed before it was removed, it is gone', () => {
    const changed = edited(began, 'b', 5, { notes: 'hem' })
    const gone = edited(changed, 'a', 6, { deletedAt: at(6) })
    const both = bothWays(gone, edited(changed, 'c', 7, {}))
    expect(both).toMatchObject({ deletedAt: at(6), notes: 'hem' })
    expect(both).not.toHaveProperty('conflicts')
  })

  test('and brought back by one that knew of it, it is back without a question', () => {
    const gone = removed('a', 5)
    const back = edited(gone, 'b', 6, { deletedAt: null })
    const both = bothWays(edited(gone, 'a', 7, { notes: 'hem' }), back)
    expect(both).toMatchObject({ deletedAt: null, notes: 'hem' })
    expect(both).not.toHaveProperty('conflicts')
  })

  test('and on the other, too, it is gone once', () => {
    const both = bothWays(removed('a', 5), removed('b', 6))
    expect(both).toMatchObject({ deletedAt: at(6) })
    expect(both).not.toHaveProperty('conflicts')
  })
})

describe('conflicts', () => {
  const conflict = { ...by('a', 2, 5), field: 'notes', value: 'press', against: `b 2 ${at(6)}` }

  test('are read where they are whole', () => {
    const { device: _, ...nobody } = conflict
    const odd = [7, null, 'notes', nobody, { ...conflict, field: 1 }, { ...conflict, against: undefined }, { ...conflict, at: 5 }]
    expect(conflictsIn({ conflicts: [conflict, ...odd] })).toEqual([conflict])
    expect(conflictsIn({ conflicts: 'none' })).toEqual([])
    expect(conflictsIn({})).toEqual([])
    const row = { conflicts: [conflict] }
    expect(conflictsIn(row)[0]).not.toBe(row.conflicts[0])
  })

  test('three devices: each other value stands once, in one order; a value that counts in the end is none', () => {
    const [a, b, c] = [
      edited(began, 'a', 5, { notes: 'press' }),
      edited(began, 'b', 6, { notes: 'hem' }),
      edited(began, 'c', 7, { notes: 'dye' })
    ] as const
    const all = bothWays(merged(a, b), c)
    expect(bothWays(a, merged(b, c))).toEqual(all)
    expect(conflictsIn(all).map(({ value, against }) => [value, against])).toEqual([
      ['hem', `c 2 ${at(7)}`],
      ['press', `c 2 ${at(7)}`]
    ])
    const same = bothWays(merged(a, b), edited(began, 'c', 7, { notes: 'press' }))
    expect(conflictsIn(same).map(({ value }) => value)).toEqual(['hem'])
  })

  test('the same other value from two devices stands once, under the later', () => {
    const twice = bothWays(
      merged(edited(began, 'a', 4, { notes: 'press' }), edited(began, 'b', 7, { notes: 'hem' })),
      merged(edited(began, 'c', 5, { notes: 'press' }), edited(began, 'b', 7, { notes: 'hem' }))
    )
    expect(conflictsIn(twice)).toEqual([{ ...by('c', 2, 5), field: 'notes', value: 'press', against: `b 2 ${at(7)}` }])
  })

  test('written again it is settled, said anew as it is too; another field leaves it open', () => {
    const open = merged(edited(began, 'a', 5, { notes: 'press' }), edited(began, 'b', 6, { notes: 'hem' }))
    expect(conflictsIn(edited(open, 'b', 8, { name: 'Plaid' }))).toHaveLength(1)
    expect(conflictsIn({ ...open, ...marked(open, { ...open, name: 'Plaid' }, by('b', 3, 8)) })).toEqual(conflictsIn(open))
    expect(marked(open, { ...open, notes: 'press' }, by('b', 3, 8))).not.toHaveProperty('conflicts')
    expect(marked(open, { ...open }, by('b', 3, 8), ['notes'])).not.toHaveProperty('conflicts')
  })
})

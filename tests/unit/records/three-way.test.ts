/** Two changes that began from one state: nothing that either did is lost, and where both can't be had both are told. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { same, together } from '../../../core/records/three-way.ts'

describe('fields', () => {
  const began = { name: 'Grey flannels', notes: '', money: { price: null, worth: 40 }, tags: ['work'] }

  test('what only one changed is taken from it, also within a field', () => {
    const mine = { ...began, notes: 'press first', money: { price: 12, worth: 40 } }
    const theirs = { ...began, name: 'Flannels', money: { price: null, worth: 60 } }
    expect(together(began, mine, theirs)).toEqual({
      value: { name: 'Flannels', notes: 'press first', money: { price: 12, worth: 60 }, tags: ['work'] },
      clashes: []
    })
  })

  test('both alike is no clash', () => {
    const both = { ...began, notes: 'x' }
    expect(together(began, both, { ...both })).toEqual({ value: both, clashes: [] })
  })

  test('both otherwise is told with both values, and settled as the person says', () => {
    const mine = { ...began, notes: 'mine', money: { price: 1, worth: 40 } }
    const theirs = { ...began, notes: 'theirs', money: { price: 2, worth: 40 } }
    expect(together(began, mine, theirs)).toEqual({
      value: theirs,
      clashes: [
        { path: ['notes'], mine: 'mine', theirs: 'theirs' },
        { path: ['money', 'price'], mine: 1, theirs: 2 }
      ]
    })
    expect(together(began, mine, theirs, 'mine')).toEqual({ value: mine, clashes: [] })
    expect(together(began, mine, theirs, 'theirs')).toEqual({ value: theirs, clashes: [] })
  })

  test('a field taken away on one side goes; changed on the other it is a clash', () => {
    const cut = { cut: { leg: 'wide', rise: 'high' } }
    expect(together(cut, { cut: { leg: 'wide' } }, { cut: { leg: 'slim', rise: 'high' } }).value).toEqual({ cut: { leg: 'slim' } })
    expect(together(cut, { cut: { rise: 'high' } }, { cut: { leg: 'slim', rise: 'high' } }).clashes).toEqual([
      { path: ['cut', 'leg'], mine: undefined, theirs: 'slim' }
    ])
  })

  test('a field that is called as what every object has is a field', () => {
    const odd = JSON.parse('{ "__proto__": 1, "constructor": 2 }')
    expect(together({}, odd, { a: 3 }).value).toEqual({ a: 3, ...JSON.parse('{ "__proto__": 1, "constructor": 2 }') })
  })
})

describe('lists', () => {
  test('measures by their point, corrections by what they are about, answers by id, tags by themselves', () => {
    const waist = { point: 'waist', mm: 760, stated: '76' }
    const hip = { point: 'hip', mm: 1000, stated: '100' }
    const thigh = { point: 'thigh', mm: 600, stated: '60' }
    expect(together({ m: [waist] }, { m: [waist, hip] }, { m: [{ ...waist, mm: 780 }, thigh] }).value).toEqual({
      m: [{ ...waist, mm: 780 }, thigh, hip]
    })
    const corrections = together({ c: [] }, { c: [{ kind: 'jeans' }] }, { c: [{ add: 'waist', mm: 700, source: 'own' }] })
    expect(corrections.value).toEqual({ c: [{ add: 'waist', mm: 700, source: 'own' }, { kind: 'jeans' }] })
    expect(together({ c: [] }, { c: [{ kind: 'jeans' }] }, { c: [{ kind: 'skirt' }] }).clashes).toEqual([
      { path: ['c', 'kind', 'kind'], mine: 'jeans', theirs: 'skirt' }
    ])
    expect(together({ t: ['a', 'b'] }, { t: ['b', 'c'] }, { t: ['a', 'b', 'd'] }).value).toEqual({ t: ['b', 'd', 'c'] })
    expect(together({ t: [1, 1] }, { t: [1, 1, 1] }, { t: [1, 1] }).value).toEqual({ t: [1, 1, 1] })
  })
})

describe('whatever the rows', () => {
  const value = fc.letrec((tie) => ({
    leaf: fc.oneof(fc.integer({ min: 0, max: 2 }), fc.constantFrom('a', 'b', null)),
    row: fc.dictionary(fc.constantFrom('a', 'b', 'id', '__proto__', 'point'), tie('any'), { maxKeys: 3 }),
    list: fc.array(tie('any'), { maxLength: 3 }),
    any: fc.oneof({ depthSize: 'small' }, tie('leaf'), tie('row'), tie('list'))
  }))
  const row = value.row as fc.Arbitrary<Record<string, unknown>>

  test('one side unchanged, the other is the answer; settled there is no clash; it never throws', () => {
    fc.assert(
      fc.property(row, row, row, (began, mine, theirs) => {
        expect(same(together(began, mine, began).value, mine)).toBe(true)
        expect(same(together(began, began, theirs).value, theirs)).toBe(true)
        expect(together(began, mine, theirs, 'mine').clashes).toEqual([])
        const once = together(began, mine, theirs)
        expect(once.clashes.length > 0 || same(once.value, together(began, theirs, mine).value) || listed(began, mine, theirs)).toBe(true)
      }),
      { numRuns: 2000 }
    )
  })
  /** The order of a list depends on the side. */
  const listed = (...rows: unknown[]): boolean => JSON.stringify(rows).slice(1, -1).includes('[')

  test('nested deeper than anything saved it ends', () => {
    const deep = (leaf: number): Record<string, unknown> => {
      let now: Record<string, unknown> = { leaf }
      for (let n = 0; n < 3000; n++) now = { now }
      return now
    }
    expect(together(deep(0), deep(1), deep(2)).clashes).toHaveLength(1)
  })
})

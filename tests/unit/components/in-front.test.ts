import { describe, expect, it } from 'vitest'
import type { Look } from '../../../core/records/schemas.ts'
import { placeOf, standingOf } from '../../../entrypoints/view/in-front.ts'

const look = (changes: Partial<Look>): Look => ({
  id: 'a',
  device: 'd',
  revision: 1,
  createdAt: '2026-03-01T09:00:00.000Z',
  updatedAt: '2026-03-01T09:00:00.000Z',
  deletedAt: null,
  pageAddress: '',
  address: '',
  title: '',
  text: '',
  textCutFrom: null,
  structured: [],
  price: null,
  money: { price: null, postage: null, worth: null },
  images: [],
  corrections: [],
  answers: [],
  notes: '',
  personId: null,
  fit: null,
  favouriteId: null,
  aim: null,
  windowId: 1,
  tabId: 10,
  capturedAt: '2026-03-01T09:00:00.000Z',
  readBy: 'page',
  problem: null,
  page: 'in-front',
  drafts: {},
  undo: [],
  keptId: null,
  ...changes
})
const front = { windowId: 1, tabId: 10 }

describe('an answer and the page in front', () => {
  it('belong together only when record and browser agree on tab and window', () => {
    expect(placeOf(look({}), front)).toBe('here')
    expect(placeOf(look({}), { windowId: 1, tabId: 11 })).toBe('elsewhere')
    expect(placeOf(look({}), { windowId: 2, tabId: 10 })).toBe('elsewhere')
    expect(placeOf(look({}), { windowId: 1, tabId: null })).toBe('elsewhere')
  })
  it.each(['behind', 'navigated', 'closed', 'unknown'] as const)('%s: never unmarked, whatever tab is in front', (page) => {
    for (const tabId of [10, 11, null]) expect(placeOf(look({ page }), { windowId: 1, tabId })).toBe('elsewhere')
  })
  it('after a restart a look knows no tab, so even a null tab in front does not match it', () => {
    expect(placeOf(look({ page: 'unknown', tabId: null, windowId: null }), { windowId: 1, tabId: null })).toBe('elsewhere')
    expect(placeOf(look({ page: 'in-front', tabId: null, windowId: null }), { windowId: 1, tabId: null })).toBe('elsewhere')
  })
  it('pasted text has no page to be mistaken for', () => {
    expect(placeOf(look({ page: 'none', tabId: null }), front)).toBe('none')
  })
})

describe('the look that is shown beside a window', () => {
  const one = look({})
  const two = look({ id: 'b', tabId: 11, page: 'behind', capturedAt: '2026-03-01T10:00:00.000Z' })
  it('is the one of the tab in front, also when another was read later', () => {
    expect(standingOf([one, two], front)).toMatchObject({ look: { id: 'a' }, place: 'here' })
  })
  it('stays when an unread tab comes forward, and is marked', () => {
    const left = [look({ page: 'behind' }), two]
    const shown = standingOf(left, { windowId: 1, tabId: 99 })
    expect(shown.look).not.toBeNull()
    expect(shown.place).toBe('elsewhere')
  })
  it('comes back with its tab', () => {
    const shown = standingOf([look({ page: 'behind' }), look({ ...two, page: 'in-front' })], { windowId: 1, tabId: 11 })
    expect(shown).toMatchObject({ look: { id: 'b' }, place: 'here' })
  })
  it('is marked after the page navigated in its own tab', () => {
    expect(standingOf([look({ page: 'navigated' })], front)).toMatchObject({ look: { id: 'a' }, place: 'elsewhere' })
  })
  it('is marked after a restart, when windows and tabs have new numbers', () => {
    const restarted = look({ page: 'unknown', tabId: null, windowId: null })
    expect(standingOf([restarted], { windowId: 7, tabId: 70 })).toMatchObject({ look: { id: 'a' }, place: 'elsewhere' })
  })
  it('is nothing when nothing was read', () => {
    expect(standingOf([], front)).toEqual({ look: null, place: 'none' })
  })
  it('is marked while the record lags behind the browser', () => {
    // the tab 11 just came forward; the record of tab 10 still says in-front
    expect(standingOf([one], { windowId: 1, tabId: 11 })).toMatchObject({ look: { id: 'a' }, place: 'elsewhere' })
  })
  it('never shows one garment unmarked beside another, over every mixture of records and tabs', () => {
    const pages = ['in-front', 'behind', 'navigated', 'closed', 'unknown'] as const
    let shownHere = 0
    for (const first of pages) {
      for (const second of pages) {
        for (const tabId of [10, 11, 12, null]) {
          for (const windowId of [1, 2]) {
            const looks = [look({ page: first }), look({ ...two, page: second })]
            const shown = standingOf(looks, { windowId, tabId })
            if (shown.place !== 'here') continue
            shownHere++
            expect(shown.look?.tabId).toBe(tabId)
            expect(shown.look?.windowId).toBe(windowId)
            expect(shown.look?.page).toBe('in-front')
          }
        }
      }
    }
    expect(shownHere).toBeGreaterThan(5)
  })
})

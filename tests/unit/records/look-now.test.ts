/** The one look that a page shows is the one that would be chosen among all of them. */
import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { remove } from '../../../core/records/change.ts'
import { all } from '../../../core/records/find.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { lastLook, lookBeside, lookNow } from '../../../core/records/look-now.ts'
import { lookFor } from '../../../core/records/look-pages.ts'
import { storeLook } from '../../../core/records/looks.ts'
import { PAGE_PLACES } from '../../../core/records/schemas.ts'
import { randomFrom } from '../../law/requests.ts'
import { clock, freshRecords, seen, there } from './fixtures.ts'

test('beside a window it is the one that lookFor finds, over mixtures of windows, tabs and places (seed 3)', async () => {
  const random = randomFrom(3)
  const from = <T>(some: readonly T[]): T => some[Math.floor(random() * some.length)] as T
  const records = await freshRecords()
  const look = await storeLook(records, seen(), clock()())
  const chosen = new Set<string | null>()
  for (let n = 0; n < 60; n++) {
    await records.rows('looks').clear()
    const looks = Array.from({ length: Math.floor(random() * 9) }, (_, place) => ({
      ...{ ...look, id: `k${place}`, createdAt: new Date(Date.UTC(2026, 0, 1, 0, place)).toISOString() },
      capturedAt: new Date(Date.UTC(2026, 1, 1, 0, Math.floor(random() * 1000) * 10 + place)).toISOString(),
      ...{ windowId: from([1, 1, 2, null]), tabId: from([10, 11, 12, null]), page: from(PAGE_PLACES) },
      ...{ deletedAt: random() < 0.15 ? look.createdAt : null, readBy: random() < 0.1 ? ('nobody' as never) : look.readBy }
    }))
    await records.rows('looks').bulkPut(looks)
    const present = await all(records, 'looks')
    for (const windowId of [1, 2, 3])
      for (const tabId of [10, 11, 99, null]) {
        const wanted = lookFor(present, windowId, tabId)?.id ?? null
        expect((await lookBeside(records, windowId, tabId))?.id ?? null).toBe(wanted)
        chosen.add(wanted)
      }
    const newest = present.toSorted((a, b) => (a.capturedAt < b.capturedAt ? 1 : -1))[0]
    expect((await lookBeside(records, null, 10))?.id).toBe(newest?.id)
    expect((await lastLook(records, ({ tabId }) => tabId === 11))?.id).toBe(
      present.filter(({ tabId }) => tabId === 11).toSorted((a, b) => (a.capturedAt < b.capturedAt ? 1 : -1))[0]?.id
    )
  }
  expect(chosen.size).toBeGreaterThan(6)
})

test('one whose listing was removed is kept no longer, however it is asked for', async () => {
  const records = await freshRecords()
  const stamp = clock()
  const { id } = await storeLook(records, seen(), stamp())
  const kept = there(await keepLook(records, id, null, stamp())).after
  expect((await lookNow(records, id))?.keptId).toBe(kept.id)
  await remove(records, 'listingsKept', kept.id, stamp())
  expect((await lookNow(records, id))?.keptId).toBeNull()
  expect((await lookBeside(records, 1, 10))?.keptId).toBeNull()
  expect((await lastLook(records))?.keptId).toBeNull()
  expect(await lookNow(records, 'another')).toBeNull()
})

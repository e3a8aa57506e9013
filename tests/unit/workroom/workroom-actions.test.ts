import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { put } from '../../../core/records/change.ts'
import { all } from '../../../core/records/find.ts'
import { openKept } from '../../../core/records/kept.ts'
import { NEW_PERSON, settingsOf } from '../../../core/records/owned.ts'
import { isSample } from '../../../entrypoints/workroom/sample.ts'
import { type Done, workroomActions } from '../../../entrypoints/workroom/workroom-actions.ts'
import { clock, freshRecords, owned } from '../records/fixtures.ts'

async function workroom() {
  const records = await freshRecords()
  const stamp = clock()
  let last: Done | null = null
  const actions = workroomActions(records, stamp, (done) => {
    last = done
  })
  const undo = async () => (last as Done | null)?.undo?.()
  const count = async () => ({
    people: (await all(records, 'people')).length,
    measures: (await all(records, 'bodyMeasurements')).length,
    garments: (await all(records, 'garmentsOwned')).length,
    listings: (await all(records, 'listingsKept')).length,
    looks: (await all(records, 'looks')).length
  })
  return { records, stamp, actions, undo, count, said: () => (last as Done | null)?.code }
}
const NOTHING = { people: 0, measures: 0, garments: 0, listings: 0, looks: 0 }

test('a first visit is one thing, and is taken back as one', async () => {
  const { records, actions, undo, count, said } = await workroom()
  await actions.meet(
    { ...NEW_PERSON, name: 'Me' },
    [
      { measure: 'waistbandGirth', mm: 750, stated: '75' },
      { measure: 'hipGirth', mm: 1000, stated: '100' }
    ],
    null,
    '2026-03-01'
  )
  expect(await count()).toEqual({ ...NOTHING, people: 1, measures: 2 })
  expect((await settingsOf(records)).personId).toBe((await all(records, 'people'))[0]?.id)
  expect(said()).toBe('first.saved.body')
  expect(await undo()).toBe(true)
  expect(await count()).toEqual(NOTHING)
})

test('a garment that is liked becomes the favourite of its kind', async () => {
  const { records, actions, count } = await workroom()
  const { personId: _, favourite: __, ...flannels } = owned()
  await actions.meet({ ...NEW_PERSON, name: 'Me' }, [], flannels, '2026-03-01')
  expect(await count()).toEqual({ ...NOTHING, people: 1, garments: 1 })
  expect((await all(records, 'garmentsOwned'))[0]).toMatchObject({ name: 'Grey flannels', favourite: true })
})

test('the sample is marked throughout, goes in one press with what was made of it, and comes back whole', async () => {
  const { records, stamp, actions, undo, count } = await workroom()
  await actions.addSample('2026-03-01')
  const there = await count()
  expect(there).toMatchObject({ people: 1, garments: 2, listings: 3 })
  const [people, garments, listings] = [
    await all(records, 'people'),
    await all(records, 'garmentsOwned'),
    await all(records, 'listingsKept')
  ]
  for (const { name } of [...people, ...garments]) expect(name).toMatch(/^Sample: /)
  for (const { title, tags } of listings) {
    expect(title).toMatch(/^Sample: /)
    expect(tags).toContain('sample')
  }
  expect([...people, ...garments, ...listings].every(isSample)).toBe(true)
  // opened once, and a garment added to the sample person by hand
  await openKept(records, listings[0]?.id ?? '', stamp())
  const { personId: _, favourite: __, ...flannels } = owned()
  await actions.addGarment(people[0]?.id ?? '', flannels)
  await actions.removeSample()
  expect(await count()).toEqual(NOTHING)
  expect(await undo()).toBe(true)
  expect(await count()).toEqual({ ...there, garments: 3, looks: 1 })
})

test('removing the sample leaves everything else', async () => {
  const { records, actions, count } = await workroom()
  await actions.addSample('2026-03-01')
  await actions.meet({ ...NEW_PERSON, name: 'Me' }, [{ measure: 'hipGirth', mm: 1000, stated: '100' }], null, '2026-03-01')
  await actions.removeSample()
  expect(await count()).toEqual({ ...NOTHING, people: 1, measures: 1 })
  expect((await all(records, 'people'))[0]?.name).toBe('Me')
})

test('marking a favourite taken back: the one that was marked before is marked again', async () => {
  const { records, stamp, actions, undo } = await workroom()
  const old = (await put(records, 'garmentsOwned', owned({ name: 'old', favourite: true }), stamp())).after
  const young = (await put(records, 'garmentsOwned', owned({ name: 'young' }), stamp())).after
  const marked = async () => (await all(records, 'garmentsOwned')).filter(({ favourite }) => favourite).map(({ id }) => id)
  await actions.favourite(young.id, 'young', true)
  expect(await marked()).toEqual([young.id])
  expect(await undo()).toBe(true)
  expect(await marked()).toEqual([old.id])
})

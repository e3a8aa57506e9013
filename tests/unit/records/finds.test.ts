/** Summaries are written with each write to a listing, whoever writes; answers stand while what they stand on stays. */
import 'fake-indexeddb/auto'
import { describe, expect, test, vi } from 'vitest'
import { exportBackup, importBackup } from '../../../core/records/backup.ts'
import { patch, put, remove, undo } from '../../../core/records/change.ts'
import type { Records } from '../../../core/records/database.ts'
import { one } from '../../../core/records/find.ts'
import { findAnswer } from '../../../core/records/find-answer.ts'
import {
  answersOf,
  countFinds,
  countUnreadableFinds,
  everyFind,
  fillSummaries,
  findsSince,
  firstFinds,
  isFilled,
  keepAnswers,
  writtenSoFar
} from '../../../core/records/finds.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { storeLook } from '../../../core/records/looks.ts'
import type { GarmentOwned, ListingKept, Person } from '../../../core/records/schemas.ts'
import { changeListing } from '../../../core/records/shared-fields.ts'
import { areBatched, spreadBatches } from '../../../core/records/spread-summaries.ts'
import { isThere, type SummaryRow, summaryOf, toldMark } from '../../../core/records/summaries.ts'
import { standsOn, wearerMarks } from '../../../core/records/verdicts.ts'
import { clock, freshRecords, owned, seen, there, WREN } from './fixtures.ts'

async function kept(records: Records, stamp = clock()): Promise<ListingKept> {
  const look = await storeLook(records, seen(), stamp())
  return there(await keepLook(records, look.id, null, stamp())).after
}
const summaries = (records: Records) => records.rows('summaries').toArray()
/** Every listing that is there beside its summary, apart from the number of the write. */
async function agree(records: Records): Promise<void> {
  const rows = await records.rows('listingsKept').toArray()
  const beside = await summaries(records)
  expect(beside).toHaveLength(rows.length)
  for (const row of rows) {
    const its = summaryOf(row, 0)
    expect(beside).toContainEqual({ ...its, written: expect.any(Number) })
  }
}

describe('the mark of what an answer stands on', () => {
  test('is another where any of that is another, and the same where it is not of it', async () => {
    const listing = await kept(await freshRecords())
    const told = toldMark(listing)
    const others: Partial<ListingKept> = {
      text: 'Waist 41 cm',
      title: 'Grey kilt',
      structured: ['{}'],
      address: 'https://peg.example/2',
      answers: [{ id: 'a', text: 'Hip 50 cm', at: '2026-03-01T10:00:00.000Z' }],
      corrections: [{ kind: 'skirt' }],
      price: { amount: 9, currency: 'GBP' },
      money: { price: 9, postage: null, worth: null },
      personId: 'somebody',
      fit: 'loose',
      favouriteId: 'g'
    }
    for (const [name, value] of Object.entries(others)) expect(toldMark({ ...listing, [name]: value }), name).not.toBe(told)
    expect(toldMark({ ...listing, status: 'bought', notes: 'hung up', tags: ['red'], revision: 9 })).toBe(told)
  })
})

describe('a summary', () => {
  test('is written with its listing by every kind of write', async () => {
    const records = await freshRecords()
    const stamp = clock()
    const listing = await kept(records, stamp)
    await agree(records)
    await changeListing(records, listing.id, stamp(), () => ({ status: 'asked', notes: 'and the hem?' }))
    await agree(records)
    const gone = there(await remove(records, 'listingsKept', listing.id, stamp()))
    await agree(records)
    expect(await countFinds(records)).toBe(0)
    await undo(records, gone, stamp())
    await agree(records)
    expect(await countFinds(records)).toBe(1)
    await records.rows('listingsKept').bulkPut([
      { ...listing, id: 'b' },
      { ...listing, id: 'c' }
    ])
    await records.rows('listingsKept').put({ id: 'd', title: 7 })
    await agree(records)
    expect([await countFinds(records), await countUnreadableFinds(records)]).toEqual([3, 1])
    await records.rows('listingsKept').delete('b')
    expect(await records.rows('summaries').get('b')).toMatchObject({ state: 'removed' })
    await records.rows('listingsKept').clear()
    expect((await summaries(records)).map((row) => (row as { state: string }).state)).toEqual(['removed', 'removed', 'removed', 'removed'])
  })

  test('is not written where its listing is not', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    const before = await summaries(records)
    await expect(
      records.together('rw', ['listingsKept'], async (records) => {
        await records.rows('listingsKept').put({ ...listing, title: 'another' })
        throw new Error('broken off')
      })
    ).rejects.toThrow('broken off')
    expect(await summaries(records)).toEqual(before)
    await expect(records.rows('listingsKept').add(listing)).rejects.toThrow()
    expect(await summaries(records)).toEqual(before)
  })

  test('of several added at once that of the one that could not be added stays', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    await records
      .rows('listingsKept')
      .bulkAdd([
        { ...listing, title: 'never written' },
        { ...listing, id: 'b' }
      ])
      .catch(() => undefined)
    const titles = (await summaries(records)).map((row) => (row as { title: string }).title)
    expect(titles).not.toContain('never written')
  })

  test('comes with a backup, and is in none', async () => {
    const from = await freshRecords()
    await kept(from)
    const file = await exportBackup(from, clock()())
    expect(Object.keys(file.tables)).not.toContain('summaries')
    const to = await freshRecords()
    await importBackup(to, JSON.stringify(file), clock('home')())
    await agree(to)
  })

  test('is made for finds from before there were any, in slices, and each once', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    await records.rows('listingsKept').bulkPut(Array.from({ length: 240 }, (_, n) => ({ ...listing, id: `l${n}` })))
    await records.rows('summaries').clear()
    expect(await isFilled(records)).toBe(false)
    const told: number[] = []
    await fillSummaries(
      records,
      (so) => told.push(so),
      async () => undefined
    )
    expect(told).toEqual([100, 200, 241])
    expect(await isFilled(records)).toBe(true)
    await agree(records)
    await records.rows('summaries').clear()
    await fillSummaries(
      records,
      () => undefined,
      async () => undefined
    )
    expect(await summaries(records)).toEqual([])
  })

  test('made anew is told to who follows, also behind many that came together', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    await records.rows('listingsKept').bulkPut(Array.from({ length: 240 }, (_, n) => ({ ...listing, id: `l${n}` })))
    expect(await areBatched(records)).toBe(true)
    await records.rows('summaries').delete(listing.id)
    const seenSoFar = await writtenSoFar(records)
    await fillSummaries(
      records,
      () => undefined,
      async () => undefined
    )
    expect((await findsSince(records, seenSoFar)).summaries).toContainEqual(expect.objectContaining({ id: listing.id }))
  })

  test('a fill that was left goes on from there, and what is written meanwhile stays as it was written', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    await records
      .rows('listingsKept')
      .bulkPut(Array.from({ length: 150 }, (_, n) => ({ ...listing, id: `l${String(n).padStart(3, '0')}` })))
    await records.rows('summaries').clear()
    const left = new Error('the page was closed')
    const rest = async () => {
      await patch(records, 'listingsKept', 'l001', { title: 'changed meanwhile' }, clock()())
      throw left
    }
    await expect(fillSummaries(records, () => undefined, rest)).rejects.toBe(left)
    await fillSummaries(
      records,
      () => undefined,
      async () => undefined
    )
    await agree(records)
    expect(await records.rows('summaries').get('l001')).toMatchObject({ title: 'changed meanwhile' })
  })
})

describe('reading finds', () => {
  test('the last kept come first, with how many there are; all come in slices; what is written later is told', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    const many = Array.from({ length: 900 }, (_, n) => ({
      ...listing,
      id: `l${n}`,
      keptAt: new Date(Date.UTC(2026, 3, 1, 0, n)).toISOString()
    }))
    await records.rows('listingsKept').bulkPut(many)
    const first = await firstFinds(records, 3)
    expect(first.summaries.map(({ id }) => id)).toEqual(['l899', 'l898', 'l897'])
    expect(first.count).toBe(901)
    const slices: number[] = []
    await everyFind(
      records,
      ({ summaries }) => slices.push(summaries.length),
      () => true
    )
    expect(slices.reduce((sum, one) => sum + one, 0)).toBe(901)
    expect(Math.max(...slices)).toBeLessThanOrEqual(400)
    expect(await findsSince(records, first.written)).toEqual({ summaries: [], verdicts: [] })
    await patch(records, 'listingsKept', 'l5', { notes: 'new' }, clock()())
    expect((await findsSince(records, first.written)).summaries).toMatchObject([{ id: 'l5', notes: 'new' }])
  })
})

describe('many that came at once', () => {
  const many = (listing: ListingKept, count = 620) =>
    Array.from({ length: count }, (_, n) => ({
      ...listing,
      id: `l${String(n).padStart(3, '0')}`,
      keptAt: new Date(Date.UTC(2026, 3, 1, 0, (n * 7) % count)).toISOString()
    }))
  const noRest = async () => undefined
  /** Everything that a list is told, by id: the later of what is told twice. */
  async function told(records: Records): Promise<Map<string, SummaryRow>> {
    const found = new Map<string, SummaryRow>()
    const take = ({ summaries }: { summaries: readonly SummaryRow[] }) => {
      for (const row of summaries) if ((found.get(row.id)?.written ?? 0) <= row.written) found.set(row.id, row)
    }
    await everyFind(records, take, () => true)
    return found
  }
  /** Is each listing told as its summary would be made of it now? */
  async function agreesWithAll(records: Records): Promise<void> {
    const rows = await records.rows('listingsKept').toArray()
    const shown = await told(records)
    for (const row of rows) {
      const its = there(summaryOf(row, 0))
      expect(shown.get(its.id), its.id).toEqual({ ...its, written: expect.any(Number) })
    }
    expect([...shown.values()].filter(isThere)).toHaveLength(await countFinds(records))
  }

  test('their summaries are kept in few rows; a list is told all of them at once, and as many as there are', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    await records.rows('listingsKept').bulkPut(many(listing))
    expect(await records.rows('summaryBatches').count()).toBe(3)
    expect(await summaries(records)).toHaveLength(1)
    await agreesWithAll(records)
    expect(await countFinds(records)).toBe(621)
    const first = await firstFinds(records, 12)
    expect(first.count).toBe(621)
    const byKept = many(listing).toSorted((a, b) => (a.keptAt < b.keptAt ? 1 : -1))
    expect(first.summaries.map(({ id }) => id)).toEqual(byKept.slice(0, 12).map(({ id }) => id))
    expect(await findsSince(records, first.written)).toEqual({ summaries: [], verdicts: [] })
    expect((await findsSince(records, { ...first.written, summaries: first.written.summaries - 1 })).summaries.length).toBeGreaterThan(500)
  })

  test('spread, each is in its place, as it was told; left between two batches, nothing is lost and it goes on', async () => {
    const records = await freshRecords()
    await records.rows('listingsKept').bulkPut(many(await kept(records)))
    const before = await told(records)
    const closed = new Error('the page was closed')
    const rest = vi.fn(async () => {
      throw closed
    })
    await expect(spreadBatches(records, () => undefined, rest)).rejects.toBe(closed)
    expect(await records.rows('summaryBatches').count()).toBe(2)
    expect(await told(records)).toEqual(before)
    expect(await countFinds(records)).toBe(621)
    const so: number[] = []
    await spreadBatches(records, (count) => so.push(count), noRest)
    expect(so).toEqual([250, 370])
    expect(await areBatched(records)).toBe(false)
    expect(await summaries(records)).toHaveLength(621)
    expect(await told(records)).toEqual(before)
    await agree(records)
  })

  test('what is changed, removed or deleted before it is spread stays so, and is told as later', async () => {
    const records = await freshRecords()
    const stamp = clock()
    await records.rows('listingsKept').bulkPut(many(await kept(records)))
    const { written } = await firstFinds(records, 1)
    await patch(records, 'listingsKept', 'l003', { notes: 'changed' }, stamp())
    await remove(records, 'listingsKept', 'l004', stamp())
    await records.rows('listingsKept').delete('l005')
    expect((await findsSince(records, written)).summaries.map(({ id, state }) => [id, state])).toEqual([
      ['l003', 'there'],
      ['l004', 'removed'],
      ['l005', 'removed']
    ])
    await agreesWithAll(records)
    const before = await told(records)
    await spreadBatches(records, () => undefined, noRest)
    expect(await told(records)).toEqual(before)
    expect(await records.rows('summaries').get('l003')).toMatchObject({ notes: 'changed' })
    await agreesWithAll(records)
  })

  test('written anew together, those that are known are told anew, and batches of one write come one after another', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    await records.together('rw', ['listingsKept'], async (records) => {
      await records.rows('listingsKept').bulkPut(many(listing, 300))
      await records.rows('listingsKept').bulkPut(many(listing, 450).map((one) => ({ ...one, notes: 'again' })))
    })
    await agreesWithAll(records)
    await records
      .rows('listingsKept')
      .bulkPut(many(listing, 450).map((one, n) => ({ ...one, notes: 'third', ...(n === 7 ? { status: 'odd' } : {}) })))
    await records.together('rw', ['listingsKept'], async (records) => {
      await records.rows('listingsKept').bulkPut(many(listing, 600).slice(450))
      await patch(records, 'listingsKept', 'l500', { notes: 'in the same act' }, clock()())
    })
    await agreesWithAll(records)
    expect(await countUnreadableFinds(records)).toBe(1)
    await spreadBatches(records, () => undefined, noRest)
    await agreesWithAll(records)
    await agree(records)
  })

  test('a write that is broken off leaves none', async () => {
    const records = await freshRecords()
    const listing = await kept(records)
    const failing = records.together('rw', ['listingsKept'], async (records) => {
      await records.rows('listingsKept').bulkPut(many(listing))
      throw new Error('broken off')
    })
    await expect(failing).rejects.toThrow('broken off')
    expect(await areBatched(records)).toBe(false)
    expect(await countFinds(records)).toBe(1)
  })
})

describe('a kept answer', () => {
  const body = { personId: 'p', stated: '', takenOn: '2026-03-01' }
  async function world() {
    const records = await freshRecords()
    const stamp = clock()
    const person = (await put(records, 'people', WREN, stamp(), 'p')).after
    const measure = (await put(records, 'bodyMeasurements', { ...body, measure: 'waistbandGirth', mm: 760 }, stamp())).after
    const garment = (await put(records, 'garmentsOwned', owned(), stamp())).after
    const listing = await kept(records, stamp)
    const wardrobe = { people: [person], measures: [measure], garments: [garment], settings: { theme: 'system' as const, personId: 'p' } }
    return { records, stamp, person, measure, garment, listing, wardrobe }
  }

  test('stands on the person, the body, the garments of its kind, the listing and the engine, and on nothing else', async () => {
    const { listing, wardrobe, person, measure, garment } = await world()
    const of = (its = wardrobe, one: ListingKept = listing, engine = 'e') =>
      standsOn(toldMark(one), wearerMarks(its, engine)(one.personId, 'trousers'))
    const now = of()
    const otherPerson = (changes: Partial<Person>) => of({ ...wardrobe, people: [{ ...person, ...changes }] })
    const otherGarment = (changes: Partial<GarmentOwned>) => of({ ...wardrobe, garments: [{ ...garment, ...changes }] })
    // what it stands on
    expect(otherPerson({ fit: 'loose' })).not.toBe(now)
    expect(otherPerson({ means: { level: 4, tailor: false } })).not.toBe(now)
    expect(otherPerson({ currency: 'EUR' })).not.toBe(now)
    expect(otherPerson({ limits: { 'leg-taper': 0 } })).not.toBe(now)
    expect(of({ ...wardrobe, measures: [{ ...measure, mm: 770 }] })).not.toBe(now)
    expect(of({ ...wardrobe, measures: [] })).not.toBe(now)
    expect(otherGarment({ measures: [] })).not.toBe(now)
    expect(otherGarment({ cut: { rise: 'low' } })).not.toBe(now)
    expect(of(wardrobe, { ...listing, corrections: [{ kind: 'skirt' }] })).not.toBe(now)
    expect(of(wardrobe, { ...listing, text: `${listing.text} ` })).not.toBe(now)
    expect(of(wardrobe, { ...listing, fit: 'loose' })).not.toBe(now)
    expect(of(wardrobe, { ...listing, money: { price: 3, postage: null, worth: null } })).not.toBe(now)
    expect(of(wardrobe, listing, 'another engine')).not.toBe(now)
    expect(of({ ...wardrobe, people: [] })).not.toBe(now)
    // what it does not
    expect(otherPerson({ name: 'Lark', revision: 9, updatedAt: '2027-01-01T00:00:00.000Z' })).toBe(now)
    expect(otherGarment({ name: 'other', notes: 'worn' })).toBe(now)
    expect(of({ ...wardrobe, garments: [garment, { ...garment, id: 'shirt', kind: 'shirt' }] })).toBe(now)
    expect(of({ ...wardrobe, settings: { theme: 'dark' as never, personId: 'p' } })).toBe(now)
    expect(of(wardrobe, { ...listing, status: 'asked', notes: 'n', tags: ['t'], picture: null, aim: 'tailor', revision: 7 })).toBe(now)
  })

  test('is kept with its find, and not where the listing was changed while it was worked out', async () => {
    const { records, stamp, listing, wardrobe } = await world()
    const answer = findAnswer(listing, wardrobe, { units: 'cm' })
    expect(answer.brief).not.toBeNull()
    const answered = { ...answer, told: toldMark(listing), of: 'o', worded: 'cm en GBP' }
    await keepAnswers(records, [answered])
    expect((await findsSince(records, { summaries: 0, verdicts: 0 })).verdicts).toMatchObject([
      { id: listing.id, of: 'o', brief: answer.brief }
    ])
    expect(await answersOf(records, [listing.id])).toEqual([{ id: listing.id, of: 'o', worded: 'cm en GBP', answer: answer.answer }])
    await changeListing(records, listing.id, stamp(), () => ({ fit: 'loose' }))
    await keepAnswers(records, [{ ...answered, of: 'late' }])
    expect(await answersOf(records, [listing.id])).toMatchObject([{ of: 'o' }])
    const now = there(await one(records, 'listingsKept', listing.id))
    await keepAnswers(records, [{ ...answered, told: toldMark(now), of: 'new' }])
    expect(await answersOf(records, [listing.id])).toMatchObject([{ of: 'new' }])
  })
})

test('what is worked out for a find is told apart from what fails: nothing to reckon is an answer, too', async () => {
  const records = await freshRecords()
  const listing = await kept(records)
  const nobody = { people: [], measures: [], garments: [], settings: { theme: 'system' as const, personId: null } }
  vi.spyOn(console, 'error')
  expect(findAnswer(listing, nobody, { units: 'cm' })).toEqual({ id: listing.id, kind: 'trousers', brief: null, jobs: [], answer: null })
  expect(console.error).not.toHaveBeenCalled()
  vi.restoreAllMocks()
})

/** The finds as the workroom holds them, and what of their answers is worked out anew: only what is stale, rows in view first, and it can be stopped. */
import 'fake-indexeddb/auto'
import { afterEach, expect, test, vi } from 'vitest'
import { patch, put } from '../../../core/records/change.ts'
import type { Records } from '../../../core/records/database.ts'
import type { FindTold } from '../../../core/records/find-answer.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { storeLook } from '../../../core/records/looks.ts'
import type { Wardrobe } from '../../../core/records/request-for.ts'
import type { ListingKept } from '../../../core/records/schemas.ts'
import { areBatched } from '../../../core/records/spread-summaries.ts'
import { wearerMarks } from '../../../core/records/verdicts.ts'
import { wholeWardrobe } from '../../../entrypoints/view/use-records.ts'
import { AnswerFinds, isFresh, type Progress } from '../../../entrypoints/workroom/answer-finds.ts'
import { answerOrNone } from '../../../entrypoints/workroom/answer-or-none.ts'
import { type AskFinds, FindsApart } from '../../../entrypoints/workroom/finds-apart.ts'
import { FindsHeld, type FindsNow } from '../../../entrypoints/workroom/finds-held.ts'
import { findShown } from '../../../entrypoints/workroom/use-finds.ts'
import { clock, freshRecords, seen, there, WREN } from '../records/fixtures.ts'

vi.mock('wxt/browser', () => ({ browser: {} }))
const ends: (() => void)[] = []
afterEach(() => {
  for (const end of ends.splice(0)) end()
  vi.restoreAllMocks()
})

const WORDING = { units: 'cm' as const, language: 'en', currency: 'GBP' }

async function world(count: number) {
  const records = await freshRecords()
  const stamp = clock()
  await put(records, 'people', WREN, stamp(), 'p')
  await put(
    records,
    'bodyMeasurements',
    { personId: 'p', measure: 'waistbandGirth', mm: 760, stated: '76', takenOn: '2026-03-01' },
    stamp(),
    'm'
  )
  const look = await storeLook(records, seen(), stamp())
  const listing = there(await keepLook(records, look.id, null, stamp())).after
  const many = Array.from({ length: count }, (_, n): ListingKept => {
    const at = new Date(Date.UTC(2026, 3, 1, 0, n)).toISOString()
    return { ...listing, id: `l${String(n).padStart(4, '0')}`, createdAt: at, keptAt: at, title: `find ${n}` }
  })
  await records.rows('listingsKept').delete(listing.id)
  await records.rows('listingsKept').bulkPut(many)
  return { records, stamp, wardrobe: await wholeWardrobe(records) }
}

/** The finds of these records, followed; and a wait until they are as they should be. */
function held(records: Records) {
  let now: FindsNow | null = null
  const told: FindsNow[] = []
  const its = new FindsHeld(
    records,
    (next) => {
      now = next
      told.push(next)
    },
    (error) => {
      throw error
    }
  )
  ends.push(() => its.stop())
  const is = (passes: (now: FindsNow) => boolean) => vi.waitFor(() => expect(now !== null && passes(now)).toBe(true), { timeout: 10_000 })
  return { told, is, now: () => there(now) }
}

/** Works answers out as the worker would, and writes down what was asked. */
function asking() {
  const asked: string[] = []
  const ask: AskFinds = async (finds, wardrobe, options) => {
    asked.push(...finds.map(({ id }) => id))
    return Promise.all(finds.map((find: FindTold) => answerOrNone(find, wardrobe, options)))
  }
  return { asked, ask }
}

async function answered(records: Records, wardrobe: Wardrobe, finds: ReturnType<typeof held>, ask: AskFinds) {
  const progress: Progress[] = []
  const answering = new AnswerFinds(records, ask, (now) => progress.push(now))
  ends.push(() => answering.end())
  const wearer = wearerMarks(wardrobe, 'engine')
  answering.want({ finds: finds.now().finds, wardrobe, wearer, wording: WORDING })
  return { answering, progress, wearer }
}

test('the last kept are told at once and the rest after; each once, oldest first', async () => {
  const { records } = await world(120)
  const finds = held(records)
  await finds.is(({ isWhole }) => isWhole)
  expect(finds.told[0]).toMatchObject({ count: 120, isWhole: false })
  expect(finds.told[0]?.finds).toHaveLength(12)
  expect(finds.told[0]?.finds.at(-1)?.summary.id).toBe('l0119')
  const ids = finds.now().finds.map(({ summary }) => summary.id)
  expect(ids).toEqual(ids.toSorted())
  expect(ids).toHaveLength(120)
})

test('what is written, removed and brought in by the hundred is followed', async () => {
  const { records, stamp } = await world(3)
  const finds = held(records)
  await finds.is(({ isWhole }) => isWhole)
  await patch(records, 'listingsKept', 'l0001', { status: 'asked' }, stamp())
  await finds.is((now) => now.byId.get('l0001')?.summary.status === 'asked')
  const untouched = finds.now().byId.get('l0000')
  await patch(records, 'listingsKept', 'l0001', { deletedAt: '2026-05-01T00:00:00.000Z' } as never, stamp())
  await finds.is(({ count }) => count === 2)
  expect(finds.now().byId.get('l0000')).toBe(untouched)
  const row = there(await records.rows('listingsKept').get('l0000')) as ListingKept
  await records.rows('listingsKept').bulkPut(Array.from({ length: 700 }, (_, n) => ({ ...row, id: `m${n}` })))
  await finds.is(({ count, isWhole }) => count === 702 && isWhole)
  expect(finds.now().finds).toHaveLength(702)
})

test('many that came at once are all shown before their summaries are in place; then each is, and its answer can be kept', async () => {
  const { records, stamp } = await world(700)
  expect(await records.rows('summaries').count()).toBe(1)
  const finds = held(records)
  await finds.is(({ isWhole }) => isWhole)
  expect(finds.told[0]).toMatchObject({ count: 700 })
  expect(finds.told[0]?.finds.at(-1)?.summary.id).toBe('l0699')
  const whole = finds.told.find(({ isWhole }) => isWhole)
  expect(whole?.finds).toHaveLength(700)
  // changed while they wait for it, or are brought to it
  await patch(records, 'listingsKept', 'l0690', { notes: 'meanwhile' }, stamp())
  await finds.is(({ filled, byId }) => filled === null && byId.get('l0690')?.summary.notes === 'meanwhile')
  expect(finds.told.some(({ filled }) => filled !== null)).toBe(true)
  expect(await areBatched(records)).toBe(false)
  expect(await records.rows('summaries').count()).toBe(701)
  expect(await records.rows('summaries').get('l0690')).toMatchObject({ notes: 'meanwhile' })
  expect(finds.now().finds).toHaveLength(700)
})

test('finds from before there were summaries are not taken for none: they come as they are made ready', async () => {
  const { records } = await world(230)
  await records.rows('summaries').clear()
  const finds = held(records)
  await finds.is(() => true)
  expect(finds.told[0]).toMatchObject({ count: 230, isWhole: false, filled: 0 })
  await finds.is(({ isWhole, filled }) => isWhole && filled === null)
  expect(finds.now().finds).toHaveLength(230)
})

test('answers are worked out once; opened again, nothing is; changed, only what stands on it', async () => {
  const { records, stamp, wardrobe } = await world(20)
  const finds = held(records)
  await finds.is(({ isWhole }) => isWhole)
  const first = asking()
  const { progress, wearer } = await answered(records, wardrobe, finds, first.ask)
  await finds.is((now) => now.finds.every((find) => isFresh(find, wearer)))
  expect(first.asked.toSorted()).toEqual(finds.now().finds.map(({ summary }) => summary.id))
  expect(progress.at(-1)).toEqual({ left: 0, of: 0, isStopped: false })
  expect(Math.max(...progress.map(({ of }) => of))).toBe(20)

  const again = held(records)
  await again.is(({ isWhole }) => isWhole)
  const second = asking()
  await answered(records, await wholeWardrobe(records), again, second.ask)
  await new Promise((rested) => setTimeout(rested, 50))
  expect(second.asked).toEqual([])

  await patch(records, 'listingsKept', 'l0003', { status: 'asked', notes: 'n' }, stamp())
  await patch(records, 'listingsKept', 'l0007', { corrections: [{ add: 'hip', mm: 1010, source: 'seller' }] }, stamp())
  await again.is(({ byId }) => byId.get('l0007')?.summary.written !== finds.now().byId.get('l0006')?.summary.written)
  const third = asking()
  await answered(records, await wholeWardrobe(records), again, third.ask)
  await vi.waitFor(() => expect(third.asked).toEqual(['l0007']))
})

test('a stale answer is shown as none: not for another body, not for another figure, not by another engine', async () => {
  const { records, stamp, wardrobe } = await world(2)
  const finds = held(records)
  await finds.is(({ isWhole }) => isWhole)
  const { ask } = asking()
  const { wearer } = await answered(records, wardrobe, finds, ask)
  await finds.is((now) => now.finds.every((find) => isFresh(find, wearer)))
  const [find] = finds.now().finds
  const shown = (its = there(find), marks = wearer) => findShown(its, isFresh(its, marks), 'GBP')
  expect(shown().brief?.verdict).toBe(there(find).verdict?.brief?.verdict)
  expect(shown(there(find), wearerMarks(wardrobe, 'another engine')).brief).toBeNull()
  await patch(records, 'bodyMeasurements', 'm', { mm: 790 }, stamp())
  expect(shown(there(find), wearerMarks(await wholeWardrobe(records), 'engine')).brief).toBeNull()
  await patch(records, 'listingsKept', 'l0000', { fit: 'loose' }, stamp())
  await finds.is(({ byId }) => byId.get('l0000')?.summary.told !== there(find).summary.told)
  expect(shown(there(finds.now().byId.get('l0000'))).brief).toBeNull()
})

test('rows in view go first; stopped, nothing more is asked; gone on, it is finished', async () => {
  const { records, wardrobe } = await world(30)
  const finds = held(records)
  await finds.is(({ isWhole }) => isWhole)
  const { asked, ask } = asking()
  let isFirst = true
  let answering: AnswerFinds | null = null
  const slowly: AskFinds = async (...given) => {
    const answers = await ask(...given)
    if (isFirst) answering?.see(['l0025', 'l0026'], [])
    else answering?.stop()
    isFirst = false
    return answers
  }
  const begun = await answered(records, wardrobe, finds, slowly)
  answering = begun.answering
  await vi.waitFor(() => expect(begun.progress.at(-1)?.isStopped).toBe(true))
  await new Promise((rested) => setTimeout(rested, 50))
  expect(asked.slice(6)).toEqual(['l0025', 'l0026'])
  expect(begun.progress.at(-1)).toEqual({ left: 22, of: 30, isStopped: true })
  answering = null
  begun.answering.goOn()
  await finds.is((now) => now.finds.every((find) => isFresh(find, begun.wearer)))
  expect(new Set(asked).size).toBe(30)
})

test('what can’t be kept is not asked for over and over', async () => {
  const { records, wardrobe } = await world(20)
  const finds = held(records)
  await finds.is(({ isWhole }) => isWhole)
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw Object.assign(new Error(''), { name: 'QuotaExceededError' })
  })
  const { asked, ask } = asking()
  const { progress } = await answered(records, wardrobe, finds, ask)
  await vi.waitFor(() => expect(progress.at(-1)?.isStopped).toBe(true))
  await new Promise((rested) => setTimeout(rested, 50))
  expect(asked).toHaveLength(6)
})

test('without a worker, or where it breaks, the page works answers out itself', async () => {
  const { records, wardrobe } = await world(2)
  const rows = (await records.rows('listingsKept').toArray()) as ListingKept[]
  const wanted = await Promise.all(rows.map((row) => answerOrNone(row, wardrobe, WORDING)))
  expect(await new FindsApart(() => null).ask(rows, wardrobe, WORDING)).toEqual(wanted)
  const listeners = new Map<string, () => void>()
  const broken = {
    postMessage: () => setTimeout(() => listeners.get('error')?.()),
    addEventListener: (kind: string, listener: unknown) => void listeners.set(kind, listener as () => void),
    terminate: vi.fn()
  }
  const apart = new FindsApart(() => broken)
  expect(await apart.ask(rows, wardrobe, WORDING)).toEqual(wanted)
  expect(broken.terminate).toHaveBeenCalledOnce()
})

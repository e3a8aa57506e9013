/** The work on a garment that was bought: what each act changes, and what is learnt of it. */
import 'fake-indexeddb/auto'
import { describe, expect, test } from 'vitest'
import type { Plan } from '../../../core/plan/plan.ts'
import type { Correction } from '../../../core/reading/reading.ts'
import type { ReckonRequest } from '../../../core/reckon.ts'
import { one } from '../../../core/records/find.ts'
import { keepLook } from '../../../core/records/kept.ts'
import { storeLook } from '../../../core/records/looks.ts'
import type { Work } from '../../../core/records/schemas.ts'
import { beginSheet, finishWork, noteStep, tickStep } from '../../../core/records/work.ts'
import { asListed, ownFigures, plansOf, sewnOf } from '../../../core/records/work-learnt.ts'
import { clock, freshRecords, seen, there } from './fixtures.ts'

const request: ReckonRequest = { garment: { kind: 'trousers', measures: [] }, means: { level: 3, tailor: false } }

async function bought() {
  const records = await freshRecords()
  const stamp = clock()
  const look = await storeLook(records, seen(), stamp())
  const { id } = there(await keepLook(records, look.id, null, stamp())).after
  const work = async () => (await one(records, 'listingsKept', id))?.work
  return { records, stamp, id, work }
}

describe('the sheet', () => {
  test('is begun from a request and a plan, and made anew with its ticks and notes', async () => {
    const { records, stamp, id, work } = await bought()
    await beginSheet(records, id, { request, plan: null }, stamp())
    const nothing = { ticked: {}, notes: {}, minutes: null, result: [], finishedAt: null }
    expect(await work()).toEqual({ ...nothing, sheet: { request, plan: null, begunAt: '2026-03-01T09:02:00.000Z' } })
    await tickStep(records, id, 'mark', true, stamp())
    await noteStep(records, id, 'mark', 'chalk', stamp())
    await beginSheet(records, id, { request, plan: 'tailor' }, stamp())
    expect(await work()).toEqual({
      ...nothing,
      ticked: { mark: '2026-03-01T09:03:00.000Z' },
      notes: { mark: 'chalk' },
      sheet: { request, plan: 'tailor', begunAt: '2026-03-01T09:05:00.000Z' }
    })
  })

  test('a step is ticked, and not done after all; a note is changed, and taken away by blanks; the others stay', async () => {
    const { records, stamp, id, work } = await bought()
    await tickStep(records, id, 'pin', true, stamp())
    await tickStep(records, id, 'sew', true, stamp())
    await noteStep(records, id, 'pin', 'by the seam', stamp())
    await noteStep(records, id, 'sew', ' twice ', stamp())
    expect(await work()).toMatchObject({ sheet: null, notes: { pin: 'by the seam', sew: ' twice ' } })
    await tickStep(records, id, 'pin', false, stamp())
    await noteStep(records, id, 'pin', ' \n', stamp())
    expect(await work()).toMatchObject({ ticked: { sew: '2026-03-01T09:03:00.000Z' }, notes: { sew: ' twice ' } })
    expect((await work())?.ticked).not.toHaveProperty('pin')
    expect((await work())?.notes).not.toHaveProperty('pin')
  })

  test('is finished with what came of it, and not finished after all with that kept', async () => {
    const { records, stamp, id, work } = await bought()
    const outcome = { minutes: 95, result: [{ point: 'waist' as const, mm: 780 }] }
    await finishWork(records, id, outcome, stamp())
    expect(await work()).toMatchObject({ ...outcome, sheet: null, finishedAt: '2026-03-01T09:02:00.000Z' })
    await finishWork(records, id, null, stamp())
    expect(await work()).toMatchObject({ ...outcome, finishedAt: null })
    expect(await finishWork(records, 'nowhere', null, stamp())).toBeNull()
  })
})

const corrections: Correction[] = [
  { kind: 'jeans' },
  { add: 'waist', mm: 800, source: 'own' },
  { add: 'hip', mm: 1000, source: 'seller' },
  { tried: { point: 'thigh', shortMm: 10 } }
]

test('one’s own figures stand apart from what the listing tells', () => {
  expect(ownFigures(corrections)).toEqual([{ point: 'waist', mm: 800 }])
  expect(asListed(corrections)).toEqual([corrections[0], corrections[2]])
})

test('the plans for a sheet are reckoned without chances', () => {
  const reckoned = plansOf({ ...request, garment: { kind: 'trousers', measures: [{ point: 'waist', mm: 800, source: 'own' }] } }, 'cm')
  expect(reckoned.chance).toBeNull()
})

describe('a pace is learnt', () => {
  const own = { aim: 'least-work' } as Plan
  const finished: Work = {
    sheet: { request, plan: 'closest-fit', begunAt: '2026-03-01T09:00:00.000Z' },
    ticked: {},
    notes: {},
    minutes: 95,
    result: [],
    finishedAt: '2026-03-02T09:00:00.000Z'
  }

  test('of what was finished by one’s own hands, from the plan of its sheet', () => {
    const asked: unknown[] = []
    const planOf = (...given: unknown[]): Plan => {
      asked.push(given)
      return own
    }
    expect(sewnOf([{ work: finished }], planOf)).toEqual([{ request, plan: own, ownMinutes: 95 }])
    expect(asked).toEqual([[request, 'closest-fit']])
  })

  test.each([
    ['nothing is begun', null, own],
    ['it is left out', undefined, own],
    ['it is not finished', { ...finished, finishedAt: null }, own],
    ['it has no sheet', { ...finished, sheet: null }, own],
    ['its minutes are not said', { ...finished, minutes: null }, own],
    ['there is no plan', finished, null],
    ['a tailor did it', finished, { aim: 'tailor' } as Plan]
  ])('and not where %s', (_, work, plan) => {
    expect(sewnOf([work === undefined ? {} : { work }], () => plan)).toEqual([])
  })
})

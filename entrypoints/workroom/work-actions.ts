/** What is done on the page of the work on a garment, each act saved at once, with the way back. */
import type { WorkActions } from '../../components/workroom/work/work-shown.ts'
import type { PointId } from '../../core/ids/points.ts'
import type { Correction } from '../../core/reading/reading.ts'
import type { ReckonRequest } from '../../core/reckon.ts'
import { type Change, patch } from '../../core/records/change.ts'
import type { Records } from '../../core/records/database.ts'
import { isOwnFigure } from '../../core/records/own-figure.ts'
import type { Person } from '../../core/records/schemas.ts'
import { changeListing } from '../../core/records/shared-fields.ts'
import { there } from '../../core/records/trouble.ts'
import { beginSheet, finishWork, noteStep, tickStep } from '../../core/records/work.ts'
import { act, backListing, backOne, type Done, type Place } from './acts.ts'

export interface WorkOf {
  listingId: string
  request: ReckonRequest
  plan: Parameters<typeof beginSheet>[2]['plan']
  person: Person | null
}

export function workActions(place: Place, { listingId, request, plan, person }: WorkOf): Omit<WorkActions, 'onPaper'> {
  const { stamp } = place
  const change = (code: string, values: Done['values'], work: (records: Records) => Promise<Change<'listingsKept'> | null>) =>
    void act(place, async (records) => ({ code, values, undo: backListing(place, there(await work(records))) }))
  const correct = (code: string, point: PointId, corrected: (corrections: Correction[]) => Correction[]) =>
    change(code, { point }, (records) =>
      changeListing(records, listingId, stamp(), ({ corrections }) => ({ corrections: corrected(corrections) }))
    )
  const without = (corrections: readonly Correction[], point: PointId) =>
    corrections.filter((one) => !(isOwnFigure(one) && one.add === point))
  const untried = (corrections: readonly Correction[], point: PointId) =>
    corrections.filter((one) => !('tried' in one && one.tried.point === point))
  // ticks and notes are many and small: they are saved without a word, and taken back as they were made
  const quietly = (work: (records: Records) => Promise<unknown>) => void place.saving.run(async (records) => there(await work(records)))
  return {
    onArrived: (point, mm) => correct('work.done.arrived', point, (all) => [...without(all, point), { add: point, mm, source: 'own' }]),
    onForget: (point) => correct('work.done.forgotten', point, (all) => without(all, point)),
    onTried: (tried) => correct('work.done.tried', tried.point, (all) => [...untried(all, tried.point), { tried }]),
    onUntried: ({ point }) => correct('work.done.untried', point, (all) => untried(all, point)),
    onBegin: () => change('work.done.begun', {}, (records) => beginSheet(records, listingId, { request, plan }, stamp())),
    onTick: (step, isDone) => quietly((records) => tickStep(records, listingId, step, isDone, stamp())),
    onNote: (step, note) => quietly((records) => noteStep(records, listingId, step, note, stamp())),
    onFinish: (outcome) =>
      change(outcome === null ? 'work.done.unfinished' : 'work.done.finished', {}, (records) =>
        finishWork(records, listingId, outcome, stamp())
      ),
    onSellers: (sellerSdMm) => {
      if (person === null) return
      void act(place, async (records) => {
        const changed = there(await patch(records, 'people', person.id, { sellerSdMm }, stamp()))
        return { code: 'work.done.sellers', values: {}, undo: backOne(place, changed) }
      })
    },
    onPace: (pace) => {
      if (person === null) return
      void act(place, async (records) => {
        const changed = there(await patch(records, 'people', person.id, { means: { ...person.means, pace } }, stamp()))
        return { code: 'work.done.pace', values: { pace }, undo: backOne(place, changed) }
      })
    }
  }
}

/** The work on a garment that was bought: the sheet that is sewn from, its steps ticked off, and what came of it. Each gives the change, to be taken back. */
import type { PointId } from '../ids/points.ts'
import type { ReckonRequest } from '../plan/request.ts'
import type { Change } from './change.ts'
import type { Records } from './database.ts'
import type { Look, Stamp, Work } from './schemas.ts'
import { changeListing } from './shared-fields.ts'

type Changed = Promise<Change<'listingsKept'> | null>

const NOT_BEGUN: Work = { sheet: null, ticked: {}, notes: {}, minutes: null, result: [], finishedAt: null }

/** null: there is no such listing. */
const changeWork = (records: Records, listingId: string, stamp: Stamp, change: (work: Work) => Work): Changed =>
  changeListing(records, listingId, stamp, ({ work }) => ({ work: change(work ?? NOT_BEGUN) }))

/** Begins the sheet, or makes it anew from what is known now: ticks and notes of steps stay. `plan` is the plan chosen; null: the advised one. */
export const beginSheet = (
  records: Records,
  listingId: string,
  from: { request: ReckonRequest; plan: Look['aim'] },
  stamp: Stamp
): Changed => changeWork(records, listingId, stamp, (work) => ({ ...work, sheet: { ...from, begunAt: stamp.now } }))

/** A step done, or not done after all. */
export const tickStep = (records: Records, listingId: string, step: string, isDone: boolean, stamp: Stamp): Changed =>
  changeWork(records, listingId, stamp, (work) => {
    const { [step]: _, ...others } = work.ticked
    return { ...work, ticked: isDone ? { ...others, [step]: stamp.now } : others }
  })

/** A note on a step; '' takes it away. */
export const noteStep = (records: Records, listingId: string, step: string, note: string, stamp: Stamp): Changed =>
  changeWork(records, listingId, stamp, (work) => {
    const { [step]: _, ...others } = work.notes
    return { ...work, notes: note.trim() === '' ? others : { ...others, [step]: note } }
  })

export interface Outcome {
  /** null: not said. */
  minutes: number | null
  result: { point: PointId; mm: number }[]
}

/** Finished, with what it took and what it measures now; null: not finished after all. */
export const finishWork = (records: Records, listingId: string, outcome: Outcome | null, stamp: Stamp): Changed =>
  changeWork(records, listingId, stamp, (work) =>
    outcome === null ? { ...work, finishedAt: null } : { ...work, ...outcome, finishedAt: stamp.now }
  )

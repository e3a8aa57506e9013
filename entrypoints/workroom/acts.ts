/** Acts of the workroom: each saved whole, then said, with the way back. */
import { type Change, undo } from '../../core/records/change.ts'
import type { Records } from '../../core/records/database.ts'
import type { Stamp, TableName } from '../../core/records/schemas.ts'
import { undoListing } from '../../core/records/shared-fields.ts'
import type { Settle } from '../../core/records/three-way.ts'
import type { Values } from '../../core/words/reason.ts'
import type { Saving } from '../view/saving.ts'

export interface Done {
  code: string
  values: Values
  /** null: there is nothing to take back. Answers false where something was changed again since, null where it could not be saved. */
  undo: (() => Promise<boolean | null>) | null
}

/** What every action needs. */
export interface Place {
  stamp: () => Stamp
  done: (done: Done) => void
  saving: Saving
}

/** One act: whole or not at all, and only then said to be done. `form`: what it was made of stands in a form until it is saved. */
export const act = ({ saving, done }: Place, work: (records: Records) => Promise<Done>): Promise<boolean> =>
  saving.run(work, { saved: done })
export const actOfForm = ({ saving, done }: Place, work: (records: Records, settle: Settle) => Promise<Done>): Promise<boolean> =>
  saving.run(work, { saved: done, inForm: true })

/** The way back, itself an act. */
export const back =
  ({ saving }: Place, takeBack: (records: Records) => Promise<boolean>): Done['undo'] =>
  async () => {
    let whole: boolean | null = null
    const saved = await saving.run(takeBack, {
      inForm: true,
      saved: (answer) => {
        whole = answer
      }
    })
    return saved ? whole : null
  }
export const backOne = (place: Place, change: Change<TableName>): Done['undo'] =>
  back(place, async (records) => (await undo(records, change, place.stamp())) !== null)
export const backListing = (place: Place, change: Change<'listingsKept'>): Done['undo'] =>
  back(place, async (records) => (await undoListing(records, change, place.stamp())) !== null)
/** Several changes taken back together, the last first. */
export const backAll = (place: Place, changes: readonly (Change<TableName> | null)[]): Done['undo'] =>
  back(place, async (records) => {
    let whole = true
    for (const change of changes.toReversed()) if (change !== null && (await undo(records, change, place.stamp())) === null) whole = false
    return whole
  })

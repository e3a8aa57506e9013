/** What the workroom's pages do to the records. Each says what it did, and how to take it back. */
import type { GarmentFields, ListingChanges, PersonFields } from '../../components/workroom/shown.ts'
import { type Change, patch, put, remove, undo } from '../../core/records/change.ts'
import type { Records } from '../../core/records/database.ts'
import { where } from '../../core/records/find.ts'
import { markFavourite, setSettings } from '../../core/records/owned.ts'
import type { Stamp, TableName } from '../../core/records/schemas.ts'
import { changeListing, undoListing } from '../../core/records/shared-fields.ts'
import type { BodyMeasureId } from '../../core/wearer/body.ts'
import type { Values } from '../../core/words/reason.ts'
import { addSample, removeSample } from './sample.ts'

export interface Done {
  code: string
  values: Values
  /** null: there is nothing to take back. */
  undo: (() => Promise<boolean>) | null
}

/** What every action needs. */
interface Place {
  records: Records
  stamp: () => Stamp
  done: (done: Done) => void
}

/** Everything that can be done in the workroom, saved at once. */
export function workroomActions(records: Records, stamp: () => Stamp, done: (done: Done) => void) {
  const place = { records, stamp, done }
  return {
    ...peopleActions(place),
    ...bodyActions(place),
    ...garmentActions(place),
    ...listingActions(place),
    ...sampleActions(place)
  }
}
export type WorkroomActions = ReturnType<typeof workroomActions>

type Back = Done['undo']
const back = ({ records, stamp }: Place, change: Change<TableName> | null): Back =>
  change === null ? null : async () => (await undo(records, change, stamp())) !== null
const backListing = ({ records, stamp }: Place, change: Change<'listingsKept'> | null): Back =>
  change === null ? null : async () => (await undoListing(records, change, stamp())) !== null
/** Several changes taken back together, the last first. */
const backAll = ({ records, stamp }: Place, changes: readonly (Change<TableName> | null)[]): Back => {
  return async () => {
    let whole = true
    for (const change of changes.toReversed()) if (change !== null && (await undo(records, change, stamp())) === null) whole = false
    return whole
  }
}

function peopleActions(place: Place) {
  const { records, stamp, done } = place
  return {
    /** The first visit: somebody, with a few measures or a garment that is liked, as one thing to take back. */
    async meet(
      fields: PersonFields,
      measures: readonly { measure: BodyMeasureId; mm: number; stated: string }[],
      liked: GarmentFields | null,
      takenOn: string
    ) {
      const person = await put(records, 'people', fields, stamp())
      const changes: Change<TableName>[] = [person]
      const personId = person.after.id
      for (const one of measures) changes.push(await put(records, 'bodyMeasurements', { ...one, personId, takenOn }, stamp()))
      if (liked !== null) changes.push(await put(records, 'garmentsOwned', { ...liked, personId, favourite: true }, stamp()))
      await setSettings(records, { personId }, stamp())
      const what = liked === null ? { code: 'first.saved.body', values: { name: fields.name, count: measures.length } } : null
      done({ ...(what ?? { code: 'first.saved.garment', values: { name: fields.name } }), undo: backAll(place, changes) })
    },
    async addPerson(fields: PersonFields) {
      const change = await put(records, 'people', fields, stamp())
      await setSettings(records, { personId: change.after.id }, stamp())
      done({ code: 'person.saved', values: { name: fields.name }, undo: back(place, change) })
      return change.after.id
    },
    async editPerson(id: string, fields: Partial<PersonFields>, name: string) {
      const change = await patch(records, 'people', id, fields, stamp())
      done({ code: 'person.saved', values: { name: fields.name ?? name }, undo: back(place, change) })
    },
    async removePerson(id: string, name: string) {
      const change = await remove(records, 'people', id, stamp())
      done({ code: 'person.removed', values: { name }, undo: back(place, change) })
    }
  }
}

function bodyActions(place: Place) {
  const { records, stamp, done } = place
  return {
    /** A second figure of the same day takes the place of the first; earlier days stay. */
    async measured(personId: string, measure: BodyMeasureId, mm: number, stated: string, takenOn: string) {
      const same = (await where(records, 'bodyMeasurements', 'personId', personId)).findLast(
        (one) => one.measure === measure && one.takenOn === takenOn
      )
      const change =
        same === undefined
          ? await put(records, 'bodyMeasurements', { personId, measure, mm, stated, takenOn }, stamp())
          : await patch(records, 'bodyMeasurements', same.id, { mm, stated }, stamp())
      done({ code: 'body.measured', values: { measure, mm }, undo: back(place, change) })
    },
    async removeMeasure(id: string) {
      const change = await remove(records, 'bodyMeasurements', id, stamp())
      if (change === null) return
      const { measure, mm, takenOn } = change.after
      done({ code: 'body.removed', values: { measure, mm, date: takenOn }, undo: back(place, change) })
    }
  }
}

function garmentActions(place: Place) {
  const { records, stamp, done } = place
  return {
    async addGarment(personId: string, fields: GarmentFields) {
      const change = await put(records, 'garmentsOwned', { ...fields, personId, favourite: false }, stamp())
      done({ code: 'wardrobe.saved', values: { name: fields.name }, undo: back(place, change) })
      return change.after.id
    },
    async editGarment(id: string, { name, kind, measures, cloth, cut, notes }: GarmentFields) {
      const also = { ...(cloth === undefined ? {} : { cloth }), ...(cut === undefined ? {} : { cut }) }
      const change = await patch(records, 'garmentsOwned', id, { name, kind, measures, notes, ...also }, stamp())
      done({ code: 'wardrobe.saved', values: { name }, undo: back(place, change) })
    },
    async removeGarment(id: string, name: string) {
      const change = await remove(records, 'garmentsOwned', id, stamp())
      done({ code: 'wardrobe.removed', values: { name }, undo: back(place, change) })
    },
    async favourite(id: string, name: string, on: boolean) {
      const changes = await markFavourite(records, id, on, stamp())
      done({ code: on ? 'wardrobe.marked' : 'wardrobe.unmarked', values: { name }, undo: backAll(place, changes) })
    }
  }
}

function listingActions(place: Place) {
  const { records, stamp, done } = place
  return {
    /** Only what was changed is written: the rest may have been changed in the panel since. */
    async editListing(id: string, { money, ...changes }: ListingChanges, title: string) {
      const change = await changeListing(records, id, stamp(), (listing) => ({
        ...changes,
        ...(money === undefined ? {} : { money: { ...listing.money, ...money } })
      }))
      done({ ...saidOf(changes, title), undo: backListing(place, change) })
    },
    /** A picture as a data address; null takes it away. */
    async setPicture(id: string, picture: string | null, title: string) {
      const change = await changeListing(records, id, stamp(), () => ({ picture }))
      done({ code: picture === null ? 'picture.removed' : 'picture.kept', values: { title }, undo: backListing(place, change) })
    },
    async removeListing(id: string, title: string) {
      const change = await remove(records, 'listingsKept', id, stamp())
      done({ code: 'wishlist.removed', values: { title }, undo: backListing(place, change) })
    }
  }
}

/** What was changed, named where it is one thing. */
function saidOf(changes: Omit<ListingChanges, 'money'>, title: string): Pick<Done, 'code' | 'values'> {
  if (changes.status !== undefined) return { code: 'wishlist.now', values: { title, status: changes.status } }
  return { code: changes.notes === undefined ? 'wishlist.saved' : 'wishlist.noted', values: { title } }
}

function sampleActions(place: Place) {
  const { records, stamp, done } = place
  return {
    async addSample(today: string) {
      await addSample(records, stamp, today)
      done({ code: 'sample.added', values: {}, undo: async () => (await removeSample(records, stamp)).length > 0 })
    },
    async removeSample() {
      const gone = await removeSample(records, stamp)
      done({ code: 'sample.removed', values: {}, undo: backAll(place, gone) })
    }
  }
}

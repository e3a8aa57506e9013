/** What the workroom's pages do to the records. Each says what it did, and how to take it back. */
import type { GarmentFields, ListingChanges, ListingFields, PersonFields, Status } from '../../components/workroom/shown.ts'
import { type Change, patch, put, remove } from '../../core/records/change.ts'
import type { Records } from '../../core/records/database.ts'
import { changesSince, edit } from '../../core/records/edit.ts'
import { where } from '../../core/records/find.ts'
import { markFavourite, setSettings } from '../../core/records/owned.ts'
import type { Fields, Stamp, TableName } from '../../core/records/schemas.ts'
import { changeListing } from '../../core/records/shared-fields.ts'
import { makeSnapshot } from '../../core/records/snapshots.ts'
import { there } from '../../core/records/trouble.ts'
import type { BodyMeasureId } from '../../core/wearer/body.ts'
import { Saving } from '../view/saving.ts'
import { act, actOfForm, back, backAll, backListing, backOne, type Done, type Place } from './acts.ts'
import { addSample, removeSample } from './sample.ts'

export type { Done } from './acts.ts'

/** Everything that can be done in the workroom, saved at once. Each answers whether it was saved; the page's own bar says why not. */
export function workroomActions(records: Records, stamp: () => Stamp, done: (done: Done) => void, saving = new Saving(records)) {
  const place = { stamp, done, saving }
  return {
    ...peopleActions(place),
    ...bodyActions(place),
    ...garmentActions(place),
    ...listingActions(place),
    ...sampleActions(place),
    ...settingsActions(place)
  }
}
export type WorkroomActions = ReturnType<typeof workroomActions>

function peopleActions(place: Place) {
  const { stamp } = place
  return {
    /** The first visit: somebody, with a few measures or a garment that is liked, as one thing to take back. */
    meet: (
      fields: PersonFields,
      measures: readonly { measure: BodyMeasureId; mm: number; stated: string }[],
      liked: GarmentFields | null,
      takenOn: string
    ) =>
      actOfForm(place, async (records) => {
        const person = await put(records, 'people', fields, stamp())
        const changes: Change<TableName>[] = [person]
        const personId = person.after.id
        for (const one of measures) changes.push(await put(records, 'bodyMeasurements', { ...one, personId, takenOn }, stamp()))
        if (liked !== null) changes.push(await put(records, 'garmentsOwned', { ...liked, personId, favourite: true }, stamp()))
        await setSettings(records, { personId }, stamp())
        const what = liked === null ? { code: 'first.saved.body', values: { name: fields.name, count: measures.length } } : null
        return { ...(what ?? { code: 'first.saved.garment', values: { name: fields.name } }), undo: backAll(place, changes) }
      }),
    /** `saved` is told the new person's id. */
    addPerson: (fields: PersonFields, saved: (id: string) => void = () => undefined) => {
      let id = ''
      return actOfForm(place, async (records) => {
        const change = await put(records, 'people', fields, stamp())
        id = change.after.id
        await setSettings(records, { personId: id }, stamp())
        return { code: 'person.saved', values: { name: fields.name }, undo: backOne(place, change) }
      }).then((done) => {
        if (done) saved(id)
        return done
      })
    },
    /** `began`: the person as the fields showed them when they were changed. */
    editPerson: (id: string, mine: Partial<PersonFields>, name: string, began: Partial<PersonFields>) =>
      actOfForm(place, async (records, settle) => {
        const change = await edit(records, 'people', id, { began, mine, settle }, stamp())
        return { code: 'person.saved', values: { name: mine.name ?? name }, undo: backOne(place, change) }
      }),
    /** Something chosen rather than typed: it counts at once, and joins what was changed elsewhere since it was shown as in `began`. */
    choosePerson: (id: string, mine: Partial<PersonFields>, name: string, began: Partial<PersonFields>) =>
      act(place, async (records) => {
        const change = await edit(records, 'people', id, { began, mine, settle: 'mine' }, stamp())
        return { code: 'person.saved', values: { name }, undo: backOne(place, change) }
      }),
    removePerson: (id: string, name: string) =>
      act(place, async (records) => {
        const change = there(await remove(records, 'people', id, stamp()))
        return { code: 'person.removed', values: { name }, undo: backOne(place, change) }
      })
  }
}

function bodyActions(place: Place) {
  const { stamp } = place
  return {
    /** A second figure of the same day takes the place of the first; earlier days stay. */
    measured: (personId: string, measure: BodyMeasureId, mm: number, stated: string, takenOn: string) =>
      actOfForm(place, async (records) => {
        const same = (await where(records, 'bodyMeasurements', 'personId', personId)).findLast(
          (one) => one.measure === measure && one.takenOn === takenOn
        )
        const change =
          same === undefined
            ? await put(records, 'bodyMeasurements', { personId, measure, mm, stated, takenOn }, stamp())
            : there(await patch(records, 'bodyMeasurements', same.id, { mm, stated }, stamp()))
        return { code: 'body.measured', values: { measure, mm }, undo: backOne(place, change) }
      }),
    removeMeasure: (id: string) =>
      act(place, async (records) => {
        const change = there(await remove(records, 'bodyMeasurements', id, stamp()))
        const { measure, mm, takenOn } = change.after
        return { code: 'body.removed', values: { measure, mm, date: takenOn }, undo: backOne(place, change) }
      })
  }
}

function garmentActions(place: Place) {
  const { stamp } = place
  return {
    addGarment: (personId: string, fields: GarmentFields) =>
      actOfForm(place, async (records) => {
        const change = await put(records, 'garmentsOwned', { ...fields, personId, favourite: false }, stamp())
        return { code: 'wardrobe.saved', values: { name: fields.name }, undo: backOne(place, change) }
      }),
    /** `began`: the garment as the form showed it first. */
    editGarment: (id: string, { name, kind, measures, cloth, cut, notes }: GarmentFields, began: GarmentFields) =>
      actOfForm(place, async (records, settle) => {
        const also = { ...(cloth === undefined ? {} : { cloth }), ...(cut === undefined ? {} : { cut }) }
        const mine = { name, kind, measures, notes, ...also }
        const change = await edit(records, 'garmentsOwned', id, { began, mine, settle }, stamp())
        return { code: 'wardrobe.saved', values: { name }, undo: backOne(place, change) }
      }),
    removeGarment: (id: string, name: string) =>
      act(place, async (records) => {
        const change = there(await remove(records, 'garmentsOwned', id, stamp()))
        return { code: 'wardrobe.removed', values: { name }, undo: backOne(place, change) }
      }),
    favourite: (id: string, name: string, on: boolean) =>
      act(place, async (records) => {
        const changes = await markFavourite(records, id, on, stamp())
        return { code: on ? 'wardrobe.marked' : 'wardrobe.unmarked', values: { name }, undo: backAll(place, changes) }
      })
  }
}

function listingActions(place: Place) {
  const { stamp } = place
  return {
    /** Only what was changed is written: the rest may have been changed in the panel since. */
    editListing: (id: string, { money, ...changes }: ListingChanges, title: string, began?: Partial<ListingFields>) =>
      actOfForm(place, async (records, settle) => {
        const change = await changeListing(records, id, stamp(), (listing) => {
          const from = { ...listing, ...began }
          const mine = { ...changes, ...(money === undefined ? {} : { money: { ...from.money, ...money } }) }
          return changesSince<ListingFields>(from, mine, listing, settle)
        })
        return { ...saidOf(changes, title), undo: backListing(place, there(change)) }
      }),
    /** One word chosen in the row: it counts at once. */
    setStatus: (id: string, status: Status, title: string) =>
      act(place, async (records) => {
        const change = await changeListing(records, id, stamp(), () => ({ status }))
        return { ...saidOf({ status }, title), undo: backListing(place, there(change)) }
      }),
    /** A picture as a data address; null takes it away. */
    setPicture: (id: string, picture: string | null, title: string) =>
      act(place, async (records) => {
        const change = await changeListing(records, id, stamp(), () => ({ picture }))
        const code = picture === null ? 'picture.removed' : 'picture.kept'
        return { code, values: { title }, undo: backListing(place, there(change)) }
      }),
    removeListing: (id: string, title: string) =>
      act(place, async (records) => {
        const change = there(await remove(records, 'listingsKept', id, stamp()))
        return { code: 'wishlist.removed', values: { title }, undo: backListing(place, change) }
      })
  }
}

/** What was changed, named where it is one thing. */
function saidOf(changes: Omit<ListingChanges, 'money'>, title: string): Pick<Done, 'code' | 'values'> {
  if (changes.status !== undefined) return { code: 'wishlist.now', values: { title, status: changes.status } }
  return { code: changes.notes === undefined ? 'wishlist.saved' : 'wishlist.noted', values: { title } }
}

function settingsActions(place: Place) {
  const { stamp } = place
  return {
    /** Of everybody: look and language. */
    setLook: (changes: Partial<Pick<Fields<'settings'>, 'theme' | 'language'>>) =>
      act(place, async (records) => {
        await setSettings(records, changes, stamp())
        return { code: 'settings.saved', values: {}, undo: null }
      })
  }
}

function sampleActions(place: Place) {
  const { stamp } = place
  return {
    addSample: (today: string) =>
      act(place, async (records) => {
        await addSample(records, stamp, today)
        return { code: 'sample.added', values: {}, undo: back(place, async (records) => (await removeSample(records, stamp)).length > 0) }
      }),
    removeSample: () =>
      act(place, async (records) => {
        await makeSnapshot(records, 'removing', stamp())
        const gone = await removeSample(records, stamp)
        return { code: 'sample.removed', values: {}, undo: backAll(place, gone) }
      })
  }
}

/**
 * What a look and the listing it is kept as share has one owner: the listing. A look that is kept shows what its listing says,
 * so each change of a shared field is written to both in one transaction, whichever page it was made on, and leaves a step of
 * undo in the look. Nothing else may write a shared field of a look or a listing that is there already.
 */
import { type Change, patch, undo } from './change.ts'
import type { Records } from './database.ts'
import { one, where } from './find.ts'
import { siteOf } from './look-text.ts'
import type { Fields, ListingKept, Look, SharedFields, Stamp, UndoStep } from './schemas.ts'

/** What a look and a kept listing share. */
export const sharedOf = (from: SharedFields): SharedFields => ({
  address: from.address,
  title: from.title,
  text: from.text,
  textCutFrom: from.textCutFrom,
  structured: from.structured,
  price: from.price,
  money: from.money,
  images: from.images,
  corrections: from.corrections,
  answers: from.answers,
  notes: from.notes,
  personId: from.personId,
  fit: from.fit,
  favouriteId: from.favouriteId,
  aim: from.aim
})

/** How many steps can be undone. */
const UNDO_KEPT = 100
export const pushed = (look: Look, step: UndoStep): Look['undo'] => [...look.undo, step].slice(-UNDO_KEPT)

/** The tables that a change of a shared field writes. */
const BOTH_TABLES = ['looks', 'listingsKept'] as const

/** Changes a look, and with it the listing it is kept as. null: there is no such look, or nothing to change. */
export async function changeLook(
  records: Records,
  id: string,
  stamp: Stamp,
  change: (look: Look) => Partial<Fields<'looks'>> | null
): Promise<Change<'looks'> | null> {
  return records.together('rw', BOTH_TABLES, async (records) => {
    const look = await one(records, 'looks', id)
    const changes = look === null ? null : change(look)
    if (look === null || changes === null) return null
    const changed = await patch(records, 'looks', id, changes, stamp)
    const listing = look.keptId === null ? null : await one(records, 'listingsKept', look.keptId)
    if (changed !== null && listing !== null) {
      const names = Object.keys(changes)
      const told = only(sharedOf(changed.after), (name, value) => names.includes(name) && !same(value, listing[name]))
      if (Object.keys(told).length > 0) await writeListing(records, listing.id, told, stamp)
    }
    return changed
  })
}

/** Changes a kept listing, and with it every look that is kept as it. null: there is no such listing. */
export async function changeListing(
  records: Records,
  id: string,
  stamp: Stamp,
  change: (listing: ListingKept) => Partial<Fields<'listingsKept'>>
): Promise<Change<'listingsKept'> | null> {
  return records.together('rw', BOTH_TABLES, async (records) => {
    const listing = await one(records, 'listingsKept', id)
    return listing === null ? null : writeListing(records, id, change(listing), stamp)
  })
}

/** Takes a change of a listing back, its removal too. null: the listing was changed again since, and stays as it is. */
export async function undoListing(records: Records, change: Change<'listingsKept'>, stamp: Stamp): Promise<Change<'listingsKept'> | null> {
  return records.together('rw', BOTH_TABLES, async (records) => {
    const back = await undo(records, change, stamp)
    if (back === null) return null
    const looks = await where(records, 'looks', 'keptId', back.after.id)
    const [latest] = looks.toSorted((a, b) => (a.updatedAt < b.updatedAt ? 1 : -1))
    // while it was removed its look went on alone: what was chosen there since is kept again with it
    if (change.after.deletedAt !== null && latest !== undefined) await writeListing(records, back.after.id, sharedOf(latest), stamp)
    else for (const look of looks) await bringLook(records, look, back.after, stamp, change)
    return back
  })
}

/** A look as its listing says; as it is where they agree. */
export async function bringLook(
  records: Records,
  look: Look,
  listing: ListingKept,
  stamp: Stamp,
  undone: Change<'listingsKept'> | null = null
): Promise<Look> {
  const told = only(sharedOf(listing), (name, value) => !same(value, look[name]))
  const names = Object.keys(told)
  if (names.length === 0) return look
  // what was half typed for a field is older than what the field says now; it can be had back by undo
  const typed = look.drafts.notes
  const halfTyped = names.includes('notes') && typed !== undefined ? { notes: typed } : {}
  const before = { ...only(sharedOf(look), (name) => names.includes(name)), ...halfTyped }
  const undoSteps = undone !== null && isStepOf(look.undo.at(-1), undone) ? look.undo.slice(0, -1) : pushed(look, before)
  const drafts = Object.fromEntries(Object.entries(look.drafts).filter(([name]) => !names.includes(name)))
  return (await patch(records, 'looks', look.id, { ...told, drafts, undo: undoSteps }, stamp))?.after ?? look
}

async function writeListing(
  records: Records,
  id: string,
  changes: Partial<Fields<'listingsKept'>>,
  stamp: Stamp
): Promise<Change<'listingsKept'> | null> {
  const site = changes.address === undefined ? {} : { site: siteOf(changes.address) }
  const changed = await patch(records, 'listingsKept', id, { ...changes, ...site }, stamp)
  if (changed !== null) for (const look of await where(records, 'looks', 'keptId', id)) await bringLook(records, look, changed.after, stamp)
  return changed
}

/** Is this step of a look's undo the one that this change of its listing left there? */
const isStepOf = (step: UndoStep | undefined, { before, after }: Change<'listingsKept'>): boolean =>
  step !== undefined &&
  before !== null &&
  same(
    step,
    only(sharedOf(before), (name, value) => !same(value, after[name]))
  )

function only(fields: SharedFields, wanted: (name: keyof SharedFields, value: unknown) => boolean): Partial<SharedFields> {
  const names = Object.keys(sharedOf(fields)) as (keyof SharedFields)[]
  return Object.fromEntries(names.filter((name) => wanted(name, fields[name])).map((name) => [name, fields[name]]))
}

/** Stored values are plain data, written with their fields in one order. */
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

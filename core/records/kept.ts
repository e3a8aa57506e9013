/** Keeping a look as a listing, and opening a kept listing again. */
import type { Reckoning, ReckonRequest } from '../reckon.ts'
import { type Change, patch, put } from './change.ts'
import type { Records } from './database.ts'
import { one, where } from './find.ts'
import { siteOf } from './look-text.ts'
import type { Fields, ListingKept, Look, Stamp } from './schemas.ts'
import { bringLook, changeListing, changeLook, pushed, sharedOf } from './shared-fields.ts'

/** The answer in short, as kept beside the request. */
export function verdictThen(reckoning: Reckoning, at: string): ListingKept['verdictThen'] {
  const advised = reckoning.plans[0]
  return {
    at,
    verdict: reckoning.verdict,
    chance: reckoning.chance,
    level: advised?.level ?? null,
    minutes: advised?.minutes ?? null,
    spend: reckoning.worth?.spend ?? null,
    jobs: advised?.alterations.map((job) => job.id) ?? [],
    conditions: reckoning.conditions.map(({ text: _, ...condition }) => condition),
    chanceIf: reckoning.chanceIf
  }
}

/** The request and the answer at the time of keeping; null when nothing could be reckoned. */
export interface AnswerKept {
  request: ReckonRequest
  reckoning: Reckoning
  /** The price as it was read, where the page itself told none apart. */
  price?: ListingKept['price']
}

/**
 * Keeps a look: as a new listing, or as the one it is kept as already (its status, tags and first date stay). Half-typed notes
 * are taken with it. null: there is no such look.
 */
export async function keepLook(
  records: Records,
  lookId: string,
  answer: AnswerKept | null,
  stamp: Stamp
): Promise<Change<'listingsKept'> | null> {
  return records.together('rw', ['looks', 'listingsKept'], async (records) => {
    const look = (await changeLook(records, lookId, stamp, takeNotes))?.after ?? (await one(records, 'looks', lookId))
    if (look === null) return null
    const then = { request: answer?.request ?? null, verdictThen: answer === null ? null : verdictThen(answer.reckoning, stamp.now) }
    const again = look.keptId === null ? null : await changeListing(records, look.keptId, stamp, () => then)
    if (again !== null) return again
    const price = look.price ?? answer?.price ?? null
    const told = { ...sharedOf(look), price, site: siteOf(look.address), ...then }
    const kept = await put(records, 'listingsKept', { ...told, status: 'watching', tags: [], keptAt: stamp.now }, stamp)
    await patch(records, 'looks', look.id, { keptId: kept.after.id, price }, stamp)
    return kept
  })
}

function takeNotes(look: Look): Partial<Fields<'looks'>> | null {
  const { notes, ...drafts } = look.drafts
  return notes === undefined ? null : { notes, drafts, undo: notes === look.notes ? look.undo : pushed(look, { notes: look.notes }) }
}

/** A look at a kept listing, for the panel inside the workroom: the one it came from, or a new one. */
export async function openKept(records: Records, listingId: string, stamp: Stamp): Promise<Look | null> {
  return records.together('rw', ['looks', 'listingsKept'], async (records) => {
    const listing = await one(records, 'listingsKept', listingId)
    if (listing === null) return null
    const [look] = await where(records, 'looks', 'keptId', listingId)
    if (look !== undefined) return bringLook(records, look, listing, stamp)
    const fields: Fields<'looks'> = {
      ...sharedOf(listing),
      windowId: null,
      tabId: null,
      page: 'none',
      pageAddress: '',
      readBy: 'page',
      problem: null,
      capturedAt: listing.keptAt,
      drafts: {},
      undo: [],
      keptId: listingId
    }
    return (await put(records, 'looks', fields, stamp)).after
  })
}

/** Keeping a look as a listing, and opening a kept listing again. */
import type { Reckoning, ReckonRequest } from '../reckon.ts'
import { type Change, patch, put } from './change.ts'
import type { Records } from './database.ts'
import { one, where } from './find.ts'
import { siteOf } from './look-text.ts'
import type { Fields, ListingKept, Look, Stamp } from './schemas.ts'

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
    jobs: advised?.alterations.map((job) => job.id) ?? []
  }
}

/** What a look and a kept listing share. */
const shared = (from: Look | ListingKept) => ({
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

/** The request and the answer at the time of keeping; null when nothing could be reckoned. */
export interface AnswerKept {
  request: ReckonRequest
  reckoning: Reckoning
}

/**
 * Keeps a look: as a new listing, or as the one it is kept as already (its status, tags and first date stay). Notes given
 * here replace the look's. null: there is no such look.
 */
export async function keepLook(
  records: Records,
  lookId: string,
  answer: AnswerKept | null,
  stamp: Stamp,
  notes?: string
): Promise<Change<'listingsKept'> | null> {
  return records.db.transaction('rw', records.rows('looks'), records.rows('listingsKept'), async () => {
    const look = await one(records, 'looks', lookId)
    if (look === null) return null
    const told = {
      ...shared(look),
      notes: notes ?? look.notes,
      site: siteOf(look.address),
      request: answer?.request ?? null,
      verdictThen: answer === null ? null : verdictThen(answer.reckoning, stamp.now)
    }
    const again = look.keptId === null ? null : await patch(records, 'listingsKept', look.keptId, told, stamp)
    if (again !== null) return again
    const fields: Fields<'listingsKept'> = { ...told, status: 'watching', tags: [], keptAt: stamp.now }
    const kept = await put(records, 'listingsKept', fields, stamp)
    await patch(records, 'looks', look.id, { keptId: kept.after.id, notes: told.notes }, stamp)
    return kept
  })
}

/** A look at a kept listing, for the panel inside the workroom: the one it came from, brought up to date, or a new one. */
export async function openKept(records: Records, listingId: string, stamp: Stamp): Promise<Look | null> {
  return records.db.transaction('rw', records.rows('looks'), records.rows('listingsKept'), async () => {
    const listing = await one(records, 'listingsKept', listingId)
    if (listing === null) return null
    const [look] = await where(records, 'looks', 'keptId', listingId)
    if (look !== undefined) {
      if (look.updatedAt >= listing.updatedAt) return look
      return (await patch(records, 'looks', look.id, shared(listing), stamp))?.after ?? look
    }
    const fields: Fields<'looks'> = {
      ...shared(listing),
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

import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Units } from '../../core/length.ts'
import { withLanguages } from '../../core/reading/text/lexicons.ts'
import { type Reckoning, type ReckonRequest, reckon } from '../../core/reckon.ts'
import type { Records } from '../../core/records/database.ts'
import { unitsFor } from '../../core/records/find-answer.ts'
import { listingsOf } from '../../core/records/finds.ts'
import { readingStandsOn, readSaved, type SavedRead } from '../../core/records/read-saved.ts'
import { listingRequest, type Wardrobe } from '../../core/records/request-for.ts'
import type { ListingKept } from '../../core/records/schemas.ts'
import type { Wording } from '../../core/words/say.ts'
import { useSaved } from '../view/use-records.ts'

/** What a kept listing asks now, and the answer. */
export interface AnswerNow {
  request: ReckonRequest
  reckoning: Reckoning
}

/** The request of a kept listing as of now: its texts, with the body, favourite and means of today. */
export function requestNow(listing: ListingKept, wardrobe: Wardrobe): ReckonRequest | null {
  return listingRequest(listing, readOnce(listing, unitsFor(listing, wardrobe)), wardrobe)
}

/** The last reading of each listing, and what it stands on. */
const readings = new Map<string, { of: string; read: SavedRead }>()
function readOnce(listing: ListingKept, units: Units): SavedRead {
  const of = readingStandsOn(listing, units)
  const known = readings.get(listing.id)
  if (known?.of === of) return known.read
  const read = readSaved(listing, units)
  readings.set(listing.id, { of, read })
  return read
}

/** Are the phrases here by which these listings are read? They are brought; where they can't be had, it is told. */
export function useReadable(listings: readonly ListingKept[] | null, wardrobe: Wardrobe, onError: (error: unknown) => void): boolean {
  const [readable, setReadable] = useState<readonly ListingKept[] | null>(null)
  useEffect(() => {
    if (listings === null) return
    let isWanted = true
    withLanguages(() => listings.map((listing) => requestNow(listing, wardrobe))).then(() => isWanted && setReadable(listings), onError)
    return () => {
      isWanted = false
    }
  }, [listings, wardrobe])
  return readable !== null
}

function answerNow(listing: ListingKept, kept: Wardrobe, { units, currency, language }: Wording): AnswerNow | null {
  const request = requestNow(listing, kept)
  return request === null ? null : { request, reckoning: reckon(request, { units, language, currency }) }
}

/**
 * The whole answer of the one listing that a page is about, worked out after the page has been painted; undefined: not yet. null: there is none, or
 * working it out fails: it is then shown as it was when kept.
 */
export function useAnswer(listing: ListingKept | null, kept: Wardrobe, wording: Wording): AnswerNow | null | undefined {
  const [answer, setAnswer] = useState<{ id: string; now: AnswerNow | null } | null>(null)
  const { units, currency, language } = wording
  useEffect(() => {
    if (listing === null) return
    let isWanted = true
    const working = setTimeout(() => {
      withLanguages(() => answerNow(listing, kept, wording)).then(
        (now) => isWanted && setAnswer({ id: listing.id, now }),
        (error) => {
          console.error(error)
          if (isWanted) setAnswer({ id: listing.id, now: null })
        }
      )
    })
    return () => {
      isWanted = false
      clearTimeout(working)
    }
  }, [listing, kept, units, currency, language])
  return answer !== null && answer.id === listing?.id ? answer.now : undefined
}

/** Kept listings by their ids, in that order, followed as they change; null while they are first asked for. */
export function useListings(records: Records, ids: readonly string[], onError: (error: unknown) => void): ListingKept[] | null {
  const query = useMemo(() => (records: Records) => listingsOf(records, ids), [ids.join()])
  return useSaved(records, query, onError)
}

import { useEffect, useState } from 'preact/hooks'
import type { Units } from '../../core/length.ts'
import { type Reckoning, type ReckonRequest, reckon } from '../../core/reckon.ts'
import { readingStandsOn, readSaved, type SavedRead } from '../../core/records/read-saved.ts'
import { listingRequest, type Wardrobe } from '../../core/records/request-for.ts'
import type { ListingKept } from '../../core/records/schemas.ts'
import { wordingFor } from '../view/wording-for.ts'
import type { Everything } from './everything.ts'

/** What a kept listing asks now, and the answer. */
export interface AnswerNow {
  request: ReckonRequest
  reckoning: Reckoning
}

/** The request of a kept listing as of now: its texts, with the body, favourite and means of today. */
export function requestNow(listing: ListingKept, wardrobe: Wardrobe): ReckonRequest | null {
  return listingRequest(listing, readOnce(listing, wordingFor(listing, wardrobe).units), wardrobe)
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

const known = new Map<string, Reckoning>()
/** More answers than this are not held on to. */
const KNOWN_MOST = 1000

/**
 * The answers of the kept listings, reckoned one after another between other work, and again only when something they
 * stand on has changed.
 */
export function useAnswers(
  kept: Everything | null,
  wording: { units: Units; currency: string | undefined; language: string }
): ReadonlyMap<string, AnswerNow> {
  const [answers, setAnswers] = useState<ReadonlyMap<string, AnswerNow>>(new Map())
  const { units, currency, language } = wording
  useEffect(() => {
    if (kept === null) return
    let stopped = false
    const work = async () => {
      const next = new Map<string, AnswerNow>()
      for (const listing of kept.listings) {
        const request = requestNow(listing, kept)
        if (request === null) continue
        const key = JSON.stringify([request, units, currency ?? '', language])
        let reckoning = known.get(key)
        if (reckoning === undefined) {
          await new Promise((rested) => setTimeout(rested))
          if (stopped) return
          reckoning = reckon(request, { units, language, ...(currency === undefined ? {} : { currency }) })
          if (known.size >= KNOWN_MOST) known.clear()
          known.set(key, reckoning)
        }
        next.set(listing.id, { request, reckoning })
        if (stopped) return
        setAnswers(new Map(next))
      }
      if (!stopped) setAnswers(next)
    }
    work().catch((error) => console.error(error))
    return () => {
      stopped = true
    }
  }, [kept, units, currency, language])
  return answers
}

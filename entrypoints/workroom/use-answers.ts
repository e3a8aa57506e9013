import { useEffect, useState } from 'preact/hooks'
import type { Units } from '../../core/length.ts'
import { languageComing, withLanguages } from '../../core/reading/text/lexicons.ts'
import { type Reckoning, type ReckonRequest, reckon } from '../../core/reckon.ts'
import { readingStandsOn, readSaved, type SavedRead } from '../../core/records/read-saved.ts'
import { listingRequest, type Wardrobe } from '../../core/records/request-for.ts'
import type { ListingKept } from '../../core/records/schemas.ts'
import type { Wording } from '../../core/words/say.ts'
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

/** The answer of one listing; null where there is none, also where working it out fails: it is then shown as it was when kept. */
export function answerNow(listing: ListingKept, kept: Wardrobe, { units, currency, language }: Wording): AnswerNow | null {
  try {
    const request = requestNow(listing, kept)
    if (request === null) return null
    const key = JSON.stringify([request, units, currency ?? '', language ?? ''])
    let reckoning = known.get(key)
    if (reckoning === undefined) {
      reckoning = reckon(request, {
        units,
        ...(language === undefined ? {} : { language }),
        ...(currency === undefined ? {} : { currency })
      })
      if (known.size >= KNOWN_MOST) known.clear()
      known.set(key, reckoning)
    }
    return { request, reckoning }
  } catch (error) {
    if (languageComing(error) !== null) throw error
    console.error(error)
    return null
  }
}
/**
 * The answers of the kept listings, reckoned one after another between other work, and again only when something they
 * stand on has changed.
 */
export function useAnswers(kept: Everything | null, wording: Wording): ReadonlyMap<string, AnswerNow> {
  const [answers, setAnswers] = useState<ReadonlyMap<string, AnswerNow>>(new Map())
  const { units, currency, language } = wording
  useEffect(() => {
    if (kept === null) return
    let stopped = false
    const work = async () => {
      const next = new Map<string, AnswerNow>()
      for (const listing of kept.listings) {
        await new Promise((rested) => setTimeout(rested))
        if (stopped) return
        const answer = await withLanguages(() => answerNow(listing, kept, wording))
        if (answer === null) continue
        next.set(listing.id, answer)
        setAnswers(new Map(next))
      }
      if (!stopped) setAnswers(next)
    }
    void work()
    return () => {
      stopped = true
    }
  }, [kept, units, currency, language])
  return answers
}

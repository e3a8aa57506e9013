import { useEffect, useState } from 'preact/hooks'
import type { Units } from '../../core/length.ts'
import { type Reckoning, type ReckonRequest, reckon } from '../../core/reckon.ts'
import { personFor } from '../../core/records/owned.ts'
import { bodyFrom, requestFor } from '../../core/records/request-for.ts'
import type { ListingKept } from '../../core/records/schemas.ts'
import type { Everything } from './everything.ts'

/** The request of a kept listing as of now: its garment as kept, with the body, favourite and means of today. */
export function requestNow(listing: ListingKept, { people, measures, garments, settings }: Everything): ReckonRequest | null {
  const person = personFor(people, listing.personId, settings.personId)
  if (listing.request === null || person === null) return null
  const body = bodyFrom(measures.filter((one) => one.personId === person.id))
  const favourite = garments.find((garment) => garment.id === listing.favouriteId) ?? null
  return requestFor(person, body, favourite, listing.request.garment, { fit: listing.fit, money: listing.money })
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
  wording: { units: Units; currency: string | undefined }
): ReadonlyMap<string, Reckoning> {
  const [answers, setAnswers] = useState<ReadonlyMap<string, Reckoning>>(new Map())
  const { units, currency } = wording
  useEffect(() => {
    if (kept === null) return
    let stopped = false
    const work = async () => {
      const next = new Map<string, Reckoning>()
      for (const listing of kept.listings) {
        const request = requestNow(listing, kept)
        if (request === null) continue
        const key = JSON.stringify([request, units, currency ?? ''])
        let answer = known.get(key)
        if (answer === undefined) {
          await new Promise((rested) => setTimeout(rested))
          if (stopped) return
          answer = reckon(request, { units, ...(currency === undefined ? {} : { currency }) })
          if (known.size >= KNOWN_MOST) known.clear()
          known.set(key, answer)
        }
        next.set(listing.id, answer)
        if (stopped) return
        setAnswers(new Map(next))
      }
    }
    work().catch((error) => console.error(error))
    return () => {
      stopped = true
    }
  }, [kept, units, currency])
  return answers
}

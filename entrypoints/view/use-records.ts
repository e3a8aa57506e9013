/** Follows what is saved, also when another page changes it. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Status } from '../../core/ids/listing-statuses.ts'
import { type Records, watch } from '../../core/records/database.ts'
import { all, one } from '../../core/records/find.ts'
import { lookNow } from '../../core/records/look-now.ts'
import { settingsOf } from '../../core/records/owned.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { Look } from '../../core/records/schemas.ts'

/** What a query of the records says now and whenever it changes; null while it is first asked. */
export function useSaved<T>(records: Records, query: (records: Records) => Promise<T>, onError: (error: unknown) => void): T | null {
  const [value, setValue] = useState<T | null>(null)
  useEffect(() => watch(() => query(records), setValue, onError), [records, query])
  return value
}

/** How the listing that a look is kept as stands on the wishlist; null: it is not there. */
export function useKept(records: Records, look: Look | null, onError: (error: unknown) => void): Status | null {
  const keptId = look?.keptId ?? null
  const query = useMemo(
    () => async (from: Records) => (keptId === null ? null : ((await one(from, 'listingsKept', keptId))?.status ?? null)),
    [keptId]
  )
  const status = useSaved(records, query, onError)
  return keptId === null ? null : status
}

/** One look, followed; null: there is none, or not yet. */
export function useLook(records: Records, id: string | null, onError: (error: unknown) => void): Look | null {
  const query = useMemo(() => async (from: Records) => (id === null ? null : lookNow(from, id)), [id])
  const look = useSaved(records, query, onError)
  return look?.id === id ? look : null
}

export const wholeWardrobe = async (records: Records): Promise<Wardrobe> => ({
  people: await all(records, 'people'),
  measures: await all(records, 'bodyMeasurements'),
  garments: await all(records, 'garmentsOwned'),
  settings: await settingsOf(records)
})

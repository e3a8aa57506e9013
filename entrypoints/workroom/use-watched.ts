import { useEffect, useState } from 'preact/hooks'
import { type Records, watch } from '../../core/records/database.ts'
import { all, type Unreadable, unreadable } from '../../core/records/find.ts'
import { settingsOf } from '../../core/records/owned.ts'
import type { BodyMeasurement, GarmentOwned, ListingKept, Person, Settings } from '../../core/records/schemas.ts'

/** Everything the workroom shows, as it is saved now. */
export interface Kept {
  people: Person[]
  measures: BodyMeasurement[]
  garments: GarmentOwned[]
  listings: ListingKept[]
  settings: Pick<Settings, 'theme' | 'personId'>
  unreadable: Unreadable[]
}

/** Follows the records, also when another page changes them; null while they are first read. */
export function useKept(records: Records, onError: (error: unknown) => void): Kept | null {
  const [kept, setKept] = useState<Kept | null>(null)
  useEffect(
    () =>
      watch(
        async () => ({
          people: await all(records, 'people'),
          measures: await all(records, 'bodyMeasurements'),
          garments: await all(records, 'garmentsOwned'),
          listings: await all(records, 'listingsKept'),
          settings: await settingsOf(records),
          unreadable: await unreadable(records)
        }),
        setKept,
        onError
      ),
    [records]
  )
  return kept
}

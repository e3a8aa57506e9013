import type { Records } from '../../core/records/database.ts'
import { all } from '../../core/records/find.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { ListingKept } from '../../core/records/schemas.ts'
import { wholeWardrobe } from '../view/use-records.ts'

/** Everything the workroom shows, as it is saved. */
export interface Everything extends Wardrobe {
  listings: ListingKept[]
}

export const everything = async (records: Records): Promise<Everything> => ({
  ...(await wholeWardrobe(records)),
  listings: await all(records, 'listingsKept')
})

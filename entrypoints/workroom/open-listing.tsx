import { useWords } from '../../components/words.tsx'
import type { Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import type { Kept } from './use-watched.ts'

export interface OpenListingProps {
  records: Records
  stamp: () => Stamp
  kept: Kept
  listingId: string
}

/** A kept listing, opened in the panel that stands beside pages. */
export function OpenListing({ kept, listingId }: OpenListingProps) {
  const { t } = useWords()
  const listing = kept.listings.find((one) => one.id === listingId)
  return (
    <div class="wr-open">
      <p>
        <a href="#wishlist">{t('wishlist.back')}</a>
      </p>
      {listing === undefined && <p>{t('wishlist.gone')}</p>}
    </div>
  )
}

/** The card for the shop of a kept listing, with its answer of now. */
import { useWords } from '../../components/words.tsx'
import { ShopCard } from '../../components/workroom/wishlist/shop-card.tsx'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { PageProps } from '../view/page-start.tsx'
import { useAnswer, useListings } from './use-answer.ts'
import { listingShown } from './wishlist-part.tsx'

export interface ShopCardPartProps extends Pick<PageProps, 'records'> {
  kept: Wardrobe
  listingId: string
  onError: (error: unknown) => void
}

export function ShopCardPart({ records, kept, listingId, onError }: ShopCardPartProps) {
  const { t, wording } = useWords()
  const currency = wording.currency ?? ''
  const listings = useListings(records, [listingId], onError)
  const listing = listings?.[0]
  const answer = useAnswer(listing ?? null, kept, wording)
  if (listings === null) return null
  const shown = listing === undefined ? null : listingShown(listing, answer ?? null, currency)
  return (
    <div>
      <p class="row noprint wr-to-others">
        <a href="#wishlist">{t('wishlist.back')}</a>
        {shown !== null && <a href={`#wishlist/${encodeURIComponent(listingId)}`}>{t('card.whole')}</a>}
      </p>
      {shown === null ? (
        <p>{t('wishlist.gone')}</p>
      ) : (
        <ShopCard listing={{ ...shown, price: shown.price ?? answer?.request.garment.price?.amount ?? null }} onPrint={() => print()} />
      )}
    </div>
  )
}

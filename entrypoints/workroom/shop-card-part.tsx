/** The card for the shop of a kept listing, with its answer of now. */
import { useWords } from '../../components/words.tsx'
import { ShopCard } from '../../components/workroom/wishlist/shop-card.tsx'
import type { ListingKept } from '../../core/records/schemas.ts'
import type { AnswerNow } from './use-answers.ts'
import { listingShown } from './wishlist-part.tsx'

export interface ShopCardPartProps {
  listings: readonly ListingKept[]
  answers: ReadonlyMap<string, AnswerNow>
  listingId: string
}

export function ShopCardPart({ listings, answers, listingId }: ShopCardPartProps) {
  const { t, wording } = useWords()
  const currency = wording.currency ?? ''
  const listing = listings.find(({ id }) => id === listingId)
  const answer = answers.get(listingId) ?? null
  const shown = listing === undefined ? null : listingShown(listing, answer, currency)
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

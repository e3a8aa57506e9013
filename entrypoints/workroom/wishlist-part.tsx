/** The wishlist with its records: each kept listing with its answer of now. */
import { useWords } from '../../components/words.tsx'
import type { ListingShown } from '../../components/workroom/shown.ts'
import { WishlistPage } from '../../components/workroom/wishlist/wishlist-page.tsx'
import type { ListingKept } from '../../core/records/schemas.ts'
import { platform } from '../platform/extension.ts'
import type { AnswerNow } from './use-answers.ts'
import type { WorkroomActions } from './workroom-actions.ts'

export interface WishlistPartProps {
  listings: readonly ListingKept[]
  answers: ReadonlyMap<string, AnswerNow>
  currency: string
  /** Is there a body or a garment to set listings beside? */
  ready: boolean
  actions: WorkroomActions
}

export function WishlistPart({ listings, answers, currency, ready, actions }: WishlistPartProps) {
  const { t } = useWords()
  const titleOf = (id: string): string => listings.find((listing) => listing.id === id)?.title || t('wishlist.untitled')
  return (
    <WishlistPage
      listings={listings.map((listing) => listingShown(listing, answers.get(listing.id) ?? null))}
      currency={currency}
      shop={platform.where === 'companion'}
      ready={ready}
      onOpen={(id) => {
        location.hash = `wishlist/${encodeURIComponent(id)}`
      }}
      cardOf={cardAddress}
      onEdit={(id, changes, began) => actions.editListing(id, changes, titleOf(id), began)}
      onRemove={(id) => void actions.removeListing(id, titleOf(id))}
    />
  )
}

/** Where a listing's card for the shop is. */
export const cardAddress = (id: string): string => `#card/${encodeURIComponent(id)}`

/** A kept listing as the wishlist shows it. */
export const listingShown = (listing: ListingKept, answer: AnswerNow | null): ListingShown => ({
  ...listing,
  price: listing.money.price ?? listing.price?.amount ?? null,
  kind: (answer?.request ?? listing.request)?.garment.kind ?? null,
  now: answer?.reckoning ?? null
})

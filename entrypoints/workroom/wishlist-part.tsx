/** The wishlist with its records: each kept listing with its answer of now. */
import { useState } from 'preact/hooks'
import { useWords } from '../../components/words.tsx'
import type { ListingShown } from '../../components/workroom/shown.ts'
import { WishlistPage } from '../../components/workroom/wishlist/wishlist-page.tsx'
import type { ListingKept } from '../../core/records/schemas.ts'
import { platform } from '../platform/extension.ts'
import { pictureFrom } from './picture-file.ts'
import type { AnswerNow } from './use-answers.ts'
import { addressOf } from './use-route.ts'
import { workAddress } from './work-part.tsx'
import type { WorkroomActions } from './workroom-actions.ts'

export interface WishlistPartProps {
  listings: readonly ListingKept[]
  answers: ReadonlyMap<string, AnswerNow>
  currency: string
  /** Is there a body or a garment to set listings beside? */
  ready: boolean
  today: string
  actions: WorkroomActions
}

export function WishlistPart({ listings, answers, currency, ready, today, actions }: WishlistPartProps) {
  const { t } = useWords()
  const [pictureProblem, setPictureProblem] = useState<{ id: string; problem: string } | null>(null)
  const titleOf = (id: string): string => listings.find((listing) => listing.id === id)?.title || t('wishlist.untitled')
  return (
    <WishlistPage
      listings={listings.map((listing) => listingShown(listing, answers.get(listing.id) ?? null, currency))}
      currency={currency}
      shop={platform.where === 'companion'}
      ready={ready}
      onOpen={(id) => {
        location.hash = addressOf('wishlist', id)
      }}
      cardOf={cardAddress}
      workOf={workAddress}
      onEdit={(id, changes, began) => actions.editListing(id, changes, titleOf(id), began)}
      onStatus={(id, status) => void actions.setStatus(id, status, titleOf(id))}
      onRemove={(id) => void actions.removeListing(id, titleOf(id))}
      onPicture={(id, file) =>
        void pictureFrom(file).then((read) => {
          setPictureProblem(read.ok ? null : { id, problem: read.problem })
          if (read.ok) void actions.setPicture(id, read.picture, titleOf(id))
        })
      }
      onNoPicture={(id) => void actions.setPicture(id, null, titleOf(id))}
      pictureProblem={pictureProblem}
      today={today}
    />
  )
}

/** Where a listing's card for the shop is. */
export const cardAddress = (id: string): string => addressOf('card', id)

/** A kept listing as the wishlist shows it; a price that the page tells in another currency than the person's stands apart. */
export function listingShown(listing: ListingKept, answer: AnswerNow | null, currency: string): ListingShown {
  const { money, price: told } = listing
  const isOwn = told === null || currency === '' || told.currency === '' || told.currency === currency
  return {
    ...listing,
    price: money.price ?? (isOwn ? (told?.amount ?? null) : null),
    priceElsewhere: money.price === null && !isOwn ? told : null,
    kind: (answer?.request ?? listing.request)?.garment.kind ?? null,
    now: answer?.reckoning ?? null
  }
}

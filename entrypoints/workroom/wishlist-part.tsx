/** The wishlist with its records: each find by its summary and the answer kept with it, and what of that is to be worked out anew. */
import { useEffect, useMemo, useState } from 'preact/hooks'
import { useWords } from '../../components/words.tsx'
import type { ListingShown } from '../../components/workroom/shown.ts'
import { WishlistPage } from '../../components/workroom/wishlist/wishlist-page.tsx'
import type { Wardrobe } from '../../core/records/request-for.ts'
import type { ListingKept } from '../../core/records/schemas.ts'
import { platform } from '../platform/extension.ts'
import type { PageProps } from '../view/page-start.tsx'
import { AnswerFinds, NOTHING_TO_DO, type Progress } from './answer-finds.ts'
import { FindsApart } from './finds-apart.ts'
import type { FindsNow } from './finds-held.ts'
import { pictureFrom } from './picture-file.ts'
import type { AnswerNow } from './use-answer.ts'
import { useFindsShown, useWearerMarks } from './use-finds.ts'
import { addressOf } from './use-route.ts'
import { useRows } from './use-rows.ts'
import { workAddress } from './work-part.tsx'
import type { WorkroomActions } from './workroom-actions.ts'

export interface WishlistPartProps extends Pick<PageProps, 'records'> {
  kept: Wardrobe
  finds: FindsNow
  /** Is there a body or a garment to set listings beside? */
  ready: boolean
  today: string
  actions: WorkroomActions
}

/** One for the page, kept while other parts of it are shown. */
const apart = new FindsApart()

export function WishlistPart({ records, kept, finds: now, ready, today, actions }: WishlistPartProps) {
  const { t, wording } = useWords()
  const currency = wording.currency ?? ''
  const { finds, byId, count, isWhole, filled } = now
  const [pictureProblem, setPictureProblem] = useState<{ id: string; problem: string } | null>(null)
  const [inView, setInView] = useState<readonly string[]>([])
  const wearer = useWearerMarks(kept)
  const listings = useFindsShown(finds, wearer, currency)
  const { rowOf, otherwiseWorded } = useRows(records, { finds: byId, inView, first: now.firstAnswers, wording })
  const { progress, answering } = useAnswering(records)
  // while not all are here, answers that are kept may not be either; and an answer is kept beside a summary that is in its place
  const isReady = isWhole && filled === null
  useEffect(
    () => answering.want({ finds: isReady ? finds : [], wardrobe: kept, wearer, wording }),
    [answering, finds, isReady, kept, wearer, wording]
  )
  useEffect(() => answering.see(inView, otherwiseWorded), [answering, inView.join(), otherwiseWorded.join()])
  const titleOf = (id: string): string => byId.get(id)?.summary.title || t('wishlist.untitled')
  return (
    <WishlistPage
      listings={listings}
      count={count}
      isWhole={isWhole}
      rowOf={rowOf}
      onInView={setInView}
      work={{ ...progress, filled, onStop: () => answering.stop(), onGoOn: () => answering.goOn() }}
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

/** What works answers out anew while the wishlist is shown, and how far it is. */
function useAnswering(records: PageProps['records']) {
  const [progress, setProgress] = useState<Progress>(NOTHING_TO_DO)
  const answering = useMemo(() => new AnswerFinds(records, apart.ask, setProgress), [records])
  useEffect(() => () => answering.end(), [answering])
  return { progress, answering }
}

/** Where a listing's card for the shop is. */
export const cardAddress = (id: string): string => addressOf('card', id)

/** A kept listing as its card shows it; a price that the page tells in another currency than the person's stands apart. */
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

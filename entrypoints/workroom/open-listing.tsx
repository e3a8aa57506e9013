import { useEffect, useState } from 'preact/hooks'
import { WithinMain } from '../../components/main-part.tsx'
import { useWords } from '../../components/words.tsx'
import { Headline } from '../../components/workroom/frame.tsx'
import { PicturePart } from '../../components/workroom/wishlist/picture-part.tsx'
import { openKept } from '../../core/records/kept.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import { LookApart } from '../view/look-apart.tsx'
import type { PageProps } from '../view/page-start.tsx'
import { useLook } from '../view/use-records.ts'
import { pictureFrom } from './picture-file.ts'
import { useListings } from './use-answer.ts'
import { cardAddress } from './wishlist-part.tsx'
import { workAddress } from './work-part.tsx'
import type { WorkroomActions } from './workroom-actions.ts'

export interface OpenListingProps extends PageProps {
  kept: Wardrobe
  listingId: string
  actions: WorkroomActions
  onError: (error: unknown) => void
}

/** A kept listing, opened in the panel that stands beside pages. What is changed here is changed in the listing; its button keeps the answer, too. */
export function OpenListing({ records, stamp, saving, kept, listingId, actions, onError }: OpenListingProps) {
  const { t } = useWords()
  const [problem, setProblem] = useState<string | null>(null)
  const [lookId, setLookId] = useState<string | null>(null)
  const listings = useListings(records, [listingId], onError)
  const listing = listings?.[0]
  const there = listing !== undefined
  useEffect(() => {
    if (!there) return
    void saving.run((records) => openKept(records, listingId, stamp()), { saved: (look) => setLookId(look?.id ?? null) })
  }, [records, listingId, there])
  const look = useLook(records, lookId, onError)
  const address = listing !== undefined && /^https?:\/\//i.test(listing.address) ? listing.address : null
  return (
    <div class="wr-open">
      <p class="row">
        <a href="#wishlist">{t('wishlist.back')}</a>
        {there && <a href={cardAddress(listingId)}>{t('card.title')}</a>}
        {there && <a href={workAddress(listingId)}>{t('work.open')}</a>}
        {address !== null && (
          <a href={address} target="_blank" rel="noreferrer">
            {t('wishlist.visit')}
          </a>
        )}
      </p>
      {listings !== null && !there && <Headline title={t('wishlist.gone')} />}
      {there && look !== null && (
        <WithinMain.Provider value>
          <LookApart records={records} stamp={stamp} saving={saving} look={look} wardrobe={kept} place="none" windowId={null} />
        </WithinMain.Provider>
      )}
      {listing !== undefined && (
        <PicturePart
          title={listing.title || t('wishlist.untitled')}
          picture={listing.picture ?? null}
          problem={problem}
          onFile={(file) =>
            void pictureFrom(file).then((read) => {
              setProblem(read.ok ? null : read.problem)
              if (read.ok) void actions.setPicture(listing.id, read.picture, listing.title || t('wishlist.untitled'))
            })
          }
          onRemove={() => void actions.setPicture(listing.id, null, listing.title || t('wishlist.untitled'))}
        />
      )}
    </div>
  )
}

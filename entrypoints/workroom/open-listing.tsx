import { useEffect, useState } from 'preact/hooks'
import { WithinMain } from '../../components/main-part.tsx'
import { useWords } from '../../components/words.tsx'
import { openKept } from '../../core/records/kept.ts'
import { LookApart } from '../view/look-apart.tsx'
import type { PageProps } from '../view/page-start.tsx'
import { allLooks, useSaved } from '../view/use-records.ts'
import type { Everything } from './everything.ts'
import { cardAddress } from './wishlist-part.tsx'
import { workAddress } from './work-part.tsx'

export interface OpenListingProps extends PageProps {
  kept: Everything
  listingId: string
  onError: (error: unknown) => void
}

/** A kept listing, opened in the panel that stands beside pages. What is changed here is changed in the listing; its button keeps the answer, too. */
export function OpenListing({ records, stamp, saving, kept, listingId, onError }: OpenListingProps) {
  const { t } = useWords()
  const [lookId, setLookId] = useState<string | null>(null)
  const looks = useSaved(records, allLooks, onError)
  const listing = kept.listings.find((one) => one.id === listingId)
  const there = listing !== undefined
  useEffect(() => {
    if (!there) return
    void saving.run((records) => openKept(records, listingId, stamp()), { saved: (look) => setLookId(look?.id ?? null) })
  }, [records, listingId, there])
  const look = looks?.find(({ id }) => id === lookId) ?? null
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
      {!there && <p>{t('wishlist.gone')}</p>}
      {there && look !== null && (
        <WithinMain.Provider value>
          <LookApart records={records} stamp={stamp} saving={saving} look={look} wardrobe={kept} place="none" windowId={null} />
        </WithinMain.Provider>
      )}
    </div>
  )
}

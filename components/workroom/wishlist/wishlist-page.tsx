/** Kept listings: find, order, change, open, take away. */

import { useId, useState } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import type { Saved } from '../drafts.tsx'
import { useDraft } from '../drafts.tsx'
import { Empty, Headline } from '../frame.tsx'
import type { ListingChanges, ListingFields, ListingShown } from '../shown.ts'
import { useMedia } from '../use-media.ts'
import { Compare } from './compare.tsx'
import { found, type Search } from './listing-order.ts'
import { ListingTable } from './listing-table.tsx'
import { MOST_COMPARED } from './side-by-side.ts'
import { WishlistTools } from './wishlist-tools.tsx'

export interface WishlistPageProps {
  listings: readonly ListingShown[]
  currency: string
  /** Is there a body or a garment to set listings beside? */
  ready: boolean
  /** A shop of invented garments is served beside this page. */
  shop?: boolean
  onOpen: (id: string) => void
  /** Where a listing's card for the shop is. */
  cardOf: (id: string) => string
  onEdit: (id: string, changes: ListingChanges, began: ListingFields) => Saved
  onRemove: (id: string) => void
}

export function WishlistPage(props: WishlistPageProps) {
  return props.listings.length === 0 ? <NothingKept {...props} /> : <Kept {...props} />
}

function NothingKept({ ready, shop = false }: WishlistPageProps) {
  const { t } = useWords()
  return (
    <>
      <Headline title={t('wishlist.title')} />
      <Empty>
        <p>{t('wishlist.empty')}</p>
        <p>{t('wishlist.empty.how')}</p>
        {shop && <p>{t('wishlist.empty.shop')}</p>}
        {!ready && (
          <p>
            <a href="#body">{t('wishlist.empty.body')}</a>
          </p>
        )}
      </Empty>
    </>
  )
}

function Kept({ listings, currency, onOpen, cardOf, onEdit, onRemove }: WishlistPageProps) {
  const { t } = useWords()
  const [search, setSearch] = useState<Search>({ find: '', order: 'kept', status: null, verdict: null })
  const id = useId()
  const { typed: chosen, type: setChosen } = useDraft<readonly string[]>('compare', [])
  const [comparing, setComparing] = useState(false)
  const [asCards, setAsCards] = useState(false)
  const isWide = useMedia('(min-width: 1101px)')
  const isSmall = useMedia('(max-width: 720px)')
  const shown = found(listings, search)
  const compared = chosen.flatMap((one) => listings.find((listing) => listing.id === one) ?? [])
  const layout = isSmall || (asCards && isWide) ? 'wr-cards wr-small-cards' : isWide ? 'wr-table' : 'wr-cards wr-wide-cards'
  const choose = (listing: ListingShown, on: boolean) => {
    const others = compared.map((one) => one.id).filter((one) => one !== listing.id)
    setChosen(on ? [...others, listing.id] : others)
  }
  const compare = () => {
    setComparing(true)
    requestAnimationFrame(() => document.getElementById('compare')?.focus())
  }
  return (
    <>
      <Headline title={t('wishlist.title')} note={t('wishlist.told', { count: listings.length })} />
      <WishlistTools
        search={search}
        onSearch={setSearch}
        asCards={isWide ? asCards : null}
        onCards={setAsCards}
        compared={compared.length}
        describedBy={`${id}-compare`}
        onCompare={compare}
      />
      <p class={compared.length === 1 || compared.length === MOST_COMPARED ? 'note wr-count' : 'sr'} id={`${id}-compare`}>
        {t(compared.length === MOST_COMPARED ? 'wishlist.compare.most' : 'wishlist.compare.how')}
      </p>
      <p role="status" class={shown.length === 0 ? 'wr-none' : 'sr'}>
        {t(shown.length === 0 ? 'wishlist.none-found' : 'wishlist.found', { count: shown.length })}
      </p>
      {shown.length > 0 && (
        <ListingTable
          listings={shown}
          layout={layout}
          compared={compared}
          currency={currency}
          onCompare={choose}
          onOpen={onOpen}
          cardOf={cardOf}
          onEdit={onEdit}
          onRemove={onRemove}
        />
      )}
      {comparing && compared.length >= 2 && <Compare listings={compared} onClose={() => setComparing(false)} />}
    </>
  )
}

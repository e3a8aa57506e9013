/** Kept listings: find, order, change, open, take away. */
import { useId, useState } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft } from '../drafts.tsx'
import { Empty, Headline } from '../frame.tsx'
import type { ListingChanges, ListingFields, ListingShown, Status } from '../shown.ts'
import { useRoom } from '../use-room.ts'
import { Compare } from './compare.tsx'
import { found, ordered, SEARCH_ALL, type Search } from './listing-order.ts'
import { ListingTable } from './listing-table.tsx'
import { LostNotes } from './lost-notes.tsx'
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
  /** Where the work on a listing is. */
  workOf: (id: string) => string
  /** `began`: what is changed as it was shown first. */
  onEdit: (id: string, changes: ListingChanges, began: Partial<ListingFields>) => Saved
  onStatus: (id: string, status: Status) => void
  onRemove: (id: string) => void
  onPicture: (id: string, file: File) => void
  onNoPicture: (id: string) => void
  pictureProblem: { id: string; problem: string } | null
  /** ISO date. */
  today: string
}

export function WishlistPage(props: WishlistPageProps) {
  return (
    <>
      <LostNotes listings={props.listings} />
      {props.listings.length === 0 ? <NothingKept {...props} /> : <Kept {...props} />}
    </>
  )
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

/** In letters: from here on a table; below, cards with their tapes beside them, and then below them. */
const TABLE_FROM = 69
const WIDE_CARDS_FROM = 46

function Kept(props: WishlistPageProps) {
  const { listings, currency, onOpen, cardOf, onEdit, onRemove } = props
  const { t, wording } = useWords()
  const { typed: search, type: setSearch } = useDraft<Search>('wishlist/search', SEARCH_ALL)
  const id = useId()
  const { typed: chosen, type: setChosen } = useDraft<readonly string[]>('compare', [])
  const { typed: asCards, type: setAsCards } = useDraft('wishlist/cards', false)
  const [comparing, setComparing] = useState(false)
  const { ref, rem } = useRoom<HTMLDivElement>(80)
  const isWide = rem >= TABLE_FROM
  const shown = found(listings, search, wording.language)
  const compared = chosen.flatMap((one) => listings.find((listing) => listing.id === one) ?? [])
  const isTable = isWide && !asCards
  const layout = isTable ? 'wr-table' : rem < WIDE_CARDS_FROM || isWide ? 'wr-cards wr-small-cards' : 'wr-cards wr-wide-cards'
  const choose = (listing: ListingShown, on: boolean) => {
    const others = compared.map((one) => one.id).filter((one) => one !== listing.id)
    setChosen(on ? [...others, listing.id] : others)
  }
  const compare = () => {
    setComparing(true)
    requestAnimationFrame(() => document.getElementById('compare')?.focus())
  }
  const uncompare = () => {
    setComparing(false)
    requestAnimationFrame(() => document.getElementById(`${id}-compare-press`)?.focus())
  }
  return (
    <div ref={ref}>
      <Headline title={t('wishlist.title')} note={t('wishlist.told', { count: listings.length })} />
      <WishlistTools
        search={search}
        onSearch={setSearch}
        kinds={listings.flatMap(({ kind }) => kind ?? [])}
        currency={currency}
        hasHeads={isTable}
        asCards={isWide ? asCards : null}
        onCards={setAsCards}
        compared={compared.length}
        pressId={`${id}-compare-press`}
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
          search={search}
          onOrder={(order) => setSearch(ordered(search, order))}
          today={props.today}
          compared={compared}
          currency={currency}
          onCompare={choose}
          onOpen={onOpen}
          cardOf={cardOf}
          workOf={props.workOf}
          onEdit={onEdit}
          onStatus={props.onStatus}
          onRemove={onRemove}
          onPicture={props.onPicture}
          onNoPicture={props.onNoPicture}
          pictureProblem={props.pictureProblem}
        />
      )}
      {comparing && compared.length >= 2 && <Compare listings={compared} onClose={uncompare} />}
    </div>
  )
}

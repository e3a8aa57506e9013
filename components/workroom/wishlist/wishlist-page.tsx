/** Kept listings: find, order, change, open, take away. */
import { useEffect, useId, useMemo, useState } from 'preact/hooks'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft } from '../drafts.tsx'
import { Empty, Headline } from '../frame.tsx'
import type { FindShown, ListingChanges, ListingFields, ListingShown, Status } from '../shown.ts'
import { useRoom } from '../use-room.ts'
import { Compare } from './compare.tsx'
import { GoingOn, type WorkGoingOn } from './going-on.tsx'
import { found, ordered, SEARCH_ALL, type Search } from './listing-order.ts'
import { ListingTable } from './listing-table.tsx'
import { LostNotes } from './lost-notes.tsx'
import { MOST_COMPARED } from './side-by-side.ts'
import { DRAWN_WHOLE } from './use-lines.ts'
import { WishlistTools } from './wishlist-tools.tsx'

export interface WishlistPageProps {
  /** Oldest first, as they were made. */
  listings: readonly FindShown[]
  /** How many there are, where not all are here yet; left out: as many as there are listings. */
  count?: number
  /** Are they all here? While they are not, only the last kept stand in the list. */
  isWhole?: boolean
  /** A find with what its row is drawn from; left out: it has that itself, as far as there is any. */
  rowOf?: (find: FindShown) => ListingShown
  /** The ids of what is drawn, whenever they are others. */
  onInView?: (ids: readonly string[]) => void
  /** What is being worked out anew; left out: nothing ever is. */
  work?: WorkGoingOn
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
      {(props.count ?? props.listings.length) === 0 ? <NothingKept {...props} /> : <Kept {...props} />}
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

/** In a long list not every row is drawn: what that means for the browser's own search, and for paper. */
function NotAllDrawn({ shown, drawn }: { shown: readonly FindShown[]; drawn: readonly string[] }) {
  const { t } = useWords()
  const from = shown.findIndex(({ id }) => id === drawn[0]) + 1
  const to = shown.findIndex(({ id }) => id === drawn.at(-1)) + 1
  return (
    <>
      <p class="note wr-count noprint">{t('wishlist.many')}</p>
      <p class="note wr-count wr-printed">{t('wishlist.printed', { from, to, count: shown.length })}</p>
    </>
  )
}

/** In letters: from here on a table; below, cards with their tapes beside them, and then below them. */
const TABLE_FROM = 69
const WIDE_CARDS_FROM = 46
/** A small card is at least so wide. */
const CARD_FROM = 21
const SMALL_CARDS = 'wr-cards wr-small-cards'

/** A find that brings what its row is drawn from, or has nothing yet. */
const asItIs = (find: FindShown): ListingShown => ({ now: null, ...find })

function Kept(props: WishlistPageProps) {
  const { listings, count = listings.length, isWhole = true, rowOf = asItIs, onInView, currency } = props
  const { t, wording } = useWords()
  const { typed: search, type: setSearch } = useDraft<Search>('wishlist/search', SEARCH_ALL)
  const id = useId()
  const { typed: chosen, type: setChosen } = useDraft<readonly string[]>('compare', [])
  const { typed: asCards, type: setAsCards } = useDraft('wishlist/cards', false)
  const [comparing, setComparing] = useState(false)
  const { ref, rem } = useRoom<HTMLDivElement>(80)
  const isWide = rem >= TABLE_FROM
  const shown = useMemo(() => found(listings, search, wording.language), [listings, search, wording.language])
  const kinds = useMemo(() => [...new Set(listings.flatMap(({ kind }) => kind ?? []))], [listings])
  const compared = useMemo(() => chosen.flatMap((one) => listings.find(({ id }) => id === one) ?? []), [chosen, listings])
  const comparedIds = compared.map((one) => one.id)
  const [drawn, setDrawn] = useState<readonly string[]>([])
  useEffect(() => onInView?.([...new Set([...drawn, ...comparedIds])]), [drawn, comparedIds.join()])
  const isTable = isWide && !asCards
  const layout = isTable ? 'wr-table' : rem < WIDE_CARDS_FROM || isWide ? SMALL_CARDS : 'wr-cards wr-wide-cards'
  const columns = layout === SMALL_CARDS ? Math.max(1, Math.floor(rem / CARD_FROM)) : 1
  const choose = (id: string, on: boolean) => {
    const others = comparedIds.filter((one) => one !== id)
    setChosen(on ? [...others, id] : others)
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
      <Headline title={t('wishlist.title')} note={t('wishlist.told', { count })} />
      <WishlistTools
        search={search}
        onSearch={setSearch}
        kinds={kinds}
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
      {props.work !== undefined && <GoingOn {...props.work} isWhole={isWhole} count={count} />}
      <p role="status" class={shown.length === 0 && isWhole ? 'wr-none' : 'sr'}>
        {isWhole && t(shown.length === 0 ? 'wishlist.none-found' : 'wishlist.found', { count: shown.length })}
      </p>
      {Math.ceil(shown.length / columns) > DRAWN_WHOLE && <NotAllDrawn shown={shown} drawn={drawn} />}
      {shown.length > 0 && (
        <ListingTable
          {...props}
          listings={shown}
          rowOf={rowOf}
          onDrawn={setDrawn}
          layout={layout}
          columns={columns}
          search={search}
          onOrder={(order) => setSearch(ordered(search, order))}
          compared={comparedIds}
          onCompare={choose}
        />
      )}
      {comparing && compared.length >= 2 && <Compare listings={compared.map(rowOf)} onClose={uncompare} />}
    </div>
  )
}

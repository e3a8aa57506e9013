/** Kept listings: find, order, change, open, take away. */
import { useId, useState } from 'preact/hooks'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { useDraft } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import { Empty, Headline } from '../frame.tsx'
import { type ListingFields, type ListingShown, STATUSES } from '../shown.ts'
import { useMedia } from '../use-media.ts'
import { Compare } from './compare.tsx'
import { ListingForm } from './listing-form.tsx'
import { found, ORDERS, type Search } from './listing-order.ts'
import { ListingRow } from './listing-row.tsx'
import { MOST_COMPARED } from './side-by-side.ts'

export interface WishlistPageProps {
  listings: readonly ListingShown[]
  currency: string
  /** Is there a body or a garment to set listings beside? */
  ready: boolean
  /** A shop of invented garments is served beside this page. */
  shop?: boolean
  onOpen: (id: string) => void
  onEdit: (id: string, fields: ListingFields) => void
  onRemove: (id: string) => void
}

const VERDICTS = ['wears-as-is', 'alters-to-fit', 'needs-a-tailor', 'comes-close', 'leave-it', 'too-little-told'] as const
const HEADS = ['compare', 'outline', 'garment', 'verdict', 'points', 'hardest', 'time', 'in-all', 'chance', 'status'] as const
const ANY = 'any'

export function WishlistPage({ listings, currency, ready, shop = false, onOpen, onEdit, onRemove }: WishlistPageProps) {
  const { t } = useWords()
  const [search, setSearch] = useState<Search>({ find: '', order: 'kept', status: null, verdict: null })
  /** On a narrow page the filters are folded away until they are asked for. */
  const [filters, setFilters] = useState(false)
  const id = useId()
  const { typed: editing, type: setEditing } = useDraft<string | null>('wishlist', null)
  const { typed: chosen, type: setChosen } = useDraft<readonly string[]>('compare', [])
  const [comparing, setComparing] = useState(false)
  const [asCards, setAsCards] = useState(false)
  const isWide = useMedia('(min-width: 1101px)')
  const isSmall = useMedia('(max-width: 720px)')
  if (listings.length === 0) {
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
      <search class="wr-tools">
        <Field label={t('wishlist.find')} type="search" typed={search.find} onTyped={(find) => setSearch({ ...search, find })} />
        <Choice
          label={t('wishlist.order')}
          value={search.order}
          options={ORDERS.map((value) => ({ value, label: t(`wishlist.order.${value}`) }))}
          onChoose={(order) => setSearch({ ...search, order })}
        />
        <button type="button" class="btn wr-fold" aria-expanded={filters} aria-controls={id} onClick={() => setFilters(!filters)}>
          {t('wishlist.filter', { count: [search.verdict, search.status].filter((one) => one !== null).length })}
        </button>
        <div id={id} class={filters ? 'wr-filters wr-shown' : 'wr-filters'}>
          <Choice
            label={t('wishlist.head.verdict')}
            value={search.verdict ?? ANY}
            options={[
              { value: ANY, label: t('wishlist.any') },
              ...VERDICTS.map((value) => ({ value, label: t('wishlist.verdict', { verdict: value }) }))
            ]}
            onChoose={(value) => setSearch({ ...search, verdict: VERDICTS.find((verdict) => verdict === value) ?? null })}
          />
          <Choice
            label={t('wishlist.status')}
            value={search.status ?? ANY}
            options={[
              { value: ANY, label: t('wishlist.any') },
              ...STATUSES.map((value) => ({ value, label: t(`wishlist.status.${value}`) }))
            ]}
            onChoose={(value) => setSearch({ ...search, status: STATUSES.find((status) => status === value) ?? null })}
          />
        </div>
        <div class="wr-ways">
          {isWide && (
            <Pick
              label={t('wishlist.layout')}
              options={[
                { value: 'table', label: t('wishlist.layout.table') },
                { value: 'cards', label: t('wishlist.layout.cards') }
              ]}
              value={asCards ? 'cards' : 'table'}
              onPick={(value) => setAsCards(value === 'cards')}
            />
          )}
          <button type="button" class="btn" disabled={compared.length < 2} aria-describedby={`${id}-compare`} onClick={compare}>
            {t('wishlist.compare', { count: compared.length })}
          </button>
        </div>
      </search>
      <p class={compared.length === 1 || compared.length === MOST_COMPARED ? 'note wr-count' : 'sr'} id={`${id}-compare`}>
        {t(compared.length === MOST_COMPARED ? 'wishlist.compare.most' : 'wishlist.compare.how')}
      </p>
      <p role="status" class={shown.length === 0 ? 'wr-none' : 'sr'}>
        {t(shown.length === 0 ? 'wishlist.none-found' : 'wishlist.found', { count: shown.length })}
      </p>
      {shown.length > 0 && (
        <table class={`wr-list ${layout}`}>
          <thead>
            <tr>
              {HEADS.map((head) => (
                <th key={head} scope="col">
                  {t(`wishlist.head.${head}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((listing) =>
              editing === listing.id ? (
                <tr key={listing.id} class="wr-editing">
                  <td colSpan={HEADS.length}>
                    <section class="wr-edit">
                      <h2>{t('wishlist.edit', { title: listing.title })}</h2>
                      <ListingForm
                        listing={listing}
                        draft={`listing/${listing.id}`}
                        pagePrice={listing.money.price === null ? listing.price : null}
                        currency={currency}
                        onCancel={() => setEditing(null)}
                        onSave={(fields) => {
                          onEdit(listing.id, fields)
                          setEditing(null)
                        }}
                      />
                    </section>
                  </td>
                </tr>
              ) : (
                <ListingRow
                  key={listing.id}
                  listing={listing}
                  compared={compared.includes(listing)}
                  onCompare={compared.length < MOST_COMPARED || compared.includes(listing) ? (on) => choose(listing, on) : null}
                  onOpen={() => onOpen(listing.id)}
                  onEdit={() => setEditing(listing.id)}
                  onRemove={() => onRemove(listing.id)}
                />
              )
            )}
          </tbody>
        </table>
      )}
      {comparing && compared.length >= 2 && <Compare listings={compared} onClose={() => setComparing(false)} />}
    </>
  )
}

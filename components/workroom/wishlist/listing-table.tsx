/** The kept listings as rows; one that is being changed is its form. The heads of the columns order it. */
import { useEffect, useRef } from 'preact/hooks'
import { Apart } from '../../apart.tsx'
import { BrokenRow } from '../../broken.tsx'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, whenSaved } from '../drafts.tsx'
import type { ListingChanges, ListingFields, ListingShown, Status } from '../shown.ts'
import { ListingForm, type ListingFormProps } from './listing-form.tsx'
import { type Order, type Search, wayOf } from './listing-order.ts'
import { ListingRow } from './listing-row.tsx'
import type { PicturePartProps } from './picture-part.tsx'
import { MOST_COMPARED } from './side-by-side.ts'

/** The columns, and what each is ordered by; null: there is no order in it. */
const HEADS: readonly (readonly [head: string, order: Order | null])[] = [
  ['compare', null],
  ['outline', null],
  ['garment', 'title'],
  ['verdict', 'verdict'],
  ['points', null],
  ['work', 'minutes'],
  ['in-all', 'spend'],
  ['chance', 'chance'],
  ['kept', 'kept'],
  ['status', 'status']
]
const UNSEEN = new Set(['compare', 'outline'])

export interface ListingTableProps {
  listings: readonly ListingShown[]
  /** The class of its layout: a table or cards. */
  layout: string
  search: Pick<Search, 'order' | 'turned'>
  onOrder: (order: Order) => void
  /** ISO date. */
  today: string
  /** Those that are chosen to be compared. */
  compared: readonly ListingShown[]
  currency: string
  onCompare: (listing: ListingShown, on: boolean) => void
  onOpen: (id: string) => void
  cardOf: (id: string) => string
  /** Where the work on a listing is. */
  workOf: (id: string) => string
  /** `began`: what is changed as it was shown first. */
  onEdit: (id: string, changes: ListingChanges, began: Partial<ListingFields>) => Saved
  onStatus: (id: string, status: Status) => void
  onRemove: (id: string) => void
  onPicture: (id: string, file: File) => void
  onNoPicture: (id: string) => void
  /** What went wrong with the file last chosen, as a code, and for which listing. */
  pictureProblem: { id: string; problem: string } | null
}

export function ListingTable(props: ListingTableProps) {
  const { listings, compared, currency, onEdit } = props
  const { t } = useWords()
  const { typed: editing, type: setEditing } = useDraft<string | null>('wishlist', null)
  const mayCompare = (listing: ListingShown) => compared.length < MOST_COMPARED || compared.includes(listing)
  const { table, acted } = useFocusKept(listings)
  /** Back to the button that opened the form. */
  const close = (id: string) => {
    setEditing(null)
    requestAnimationFrame(() => document.getElementById(`change-${id}`)?.focus())
  }
  const remove = (id: string) => {
    acted(id)
    props.onRemove(id)
  }
  return (
    <table class={`wr-list ${props.layout}`} ref={table}>
      <thead>
        <tr>
          {HEADS.map(([head, order]) => (
            <Head key={head} head={head} order={order} search={props.search} onOrder={props.onOrder} />
          ))}
        </tr>
      </thead>
      <tbody>
        {listings.map((listing) =>
          editing === listing.id ? (
            <EditedRow
              key={listing.id}
              listing={listing}
              currency={currency}
              picture={{
                problem: props.pictureProblem?.id === listing.id ? props.pictureProblem.problem : null,
                onFile: (file) => props.onPicture(listing.id, file),
                onRemove: () => props.onNoPicture(listing.id)
              }}
              onCancel={() => close(listing.id)}
              onSave={(changes, began) => whenSaved(onEdit(listing.id, changes, began), () => close(listing.id))}
            />
          ) : (
            <Apart
              key={listing.id}
              of={stateOf(listing)}
              broken={() => (
                <BrokenRow columns={HEADS.length} title={listing.title || t('wishlist.untitled')} onRemove={() => remove(listing.id)} />
              )}
            >
              <ListingRow
                listing={listing}
                today={props.today}
                compared={compared.includes(listing)}
                onCompare={mayCompare(listing) ? (on) => props.onCompare(listing, on) : null}
                onOpen={() => props.onOpen(listing.id)}
                card={props.cardOf(listing.id)}
                work={props.workOf(listing.id)}
                onStatus={(status) => {
                  acted(listing.id)
                  props.onStatus(listing.id, status)
                }}
                onNotes={(notes, began) => {
                  acted(listing.id)
                  return onEdit(listing.id, { notes }, { notes: began })
                }}
                onEdit={() => setEditing(listing.id)}
                onRemove={() => remove(listing.id)}
              />
            </Apart>
          )
        )}
      </tbody>
    </table>
  )
}

interface EditedRowProps extends Pick<ListingFormProps, 'currency' | 'onSave' | 'onCancel'> {
  listing: ListingShown
  picture: Pick<PicturePartProps, 'problem' | 'onFile' | 'onRemove'>
}

/** A row that is being changed: its form. */
function EditedRow({ listing, picture, ...form }: EditedRowProps) {
  const { t } = useWords()
  const title = listing.title || t('wishlist.untitled')
  return (
    <tr class="wr-editing" data-listing={listing.id}>
      <td colSpan={HEADS.length}>
        <ListingForm
          {...form}
          heading={t('wishlist.edit', { title })}
          listing={listing}
          draft={`listing/${listing.id}`}
          pagePrice={listing.money.price === null ? listing.price : null}
          picture={{ ...picture, title, picture: listing.picture ?? null }}
        />
      </td>
    </tr>
  )
}

interface HeadProps {
  head: string
  order: Order | null
  search: Pick<Search, 'order' | 'turned'>
  onOrder: (order: Order) => void
}

/** What a row is about, without the picture, which is long and can't fail. */
const stateOf = ({ picture, ...listing }: ListingShown): string => JSON.stringify([listing, picture?.length ?? null])

/** A head that can be pressed where its column has an order; a notch points the way the list goes. */
function Head({ head, order, search, onOrder }: HeadProps) {
  const { t } = useWords()
  const name = t(`wishlist.head.${head}`)
  const way = order === search.order ? wayOf(search) : null
  if (order === null)
    return (
      <th scope="col" class={`h-${head}`}>
        <span class={UNSEEN.has(head) ? 'sr' : undefined}>{name}</span>
      </th>
    )
  return (
    <th scope="col" class={`h-${head}`} {...(way === null ? {} : { 'aria-sort': way })}>
      <button type="button" class="wr-sort" onClick={() => onOrder(order)}>
        {name}
        <svg class={way === null ? 'wr-way' : `wr-way wr-${way}`} viewBox="0 0 8 6" width="8" height="6" aria-hidden="true">
          <path d={way === 'ascending' ? 'M0 6h8L4 0z' : 'M0 0h8L4 6z'} />
        </svg>
      </button>
    </th>
  )
}

/** An act whose change is not seen within this, ms, no longer draws the focus. */
const SOON = 2000

/**
 * After a row's status is changed or a row is removed, the row may move or go. Then the status keeps the focus; where the row went, the
 * one that now stands in its place gets it, so that nobody begins again at the top of the page.
 */
function useFocusKept(listings: readonly ListingShown[]) {
  const table = useRef<HTMLTableElement | null>(null)
  const last = useRef<{ id: string; place: number; at: number } | null>(null)
  const rowsOf = () => [...(table.current?.querySelectorAll<HTMLElement>('tbody > tr') ?? [])]
  useEffect(() => {
    const was = last.current
    if (was === null || (document.activeElement !== null && document.activeElement !== document.body)) return
    last.current = null
    if (Date.now() - was.at > SOON) return
    const status = document.getElementById(`status-${was.id}`)
    const rows = rowsOf()
    const next = rows[Math.min(was.place, rows.length - 1)]?.querySelector<HTMLElement>('.wr-title')
    const target = status ?? next
    target?.focus()
  }, [listings])
  const acted = (id: string) => {
    last.current = { id, place: rowsOf().findIndex((row) => row.dataset.listing === id), at: Date.now() }
  }
  return { table, acted }
}

/** The kept listings as rows; one that is being changed is its form. The heads of the columns order it. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { table } from '../../../core/ids/table.ts'
import { Apart } from '../../apart.tsx'
import { BrokenRow } from '../../broken.tsx'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, whenSaved } from '../drafts.tsx'
import type { FindShown, ListingChanges, ListingFields, ListingShown, Status } from '../shown.ts'
import { ListingForm, type ListingFormProps } from './listing-form.tsx'
import { type Order, type Search, wayOf } from './listing-order.ts'
import { ListingRow } from './listing-row.tsx'
import type { PicturePartProps } from './picture-part.tsx'
import { MOST_COMPARED } from './side-by-side.ts'
import { useLines } from './use-lines.ts'

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
  listings: readonly FindShown[]
  /** A find with what its row is drawn from, as far as it is here. */
  rowOf: (find: FindShown) => ListingShown
  /** The ids of the rows that are drawn, whenever they are others. */
  onDrawn: (ids: readonly string[]) => void
  /** The class of its layout: a table or cards. */
  layout: string
  /** How many cards stand beside each other; 1 in a table. */
  columns: number
  search: Pick<Search, 'order' | 'turned'>
  onOrder: (order: Order) => void
  /** ISO date. */
  today: string
  /** The ids of those that are chosen to be compared. */
  compared: readonly string[]
  currency: string
  onCompare: (id: string, on: boolean) => void
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
  const { listings, layout, columns, compared, onDrawn } = props
  const { typed: editing, type: setEditing } = useDraft<string | null>('wishlist', null)
  const focus = useFocusKept(listings)
  const lineOf = (id: string | null): number => (id === null ? -1 : Math.floor(listings.findIndex((one) => one.id === id) / columns))
  const keyOf = useMemo(() => (line: number) => listings[line * columns]?.id ?? '', [listings, columns])
  const { drawn, measure } = useLines({
    count: Math.ceil(listings.length / columns),
    estimatePx: useMemo(() => letterPx() * (TALL_REM[layout] ?? ROW_REM), [layout]),
    list: focus.table,
    keyOf,
    kept: [lineOf(focus.id), lineOf(editing)],
    layout: `${layout} ${columns}`
  })
  const onLine = (line: number) => listings.slice(line * columns, (line + 1) * columns)
  const ids = drawn.flatMap((one) => ('line' in one ? onLine(one.line).map(({ id }) => id) : []))
  useEffect(() => onDrawn(ids), [ids.join()])
  const acts = useActs(props, focus.acted, setEditing)
  return (
    <table
      class={`wr-list ${layout}`}
      ref={focus.table}
      aria-rowcount={listings.length + 1}
      onFocusIn={focus.onFocusIn}
      onFocusOut={focus.onFocusOut}
    >
      <thead>
        <tr aria-rowindex={1}>
          {HEADS.map(([head, order]) => (
            <Head key={head} head={head} order={order} search={props.search} onOrder={props.onOrder} />
          ))}
        </tr>
      </thead>
      {drawn.map((one) =>
        'room' in one ? (
          <Room key={`room ${one.before}`} px={one.room} />
        ) : (
          <tbody key={keyOf(one.line)} data-index={one.line} ref={measure} style={columns > 1 ? { '--columns': columns } : undefined}>
            {onLine(one.line).map((find, place) => (
              <Line
                key={find.id}
                {...props}
                find={find}
                place={one.line * columns + place}
                isEdited={editing === find.id}
                isCompared={compared.includes(find.id)}
                mayCompare={compared.length < MOST_COMPARED || compared.includes(find.id)}
                acts={acts}
              />
            ))}
          </tbody>
        )
      )}
    </table>
  )
}

/** How tall a row or a card mostly is, rem: until it is measured. */
const TALL_REM = table<number>({ 'wr-cards wr-wide-cards': 12, 'wr-cards wr-small-cards': 26 })
const ROW_REM = 8.6
const letterPx = (): number => Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16

/** Room for the rows that are not drawn. */
function Room({ px }: { px: number }) {
  return (
    <tbody class="wr-room" aria-hidden="true">
      <tr>
        <td colSpan={HEADS.length} style={{ height: `${px}px` }} />
      </tr>
    </tbody>
  )
}

/** What is done in a row: the same functions as long as the table stands, so that a row that stays as it is need not be drawn again. */
interface Acts {
  compare: (id: string, on: boolean) => void
  open: (id: string) => void
  status: (id: string, status: Status) => void
  notes: (id: string, notes: string, began: string) => Saved
  edit: (id: string) => void
  remove: (id: string) => void
  save: (id: string, changes: ListingChanges, began: Partial<ListingFields>) => Saved
  close: (id: string) => void
}

function useActs(props: ListingTableProps, acted: (id: string) => void, setEditing: (id: string | null) => void): Acts {
  const now = useRef({ props, acted, setEditing })
  now.current = { props, acted, setEditing }
  return useMemo(() => {
    const of = () => now.current.props
    const after = (id: string) => now.current.acted(id)
    /** Back to the button that opened the form. */
    const close = (id: string) => {
      now.current.setEditing(null)
      requestAnimationFrame(() => document.getElementById(`change-${id}`)?.focus())
    }
    return {
      compare: (id, on) => of().onCompare(id, on),
      open: (id) => of().onOpen(id),
      status: (id, status) => {
        after(id)
        of().onStatus(id, status)
      },
      notes: (id, notes, began) => {
        after(id)
        return of().onEdit(id, { notes }, { notes: began })
      },
      edit: (id) => now.current.setEditing(id),
      remove: (id) => {
        after(id)
        of().onRemove(id)
      },
      save: (id, changes, began) => whenSaved(of().onEdit(id, changes, began), () => close(id)),
      close
    }
  }, [])
}

interface LineProps extends ListingTableProps {
  find: FindShown
  /** Where it stands in the list, from 0. */
  place: number
  isEdited: boolean
  isCompared: boolean
  mayCompare: boolean
  acts: Acts
}

/** A row, or the form that it is while it is changed. Drawn again only when something that it shows is another. */
function Line(props: LineProps) {
  const { find, rowOf, place, isEdited, isCompared, mayCompare, acts, today, currency } = props
  const { t } = useWords()
  const { id } = find
  const listing = rowOf(find)
  const problem = props.pictureProblem?.id === id ? props.pictureProblem.problem : null
  return useMemo(
    () =>
      isEdited ? (
        <EditedRow
          listing={listing}
          currency={currency}
          picture={{ problem, onFile: (file) => props.onPicture(id, file), onRemove: () => props.onNoPicture(id) }}
          onCancel={() => acts.close(id)}
          onSave={(changes, began) => acts.save(id, changes, began)}
        />
      ) : (
        <Apart
          of={stateOf(listing)}
          broken={() => (
            <BrokenRow columns={HEADS.length} title={listing.title || t('wishlist.untitled')} onRemove={() => acts.remove(id)} />
          )}
        >
          <ListingRow
            listing={listing}
            place={place}
            today={today}
            compared={isCompared}
            onCompare={mayCompare ? (on) => acts.compare(id, on) : null}
            onOpen={() => acts.open(id)}
            card={props.cardOf(id)}
            work={props.workOf(id)}
            onStatus={(status) => acts.status(id, status)}
            onNotes={(notes, began) => acts.notes(id, notes, began)}
            onEdit={() => acts.edit(id)}
            onRemove={() => acts.remove(id)}
          />
        </Apart>
      ),
    [find, listing.now, listing.picture, place, isEdited, isCompared, mayCompare, today, currency, problem, t]
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
 * one that now stands in its place gets it, so that nobody begins again at the top of the page. The row with the focus stays drawn.
 */
function useFocusKept(listings: readonly FindShown[]) {
  const table = useRef<HTMLTableElement | null>(null)
  const last = useRef<{ id: string; place: number; at: number } | null>(null)
  const [id, setId] = useState<string | null>(null)
  const rowOf = (one: string | undefined) =>
    one === undefined ? null : (table.current?.querySelector<HTMLElement>(`[data-listing="${CSS.escape(one)}"]`) ?? null)
  useEffect(() => {
    const was = last.current
    if (was === null || (document.activeElement !== null && document.activeElement !== document.body)) return
    last.current = null
    if (Date.now() - was.at > SOON) return
    const status = document.getElementById(`status-${was.id}`)
    const next = rowOf(listings[Math.min(was.place, listings.length - 1)]?.id)?.querySelector<HTMLElement>('.wr-title')
    const target = status ?? next
    target?.focus()
  }, [listings])
  const acted = (one: string) => {
    last.current = { id: one, place: listings.findIndex((listing) => listing.id === one), at: Date.now() }
  }
  const onFocusIn = ({ target }: FocusEvent) => {
    const row = target instanceof Element ? target.closest<HTMLElement>('[data-listing]') : null
    setId(row?.dataset.listing ?? null)
  }
  const onFocusOut = ({ relatedTarget }: FocusEvent) => {
    // a row that is drawn anew loses the focus to nothing, and gets it again
    if (relatedTarget instanceof Node && table.current?.contains(relatedTarget) !== true) setId(null)
  }
  return { table, id, acted, onFocusIn, onFocusOut }
}

/** The kept listings as rows; one that is being changed is its form. */

import { useContext } from 'preact/hooks'
import { Apart } from '../../apart.tsx'
import { BrokenRow } from '../../broken.tsx'
import { useWords } from '../../words.tsx'
import { DraftsHeld, type Saved, useDraft, whenSaved } from '../drafts.tsx'
import type { ListingChanges, ListingFields, ListingShown } from '../shown.ts'
import { ListingForm, notesTyped } from './listing-form.tsx'
import { ListingRow } from './listing-row.tsx'
import { MOST_COMPARED } from './side-by-side.ts'

const HEADS = ['compare', 'outline', 'garment', 'verdict', 'points', 'hardest', 'time', 'in-all', 'chance', 'status'] as const

export interface ListingTableProps {
  listings: readonly ListingShown[]
  /** The class of its layout: a table or cards. */
  layout: string
  /** Those that are chosen to be compared. */
  compared: readonly ListingShown[]
  currency: string
  onCompare: (listing: ListingShown, on: boolean) => void
  onOpen: (id: string) => void
  cardOf: (id: string) => string
  onEdit: (id: string, changes: ListingChanges, began: ListingFields) => Saved
  onRemove: (id: string) => void
}

export function ListingTable({ listings, layout, compared, currency, onCompare, onOpen, cardOf, onEdit, onRemove }: ListingTableProps) {
  const { t } = useWords()
  const { typed: editing, type: setEditing } = useDraft<string | null>('wishlist', null)
  const mayCompare = (listing: ListingShown) => compared.length < MOST_COMPARED || compared.includes(listing)
  const held = useContext(DraftsHeld)
  const lost = editing !== null && !listings.some(({ id }) => id === editing) ? notesTyped(held?.get(`listing/${editing}`)) : ''
  return (
    <>
      {lost !== '' && <p role="alert">{t('wishlist.gone.typed', { notes: lost })}</p>}
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
          {listings.map((listing) =>
            editing === listing.id ? (
              <EditedRow
                key={listing.id}
                listing={listing}
                currency={currency}
                onCancel={() => setEditing(null)}
                onSave={(changes, began) => whenSaved(onEdit(listing.id, changes, began), () => setEditing(null))}
              />
            ) : (
              <Apart
                key={listing.id}
                of={JSON.stringify(listing)}
                broken={() => (
                  <BrokenRow columns={HEADS.length} title={listing.title || t('wishlist.untitled')} onRemove={() => onRemove(listing.id)} />
                )}
              >
                <ListingRow
                  listing={listing}
                  compared={compared.includes(listing)}
                  onCompare={mayCompare(listing) ? (on) => onCompare(listing, on) : null}
                  onOpen={() => onOpen(listing.id)}
                  card={cardOf(listing.id)}
                  onEdit={() => setEditing(listing.id)}
                  onRemove={() => onRemove(listing.id)}
                />
              </Apart>
            )
          )}
        </tbody>
      </table>
    </>
  )
}

interface EditedRowProps {
  listing: ListingShown
  currency: string
  onSave: (changes: ListingChanges, began: ListingFields) => Saved
  onCancel: () => void
}

function EditedRow({ listing, currency, onSave, onCancel }: EditedRowProps) {
  const { t } = useWords()
  return (
    <tr class="wr-editing">
      <td colSpan={HEADS.length}>
        <section class="wr-edit">
          <h2>{t('wishlist.edit', { title: listing.title })}</h2>
          <ListingForm
            listing={listing}
            draft={`listing/${listing.id}`}
            pagePrice={listing.money.price === null ? listing.price : null}
            currency={currency}
            onCancel={onCancel}
            onSave={onSave}
          />
        </section>
      </td>
    </tr>
  )
}

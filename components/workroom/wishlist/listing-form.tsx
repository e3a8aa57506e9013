/** What can be changed of a kept listing without opening it: status, notes, tags and the person's own figures. */
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Choice, Field } from '../field.tsx'
import { type ListingChanges, type ListingFields, type Money, STATUSES } from '../shown.ts'
import { moneyTyped, typedMoney } from '../typed.ts'

export interface ListingFormProps {
  listing: ListingFields
  /** The name its half-typed text is held under. */
  draft?: string
  /** What the page said it costs, where the person typed nothing. */
  pagePrice: number | null
  currency: string
  /** With what was changed here: the rest may have been changed elsewhere while the form was open. */
  onSave: (changes: ListingChanges, began: ListingFields) => Saved
  onCancel: () => void
}

const FIGURES = ['price', 'postage', 'worth'] as const

export function ListingForm({ listing, draft = 'listing', pagePrice, currency, onSave, onCancel }: ListingFormProps) {
  const { t } = useWords()
  const form = useDraft(draft, { from: fieldsOf(listing), began: typedOf(listing), now: typedOf(listing) })
  const { from, began, now: typed } = form.typed
  const { status, notes, tags } = typed
  const type = (changed: Partial<Typed>) => form.type({ from, began, now: { ...typed, ...changed } })
  const send = useSend((changes: ListingChanges) => onSave(changes, from), form.drop)
  const price = typedMoney(typed.price)
  const postage = typedMoney(typed.postage)
  const worth = typedMoney(typed.worth)
  const taken = { price, postage, worth }

  const save = (event: Event) => {
    event.preventDefault()
    if (price.ok && postage.ok && worth.ok) {
      const money = { price: price.value, postage: postage.value, worth: worth.value }
      return send(changesOf(began, typed, money))
    }
    const its = event.currentTarget
    if (its instanceof HTMLElement) its.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus()
  }
  return (
    <form class="wr-form" noValidate onSubmit={save}>
      <Choice
        label={t('wishlist.status')}
        value={status}
        options={STATUSES.map((value) => ({ value, label: t(`wishlist.status.${value}`) }))}
        onChoose={(status) => type({ status })}
      />
      <div class="wr-three">
        {FIGURES.map((figure) => {
          const one = taken[figure]
          return (
            <Field
              key={figure}
              label={t(`wishlist.${figure}`)}
              typed={typed[figure]}
              onTyped={(text) => type({ [figure]: text })}
              unit={currency}
              problem={one.ok ? null : t(one.problem)}
              note={figure === 'price' && pagePrice !== null ? t('wishlist.price.page', { amount: pagePrice }) : null}
            />
          )
        })}
      </div>
      <Field label={t('wishlist.notes')} typed={notes} onTyped={(notes) => type({ notes })} long />
      <Field label={t('wishlist.tags')} typed={tags} onTyped={(tags) => type({ tags })} note={t('wishlist.tags.note')} />
      <div class="row">
        <button type="submit" class="btn main">
          {t('workroom.save')}
        </button>
        <button
          type="button"
          class="btn"
          onClick={() => {
            form.drop()
            onCancel()
          }}
        >
          {t('workroom.cancel')}
        </button>
      </div>
    </form>
  )
}

/** The listing as the form showed it first. */
const fieldsOf = ({ status, notes, tags, money }: ListingFields): ListingFields => ({ status, notes, tags, money })

const typedOf = ({ status, notes, tags, money }: ListingFields) => ({
  status,
  notes,
  tags: tags.join(', '),
  price: moneyTyped(money.price),
  postage: moneyTyped(money.postage),
  worth: moneyTyped(money.worth)
})
type Typed = ReturnType<typeof typedOf>

/** The notes in the half-typed text of a form that is gone; '' where none were typed. */
export function notesTyped(held: unknown): string {
  if (typeof held !== 'object' || held === null || !('now' in held) || typeof held.now !== 'object' || held.now === null) return ''
  return 'notes' in held.now && typeof held.now.notes === 'string' ? held.now.notes : ''
}

function changesOf(began: Typed, typed: Typed, money: Money): ListingChanges {
  const changes: ListingChanges = {}
  if (typed.status !== began.status) changes.status = typed.status
  if (typed.notes !== began.notes) changes.notes = typed.notes
  if (typed.tags !== began.tags) changes.tags = tagsFrom(typed.tags)
  const figures = FIGURES.filter((figure) => typed[figure] !== began[figure])
  if (figures.length > 0) changes.money = Object.fromEntries(figures.map((figure) => [figure, money[figure]]))
  return changes
}

const tagsFrom = (typed: string): string[] => [
  ...new Set(
    typed
      .split(',')
      .map((tag) => tag.trim())
      .filter(Boolean)
  )
]

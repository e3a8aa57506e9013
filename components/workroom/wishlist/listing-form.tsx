/** What can be changed of a kept listing without opening it: the person's own figures, tags and its picture. Status and notes stand in its row. */
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Field } from '../field.tsx'
import { onEscape, useFocusFirst } from '../form-focus.ts'
import type { ListingChanges, ListingFields, Money } from '../shown.ts'
import { moneyTyped, typedMoney } from '../typed.ts'
import { PicturePart, type PicturePartProps } from './picture-part.tsx'

export interface ListingFormProps {
  heading: string
  listing: Pick<ListingFields, 'tags' | 'money'>
  /** The name its half-typed text is held under. */
  draft?: string
  /** What the page said it costs, where the person typed nothing. */
  pagePrice: number | null
  currency: string
  /** Its picture, kept at once; left out: it can have none here. */
  picture?: PicturePartProps
  /** With what was changed here: the rest may have been changed elsewhere while the form was open. */
  onSave: (changes: ListingChanges, began: Pick<ListingFields, 'tags' | 'money'>) => Saved
  onCancel: () => void
}

const FIGURES = ['price', 'postage', 'worth'] as const

export function ListingForm({ heading, listing, draft = 'listing', pagePrice, currency, picture, onSave, onCancel }: ListingFormProps) {
  const { t } = useWords()
  const begun = useFocusFirst()
  const form = useDraft(draft, { from: fieldsOf(listing), began: typedOf(listing), now: typedOf(listing) })
  const { from, began, now: typed } = form.typed
  const { tags } = typed
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
  const cancel = () => {
    form.drop()
    onCancel()
  }
  return (
    <form class="wr-form wr-edit" noValidate onSubmit={save} onKeyDown={onEscape(cancel)} ref={begun}>
      <h2>{heading}</h2>
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
      <Field label={t('wishlist.tags')} typed={tags} onTyped={(tags) => type({ tags })} note={t('wishlist.tags.note')} />
      {picture !== undefined && <PicturePart {...picture} />}
      <div class="row">
        <button type="submit" class="btn main">
          {t('workroom.save')}
        </button>
        <button type="button" class="btn" onClick={cancel}>
          {t('workroom.cancel')}
        </button>
      </div>
    </form>
  )
}

/** What the form shows of the listing, as it showed it first. */
const fieldsOf = ({ tags, money }: ListingFormProps['listing']): ListingFormProps['listing'] => ({ tags, money })

const typedOf = ({ tags, money }: ListingFormProps['listing']) => ({
  tags: tags.join(', '),
  price: moneyTyped(money.price),
  postage: moneyTyped(money.postage),
  worth: moneyTyped(money.worth)
})
type Typed = ReturnType<typeof typedOf>

function changesOf(began: Typed, typed: Typed, money: Money): ListingChanges {
  const changes: ListingChanges = {}
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

/** The tools over the wishlist: find, order, filter, table or cards, and set side by side. */
import { useId, useState } from 'preact/hooks'
import { GARMENT_KINDS, type GarmentKind } from '../../../core/ids/kinds.ts'
import { VERDICTS } from '../../../core/ids/verdicts.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { Choice, Field } from '../field.tsx'
import { STATUSES } from '../shown.ts'
import { typedMoney } from '../typed.ts'
import { filtersSet, ORDER_IDS, SEARCH_ALL, type Search } from './listing-order.ts'

export interface WishlistToolsProps {
  search: Search
  onSearch: (search: Search) => void
  /** The kinds that are kept: others are not offered. */
  kinds: readonly GarmentKind[]
  currency: string
  /** Has the list heads to press? Where it has none, the order is chosen here. */
  hasHeads: boolean
  /** null: there is only one way to lay them out. */
  asCards: boolean | null
  onCards: (asCards: boolean) => void
  /** How many are chosen to be compared. */
  compared: number
  /** The id of the button that compares. */
  pressId: string
  /** The id of what says how comparing is done. */
  describedBy: string
  onCompare: () => void
}

export function WishlistTools(props: WishlistToolsProps) {
  const { search, onSearch, asCards, onCards, compared } = props
  const { t } = useWords()
  /** On a narrow page the filters are folded away until they are asked for. */
  const [filters, setFilters] = useState(false)
  const id = useId()
  const set = filtersSet(search)
  return (
    <search class={props.hasHeads ? 'wr-tools' : 'wr-tools wr-no-heads'}>
      <Field label={t('wishlist.find')} type="search" typed={search.find} onTyped={(find) => onSearch({ ...search, find })} />
      {!props.hasHeads && (
        <Choice
          label={t('wishlist.order')}
          value={search.order}
          options={ORDER_IDS.map((value) => ({ value, label: t(`wishlist.order.${value}`) }))}
          onChoose={(order) => onSearch({ ...search, order, turned: false })}
        />
      )}
      <button type="button" class="btn wr-fold" aria-expanded={filters} aria-controls={id} onClick={() => setFilters(!filters)}>
        {t('wishlist.filter', { count: set })}
      </button>
      <div id={id} class={filters ? 'wr-filters wr-shown' : 'wr-filters'}>
        <Filters {...props} />
      </div>
      {set > 0 && (
        <button
          type="button"
          class="btn bare"
          onClick={(event) => {
            onSearch({ ...SEARCH_ALL, find: search.find, order: search.order, turned: search.turned })
            // this button goes with the filters: on to the first of them
            const its = event.currentTarget.closest('search')
            its?.querySelector<HTMLElement>('select, input')?.focus()
          }}
        >
          {t('wishlist.filter.clear')}
        </button>
      )}
      <div class="wr-ways">
        {asCards !== null && (
          <Pick
            label={t('wishlist.layout')}
            options={[
              { value: 'table', label: t('wishlist.layout.table') },
              { value: 'cards', label: t('wishlist.layout.cards') }
            ]}
            value={asCards ? 'cards' : 'table'}
            onPick={(value) => onCards(value === 'cards')}
          />
        )}
        <button
          type="button"
          id={props.pressId}
          class="btn"
          disabled={compared < 2}
          aria-describedby={props.describedBy}
          onClick={props.onCompare}
        >
          {t('wishlist.compare', { count: compared })}
        </button>
      </div>
    </search>
  )
}

const ANY = 'any'
/** Work of no more than this, minutes; 0: no work at all. */
const MINUTES_MOST = [0, 60, 120, 240, 480] as const

/** One of a few, or any of them. */
function Filter<V extends string>({
  label,
  value,
  options,
  onFilter
}: {
  label: string
  value: V | null
  options: readonly { value: V; label: string }[]
  onFilter: (value: V | null) => void
}) {
  const { t } = useWords()
  const all: { value: V | typeof ANY; label: string }[] = [{ value: ANY, label: t('wishlist.any') }, ...options]
  return <Choice label={label} value={value ?? ANY} options={all} onChoose={(chosen) => onFilter(chosen === ANY ? null : (chosen as V))} />
}

function Filters({ search, onSearch, kinds, currency }: WishlistToolsProps) {
  const { t } = useWords()
  const [typed, setTyped] = useState(search.spendMost === null ? '' : String(search.spendMost))
  const money = typedMoney(typed)
  const shown = GARMENT_KINDS.filter((kind) => kinds.includes(kind) || kind === search.kind)
  return (
    <>
      <Filter
        label={t('wishlist.kind')}
        value={search.kind}
        options={shown.map((value) => ({ value, label: t('garment.kind.is', { kind: value }) }))}
        onFilter={(kind) => onSearch({ ...search, kind })}
      />
      <Filter
        label={t('wishlist.head.verdict')}
        value={search.verdict}
        options={VERDICTS.map((value) => ({ value, label: t('wishlist.verdict', { verdict: value }) }))}
        onFilter={(verdict) => onSearch({ ...search, verdict })}
      />
      <Filter
        label={t('wishlist.status')}
        value={search.status}
        options={STATUSES.map((value) => ({ value, label: t(`wishlist.status.${value}`) }))}
        onFilter={(status) => onSearch({ ...search, status })}
      />
      <Filter
        label={t('wishlist.filter.work')}
        value={search.minutesMost === null ? null : String(search.minutesMost)}
        options={MINUTES_MOST.map((minutes) => ({
          value: String(minutes),
          label: minutes === 0 ? t('wishlist.filter.no-work') : t('wishlist.filter.up-to', { minutes })
        }))}
        onFilter={(minutes) => onSearch({ ...search, minutesMost: minutes === null ? null : Number(minutes) })}
      />
      <Field
        label={t('wishlist.filter.spend')}
        typed={search.spendMost === null && money.ok ? '' : typed}
        unit={currency}
        onTyped={(text) => {
          setTyped(text)
          const read = typedMoney(text)
          if (read.ok) onSearch({ ...search, spendMost: read.value })
        }}
        problem={money.ok ? null : t(money.problem)}
      />
    </>
  )
}

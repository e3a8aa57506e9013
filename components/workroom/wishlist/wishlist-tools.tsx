/** The tools over the wishlist: find, order, filter, table or cards, and set side by side. */
import { useId, useState } from 'preact/hooks'
import { VERDICTS } from '../../../core/ids/verdicts.ts'
import { Pick } from '../../pick.tsx'
import { useWords } from '../../words.tsx'
import { Choice, Field } from '../field.tsx'
import { STATUSES } from '../shown.ts'
import { ORDERS, type Search } from './listing-order.ts'

export interface WishlistToolsProps {
  search: Search
  onSearch: (search: Search) => void
  /** null: there is only one way to lay them out. */
  asCards: boolean | null
  onCards: (asCards: boolean) => void
  /** How many are chosen to be compared. */
  compared: number
  /** The id of what says how comparing is done. */
  describedBy: string
  onCompare: () => void
}

export function WishlistTools({ search, onSearch, asCards, onCards, compared, describedBy, onCompare }: WishlistToolsProps) {
  const { t } = useWords()
  /** On a narrow page the filters are folded away until they are asked for. */
  const [filters, setFilters] = useState(false)
  const id = useId()
  return (
    <search class="wr-tools">
      <Field label={t('wishlist.find')} type="search" typed={search.find} onTyped={(find) => onSearch({ ...search, find })} />
      <Choice
        label={t('wishlist.order')}
        value={search.order}
        options={ORDERS.map((value) => ({ value, label: t(`wishlist.order.${value}`) }))}
        onChoose={(order) => onSearch({ ...search, order })}
      />
      <button type="button" class="btn wr-fold" aria-expanded={filters} aria-controls={id} onClick={() => setFilters(!filters)}>
        {t('wishlist.filter', { count: [search.verdict, search.status].filter((one) => one !== null).length })}
      </button>
      <div id={id} class={filters ? 'wr-filters wr-shown' : 'wr-filters'}>
        <Filters search={search} onSearch={onSearch} />
      </div>
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
        <button type="button" class="btn" disabled={compared < 2} aria-describedby={describedBy} onClick={onCompare}>
          {t('wishlist.compare', { count: compared })}
        </button>
      </div>
    </search>
  )
}

const ANY = 'any'

function Filters({ search, onSearch }: { search: Search; onSearch: (search: Search) => void }) {
  const { t } = useWords()
  return (
    <>
      <Choice
        label={t('wishlist.head.verdict')}
        value={search.verdict ?? ANY}
        options={[
          { value: ANY, label: t('wishlist.any') },
          ...VERDICTS.map((value) => ({ value, label: t('wishlist.verdict', { verdict: value }) }))
        ]}
        onChoose={(value) => onSearch({ ...search, verdict: VERDICTS.find((verdict) => verdict === value) ?? null })}
      />
      <Choice
        label={t('wishlist.status')}
        value={search.status ?? ANY}
        options={[{ value: ANY, label: t('wishlist.any') }, ...STATUSES.map((value) => ({ value, label: t(`wishlist.status.${value}`) }))]}
        onChoose={(value) => onSearch({ ...search, status: STATUSES.find((status) => status === value) ?? null })}
      />
    </>
  )
}

/** What a tailor asks for each job, and what the notions for it cost: the person's own figures; a job without one stays without a price. */
import { ALTERATIONS, type AlterationId } from '../../../core/ids/alterations.ts'
import { useWords } from '../../words.tsx'
import { type Saved, useDraft, useSend } from '../drafts.tsx'
import { Field } from '../field.tsx'
import { Fold } from '../fold.tsx'
import { moneyTyped, typedMoney } from '../typed.ts'

export type Prices = Partial<Record<AlterationId, number>>
export interface Lists {
  tailorPrices: Prices
  notions: Prices
}
export interface PriceListProps {
  tailorPrices: Prices
  notions: Prices
  /** The jobs that come up: they stand first, the others are folded away. */
  met: readonly AlterationId[]
  currency: string
  /** `began`: as the list showed them first. */
  onSave: (prices: Lists, began: Lists) => Saved
}

type Typed = Readonly<Partial<Record<AlterationId, string>>>
const LISTS = ['tailorPrices', 'notions'] as const

export function PriceList({ tailorPrices, notions, met, currency, onSave }: PriceListProps) {
  const { t } = useWords()
  const { typed, type, drop } = useDraft<Record<(typeof LISTS)[number], Typed> & { began: Lists }>('prices', {
    began: { tailorPrices, notions },
    tailorPrices: typedPrices(tailorPrices),
    notions: typedPrices(notions)
  })
  const send = useSend((prices: Lists) => onSave(prices, typed.began), drop)
  const save = (event: Event) => {
    event.preventDefault()
    const prices = { tailorPrices: pricesFrom(typed.tailorPrices), notions: pricesFrom(typed.notions) }
    if (prices.tailorPrices !== null && prices.notions !== null) {
      return send({ tailorPrices: prices.tailorPrices, notions: prices.notions })
    }
    const form = event.currentTarget
    if (form instanceof HTMLElement) form.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus()
  }
  const isFirst = (id: AlterationId) => met.includes(id) || tailorPrices[id] !== undefined || notions[id] !== undefined
  const first = ALTERATIONS.filter(isFirst)
  const others = ALTERATIONS.filter((id) => !isFirst(id))
  const row = (id: AlterationId) => (
    <li key={id}>
      <h3 id={`price-${id}`}>{t('prices.job', { alteration: id })}</h3>
      {LISTS.map((list) => {
        const text = typed[list][id] ?? ''
        const money = typedMoney(text)
        return (
          <Field
            key={list}
            label={t(`prices.${list}`)}
            labelledBy={`price-${id}`}
            typed={text}
            onTyped={(value) => type({ ...typed, [list]: { ...typed[list], [id]: value } })}
            unit={currency}
            problem={money.ok ? null : t(money.problem)}
          />
        )
      })}
    </li>
  )
  return (
    <form class="wr-prices" noValidate onSubmit={save}>
      <p class="note">{t('prices.what')}</p>
      {first.length === 0 ? <p>{t('prices.none-met')}</p> : <ul>{first.map(row)}</ul>}
      <Fold summary={t('prices.others', { count: others.length })}>
        <ul>{others.map(row)}</ul>
      </Fold>
      <button type="submit" class="btn main">
        {t('prices.save')}
      </button>
    </form>
  )
}

function typedPrices(prices: Prices): Typed {
  const typed: Partial<Record<AlterationId, string>> = {}
  for (const id of ALTERATIONS) if (prices[id] !== undefined) typed[id] = moneyTyped(prices[id])
  return typed
}

/** The figures as typed; null while one of them is none. */
export function pricesFrom(typed: Typed): Prices | null {
  const prices: Prices = {}
  for (const id of ALTERATIONS) {
    const money = typedMoney(typed[id] ?? '')
    if (!money.ok) return null
    if (money.value !== null) prices[id] = money.value
  }
  return prices
}

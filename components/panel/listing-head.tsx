/** What is for sale: its name; site and price in the listing's own currency; its kind, and of several garments or sizes the one that is meant. */
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { Correction } from '../../core/reading/reading.ts'
import { priceOf } from '../answer/cost.ts'
import type { Judged } from '../judged.ts'
import { useWords } from '../words.tsx'
import { SizeForSale } from './size-for-sale.tsx'
import { KindSelect } from './states.tsx'

export interface ListingHeadProps {
  judged: Judged
  /** There is no text: nothing can be chosen of it. */
  isUnread?: boolean
  /** How it is cut, where nothing else on the page says it; '' says nothing. */
  cut?: string
  onCorrections: (corrections: Correction[]) => void
}

export function ListingHead({ judged, isUnread = false, cut = '', onCorrections }: ListingHeadProps) {
  const words = useWords()
  const { t } = words
  const { title, site, kind, corrections, money } = judged
  const price = priceOf(judged, words.wording.currency)
  const setKind = (chosen: GarmentKind) => onCorrections([...corrections.filter((one) => !('kind' in one)), { kind: chosen }])
  const where = [
    site,
    price === null ? '' : words.money(price.amount, price.currency),
    money.postage === null || price === null ? '' : t('listing.postage', { amount: money.postage })
  ].filter(Boolean)
  return (
    <div class="listing">
      <h1>{title === '' ? t('listing.nameless') : title}</h1>
      <div class="row">
        <p class="where grow">
          {where.join(', ')}
          {cut !== '' && <span class="cut-told">{cut}</span>}
        </p>
        {!isUnread && <KindSelect kind={kind} kinds={judged.kinds} onKind={setKind} />}
      </div>
      <WhichGarment judged={judged} onKind={setKind} />
      <SizeForSale reading={judged.reading} corrections={corrections} onCorrections={onCorrections} />
    </div>
  )
}

/** A text that measures several garments: which is meant is asked before anything is answered. */
function WhichGarment({ judged: { reading, kind, corrections }, onKind }: { judged: Judged; onKind: (kind: GarmentKind) => void }) {
  const { t } = useWords()
  const kinds = [...new Set(reading.measures.flatMap(({ of }) => of ?? []))]
  if (kinds.length < 2) return null
  const isChosen = corrections.some((one) => 'kind' in one)
  return (
    <fieldset class={isChosen ? 'which' : 'which asked'}>
      <legend>{t(isChosen ? 'which.chosen' : 'which.head')}</legend>
      <div class="row">
        {kinds.map((one) => (
          <button key={one} type="button" class="btn small" aria-pressed={one === kind} onClick={() => onKind(one)}>
            {t('kind.name', { kind: one })}
          </button>
        ))}
      </div>
    </fieldset>
  )
}

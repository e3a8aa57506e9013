/** A card for the shop: what to measure there and what it must be, what is to do then, and the price that pays. For a phone, and for a quarter of a page. */

import type { AnswerShown } from '../../../core/plan/answer/brief.ts'
import { conditionShown } from '../../../core/plan/answer/conditions-said.ts'
import type { Plan } from '../../../core/plan/plan.ts'
import { hasMessage } from '../../../core/words/say.ts'
import { ChanceTicks, sameInTens } from '../../tape/chance-ticks.tsx'
import { VerdictMark } from '../../tape/verdict-mark.tsx'
import { asSentences, useWords } from '../../words.tsx'
import type { ListingShown } from '../shown.ts'
import { type CardRow, cardRows, ownConditions, pricesThatPay, type Range } from './card-rows.ts'
import { chanceIfOf, chanceOf, verdictOf } from './listing-order.ts'

export interface ShopCardProps {
  listing: ListingShown
  onPrint: () => void
}

export function ShopCard({ listing, onPrint }: ShopCardProps) {
  const { t } = useWords()
  const { now, site, price } = listing
  const where = [site, price === null ? '' : t('card.asked', { amount: price })].filter(Boolean).join(', ')
  return (
    <>
      <article class="wr-card" aria-labelledby="card-title">
        <h1 id="card-title">{listing.title || t('wishlist.untitled')}</h1>
        {where !== '' && <p class="note">{where}</p>}
        <Verdict listing={listing} />
        {now === null ? (
          <p role="status">{t(verdictOf(listing) === null ? 'wishlist.not-reckoned' : 'card.pending')}</p>
        ) : (
          <>
            <ToMeasure listing={listing} />
            {isAdvised(now) && <ToDo plan={now.plans[0] ?? null} />}
            {(isAdvised(now) || now.chanceIf !== null) && <Pays listing={listing} />}
          </>
        )}
      </article>
      {now !== null && (
        <p class="wr-card-acts noprint">
          <button type="button" class="btn" onClick={onPrint}>
            {t('card.print')}
          </button>
          <span class="note">{t('card.print.how')}</span>
        </p>
      )}
    </>
  )
}

/** Is there something to be done with it, or to be bought? */
const isAdvised = ({ verdict }: AnswerShown): boolean => verdict !== 'leave-it' && verdict !== 'too-little-told'

function Verdict({ listing }: { listing: ListingShown }) {
  const { t } = useWords()
  const verdict = verdictOf(listing)
  const chance = chanceOf(listing)
  const chanceIf = chanceIfOf(listing)
  if (verdict === null) return null
  const ifSo = chance === null || chanceIf === null || sameInTens(chance, chanceIf) ? null : chanceIf
  const why = verdict === 'leave-it' || verdict === 'too-little-told' ? (listing.now?.because[0]?.text ?? null) : null
  return (
    <>
      <p class="wr-verdict">
        <VerdictMark verdict={verdict} />
        <span>{t('wishlist.verdict', { verdict })}</span>
      </p>
      {why !== null && <p>{asSentences([why])}</p>}
      {chance !== null && (
        <p class="wr-card-chance">
          <span>{t(ifSo === null ? 'card.chance' : 'card.chance-now', { chance })}</span>
          {ifSo !== null && <span>{t('card.chance-if', { chance: ifSo })}</span>}
          <ChanceTicks chance={chance} chanceIf={ifSo} />
        </p>
      )}
    </>
  )
}

function ToMeasure({ listing }: { listing: ListingShown }) {
  const { t, wording, units } = useWords()
  const rows = cardRows(listing, units)
  const own = ownConditions(listing)
  return (
    <section>
      <h2>{t('card.measure')}</h2>
      {rows.length === 0 ? (
        <p>{t('card.measure.nothing')}</p>
      ) : (
        <table class="wr-card-table">
          <thead>
            <tr>
              <th scope="col">{t(`card.in.${units}`)}</th>
              <th scope="col">{t('card.flat')}</th>
              <th scope="col">{t('card.around')}</th>
              <th scope="col" class="wr-card-found">
                {t('card.found')}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <MeasureRow key={row.point} row={row} />
            ))}
          </tbody>
        </table>
      )}
      {own.map((one) => (
        <p key={one.body}>{t('card.own', { condition: conditionShown(one, wording).text })}</p>
      ))}
    </section>
  )
}

function MeasureRow({ row: { point, flat, whole } }: { row: CardRow }) {
  const { t, inner, wording, figure } = useWords()
  const how = `card.how.${point}`
  const said = ({ least, most }: Range) =>
    least === null
      ? t('card.range.most', { most: most ?? 0 })
      : most === null
        ? t('card.range.least', { least })
        : `${figure(least)}–${figure(most)}`
  return (
    <tr>
      <th scope="row">
        {t('points.point', { point })}
        {hasMessage(how, wording.language) && <span class="note">{inner(how, { hipDepth: 200 })}</span>}
      </th>
      {flat !== null && <td>{said(flat)}</td>}
      <td colSpan={flat === null ? 2 : 1}>{whole === null ? t('card.range.unknown') : said(whole)}</td>
      <td class="wr-card-found" />
    </tr>
  )
}

function ToDo({ plan }: { plan: Plan | null }) {
  const { t } = useWords()
  const jobs = plan?.alterations ?? []
  if (plan === null || jobs.length === 0) return null
  return (
    <section>
      <h2>{t('card.do')}</h2>
      <ul class="bullets">
        {jobs.map(({ id, direction, amountMm }) => (
          <li key={`${id} ${direction}`}>{t('card.job', { alteration: id, amount: amountMm })}</li>
        ))}
      </ul>
      <p class="note">
        {plan.aim === 'tailor'
          ? t('facts.level-tailor', { level: plan.level })
          : t('card.work', { level: plan.level, minutes: plan.minutes })}
      </p>
    </section>
  )
}

/** What it costs in all is known, and only what it is worth to the person is not. */
const isOnlyWorthMissing = ({ now, money }: ListingShown): boolean => now !== null && now.worth !== null && money.worth === null

/** Nobody sells for less. */
const LEAST_PRICE = 0.5

function Pays({ listing }: { listing: ListingShown }) {
  const { t } = useWords()
  const { now, ifSo } = pricesThatPay(listing)
  return (
    <section>
      <h2>{t('card.pays')}</h2>
      {now === null && ifSo === null && <p>{t(isOnlyWorthMissing(listing) ? 'card.pays.worth-missing' : 'card.pays.unknown')}</p>}
      {ifSo !== null && <p>{t('card.pays.if-so', { price: ifSo })}</p>}
      {now !== null && (
        <p>{t(now < LEAST_PRICE ? 'card.pays.none' : ifSo === null ? 'card.pays.now' : 'card.pays.unmeasured', { price: now })}</p>
      )}
    </section>
  )
}

/** Kept listings side by side: each point on one stretch of tape, so that the marks can be compared by eye. Stacked where it is narrow. */

import { viewsOf } from '../../../core/worksheet/outline/outline-geometry.ts'
import { Outline } from '../../outline/outline.tsx'
import { Tape } from '../../tape/tape.tsx'
import { gapWords, wantedWords } from '../../tape/tape-words.ts'
import { VerdictMark } from '../../tape/verdict-mark.tsx'
import { useWords } from '../../words.tsx'
import type { ListingShown } from '../shown.ts'
import { chanceOf, planOf, spendOf, verdictCode, verdictOf, workOf } from './listing-order.ts'
import { isThere, type PointCompared, shortNames, sideBySide } from './side-by-side.ts'

export interface CompareProps {
  listings: readonly ListingShown[]
  onClose: () => void
}

export function Compare({ listings, onClose }: CompareProps) {
  const { t, units } = useWords()
  const names = shortNames(listings.map(({ title }) => title)).map((name, i) => name || t('compare.nth', { nth: i + 1 }))
  const points = sideBySide(listings, units)
  return (
    <section class={`wr-compare wr-of-${listings.length}`} aria-labelledby="compare">
      <div class="wr-compare-head">
        <h2 id="compare" tabIndex={-1}>
          {t('compare.title', { count: listings.length })}
        </h2>
        <span class="note">{t(`compare.stretch.${units}`)}</span>
        <button type="button" class="btn small" onClick={onClose}>
          {t('workroom.close')}
        </button>
      </div>
      <ul class="wr-sides">
        {listings.map((listing) => (
          <Side key={listing.id} listing={listing} />
        ))}
      </ul>
      {points.length === 0 && <p>{t('compare.nothing')}</p>}
      {points.map((one) => (
        <PointRow key={one.point} compared={one} names={names} />
      ))}
    </section>
  )
}

function Side({ listing }: { listing: ListingShown }) {
  const { t } = useWords()
  const { now, kind } = listing
  const verdict = verdictOf(listing)
  const work = workOf(listing)
  const [spend, chance] = [spendOf(listing), chanceOf(listing)]
  const facts = [
    work === null ? null : t(work.code, { minutes: work.minutes }),
    spend === null ? null : t('compare.spend', { spend }),
    chance === null ? null : t('wishlist.chance', { chance })
  ].filter((fact) => fact !== null)
  const plan = planOf({ now })
  return (
    <li class="wr-side-of">
      <div class="wr-thumb">
        {now !== null && kind !== null && (
          <Outline
            kind={kind}
            points={Object.fromEntries(now.gaps.map(({ point, garmentMm }) => [point, garmentMm]))}
            plan={plan}
            view={viewsOf(plan?.alterations ?? [])[0] ?? 'front'}
            size="small"
          />
        )}
      </div>
      <div>
        <h3>{listing.title || t('wishlist.untitled')}</h3>
        {verdict === null ? (
          <p class="note">{t('wishlist.not-reckoned')}</p>
        ) : (
          <p class="wr-verdict">
            <VerdictMark verdict={verdict} />
            <span>{t(verdictCode(listing), { verdict })}</span>
          </p>
        )}
        <p class="note">{facts.join(', ')}</p>
      </div>
    </li>
  )
}

function PointRow({ compared, names }: { compared: PointCompared; names: readonly string[] }) {
  const words = useWords()
  const { t } = words
  const { point, band, stretch, tapes } = compared
  return (
    <section class="wr-point-row">
      <div class="wr-point-name">
        <h3>{t('points.point', { point })}</h3>
        {band !== null && <p class="note">{t('compare.wanted', { wanted: wantedWords(band, words) })}</p>}
      </div>
      <ul>
        {tapes.map((tape, i) => (
          <li key={names[i]} class={tape === 'no-such-point' ? 'wr-tape-of wr-no-such' : 'wr-tape-of'}>
            <p>
              <span class="note">{names[i]}</span>{' '}
              {isThere(tape) ? (
                <b>{gapWords(tape.shown, words)}</b>
              ) : tape === 'untold' ? (
                <b>{t('tape.not-told')}</b>
              ) : (
                <span class="note">{t('compare.no-such-point')}</span>
              )}
            </p>
            {isThere(tape) && <Tape shown={tape.shown} afterMm={tape.afterMm} stretch={stretch} />}
          </li>
        ))}
      </ul>
    </section>
  )
}

/** One kept listing: a row of the table where there is room, a ruled card below it. */
import { conditionShown } from '../../../core/plan/answer/conditions-said.ts'
import type { GapShown, Reckoning } from '../../../core/reckon.ts'
import { viewsOf } from '../../../core/worksheet/outline/outline-geometry.ts'
import { Outline } from '../../outline/outline.tsx'
import { ChanceTicks, sameInTens } from '../../tape/chance-ticks.tsx'
import { LevelStitches } from '../../tape/level-stitches.tsx'
import { TapeLine } from '../../tape/tape-line.tsx'
import { isMeasured } from '../../tape/tape-words.ts'
import { VerdictMark } from '../../tape/verdict-mark.tsx'
import { useWords } from '../../words.tsx'
import type { ListingShown } from '../shown.ts'
import { chanceIfOf, chanceOf, conditionsOf, levelOf, minutesOf, spendOf, verdictOf } from './listing-order.ts'

export interface ListingRowProps {
  listing: ListingShown
  compared: boolean
  /** null: as many as can be compared are chosen already. */
  onCompare: ((on: boolean) => void) | null
  onOpen: () => void
  /** Where its card for the shop is. */
  card: string
  onEdit: () => void
  onRemove: () => void
}

const TAPES_SHOWN = 3

export function ListingRow({ listing, compared, onCompare, onOpen, card, onEdit, onRemove }: ListingRowProps) {
  const { t } = useWords()
  const { now } = listing
  const level = levelOf(listing)
  const minutes = minutesOf(listing)
  const spend = spendOf(listing)
  const chance = chanceOf(listing)
  const chanceIf = chanceIfOf(listing)
  const ifSo = chance === null || chanceIf === null || sameInTens(chance, chanceIf) ? null : chanceIf
  return (
    <tr class={listing.status === 'passed' ? 'wr-faint' : undefined}>
      <td class="c-cp">
        <label class="wr-box">
          <input
            type="checkbox"
            aria-label={t('wishlist.compare.one', { title: listing.title || t('wishlist.untitled') })}
            checked={compared}
            disabled={onCompare === null}
            onChange={(event) => onCompare?.(event.currentTarget.checked)}
          />
        </label>
      </td>
      <td class="c-th">{now !== null && listing.kind !== null && <Thumb listing={listing} now={now} />}</td>
      <th class="c-t" scope="row">
        <button type="button" class="wr-title" onClick={onOpen}>
          {listing.title || t('wishlist.untitled')}
        </button>
        <span class="note">{listing.site || t('wishlist.pasted')}</span>
        {listing.notes !== '' && <span class="wr-notes">{listing.notes}</span>}
        {listing.tags.length > 0 && <span class="note">{listing.tags.join(', ')}</span>}
        {now !== null && (
          <a class="wr-to-card" href={card}>
            {t('card.title')}
            <span class="sr"> {listing.title || t('wishlist.untitled')}</span>
          </a>
        )}
      </th>
      <td class="c-v">
        <VerdictCell listing={listing} />
      </td>
      <td class="c-m">{now !== null && <Tapes now={now} />}</td>
      <Fact name="hardest" class="c-l">
        {level === null ? '–' : t(level === 0 ? 'wishlist.nothing' : 'wishlist.level', { level })}
        {level !== null && level > 0 && <LevelStitches level={level} />}
      </Fact>
      <Fact name="time" class="c-tm">
        <span class="n">{minutes === null ? '–' : minutes === 0 ? t('wishlist.no-time') : t('wishlist.minutes', { minutes })}</span>
      </Fact>
      <Fact name="in-all" class="c-mo">
        {spend === null ? '–' : t('wishlist.spend', { spend })}
        {listing.money.worth !== null && <span class="note">{t('wishlist.worth-to-you', { worth: listing.money.worth })}</span>}
      </Fact>
      <Fact name="chance" class="c-ch">
        {chance === null ? '–' : t('wishlist.chance', { chance })}
        {chance !== null && ifSo !== null && <span class="note">{t('facts.chance-if', { chance: ifSo })}</span>}
        {chance !== null && <ChanceTicks chance={chance} chanceIf={ifSo} />}
      </Fact>
      <td class="c-s">
        <span>{t(`wishlist.status.${listing.status}`)}</span>
        <time class="note" dateTime={listing.keptAt}>
          {listing.keptAt.slice(0, 10)}
        </time>
        <span class="row">
          <button type="button" class="btn small" aria-label={t('wishlist.edit', { title: listing.title })} onClick={onEdit}>
            {t('workroom.edit')}
          </button>
          <button type="button" class="btn small bare" aria-label={t('wishlist.remove', { title: listing.title })} onClick={onRemove}>
            {t('workroom.remove')}
          </button>
        </span>
      </td>
    </tr>
  )
}

function Fact({ name, class: place, children }: { name: string; class: string; children: preact.ComponentChildren }) {
  const { t } = useWords()
  return (
    <td class={`${place} wr-fact`}>
      <span class="wr-small" aria-hidden="true">
        {t(`wishlist.head.${name}`)}
      </span>
      <b>{children}</b>
    </td>
  )
}

function VerdictCell({ listing }: { listing: ListingShown }) {
  const { t, wording } = useWords()
  const verdict = verdictOf(listing)
  if (verdict === null) return <p class="note">{t('wishlist.not-reckoned')}</p>
  const changed = listing.now !== null && listing.verdictThen !== null && listing.now.verdict !== listing.verdictThen.verdict
  const [first, ...others] = verdict === 'too-little-told' ? [] : conditionsOf(listing)
  // where it seems right as far as told, what it hangs on says as much
  const because =
    first !== undefined && verdict === 'wears-as-is' ? undefined : listing.now?.because.find(({ code }) => code !== 'verdict.if')?.text
  return (
    <>
      <span class="wr-verdict">
        <VerdictMark verdict={verdict} />
        <span>{t('wishlist.verdict', { verdict })}</span>
      </span>
      {first !== undefined && (
        <span class="wr-because">
          {t(others.length === 0 ? 'wishlist.if' : 'wishlist.if-more', {
            condition: conditionShown(first, wording).text,
            n: others.length
          })}
        </span>
      )}
      {because !== undefined && <span class="wr-because">{because}</span>}
      {changed && listing.verdictThen !== null && (
        <span class="wr-because">{t('wishlist.changed', { verdict: listing.verdictThen.verdict })}</span>
      )}
    </>
  )
}

function Thumb({ listing, now }: { listing: ListingShown; now: Reckoning }) {
  if (listing.kind === null) return null
  const points = Object.fromEntries(now.gaps.map(({ point, garmentMm }) => [point, garmentMm]))
  const plan = now.plans[0] ?? null
  const view = viewsOf(plan?.alterations ?? [])[0] ?? 'front'
  return <Outline kind={listing.kind} points={points} plan={plan} view={view} size="small" />
}

/** The points that decide: those the plan moves, then those farthest out, then as the kind has them. */
function Tapes({ now }: { now: Reckoning }) {
  const { t, figure } = useWords()
  const after = new Map(now.plans[0]?.after.map(({ point, mm }) => [point, mm]))
  const moved = (gap: GapShown): number => {
    const to = after.get(gap.point)
    return to === undefined ? 0 : Math.abs(to - gap.garmentMm)
  }
  const judged = now.gaps.filter((gap) => gap.band !== null)
  const shown = new Set([...judged].sort((a, b) => moved(b) - moved(a) || Math.abs(b.gapMm) - Math.abs(a.gapMm)).slice(0, TAPES_SHOWN))
  return (
    <ul class="wr-tapes">
      {judged
        .filter((gap) => shown.has(gap))
        .map((gap) => {
          const to = moved(gap) < 0.5 ? null : (after.get(gap.point) ?? null)
          const from = isMeasured(gap.from) ? figure(gap.garmentMm) : `${figure(gap.garmentMm)}?`
          return (
            <li key={gap.point}>
              <span>{t('wishlist.point', { point: gap.point })}</span>
              <TapeLine shown={gap} afterMm={to} />
              <b class="n">{to === null ? from : `${from} → ${figure(to)}`}</b>
            </li>
          )
        })}
    </ul>
  )
}

/** One kept listing: a row of the table where there is room, a ruled card below it. */

import type { AnswerShown } from '../../../core/plan/answer/brief.ts'
import { conditionShown } from '../../../core/plan/answer/conditions-said.ts'
import type { GapShown } from '../../../core/reckon.ts'
import { Day } from '../../day.tsx'
import { ChanceTicks, sameInTens } from '../../tape/chance-ticks.tsx'
import { LevelStitches } from '../../tape/level-stitches.tsx'
import { TapeLine } from '../../tape/tape-line.tsx'
import { isMeasured } from '../../tape/tape-words.ts'
import { VerdictMark } from '../../tape/verdict-mark.tsx'
import { useWords, type Words, wordsFor } from '../../words.tsx'
import type { Saved } from '../drafts.tsx'
import type { ListingShown, Status } from '../shown.ts'
import { NotesField, StatusWord } from './in-row.tsx'
import { briefNow, chanceIfOf, chanceOf, conditionsOf, levelOf, planOf, spendOf, verdictCode, verdictOf, workOf } from './listing-order.ts'
import { ListingThumb } from './listing-thumb.tsx'

export interface ListingRowProps {
  listing: ListingShown
  /** Where it stands in the list, from 0: told to those who can't see how long the list is. */
  place: number
  /** ISO date. */
  today: string
  compared: boolean
  /** null: as many as can be compared are chosen already. */
  onCompare: ((on: boolean) => void) | null
  onOpen: () => void
  /** Where its card for the shop is. */
  card: string
  /** Where the work on it is; shown once it is bought. */
  work: string
  onStatus: (status: Status) => void
  /** `began`: the notes as they were shown when typing began. */
  onNotes: (notes: string, began: string) => Saved
  onEdit: () => void
  onRemove: () => void
}

const TAPES_SHOWN = 3
const TAPE_WIDE = 76

export function ListingRow(props: ListingRowProps) {
  const { listing, place, today, compared, onCompare } = props
  const { t } = useWords()
  const title = listing.title || t('wishlist.untitled')
  return (
    <tr class={listing.status === 'passed' ? 'wr-faint' : undefined} data-listing={listing.id} aria-rowindex={place + 2}>
      <td class="c-cp">
        <label class="wr-box">
          <input
            type="checkbox"
            aria-label={t('wishlist.compare.one', { title })}
            checked={compared}
            disabled={onCompare === null}
            onChange={(event) => onCompare?.(event.currentTarget.checked)}
          />
        </label>
      </td>
      <td class="c-th">
        <ListingThumb listing={listing} />
      </td>
      <th class="c-t" scope="row">
        <button type="button" class="wr-title" title={title} onClick={props.onOpen}>
          {title}
        </button>
        <span class="note wr-line">{[listing.site || t('wishlist.pasted'), ...listing.tags].join(' · ')}</span>
        {briefNow(listing) !== null && (
          <a class="wr-to-card" href={props.card}>
            {t('card.title')}
            <span class="sr"> {title}</span>
          </a>
        )}
        {listing.status === 'bought' && (
          <a class="wr-to-card" href={props.work}>
            {t('work.open')}
            <span class="sr"> {title}</span>
          </a>
        )}
      </th>
      <td class="c-v">
        <VerdictCell listing={listing} />
      </td>
      <td class="c-m">{listing.now !== null && <Tapes now={listing.now} />}</td>
      <Facts listing={listing} />
      <Fact name="kept" class="c-k">
        <Day iso={listing.keptAt} today={today} />
      </Fact>
      <td class="c-s">
        <StatusWord id={listing.id} title={title} status={listing.status} onStatus={props.onStatus} />
        <NotesField id={listing.id} title={title} notes={listing.notes} onNotes={props.onNotes} />
        <span class="row">
          <button
            type="button"
            id={`change-${listing.id}`}
            class="btn small bare"
            aria-label={t('wishlist.edit', { title })}
            onClick={props.onEdit}
          >
            {t('workroom.edit')}
          </button>
          <button type="button" class="btn small bare" aria-label={t('wishlist.remove', { title })} onClick={props.onRemove}>
            {t('workroom.remove')}
          </button>
        </span>
      </td>
    </tr>
  )
}

/** Work, money and chance, each in its own column. */
function Facts({ listing }: { listing: ListingShown }) {
  const words = useWords()
  const { t } = words
  const level = levelOf(listing)
  const spend = spendOf(listing)
  const chance = chanceOf(listing)
  const chanceIf = chanceIfOf(listing)
  const ifSo = chance === null || chanceIf === null || sameInTens(chance, chanceIf) ? null : chanceIf
  const work = workOf(listing)
  const byTailor = verdictOf(listing) === 'needs-a-tailor'
  const price = spend !== null && spend === listing.price && (listing.money.postage ?? 0) === 0 ? null : priceWords(listing, words)
  return (
    <>
      <Fact name="work" class="c-w">
        <span class="n">{work === null ? '–' : t(work.code, { minutes: work.minutes })}</span>
        {level !== null && level > 0 && (
          <span class="note">
            {t('wishlist.level', { level })}
            <LevelStitches level={level} />
          </span>
        )}
      </Fact>
      <Fact name="in-all" class="c-mo">
        <span class="n">{spend === null ? '–' : t('wishlist.spend', { spend })}</span>
        {price !== null && <span class="note">{price}</span>}
        {byTailor && spend === listing.price && spend !== null && <span class="note">{t('cost.tailor-unpriced')}</span>}
        {listing.money.worth !== null && <span class="note">{t('wishlist.worth-to-you', { worth: listing.money.worth })}</span>}
      </Fact>
      <Fact name="chance" class="c-ch">
        <span>{chance === null ? '–' : t('wishlist.chance', { chance })}</span>
        {chance !== null && ifSo !== null && <span class="note">{t('facts.chance-if', { chance: ifSo })}</span>}
        {chance !== null && <ChanceTicks chance={chance} chanceIf={ifSo} />}
      </Fact>
    </>
  )
}

/** What it costs to have it: the price, and the postage where it is known. In the page's own currency where that is another. */
function priceWords({ price, priceElsewhere = null, money: { postage } }: ListingShown, { t, wording }: Words): string | null {
  if (price === null)
    return priceElsewhere === null
      ? null
      : wordsFor({ ...wording, currency: priceElsewhere.currency }).t('wishlist.asked', { price: priceElsewhere.amount })
  return postage === null || postage === 0 ? t('wishlist.asked', { price }) : t('wishlist.asked-and-post', { price, postage })
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
  const words = useWords()
  const { t } = words
  const verdict = verdictOf(listing)
  if (verdict === null) return <p class="note">{t('wishlist.not-reckoned')}</p>
  const then = listing.verdictThen?.verdict ?? null
  const now = briefNow(listing)
  const changed = now !== null && then !== null && now.verdict !== then
  const because = becauseWords(listing, words)
  return (
    <>
      <span class="wr-verdict">
        <VerdictMark verdict={verdict} />
        <span>{t(verdictCode(listing), { verdict })}</span>
      </span>
      {because !== null && (
        <span class="wr-because" title={because}>
          {because}
        </span>
      )}
      {changed && <span class="wr-then">{t('wishlist.changed', { verdict: then })}</span>}
    </>
  )
}

/** One sentence: what it hangs on, else why. */
function becauseWords(listing: ListingShown, { t, wording }: Words): string | null {
  const [first, ...others] = verdictOf(listing) === 'too-little-told' ? [] : conditionsOf(listing)
  if (first !== undefined) {
    const condition = conditionShown(first, wording).text
    return t(others.length === 0 ? 'wishlist.if' : 'wishlist.if-more', { condition, n: others.length })
  }
  return listing.now?.because.find(({ code }) => code !== 'verdict.if')?.text ?? null
}

/** The points that decide: those the plan moves, then those farthest out, then as the kind has them. */
function Tapes({ now }: { now: AnswerShown }) {
  const { t, figure } = useWords()
  const after = new Map(planOf({ now })?.after.map(({ point, mm }) => [point, mm]))
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
              <span class="wr-line">{t('wishlist.point', { point: gap.point })}</span>
              <TapeLine shown={gap} afterMm={to} width={TAPE_WIDE} />
              <b class="n">{to === null ? from : `${from} → ${figure(to)}`}</b>
            </li>
          )
        })}
    </ul>
  )
}

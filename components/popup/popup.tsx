/** The popup: the answer in one screen, as many one-line tapes as there is room for, and the ways on. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks'
import type { Correction } from '../../core/reading/reading.ts'
import type { Fit } from '../../core/wearer/body.ts'
import { Answer } from '../answer/answer.tsx'
import type { KeepActions } from '../answer/keep-acts.tsx'
import { cutWords } from '../cut/cut-words.ts'
import { HelpLink } from '../help-link.tsx'
import type { Judged } from '../judged.ts'
import { ListingHead } from '../panel/listing-head.tsx'
import { type PointRow, pointRows } from '../panel/point-rows.ts'
import { KindUnknown, NobodyYet } from '../panel/states.tsx'
import { TapeLine } from '../tape/tape-line.tsx'
import { gapWords, isMeasured } from '../tape/tape-words.ts'
import { type Who, WhoBar } from '../who-bar.tsx'
import { useWords } from '../words.tsx'

export interface PopupProps extends KeepActions {
  who: Who
  /** null: the page is being read. */
  judged: Judged | null
  /** What is saved can't be reached. */
  failed?: boolean
  onWho: (personId: string, fit: Fit) => void
  onFavourite: (favouriteId: string | null) => void
  onCorrections: (corrections: Correction[]) => void
  onCopy: (text: string) => Promise<boolean>
  onOpenBeside: () => void
  /** Leads to the field for the tailor's price. */
  onEnterPrice: () => void
  onWorkroom: (part?: 'body' | 'garments' | 'wishlist') => void
}

/** Browsers give a popup no more height than this, px. */
const TALLEST = 600
const MOST_ROWS = 5
/** Leaves room for the words beside it in one line. */
const TAPE_WIDTH = 96

export function Popup(props: PopupProps) {
  const words = useWords()
  const { t } = words
  const { who, judged } = props
  const cut = judged?.kind ? cutWords(judged.kind, judged.cut, words) : ''
  const unread = judged !== null && judged.text === '' && judged.answers.length === 0
  return (
    <div class="sheet popup">
      <WhoBar who={who} onWho={props.onWho} onFavourite={props.onFavourite} />
      <main>
        {judged === null ? (
          <p class="listing" role="status">
            {t(props.failed ? 'popup.failed' : 'popup.reading')}
          </p>
        ) : (
          <>
            <ListingHead judged={judged} isUnread={unread} cut={cut} onCorrections={props.onCorrections} />
            {unread ? <Unread judged={judged} /> : <Read {...props} judged={judged} />}
            <div class="ways-on">
              <button type="button" class="btn bare" onClick={props.onOpenBeside}>
                {t(unread ? 'popup.paste-beside' : 'popup.open-beside')}
              </button>
              <button type="button" class="btn bare" onClick={() => props.onWorkroom()}>
                {t('popup.workroom')}
              </button>
              <HelpLink />
            </div>
          </>
        )}
      </main>
    </div>
  )
}

function Unread({ judged }: { judged: Judged }) {
  const { t } = useWords()
  return (
    <section class="answer">
      <h2 class="plainhead">{t('nothing.head')}</h2>
      <p class="why">{t(`nothing.${judged.problem ?? 'empty'}`)}</p>
    </section>
  )
}

function Read(props: PopupProps & { judged: Judged }) {
  const words = useWords()
  const { judged, who } = props
  if (judged.kind === null) return <KindUnknown reading={judged.reading} />
  return (
    <>
      {who.people.length === 0 || judged.reckoning === null ? (
        <NobodyYet onWorkroom={props.onWorkroom} />
      ) : (
        <Answer
          judged={judged}
          short
          onCopy={props.onCopy}
          onBody={() => props.onWorkroom('body')}
          onEnterPrice={props.onEnterPrice}
          onKeep={props.onKeep}
          onPass={props.onPass}
          onTakeBack={props.onTakeBack}
          onWishlist={props.onWishlist}
        />
      )}
      <Points
        rows={pointRows(judged, words.units).filter(({ folded, shown }) => !folded && isMeasured(shown.from) && shown.garmentMm !== null)}
      />
    </>
  )
}

/** As many points as the window has room for, the most telling first; the rest are counted. */
function Points({ rows }: { rows: readonly PointRow[] }) {
  const words = useWords()
  const { t } = words
  const part = useRef<HTMLElement>(null)
  const [most, setMost] = useState(MOST_ROWS)
  const standsOn = rows.map(({ point, shown }) => `${point} ${shown.garmentMm}`).join()
  // the rows are drawn, measured and taken away one by one before anything is painted
  useLayoutEffect(() => setMost(MOST_ROWS), [standsOn])
  useLayoutEffect(() => {
    const popup = part.current?.closest('.popup')
    if (popup && most > 0 && popup.scrollHeight > TALLEST) setMost(most - 1)
  })
  const shownRows = rows.slice(0, most)
  // where there is room for none, the way to all of them is enough
  if (rows.length === 0) return null
  return (
    <section class={shownRows.length > 0 ? 'part' : undefined} aria-label={t('points.head')} ref={part}>
      {shownRows.length > 0 && (
        <table class="read">
          <tbody>
            {shownRows.map(({ point, shown, afterMm }) => (
              <tr key={point}>
                <th scope="row">{t('points.point', { point })}</th>
                <td class="drawn">
                  <TapeLine shown={shown} afterMm={afterMm} width={TAPE_WIDTH} />
                </td>
                <td class="v">{words.figure(shown.garmentMm ?? 0)}</td>
                <td class="w">
                  {gapWords(shown, words)}
                  {afterMm !== null && <span class="after">{t('popup.after', { mm: afterMm })}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {shownRows.length > 0 && (
        <p class="note">
          {t(`popup.note.${words.units}`)}
          {rows.length > shownRows.length && ` ${t('popup.note.more', { n: rows.length - shownRows.length })}`}
        </p>
      )}
    </section>
  )
}

/** The popup: what was read here, the verdict, one sentence, four facts, one-line tapes, two actions. */
import type { Fit } from '../../core/wearer/body.ts'
import { uncapped } from '../../core/words/say.ts'
import { ConditionLine } from '../condition-line.tsx'
import { cutWords } from '../cut/cut-words.ts'
import { FourFacts } from '../facts.tsx'
import { conditionalReason, type Judged, verdictReasons } from '../judged.ts'
import { pointRows } from '../panel/point-rows.ts'
import { KindSelect, KindUnknown, NobodyYet } from '../panel/states.tsx'
import { TapeLine } from '../tape/tape-line.tsx'
import { gapWords, isMeasured } from '../tape/tape-words.ts'
import { VerdictMark } from '../tape/verdict-mark.tsx'
import { type Who, WhoBar } from '../who-bar.tsx'
import { asSentences, useWords } from '../words.tsx'

export interface PopupProps {
  who: Who
  /** null: the page is being read. */
  judged: Judged | null
  /** What is saved can't be reached. */
  failed?: boolean
  onWho: (personId: string, fit: Fit) => void
  onFavourite: (favouriteId: string | null) => void
  onKind: Parameters<typeof KindSelect>[0]['onKind']
  onOpenBeside: () => void
  onKeep: () => void
  onWorkroom: (part?: 'body' | 'garments') => void
}

const MOST_ROWS = 5
/** Leaves room for the words beside it in one line. */
const TAPE_WIDTH = 96
const MOST_REASONS = 2

export function Popup(props: PopupProps) {
  const { t } = useWords()
  const { who, judged } = props
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
            <div class="listing">
              <h1>{judged.title === '' ? t('listing.nameless') : judged.title}</h1>
              {!unread && <p class="where">{readHere(judged, t)}</p>}
            </div>
            {unread ? <Unread judged={judged} /> : <Read {...props} judged={judged} />}
            <div class="acts popup-acts">
              <button type="button" class="btn main" onClick={props.onOpenBeside}>
                {t(unread ? 'popup.paste-beside' : 'popup.open-beside')}
              </button>
              {!unread && (
                <button type="button" class="btn" onClick={props.onKeep}>
                  {t(judged.kept ? 'answer.kept' : 'answer.keep')}
                </button>
              )}
            </div>
          </>
        )}
      </main>
    </div>
  )
}

/** As many as there is room for. Where it seems right as far as told, the line above says as much. */
function reasonsHere(judged: Judged): string[] {
  const conditional = conditionalReason(judged) !== null
  if (conditional && judged.reckoning?.verdict === 'wears-as-is') return []
  return verdictReasons(judged).slice(0, conditional ? MOST_REASONS - 1 : MOST_REASONS)
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
  const { t } = words
  const { judged, who } = props
  const { reckoning } = judged
  const all = pointRows(judged, words.units).filter(({ folded }) => !folded)
  const rows = all.slice(0, MOST_ROWS)
  const why = reasonsHere(judged)
  // in words only, and only where the window has room for a line more
  const cut = judged.kind === null ? '' : cutWords(judged.kind, judged.cut, words)
  if (judged.kind === null) {
    return (
      <>
        <KindUnknown reading={judged.reading} />
        <div class="part">
          <KindSelect kind={null} kinds={judged.kinds} onKind={props.onKind} />
        </div>
      </>
    )
  }
  return (
    <>
      {who.people.length === 0 || reckoning === null ? (
        <NobodyYet onWorkroom={props.onWorkroom} />
      ) : (
        <section class="answer" aria-labelledby="verdict-head" aria-live="polite">
          <h2 class="verdict" id="verdict-head">
            <VerdictMark verdict={reckoning.verdict} large />
            {t('answer.verdict', { verdict: reckoning.verdict })}
          </h2>
          <ConditionLine judged={judged} />
          {why.length > 0 && <p class="why">{asSentences(why)}</p>}
          {reckoning.verdict !== 'too-little-told' && <FourFacts judged={judged} />}
          {cut !== '' && all.length < MOST_ROWS && <p class="note cut-told">{t('popup.cut', { cut: uncapped(cut) })}</p>}
        </section>
      )}
      {rows.length > 0 && (
        <section class="part" aria-label={t('points.head')}>
          <div class="scrolls">
            <table class="read">
              <tbody>
                {rows.map(({ point, shown, afterMm }) => (
                  <tr key={point}>
                    <th scope="row">{t('points.point', { point })}</th>
                    <td class="drawn">
                      {(shown.garmentMm !== null || shown.band !== null) && <TapeLine shown={shown} afterMm={afterMm} width={TAPE_WIDTH} />}
                    </td>
                    <td class="v">
                      {shown.garmentMm === null ? '–' : `${words.figure(shown.garmentMm)}${isMeasured(shown.from) ? '' : '?'}`}
                    </td>
                    <td class="w">{gapWords(shown, words)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <p class="note">
            {t(
              `popup.note.${words.units}${rows.some(({ shown }) => !isMeasured(shown.from) && shown.garmentMm !== null) ? '.hollow' : ''}`
            )}
            {all.length > rows.length && ` ${t('popup.note.more', { n: all.length - rows.length })}`}
          </p>
        </section>
      )}
    </>
  )
}

/** `Read here: 4 measures, cloth, price, 1 fault. 1 doubtful.` */
function readHere({ reading }: Judged, t: ReturnType<typeof useWords>['t']): string {
  const parts = [
    t('popup.read.measures', { n: reading.measures.length }),
    reading.cloth.fibres.length > 0 ? t('popup.read.cloth') : '',
    reading.price !== null ? t('popup.read.price') : '',
    reading.faults.length > 0 ? t('popup.read.faults', { n: reading.faults.length }) : ''
  ].filter(Boolean)
  const doubts = reading.issues.length > 0 ? ` ${t('popup.read.doubts', { n: reading.issues.length })}` : ''
  return `${t('popup.read.head', { parts: parts.map(uncapped).join(', ') })}${doubts}`
}

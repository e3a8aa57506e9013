/** The panel beside a page: the answer first, then everything it stands on, in one column. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Verdict } from '../../core/ids/verdicts.ts'
import type { Correction } from '../../core/reading/reading.ts'
import type { Fit } from '../../core/wearer/body.ts'
import { Answer } from '../answer/answer.tsx'
import { conditionsSaid } from '../answer/condition-line.tsx'
import { GO_TO, TAILOR_PRICE } from '../answer/go-to.ts'
import type { KeepActions } from '../answer/keep-acts.tsx'
import { type TailorActions, TailorPart } from '../answer/tailor-part.tsx'
import { HelpLink } from '../help-link.tsx'
import { type Judged, type PlanChoice, verdictReasons } from '../judged.ts'
import { MainPart } from '../main-part.tsx'
import { SavedNote } from '../saving/saving-now.tsx'
import { TypedText } from '../typed-text.tsx'
import { useFocusStays } from '../use-focus-stays.ts'
import { type Who, WhoBar } from '../who-bar.tsx'
import { asSentences, useWords, type Words } from '../words.tsx'
import { CutLine } from './cut-line.tsx'
import { ListingHead } from './listing-head.tsx'
import { ListingWords } from './listing-words.tsx'
import { MeasuredPoints } from './measured-points.tsx'
import { Money } from './money.tsx'
import { OtherWays } from './other-ways.tsx'
import { Plans } from './plans.tsx'
import { SellerAnswers } from './seller-answer.tsx'
import { KindUnknown, NobodyYet, NothingRead, PASTE_DRAFT } from './states.tsx'
import { TakenAsGiven } from './taken-as-given.tsx'
import { WhatMoves } from './what-moves.tsx'

/** Everything a person can do in the panel. */
export interface PanelActions extends KeepActions, TailorActions {
  onWho: (personId: string, fit: Fit) => void
  onFavourite: (favouriteId: string | null) => void
  onCorrections: (corrections: Correction[]) => void
  /** The corrections as they would be with a figure that is being typed: answered at once, saved with onCorrections. null: as they are saved. */
  onTry?: (corrections: Correction[] | null) => void
  onDraft: (field: string, typed: string | null) => void
  onAim: (aim: PlanChoice) => void
  onMoney: (money: Judged['money']) => void
  onPaste: (text: string) => void
  onAnswer: (text: string) => void
  /** `began`: the notes as they stood when typing began. */
  onNotes: (notes: string, began: string) => void
  onUndo: () => void
  onCopy: (text: string) => Promise<boolean>
  onWorkroom: (part?: 'body' | 'garments' | 'wishlist') => void
}
export interface PanelProps extends PanelActions {
  who: Who
  /** null: nothing was looked at yet. */
  judged: Judged | null
  /** What was typed into the paste box before there was anything to look at. */
  pasteDraft?: string
}

export function Panel(props: PanelProps) {
  const { t } = useWords()
  const { who, judged } = props
  const sheet = useRef<HTMLDivElement>(null)
  useFocusStays(sheet)
  return (
    <div class="sheet panel" ref={sheet}>
      <WhoBar who={who} onWho={props.onWho} onFavourite={props.onFavourite} />
      <Announcement judged={judged} />
      <MainPart>
        {judged === null ? (
          <>
            <h1 class="sr">{t('panel.title')}</h1>
            {who.people.length === 0 && <NobodyYet onWorkroom={props.onWorkroom} />}
            <NothingRead
              problem="nothing-yet"
              draft={props.pasteDraft ?? ''}
              onPaste={props.onPaste}
              onDraft={(typed) => props.onDraft(PASTE_DRAFT, typed)}
            />
          </>
        ) : (
          <>
            <Elsewhere judged={judged} />
            <ListingHead judged={judged} onCorrections={props.onCorrections} />
            <Body {...props} judged={judged} />
            {judged.canUndo && (
              <div class="changed">
                <SavedNote />
                <button type="button" class="btn small" onClick={props.onUndo}>
                  {t('changed.undo')}
                </button>
              </div>
            )}
          </>
        )}
      </MainPart>
    </div>
  )
}

/** The garment is named wherever its answer stands; this says that the page in front is another. */
function Elsewhere({ judged: { place, title } }: { judged: Judged }) {
  const { t } = useWords()
  if (place !== 'elsewhere') return null
  return (
    <p class="mind" role="status">
      <strong>{title === '' ? t('elsewhere.nameless') : t('elsewhere.named', { title })}</strong> {t('elsewhere.what-to-do')}
    </p>
  )
}

function Body(props: PanelProps & { judged: Judged }) {
  const { t } = useWords()
  const { judged, who } = props
  const [asked, setAsked] = useState(0)
  if (judged.text === '' && judged.answers.length === 0) {
    return (
      <NothingRead
        problem={judged.problem ?? (judged.place === 'none' ? 'nothing-yet' : 'empty')}
        draft={judged.drafts[PASTE_DRAFT] ?? ''}
        onPaste={props.onPaste}
        onDraft={(typed) => props.onDraft(PASTE_DRAFT, typed)}
      />
    )
  }
  const leave = judged.reckoning?.verdict === 'leave-it'
  return (
    <>
      {judged.kind === null ? (
        <KindUnknown reading={judged.reading} />
      ) : who.people.length === 0 || judged.reckoning === null ? (
        <NobodyYet onWorkroom={props.onWorkroom} />
      ) : (
        <Answer
          judged={judged}
          onCopy={props.onCopy}
          onKeep={props.onKeep}
          onPass={props.onPass}
          onTakeBack={props.onTakeBack}
          onWishlist={props.onWishlist}
          onEnterAnswer={() => setAsked(asked + 1)}
          onBody={() => props.onWorkroom('body')}
          onEnterPrice={() => props.onDraft(GO_TO, TAILOR_PRICE)}
          tailorPart={<TailorPart judged={judged} onTailor={props.onTailor} onTailorPrice={props.onTailorPrice} onDraft={props.onDraft} />}
        />
      )}
      <CutLine judged={judged} onCorrections={props.onCorrections} />
      <div class="ways-on">
        <button type="button" class="btn bare" onClick={() => props.onWorkroom()}>
          {t('popup.workroom')}
        </button>
        <HelpLink />
      </div>
      <MeasuredPoints judged={judged} onCorrections={props.onCorrections} onTry={props.onTry} onDraft={props.onDraft} />
      {!leave && <WhatMoves judged={judged} />}
      {!leave && <Plans judged={judged} onAim={props.onAim} />}
      <TakenAsGiven judged={judged} onCorrections={props.onCorrections} onTry={props.onTry} onDraft={props.onDraft} />
      <Money judged={judged} onMoney={props.onMoney} onDraft={props.onDraft} />
      <OtherWays judged={judged} />
      {!leave && <Cautions cautions={judged.reckoning?.cautions ?? []} />}
      <ListingWords
        text={judged.text}
        textCutFrom={judged.textCutFrom}
        reading={judged.reading}
        corrections={judged.corrections}
        onCorrections={props.onCorrections}
      />
      <SellerAnswers judged={judged} asked={asked} onAnswer={props.onAnswer} onDraft={props.onDraft} />
      <Notes judged={judged} onNotes={props.onNotes} onDraft={props.onDraft} />
    </>
  )
}

function Cautions({ cautions }: { cautions: readonly string[] }) {
  const { t } = useWords()
  if (cautions.length === 0) return null
  return (
    <details class="part">
      <summary>
        <h2>{t('cautions.head')}</h2>
        <span class="note">{cautions.length}</span>
      </summary>
      <ul class="bullets">
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </details>
  )
}

const NOTES_DRAFT = 'notes'

function Notes({ judged, onNotes, onDraft }: { judged: Judged } & Pick<PanelActions, 'onNotes' | 'onDraft'>) {
  const { t } = useWords()
  const began = useRef<string | null>(null)
  const text = judged.drafts[NOTES_DRAFT] ?? judged.notes
  return (
    <details class="part" open={text !== ''}>
      <summary>
        <h2>{t('keep.head')}</h2>
      </summary>
      <div>
        <TypedText
          label={t('keep.notes')}
          value={text}
          onTyped={(typed) => {
            began.current ??= judged.notes
            onDraft(NOTES_DRAFT, typed)
          }}
          onDone={(notes) => {
            onNotes(notes, began.current ?? judged.notes)
            began.current = null
            onDraft(NOTES_DRAFT, null)
          }}
        />
        <p class="note">{t(judged.kept === null ? 'keep.notes-with' : 'keep.notes-kept')}</p>
      </div>
    </details>
  )
}

/** The answer as it is read from the top: the verdict, why, what the untold must be. */
function announced(judged: Judged, verdict: Verdict, words: Words): string {
  const conditions = conditionsSaid(judged, words)
  const why = [...verdictReasons(judged), ...(conditions === null ? [] : [conditions.text])]
  return words.t('announce.answer', { verdict, why: asSentences(why) })
}

/** A changed answer is said, once it has settled; the first one is not a change. */
function Announcement({ judged }: { judged: Judged | null }) {
  const words = useWords()
  const reckoning = judged?.reckoning ?? null
  const text = judged === null || reckoning === null ? '' : announced(judged, reckoning.verdict, words)
  const [said, setSaid] = useState('')
  const before = useRef<{ title: string; text: string } | null>(null)
  useEffect(() => {
    if (judged === null || text === '' || !judged.settled) return
    if (before.current !== null && before.current.title === judged.title && before.current.text !== text) setSaid(text)
    before.current = { title: judged.title, text }
  }, [judged, text])
  return (
    <p class="sr" role="status" aria-live="polite">
      {said}
    </p>
  )
}

/** The panel beside a page: the answer first, then everything it stands on, in one column. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { GarmentKind } from '../../core/ids/kinds.ts'
import type { Verdict } from '../../core/ids/verdicts.ts'
import type { Correction } from '../../core/reading/reading.ts'
import type { Fit } from '../../core/wearer/body.ts'
import { say } from '../../core/words/say.ts'
import { conditionsSaid } from '../condition-line.tsx'
import { type Judged, type PlanChoice, verdictReasons } from '../judged.ts'
import { MainPart } from '../main-part.tsx'
import { SavedNote } from '../saving/saving-now.tsx'
import { TypedText } from '../typed-text.tsx'
import { type Who, WhoBar } from '../who-bar.tsx'
import { asSentences, useWords, type Words } from '../words.tsx'
import { Answer } from './answer.tsx'
import { CutLine } from './cut-line.tsx'
import { ListingWords } from './listing-words.tsx'
import { MeasuredPoints } from './measured-points.tsx'
import { OtherWays } from './other-ways.tsx'
import { Plans } from './plans.tsx'
import { SellerAnswers } from './seller-answer.tsx'
import { SizeForSale } from './size-for-sale.tsx'
import { KindSelect, KindUnknown, NobodyYet, NothingRead, PASTE_DRAFT } from './states.tsx'
import { TakenAsGiven } from './taken-as-given.tsx'
import { WhatMoves } from './what-moves.tsx'

/** Everything a person can do in the panel. */
export interface PanelActions {
  onWho: (personId: string, fit: Fit) => void
  onFavourite: (favouriteId: string | null) => void
  onCorrections: (corrections: Correction[]) => void
  onDraft: (field: string, typed: string | null) => void
  onAim: (aim: PlanChoice) => void
  onMoney: (money: Judged['money']) => void
  onPaste: (text: string) => void
  onAnswer: (text: string) => void
  /** `began`: the notes as they stood when typing began. */
  onNotes: (notes: string, began: string) => void
  onKeep: () => void
  onPass: () => void
  onUndo: () => void
  onCopy: (text: string) => Promise<boolean>
  onWorkroom: (part?: 'body' | 'garments') => void
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
  return (
    <div class="sheet panel">
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

function ListingHead({ judged, onCorrections }: { judged: Judged; onCorrections: PanelActions['onCorrections'] }) {
  const { t, wording } = useWords()
  const { title, site, price, kind, text, corrections } = judged
  const setKind = (chosen: GarmentKind) => onCorrections([...corrections.filter((one) => !('kind' in one)), { kind: chosen }])
  const where = [
    site,
    price === null
      ? ''
      : say({ code: 'listing.price', values: { amount: price.amount } }, { ...wording, currency: price.currency || undefined })
  ].filter(Boolean)
  return (
    <div class="listing">
      <h1>{title === '' ? t('listing.nameless') : title}</h1>
      <div class="row">
        {where.length > 0 && <p class="where grow">{where.join(', ')}</p>}
        {text !== '' && <KindSelect kind={kind} kinds={judged.kinds} onKind={setKind} />}
      </div>
      <SizeForSale reading={judged.reading} corrections={corrections} onCorrections={onCorrections} />
    </div>
  )
}

function Body(props: PanelProps & { judged: Judged }) {
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
          onEnterAnswer={() => setAsked(asked + 1)}
          onBody={() => props.onWorkroom('body')}
        />
      )}
      <CutLine judged={judged} onCorrections={props.onCorrections} />
      <MeasuredPoints judged={judged} onCorrections={props.onCorrections} onDraft={props.onDraft} />
      <Plans judged={judged} onAim={props.onAim} />
      <WhatMoves judged={judged} />
      <OtherWays judged={judged} />
      <TakenAsGiven judged={judged} onCorrections={props.onCorrections} onDraft={props.onDraft} onMoney={props.onMoney} />
      <Cautions cautions={judged.reckoning?.cautions ?? []} />
      <ListingWords
        text={judged.text}
        textCutFrom={judged.textCutFrom}
        reading={judged.reading}
        corrections={judged.corrections}
        onCorrections={props.onCorrections}
      />
      <SellerAnswers judged={judged} asked={asked} onAnswer={props.onAnswer} onDraft={props.onDraft} />
      <KeepWithNotes judged={judged} onNotes={props.onNotes} onDraft={props.onDraft} onKeep={props.onKeep} />
    </>
  )
}

function Cautions({ cautions }: { cautions: readonly string[] }) {
  const { t } = useWords()
  if (cautions.length === 0) return null
  return (
    <section class="part" aria-labelledby="cautions-head">
      <h2 id="cautions-head">{t('cautions.head')}</h2>
      <ul class="bullets">
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  )
}

const NOTES_DRAFT = 'notes'

function KeepWithNotes({ judged, onNotes, onDraft, onKeep }: { judged: Judged } & Pick<PanelActions, 'onNotes' | 'onDraft' | 'onKeep'>) {
  const { t } = useWords()
  const began = useRef<string | null>(null)
  return (
    <section class="part" aria-labelledby="keep-head">
      <h2 id="keep-head">{t('keep.head')}</h2>
      <TypedText
        label={t('keep.notes')}
        value={judged.drafts[NOTES_DRAFT] ?? judged.notes}
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
      <div class="acts">
        <button type="button" class="btn" onClick={onKeep}>
          {t(judged.kept ? 'keep.again' : 'keep.with-notes')}
        </button>
      </div>
      {judged.kept && <p class="note">{t('keep.is-kept')}</p>}
    </section>
  )
}

/** The answer as it is read from the top: the verdict, what the untold must be, why. */
function announced(judged: Judged, verdict: Verdict, words: Words): string {
  const conditions = conditionsSaid(judged, words)
  const why = [...(conditions === null ? [] : [conditions.text]), ...verdictReasons(judged)]
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

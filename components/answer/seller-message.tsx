/** What to ask the seller, as one message ready to send: one press copies it; which questions, and whether it says what would suit, can be changed. */
import { useId, useState } from 'preact/hooks'
import { asksIn } from '../../core/plan/answer/asks-in-language.ts'
import { askedAtOnce, messageToSeller, questionId, sellersQuestions } from '../../core/plan/ask/message.ts'
import type { Ask, Reckoning } from '../../core/reckon.ts'
import { listed } from '../../core/words/say.ts'
import { useSpoken } from '../use-spoken.ts'
import { useWords, type Words } from '../words.tsx'

export interface SellerMessageProps {
  title: string
  ask: readonly Ask[]
  /** Of the same answer: what would suit. */
  conditions: Reckoning['conditions']
  /** Of the listing: the message is in it where there are words for it. */
  language: string
  /** In a small window: nothing to open. */
  short: boolean
  /** It is what to do next. */
  isMain: boolean
  onCopy: (text: string) => Promise<boolean>
  onEnterAnswer?: () => void
}

/** What was ticked stays as long as the same is asked. */
export function SellerMessage(props: SellerMessageProps) {
  const questions = sellersQuestions(props.ask)
  return questions.length === 0 ? null : <Message key={questions.map(questionId).join()} {...props} questions={questions} />
}

function Message(props: SellerMessageProps & { questions: readonly Ask[] }) {
  const { title, language, questions, conditions, short, isMain, onCopy, onEnterAnswer } = props
  const words = useWords()
  const { t, wording } = words
  const id = useId()
  const [ticked, setTicked] = useState<ReadonlySet<string>>(() => new Set(askedAtOnce(questions).map(questionId)))
  const [suits, setSuits] = useState(true)
  const isForeign = useSpoken(language) && language.slice(0, 2) !== (wording.language ?? 'en').slice(0, 2)
  const [theirs, setTheirs] = useState(true)
  const inTheirs = theirs && isForeign
  const [copied, setCopied] = useState<'copied' | 'not-copied' | null>(null)
  const chosen = questions.filter((one) => ticked.has(questionId(one)))
  const spoken = inTheirs ? { ...wording, language } : wording
  const message = messageToSeller(title, inTheirs ? asksIn(chosen, conditions, spoken) : chosen, suits, spoken)
  const [first] = questions
  const tick = (one: Ask, on: boolean) => {
    setTicked(new Set(questions.map(questionId).filter((its) => (its === questionId(one) ? on : ticked.has(its)))))
    setCopied(null)
  }
  const about = (chosen.length === 0 ? questions : chosen).map(({ again: _, ...one }) => nameOf(one, words))
  return (
    <section class="ask" aria-labelledby={id}>
      <div class="ask-row">
        <h3 id={id}>{t('ask.head', { what: listed(about, wording) })}</h3>
        <button
          type="button"
          class={isMain ? 'btn small main' : 'btn small'}
          disabled={message === ''}
          onClick={async () => setCopied((await onCopy(message)) ? 'copied' : 'not-copied')}
        >
          {t('ask.copy')}
        </button>
      </div>
      <p class="note said" role="status">
        {copied !== null && t(`ask.${copied}`)}
      </p>
      {!short && first?.why !== undefined && <p class="note">{first.why}</p>}
      {short ? (
        copied === 'not-copied' && <q lang={spoken.language}>{message}</q>
      ) : (
        <details class="fold" open={copied === 'not-copied'}>
          <summary>{t('ask.read')}</summary>
          {questions.length > 1 && <WhichQuestions questions={questions} ticked={ticked} onTick={tick} />}
          {chosen.some((one) => one.suits !== undefined) && (
            <Tick
              label={t('ask.say-suits')}
              on={suits}
              onTick={(on) => {
                setSuits(on)
                setCopied(null)
              }}
            />
          )}
          {isForeign && (
            <Tick
              label={t('ask.in-theirs')}
              on={theirs}
              onTick={(on) => {
                setTheirs(on)
                setCopied(null)
              }}
            />
          )}
          {message === '' ? <p class="note">{t('ask.none-ticked')}</p> : <q lang={spoken.language}>{message}</q>}
          {first?.point !== undefined && first.why === undefined && (
            <p class="note">{t(first.again === true ? 'ask.why-again' : 'ask.why', { point: first.point })}</p>
          )}
          {onEnterAnswer !== undefined && (
            <button type="button" class="btn bare" onClick={onEnterAnswer}>
              {t('answer.enter-answer')}
            </button>
          )}
        </details>
      )}
    </section>
  )
}

interface WhichProps {
  questions: readonly Ask[]
  ticked: ReadonlySet<string>
  onTick: (one: Ask, on: boolean) => void
}
function WhichQuestions({ questions, ticked, onTick }: WhichProps) {
  const words = useWords()
  return (
    <fieldset>
      <legend class="label">{words.t('ask.which')}</legend>
      <div class="ticks">
        {questions.map((one) => (
          <Tick
            key={questionId(one)}
            label={words.t('ask.what-is', { what: nameOf(one, words) })}
            on={ticked.has(questionId(one))}
            onTick={(on) => onTick(one, on)}
          />
        ))}
      </div>
    </fieldset>
  )
}

function Tick({ label, on, onTick }: { label: string; on: boolean; onTick: (on: boolean) => void }) {
  return (
    <label class="tick">
      <input type="checkbox" checked={on} onChange={(event) => onTick(event.currentTarget.checked)} />
      {label}
    </label>
  )
}

/** A question in a word or two. */
const nameOf = ({ point, about, again }: Ask, { inner }: Words): string =>
  point !== undefined ? inner(again === true ? 'ask.what-again' : 'ask.what', { point }) : inner(`ask.what.${about}`)

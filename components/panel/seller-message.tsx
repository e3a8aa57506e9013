/** What to ask the seller, as one message ready to send: which questions, and whether it says what would suit. */
import { useId, useState } from 'preact/hooks'
import { askedAtOnce, messageToSeller, questionId, sellersQuestions } from '../../core/plan/ask/message.ts'
import type { Ask } from '../../core/reckon.ts'
import { useWords } from '../words.tsx'

export interface SellerMessageProps {
  title: string
  ask: readonly Ask[]
  onCopy: (text: string) => Promise<boolean>
}

/** What was ticked stays as long as the same is asked. */
export function SellerMessage(props: SellerMessageProps) {
  const questions = sellersQuestions(props.ask)
  return questions.length === 0 ? null : <Message key={questions.map(questionId).join()} {...props} questions={questions} />
}

function Message({ title, questions, onCopy }: SellerMessageProps & { questions: readonly Ask[] }) {
  const { t, wording } = useWords()
  const id = useId()
  const [ticked, setTicked] = useState<ReadonlySet<string>>(() => new Set(askedAtOnce(questions).map(questionId)))
  const [suits, setSuits] = useState(true)
  const [copied, setCopied] = useState<'copied' | 'not-copied' | null>(null)
  const chosen = questions.filter((one) => ticked.has(questionId(one)))
  const message = messageToSeller(title, chosen, suits, wording)
  const [first] = questions
  const tick = (one: Ask, on: boolean) => {
    setTicked(new Set(questions.map(questionId).filter((its) => (its === questionId(one) ? on : ticked.has(its)))))
    setCopied(null)
  }
  return (
    <section class="ask" aria-labelledby={id}>
      <h3 id={id}>{t(questions.length === 1 ? 'ask.head' : 'ask.head-several')}</h3>
      {questions.length > 1 && (
        <fieldset>
          <legend class="label">{t('ask.which')}</legend>
          <div class="ticks">
            {questions.map((one) => (
              <Tick key={questionId(one)} label={nameOf(one, t)} on={ticked.has(questionId(one))} onTick={(on) => tick(one, on)} />
            ))}
          </div>
        </fieldset>
      )}
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
      {message === '' ? (
        <p class="note">{t('ask.none-ticked')}</p>
      ) : questions.length === 1 ? (
        <q>{message}</q>
      ) : (
        <details class="fold" open={copied === 'not-copied'}>
          <summary>{t('ask.read')}</summary>
          <q>{message}</q>
        </details>
      )}
      {first?.point !== undefined && first.suits === undefined && (
        <p class="note">{t(first.again === true ? 'ask.why-again' : 'ask.why', { point: first.point })}</p>
      )}
      <div class="row">
        <button
          type="button"
          class="btn small"
          disabled={message === ''}
          onClick={async () => setCopied((await onCopy(message)) ? 'copied' : 'not-copied')}
        >
          {t('ask.copy')}
        </button>
        <span class="note" role="status">
          {copied !== null && t(`ask.${copied}`)}
        </span>
      </div>
    </section>
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
const nameOf = ({ point, about, again }: Ask, t: ReturnType<typeof useWords>['t']): string =>
  point !== undefined ? t(again === true ? 'ask.what-again' : 'ask.what', { point }) : t(`ask.what.${about}`)

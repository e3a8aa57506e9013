/** The answer first: verdict, reason, facts, the one question, two actions. */
import { useState } from 'preact/hooks'
import type { Ask } from '../../core/reckon.ts'
import { Facts } from '../facts.tsx'
import { type Judged, questionForSeller, verdictReasons } from '../judged.ts'
import { VerdictMark } from '../tape/verdict-mark.tsx'
import { asSentences, useWords } from '../words.tsx'

export interface AnswerProps {
  judged: Judged
  onCopy: (text: string) => Promise<boolean>
  onKeep: () => void
  onPass: () => void
  /** Brings "what the seller answered" into view. */
  onEnterAnswer: () => void
  /** Leads to the person's own measures. */
  onBody: () => void
}

export function Answer({ judged, onCopy, onKeep, onPass, onEnterAnswer, onBody }: AnswerProps) {
  const { t } = useWords()
  const { reckoning } = judged
  if (reckoning === null) return null
  const { verdict, ask } = reckoning
  const forSeller = questionForSeller(judged)
  const leave = verdict === 'leave-it'
  const little = verdict === 'too-little-told'
  const keep = (
    <button type="button" class={leave ? 'btn' : 'btn main'} onClick={onKeep}>
      {t(judged.kept ? 'answer.kept' : leave ? 'answer.keep-anyway' : little ? 'answer.keep-and-wait' : 'answer.keep')}
    </button>
  )
  const pass = (
    <button type="button" class={leave ? 'btn main' : 'btn'} onClick={onPass}>
      {t('answer.pass')}
    </button>
  )
  return (
    <section class="answer" aria-labelledby="verdict-head">
      <h2 class="verdict" id="verdict-head">
        <VerdictMark verdict={verdict} large />
        {t('answer.verdict', { verdict })}
      </h2>
      <p class="why">{asSentences(verdictReasons(judged))}</p>
      {!little && <Facts judged={judged} />}
      {judged.wouldChange.length > 0 && (
        <div class="note">
          <p>{t('answer.would-change')}</p>
          <ul class="bullets">
            {judged.wouldChange.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </div>
      )}
      {ask[0]?.body !== undefined && (
        <p class="note">
          {ask[0].question}{' '}
          <button type="button" class="btn bare" onClick={onBody}>
            {t('ask.enter-own')}
          </button>
        </p>
      )}
      {forSeller !== undefined && <Question ask={forSeller} onCopy={onCopy} />}
      <div class="acts">
        {leave ? (
          <>
            {pass}
            {keep}
          </>
        ) : (
          <>
            {keep}
            {little ? (
              <button type="button" class="btn" onClick={onEnterAnswer}>
                {t('answer.enter-answer')}
              </button>
            ) : (
              pass
            )}
          </>
        )}
      </div>
    </section>
  )
}

function Question({ ask, onCopy }: { ask: Ask; onCopy: (text: string) => Promise<boolean> }) {
  const { t } = useWords()
  const [copied, setCopied] = useState<'copied' | 'not-copied' | null>(null)
  return (
    <div class="ask">
      <h3>{t('ask.head')}</h3>
      <q>{ask.question}</q>
      {ask.point !== undefined && <p class="note">{t(ask.again === true ? 'ask.why-again' : 'ask.why', { point: ask.point })}</p>}
      <div class="row">
        <button
          type="button"
          class="btn small"
          onClick={async () => {
            setCopied((await onCopy(ask.question)) ? 'copied' : 'not-copied')
          }}
        >
          {t('ask.copy')}
        </button>
        <span class="note" role="status">
          {copied !== null && t(`ask.${copied}`)}
        </span>
      </div>
    </div>
  )
}

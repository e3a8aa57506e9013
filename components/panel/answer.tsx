/** The answer first: verdict, reason, facts, the one question, two actions. */
import type { Ask } from '../../core/reckon.ts'
import { ConditionLine } from '../condition-line.tsx'
import { Facts } from '../facts.tsx'
import { type Judged, sizeToChoose, verdictReasons } from '../judged.ts'
import { VerdictMark } from '../tape/verdict-mark.tsx'
import { asSentences, useWords } from '../words.tsx'
import { SellerMessage } from './seller-message.tsx'

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
  const own = ask.find(isOwn)
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
      <ConditionLine judged={judged} whole />
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
      {own !== undefined && (
        <p class="note">
          {own.question}{' '}
          <button type="button" class="btn bare" onClick={onBody}>
            {t('ask.enter-own')}
          </button>
        </p>
      )}
      {sizeToChoose(judged) === null && <SellerMessage title={judged.title} ask={ask} onCopy={onCopy} />}
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

/** A measure of the person's own that comes first, or that the answer hangs on. */
const isOwn = ({ body, suits }: Ask, place: number): boolean => body !== undefined && (place === 0 || suits !== undefined)

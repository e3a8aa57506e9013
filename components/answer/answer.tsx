/** The answer first, in one screen: verdict, condition, one sentence, three facts, the one question, two actions. Popup and panel show the same. */
import type { ComponentChildren } from 'preact'
import { sellersQuestions } from '../../core/plan/ask/message.ts'
import { LIKELY } from '../../core/plan/keys.ts'
import type { Ask } from '../../core/reckon.ts'
import { DOUBTED, type Judged, sizeToChoose, verdictReasons } from '../judged.ts'
import { VerdictMark } from '../tape/verdict-mark.tsx'
import { asSentences, useWords } from '../words.tsx'
import { ConditionLine } from './condition-line.tsx'
import { chanceOf, Facts } from './facts.tsx'
import { type KeepActions, KeepActs } from './keep-acts.tsx'
import { SellerMessage } from './seller-message.tsx'
import { WouldFit } from './would-fit.tsx'

export interface AnswerProps extends KeepActions {
  judged: Judged
  onCopy: (text: string) => Promise<boolean>
  /** Leads to the person's own measures. */
  onBody: () => void
  /** In a small window: the same words, and nothing to open. */
  short?: boolean
  /** Leads to where the tailor's price is entered. */
  onEnterPrice?: () => void
  /** Where the tailor's price is entered, right here. */
  tailorPart?: ComponentChildren
  /** Brings "what the seller answered" into view; not there: it can't be entered here. */
  onEnterAnswer?: () => void
}

/** From this chance on nobody need ask before they buy (a setting). */
const SURE_ENOUGH = 0.75

/** More sentences than these are read by nobody in a small window. */
const MOST_SHORT = 2

export function Answer({ judged, onCopy, onBody, short = false, onEnterAnswer, onEnterPrice, tailorPart, ...acts }: AnswerProps) {
  const { t } = useWords()
  const { reckoning } = judged
  if (reckoning === null) return null
  const { verdict, ask } = reckoning
  const own = ask.find(isOwn)
  const asksSeller = sizeToChoose(judged) === null && verdict !== 'leave-it' && sellersQuestions(ask).length > 0
  const askFirst = asksSeller && (reckoning.chance ?? 1) < SURE_ENOUGH
  // what is more likely not so than so, or is to be asked about first, is no plain yes
  const isDoubtful = DOUBTED.has(verdict) && ((chanceOf(judged) ?? 1) < LIKELY || (reckoning.asFarAsTold && askFirst))
  // one thing stands out: what to do next
  const mainIs = own !== undefined && own === ask[0] ? 'own' : askFirst || (asksSeller && verdict === 'too-little-told') ? 'seller' : 'keep'
  // a small window has room for the one question
  const showsOwn = own !== undefined && (!short || !asksSeller || mainIs === 'own')
  const showsSeller = asksSeller && (!short || mainIs !== 'own')
  const showsBetter = verdict === 'leave-it' || (verdict !== 'wears-as-is' && verdict !== 'alters-to-fit' && !(short && showsSeller))
  const why = short ? verdictReasons(judged).slice(0, MOST_SHORT) : verdictReasons(judged)
  return (
    <section class="answer" aria-labelledby="verdict-head">
      <h2 class="verdict" id="verdict-head">
        <VerdictMark verdict={verdict} large />
        {t(isDoubtful ? 'answer.verdict-doubtful' : 'answer.verdict', { verdict })}
      </h2>
      {reckoning.asFarAsTold && verdict !== 'too-little-told' && verdict !== 'leave-it' && (
        <p class="as-far">{t(askFirst ? 'answer.as-far-ask' : 'answer.as-far-as-told')}</p>
      )}
      <p class="why">{asSentences(why)}</p>
      <ConditionLine judged={judged} whole={!short} />
      <Facts judged={judged} short={short} {...(onEnterPrice === undefined ? {} : { onEnterPrice })} />
      {tailorPart}
      {showsBetter && <WouldFit judged={judged} short={short} />}
      {showsOwn && (
        <div class="ask">
          <div class="ask-row">
            <p>{own.question}</p>
            <button type="button" class={mainIs === 'own' ? 'btn small main' : 'btn small'} onClick={onBody}>
              {t('ask.enter-own')}
            </button>
          </div>
        </div>
      )}
      {showsSeller && (
        <SellerMessage
          title={judged.title}
          ask={ask}
          conditions={reckoning.conditions}
          language={judged.reading.language}
          short={short}
          isMain={mainIs === 'seller'}
          onCopy={onCopy}
          {...(onEnterAnswer === undefined ? {} : { onEnterAnswer })}
        />
      )}
      <KeepActs judged={judged} isMain={mainIs === 'keep'} {...acts} />
    </section>
  )
}

/** A measure of the person's own that comes first, or that the answer hangs on. */
const isOwn = ({ body, suits }: Ask, place: number): boolean => body !== undefined && (place === 0 || suits !== undefined)

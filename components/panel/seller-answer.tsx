/** What the seller answered: pasted, read, and set beside the first reading. Both are kept; the newer leads. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { PointId } from '../../core/ids/points.ts'
import type { MeasureReading } from '../../core/reading/reading.ts'
import { countsToo } from '../../core/reading/request/second-look.ts'
import type { Judged } from '../judged.ts'
import { TypedText } from '../typed-text.tsx'
import { useWords } from '../words.tsx'

export const ANSWER_DRAFT = 'answer'

export interface SellerAnswerProps {
  judged: Judged
  /** Opened by the person from the answer above. */
  asked: number
  onAnswer: (text: string) => void
  onDraft: (field: string, typed: string | null) => void
}

export function SellerAnswers({ judged, asked, onAnswer, onDraft }: SellerAnswerProps) {
  const { t } = useWords()
  const draft = judged.drafts[ANSWER_DRAFT] ?? ''
  const [text, setText] = useState(draft)
  const details = useRef<HTMLDetailsElement | null>(null)
  useEffect(() => {
    if (asked === 0 || details.current === null) return
    details.current.open = true
    details.current.querySelector('textarea')?.focus()
  }, [asked])
  return (
    <details class="part" ref={details} open={draft !== '' || judged.answers.length > 0}>
      <summary>
        <h2>{t('answers.head')}</h2>
        {judged.answers.length > 0 && <span class="note">{t('answers.count', { n: judged.answers.length })}</span>}
      </summary>
      <div class="stack">
        <TypedText
          label={t('answers.label')}
          value={draft}
          onTyped={(typed) => {
            setText(typed)
            onDraft(ANSWER_DRAFT, typed)
          }}
        />
        <button
          type="button"
          class="btn"
          disabled={text.trim() === ''}
          onClick={() => {
            onAnswer(text)
            onDraft(ANSWER_DRAFT, null)
            setText('')
          }}
        >
          {t('answers.read')}
        </button>
        {judged.answers.length > 0 && <BothReadings judged={judged} />}
        {judged.answers
          .filter(({ reading: { measures, made } }) => measures.length === 0 && Object.keys(made).length === 0)
          .map(({ id, on }) => (
            <p key={id} class="note">
              {t('answers.nothing-read', { on })}
            </p>
          ))}
      </div>
    </details>
  )
}

interface Both {
  point: PointId
  first: MeasureReading | null
  answered: MeasureReading | null
}

/** The first reading and the latest answer, point by point. */
export function bothReadings({ reading, answers }: Pick<Judged, 'reading' | 'answers'>): Both[] {
  const answered = new Map(answers.flatMap((answer) => answer.reading.measures).map((measure) => [measure.point, measure]))
  return [...answered.keys()].map((point) => ({
    point,
    first: reading.measures.find((measure) => measure.point === point) ?? null,
    answered: answered.get(point) ?? null
  }))
}

function BothReadings({ judged }: { judged: Judged }) {
  const { t, length } = useWords()
  const rows = bothReadings(judged)
  if (rows.length === 0) return null
  const quoted = ({ stated, mm }: MeasureReading) => `${stated.text.replace(/\s+/g, ' ')} (${length(mm)})`
  return (
    <div class="scrolls">
      <table class="both">
        <caption>{t('answers.both')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('answers.point')}</th>
            <th scope="col">{t('answers.first')}</th>
            <th scope="col">{t('answers.newer')}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ point, first, answered }) => (
            <tr key={point}>
              <th scope="row">{t('points.point', { point })}</th>
              <td>
                {first === null ? '–' : answered !== null && countsToo(answered, first) ? <b>{quoted(first)}</b> : <s>{quoted(first)}</s>}
              </td>
              <td>{answered !== null && <b>{quoted(answered)}</b>}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

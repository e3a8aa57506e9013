/** The listing as read: solid chalk what was read, dashed what needs a look, dotted what was left aside. */
import { useMemo, useState } from 'preact/hooks'
import type { Issue, Stated } from '../../core/garment/issue.ts'
import { noListingIn } from '../../core/reading/issues.ts'
import type { Correction, Reading } from '../../core/reading/reading.ts'
import { chartNotes } from '../../core/reading/request/chart-notes.ts'
import { say, sayInside } from '../../core/words/say.ts'
import { useWords } from '../words.tsx'
import { markedParts, piecesOf } from './marked-text.ts'
import { withReading } from './point-rows.ts'

export interface ListingWordsProps {
  text: string
  textCutFrom: number | null
  reading: Reading
  corrections: readonly Correction[]
  onCorrections: (corrections: Correction[]) => void
}

const ASKED_AT_HEAD = new Set(['reading.several-sizes', 'reading.several-garments'])

export function ListingWords({ text, textCutFrom, reading, corrections, onCorrections }: ListingWordsProps) {
  const { t, wording } = useWords()
  const [whole, setWhole] = useState(false)
  const marks = useMemo(() => markedParts(reading, corrections), [reading, corrections])
  const pieces = useMemo(() => piecesOf(text, marks, whole), [text, marks, whole])
  if (text === '') return null
  const used = new Set(marks.map(({ as }) => as))
  const notes = chartNotes(reading, corrections).map((note) => say(note, wording))
  // told at the head, where the size or the kind is chosen
  const odd = noListingIn(reading.issues)
  const issues = reading.issues.filter((issue) => !ASKED_AT_HEAD.has(issue.code) && issue !== odd)
  return (
    <details class="part" open={issues.length > 0}>
      <summary>
        <h2>{t('words.head')}</h2>
        {issues.length > 0 && <span class="note">{t('words.doubts', { n: issues.length })}</span>}
      </summary>
      <div>
        <MarkedText pieces={pieces} language={reading.language} />
        {pieces.some(({ text: shown }) => shown === null) && (
          <button type="button" class="btn small" onClick={() => setWhole(true)}>
            {t('words.all')}
          </button>
        )}
        {textCutFrom !== null && <p class="note">{t('words.cut', { kept: text.length, length: textCutFrom })}</p>}
        <ul class="key">
          {used.has('read') && (
            <li>
              <u aria-hidden="true" />
              {t('words.key.read')}
            </li>
          )}
          {used.has('doubt') && (
            <li>
              <u class="d" aria-hidden="true" />
              {t('words.key.doubt')}
            </li>
          )}
          {used.has('aside') && (
            <li>
              <u class="a" aria-hidden="true" />
              {t('words.key.aside')}
            </li>
          )}
        </ul>
        {issues.length + notes.length > 0 && (
          <ul class="bullets issues">
            {notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
            {issues.map((issue) => (
              <li key={`${issue.code} ${issue.stated?.start}`}>
                {issue.text}
                <Readings issue={issue} onTake={(stated, taken) => onCorrections(withReading({ corrections }, stated, taken))} />
              </li>
            ))}
          </ul>
        )}
      </div>
    </details>
  )
}

/** Each way a doubtful figure could be read, to choose from. */
function Readings({
  issue: { stated, readings },
  onTake
}: {
  issue: Issue
  onTake: (stated: Stated, taken: Issue['readings'][number]) => void
}) {
  const { t } = useWords()
  if (stated === undefined || readings.length === 0) return null
  return (
    <div class="row">
      {readings.map((taken) => (
        <button key={`${taken.point} ${taken.mm}`} type="button" class="btn small" onClick={() => onTake(stated, taken)}>
          {t('words.take', taken)}
        </button>
      ))}
    </div>
  )
}

function MarkedText({ pieces, language }: { pieces: ReturnType<typeof piecesOf>; language: string }) {
  const { wording } = useWords()
  const small = (says: Parameters<typeof sayInside>[0]) => sayInside(says, wording)
  return (
    <p class="words" lang={language}>
      {pieces.map(({ start, text, mark }) =>
        text === null ? (
          <span key={start}> … </span>
        ) : mark === null ? (
          <span key={start}>{text}</span>
        ) : (
          <mark key={start} class={mark.as === 'read' ? undefined : mark.as}>
            {text}
            <i>{small(mark.says)}</i>
          </mark>
        )
      )}
    </p>
  )
}

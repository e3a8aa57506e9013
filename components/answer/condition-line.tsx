/** What the untold must be, so that it works out: the second line of an answer, right under the verdict. */
import { capped, listed } from '../../core/words/say.ts'
import { conditionalReason, type Judged } from '../judged.ts'
import { TapeLine } from '../tape/tape-line.tsx'
import { useWords, type Words } from '../words.tsx'

/** More than these are a list, and no sentence. */
const MOST_NAMED = 3
const TAPE_WIDTH = 96

export interface ConditionsSaid {
  text: string
  /** Those that the sentence only counts, each as a clause. */
  rest: string[]
}

/** null: nothing hangs on what is not told. */
export function conditionsSaid(judged: Judged, { t, inner, wording }: Words): ConditionsSaid | null {
  const reason = conditionalReason(judged)
  if (reason === null) return null
  const clauses = judged.reckoning?.conditions.map(({ text }) => text) ?? []
  if (clauses.length <= MOST_NAMED) return { text: reason.text, rest: [] }
  const rest = clauses.slice(MOST_NAMED)
  const named = [...clauses.slice(0, MOST_NAMED), inner('answer.conditions-more', { n: rest.length })]
  return { text: t('verdict.if', { conditions: listed(named, wording) }), rest }
}

/** `whole`: with a place for those that the sentence only counts. */
export function ConditionLine({ judged, whole = false }: { judged: Judged; whole?: boolean }) {
  const words = useWords()
  const said = conditionsSaid(judged, words)
  if (said === null) return null
  return (
    <>
      <div class="if-told">
        <ConditionTape judged={judged} />
        <p>{said.text}</p>
      </div>
      {whole && said.rest.length > 0 && (
        <details class="fold stitched">
          <summary>{words.t('answer.conditions-rest')}</summary>
          <ul class="bullets">
            {said.rest.map((clause) => (
              <li key={clause}>{capped(clause)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  )
}

/** One point that decides: what it must be, as an empty band on the tape. */
function ConditionTape({ judged: { reckoning } }: { judged: Judged }) {
  const [first, ...others] = reckoning?.conditions ?? []
  if (first?.point === undefined || others.length > 0) return null
  const band = { least: first.least, ideal: null, most: first.most }
  return (
    <TapeLine shown={{ point: first.point, garmentMm: null, from: 'inferred', sdMm: 0, band, gapMm: 0 }} width={TAPE_WIDTH} wanted="?" />
  )
}

/** What the untold must be, so that it works out: the second line of an answer, right under the verdict. */
import { capped, listed } from '../core/words/say.ts'
import { conditionalReason, type Judged } from './judged.ts'
import { useWords, type Words } from './words.tsx'

/** More than these are a list, and no sentence. */
const MOST_NAMED = 3

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
      <p class="if-told">{said.text}</p>
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

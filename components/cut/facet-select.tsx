/** One facet of a cut as a choice: its values in the trade's words, and first the way to leave it as it is. */
import { useId } from 'preact/hooks'
import type { Facet } from '../../core/ids/cut.ts'
import { useWords } from '../words.tsx'

export interface FacetSelectProps {
  facet: Facet
  values: readonly string[]
  /** null: left as it is. */
  value: string | null
  /** What leaving it as it is means here. */
  unset: string
  note?: string
  onChoose: (value: string | null) => void
}

export function FacetSelect({ facet, values, value, unset, note, onChoose }: FacetSelectProps) {
  const { t } = useWords()
  const id = useId()
  return (
    <div class="facet">
      <label for={id} class="label">
        {t(`facet.${facet}`)}
      </label>
      <select
        id={id}
        value={value ?? ''}
        aria-describedby={note === undefined ? undefined : `${id}-note`}
        onChange={({ currentTarget }) => onChoose(currentTarget.value === '' ? null : currentTarget.value)}
      >
        <option value="">{unset}</option>
        {values.map((one) => (
          <option key={one} value={one}>
            {t(`cut.${facet}.${one}`)}
          </option>
        ))}
      </select>
      {note !== undefined && (
        <p class="note" id={`${id}-note`}>
          {note}
        </p>
      )}
    </div>
  )
}

/** A labelled field with its message beside it. The typed text stays as it was typed, whatever is wrong with it. */
import type { ComponentChildren } from 'preact'
import { useId } from 'preact/hooks'

export interface FieldProps {
  label: string
  typed: string
  onTyped: (typed: string) => void
  /** Left the field, or pressed Enter in it. */
  onDone?: () => void
  /** What is wrong, as a sentence that says what to do. */
  problem?: string | null
  note?: string | null
  /** Stands behind the field: a unit, a currency. */
  unit?: string
  type?: 'text' | 'search' | 'date'
  /** Several lines. */
  long?: boolean
  required?: boolean
  /** The id of what names the field first, where its label alone is not enough. */
  labelledBy?: string
  /** The number of its ring on the drawing beside it. */
  number?: number | undefined
  children?: ComponentChildren
}

export function Field({
  label,
  typed,
  onTyped,
  onDone,
  problem = null,
  note = null,
  unit,
  type = 'text',
  long = false,
  required = false,
  labelledBy,
  number,
  children
}: FieldProps) {
  const id = useId()
  const described = [problem !== null && `${id}-wrong`, note !== null && `${id}-note`].filter(Boolean).join(' ')
  const shared = {
    id,
    class: 'fieldin',
    value: typed,
    'aria-invalid': problem !== null,
    ...(described === '' ? {} : { 'aria-describedby': described }),
    ...(required ? { 'aria-required': true } : {}),
    ...(labelledBy === undefined ? {} : { 'aria-labelledby': `${labelledBy} ${id}-label` }),
    onBlur: () => onDone?.()
  }
  const line = {
    ...shared,
    autocomplete: 'off',
    onInput: (event: { currentTarget: HTMLInputElement }) => onTyped(event.currentTarget.value),
    onKeyDown: (event: KeyboardEvent) => {
      if (event.key === 'Enter') onDone?.()
    }
  }
  return (
    <div class="wr-field">
      <span class={number === undefined ? undefined : 'wr-numbered'}>
        {number !== undefined && (
          <span class="wr-number" aria-hidden="true">
            {number}
          </span>
        )}
        <label class="label" for={id} id={`${id}-label`}>
          {label}
        </label>
      </span>
      <div class="wr-value">
        {long ? (
          <textarea {...shared} rows={3} onInput={(event) => onTyped(event.currentTarget.value)} />
        ) : type === 'search' ? (
          <input {...line} type="search" />
        ) : type === 'date' ? (
          <input {...line} type="date" />
        ) : (
          <input {...line} type="text" />
        )}
        {unit !== undefined && <span class="wr-unit">{unit}</span>}
        {children}
      </div>
      {problem !== null && (
        <p class="wrong" id={`${id}-wrong`}>
          {problem}
        </p>
      )}
      {note !== null && (
        <p class="note" id={`${id}-note`}>
          {note}
        </p>
      )}
    </div>
  )
}

export interface ChoiceProps<V extends string> {
  label: string
  value: V
  options: readonly { value: V; label: string }[]
  onChoose: (value: V) => void
  small?: boolean
  note?: string
}

/** One of several, in a select. */
export function Choice<V extends string>({ label, value, options, onChoose, small = false, note }: ChoiceProps<V>) {
  const id = useId()
  return (
    <div class="wr-field">
      <label class="label" for={id}>
        {label}
      </label>
      <select
        id={id}
        class={small ? 'small' : undefined}
        value={value}
        aria-describedby={note === undefined ? undefined : `${id}-note`}
        onChange={(event) => {
          const chosen = options.find((option) => option.value === event.currentTarget.value)
          if (chosen !== undefined) onChoose(chosen.value)
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
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

/** A choice of two or three, joined like a folded edge: native radio buttons under one name. */
import { useId } from 'preact/hooks'

export interface PickProps<V extends string> {
  label: string
  options: readonly { value: V; label: string }[]
  value: V | null
  onPick: (value: V) => void
}

export function Pick<V extends string>({ label, options, value, onPick }: PickProps<V>) {
  const id = useId()
  return (
    <div>
      <span class="label" id={id}>
        {label}
      </span>
      <div class="pick" role="radiogroup" aria-labelledby={id}>
        {options.map((option) => (
          <label key={option.value}>
            <input type="radio" name={id} value={option.value} checked={option.value === value} onChange={() => onPick(option.value)} />
            {option.label}
          </label>
        ))}
      </div>
    </div>
  )
}

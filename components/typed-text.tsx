/** A larger piece of text that is typed or pasted: what stands in it is handed on at once, so that nothing is lost. */
import { useEffect, useId, useRef, useState } from 'preact/hooks'

export interface TypedTextProps {
  label: string
  value: string
  placeholder?: string
  rows?: number
  onTyped: (text: string) => void
  onDone?: (text: string) => void
}

export function TypedText({ label, value, placeholder, rows = 3, onTyped, onDone }: TypedTextProps) {
  const id = useId()
  const [text, setText] = useState(value)
  const field = useRef<HTMLTextAreaElement | null>(null)
  useEffect(() => {
    if (document.activeElement !== field.current) setText(value)
  }, [value])
  return (
    <div>
      <label class="label" for={id}>
        {label}
      </label>
      <textarea
        ref={field}
        id={id}
        class="fieldin"
        rows={rows}
        placeholder={placeholder}
        value={text}
        onInput={(event) => {
          setText(event.currentTarget.value)
          onTyped(event.currentTarget.value)
        }}
        onChange={(event) => onDone?.(event.currentTarget.value)}
      />
    </div>
  )
}

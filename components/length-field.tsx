/** A field for a length as people type it (28 3/4, 28¾, 73 cm), with a clear message beside it when it can't be taken. What was typed stays. */
import type { ComponentChildren, RefObject } from 'preact'
import { useEffect, useId, useRef, useState } from 'preact/hooks'
import { type LengthProblem, type LengthUnit, parseLength } from '../core/length.ts'
import { useWords } from './words.tsx'

export interface TypedLength {
  value: number
  unit: LengthUnit
  mm: number
}
export interface LengthFieldProps {
  /** Shown above the field. */
  label: string
  /** Said with the label, to tell this field from its like. */
  of: string
  typed: string
  unit: 'in' | 'cm'
  /** Every keystroke, so that nothing typed is lost. */
  onTyped: (typed: string) => void
  /** What stands in it now, with every keystroke, to be answered at once; null: no length. */
  onNow?: (length: TypedLength | null) => void
  /** A length to be saved: a moment after the last keystroke, so that a figure of several is one. */
  onLength: (length: TypedLength) => void
  focusFirst?: boolean
  /** What stands in it was typed before and not yet taken. */
  unsaved?: boolean
  children?: ComponentChildren
}

/** Keystrokes nearer than this are of one figure, ms. */
const ONE_FIGURE_MS = 350

export function LengthField(props: LengthFieldProps) {
  const { label, of, focusFirst = false, children } = props
  const { t } = useWords()
  const id = useId()
  const field = useRef<HTMLInputElement | null>(null)
  const { text, problem, type, takePending } = useTypedLength(props, field)
  useEffect(() => {
    if (focusFirst) field.current?.focus()
  }, [focusFirst])
  return (
    <div class="stated">
      <label class="label" for={id}>
        {label}
        <span class="sr"> {of}</span>
      </label>
      <input
        ref={field}
        id={id}
        class="fieldin n"
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        aria-invalid={problem !== null}
        aria-describedby={problem === null ? undefined : `${id}-wrong`}
        onInput={(event) => type(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') takePending()
        }}
        onBlur={takePending}
      />
      {problem !== null && (
        <p class="wrong" id={`${id}-wrong`} role="alert">
          {t(`field.wrong.${problem}`)}
        </p>
      )}
      {children}
    </div>
  )
}

/** What stands in the field, and taking it: a moment after the last keystroke, when the field is left, or when it goes. */
function useTypedLength(
  { typed, unit, onTyped, onNow, onLength, unsaved = false }: LengthFieldProps,
  field: RefObject<HTMLInputElement | null>
) {
  const [text, setText] = useState(typed)
  const [problem, setProblem] = useState<LengthProblem | null>(problemOf(typed, unit))
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)
  const pending = useRef<string | null>(unsaved ? typed : null)
  const latest = useRef({ unit, onLength })
  latest.current = { unit, onLength }
  // a figure that changed elsewhere (undo, another unit) comes into the field, unless it is being typed in
  useEffect(() => {
    if (document.activeElement !== field.current) {
      setText(typed)
      setProblem(problemOf(typed, unit))
    }
  }, [typed, unit])
  const takePending = useRef(() => {
    const value = pending.current
    clearTimeout(timer.current)
    pending.current = null
    if (value === null) return
    const parsed = parseLength(value, latest.current.unit)
    if (parsed.ok) latest.current.onLength({ value: parsed.value, unit: parsed.unit, mm: parsed.mm })
  }).current
  // whatever is still waiting when the field goes is taken then
  useEffect(() => {
    if (pending.current !== null) timer.current = setTimeout(takePending, ONE_FIGURE_MS)
    return takePending
  }, [])
  const type = (value: string) => {
    setText(value)
    setProblem(problemOf(value, unit))
    onTyped(value)
    const parsed = parseLength(value, unit)
    onNow?.(parsed.ok ? { value: parsed.value, unit: parsed.unit, mm: parsed.mm } : null)
    pending.current = value
    clearTimeout(timer.current)
    timer.current = setTimeout(takePending, ONE_FIGURE_MS)
  }
  return { text, problem, type, takePending }
}

/** An empty field is not yet wrong. */
function problemOf(typed: string, unit: LengthUnit): LengthProblem | null {
  const parsed = parseLength(typed, unit)
  return parsed.ok || parsed.problem === 'empty' ? null : parsed.problem
}

/** Forms that open in a page: the focus goes into them, and Escape closes them. */
import type { RefObject } from 'preact'
import { useEffect, useRef } from 'preact/hooks'

const FIELDS = 'input:not([type="file"]), select, textarea'

/** Puts the focus into the first field of a form that has just been opened. */
export function useFocusFirst(): RefObject<HTMLFormElement | null> {
  const form = useRef<HTMLFormElement | null>(null)
  useEffect(() => form.current?.querySelector<HTMLElement>(FIELDS)?.focus(), [])
  return form
}

/** Escape does what Cancel does. An open list of choices closes first, of itself. */
export const onEscape =
  (cancel: () => void) =>
  (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return
    event.preventDefault()
    event.stopPropagation()
    cancel()
  }

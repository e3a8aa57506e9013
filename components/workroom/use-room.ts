/** How much room an element has, in the page's own letters: with larger letters there is less. Followed as window and letters change. */
import type { RefObject } from 'preact'
import { useLayoutEffect, useRef, useState } from 'preact/hooks'

/** rem; `fallback` stands until it is measured, and where nothing can be. */
export function useRoom<E extends HTMLElement>(fallback: number): { ref: RefObject<E | null>; rem: number } {
  const ref = useRef<E | null>(null)
  const [rem, setRem] = useState(fallback)
  useLayoutEffect(() => {
    const element = ref.current
    if (element === null) return
    const measure = () => {
      const letter = Number.parseFloat(getComputedStyle(document.documentElement).fontSize)
      if (element.clientWidth > 0 && letter > 0) setRem(Math.round((element.clientWidth / letter) * 10) / 10)
    }
    measure()
    if (typeof ResizeObserver === 'undefined') return
    // larger letters make it taller, which is seen too
    const observer = new ResizeObserver(measure)
    observer.observe(element)
    return () => observer.disconnect()
  }, [])
  return { ref, rem }
}

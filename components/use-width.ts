/** The width an element has on the page, in whole px, followed as it changes; drawings are redrawn at it, never scaled. */
import type { RefObject } from 'preact'
import { useLayoutEffect, useRef, useState } from 'preact/hooks'

export function useWidth<E extends HTMLElement>(fallback: number): { ref: RefObject<E | null>; width: number } {
  const ref = useRef<E | null>(null)
  const [width, setWidth] = useState(fallback)
  useLayoutEffect(() => {
    const element = ref.current
    if (element === null) return
    const measure = (wide: number) => {
      if (wide > 0) setWidth(Math.round(wide))
    }
    measure(element.clientWidth)
    if (typeof ResizeObserver === 'undefined') return
    const observer = new ResizeObserver((entries) => {
      for (const entry of entries) measure(entry.contentRect.width)
    })
    observer.observe(element)
    return () => observer.disconnect()
  }, [])
  return { ref, width }
}

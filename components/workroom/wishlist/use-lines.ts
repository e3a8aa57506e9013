/**
 * Which lines of a long list are drawn: those in view and a few around them, and the one where the keyboard is, wherever that lies; for the rest
 * there is room. A short list is drawn whole, so that it prints and is searched by the browser as any page. Heights are measured as lines are drawn.
 */
import { observeWindowOffset, observeWindowRect, Virtualizer, windowScroll } from '@tanstack/virtual-core'
import type { RefObject } from 'preact'
import { useLayoutEffect, useReducer, useRef, useState } from 'preact/hooks'

/** A list of no more lines than this is drawn whole. */
export const DRAWN_WHOLE = 60
/** Lines drawn above and below those in view: the next ones stand there when the keyboard goes on to them. */
const AROUND = 4

/** A line to draw, or room for lines that are not drawn. */
export type Drawn = { line: number } | { before: number; room: number }

export interface Lines {
  drawn: readonly Drawn[]
  /** To be told each line's element, which carries its number as `data-index`. */
  measure: (element: HTMLElement | null) => void
}

export interface LinesOptions {
  count: number
  /** How tall a line is before it is measured, px. */
  estimatePx: number
  /** Where the lines begin. */
  list: RefObject<HTMLElement | null>
  /** What each line is known by; the same function while the list is the same. */
  keyOf: (line: number) => string
  /** Lines that stay drawn. */
  kept: readonly number[]
  /** Heights are of this layout: with another they are measured anew. */
  layout: string
}

export function useLines({ count, estimatePx, list, keyOf, kept, layout }: LinesOptions): Lines {
  const isWindowed = count > DRAWN_WHOLE
  const [, redraw] = useReducer((n: number) => n + 1, 0)
  const marginPx = useTopOf(list, isWindowed)
  const options = {
    count,
    enabled: isWindowed,
    estimateSize: () => estimatePx,
    getItemKey: keyOf,
    overscan: AROUND,
    scrollMargin: marginPx,
    getScrollElement: () => (typeof window === 'undefined' ? null : window),
    initialRect: { width: innerWidth, height: innerHeight },
    initialOffset: () => scrollY,
    observeElementRect: observeWindowRect,
    observeElementOffset: observeWindowOffset,
    scrollToFn: windowScroll,
    onChange: () => redraw(null),
    rangeExtractor: ({ startIndex, endIndex, overscan }: { startIndex: number; endIndex: number; overscan: number }) =>
      withKept(Math.max(0, startIndex - overscan), Math.min(count - 1, endIndex + overscan), kept, count)
  }
  const [virtualizer] = useState(() => new Virtualizer<Window, HTMLElement>(options))
  virtualizer.setOptions(options)
  useLayoutEffect(() => virtualizer._didMount(), [virtualizer])
  useLayoutEffect(() => virtualizer._willUpdate())
  const measured = useRef(layout)
  if (measured.current !== layout) {
    measured.current = layout
    virtualizer.measure()
  }
  const drawn = isWindowed ? drawnOf(virtualizer, marginPx) : Array.from({ length: count }, (_, line) => ({ line }))
  return { drawn, measure: virtualizer.measureElement }
}

function withKept(from: number, to: number, kept: readonly number[], count: number): number[] {
  const lines = new Set(kept.filter((line) => line >= 0 && line < count))
  for (let line = from; line <= to; line++) lines.add(line)
  return [...lines].sort((a, b) => a - b)
}

/** The lines, and between them and at both ends room for those that are left out. */
function drawnOf(virtualizer: Virtualizer<Window, HTMLElement>, marginPx: number): Drawn[] {
  const drawn: Drawn[] = []
  let at = 0
  for (const { index, start, end } of virtualizer.getVirtualItems()) {
    if (start - marginPx > at) drawn.push({ before: index, room: start - marginPx - at })
    drawn.push({ line: index })
    at = end - marginPx
  }
  const rest = virtualizer.getTotalSize() - at
  if (rest > 0) drawn.push({ before: -1, room: rest })
  return drawn
}

/** How far down the page the list begins, px; followed as what stands above it grows or goes. */
function useTopOf(list: RefObject<HTMLElement | null>, isAsked: boolean): number {
  const [topPx, setTopPx] = useState(0)
  useLayoutEffect(() => {
    const its = list.current
    if (its === null || !isAsked) return
    const measure = () => setTopPx(Math.round(its.getBoundingClientRect().top + scrollY))
    measure()
    if (typeof ResizeObserver === 'undefined') return
    const observer = new ResizeObserver(measure)
    observer.observe(document.body)
    return () => observer.disconnect()
  }, [list, isAsked])
  return topPx
}

/** A part that is folded away; what is in it is drawn once it is opened, and stays. */
import type { ComponentChildren } from 'preact'
import { useEffect, useRef, useState } from 'preact/hooks'

export function Fold({ summary, children }: { summary: string; children: ComponentChildren }) {
  const [opened, setOpened] = useState(false)
  const fold = useRef<HTMLDetailsElement | null>(null)
  useEffect(() => {
    const its = fold.current
    const follow = () => its?.open === true && setOpened(true)
    its?.addEventListener('toggle', follow)
    return () => its?.removeEventListener('toggle', follow)
  }, [])
  return (
    <details class="wr-more stitched" ref={fold}>
      <summary>{summary}</summary>
      {opened && children}
    </details>
  )
}

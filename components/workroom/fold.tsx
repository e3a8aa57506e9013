/** A part that is folded away; what is in it is drawn once it is opened, and stays. */
import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'

export function Fold({ summary, children }: { summary: string; children: ComponentChildren }) {
  const [opened, setOpened] = useState(false)
  return (
    <details class="wr-more stitched">
      {/* a key that opens it presses it, too */}
      <summary onClick={() => setOpened(true)}>{summary}</summary>
      {opened && children}
    </details>
  )
}

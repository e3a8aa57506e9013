import { useState } from 'preact/hooks'
import { say } from '../../core/words/say.ts'
import { standingOf } from '../view/in-front.ts'
import { LookPanel } from '../view/look-panel.tsx'
import type { PageProps } from '../view/page-start.tsx'
import { allLooks, useSaved, wholeWardrobe } from '../view/use-records.ts'
import { useTheme } from '../view/use-theme.ts'
import { useFront } from './use-front.ts'

/** Shows the look of the tab in front of this window, and marks it when the page in front is another. */
export function BesidePages({ records, stamp }: PageProps) {
  const [failure, setFailure] = useState<unknown>(null)
  const looks = useSaved(records, allLooks, setFailure)
  const wardrobe = useSaved(records, wholeWardrobe, setFailure)
  const front = useFront()
  useTheme(wardrobe?.settings.theme ?? 'system')
  if (failure !== null) return <Alone code="saved.failed" detail={String(failure)} />
  if (looks === null || wardrobe === null || front === null) return <Alone code="saved.opening" detail="" />
  const { look, place } = standingOf(looks, front)
  return <LookPanel records={records} stamp={stamp} look={look} wardrobe={wardrobe} place={place} windowId={front.windowId} />
}

const Alone = ({ code, detail }: { code: string; detail: string }) => (
  <p class="sheet answer" role="status">
    {say({ code, values: { detail } }, { units: 'cm' })}
  </p>
)

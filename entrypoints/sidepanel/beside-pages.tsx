import { useEffect, useState } from 'preact/hooks'
import { troubleOf } from '../../core/records/trouble.ts'
import { say } from '../../core/words/say.ts'
import { onTrouble } from '../platform/troubles.ts'
import { standingOf } from '../view/in-front.ts'
import { LookApart, useFollowed } from '../view/look-apart.tsx'
import type { PageProps } from '../view/page-start.tsx'
import { allLooks, useSaved, wholeWardrobe } from '../view/use-records.ts'
import { useTheme } from '../view/use-theme.ts'
import { useFront } from './use-front.ts'

/** Shows the look of the tab in front of this window, and marks it when the page in front is another. */
export function BesidePages({ records, stamp, saving }: PageProps) {
  const [failure, setFailure] = useState<unknown>(null)
  const looks = useSaved(records, allLooks, setFailure)
  const wardrobe = useSaved(records, wholeWardrobe, setFailure)
  const front = useFront()
  useTheme(wardrobe?.settings.theme ?? 'system')
  useEffect(() => onTrouble((trouble) => saving.tell(trouble)), [saving])
  useFollowed(failure, () => saving.tell(records.ended() ?? troubleOf(failure)))
  if (failure !== null && (looks === null || wardrobe === null)) return <Alone code="saved.failed" detail={String(failure)} />
  if (looks === null || wardrobe === null || front === null) return <Alone code="saved.opening" detail="" />
  const { look, place } = standingOf(looks, front)
  return (
    <LookApart records={records} stamp={stamp} saving={saving} look={look} wardrobe={wardrobe} place={place} windowId={front.windowId} />
  )
}

const Alone = ({ code, detail }: { code: string; detail: string }) => (
  <p class="sheet answer" role="status">
    {say({ code, values: { detail } }, { units: 'cm' })}
  </p>
)

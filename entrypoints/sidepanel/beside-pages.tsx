import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Records } from '../../core/records/database.ts'
import { lookBeside } from '../../core/records/look-now.ts'
import { troubleOf } from '../../core/records/trouble.ts'
import { say } from '../../core/words/say.ts'
import { onTrouble } from '../platform/troubles.ts'
import { type InFront, standingOf } from '../view/in-front.ts'
import { LookApart, useFollowed } from '../view/look-apart.tsx'
import type { PageProps } from '../view/page-start.tsx'
import { useSaved, wholeWardrobe } from '../view/use-records.ts'
import { useTheme } from '../view/use-theme.ts'
import { useFront } from './use-front.ts'

/** Shows the look of the tab in front of this window, and marks it when the page in front is another. */
export function BesidePages({ records, stamp, saving }: PageProps) {
  const [failure, setFailure] = useState<unknown>(null)
  const wardrobe = useSaved(records, wholeWardrobe, setFailure)
  const front = useFront()
  const beside = useBeside(records, front, setFailure)
  useTheme(wardrobe?.settings.theme ?? 'system')
  useEffect(() => onTrouble((trouble) => saving.tell(trouble)), [saving])
  useFollowed(failure, () => saving.tell(records.ended() ?? troubleOf(failure)))
  if (failure !== null && (beside === null || wardrobe === null)) return <Alone code="saved.failed" detail={String(failure)} />
  if (beside === null || wardrobe === null || front === null) return <Alone code="saved.opening" detail="" />
  const { look, place } = standingOf(beside.look === null ? [] : [beside.look], front)
  return (
    <LookApart records={records} stamp={stamp} saving={saving} look={look} wardrobe={wardrobe} place={place} windowId={front.windowId} />
  )
}

/** The look beside a window, followed; null: it is still being asked for. While another tab comes forward the one before stands, and is marked. */
function useBeside(records: Records, front: InFront | null, onError: (error: unknown) => void) {
  const { windowId = null, tabId = null } = front ?? {}
  const isKnown = front !== null
  const query = useMemo(
    () => async (from: Records) => (isKnown ? { look: await lookBeside(from, windowId, tabId) } : null),
    [isKnown, windowId, tabId]
  )
  return useSaved(records, query, onError)
}

const Alone = ({ code, detail }: { code: string; detail: string }) => (
  <p class="sheet answer" role="status">
    {say({ code, values: { detail } }, { units: 'cm' })}
  </p>
)

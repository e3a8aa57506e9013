/** Earlier states of everything: when, why and how much was there; what going back would change; and going back. */

import { useWords } from '../words.tsx'
import { GoOrLeave } from './backup-planned.tsx'

export interface SnapshotShown {
  key: string
  /** The day as an ISO date and the time as 09:05, where the person is. */
  day: string
  time: string
  because: string
  counts: { people: number; garmentsOwned: number; listingsKept: number }
}

export interface SnapshotsProps {
  /** Newest first; null: not read yet. */
  shown: readonly SnapshotShown[] | null
  /** They were given up for want of room. */
  letGo: boolean
  /** What going back to one would change, in records; null: none is asked about. */
  planned: { key: string; counts: { back: number; changed: number; removed: number } } | null
  onLook: (key: string) => void
  onGo: (key: string) => void
  onLeave: () => void
}

export function SnapshotsPart({ shown, letGo, planned, onLook, onGo, onLeave }: SnapshotsProps) {
  const { t, inner } = useWords()
  if (shown === null) return null
  return (
    <section class="part stack">
      <h2>{t('snapshots.title')}</h2>
      <p>{t('snapshots.what')}</p>
      {letGo && <p role="status">{t('snapshots.let-go')}</p>}
      {shown.length === 0 && !letGo && <p class="note">{t('snapshots.none')}</p>}
      <ul class="wr-states">
        {shown.map(({ key, day, time, because, counts }) => (
          <li key={key}>
            <div class="wr-state">
              <p>
                <b>{t('snapshots.at', { day, time })}</b>, {inner(`snapshots.because.${because}`)}
                <br />
                {t('snapshots.counts', counts)}
              </p>
              <button type="button" class="btn small" aria-label={t('snapshots.look.at', { day, time })} onClick={() => onLook(key)}>
                {t('snapshots.look')}
              </button>
            </div>
            <div role="status">
              {planned?.key === key && <Planned at={{ day, time }} counts={planned.counts} onGo={() => onGo(key)} onLeave={onLeave} />}
            </div>
          </li>
        ))}
      </ul>
    </section>
  )
}

interface PlannedProps {
  at: { day: string; time: string }
  counts: { back: number; changed: number; removed: number }
  onGo: () => void
  onLeave: () => void
}

const CHANGES = ['back', 'changed', 'removed'] as const

function Planned({ at, counts, onGo, onLeave }: PlannedProps) {
  const { t } = useWords()
  if (counts.back + counts.changed + counts.removed === 0) {
    return (
      <div class="wr-state">
        <p>{t('snapshots.same', at)}</p>
        <button type="button" class="btn small" onClick={onLeave}>
          {t('snapshots.close')}
        </button>
      </div>
    )
  }
  return (
    <div class="stack wr-state-planned">
      <p>{t('snapshots.planned', at)}</p>
      <ul class="bullets">
        {CHANGES.filter((change) => counts[change] > 0).map((change) => (
          <li key={change}>{t(`snapshots.planned.${change}`, { count: counts[change] })}</li>
        ))}
      </ul>
      <p class="note">{t('snapshots.planned.undo')}</p>
      <GoOrLeave go={t('snapshots.go')} onGo={onGo} onLeave={onLeave} />
    </div>
  )
}

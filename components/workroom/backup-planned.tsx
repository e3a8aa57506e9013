/** Before a backup file changes anything: what it would bring, and the choice; and what two devices changed apart, until it is settled. */
import { inWords } from '../saving/saving-bar.tsx'
import { useWords } from '../words.tsx'

export interface PlannedProps {
  counts: { added: number; replaced: number; left: number; setAside: number; conflicts: number }
  onBring: () => void
  onLeave: () => void
}

export function Planned({ counts, onBring, onLeave }: PlannedProps) {
  const { t } = useWords()
  return (
    <div class="part stack" role="status">
      <p>{t('backup.planned', counts)}</p>
      {counts.setAside > 0 && <p>{t('backup.planned.set-aside', { count: counts.setAside })}</p>}
      {counts.conflicts > 0 && <p>{t('backup.planned.conflicts', { count: counts.conflicts })}</p>}
      <GoOrLeave go={t('backup.bring')} onGo={onBring} onLeave={onLeave} />
    </div>
  )
}

/** What was planned is done, or everything stays as it is. */
export function GoOrLeave({ go, onGo, onLeave }: { go: string; onGo: () => void; onLeave: () => void }) {
  const { t } = useWords()
  return (
    <div class="row">
      <button type="button" class="btn main" onClick={onGo}>
        {go}
      </button>
      <button type="button" class="btn" onClick={onLeave}>
        {t('backup.leave')}
      </button>
    </div>
  )
}

export interface UnsettledShown {
  table: string
  id: string
  name: string
  field: string
  device: string
  revision: number
  at: string
  now: unknown
  value: unknown
}

export interface UnsettledProps {
  conflicts: readonly UnsettledShown[]
  onSettle: (conflict: UnsettledShown, takes: 'now' | 'other') => void
}

/** Both values of each, side by side. */
export function UnsettledPart({ conflicts, onSettle }: UnsettledProps) {
  const { t } = useWords()
  if (conflicts.length === 0) return null
  return (
    <section class="part stack">
      <h2>{t('conflicts.title')}</h2>
      <p>{t('conflicts.what', { count: conflicts.length })}</p>
      <ul class="bullets">
        {conflicts.map((one) => (
          <li key={`${one.table} ${one.id} ${one.field} ${one.device} ${one.revision}`}>
            <p>
              <b>{t('conflicts.of', { table: one.table, name: one.name })}</b>{' '}
              {one.field === 'deletedAt'
                ? t('conflicts.removed', { date: one.at.slice(0, 10) })
                : t('conflicts.both', {
                    field: one.field.replace(/([A-Z])/g, ' $1').toLowerCase(),
                    now: inWords(one.now),
                    other: inWords(one.value),
                    date: one.at.slice(0, 10)
                  })}
            </p>
            <div class="row">
              <button type="button" class="btn small" onClick={() => onSettle(one, 'now')}>
                {t(one.field === 'deletedAt' ? 'conflicts.keep' : 'conflicts.now')}
              </button>
              <button type="button" class="btn small" onClick={() => onSettle(one, 'other')}>
                {t(one.field === 'deletedAt' ? 'conflicts.remove' : 'conflicts.other')}
              </button>
            </div>
          </li>
        ))}
      </ul>
    </section>
  )
}

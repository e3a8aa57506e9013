/** What keeps the records: the browser's promise not to clear them, and the last backup file. Asked for and told where backups are saved. */
import { useEffect, useState } from 'preact/hooks'
import { useWords } from '../../components/words.tsx'

const KEY = 'last-backup'
/** A backup older than this, days, is worth a word. */
export const OLD_AFTER = 30
const DAY_MS = 86_400_000

/** The day a backup was saved last, ISO; null: never, or storage is off. */
export function lastBackup(): string | null {
  try {
    return localStorage.getItem(KEY)
  } catch {
    return null
  }
}
export function noteBackup(now: string): void {
  try {
    localStorage.setItem(KEY, now)
  } catch {
    // storage switched off: the reminder comes again
  }
}

/** Days since a backup; null: there was none. */
export const daysSince = (last: string | null, now: number): number | null =>
  last === null || Number.isNaN(Date.parse(last)) ? null : Math.floor((now - Date.parse(last)) / DAY_MS)

/** Is the browser to clear nothing of this unasked? null: it does not say. */
const persisted = async (): Promise<boolean | null> => (await navigator.storage?.persisted?.()) ?? null

export function KeepingPart() {
  const { t } = useWords()
  const [kept, setKept] = useState<boolean | null>(null)
  const [refused, setRefused] = useState(false)
  useEffect(() => {
    persisted().then(setKept, () => setKept(null))
  }, [])
  const ask = async () => {
    const given = await navigator.storage.persist()
    setKept(given)
    setRefused(!given)
  }
  const days = daysSince(lastBackup(), Date.now())
  return (
    <section class="part stack">
      <h2>{t('keeping.title')}</h2>
      <p>{kept === null ? t('keeping.unknown') : t(kept ? 'keeping.kept' : 'keeping.not-kept')}</p>
      {kept === false && (
        <button type="button" class="btn" onClick={() => void ask().catch(() => setRefused(true))}>
          {t('keeping.ask')}
        </button>
      )}
      {refused && <p role="status">{t('keeping.refused')}</p>}
      <p>{days === null ? t('keeping.never') : t('keeping.last', { days })}</p>
    </section>
  )
}

/** Where things are kept, a word when the last backup is old: there is something to lose, and nothing of late holds it. */
export function BackupReminder({ records }: { records: number }) {
  const { t } = useWords()
  const days = daysSince(lastBackup(), Date.now())
  if (records < WORTH_A_WORD || (days !== null && days < OLD_AFTER)) return null
  return (
    <p class="note wr-remind">
      {days === null ? t('keeping.never') : t('keeping.old', { days })} <a href="#backup">{t('broken.backup')}</a>
    </p>
  )
}
const WORTH_A_WORD = 5

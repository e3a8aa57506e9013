/** What keeps the records: the browser's promise not to clear them, and the last backup file. Asked for and told where backups are saved. */
import type { ComponentChildren } from 'preact'
import { useEffect, useState } from 'preact/hooks'
import { useWords } from '../../components/words.tsx'
import { asksThePerson, askToKeep, promised } from '../view/asked-to-keep.ts'

const LAST = 'last-backup'
/** What was read and put off, by what was said. */
const PUT_OFF = { backup: 'backup-put-off', promise: 'promise-put-off' } as const
/** A backup older than this, days, is worth a word. */
export const OLD_AFTER = 30
/** What is put off comes again after so many days. */
export const PUT_OFF_DAYS = 14
const DAY_MS = 86_400_000

/** The day a backup was saved last, ISO; null: never, or storage is off. */
export const lastBackup = (): string | null => noted(LAST)
export const noteBackup = (now: string): void => note(LAST, now)

function noted(key: string): string | null {
  try {
    return localStorage.getItem(key)
  } catch {
    return null
  }
}
function note(key: string, now: string): void {
  try {
    localStorage.setItem(key, now)
  } catch {
    // storage switched off: the reminder comes again
  }
}

/** Days since a backup; null: there was none. */
export const daysSince = (last: string | null, now: number): number | null =>
  last === null || Number.isNaN(Date.parse(last)) ? null : Math.floor((now - Date.parse(last)) / DAY_MS)

/** Whether something is put off for now, and the way to put it off. */
function usePutOff(what: keyof typeof PUT_OFF): [boolean, () => void] {
  const [since, setSince] = useState(() => noted(PUT_OFF[what]))
  const days = daysSince(since, Date.now())
  const putOff = () => {
    const now = new Date().toISOString()
    note(PUT_OFF[what], now)
    setSince(now)
  }
  return [days !== null && days < PUT_OFF_DAYS, putOff]
}

/** The browser's promise, and the way to ask for it; `refused`: it was asked and did not give it. */
function usePromise() {
  const [kept, setKept] = useState<boolean | null>(null)
  const [refused, setRefused] = useState(false)
  useEffect(() => {
    promised().then(setKept, () => setKept(null))
  }, [])
  const ask = async () => {
    const given = await askToKeep()
    setKept(given)
    setRefused(!given)
  }
  return { kept, refused, ask }
}

export function KeepingPart() {
  const { t } = useWords()
  const { kept, refused, ask } = usePromise()
  const days = daysSince(lastBackup(), Date.now())
  return (
    <section class="part stack">
      <h2>{t('keeping.title')}</h2>
      <p>{kept === null ? t('keeping.unknown') : t(kept ? 'keeping.kept' : 'keeping.not-kept')}</p>
      {kept === false && (
        <>
          {asksThePerson() && <p>{t('keeping.asks')}</p>}
          <button type="button" class="btn" onClick={() => void ask()}>
            {t('keeping.ask')}
          </button>
        </>
      )}
      {refused && <p role="status">{t('keeping.refused')}</p>}
      <p>{days === null ? t('keeping.never') : t('keeping.last', { days })}</p>
    </section>
  )
}

/**
 * Where the browser would ask the person, they are told first why, once something of theirs is saved; they press, or put it off. One note at a
 * time: `otherwise` is what stands there when this does not.
 */
export function PromiseNote({ records, otherwise = null }: { records: number; otherwise?: ComponentChildren }) {
  const { t } = useWords()
  const { kept, refused, ask } = usePromise()
  const [isPutOff, putOff] = usePutOff('promise')
  if (records === 0 || !asksThePerson() || isPutOff || (kept !== false && !refused)) return <>{otherwise}</>
  return (
    <div class="note wr-remind" role="status">
      <p>
        {refused ? t('keeping.refused') : `${t('keeping.not-kept')} ${t('keeping.asks')}`}{' '}
        {!refused && (
          <button type="button" class="btn small" onClick={() => void ask()}>
            {t('keeping.ask')}
          </button>
        )}{' '}
        <button type="button" class="btn small bare" onClick={putOff}>
          {t('keeping.put-off')}
        </button>
      </p>
    </div>
  )
}

export interface BackupReminderProps {
  /** How many finds and garments there are to lose. */
  records: number
  /** When anything was changed last, ISO; null: nothing is there. */
  changedAt: string | null
}

/** Where things are kept, a word when the last backup is old: there is something to lose, and the last backup has not got it. */
export function BackupReminder({ records, changedAt }: BackupReminderProps) {
  const { t } = useWords()
  const [isPutOff, putOff] = usePutOff('backup')
  const last = lastBackup()
  const days = daysSince(last, Date.now())
  const isHeld = days !== null && (days < OLD_AFTER || changedAt === null || changedAt <= (last ?? ''))
  if (records < WORTH_A_WORD || isHeld || isPutOff) return null
  return (
    <div class="note wr-remind">
      <p>
        {days === null ? t('keeping.never') : t('keeping.old', { days })} <a href="#backup">{t('broken.backup')}</a>{' '}
        <button type="button" class="btn small bare" onClick={putOff}>
          {t('keeping.put-off')}
        </button>
      </p>
    </div>
  )
}
const WORTH_A_WORD = 5

/** When any of these rows was changed last. */
export function lastChange(...tables: readonly (readonly { updatedAt: string }[])[]): string | null {
  let last: string | null = null
  for (const rows of tables) for (const { updatedAt } of rows) if (last === null || updatedAt > last) last = updatedAt
  return last
}

/** Everything to a file and back, and what could not be read. */
import type { ComponentChildren } from 'preact'
import { useId } from 'preact/hooks'
import { useWords } from '../words.tsx'
import { FileField } from './file-field.tsx'
import { Headline } from './frame.tsx'

export interface BackupPageProps {
  counts: { people: number; measures: number; garments: number; listings: number }
  /** What could not be read, each with the fields at fault. */
  unreadable: readonly { table: string; id: string; fields: readonly string[] }[]
  /** What came of the last loading, as sentences. */
  outcome: readonly string[]
  onSave: () => void
  onLoad: (file: File) => void
  /** What stands between loading and the rest: a file that waits, conflicts. */
  children?: ComponentChildren
}

export function BackupPage({ counts, unreadable, outcome, onSave, onLoad, children }: BackupPageProps) {
  const { t } = useWords()
  const id = useId()
  return (
    <>
      <Headline title={t('backup.title')} note={t('backup.told', counts)} />
      <section class="part stack">
        <h2>{t('backup.save')}</h2>
        <p>{t('backup.save.what')}</p>
        <button type="button" class="btn main" onClick={onSave}>
          {t('backup.save.do')}
        </button>
      </section>
      <section class="part stack">
        <h2>{t('backup.load')}</h2>
        <p id={`${id}-what`}>{t('backup.load.what')}</p>
        <FileField id={id} label={t('backup.load.file')} accept=".json,application/json" describedBy={`${id}-what`} onFile={onLoad} />
        <div role="status">
          {outcome.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      </section>
      {children}
      {unreadable.length > 0 && (
        <section class="part stack">
          <h2>{t('backup.unreadable')}</h2>
          <p>{t('backup.unreadable.what', { count: unreadable.length })}</p>
          <ul class="bullets">
            {unreadable.map(({ table, id: row, fields }) => (
              <li key={`${table} ${row}`}>
                {t(`backup.table.${table}`)} {row} <span class="note">{fields.join(', ')}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}

/** The Backup page over the records. */
import { useState } from 'preact/hooks'
import { BackupPage } from '../../components/workroom/backup-page.tsx'
import { Planned, UnsettledPart, type UnsettledShown } from '../../components/workroom/backup-planned.tsx'
import { type Counted, type Imported, importBackup, previewBackup } from '../../core/records/backup.ts'
import type { Records } from '../../core/records/database.ts'
import { unreadable } from '../../core/records/find.ts'
import { TABLES } from '../../core/records/schemas.ts'
import { settle, unsettled } from '../../core/records/settle.ts'
import { makeSnapshot } from '../../core/records/snapshots.ts'
import { say, type Wording } from '../../core/words/say.ts'
import type { PageProps } from '../view/page-start.tsx'
import { useSaved } from '../view/use-records.ts'
import { saidOf, saveBackup, textOfFile } from './backup-file.ts'
import type { Everything } from './everything.ts'
import { KeepingPart, noteBackup } from './keeping.tsx'
import { SnapshotsHere } from './snapshots-here.tsx'
import type { Done } from './workroom-actions.ts'

export interface BackupPartProps extends PageProps {
  kept: Everything
  wording: Wording
  /** This page, among others that are open. */
  page: string
  onDone: (done: Done) => void
  onError: (error: unknown) => void
}

export function BackupPart({ records, stamp, saving, kept, wording, page, onDone, onError }: BackupPartProps) {
  const [outcome, setOutcome] = useState<readonly string[]>([])
  const [planned, setPlanned] = useState<{ text: string; counts: Counted } | null>(null)
  const conflicts = useSaved(records, unsettled, onError)
  const tell = (imported: Imported) => setOutcome(saidOf(imported).map((one) => say(one, wording)))
  const plan = async (file: File) => {
    const text = await textOfFile(file)
    const found: Imported = text === null ? { ok: false, problem: 'too-long' } : await previewBackup(records, text, stamp())
    setOutcome([])
    setPlanned(found.ok && text !== null ? { text, counts: found } : null)
    if (!found.ok) tell(found)
  }
  const bring = () => {
    if (planned === null) return
    const act = async (records: Records) => {
      await makeSnapshot(records, 'import', stamp(), { by: page })
      return importBackup(records, planned.text, stamp())
    }
    void saving.run(act, {
      inForm: true,
      saved: (imported) => {
        setPlanned(null)
        tell(imported)
        if (imported.ok) setOutcome((said) => [...said, say({ code: 'backup.kept-before', values: {} }, wording)])
      }
    })
  }
  const settled = ({ id, field, device, revision, table }: UnsettledShown, takes: 'now' | 'other') => {
    const its = TABLES.find((name) => name === table)
    if (its !== undefined) void saving.run((records) => settle(records, { table: its, id, field, device, revision }, takes, stamp()))
  }
  const lost = useSaved(records, unreadable, onError)
  return (
    <BackupPage
      counts={{
        people: kept.people.length,
        measures: kept.measures.length,
        garments: kept.garments.length,
        listings: kept.listings.length
      }}
      unreadable={lost ?? []}
      outcome={outcome}
      onSave={() =>
        void saveBackup(records, stamp())
          .then((name) => {
            noteBackup(stamp().now)
            onDone({ code: 'backup.saved', values: { name }, undo: null })
          })
          .catch(onError)
      }
      onLoad={(file) => void plan(file).catch(onError)}
    >
      <KeepingPart />
      {planned !== null && <Planned counts={planned.counts} onBring={bring} onLeave={() => setPlanned(null)} />}
      <UnsettledPart conflicts={conflicts ?? []} onSettle={settled} />
      <SnapshotsHere records={records} stamp={stamp} saving={saving} page={page} done={onDone} onError={onError} />
    </BackupPage>
  )
}

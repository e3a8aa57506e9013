/** The Backup page over the records. */
import { useState } from 'preact/hooks'
import { BackupPage } from '../../components/workroom/backup-page.tsx'
import { Planned, UnsettledPart, type UnsettledShown } from '../../components/workroom/backup-planned.tsx'
import { type Counted, type Imported, importBackup, previewBackup } from '../../core/records/backup.ts'
import type { Records } from '../../core/records/database.ts'
import { unreadable } from '../../core/records/find.ts'
import { type OpenedBackup, openBackupSlowly, type Refused } from '../../core/records/open-backup.ts'
import type { Wardrobe } from '../../core/records/request-for.ts'
import { TABLES } from '../../core/records/schemas.ts'
import { settle, unsettled } from '../../core/records/settle.ts'
import { makeSnapshot } from '../../core/records/snapshots.ts'
import { say, type Wording } from '../../core/words/say.ts'
import type { PageProps } from '../view/page-start.tsx'
import { useSaved } from '../view/use-records.ts'
import { resting, saidOf, saveBackup, textOfFile } from './backup-file.ts'
import { KeepingPart, noteBackup } from './keeping.tsx'
import { SnapshotsHere } from './snapshots-here.tsx'
import type { Done } from './workroom-actions.ts'

const TOO_LONG: Refused = { ok: false, problem: 'too-long' }

/** What is going on with a file, and how many rows are done. */
interface Going {
  code: string
  done: number
  /** null: it is not known. */
  of: number | null
}

export interface BackupPartProps extends PageProps {
  kept: Wardrobe
  /** How many finds there are. */
  count: number
  wording: Wording
  /** This page, among others that are open. */
  page: string
  onDone: (done: Done) => void
  onError: (error: unknown) => void
}

export function BackupPart({ records, stamp, saving, kept, count, wording, page, onDone, onError }: BackupPartProps) {
  const [outcome, setOutcome] = useState<readonly string[]>([])
  const [planned, setPlanned] = useState<{ opened: OpenedBackup; counts: Counted } | null>(null)
  const [going, setGoing] = useState<Going | null>(null)
  const conflicts = useSaved(records, unsettled, onError)
  const tell = (imported: Imported) => setOutcome(saidOf(imported).map((one) => say(one, wording)))
  const plan = async (file: File) => {
    const text = await textOfFile(file)
    setOutcome([])
    setPlanned(null)
    const told = (done: number, of: number) => setGoing({ code: 'backup.going.read', done, of })
    const opened = text === null ? TOO_LONG : await openBackupSlowly(text, records.version, { rest: resting(), told })
    const found = opened.ok ? await previewBackup(records, opened, stamp()) : opened
    setGoing(null)
    if (opened.ok && found.ok) setPlanned({ opened, counts: found })
    else tell(found)
  }
  const bring = () => {
    if (planned === null) return
    const { opened } = planned
    const told = (done: number) => setGoing({ code: 'backup.going.bring', done, of: opened.count })
    const act = async (records: Records) => {
      await makeSnapshot(records, 'import', stamp(), { by: page })
      return importBackup(records, opened, stamp(), undefined, told)
    }
    const brought = saving.run(act, {
      inForm: true,
      saved: (imported) => {
        setPlanned(null)
        tell(imported)
        if (imported.ok) setOutcome((said) => [...said, say({ code: 'backup.kept-before', values: {} }, wording)])
      }
    })
    void brought.finally(() => setGoing(null))
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
        listings: count
      }}
      unreadable={lost ?? []}
      outcome={outcome}
      onSave={() =>
        void saveBackup(records, stamp(), (done) => setGoing({ code: 'backup.going.save', done, of: null }))
          .then((name) => {
            noteBackup(stamp().now)
            onDone({ code: 'backup.saved', values: { name }, undo: null })
          })
          .catch(onError)
          .finally(() => setGoing(null))
      }
      onLoad={(file) =>
        void plan(file)
          .catch(onError)
          .finally(() => setGoing(null))
      }
    >
      <KeepingPart />
      {going !== null && <p role="status">{say({ code: going.code, values: { done: going.done, of: going.of ?? 0 } }, wording)}</p>}
      {planned !== null && going === null && <Planned counts={planned.counts} onBring={bring} onLeave={() => setPlanned(null)} />}
      <UnsettledPart conflicts={conflicts ?? []} onSettle={settled} />
      <SnapshotsHere records={records} stamp={stamp} saving={saving} page={page} done={onDone} onError={onError} />
    </BackupPage>
  )
}

/** The Backup page over the records. */
import { useState } from 'preact/hooks'
import { BackupPage } from '../../components/workroom/backup-page.tsx'
import { unreadable } from '../../core/records/find.ts'
import { say, type Wording } from '../../core/words/say.ts'
import type { PageProps } from '../view/page-start.tsx'
import { useSaved } from '../view/use-records.ts'
import { loadBackup, saveBackup } from './backup-file.ts'
import type { Everything } from './everything.ts'
import type { Done } from './workroom-actions.ts'

export interface BackupPartProps extends PageProps {
  kept: Everything
  wording: Wording
  onDone: (done: Done) => void
  onError: (error: unknown) => void
}

export function BackupPart({ records, stamp, kept, wording, onDone, onError }: BackupPartProps) {
  const [outcome, setOutcome] = useState<readonly string[]>([])
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
          .then((name) => onDone({ code: 'backup.saved', values: { name }, undo: null }))
          .catch(onError)
      }
      onLoad={(file) =>
        void loadBackup(records, file, stamp())
          .then((said) => setOutcome(said.map((one) => say(one, wording))))
          .catch(onError)
      }
    />
  )
}

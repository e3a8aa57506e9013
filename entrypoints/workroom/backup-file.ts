/** The backup as a file of the browser's, and back. */
import { exportBackup, importBackup } from '../../core/records/backup.ts'
import type { Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import type { Values } from '../../core/words/reason.ts'

/** Hands the file to the browser; gives its name. */
export async function saveBackup(records: Records, stamp: Stamp): Promise<string> {
  const backup = await exportBackup(records, stamp)
  const name = `seam-reckoner-${stamp.now.slice(0, 10)}.json`
  const address = URL.createObjectURL(new Blob([JSON.stringify(backup)], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // the browser has taken the file once it has had a turn
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
  return name
}

/** What came of loading a file, as sayings. */
export async function loadBackup(records: Records, file: File, stamp: Stamp): Promise<{ code: string; values: Values }[]> {
  const imported = await importBackup(records, await file.text(), stamp)
  if (!imported.ok) return [{ code: `backup.${imported.problem}`, values: {} }]
  const { added, replaced, left, setAside } = imported
  const said = [{ code: 'backup.loaded', values: { added, replaced, left } as Values }]
  if (setAside > 0) said.push({ code: 'backup.set-aside', values: { count: setAside } })
  return said
}

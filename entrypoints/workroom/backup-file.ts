/** The backup as a file of the browser's, and back. */
import { backupText, exportBackup, type Imported, LONGEST_FILE, type Told } from '../../core/records/backup.ts'
import type { Records } from '../../core/records/database.ts'
import type { Stamp } from '../../core/records/schemas.ts'
import type { Values } from '../../core/words/reason.ts'

/** Hands the file to the browser; gives its name. */
export async function saveBackup(records: Records, stamp: Stamp, told?: Told): Promise<string> {
  const backup = await exportBackup(records, stamp, told)
  const pieces: string[] = []
  const rest = resting()
  for (const piece of backupText(backup)) {
    pieces.push(piece)
    await rest()
  }
  const name = `seam-reckoner-${stamp.now.slice(0, 10)}.json`
  const address = URL.createObjectURL(new Blob(pieces, { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // the browser has taken the file once it has had a turn
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
  return name
}

/** A page that is kept from going on no longer than this, ms, is not felt to wait: with clearing up of memory in it, it is less than a long task. */
const UNFELT_MS = 16

/** Lets the page go on where it has waited for as long as it may; the first time at once, for nobody knows what went before. */
export function resting(): () => Promise<void> {
  let last = Number.NEGATIVE_INFINITY
  return async () => {
    if (performance.now() - last < UNFELT_MS) return
    await turn()
    last = performance.now()
  }
}

/** Everything that waits has its turn, painting too. A timer that is set over and over waits 4 ms each time, without need. */
const turn = (): Promise<void> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel()
    port1.onmessage = () => {
      port1.close()
      done()
    }
    port2.postMessage(null)
  })

/** So many bytes are made text in one step. */
const PIECE = 4_000_000

/** A file as text; null where it is past every bound (four bytes may be one character), '' where the browser can't read it. */
export async function textOfFile(file: File): Promise<string | null> {
  if (file.size > LONGEST_FILE * 4) return null
  try {
    const decoder = new TextDecoder()
    const pieces: string[] = []
    for (let at = 0; at < file.size; at += PIECE) {
      pieces.push(decoder.decode(await file.slice(at, at + PIECE).arrayBuffer(), { stream: true }))
    }
    // what a character was begun with and not ended
    pieces.push(decoder.decode())
    return pieces.join('')
  } catch (error) {
    console.error(error)
    return ''
  }
}

/** What came of loading a file, or would, as sayings. */
export function saidOf(imported: Imported): { code: string; values: Values }[] {
  if (!imported.ok) return [{ code: `backup.${imported.problem}`, values: {} }]
  const { added, replaced, left, setAside, conflicts } = imported
  const said = [{ code: 'backup.loaded', values: { added, replaced, left } as Values }]
  if (setAside > 0) said.push({ code: 'backup.set-aside', values: { count: setAside } })
  if (conflicts > 0) said.push({ code: 'backup.conflicts', values: { count: conflicts } })
  return said
}

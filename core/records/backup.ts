/** One JSON file with everything, and the way back: merged by id and revision, nothing overwritten by something older. */
import * as z from 'zod/mini'
import type { Records } from './database.ts'
import { idOf } from './find.ts'
import { MIGRATIONS, type Migration, migrated } from './migrations.ts'
import { isRecordOf, type RecordOf, type Stamp, TABLES, type TableName } from './schemas.ts'
import { bringKeptLooks } from './shared-fields.ts'

const KIND = 'seam-reckoner-records'
const file = z.object({
  kind: z.literal(KIND),
  version: z.int().check(z.positive()),
  savedAt: z.string(),
  device: z.string(),
  tables: z.partialRecord(z.enum(TABLES), z.array(z.unknown())),
  /** Rows that could not be read, as they came. */
  setAside: z.array(z.unknown())
})
export type Backup = z.infer<typeof file>

/** Everything saved, also deleted marks and what can't be read. */
export async function exportBackup(records: Records, stamp: Stamp): Promise<Backup> {
  const tables: Backup['tables'] = {}
  for (const table of TABLES) tables[table] = await records.rows(table).toArray()
  const setAside = await records.rows('setAside').toArray()
  return { kind: KIND, version: records.version, savedAt: stamp.now, device: stamp.device, tables, setAside }
}

export type Imported =
  | {
      ok: true
      /** Not here before. */
      added: number
      /** Here in an older revision. */
      replaced: number
      /** Here in the same or a newer revision: left as they are. */
      left: number
      /** Could not be read: set aside whole. */
      setAside: number
    }
  /** `not-ours`: JSON of something else. `newer`: saved by a later version; nothing was taken. */
  | { ok: false; problem: 'not-json' | 'not-ours' | 'newer' }

/** Merges a backup file into what is here, all of it or nothing. Never throws on a strange file. */
export async function importBackup(
  records: Records,
  fileText: string,
  stamp: Stamp,
  migrations: readonly Migration[] = MIGRATIONS
): Promise<Imported> {
  let json: unknown
  try {
    json = JSON.parse(fileText)
  } catch {
    return { ok: false, problem: 'not-json' }
  }
  const parsed = file.safeParse(json)
  if (!parsed.success) return { ok: false, problem: 'not-ours' }
  const backup = parsed.data
  if (backup.version > records.version) return { ok: false, problem: 'newer' }
  const count = { added: 0, replaced: 0, left: 0, setAside: 0 }
  const stores = [...TABLES.map((table) => records.rows(table)), records.rows('setAside')]
  await records.db.transaction('rw', stores, async () => {
    const now = migrated(backup.tables, backup.version, migrations)
    for (const table of TABLES) {
      for (const [place, raw] of (backup.tables[table] ?? []).entries()) await take(table, raw, now[table]?.[place])
    }
    for (const raw of backup.setAside) await aside(raw)
    await bringKeptLooks(records, stamp)
  })
  return { ok: true, ...count }

  /** A row as it stands in the file, and as this version has it. */
  async function take(table: TableName, raw: unknown, coming: unknown): Promise<void> {
    if (!isRecordOf(table, coming)) return aside({ from: table, row: raw })
    const here = await records.rows(table).get(coming.id)
    if (here === undefined) count.added++
    else if (!isRecordOf(table, here)) {
      // a row that can't be read gives way to one that can, and is kept
      await aside({ from: table, row: here })
      count.replaced++
    } else if (isNewer(coming, here)) count.replaced++
    else {
      count.left++
      return
    }
    await records.rows(table).put(withoutTab(table, coming))
  }

  async function aside(raw: unknown): Promise<void> {
    const known = typeof raw === 'object' && raw !== null ? raw : { row: raw }
    const same = JSON.stringify(content(known))
    for (const other of await records.rows('setAside').toArray()) if (JSON.stringify(content(other)) === same) return
    await records.rows('setAside').put({ ...known, id: idOf(known) || stamp.newId() })
    count.setAside++
  }
}

const content = (aside: unknown): unknown =>
  typeof aside === 'object' && aside !== null && 'row' in aside ? [('from' in aside && aside.from) || '', aside.row] : aside

/** Of two revisions of one record: the higher, else the later, else by device, so that both sides of a merge choose alike. */
function isNewer(coming: RecordOf<TableName>, here: RecordOf<TableName>): boolean {
  if (coming.revision !== here.revision) return coming.revision > here.revision
  if (coming.updatedAt !== here.updatedAt) return coming.updatedAt > here.updatedAt
  return coming.device > here.device
}

/** Tabs and windows belong to the browser that wrote them: a look from elsewhere has none here. */
function withoutTab(table: TableName, coming: RecordOf<TableName>): object {
  if (table !== 'looks' || !isRecordOf('looks', coming)) return coming
  return { ...coming, tabId: null, windowId: null, page: coming.page === 'none' ? 'none' : 'unknown' }
}

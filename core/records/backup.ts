/** One JSON file with everything, and the way back: planned first, so that it can be shown, then merged by field, all of it or nothing. */
import * as z from 'zod/mini'
import type { Records } from './database.ts'
import { idOf } from './find.ts'
import { conflictsIn, merged } from './merge.ts'
import { MIGRATIONS, type Migration, migrated } from './migrations.ts'
import { isRow, type Row } from './row.ts'
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

/** Everything saved, also deleted marks and what can't be read: as it is at one moment. */
export async function exportBackup(records: Records, stamp: Stamp): Promise<Backup> {
  return records.together('r', [...TABLES, 'setAside'], async (records) => {
    const tables: Backup['tables'] = {}
    for (const table of TABLES) tables[table] = await records.rows(table).toArray()
    const setAside = await records.rows('setAside').toArray()
    return { kind: KIND, version: records.version, savedAt: stamp.now, device: stamp.device, tables, setAside }
  })
}

export interface Counted {
  /** Not here before. */
  added: number
  /** Here with something older in them. */
  replaced: number
  /** Here with all that the file has: left as they are. */
  left: number
  /** Could not be read: set aside whole. */
  setAside: number
  /** Fields that both sides changed without knowing of each other. */
  conflicts: number
}
/** `not-ours`: JSON of something else. `newer`: saved by a later version. `too-long`, `too-deep`: no backup of ours is. Nothing was taken. */
export type Refused = { ok: false; problem: 'not-json' | 'not-ours' | 'newer' | 'too-long' | 'too-deep' }
export type Imported = ({ ok: true } & Counted) | Refused

/** Longer than a backup of ten thousand listings with their texts at full length could be read in; characters. */
export const LONGEST_FILE = 400_000_000
/** Nested deeper than anything that is saved. */
const DEEPEST = 200
/** Counted up one by one no record comes near it; past it a row is no row of ours. */
const MOST_REVISIONS = 2 ** 40

/** What a backup file would change; nothing is written. */
export const previewBackup = async (records: Records, text: string, stamp: Stamp): Promise<Imported> =>
  bring(records, text, stamp, MIGRATIONS, false)

/** Merges a backup file into what is here, all of it or nothing. A strange file is refused with its reason; rejects only as the database does. */
export const importBackup = async (
  records: Records,
  text: string,
  stamp: Stamp,
  migrations: readonly Migration[] = MIGRATIONS
): Promise<Imported> => bring(records, text, stamp, migrations, true)

function opened(text: string, version: number): { ok: true; backup: Backup } | Refused {
  if (text.length > LONGEST_FILE) return { ok: false, problem: 'too-long' }
  let json: unknown
  try {
    json = JSON.parse(text)
  } catch (error) {
    return { ok: false, problem: error instanceof RangeError ? 'too-deep' : 'not-json' }
  }
  if (isDeeper(json, DEEPEST)) return { ok: false, problem: 'too-deep' }
  const parsed = file.safeParse(json)
  if (!parsed.success) return { ok: false, problem: 'not-ours' }
  return parsed.data.version > version ? { ok: false, problem: 'newer' } : { ok: true, backup: parsed.data }
}

/** Is anything nested deeper? Without a call for each level, so that no depth is too much to ask. */
function isDeeper(value: unknown, most: number): boolean {
  let level: unknown[] = [value]
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > most) return true
    const below: unknown[] = []
    for (const one of level) {
      if (typeof one !== 'object' || one === null) continue
      for (const inner of Object.values(one)) if (typeof inner === 'object' && inner !== null) below.push(inner)
    }
    level = below
  }
  return false
}

async function bring(records: Records, text: string, stamp: Stamp, migrations: readonly Migration[], write: boolean): Promise<Imported> {
  const found = opened(text, records.version)
  if (!found.ok) return found
  const { backup } = found
  const count: Counted = { added: 0, replaced: 0, left: 0, setAside: 0, conflicts: 0 }
  await records.together(write ? 'rw' : 'r', [...TABLES, 'setAside'], async (records) => {
    const now = migrated(backup.tables, backup.version, migrations)
    const asides = asidesOf(await records.rows('setAside').toArray(), stamp)
    for (const table of TABLES) {
      const here = new Map((await records.rows(table).toArray()).map((row) => [idOf(row), row]))
      const puts = new Map<string, object>()
      for (const [place, raw] of (backup.tables[table] ?? []).entries()) {
        const row = now[table]?.[place]
        if (!isRecordOf(table, row) || row.revision > MOST_REVISIONS) asides.add({ from: table, row: raw })
        else take(table, row, puts.get(row.id) ?? here.get(row.id), puts, asides)
      }
      if (write) await records.rows(table).bulkPut([...puts.values()])
    }
    for (const raw of backup.setAside) asides.add(raw)
    count.setAside = asides.added.length
    if (!write) return
    await records.rows('setAside').bulkPut(asides.added)
    await bringKeptLooks(records, stamp)
  })
  return { ok: true, ...count }

  function take(table: TableName, coming: RecordOf<TableName>, here: unknown, puts: Map<string, object>, asides: Asides): void {
    if (here === undefined) {
      count.added++
      puts.set(coming.id, withoutTab(table, coming))
      return
    }
    if (!isRecordOf(table, here)) {
      // a row that can't be read gives way to one that can, and is kept
      asides.add({ from: table, row: here })
      count.replaced++
      puts.set(coming.id, withoutTab(table, coming))
      return
    }
    const together = merged({ ...here }, { ...coming })
    const row: unknown = isSame(together, here) ? here : inTab(table, together, here)
    if (row === here || !isRecordOf(table, row)) {
      count.left++
      return
    }
    count.replaced++
    count.conflicts += conflictsIn(row).length - conflictsIn(here).length
    puts.set(coming.id, row)
  }
}

interface Asides {
  added: object[]
  add: (raw: unknown) => void
}

/** Rows kept as they came: each content once, none in another's place. */
function asidesOf(here: readonly unknown[], stamp: Stamp): Asides {
  const contents = new Set(here.map((one) => JSON.stringify(content(one))))
  const ids = new Set(here.map(idOf))
  const added: object[] = []
  const add = (raw: unknown): void => {
    const row = isRow(raw) ? raw : { row: raw }
    const its = JSON.stringify(content(row))
    if (contents.has(its)) return
    contents.add(its)
    // none takes the place of another
    const taken = idOf(row) !== '' && ids.has(idOf(row))
    const id = idOf(row) === '' || taken ? stamp.newId() : idOf(row)
    ids.add(id)
    added.push(taken && !('row' in row) ? { row, id } : { ...row, id })
  }
  return { added, add }
}

/** What an aside holds, without the id that it may have been given here. */
function content(aside: unknown): unknown {
  if (!isRow(aside)) return ['', aside]
  if (!('row' in aside)) return ['', withoutId(aside)]
  return 'from' in aside ? [aside.from, aside.row] : ['', withoutId(aside.row)]
}
function withoutId(value: unknown): unknown {
  if (!isRow(value)) return value
  const { id: _, ...its } = value
  return its
}

const isSame = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b)

/** Tabs and windows belong to the browser that wrote them: a look from elsewhere has none here. */
function withoutTab(table: TableName, coming: RecordOf<TableName>): object {
  if (table !== 'looks' || !isRecordOf('looks', coming)) return coming
  return { ...coming, tabId: null, windowId: null, page: coming.page === 'none' ? 'none' : 'unknown' }
}
/** A look that is here stays where it is. */
const inTab = (table: TableName, row: Row, here: RecordOf<TableName>): Row =>
  table === 'looks' && isRecordOf('looks', here) ? { ...row, tabId: here.tabId, windowId: here.windowId, page: here.page } : row

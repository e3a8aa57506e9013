/**
 * A backup file opened: its text read, brought to this version and every row of it asked whether it can be read. Each step is short, so that a
 * page can go on between two; nothing is written here.
 */
import * as z from 'zod/mini'
import { MIGRATIONS, type Migration, migrated } from './migrations.ts'
import { type RowsOfJson, rowsOfJson } from './rows-of-json.ts'
import { isRecordOf, type RecordOf, TABLES, type TableName } from './schemas.ts'
import { vouch } from './summaries.ts'

export const KIND = 'seam-reckoner-records'
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

/** `not-ours`: JSON of something else. `newer`: saved by a later version. `too-long`, `too-deep`: no backup of ours is. Nothing was taken. */
export type Refused = { ok: false; problem: 'not-json' | 'not-ours' | 'newer' | 'too-long' | 'too-deep' }

/** A row of the file that can be read, or one that can't, as it came. */
export type OpenedRow<T extends TableName = TableName> = { row: RecordOf<T> } | { unreadable: unknown }
export interface OpenedBackup {
  ok: true
  tables: Readonly<Record<TableName, readonly OpenedRow[]>>
  setAside: readonly unknown[]
  /** How many rows it has. */
  count: number
}

/** Longer than a backup of ten thousand listings with their texts at full length could be read in; characters. */
export const LONGEST_FILE = 400_000_000
/** Nested deeper than anything that is saved; the file itself is 1. */
const DEEPEST = 201
/** Counted up one by one no record comes near it; past it a row is no row of ours. */
const MOST_REVISIONS = 2 ** 40
/** So many rows are asked in one step. */
const STEP = 50

/** Opens a file in one go. */
export function openBackup(text: string, version: number, migrations: readonly Migration[] = MIGRATIONS): OpenedBackup | Refused {
  const steps = opening(text, version, migrations)
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
  }
}

/** The same with a rest after each step; `told` hears how many rows of how many are done. */
export async function openBackupSlowly(
  text: string,
  version: number,
  { rest, told = () => undefined }: { rest: () => Promise<void>; told?: (done: number, of: number) => void },
  migrations: readonly Migration[] = MIGRATIONS
): Promise<OpenedBackup | Refused> {
  const steps = opening(text, version, migrations)
  for (;;) {
    const step = steps.next()
    if (step.done === true) return step.value
    told(step.value.done, step.value.of)
    await rest()
  }
}

function* opening(
  text: string,
  version: number,
  migrations: readonly Migration[]
): Generator<{ done: number; of: number }, OpenedBackup | Refused> {
  if (text.length > LONGEST_FILE) return { ok: false, problem: 'too-long' }
  let read: RowsOfJson
  try {
    const steps = rowsOfJson(text)
    for (;;) {
      const step = steps.next()
      if (step.done === true) {
        read = step.value
        break
      }
      yield { done: 0, of: 1 }
    }
  } catch (error) {
    return { ok: false, problem: error instanceof RangeError ? 'too-deep' : 'not-json' }
  }
  const parsed = file.safeParse(read.outline)
  if (!parsed.success) return { ok: false, problem: read.depth > DEEPEST ? 'too-deep' : 'not-ours' }
  const backup = rowsIn(parsed.data, read)
  if (backup === null) return { ok: false, problem: 'too-deep' }
  yield { done: 0, of: 1 }
  const of = TABLES.reduce((sum, table) => sum + (backup.tables[table]?.length ?? 0), 0)
  if (backup.version > version) return { ok: false, problem: 'newer' }
  const now = migrated(backup.tables, backup.version, migrations)
  const tables = { people: [], bodyMeasurements: [], garmentsOwned: [], listingsKept: [], looks: [], settings: [] }
  const opened: Record<TableName, OpenedRow[]> = tables
  let done = 0
  for (const table of TABLES) {
    for (const [place, raw] of (backup.tables[table] ?? []).entries()) {
      opened[table].push(openedRow(table, now[table]?.[place], raw))
      if (++done % STEP === 0) yield { done, of }
    }
  }
  return { ok: true, tables: opened, setAside: backup.setAside, count: done }
}

function openedRow(table: TableName, row: unknown, raw: unknown): OpenedRow {
  if (!isRecordOf(table, row) || row.revision > MOST_REVISIONS) return { unreadable: raw }
  vouch(row)
  return { row }
}

/** The file with its rows where their places are; null: one is nested deeper than any of ours. */
function rowsIn(outline: Backup, { items, depths }: RowsOfJson): Backup | null {
  let isTooDeep = false
  const rows = (places: readonly unknown[]): unknown[] =>
    places.map((place) => {
      const at = Number(place)
      isTooDeep ||= (depths[at] ?? 0) > DEEPEST
      return items[at]
    })
  const tables: Backup['tables'] = {}
  for (const table of TABLES) {
    const its = outline.tables[table]
    if (its !== undefined) tables[table] = rows(its)
  }
  const backup = { ...outline, tables, setAside: rows(outline.setAside) }
  return isTooDeep ? null : backup
}

/**
 * A backup file opened: its text read, brought to this version and every row of it asked whether it can be read. Each step is short, so that a
 * page can go on between two; nothing is written here.
 */
import * as z from 'zod/mini'
import { MIGRATIONS, type Migration, migrated } from './migrations.ts'
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
/** Nested deeper than anything that is saved. */
const DEEPEST = 200
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
  let json: unknown
  try {
    json = JSON.parse(text)
  } catch (error) {
    return { ok: false, problem: error instanceof RangeError ? 'too-deep' : 'not-json' }
  }
  yield { done: 0, of: 1 }
  const parsed = file.safeParse(json)
  if (!parsed.success) return { ok: false, problem: isDeeper(json, DEEPEST) ? 'too-deep' : 'not-ours' }
  const backup = parsed.data
  const of = TABLES.reduce((sum, table) => sum + (backup.tables[table]?.length ?? 0), 0)
  // how deep the lists themselves lie in the file
  const lists = [...TABLES.map((table) => ({ rows: backup.tables[table] ?? [], lies: 2 })), { rows: backup.setAside, lies: 1 }]
  for (const { rows, lies } of lists) {
    for (let at = 0; at < rows.length; at += STEP) {
      if (isDeeper(rows.slice(at, at + STEP), DEEPEST - lies)) return { ok: false, problem: 'too-deep' }
      yield { done: 0, of }
    }
  }
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

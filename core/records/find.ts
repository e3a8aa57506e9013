/** Reading records. What this version can't read is left where it is and listed by unreadable(). */
import type { Records } from './database.ts'
import { isRecordOf, type RecordOf, SCHEMAS, TABLES, type TableName } from './schemas.ts'

/** A record by id; null when there is none, it is deleted, or it can't be read. */
export async function one<T extends TableName>(records: Records, table: T, id: string): Promise<RecordOf<T> | null> {
  const row = await records.rows(table).get(id)
  return isRecordOf(table, row) && row.deletedAt === null ? row : null
}

/** Every record of a table that is there and can be read, oldest first. */
export async function all<T extends TableName>(records: Records, table: T): Promise<RecordOf<T>[]> {
  return present(table, await records.rows(table).toArray())
}

/** The records with a value in an indexed field. */
export async function where<T extends TableName>(
  records: Records,
  table: T,
  field: string,
  value: string | number
): Promise<RecordOf<T>[]> {
  return present(table, await records.rows(table).where(field).equals(value).toArray())
}

function present<T extends TableName>(table: T, rows: unknown[]): RecordOf<T>[] {
  const found: RecordOf<T>[] = []
  for (const row of rows) if (isRecordOf(table, row) && row.deletedAt === null) found.push(row)
  return found.sort((a, b) => (a.createdAt < b.createdAt ? -1 : a.createdAt > b.createdAt ? 1 : a.id < b.id ? -1 : 1))
}

/** A row that can't be read: kept whole for export. */
export interface Unreadable {
  table: TableName
  id: string
  row: unknown
  /** The fields at fault. */
  fields: string[]
}

/** How many rows of a table are there and can't be read. */
export async function countUnreadable(records: Records, table: TableName): Promise<number> {
  const rows = await records.rows(table).toArray()
  return rows.filter((row) => !isRecordOf(table, row)).length
}

/** Rows that can't be read: those in their own tables, and those a backup brought. */
export async function unreadable(records: Records): Promise<Unreadable[]> {
  const found: Unreadable[] = []
  for (const table of TABLES) {
    const rows = table === 'listingsKept' ? await oddListings(records) : await records.rows(table).toArray()
    for (const row of rows) collect(table, row, idOf(row))
  }
  for (const aside of await records.rows('setAside').toArray()) {
    if (typeof aside !== 'object' || aside === null || !('from' in aside) || !('row' in aside)) continue
    const table = TABLES.find((name) => name === aside.from)
    if (table !== undefined) found.push({ table, id: idOf(aside), row: aside.row, fields: faults(table, aside.row) })
  }
  return found

  function collect(table: TableName, row: unknown, id: string): void {
    if (!isRecordOf(table, row)) found.push({ table, id, row, fields: faults(table, row) })
  }
}

/** The kept listings that can't be read, by what stands beside them; and those with no id to be known by. */
async function oddListings(records: Records): Promise<unknown[]> {
  const odd = records.rows('summaries').where('[state+keptAt]').equals(['unreadable', ''])
  const nameless: unknown[] = await records.rows('listingsKept').where(':id').belowOrEqual('').toArray()
  return [...nameless, ...(await records.rows('listingsKept').bulkGet(await odd.primaryKeys()))]
}

export const idOf = (row: unknown): string =>
  typeof row === 'object' && row !== null && 'id' in row && typeof row.id === 'string' ? row.id : ''

function faults(table: TableName, row: unknown): string[] {
  const parsed = SCHEMAS[table].safeParse(row)
  return parsed.success ? [] : [...new Set(parsed.error.issues.map((issue) => issue.path.join('.')))]
}

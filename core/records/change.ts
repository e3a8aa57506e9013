/** Writing records: every change is a new revision, and can be undone as long as nothing else has changed the record since. */
import type { Records } from './database.ts'
import { marked } from './merge.ts'
import { type Fields, isRecordOf, type RecordOf, type Stamp, type TableName } from './schemas.ts'
import { vouch } from './summaries.ts'
import { Misfit } from './trouble.ts'

/** What a change did; undo() takes it. */
export interface Change<T extends TableName = TableName> {
  table: T
  /** null: it was new. */
  before: RecordOf<T> | null
  after: RecordOf<T>
}

/** A new record (with a given id where the id is fixed, as for settings). Throws when it does not fit its schema: our own mistake. */
export async function put<T extends TableName>(
  records: Records,
  table: T,
  fields: Fields<T>,
  stamp: Stamp,
  id?: string
): Promise<Change<T>> {
  const content = {
    ...fields,
    id: id ?? stamp.newId(),
    device: stamp.device,
    revision: 1,
    createdAt: stamp.now,
    updatedAt: stamp.now,
    deletedAt: null
  }
  const by = { device: stamp.device, revision: 1, at: stamp.now }
  const after = checked(table, { ...content, ...marked(null, content, by) })
  await records.rows(table).add(after)
  return { table, before: null, after }
}

/** Some fields of a record anew; the rest, known or not, stays. null: there is no such record, or it is deleted or unreadable. */
export async function patch<T extends TableName>(
  records: Records,
  table: T,
  id: string,
  changes: Partial<Fields<T>>,
  stamp: Stamp
): Promise<Change<T> | null> {
  return revise(records, table, id, stamp, (before) => (before.deletedAt === null ? { ...before, ...changes } : null))
}

/** Marks a record as deleted; it stays, so that undo and a later merge know. */
export async function remove<T extends TableName>(records: Records, table: T, id: string, stamp: Stamp): Promise<Change<T> | null> {
  return revise(records, table, id, stamp, (before) => (before.deletedAt === null ? { ...before, deletedAt: stamp.now } : null))
}

/**
 * Takes a change back as a new revision: what was new becomes deleted, what was changed or deleted is as before.
 * null: the record was changed again since, and stays as it is.
 */
export async function undo<T extends TableName>(records: Records, change: Change<T>, stamp: Stamp): Promise<Change<T> | null> {
  return revise(records, change.table, change.after.id, stamp, (now) => {
    if (now.revision !== change.after.revision || now.device !== change.after.device) return null
    return change.before === null ? { ...now, deletedAt: stamp.now } : { ...change.before }
  })
}

/** Reads, changes and writes one record in one transaction. `anew`: fields that are said once more though they stay as they are. */
export async function revise<T extends TableName>(
  records: Records,
  table: T,
  id: string,
  stamp: Stamp,
  change: (before: RecordOf<T>) => object | null,
  anew: readonly string[] = []
): Promise<Change<T> | null> {
  return records.together('rw', [table], async (records) => {
    const rows = records.rows(table)
    const before = await rows.get(id)
    if (!isRecordOf(table, before)) return null
    const changed = change(before)
    if (changed === null) return null
    const after = revised(table, before, changed, stamp, anew)
    await rows.put(after)
    return { table, before, after }
  })
}

/** A record with this content, as its next revision. Throws where it would not fit its schema. */
export function revised<T extends TableName>(
  table: T,
  before: RecordOf<T>,
  changed: object,
  stamp: Stamp,
  anew: readonly string[] = []
): RecordOf<T> {
  const { id, createdAt } = before
  const own = { id, createdAt, revision: before.revision + 1, updatedAt: stamp.now, device: stamp.device }
  const { conflicts: _, ...content } = { conflicts: null, ...changed, ...own }
  const by = { device: stamp.device, revision: own.revision, at: stamp.now }
  return checked(table, { ...content, ...marked(before, content, by, anew) })
}

function checked<T extends TableName>(table: T, row: unknown): RecordOf<T> {
  if (isRecordOf(table, row)) {
    vouch(row)
    return row
  }
  throw new Misfit(`a record for ${table} does not fit its schema`)
}

/** What two devices changed without knowing of each other, and saying which counts. */
import { type Change, revise } from './change.ts'
import type { Records } from './database.ts'
import { all } from './find.ts'
import { listingsOf } from './finds.ts'
import { type Conflict, conflictsIn } from './merge.ts'
import { isRow } from './row.ts'
import type { RecordOf, Stamp, TableName } from './schemas.ts'
import { Gone } from './trouble.ts'

export interface Unsettled extends Conflict {
  table: TableName
  id: string
  /** The record's name or title; '' where it has none. */
  name: string
  /** What counts meanwhile. */
  now: unknown
}

/** Tables whose records a person knows by name. */
const ASKED = ['people', 'bodyMeasurements', 'garmentsOwned', 'listingsKept', 'settings'] as const

/** Every conflict that nobody settled yet. A look follows its listing: it has none of its own. */
export async function unsettled(records: Records): Promise<Unsettled[]> {
  const found: Unsettled[] = []
  for (const table of ASKED) {
    for (const row of table === 'listingsKept' ? await conflictingFinds(records) : await all(records, table)) {
      for (const one of conflictsIn(row)) found.push({ ...one, table, id: row.id, name: nameIn(row), now: own(row, one.field) })
    }
  }
  return found
}

/** Those listings alone that have a conflict: an index knows them. */
const conflictingFinds = async (records: Records) =>
  listingsOf(records, await records.rows('summaries').where('conflicts').above(0).primaryKeys())

/** Settles one: what it says counts from now on, or what counts meanwhile goes on. Throws Gone where it is settled or removed already. */
export async function settle<T extends TableName>(
  records: Records,
  { table, id, field, device, revision }: Pick<Unsettled, 'id' | 'field' | 'device' | 'revision'> & { table: T },
  takes: 'now' | 'other',
  stamp: Stamp
): Promise<Change<T>> {
  const change = await revise(
    records,
    table,
    id,
    stamp,
    (row: RecordOf<T>) => {
      const conflict = conflictsIn(row).find((one) => one.field === field && one.device === device && one.revision === revision)
      if (conflict === undefined) return null
      return takes === 'other' ? { ...row, [field]: conflict.value } : { ...row }
    },
    [field]
  )
  if (change === null) throw new Gone('there is nothing to settle')
  return change
}

const own = (row: object, name: string): unknown => (isRow(row) && Object.hasOwn(row, name) ? row[name] : undefined)
const nameIn = (row: object): string => {
  const name = own(row, 'name') ?? own(row, 'title')
  return typeof name === 'string' ? name : ''
}

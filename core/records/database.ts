import type { Dexie, EntityTable } from 'dexie'
import type { RecordOf, TableName } from './schemas.ts'
/** The database, open. */
export interface Records {
  db: Dexie
  table: <T extends TableName>(name: T) => EntityTable<RecordOf<T>, 'id'>
}

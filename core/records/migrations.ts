/**
 * The versions of what is saved. A migration is numbered and pure, and says what it does and why; the database runs it over
 * its rows and a backup file runs it over its own. None removes a table or a field that it does not know.
 */
export type Row = Readonly<Record<string, unknown>>

export interface Migration {
  number: number
  title: string
  why: string
  /** Tables that are new or get another index, in Dexie's notation. */
  stores: Readonly<Record<string, string>>
  /** A row of a table as the next version has it. */
  change?: (table: string, row: Row) => Row
}

export const MIGRATIONS: readonly Migration[] = [
  {
    number: 1,
    title: 'The first tables',
    why:
      'People, bodies, garments, listings, looks and settings, each record with an id, a device, a revision and a deletion mark, ' +
      'so that a later merge can be exact. Rows that can not be read are set aside whole; what belongs to this browser alone is local.',
    stores: {
      people: 'id',
      bodyMeasurements: 'id, personId',
      garmentsOwned: 'id, personId',
      listingsKept: 'id, address',
      looks: 'id, windowId, tabId, address, pageAddress, keptId',
      settings: 'id',
      setAside: 'id',
      local: 'key'
    }
  }
]

/** Numbered 1, 2, 3… with title and why; throws on a programming error, when loaded. */
export function checkMigrations(migrations: readonly Migration[]): void {
  for (const [place, { number, title, why }] of migrations.entries()) {
    if (number !== place + 1) throw new Error(`migration "${title}" has the number ${number} in place ${place + 1}`)
    if (title === '' || why === '') throw new Error(`migration ${number} needs a title and a why`)
  }
}
checkMigrations(MIGRATIONS)

/** The version this program writes. */
export const currentVersion = (migrations: readonly Migration[] = MIGRATIONS): number => migrations.length

/** A row of an older version as the newest has it. */
export function migrated(table: string, row: Row, fromVersion: number, migrations: readonly Migration[] = MIGRATIONS): Row {
  let now = row
  for (const { number, change } of migrations) if (number > fromVersion && change !== undefined) now = change(table, now)
  return now
}

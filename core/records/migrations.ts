/**
 * The versions of what is saved. A migration is numbered and pure, and says what it does and why; the database runs it over
 * its rows and a backup file runs it over its own. None removes a table or a field that it does not know.
 */
import { keptLooksAgree } from './kept-looks-agree.ts'
import { isRow, type Row, type Tables } from './row.ts'

export interface Migration {
  number: number
  title: string
  why: string
  /** Tables that are new or get another index, in Dexie's notation. */
  stores: Readonly<Record<string, string>>
  /** A row of a table as the next version has it. */
  change?: (table: string, row: Row) => Row
  /** What rows of several tables must agree on: the rows of these tables in, the same rows out, each in its place. */
  together?: { tables: readonly string[]; change: (tables: Tables) => Tables }
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
  },
  {
    number: 2,
    title: 'A kept listing and its look say the same',
    why:
      'Both had copies of what they share, and each overwrote what was changed in the other. From now on the listing owns them ' +
      'and every change is written to both; what came apart before is brought together once.',
    stores: {},
    together: { tables: ['listingsKept', 'looks'], change: keptLooksAgree }
  },
  {
    number: 3,
    title: 'Cut, cloth and whose sizes',
    why:
      'A fit may be as it is cut, a correction may set the cut or the cloth, a garment owned has its own, a person may say whose sizes they ' +
      'wear, and the plan chosen may be a rescue. No row changes: but a version before this one could not read a row that has any of it, ' +
      'and would show nobody there. It is told that it is too old instead.',
    stores: {}
  },
  {
    number: 4,
    title: 'A picture of a listing, and the language of the pages',
    why:
      'A kept listing may have a picture that the person chose, and the settings a language. No row changes; a version before this one would ' +
      'keep both but show neither, so it is told that it is too old.',
    stores: {}
  },
  {
    number: 5,
    title: 'The work on a garment that was bought',
    why:
      'A kept listing may have the sheet that is sewn from, what is done of it and what came of it, and what was found when it was tried on. ' +
      'No row changes; a version before this one could not read such a correction, so it is told that it is too old.',
    stores: {}
  },
  {
    number: 6,
    title: 'Who wrote which field',
    why:
      'Two backups of one record were merged whole, so that the later took back what only the earlier had changed. Each row now knows the last ' +
      'change of every device and of each field. No row changes: one without such marks is merged whole as before. But a version before ' +
      'this would change fields and leave their marks. It is told that it is too old instead.',
    stores: {}
  },
  {
    number: 7,
    title: 'Earlier states to go back to',
    why:
      'A few marks in time, and rows as they were at them, so that a mistaken import or removal can be taken back days later. No row changes; ' +
      'a version before this one would change rows without keeping how they were. It is told that it is too old instead.',
    stores: {
      snapshots: 'key',
      past: 'key, [snapshot+weight]',
      // what is removed is counted without reading what is there
      people: 'id, deletedAt',
      garmentsOwned: 'id, personId, deletedAt',
      listingsKept: 'id, address, deletedAt'
    }
  },
  {
    number: 8,
    title: 'What a list needs of each find, kept beside it',
    why:
      'Ten thousand finds took eleven seconds to show, for each was read whole and worked out anew. Beside each now stands a summary, and ' +
      'the answer with what it stands on. No row changes, and both are made little by little once the workroom is open; but a version ' +
      'before this would change finds and leave their summaries. It is told that it is too old instead. The look that a page shows is ' +
      'found by where its page is and when it was read.',
    stores: {
      summaries: 'id, written, [state+keptAt], conflicts',
      verdicts: 'id, written',
      answers: 'id',
      looks: 'id, windowId, tabId, address, pageAddress, keptId, capturedAt, [windowId+page], [windowId+capturedAt], [tabId+capturedAt]'
    }
  },
  {
    number: 9,
    title: 'What came together is told together',
    why:
      'Bringing in ten thousand finds took four times as long as writing them, for beside each a row said that it was not there before, and ' +
      'another was its summary. Of many that come at once one row now says which were not there, and their summaries are kept together ' +
      'until they are spread. No row changes, and both are still read as they were; but a version before this would overlook what is told ' +
      'together. It is told that it is too old instead.',
    stores: { summaryBatches: 'key' }
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

/** Rows of an older version as the newest has them, each in its place. What is no row stays as it is. */
export function migrated(tables: Tables, fromVersion: number, migrations: readonly Migration[] = MIGRATIONS): Tables {
  let now = tables
  for (const { number, change, together } of migrations) {
    if (number <= fromVersion) continue
    if (change !== undefined) {
      const changed = Object.entries(now).map(([table, rows]) => [table, rows.map((row) => (isRow(row) ? change(table, row) : row))])
      now = Object.fromEntries(changed)
    }
    if (together !== undefined) now = together.change(now)
  }
  return now
}

/** One JSON file with everything, and the way back: planned first, so that it can be shown, then merged by field, all of it or nothing. */
import type { Records } from './database.ts'
import { idOf } from './find.ts'
import { listingsOf, slices } from './finds.ts'
import { conflictsIn, merged } from './merge.ts'
import { MIGRATIONS, type Migration } from './migrations.ts'
import { type Backup, KIND, type OpenedBackup, openBackup, type Refused } from './open-backup.ts'
import { isRow, type Row } from './row.ts'
import { rowsThere } from './rows-there.ts'
import { isRecordOf, type RecordOf, type Stamp, TABLES, type TableName } from './schemas.ts'
import { bringLook } from './shared-fields.ts'
import { vouch } from './summaries.ts'

export { type Backup, LONGEST_FILE } from './open-backup.ts'

/** So many rows are read, compared or written in one step. */
const STEP = 250

/** How far reading, writing or bringing in has come, in rows. */
export type Told = (done: number) => void

/** Everything saved, also deleted marks and what can't be read: as it is at one moment. */
export async function exportBackup(records: Records, stamp: Stamp, told: Told = () => undefined): Promise<Backup> {
  return records.together('r', [...TABLES, 'setAside'], async (records) => {
    const tables: Backup['tables'] = {}
    let done = 0
    for (const table of TABLES) {
      const rows: unknown[] = []
      for await (const slice of slices(records, table, STEP)) {
        rows.push(...slice)
        done += slice.length
        told(done)
      }
      tables[table] = rows
    }
    const setAside = await records.rows('setAside').toArray()
    return { kind: KIND, version: records.version, savedAt: stamp.now, device: stamp.device, tables, setAside }
  })
}

/** The text of a backup in pieces, which together are JSON.stringify of it. */
export function* backupText(backup: Backup): Generator<string> {
  const { kind, version, savedAt, device, tables, setAside } = backup
  yield `{"kind":${JSON.stringify(kind)},"version":${version},"savedAt":${JSON.stringify(savedAt)},"device":${JSON.stringify(device)},"tables":{`
  let isFirst = true
  for (const table of TABLES) {
    const rows = tables[table]
    if (rows === undefined) continue
    yield `${isFirst ? '' : ','}${JSON.stringify(table)}:[`
    isFirst = false
    for (let at = 0; at < rows.length; at += STEP) yield `${at === 0 ? '' : ','}${JSON.stringify(rows.slice(at, at + STEP)).slice(1, -1)}`
    yield ']'
  }
  yield `},"setAside":${JSON.stringify(setAside)}}`
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
export type Imported = ({ ok: true } & Counted) | Refused

/** What a backup file would change; nothing is written. */
export const previewBackup = async (records: Records, file: string | OpenedBackup, stamp: Stamp, told?: Told): Promise<Imported> =>
  bring(records, file, { stamp, migrations: MIGRATIONS, write: false, told })

/** Merges a backup file into what is here, all of it or nothing. A strange file is refused with its reason; rejects only as the database does. */
export const importBackup = async (
  records: Records,
  file: string | OpenedBackup,
  stamp: Stamp,
  migrations: readonly Migration[] = MIGRATIONS,
  told?: Told
): Promise<Imported> => bring(records, file, { stamp, migrations, write: true, told })

interface Bringing {
  stamp: Stamp
  migrations: readonly Migration[]
  write: boolean
  told: Told | undefined
}

async function bring(records: Records, file: string | OpenedBackup, { stamp, migrations, write, told }: Bringing): Promise<Imported> {
  const opened = typeof file === 'object' && 'tables' in file ? file : openBackup(file, records.version, migrations)
  if (!opened.ok) return opened
  const count: Counted = { added: 0, replaced: 0, left: 0, setAside: 0, conflicts: 0 }
  let done = 0
  // one transaction from the first row to the last: the page goes on while the database works, and what breaks off leaves nothing
  await records.together(write ? 'rw' : 'r', [...TABLES, 'setAside'], async (records) => {
    const [setAside, counts] = await Promise.all([
      records.rows('setAside').toArray(),
      Promise.all(TABLES.map((table) => records.rows(table).count()))
    ])
    const asides = asidesOf(setAside, stamp)
    const touched: Touched = { looks: new Set(), listingsKept: new Set() }
    const writing = new InFlight()
    for (const [place, table] of TABLES.entries()) {
      const isEmpty = counts[place] === 0
      const coming = new Map<string, object>()
      for (let at = 0; at < opened.tables[table].length; at += STEP) {
        const slice = opened.tables[table].slice(at, at + STEP)
        const readable = slice.flatMap((one) => ('row' in one ? [one.row] : []))
        // what an earlier slice brought is read once it is written
        if (readable.some(({ id }) => coming.has(id))) await writing.done()
        const here = isEmpty ? new Map<string, unknown>() : await rowsThere(records, table, readable)
        const puts = new Map<string, object>()
        for (const one of slice) {
          if ('unreadable' in one) asides.add({ from: table, row: one.unreadable })
          else take({ table, coming: one.row, here: coming.get(one.row.id) ?? here.get(one.row.id) }, { puts, asides, count })
          if ('row' in one && puts.has(one.row.id)) coming.set(one.row.id, puts.get(one.row.id) ?? one.row)
        }
        if (write) await writing.add(records.rows(table).bulkPut([...puts.values()]))
        // a transaction of which nothing is asked for a while is over
        else if (isEmpty && at % (STEP * UNASKED) === 0) await records.rows(table).get('')
        if (table === 'looks' || table === 'listingsKept') for (const id of puts.keys()) touched[table].add(id)
        done += slice.length
        told?.(done)
      }
    }
    await writing.done()
    for (const raw of opened.setAside) asides.add(raw)
    count.setAside = asides.added.length
    if (!write) return
    await records.rows('setAside').bulkPut(asides.added)
    await bringTouchedLooks(records, touched, stamp)
  })
  return { ok: true, ...count }
}

/** Writes under way: while the database works at some, the next is made ready. */
class InFlight {
  private readonly writing: PromiseLike<unknown>[] = []

  /** Waits until few enough are under way. */
  add(one: PromiseLike<unknown>): Promise<void> {
    // what fails is told when it is waited for
    one.then(undefined, () => undefined)
    this.writing.push(one)
    return this.done(MOST_IN_FLIGHT)
  }

  async done(most = 0): Promise<void> {
    while (this.writing.length > most) await this.writing.shift()
  }
}
const MOST_IN_FLIGHT = 8
/** So many steps may go by with nothing asked. */
const UNASKED = 8

/** One row that comes, beside what is here of it. */
function take(
  { table, coming, here }: { table: TableName; coming: RecordOf<TableName>; here: unknown },
  { puts, asides, count }: { puts: Map<string, object>; asides: Asides; count: Counted }
): void {
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
  vouch(row)
  puts.set(coming.id, row)
}

interface Touched {
  looks: Set<string>
  listingsKept: Set<string>
}

/** Every kept look as its listing says, where one of the two came: a merge may have brought a newer revision of one alone. */
async function bringTouchedLooks(records: Records, touched: Touched, stamp: Stamp): Promise<void> {
  if (touched.looks.size + touched.listingsKept.size === 0) return
  for await (const rows of slices(records, 'looks', STEP)) {
    const looks = rows.flatMap((row) => {
      const isHere = isRecordOf('looks', row) && row.deletedAt === null && row.keptId !== null
      return isHere && (touched.looks.has(row.id) || touched.listingsKept.has(row.keptId ?? '')) ? [row] : []
    })
    const listings = new Map((await listingsOf(records, [...new Set(looks.map(({ keptId }) => keptId ?? ''))])).map((one) => [one.id, one]))
    for (const look of looks) {
      const listing = listings.get(look.keptId ?? '')
      if (listing !== undefined) await bringLook(records, look, listing, stamp)
    }
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

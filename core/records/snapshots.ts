/**
 * A ring of a few earlier states of everything a person keeps, made by itself: to look at, and to go back to as a whole. A state is a mark and the
 * rows as they were at it (past-rows.ts). They stay in this browser and go into no backup file. A record that goes back gets a new revision, so
 * that what another device has of it comes together with it as with any other change.
 */
import * as z from 'zod/mini'
import { revised } from './change.ts'
import type { Records } from './database.ts'
import { OF_THE_ROW } from './merge.ts'
import { migrated } from './migrations.ts'
import { type CameTogether, isCameKey, PAST, type PastRow, pastKey, SNAPSHOTS } from './past-rows.ts'
import { isRow, type Row } from './row.ts'
import { isRecordOf, type RecordOf, type Stamp, TABLES, type TableName } from './schemas.ts'
import { same } from './three-way.ts'

/** Why one was made: a new day on which something had changed, or something large was about to happen. */
export const SNAPSHOT_REASONS = ['day', 'import', 'restoring', 'removing'] as const
export type SnapshotReason = (typeof SNAPSHOT_REASONS)[number]

const mark = z.object({
  key: z.string(),
  madeAt: z.iso.datetime(),
  because: z.enum(SNAPSHOT_REASONS),
  /** What was there. */
  counts: z.object({ people: z.int(), garmentsOwned: z.int(), listingsKept: z.int() }),
  /** The page that made it. */
  by: z.string()
})
export type Snapshot = z.infer<typeof mark>

const isMark = (row: unknown): row is Snapshot => mark.safeParse(row).success
const isPast = (row: unknown): row is PastRow =>
  isRow(row) && typeof row.version === 'number' && typeof row.id === 'string' && TABLES.some((table) => table === row.table)
const isCame = (row: unknown): row is CameTogether =>
  isRow(row) && typeof row.snapshot === 'string' && Array.isArray(row.came) && TABLES.some((table) => table === row.table)

/** A key counts up, and is sorted as text. */
const KEY_DIGITS = 8
const keyOf = (number: number): string => String(number).padStart(KEY_DIGITS, '0')
/** So many rows are read and written at once. */
const AT_ONCE = 200

/** The snapshots that are there, newest first. */
export async function snapshots(records: Records): Promise<Snapshot[]> {
  return (await records.rows(SNAPSHOTS).toArray()).filter(isMark).reverse()
}

/** Has anything been written since the newest snapshot? */
async function changedSince(records: Records, newest: Snapshot): Promise<boolean> {
  return (await records.rows(PAST).where('key').startsWith(newest.key).count()) > 0
}

/**
 * Marks how everything is now, in one transaction with what comes behind it in the same act. `by`: the page. Nothing is copied, and nothing read:
 * it takes as long however much is saved. `stays`: another snapshot, by its key, that is not dropped for this one.
 */
export async function makeSnapshot(
  records: Records,
  because: SnapshotReason,
  stamp: Stamp,
  { by = '', stays = '' }: { by?: string; stays?: string } = {}
): Promise<Snapshot> {
  return records.together('rw', [...TABLES, SNAPSHOTS, PAST, 'local'], async (records) => {
    // asked side by side: each answer alone takes as long as all of them
    const [[newest], people, garmentsOwned, listingsKept] = await Promise.all([
      snapshots(records),
      present(records, 'people'),
      present(records, 'garmentsOwned'),
      present(records, 'listingsKept')
    ])
    const counts = { people, garmentsOwned, listingsKept }
    const made: Snapshot = { key: keyOf(newest === undefined ? 1 : Number(newest.key) + 1), madeAt: stamp.now, because, counts, by }
    await Promise.all([records.rows(SNAPSHOTS).put(made), records.rows('local').delete(LET_GO)])
    await tidy(records, stamp.now, stays)
    return made
  })
}

/** At most one a day (of UTC), and only where something is there and has changed since the last. null: none was due. */
export async function snapshotOfTheDay(records: Records, stamp: Stamp): Promise<Snapshot | null> {
  const [newest] = await snapshots(records)
  if (newest !== undefined && (dayOf(newest.madeAt) === dayOf(stamp.now) || !(await changedSince(records, newest)))) return null
  if (newest === undefined && (await countRows(records)) === 0) return null
  return makeSnapshot(records, 'day', stamp)
}
const dayOf = (time: string): string => time.slice(0, 10)

async function countRows(records: Records): Promise<number> {
  let count = 0
  for (const table of TABLES) count += await records.rows(table).count()
  return count
}

/** How many records of a table are there; nothing of them is read. */
async function present(records: Records, table: 'people' | 'garmentsOwned' | 'listingsKept'): Promise<number> {
  const rows = records.rows(table)
  const [all, removed] = await Promise.all([rows.count(), rows.where('deletedAt').above('').count()])
  return all - removed
}

/** Characters of past rows that are kept, about: past it the oldest snapshots go. The newest always stays. */
const MOST_WEIGHT = 100_000_000

/**
 * Which of these (newest first) stay: the newest; the newest of an earlier day, of an earlier week, of an earlier month; the newest that was made
 * before an import, and before anything else large. Six at most.
 */
export function kept(all: readonly Snapshot[]): Snapshot[] {
  const [newest] = all
  if (newest === undefined) return []
  const earlier = (of: (time: string) => string) => all.find((one) => of(one.madeAt) < of(newest.madeAt))
  const before = (...reasons: SnapshotReason[]) => all.find(({ because }) => reasons.includes(because))
  const wanted = [newest, earlier(dayOf), earlier(weekOf), earlier(monthOf), before('import'), before('restoring', 'removing')]
  return all.filter((one) => wanted.includes(one))
}
const monthOf = (time: string): string => time.slice(0, 7)
const DAY_MS = 86_400_000
/** Weeks begin on Monday; 1 January 1970 was a Thursday. */
const weekOf = (time: string): string => keyOf(Math.floor((Date.parse(time) / DAY_MS + 3) / 7))

/** Drops the snapshots that do not stay, and what is kept for them alone. */
async function tidy(records: Records, now: string, always: string): Promise<void> {
  const past = records.rows(PAST)
  const [all, weights, keys] = await Promise.all([snapshots(records), weightsBySnapshot(records), past.toCollection().primaryKeys()])
  // a clock that was set back would put a later mark before an earlier one: those count as of now
  const wanted = kept(all.map((one) => (one.madeAt > now ? { ...one, madeAt: now } : one))).map(({ key }) => key)
  let stay = all.map(({ key }) => key).filter((key) => key === always || wanted.includes(key))
  while (stay.length > 1 && stay.at(-1) !== always && sum(weights, stay.at(-1) ?? '') > MOST_WEIGHT) stay = stay.slice(0, -1)
  const gone = all.map(({ key }) => key).filter((key) => !stay.includes(key))
  await Promise.all([records.rows(SNAPSHOTS).bulkDelete(gone), past.bulkDelete(unneeded(keys, stay))])
}

/** The weight of past rows by the mark that they were kept for; only the index is read. */
async function weightsBySnapshot(records: Records): Promise<Map<string, number>> {
  const found = new Map<string, number>()
  const entries: unknown[] = await records.rows(PAST).orderBy('[snapshot+weight]').keys()
  for (const entry of entries) {
    if (!Array.isArray(entry)) continue
    const [snapshot, weight] = entry
    found.set(String(snapshot), (found.get(String(snapshot)) ?? 0) + Number(weight))
  }
  return found
}
const sum = (weights: ReadonlyMap<string, number>, oldest: string): number =>
  [...weights].reduce((total, [key, weight]) => (key >= oldest ? total + weight : total), 0)

/**
 * The keys of past rows that no snapshot needs: kept before the oldest that stays, or behind another of the same row that the same snapshots
 * are served by. `stay`: keys of marks, newest first.
 */
export function unneeded(keys: readonly string[], stay: readonly string[]): string[] {
  const serves = new Set<string>()
  return keys.filter((key) => {
    const snapshot = key.slice(0, KEY_DIGITS)
    const mark = stay.find((one) => one <= snapshot)
    if (mark === undefined) return true
    // of those that came together some may be needed
    if (isCameKey(key)) return false
    const row = mark + key.slice(KEY_DIGITS)
    if (serves.has(row)) return true
    serves.add(row)
    return false
  })
}

const LET_GO = 'snapshots-let-go'

/** Gives all snapshots up, so that there is room for what a person typed. False where there was nothing to give up. */
export async function letSnapshotsGo(records: Records): Promise<boolean> {
  return records.together('rw', [SNAPSHOTS, PAST, 'local'], async (records) => {
    const there = (await records.rows(SNAPSHOTS).count()) + (await records.rows(PAST).count())
    if (there === 0) return false
    await records.rows(PAST).clear()
    await records.rows(SNAPSHOTS).clear()
    await records.rows('local').put({ key: LET_GO, value: true })
    return true
  })
}
/** Were they given up, and none made since? */
export const snapshotsLetGo = async (records: Records): Promise<boolean> => (await records.rows('local').get(LET_GO)) !== undefined

/** What going back changes, in records. */
export interface GoingBack {
  /** Removed since: they come back. */
  back: number
  /** Changed since: they are as they were. */
  changed: number
  /** Came since: they are removed. */
  removed: number
}
export interface WentBack extends GoingBack {
  /** The revision that each record has now, by table and id: what a later change is known by. */
  written: ReadonlyMap<string, string>
  /** Records that were changed again since they went back, and stay as they are. */
  left: number
}

/** What going back to a snapshot would change; nothing is written. null: it is not there any more. */
export async function previewRestore(records: Records, key: string): Promise<GoingBack | null> {
  return records.together('r', [...TABLES, SNAPSHOTS, PAST], async (records) => {
    if (!isMark(await records.rows(SNAPSHOTS).get(key))) return null
    const counts = { back: 0, changed: 0, removed: 0 }
    await eachToGoBack(records, key, async (some) => {
      for (const { does } of some) counts[does]++
    })
    return counts
  })
}

/**
 * Everything as it was at a snapshot. What can't be read, then or now, stays as it is or is set aside; so does a look at a page that is open.
 * `only`: what an earlier going back wrote; with it only that is taken back, as far as nobody changed it since. null: the snapshot is gone.
 */
export async function restore(
  records: Records,
  key: string,
  stamp: Stamp,
  only: ReadonlyMap<string, string> | null = null
): Promise<WentBack | null> {
  return records.together('rw', [...TABLES, 'setAside', SNAPSHOTS, PAST], async (records) => {
    if (!isMark(await records.rows(SNAPSHOTS).get(key))) return null
    const counts = { back: 0, changed: 0, removed: 0 }
    const written = new Map<string, string>()
    let left = 0
    await eachToGoBack(records, key, async (some) => {
      const wanted = some.filter((one) => only === null || only.get(placeOf(one)) === revisionOf(one.now))
      if (only !== null) left += some.filter((one) => only.has(placeOf(one)) && only.get(placeOf(one)) !== revisionOf(one.now)).length
      for (const one of wanted) counts[one.does]++
      for (const [place, revision] of await goBack(records, wanted, stamp)) written.set(place, revision)
    })
    return { ...counts, written, left }
  })
}
const placeOf = ({ table, id }: ToGoBack): string => `${table} ${id}`
const revisionOf = (row: unknown): string => (isRow(row) ? `${row.device} ${row.revision}` : '')

interface ToGoBack {
  table: TableName
  id: string
  /** The record as it was then; null: it was not there. */
  was: RecordOf<TableName> | null
  now: unknown
  does: keyof GoingBack
}

/** Goes through every record that is otherwise than at a snapshot, some at once. */
async function eachToGoBack(records: Records, snapshot: string, take: (some: readonly ToGoBack[]) => Promise<void>): Promise<void> {
  const { came, kept } = await keptSince(records, snapshot)
  for (const keys of some(kept)) {
    const past = (await records.rows(PAST).bulkGet(keys)).filter(isPast)
    await takeOf(past.map(({ table, id, row, version }) => ({ table, id, was: row === null ? null : broughtToday(table, row, version) })))
  }
  for (const rows of some(came)) await takeOf(rows.map((one) => ({ ...one, was: null })))

  async function takeOf(past: readonly { table: TableName; id: string; was: unknown }[]): Promise<void> {
    const going: ToGoBack[] = []
    for (const table of TABLES) {
      const its = past.filter((one) => one.table === table)
      const now = its.length === 0 ? [] : await records.rows(table).bulkGet(its.map(({ id }) => id))
      for (const [place, { id, was }] of its.entries()) {
        const does = whatGoesBack(table, was, now[place])
        if (does !== null) going.push({ table, id, was: isRecordOf(table, was) ? was : null, now: now[place], does })
      }
    }
    if (going.length > 0) await take(going)
  }
}

function* some<T>(all: readonly T[]): Generator<T[]> {
  for (let at = 0; at < all.length; at += AT_ONCE) yield all.slice(at, at + AT_ONCE)
}

const broughtToday = (table: TableName, row: unknown, version: number): unknown => migrated({ [table]: [row] }, version)[table]?.[0] ?? null

/** What is kept behind a snapshot, of several states of a row the earliest alone: the one it had then. Rows by their keys; and what came since. */
async function keptSince(records: Records, snapshot: string): Promise<{ kept: string[]; came: { table: TableName; id: string }[] }> {
  const keys = await records
    .rows(PAST)
    .where('key')
    .aboveOrEqual(pastKey(snapshot, '', ''))
    .primaryKeys()
  const together = (await records.rows(PAST).bulkGet(keys.filter(isCameKey))).filter(isCame)
  const came = new Map<string, { table: TableName; id: string; since: string }>()
  for (const { table, came: ids, snapshot: since } of together) {
    for (const id of ids) {
      const row = pastKey('', table, id)
      if (!came.has(row)) came.set(row, { table, id, since })
    }
  }
  const kept = new Map<string, string>()
  for (const key of keys) {
    const row = key.slice(KEY_DIGITS)
    if (isCameKey(key) || kept.has(row)) continue
    const since = came.get(row)?.since
    // what came together goes before a row of its own for the same mark
    if (since !== undefined && since <= key.slice(0, KEY_DIGITS)) continue
    kept.set(row, key)
  }
  for (const row of kept.keys()) came.delete(row)
  return { kept: [...kept.values()], came: [...came.values()] }
}

function whatGoesBack(table: TableName, was: unknown, now: unknown): keyof GoingBack | null {
  const isThere = (row: unknown): row is RecordOf<TableName> => isRecordOf(table, row) && row.deletedAt === null
  if (isThere(was)) {
    // a look that was forgotten had nothing typed into it
    if (now === undefined) return table === 'looks' ? null : 'back'
    if (!isThere(now)) return 'back'
    return sameContent(table, was, now) ? null : 'changed'
  }
  // a row that could not be read then is not in the way of what is there now
  if (was !== null && !isRecordOf(table, was)) return null
  if (!isThere(now)) return null
  return table === 'looks' && isOpenLook(now) ? null : 'removed'
}

/** Where the page of a look is: no content either. */
const PLACE = ['windowId', 'tabId', 'page']
const isOpenLook = (row: object): boolean => isRow(row) && (row.windowId !== null || row.tabId !== null)

function sameContent(table: TableName, a: object, b: object): boolean {
  const content = (row: object): Row =>
    Object.fromEntries(Object.entries(row).filter(([name]) => !OF_THE_ROW.includes(name) && !(table === 'looks' && PLACE.includes(name))))
  return same(content(a), content(b))
}

/** Writes some records as they were; their places with the revision that each has now. */
async function goBack(records: Records, some: readonly ToGoBack[], stamp: Stamp): Promise<[string, string][]> {
  const asides = some.filter(({ table, now }) => now !== undefined && !isRecordOf(table, now))
  // what can't be read gives way to what can, and is kept
  await records.rows('setAside').bulkPut(asides.map(({ table, now }) => ({ id: stamp.newId(), from: table, row: now })))
  const written: [string, string][] = []
  for (const table of TABLES) {
    const rows = some
      .filter((one) => one.table === table)
      .flatMap((one) => {
        const row = rowGoneBack(one, stamp)
        written.push([placeOf(one), revisionOf(row)])
        return row === null ? [] : [row]
      })
    await records.rows(table).bulkPut(rows)
  }
  return written
}

function rowGoneBack({ table, was, now, does }: ToGoBack, stamp: Stamp): object | null {
  if (!isRecordOf(table, now)) return was
  if (does === 'removed' || was === null) return revised(table, now, { ...now, deletedAt: stamp.now }, stamp)
  return revised(table, now, { ...was, ...whereItIs(table, now) }, stamp)
}

const whereItIs = (table: TableName, row: object): Row =>
  table === 'looks' ? Object.fromEntries(Object.entries(row).filter(([name]) => PLACE.includes(name))) : {}

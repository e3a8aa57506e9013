/** Backup files that something happened to, and what must hold of reading and merging any of them. */
import 'fake-indexeddb/auto'
import { readdirSync, readFileSync } from 'node:fs'
import { exportBackup, importBackup, previewBackup } from '../../core/records/backup.ts'
import { openRecords, type Records } from '../../core/records/database.ts'
import { all, idOf } from '../../core/records/find.ts'
import { isRow } from '../../core/records/row.ts'
import { isRecordOf, type Stamp, TABLES } from '../../core/records/schemas.ts'
import { unsettled } from '../../core/records/settle.ts'
import type { Random } from './requests.ts'

const folder = new URL('../unit/records/stored/', import.meta.url)
/** The stored backups of every version, as texts. */
const WHOLE = readdirSync(folder).map((name) => readFileSync(new URL(name, folder), 'utf8'))

const ODD: readonly unknown[] = [
  ...[null, true, 0, -1, 1.5, 2 ** 53 - 1, 1e308, '', 'constructor', '__proto__', '\ud800', '\u202e', 'x'.repeat(5_000)],
  ...[[], {}, [[]], [null], { id: 'p1' }, { toString: 1 }, { length: -1 }, '2026-13-45T99:00:00.000Z', '9999-12-31T23:59:59.999Z'],
  ...[{ tin: 2 ** 40 }, { tin: -1 }, { device: 'tin', revision: 1, at: '' }, 'p1', 'settings', 'cm']
]

const oneOf = <T>(random: Random, from: readonly T[]): T | undefined => from[Math.floor(random() * from.length)]

/** Every place in a value, as the object or list it stands in and its name there. */
function placesIn(value: unknown): [Record<string, unknown>, string][] {
  const found: [Record<string, unknown>, string][] = []
  const look = (inner: unknown): void => {
    if (typeof inner !== 'object' || inner === null) return
    for (const [name, below] of Object.entries(inner)) {
      found.push([inner as Record<string, unknown>, name])
      look(below)
    }
  }
  look(value)
  return found
}

/** A file with one to six accidents; about one in eight is no JSON any more. */
export function mutatedBackup(random: Random): string {
  const text = oneOf(random, WHOLE) ?? ''
  if (random() < 1 / 8) return broken(random, text)
  const backup: unknown = JSON.parse(text)
  const accidents = 1 + Math.floor(random() * 6)
  for (let n = 0; n < accidents; n++) accident(random, backup)
  return JSON.stringify(backup)
}

function accident(random: Random, backup: unknown): void {
  const places = placesIn(backup)
  const [within, name] = oneOf(random, places) ?? [{}, '']
  const [other, itsName] = oneOf(random, places) ?? [{}, '']
  const chance = random()
  if (chance < 0.3) within[name] = structuredClone(oneOf(random, ODD))
  else if (chance < 0.45) delete within[name]
  else if (chance < 0.6) within[name] = structuredClone(other[itsName])
  else if (chance < 0.7)
    within[oneOf(random, ['constructor', 'seen', 'wrote', 'conflicts', 'deletedAt', 'zip']) ?? ''] = structuredClone(other[itsName])
  else if (chance < 0.8) laterEdit(random, backup)
  else if (chance < 0.9) repeated(random, within[name])
  else within[name] = nested(random, within[name])
}

/** The same record once more in its table, changed elsewhere. */
function laterEdit(random: Random, backup: unknown): void {
  const tables = isRow(backup) && isRow(backup.tables) ? Object.values(backup.tables) : []
  const rows = oneOf(random, tables.filter(Array.isArray))
  const row: unknown = rows === undefined ? undefined : oneOf(random, rows)
  if (!Array.isArray(rows) || !isRow(row)) return
  const device = oneOf(random, ['tin', 'box', 'shelf']) ?? 'tin'
  const revision = Math.ceil(random() * 9)
  rows.push({ ...row, device, revision, notes: `note ${revision}`, ...(random() < 0.5 ? { seen: { [device]: revision } } : {}) })
}

function repeated(random: Random, value: unknown): void {
  if (!Array.isArray(value)) return
  const times = Math.ceil(random() * 20)
  const first: unknown = value[0]
  for (let n = 0; n < times; n++) value.push(structuredClone(first))
}

function nested(random: Random, value: unknown): unknown {
  let now = structuredClone(value)
  const depth = Math.ceil(random() * 300)
  for (let n = 0; n < depth; n++) now = n % 2 === 0 ? [now] : { now }
  return now
}

/** Letters lost, put in or turned, or the end cut off. */
function broken(random: Random, text: string): string {
  const at = Math.floor(random() * text.length)
  const chance = random()
  if (chance < 0.3) return text.slice(0, at)
  if (chance < 0.6) return text.slice(0, at) + text.slice(at + Math.ceil(random() * 40))
  return text.slice(0, at) + (oneOf(random, ['"', '}', ']', ',', '\u0000', '-', 'e', '\\u', '[[[']) ?? '') + text.slice(at)
}

const stampOf = (n: number): (() => Stamp) => {
  let ids = 0
  return () => ({ now: new Date(Date.UTC(2026, 5, 1, 0, 0, n)).toISOString(), newId: () => `new-${n}-${ids++}`, device: 'here' })
}

let databases = 0
/** Records to merge into: empty, and thrown away with `end`. */
export async function emptyRecords(): Promise<{ records: Records; end: () => Promise<void> }> {
  const opened = await openRecords(`mutated-${databases++}`)
  if (!opened.ok) throw new Error(opened.detail)
  const { records } = opened
  return { records, end: () => records.db.delete() }
}

/** Merges a file into what is here and tells what should not be. `n` numbers the file; `again`: it comes three times. */
export async function faultsOfMerging(
  records: Records,
  text: string,
  n: number,
  again = true
): Promise<{ taken: boolean; faults: string[] }> {
  const stamp = stampOf(n)
  const faults: string[] = []
  const before = readable.get(records) ?? new Set<string>()
  const planned = await previewBackup(records, text, stamp())
  const first = await importBackup(records, text, stamp())
  if (JSON.stringify(planned) !== JSON.stringify(first)) faults.push(`planned ${JSON.stringify(planned)}, done ${JSON.stringify(first)}`)
  const after = await readableIn(records)
  readable.set(records, after)
  for (const id of before) if (!after.has(id)) faults.push(`${id} can't be read any more`)
  if (!first.ok) return { taken: false, faults }
  if (!again) return { taken: true, faults }
  faults.push(...(await faultsOfAgain(records, text, stamp)))
  for (const table of TABLES) await all(records, table)
  await unsettled(records)
  return { taken: true, faults }
}

/**
 * The same file again changes nothing that anybody typed. Marks that contradict each other, or that a row of an old version gets only with its
 * first change here, may still grow the second time; the third time nothing changes at all.
 */
async function faultsOfAgain(records: Records, text: string, stamp: () => Stamp): Promise<string[]> {
  const faults: string[] = []
  const first = await wholeOf(records)
  await importBackup(records, text, stamp())
  const second = await wholeOf(records)
  if (withoutMarks(first) !== withoutMarks(second)) faults.push('the second time something changed')
  const third = await importBackup(records, text, stamp())
  if (!third.ok || third.added + third.replaced + third.setAside > 0) faults.push(`the third time: ${JSON.stringify(third)}`)
  if (JSON.stringify(await wholeOf(records)) !== JSON.stringify(second)) faults.push('the third time something changed')
  return faults
}

const wholeOf = async (records: Records) => (await exportBackup(records, stampOf(0)())).tables
const MARKS = new Set(['device', 'revision', 'updatedAt', 'seen', 'wrote', 'conflicts'])
/** The marks left out, the fields of each row in one order. */
const withoutMarks = (tables: object): string =>
  JSON.stringify(tables, (name, value: unknown) => {
    if (MARKS.has(name)) return undefined
    return isRow(value) ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))) : value
  })

/** What could be read behind the last file. */
const readable = new WeakMap<Records, Set<string>>()

async function readableIn(records: Records): Promise<Set<string>> {
  const found = new Set<string>()
  for (const table of TABLES)
    for (const row of await records.rows(table).toArray()) if (isRecordOf(table, row)) found.add(`${table} ${idOf(row)}`)
  return found
}

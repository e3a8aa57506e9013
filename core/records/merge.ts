/**
 * Two revisions of one record from two devices, as one. Each row knows the last change of every device that is in it (`seen`), and of each
 * field which change wrote it (`wrote`): so the later edit wins by field, what one side knew of the other is no conflict, and what both
 * changed without knowing of each other is kept side by side (`conflicts`) until the person says which counts. Whatever the order in
 * which files come, and however often, the outcome is the same.
 */
import { isRow, type Row } from './row.ts'
import { same } from './three-way.ts'

/** One change of one record: who made it, its number there, and when. */
export interface Wrote {
  device: string
  revision: number
  at: string
}
/** What a field had on another device, when both changed it. */
export interface Conflict extends Wrote {
  field: string
  value: unknown
  /** The change that counts meanwhile; once the field is written again the conflict is settled. */
  against: string
}

/** Of the record itself and not its content. */
export const OF_THE_ROW: readonly string[] = ['id', 'device', 'revision', 'createdAt', 'updatedAt', 'seen', 'wrote', 'conflicts']
/** Where a look is belongs to this browser; its undo and half-typed text follow its fields. Nobody is asked about them. */
const NEVER_ASKED = [
  'windowId',
  'tabId',
  'page',
  'undo',
  'drafts',
  'capturedAt',
  'readBy',
  'problem',
  'pageAddress',
  'verdictThen',
  'request'
]

const nameOf = ({ device, revision, at }: Wrote): string => `${device} ${revision} ${at}`

export interface Marks {
  seen: Seen
  wrote: Row
  conflicts?: Conflict[]
}

/**
 * The marks of a new revision of a row: what it has seen, and who wrote which field last. Fields that stay keep theirs, but for those
 * that are said anew, as they are: that settles a conflict.
 */
export function marked(before: Row | null, after: Row, by: Wrote, anew: readonly string[] = []): Marks {
  const names = Object.keys(after).filter((name) => !OF_THE_ROW.includes(name))
  const wrote = names.map((name): [string, unknown] => {
    const known = before === null ? undefined : wroteIn(before, name)
    return [name, known !== undefined && before !== null && !anew.includes(name) && same(own(before, name), after[name]) ? known : by]
  })
  const seen = { ...(before === null ? {} : seenIn(before)), [by.device]: by.revision }
  const row = { ...after, wrote: Object.fromEntries(wrote) }
  const conflicts = before === null ? [] : standing(conflictsIn(before), row)
  return { seen, wrote: row.wrote, ...(conflicts.length > 0 ? { conflicts } : {}) }
}

/** Both as one row; `here` itself where `coming` has nothing that it has not. */
export function merged(here: Row, coming: Row): Row {
  const [mine, theirs] = [seenIn(here), seenIn(coming)]
  if (!knows(here) || !knows(coming)) return isLater(coming, here) ? coming : here
  if (holds(mine, theirs)) return here
  if (holds(theirs, mine)) return coming
  const names = new Set([...Object.keys(here), ...Object.keys(coming)].filter((name) => !OF_THE_ROW.includes(name)))
  const fields = new Map<string, unknown>()
  const wrote = new Map<string, Wrote>()
  const conflicts = [...conflictsIn(here), ...conflictsIn(coming)]
  for (const name of names) {
    const [a, b] = [wroteIn(here, name), wroteIn(coming, name)]
    if (a === undefined || b === undefined) {
      // written by nobody that either knows of: from where it stands
      const from = b !== undefined || (a === undefined && !Object.hasOwn(here, name)) ? coming : here
      if (Object.hasOwn(from, name)) fields.set(name, from[name])
      const its = a ?? b
      if (its !== undefined) wrote.set(name, its)
      continue
    }
    const [wins, loses, won, lost] = countsBefore(b, a, mine, theirs) ? [coming, here, b, a] : [here, coming, a, b]
    if (Object.hasOwn(wins, name)) fields.set(name, wins[name])
    wrote.set(name, won)
    // each was written without knowing of the other
    // two removals are one
    const bothGone = name === 'deletedAt' && here.deletedAt !== null && coming.deletedAt !== null
    const apart = !bothGone && !covers(wins === here ? mine : theirs, lost) && !same(own(wins, name), own(loses, name))
    const knew = covers(wins === here ? mine : theirs, lost)
    for (const one of conflicts) if (!knew && one.field === name && one.against === nameOf(lost)) one.against = nameOf(won)
    if (apart && !NEVER_ASKED.includes(name)) conflicts.push({ ...lost, field: name, value: own(loses, name), against: nameOf(won) })
  }
  keepEdited()
  const seen = Object.fromEntries(
    [...new Set([...Object.keys(mine), ...Object.keys(theirs)])].toSorted().map((d) => [d, Math.max(mine[d] ?? 0, theirs[d] ?? 0)])
  )
  const content = { ...Object.fromEntries(fields), wrote: Object.fromEntries(wrote) }
  const open = standing(conflicts, content)
  const { id, createdAt } = here
  const last = latest([...wrote.values()])
  const of = {
    id,
    createdAt,
    device: last?.device ?? here.device,
    updatedAt: last?.at ?? here.updatedAt,
    revision: Math.max(numberIn(here), numberIn(coming))
  }
  const row = { ...content, ...of, seen, ...(open.length > 0 ? { conflicts: open } : {}) }
  return same(row, here) ? here : row

  /** Removed on one device and changed on the other, neither knowing: it stays, and the removal is a conflict. */
  function keepEdited(): void {
    const [gone, kept, known] = here.deletedAt !== null ? [here, coming, mine] : [coming, here, theirs]
    if (gone.deletedAt === null || kept.deletedAt !== null) return
    const [by, its] = [wroteIn(gone, 'deletedAt'), wroteIn(kept, 'deletedAt')]
    const edited = [...names].some((name) => name !== 'deletedAt' && !covers(known, wroteIn(kept, name) ?? NOBODY))
    const knew = by !== undefined && covers(gone === here ? theirs : mine, by) && its !== undefined && !covers(known, its)
    if (!edited || by === undefined || its === undefined || knew) return
    fields.set('deletedAt', null)
    wrote.set('deletedAt', its)
    conflicts.push({ ...by, field: 'deletedAt', value: gone.deletedAt, against: nameOf(its) })
  }
}
/** A change that everybody knows. */
const NOBODY: Wrote = { device: '', revision: 0, at: '' }

/** The change made last; of one moment the one whose name comes last, so that every device says the same. */
const latest = <T extends Wrote>(all: readonly T[]): T | undefined =>
  all.reduce<T | undefined>(
    (last, one) => (last === undefined || one.at > last.at || (one.at === last.at && nameOf(one) > nameOf(last)) ? one : last),
    undefined
  )

/** Is everything that the other has seen in this one? */
const holds = (seen: Seen, other: Seen): boolean =>
  Object.entries(other).every(([device, revision]) => covers(seen, { device, revision, at: '' }))

/** Conflicts that are not settled yet, each once, in one order; of several removals the last. */
function standing(conflicts: readonly Conflict[], row: Row): Conflict[] {
  const found = new Map<string, Conflict>()
  for (const one of conflicts) {
    const by = wroteIn(row, one.field)
    if (by === undefined || nameOf(by) !== one.against || same(one.value, own(row, one.field))) continue
    // the same value from two devices is one, and so are two removals
    const what = one.field === 'deletedAt' ? one.field : `${one.field} ${JSON.stringify(one.value)}`
    found.set(what, latest([...(found.has(what) ? [found.get(what) ?? one] : []), one]) ?? one)
  }
  return [...found].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one)
}

/** Does change b count before change a? The one that knew of the other; where neither did, the later, else by device. */
function countsBefore(b: Wrote, a: Wrote, mine: Seen, theirs: Seen): boolean {
  if (nameOf(a) === nameOf(b)) return false
  const [aKnew, bKnew] = [covers(mine, b), covers(theirs, a)]
  if (aKnew !== bKnew) return bKnew
  return a.at !== b.at ? b.at > a.at : nameOf(b) > nameOf(a)
}

/** A row from before there were marks is one whole. */
const knows = (row: Row): boolean => isRow(row.seen) && isRow(row.wrote)

function isLater(coming: Row, here: Row): boolean {
  if (!knows(here) || !knows(coming)) {
    const [a, b] = [numberIn(here), numberIn(coming)]
    if (a !== b) return b > a
  }
  const [at, its] = [String(here.updatedAt), String(coming.updatedAt)]
  return at !== its ? its > at : String(coming.device) > String(here.device)
}

type Seen = Readonly<Record<string, number>>
const numberIn = (row: Row): number => (typeof row.revision === 'number' ? row.revision : 0)
const covers = (seen: Seen, { device, revision }: Wrote): boolean =>
  revision === 0 || (Object.hasOwn(seen, device) && (seen[device] ?? 0) >= revision)

/** A field of the row, and nothing that every object has beneath it: names come from a file. */
const own = (row: Row, name: string): unknown => (Object.hasOwn(row, name) ? row[name] : undefined)

function seenIn(row: Row): Seen {
  if (!isRow(row.seen)) return {}
  return Object.fromEntries(Object.entries(row.seen).filter((one): one is [string, number] => typeof one[1] === 'number'))
}

function wroteIn(row: Row, field: string): Wrote | undefined {
  const all = row.wrote
  const its = isRow(all) && Object.hasOwn(all, field) ? all[field] : undefined
  return isWrote(its) ? its : undefined
}
const isWrote = (value: unknown): value is Wrote =>
  isRow(value) && typeof value.device === 'string' && typeof value.revision === 'number' && typeof value.at === 'string'

/** The conflicts of a row that are not settled. */
export function conflictsIn(row: object): Conflict[] {
  const all: unknown = 'conflicts' in row ? row.conflicts : []
  return Array.isArray(all) ? all.filter(isConflict).map((one) => ({ ...one })) : []
}
const isConflict = (value: unknown): value is Conflict =>
  isWrote(value) && 'field' in value && typeof value.field === 'string' && 'against' in value && typeof value.against === 'string'

/** Editing what may have been edited elsewhere since it was read: by field, and never over somebody else's change without a word. */
import { type Change, patch } from './change.ts'
import type { Records } from './database.ts'
import { one } from './find.ts'
import { isRow, type Row } from './row.ts'
import type { Fields, Stamp, TableName } from './schemas.ts'
import { type Clash, type Settle, same, together } from './three-way.ts'
import { Gone } from './trouble.ts'

/** Changed here and elsewhere, each time to something else; nothing was written. */
export class Clashing extends Error {
  override name = 'Clashing'
  readonly clashes: readonly Clash[]
  constructor(clashes: readonly Clash[]) {
    super(clashes.map(({ path }) => path.join('.')).join(', '))
    this.clashes = clashes
  }
}

/** What was changed from `began` to `mine`, as changes to how it is now; throws Clashing where both can't be had. */
export function changesSince<F extends object>(began: Partial<F>, mine: Partial<F>, now: F, settle: Settle): Partial<F> {
  const names = Object.keys(mine) as (keyof F)[]
  const only = (from: Partial<F>): Row =>
    Object.fromEntries(names.filter((name) => from[name] !== undefined).map((name) => [name, from[name]]))
  const there = only(now)
  const { value, clashes } = together(only(began), only(mine), there, settle)
  if (clashes.length > 0) throw new Clashing(clashes)
  const changed = names.filter((name) => !same(value[String(name)], there[String(name)]))
  const changes: unknown = Object.fromEntries(changed.map((name) => [name, value[String(name)]]))
  // the fields of `mine`, each with a value of its own kind: together() makes no others
  return isPartOf<F>(changes) ? changes : {}
}
const isPartOf = <F>(value: unknown): value is Partial<F> => isRow(value)

/**
 * Writes what was changed of a record since it was read. Throws Gone where it was removed meanwhile, and Clashing where a field was
 * changed elsewhere, too, unless `settle` says whose value counts.
 */
export async function edit<T extends TableName>(
  records: Records,
  table: T,
  id: string,
  { began, mine, settle }: { began: Partial<Fields<T>>; mine: Partial<Fields<T>>; settle: Settle },
  stamp: Stamp
): Promise<Change<T>> {
  return records.together('rw', [table], async (records) => {
    const now = await one(records, table, id)
    if (now === null) throw new Gone('what was to be changed is not there')
    const changed = await patch(records, table, id, changesSince<Fields<T>>(began, mine, now, settle), stamp)
    if (changed === null) throw new Gone('what was to be changed is not there')
    return changed
  })
}

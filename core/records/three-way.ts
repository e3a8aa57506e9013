/**
 * Two changes of one record that began from the same state, brought together: what only one of them changed is taken from it, whether a
 * field, a field within one, or a row of a list; what both changed alike is that; what both changed otherwise is a conflict with both values.
 */
import { isRow, type Row } from './row.ts'

/** A field that was changed here and elsewhere, each time to something else; undefined: it was taken away. */
export interface Clash {
  /** The names that lead to it: ['money', 'price']. */
  path: string[]
  mine: unknown
  theirs: unknown
}

/** Which value counts where both changed a field; null: neither, the clashes are told. */
export type Settle = 'mine' | 'theirs' | null

export interface Together {
  value: Row
  clashes: Clash[]
}

/** Nested deeper than anything that is saved; past it a value counts as one. */
const DEEPEST = 12

/** What was changed from `began` to `mine`, done to `theirs`. Until a clash is settled the value holds `theirs` there. */
export function together(began: Row, mine: Row, theirs: Row, settle: Settle = null): Together {
  const clashes: Clash[] = []
  const value = rows(began, mine, theirs, [])
  return { value: isRow(value) ? value : theirs, clashes }

  function one(was: unknown, here: unknown, there: unknown, path: string[]): unknown {
    if (same(here, was) || same(here, there)) return there
    if (same(there, was)) return here
    if (path.length < DEEPEST) {
      if (isRow(here) && isRow(there)) return rows(isRow(was) ? was : {}, here, there, path)
      if (Array.isArray(here) && Array.isArray(there)) return lists(Array.isArray(was) ? was : [], here, there, path)
    }
    if (settle === null) clashes.push({ path, mine: here, theirs: there })
    return settle === 'mine' ? here : there
  }

  function rows(was: Row, here: Row, there: Row, path: string[]): Row {
    const names = new Set([...Object.keys(there), ...Object.keys(here)])
    const merged = new Map<string, unknown>()
    for (const name of names) {
      const found = one(own(was, name), own(here, name), own(there, name), [...path, name])
      if (found !== undefined) merged.set(name, found)
    }
    return Object.fromEntries(merged)
  }

  /** Their order, and behind it what was added here. */
  function lists(was: readonly unknown[], here: readonly unknown[], there: readonly unknown[], path: string[]): unknown[] {
    const [began, mine, theirs] = [byKey(was), byKey(here), byKey(there)]
    const keys = new Set([...theirs.keys(), ...mine.keys()])
    return [...keys]
      .map((key) => one(began.get(key), mine.get(key), theirs.get(key), [...path, key]))
      .filter((found) => found !== undefined)
  }
}

const own = (row: Row, name: string): unknown => (Object.hasOwn(row, name) ? row[name] : undefined)

/** The rows of a list by what they are about: an id, a point (of a kind and a fit), a correction’s subject; else what they are. */
function byKey(list: readonly unknown[]): Map<string, unknown> {
  const found = new Map<string, unknown>()
  for (const item of list) {
    const key = keyOf(item)
    // the same twice is two rows
    for (let twice = 0; ; twice++) {
      const its = twice === 0 ? key : `${key} ${twice}`
      if (found.has(its)) continue
      found.set(its, item)
      break
    }
  }
  return found
}

function keyOf(item: unknown): string {
  if (!isRow(item)) return JSON.stringify(item)
  if (typeof item.id === 'string') return item.id
  if (typeof item.quote === 'string') return JSON.stringify([item.start, item.end, item.quote])
  if (typeof item.add === 'string') return `add ${item.add}`
  if (typeof item.point === 'string') return [item.kind, item.fit, item.point].join(' ').trim()
  const [only] = Object.keys(item)
  return Object.keys(item).length === 1 && only !== undefined ? only : JSON.stringify(item)
}

/** Stored values are plain data; their fields may stand in another order. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (Array.isArray(a) && Array.isArray(b)) return a.length === b.length && a.every((item, at) => same(item, b[at]))
  if (!isRow(a) || !isRow(b)) return false
  const names = Object.keys(a)
  return names.length === Object.keys(b).length && names.every((name) => Object.hasOwn(b, name) && same(a[name], b[name]))
}

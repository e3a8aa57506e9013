/**
 * Migration 2. Until then a look and the listing it is kept as had copies of their own of what they share, and each was changed
 * without the other. The look was changed in the panel, so it has the later state of everything but the notes and the figures of
 * money, which could be changed in the wishlist too: there the listing's count, unless the look once had the same and moved on.
 * What a look had instead becomes a step of its undo. The names stand here and not in the schema: a migration never changes.
 */
import { isRow, type Row, type Tables } from './row.ts'

const LOOK_IS_LATER = [
  'address',
  'title',
  'text',
  'textCutFrom',
  'structured',
  'price',
  'images',
  'corrections',
  'answers',
  'personId',
  'fit',
  'favouriteId',
  'aim'
]
const EITHER_IS_LATER = ['notes', 'money']

export function keptLooksAgree(tables: Tables): Tables {
  const { listingsKept = [], looks = [] } = tables
  const listings = new Map<unknown, Row>()
  for (const row of listingsKept) if (isRow(row) && row.deletedAt === null) listings.set(row.id, row)
  // of several looks that are kept as one listing the one changed last speaks
  const speaking = new Map<unknown, Row>()
  for (const look of looks) {
    if (!isRow(look) || look.deletedAt !== null || !listings.has(look.keptId)) continue
    const other = speaking.get(look.keptId)
    if (other === undefined || String(look.updatedAt) > String(other.updatedAt)) speaking.set(look.keptId, look)
  }
  const agreed = new Map<unknown, Row>()
  for (const [id, look] of speaking) agreed.set(id, agreedOf(look, listings.get(id) ?? {}))
  return {
    ...tables,
    listingsKept: listingsKept.map((row) =>
      isRow(row) && agreed.has(row.id) && row.deletedAt === null ? { ...row, ...agreed.get(row.id) } : row
    ),
    looks: looks.map((row) => (isRow(row) && row.deletedAt === null ? brought(row, agreed.get(row.keptId) ?? {}) : row))
  }
}

function agreedOf(look: Row, listing: Row): Row {
  const steps = stepsOf(look)
  const names = Object.keys(look).filter((name) => {
    if (LOOK_IS_LATER.includes(name)) return true
    return EITHER_IS_LATER.includes(name) && steps.some((step) => name in step && same(step[name], listing[name]))
  })
  const ofListing = EITHER_IS_LATER.filter((name) => name in listing && !names.includes(name))
  return { ...only(listing, ofListing), ...only(look, names) }
}

/** The look with what was agreed, and a step of undo for what it had instead. */
function brought(look: Row, agreed: Row): Row {
  const changed = Object.keys(agreed).filter((name) => !same(look[name], agreed[name]))
  if (changed.length === 0) return look
  const drafts = isRow(look.drafts) ? look.drafts : {}
  const halfTyped = only(
    drafts,
    changed.filter((name) => name === 'notes')
  )
  const kept = only(
    drafts,
    Object.keys(drafts).filter((name) => !changed.includes(name))
  )
  return { ...look, ...agreed, drafts: kept, undo: [...stepsOf(look), { ...only(look, changed), ...halfTyped }] }
}

const stepsOf = ({ undo }: Row): Row[] => (Array.isArray(undo) ? undo.filter(isRow) : [])
const only = (row: Row, names: readonly string[]): Row =>
  Object.fromEntries(names.filter((name) => name in row).map((name) => [name, row[name]]))
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)

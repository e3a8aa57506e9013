/** A fresh database for each test, and stamps that count instead of asking a clock. */
import 'fake-indexeddb/auto'
import { openRecords, type Records } from '../../../core/records/database.ts'
import type { SeenPage } from '../../../core/records/looks.ts'
import type { Fields, Stamp } from '../../../core/records/schemas.ts'

/** No other test has a database of this name, whichever modules were brought anew meanwhile. */
export const freshName = (): string => `records-${crypto.randomUUID()}`

export async function freshRecords(name = freshName()): Promise<Records> {
  const opened = await openRecords(name)
  if (!opened.ok) throw new Error(`${opened.problem}: ${opened.detail}`)
  return opened.records
}

/** A stamp a minute after the one before. */
export function clock(device = 'bench'): () => Stamp {
  let minutes = 0
  let ids = 0
  return () => ({
    now: new Date(Date.UTC(2026, 2, 1, 9, minutes++)).toISOString(),
    newId: () => `${device}-${ids++}`,
    device
  })
}

export const WREN: Fields<'people'> = { name: 'Wren', units: 'in', currency: 'GBP', fit: 'regular', means: { level: 3, tailor: false } }
export const owned = (over: Partial<Fields<'garmentsOwned'>> = {}): Fields<'garmentsOwned'> => ({
  personId: 'p',
  name: 'Grey flannels',
  kind: 'trousers',
  measures: [{ point: 'waist', mm: 760, stated: '76' }],
  favourite: false,
  notes: '',
  ...over
})
export const seen = (over: Partial<SeenPage> = {}): SeenPage => ({
  windowId: 1,
  tabId: 10,
  pageAddress: 'https://rail-and-peg.example/item/4',
  address: 'https://rail-and-peg.example/item/4',
  title: 'Charcoal flannel trousers',
  readBy: 'page',
  text: 'Waist 16 in flat',
  structured: [],
  price: null,
  images: [],
  problem: null,
  ...over
})
/** The value, or a test that fails here and not later. */
export function there<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('expected something, found nothing')
  return value
}

/** Looks: what is being judged. One for a page in a tab; what was typed and chosen stays with it, and with the listing it is kept as. */
import type { Reading } from '../reading/reading.ts'
import { type Change, patch, put } from './change.ts'
import type { Records } from './database.ts'
import { changesSince } from './edit.ts'
import { where } from './find.ts'
import { keptAddress, keptImages, keptStructured, keptText, keptTitle, pageAddressOf } from './look-text.ts'
import type { Answer, Fields, Look, LookChoices, LookProblem, Stamp, UndoStep } from './schemas.ts'
import { changeLook, pushed } from './shared-fields.ts'
import type { Settle } from './three-way.ts'

/** What capture found on a page. */
export interface SeenPage {
  windowId: number | null
  tabId: number | null
  /** The address in the browser's bar, and the one the page calls its own. */
  pageAddress: string
  address: string
  title: string
  readBy: Look['readBy']
  text: string
  /** The text's full length where the page held more than was handed over. */
  fullLength?: number
  /** Raw JSON-LD blocks. */
  structured: readonly string[]
  price: Look['price']
  images: readonly string[]
  problem: LookProblem | null
}

const NOTHING_CHOSEN = {
  money: { price: null, postage: null, worth: null },
  corrections: [],
  answers: [],
  notes: '',
  personId: null,
  fit: null,
  favouriteId: null,
  aim: null
} satisfies Partial<LookChoices>

/**
 * Stores what was seen: in the look that this page already has, so that corrections, answers and notes stay, else in a
 * new one. Other looks of the tab are marked as left, the one that was in front in the window as behind.
 */
export async function storeLook(records: Records, seen: SeenPage, stamp: Stamp): Promise<Look> {
  return records.together('rw', ['looks', 'listingsKept'], async (records) => {
    const looks = await looksNear(records, seen)
    const known = lookOf(looks, seen)
    for (const other of looks) {
      if (other.id === known?.id || seen.tabId === null) continue
      const page =
        other.tabId === seen.tabId ? 'navigated' : other.page === 'in-front' && other.windowId === seen.windowId ? 'behind' : other.page
      if (page !== other.page) await patch(records, 'looks', other.id, { page }, stamp)
    }
    if (known === undefined) {
      const fields: Fields<'looks'> = {
        ...placeOf(seen),
        ...toldBy(seen),
        ...NOTHING_CHOSEN,
        capturedAt: stamp.now,
        drafts: {},
        undo: [],
        keptId: null
      }
      return (await put(records, 'looks', fields, stamp)).after
    }
    return (await changeLook(records, known.id, stamp, (look) => readAgain(look, seen, stamp)))?.after ?? known
  })
}

/** The looks that a reading can concern: of its tab, its window and its addresses. Others, with their texts, are not read. */
async function looksNear(records: Records, seen: SeenPage): Promise<Look[]> {
  const keys = {
    tabId: seen.tabId,
    windowId: seen.windowId,
    address: keptAddress(seen.address),
    pageAddress: keptAddress(pageAddressOf(seen.pageAddress))
  }
  const near = new Map<string, Look>()
  for (const [field, value] of Object.entries(keys)) {
    if (value === null || value === '') continue
    for (const look of await where(records, 'looks', field, value)) near.set(look.id, look)
  }
  return [...near.values()]
}

/**
 * The look a page already has: of this tab, else one whose own page is no longer open. The same page means the same address
 * in the bar, or the same own address and title (an own address alone may be stale). A page that hides its address is the
 * same only while its tab has not moved on.
 */
function lookOf(looks: readonly Look[], seen: SeenPage): Look | undefined {
  const own = keptAddress(seen.address)
  const bar = keptAddress(pageAddressOf(seen.pageAddress))
  const same = looks.filter((look) => {
    if (bar === '' && own === '') return look.pageAddress === '' && look.address === '' && look.tabId === seen.tabId && isOpen(look)
    return (bar !== '' && look.pageAddress === bar) || (own !== '' && look.address === own && look.title === keptTitle(seen.title))
  })
  const latest = (a: Look, b: Look): number => (a.updatedAt < b.updatedAt ? 1 : -1)
  const here = same.filter((look) => look.tabId === seen.tabId).sort(latest)
  const free = same.filter((look) => !isOpen(look)).sort(latest)
  return here[0] ?? free[0]
}
const isOpen = (look: Look): boolean => look.page === 'in-front' || look.page === 'behind'

const placeOf = (seen: SeenPage): Pick<Look, 'windowId' | 'tabId' | 'page'> => ({
  windowId: seen.windowId,
  tabId: seen.tabId,
  page: seen.tabId === null ? 'none' : 'in-front'
})

const toldBy = (seen: SeenPage) => ({
  pageAddress: keptAddress(pageAddressOf(seen.pageAddress)),
  address: keptAddress(seen.address),
  title: keptTitle(seen.title),
  ...keptText(seen.text, seen.fullLength),
  structured: keptStructured(seen.structured),
  price: seen.price,
  images: keptImages(seen.images),
  readBy: seen.readBy,
  problem: seen.problem
})

/**
 * What a second reading changes. A page that gives no text now does not take away what is here; a page read whole does not
 * take the place of text that was pasted or picked through the menu; what is replaced can be had back by undo.
 */
function readAgain(known: Look, seen: SeenPage, stamp: Stamp): Partial<Fields<'looks'>> {
  const place = placeOf(seen)
  if (known.text !== '' && seen.problem !== null) return place
  if (known.text !== '' && seen.readBy === 'page' && (known.readBy === 'pasted' || known.readBy === 'menu')) return place
  const told = toldBy(seen)
  const changed = known.text !== '' && told.text !== known.text
  const { address, title, text, textCutFrom, structured, price, images } = known
  const before: UndoStep = { address, title, text, textCutFrom, structured, price, images }
  // a price that was read from the text and kept with it stands as long as the text does
  const priced = changed ? {} : { price: told.price ?? price }
  return { ...place, ...told, ...priced, capturedAt: stamp.now, undo: changed ? pushed(known, before) : known.undo }
}

/** A look without a page, from pasted text. */
export async function pasteNew(records: Records, text: string, windowId: number | null, stamp: Stamp): Promise<Look> {
  const fields: Fields<'looks'> = {
    ...NOTHING_CHOSEN,
    ...keptText(text),
    windowId,
    tabId: null,
    page: 'none',
    pageAddress: '',
    address: '',
    title: '',
    structured: [],
    price: null,
    images: [],
    readBy: 'pasted',
    problem: null,
    capturedAt: stamp.now,
    drafts: {},
    undo: [],
    keptId: null
  }
  return (await put(records, 'looks', fields, stamp)).after
}

/** Text pasted for a look instead of what its page gave; undo brings the other back. */
export async function pasteInto(records: Records, id: string, text: string, stamp: Stamp): Promise<Change<'looks'> | null> {
  return changeLook(records, id, stamp, (look) => ({
    ...keptText(text),
    readBy: 'pasted',
    problem: null,
    undo: pushed(look, { text: look.text, textCutFrom: look.textCutFrom })
  }))
}

/**
 * Sets what the person chose or set right; the earlier choice can be had back with undoChoice. With `began`, how it was when the choice was
 * made: what was changed elsewhere since stays, and a clash is thrown (see edit.ts).
 */
export async function choose(
  records: Records,
  id: string,
  chosen: Partial<LookChoices>,
  stamp: Stamp,
  { began, settle = null }: { began?: Partial<LookChoices>; settle?: Settle } = {}
): Promise<Change<'looks'> | null> {
  return changeLook(records, id, stamp, (look) => {
    const choices = began === undefined ? chosen : { ...earlier(look, chosen), ...changesSince<LookChoices>(began, chosen, look, settle) }
    const before = earlier(look, choices)
    // chosen again as it is (a field left while its figure is being saved): nothing to take back
    const same = Object.entries(choices).every(
      ([name, value]) => JSON.stringify(before[name as keyof LookChoices]) === JSON.stringify(value)
    )
    return { ...choices, undo: same ? look.undo : pushed(look, before) }
  })
}

/**
 * Adds what the seller answered, and what was read of it. A point that the person added by hand gives way to the newer answer
 * about it; both are one step of undo.
 */
export async function addAnswer(
  records: Records,
  id: string,
  answer: Answer,
  read: Reading,
  stamp: Stamp
): Promise<Change<'looks'> | null> {
  const answered = new Set(read.measures.map(({ point }) => point))
  return changeLook(records, id, stamp, (look) => {
    const corrections = look.corrections.filter((one) => !('add' in one && answered.has(one.add)))
    const choices = { answers: [...look.answers, answer], corrections }
    return { ...choices, undo: pushed(look, earlier(look, choices)) }
  })
}

/** Takes the last choice back; null when there is nothing to take back. */
export async function undoChoice(records: Records, id: string, stamp: Stamp): Promise<Change<'looks'> | null> {
  return changeLook(records, id, stamp, (look) => {
    const last = look.undo.at(-1)
    return last === undefined ? null : { ...last, undo: look.undo.slice(0, -1) }
  })
}

/** Keeps text that is typed and not yet taken, so that closing the panel loses nothing; null or '' forgets it. */
export async function keepDraft(
  records: Records,
  id: string,
  field: string,
  typed: string | null,
  stamp: Stamp
): Promise<Change<'looks'> | null> {
  return changeLook(records, id, stamp, (look) => {
    const drafts = { ...look.drafts }
    delete drafts[field]
    if (typed !== null && typed !== '') drafts[field] = typed
    return { drafts }
  })
}

/** What these choices are now. */
function earlier(look: Look, choices: Partial<LookChoices>): Partial<LookChoices> {
  const names = new Set(Object.keys(choices))
  return Object.fromEntries(Object.entries(look).filter(([name]) => names.has(name)))
}

import { browser } from 'wxt/browser'
import type { Records } from '../../core/records/database.ts'
import { type SeenPage, storeLook } from '../../core/records/looks.ts'
import type { Look, LookProblem, Stamp } from '../../core/records/schemas.ts'
import { type PageFound, pageFound } from './page-found.ts'
import { problemOfPage, problemOfRefusal } from './page-problem.ts'

/** A tab as the browser tells it; address and title only where the person's click allows it. */
export interface TabToRead {
  id: number
  windowId: number
  url?: string | undefined
  title?: string | undefined
}

/** Text that was picked through the menu, and the frame it stands in. */
export interface Picked {
  text: string
  frameId?: number | undefined
}

/** Runs the injected script in a tab (in one frame of it); the way a test puts its own in place. */
export type RunScript = (tabId: number, frameId?: number) => Promise<unknown>

const WAIT_MS = 10_000

/** The tab in front in this window, as a popup or a panel asks for it; null where there is none. */
export async function frontTab(): Promise<TabToRead | null> {
  const [tab] = await browser.tabs.query({ active: true, currentWindow: true })
  return tab?.id === undefined ? null : { id: tab.id, windowId: tab.windowId, url: tab.url, title: tab.title }
}

/**
 * Reads the page in a tab (the click that led here grants it) and stores what was found as a look: the same look again
 * when the same page was read before, so that corrections, answers and notes stay. A page that can't be read is a look
 * with a `problem`; only a database that fails throws.
 */
export async function captureTab(
  tab: TabToRead,
  records: Records,
  stamp: Stamp,
  picked: Picked | null = null,
  run: RunScript = inject
): Promise<Look> {
  return storeLook(records, await readTab(tab, picked, run), stamp)
}

/** What a page has, before it is stored: it can be read while the records are still being opened. Never throws. */
export async function readTab(tab: TabToRead, picked: Picked | null = null, run: RunScript = inject): Promise<SeenPage> {
  const outcome = await found(tab, run)
  const text = picked === null ? null : await pickedText(tab, picked, outcome, run)
  return seenPage(tab, outcome, text)
}

type Outcome = { found: PageFound; problem: LookProblem | null } | { found: null; problem: LookProblem }

async function found(tab: TabToRead, run: RunScript): Promise<Outcome> {
  try {
    const parsed = pageFound.safeParse(await run(tab.id))
    if (!parsed.success) return { found: null, problem: problemOfRefusal('', tab.url ?? '') }
    return { found: parsed.data, problem: problemOfPage(parsed.data) }
  } catch (error) {
    return { found: null, problem: problemOfRefusal(error instanceof Error ? error.message : String(error), tab.url ?? '') }
  }
}

/** The menu hands over its text without line breaks; the same selection read from the page or the frame has them. */
async function pickedText(tab: TabToRead, picked: Picked, outcome: Outcome, run: RunScript): Promise<string> {
  const bare = (text: string): string => text.replace(/\s+/g, '')
  const same = (text: string | undefined): text is string => text !== undefined && text !== '' && bare(text) === bare(picked.text)
  if (same(outcome.found?.selection)) return outcome.found.selection
  if (picked.frameId === undefined || picked.frameId === 0) return picked.text
  try {
    const parsed = pageFound.safeParse(await run(tab.id, picked.frameId))
    return parsed.success && same(parsed.data.selection) ? parsed.data.selection : picked.text
  } catch {
    // a frame of another origin: what the menu gave has to do
    return picked.text
  }
}

function seenPage(tab: TabToRead, { found, problem }: Outcome, picked: string | null): SeenPage {
  const place = { windowId: tab.windowId, tabId: tab.id }
  const page = {
    pageAddress: found?.pageAddress ?? tab.url ?? '',
    address: found?.address ?? tab.url ?? '',
    title: found?.title || (tab.title ?? ''),
    structured: found?.structured ?? [],
    price: found?.price ?? null,
    images: found?.images ?? []
  }
  if (picked !== null) return { ...place, ...page, readBy: 'menu', text: picked, problem: null }
  if (found === null || problem !== null) return { ...place, ...page, readBy: 'page', text: '', problem }
  if (found.selection !== '') return { ...place, ...page, readBy: 'selection', text: found.selection, problem: null }
  return { ...place, ...page, readBy: 'page', text: found.text, fullLength: found.fullLength, problem: null }
}

/** The injected script's answer; a page that never answers is a failure, not a wait without end. */
async function inject(tabId: number, frameId?: number): Promise<unknown> {
  const target = frameId === undefined ? { tabId } : { tabId, frameIds: [frameId] }
  const answer = browser.scripting.executeScript({ target, files: ['/capture.js'], injectImmediately: true })
  let timer: ReturnType<typeof setTimeout> | undefined
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('the page did not answer')), WAIT_MS)
  })
  try {
    const [first] = await Promise.race([answer, late])
    return first?.result
  } finally {
    clearTimeout(timer)
  }
}

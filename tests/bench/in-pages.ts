/** What the bench of the pages does in a page: filling the database, watching tasks and frames, and typing. */
import type { Page } from 'playwright-core'
import type { Rig } from '../browser/rig/rig.ts'
import type { KeptAnswers, KeptRows } from './kept-finds.ts'

const DATABASE = 'seam-reckoner'
const SLICE = 500

/** A page of the extension that tells when its first row stood, and its longest task. */
export async function openedAt(rig: Rig, path: string): Promise<Page> {
  const page = await rig.context.newPage()
  await page.setViewportSize({ width: 1280, height: 800 })
  // the loader that runs this file writes the name of each function beside it, by one of its own that no page has
  await page.addInitScript({ content: 'globalThis.__name = (its) => its' })
  await page.addInitScript(() => {
    const seen: { firstRow: number | null; longest: number } = { firstRow: null, longest: 0 }
    Object.assign(window, { seen })
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) seen.longest = Math.max(seen.longest, duration)
    }).observe({ type: 'longtask', buffered: true })
    new MutationObserver((_, observer) => {
      if (document.querySelector('tr[data-listing] .wr-title') === null) return
      observer.disconnect()
      requestAnimationFrame(() => setTimeout(() => (seen.firstRow = performance.now())))
    }).observe(document, { childList: true, subtree: true })
  })
  page.setDefaultTimeout(240_000)
  await page.goto(rig.address(path), { waitUntil: 'commit' })
  return page
}

/** From the start of the page until its first row was painted, ms. */
export async function firstRow(page: Page): Promise<number> {
  const handle = await page.waitForFunction(() => (window as unknown as { seen: { firstRow: number | null } }).seen.firstRow, null, {
    timeout: 120_000
  })
  return Number(await handle.jsonValue())
}

/** The longest task since it was asked last, ms; 50 is the least that a browser tells of. */
export const watched = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const { seen } = window as unknown as { seen: { longest: number } }
    const { longest } = seen
    seen.longest = 0
    return longest
  })

/** A task that the browser told of: when it began, how long it took, and how long of that it had a processor, microseconds. */
interface Traced {
  pid: number
  tid: number
  name: string
  ph: string
  ts: number
  dur: number
  tdur: number
}
const isTraced = (event: object): event is object & Traced => 'pid' in event && 'tid' in event && 'ts' in event && 'name' in event
const MARK = 'watched-from-here'
/** What the browser calls a task of any thread. */
const TASK = 'RunTask'

/**
 * The longest task of a page while something goes on, or from where the page puts the mark on: as long as it took, and as long as it had a
 * processor. On a machine that has much else to do a short task takes long, for it waits; what it asks of a processor does not depend on that.
 */
export async function longestTask(page: Page, act: () => Promise<unknown>): Promise<{ ms: number; busyMs: number }> {
  const session = await page.context().newCDPSession(page)
  const events: Traced[] = []
  session.on('Tracing.dataCollected', ({ value }) => {
    for (const event of value) if (isTraced(event) && (event.name === MARK || event.name === TASK)) events.push(event)
  })
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['disabled-by-default-devtools.timeline', 'blink.user_timing'] }
  })
  await page.evaluate((mark) => performance.mark(mark), MARK)
  await act()
  const told = new Promise((done) => session.once('Tracing.tracingComplete', done))
  await session.send('Tracing.end')
  await told
  await session.detach()
  const marked = events.filter(({ name }) => name === MARK).toSorted((a, b) => a.ts - b.ts)
  const mark = marked.at(-1)
  if (mark === undefined) throw new Error('the page told of no mark')
  const tasks = events.filter(
    ({ pid, tid, ph, name, ts }) => pid === mark.pid && tid === mark.tid && ph === 'X' && name === TASK && ts > mark.ts
  )
  if (tasks.length === 0) throw new Error('the browser told of no task')
  return { ms: Math.max(...tasks.map(({ dur }) => dur)) / 1000, busyMs: Math.max(...tasks.map(({ tdur }) => tdur ?? 0)) / 1000 }
}

/** The longest frame while the page is scrolled for a second, a screen at a time, ms. */
export const scrolled = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const frames: number[] = []
    let last = performance.now()
    for (let n = 0; n < 60; n++) {
      window.scrollBy(0, n % 20 === 19 ? -4000 : 700)
      await new Promise((done) => requestAnimationFrame(done))
      const now = performance.now()
      frames.push(now - last)
      last = now
    }
    window.scrollTo(0, 0)
    return Math.max(...frames.slice(1))
  })

/** The median time from a change in a tool over the list until it is painted, ms. */
export const sampled = (
  page: Page,
  times: number,
  how: 'select' | 'input' | 'head',
  label: string,
  values: readonly string[]
): Promise<number> =>
  page.evaluate(
    async ([times, how, label, values]) => {
      const labelled = [...document.querySelectorAll('label')].find((one) => one.textContent?.trim().startsWith(label))
      const field = labelled === undefined ? null : document.getElementById(labelled.htmlFor)
      const head = [...document.querySelectorAll<HTMLElement>('.wr-sort')].find((one) => one.textContent?.trim() === label)
      const taken: number[] = []
      for (let n = 0; n < times * 2; n++) {
        await new Promise((done) => setTimeout(done, 200))
        const began = performance.now()
        if (how === 'head') head?.click()
        else if (field instanceof HTMLInputElement || field instanceof HTMLSelectElement) {
          field.value = values[n % values.length] ?? ''
          field.dispatchEvent(new Event(how === 'select' ? 'change' : 'input', { bubbles: true }))
        } else throw new Error(`no field ${label}`)
        await new Promise((done) => requestAnimationFrame(() => setTimeout(done)))
        taken.push(performance.now() - began)
      }
      return taken.sort((a, b) => a - b)[taken.length >> 1] ?? Number.NaN
    },
    [times, how, label, values] as const
  )

/** Types a figure into the field that is open, and times the changed answer and its chance, ms from the key. */
export async function keyed(page: Page, typed: string): Promise<{ verdict: number; chance: number }> {
  const field = page.locator('fieldset.correct input[type=text]').first()
  await field.focus()
  await field.selectText()
  await page.evaluate(() => {
    const answer = () => document.querySelector('section.answer')?.textContent ?? ''
    const before = answer()
    const times: { verdict: number | null; chance: number | null } = { verdict: null, chance: null }
    Object.assign(window, { times })
    let began = 0
    addEventListener('input', (event) => (began = event.timeStamp), { capture: true, once: true })
    const observer = new MutationObserver(() => {
      if (began === 0 || answer() === before) return
      const isWhole = !/working it out/i.test(answer())
      if (times.verdict === null) requestAnimationFrame(() => setTimeout(() => (times.verdict ??= performance.now() - began)))
      if (!isWhole) return
      observer.disconnect()
      requestAnimationFrame(() => setTimeout(() => (times.chance = performance.now() - began)))
    })
    observer.observe(document.body, { childList: true, subtree: true, characterData: true })
  })
  await page.keyboard.insertText(typed)
  const handle = await page.waitForFunction(() => {
    const { times } = window as unknown as { times: { verdict: number | null; chance: number | null } }
    return times.verdict !== null && times.chance !== null ? times : null
  })
  const times = await handle.jsonValue()
  await page.waitForTimeout(1200)
  return { verdict: times?.verdict ?? Number.NaN, chance: times?.chance ?? Number.NaN }
}

/** Puts rows straight into the tables of a database of its own or the extension's, a slice at a time; gives the time, ms. */
const putInto = (page: Page, name: string, fresh: boolean, tables: Readonly<Record<string, readonly object[]>>): Promise<number> =>
  page.evaluate(
    async ([name, fresh, tables]) => {
      const done = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result)
          request.onerror = () => reject(request.error)
        })
      const request = indexedDB.open(name)
      request.onupgradeneeded = () => {
        if (!fresh) throw new Error('the database is not there yet')
        for (const table of Object.keys(tables)) request.result.createObjectStore(table, { keyPath: 'id' })
        request.result.objectStoreNames.contains('listingsKept') &&
          request.transaction?.objectStore('listingsKept').createIndex('address', 'address')
      }
      const db = await done(request)
      const began = performance.now()
      // a version before this has fewer tables
      const there = Object.entries(tables).filter(([table]) => db.objectStoreNames.contains(table))
      if (there.length === 0) return 0
      const transaction = db.transaction(
        there.map(([table]) => table),
        'readwrite',
        { durability: 'strict' }
      )
      for (const [table, rows] of there) for (const row of rows) transaction.objectStore(table).put(row)
      await new Promise((resolve, reject) => {
        transaction.oncomplete = resolve
        transaction.onerror = () => reject(transaction.error)
      })
      const taken = performance.now() - began
      db.close()
      return taken
    },
    [name, fresh, tables] as const
  )

/** Fills the extension's own database, which it has made before. */
export async function fillWith(rig: Rig, rows: KeptRows, { verdicts, answers }: KeptAnswers): Promise<void> {
  const page = await openedAt(rig, 'workroom.html#help')
  await page.getByRole('heading', { level: 1 }).waitFor()
  const { listingsKept, ...others } = rows
  for (let at = 0; at < listingsKept.length; at += SLICE)
    await putInto(page, DATABASE, false, { listingsKept: listingsKept.slice(at, at + SLICE) })
  await putInto(page, DATABASE, false, { ...others })
  for (let at = 0; at < verdicts.length; at += SLICE)
    await putInto(page, DATABASE, false, { verdicts: verdicts.slice(at, at + SLICE), answers: answers.slice(at, at + SLICE) })
  // put past the program, as by a version before there were summaries: they are made when the workroom is opened
  await putInto(page, DATABASE, false, { local: [{ key: 'summaries' }] })
  await page.close()
}

/** The same rows written bare into an empty database, in one transaction, ms. */
export async function rawPuts(page: Page, rows: KeptRows): Promise<number> {
  const taken = await putInto(page, 'bare', true, { ...rows })
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        const request = indexedDB.deleteDatabase('bare')
        request.onsuccess = resolve
        request.onerror = resolve
      })
  )
  return taken
}

/** Loads the rows as a backup file: from the file until the plan stands, and from the press until it is said to be there, ms. */
export async function backupOf(page: Page, tables: KeptRows): Promise<{ planned: number; brought: number; longest: number }> {
  const file = { kind: 'seam-reckoner-records', version: 6, savedAt: '', device: 'bench', tables, setAside: [] }
  await page.evaluate((mark) => {
    const times = { chosen: 0, planned: 0, pressed: 0, brought: 0, longest: 0 }
    new PerformanceObserver((list) => {
      for (const { startTime, duration } of list.getEntries())
        if (times.chosen > 0 && startTime >= times.chosen) times.longest = Math.max(times.longest, duration)
    }).observe({ type: 'longtask' })
    Object.assign(window, { times })
    const chosen = () => {
      performance.mark(mark)
      times.chosen = performance.now()
    }
    addEventListener('change', chosen, { capture: true })
    addEventListener('click', (event) => (times.pressed = event.timeStamp), { capture: true })
    new MutationObserver(() => {
      const now = performance.now()
      if (times.planned === 0 && document.querySelector('.part[role=status] .btn.main') !== null) times.planned = now
      if (times.brought === 0 && times.pressed > 0 && /[\d,]+ added, /.test(document.body.textContent ?? '')) times.brought = now
    }).observe(document.body, { childList: true, subtree: true, characterData: true })
  }, MARK)
  const buffer = Buffer.from(JSON.stringify(file))
  await page.locator('input[type=file]').setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer })
  const bring = page.locator('.part[role=status] .btn.main')
  await bring.waitFor({ timeout: 120_000 })
  await bring.click()
  await page.waitForFunction(() => (window as unknown as { times: { brought: number } }).times.brought > 0, null, { timeout: 180_000 })
  return page.evaluate(() => {
    const { times } = window as unknown as { times: Record<'chosen' | 'planned' | 'pressed' | 'brought' | 'longest', number> }
    return { planned: times.planned - times.chosen, brought: times.brought - times.pressed, longest: times.longest }
  })
}

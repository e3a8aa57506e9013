/**
 * The pages of the built extension in a real browser, with few finds and with many: how soon the first row of the wishlist stands, how long frames
 * take while it is scrolled and filtered, the longest task, the heap; a backup loaded beside the same rows written bare; and how soon a typed
 * figure changes the answer. Compare ratios: single times depend on the machine. Rows go into tests/bench/results.json.
 *
 *   npx tsx tests/bench/pages.ts                  (npm run bench; the extension must be built)
 *   FINDS=10,1000 EXTENSION=FOLDER npx tsx tests/bench/pages.ts
 */
import type { CDPSession, Page } from 'playwright-core'
import { engineMark } from '../../entrypoints/companion/engine.mjs'
import { Rig } from '../browser/rig/rig.ts'
import { backupOf, fillWith, firstRow, keyed, longestTask, openedAt, rawPuts, sampled, scrolled, watched } from './in-pages.ts'
import { keptAnswers, keptFinds } from './kept-finds.ts'
import { median, telling, writeResults } from './results.ts'

const COUNTS = (process.env.FINDS ?? '10,1000,10000').split(',').map(Number)
const TIMES = 5

/** A longest task: as long as it took, and as long as one had a processor, ms. */
type Longest = Awaited<ReturnType<typeof longestTask>>

interface Wishlist {
  firstRowMs: number
  frameMs: number
  filterMs: number
  findMs: number
  orderMs: number
  longestMs: number
  heapMb: number
}

/** Times of the wishlist with so many finds, each the median of a few. */
async function wishlistOf(count: number): Promise<{ wishlist: Wishlist; typed: Record<string, number>; answering: Longest }> {
  const rig = await Rig.start(extension())
  try {
    const finds = keptFinds(count)
    await fillWith(rig, finds, keptAnswers(finds, engineMark()))
    await settledOnce(rig)
    const first: number[] = []
    let page: Page | null = null
    for (let n = 0; n < TIMES; n++) {
      await page?.close()
      page = await openedAt(rig, 'workroom.html#wishlist')
      first.push(await firstRow(page))
    }
    if (page === null) throw new Error('no page was opened')
    const wishlist = { firstRowMs: median(first), ...(await drivenBy(page)) }
    await page.close()
    const typed = await typedIn(rig)
    return { wishlist, typed, answering: await answeringOf(rig) }
  } finally {
    await rig.close()
  }
}

/** What is made once for all is made before anything is timed. */
async function settledOnce(rig: Rig): Promise<void> {
  const page = await openedAt(rig, 'workroom.html#wishlist')
  await firstRow(page)
  await page.waitForFunction(() => !/Getting the list ready/.test(document.body.textContent ?? ''))
  await page.waitForTimeout(1000)
  await page.close()
}

async function drivenBy(page: Page): Promise<Omit<Wishlist, 'firstRowMs'>> {
  await page.waitForTimeout(2500)
  const longestMs = await watched(page)
  const frameMs = await scrolled(page)
  const filterMs = await sampled(page, TIMES, 'select', 'Status', ['asked', 'any'])
  const findMs = await sampled(page, TIMES, 'input', 'Find', ['corduroy', ''])
  const orderMs = await sampled(page, TIMES, 'head', 'Garment', [])
  return { longestMs, frameMs, filterMs, findMs, orderMs, heapMb: await heapOf(page) }
}

async function heapOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page)
  await session.send('HeapProfiler.enable')
  await session.send('HeapProfiler.collectGarbage')
  await session.send('Performance.enable')
  const { metrics } = await session.send('Performance.getMetrics')
  await session.detach()
  return (metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? Number.NaN) / 1e6
}

/** From a typed figure to the changed answer, and to its chance; plain, and on a processor of a quarter of the speed. */
async function typedIn(rig: Rig): Promise<Record<string, number>> {
  const page = await openedAt(rig, 'workroom.html#wishlist/l-000000')
  const open = page.getByRole('button', { name: /^Correct / }).first()
  await open.waitFor()
  await open.click()
  await page.waitForTimeout(1500)
  const session: CDPSession = await page.context().newCDPSession(page)
  const taken: Record<string, number> = {}
  for (const rate of [1, 4]) {
    await session.send('Emulation.setCPUThrottlingRate', { rate })
    const all: { verdict: number; chance: number }[] = []
    for (let n = 0; n < TIMES * 2; n++) all.push(await keyed(page, n % 2 === 0 ? '35' : '44'))
    taken[`verdict ${rate}`] = median(all.map(({ verdict }) => verdict))
    taken[`chance ${rate}`] = median(all.map(({ chance }) => chance))
  }
  await page.close()
  return taken
}

/** A backup of so many finds brought into an empty workroom, from the press to the word that it is there; beside the same rows written bare. */
async function importOf(count: number): Promise<{ plannedMs: number; broughtMs: number; rawMs: number; longest: Longest }> {
  const rows = keptFinds(count)
  const taken: { planned: number; brought: number }[] = []
  const bare: number[] = []
  let longest: Longest = { ms: Number.NaN, busyMs: Number.NaN }
  // the last is watched task by task, and not timed
  for (let n = 0; n <= 3; n++) {
    const rig = await Rig.start(extension())
    try {
      const page = await openedAt(rig, 'workroom.html#backup')
      await page.getByRole('heading', { level: 1 }).waitFor()
      if (n === 3) {
        longest = await longestTask(page, () => backupOf(page, rows).then(() => page.waitForTimeout(5000)))
        break
      }
      for (let turn = 0; turn < 3; turn++) bare.push(await rawPuts(page, rows))
      taken.push(await backupOf(page, rows))
    } finally {
      await rig.close()
    }
  }
  const of = (what: 'planned' | 'brought') => median(taken.map((one) => one[what]))
  return { plannedMs: of('planned'), broughtMs: of('brought'), rawMs: median(bare), longest }
}

/** The longest task while answers are worked out anew: the body has changed, so that every one is stale. Only for what is built here. */
async function answeringOf(rig: Rig): Promise<Longest> {
  const body = await openedAt(rig, 'workroom.html#body')
  await body.getByRole('textbox', { name: 'Hip', exact: true }).fill('103')
  await body.keyboard.press('Tab')
  await body.getByText('Hip: 103 cm saved.').waitFor()
  await body.close()
  const page = await openedAt(rig, 'workroom.html#wishlist')
  await firstRow(page)
  await page.waitForTimeout(4000)
  const longest = await longestTask(page, () => page.waitForTimeout(6000))
  await page.close()
  return longest
}

const extension = () => (process.env.EXTENSION === undefined ? {} : { extension: process.env.EXTENSION })

const { rows, tell } = telling()

const tellLongest = (what: string, { ms, busyMs }: Longest): void => {
  tell(`${what}, longest task`, ms, 'ms', ms / 50, '50 ms')
  tell(`${what}, longest that a task had a processor`, busyMs, 'ms', busyMs / 50, '50 ms')
}

let few: Wishlist | null = null
for (const count of COUNTS) {
  const { wishlist, typed, answering } = await wishlistOf(count)
  const of = `${count.toLocaleString('en')} finds`
  const beside = (what: keyof Wishlist): [number | null, string | null] =>
    few === null ? [null, null] : [wishlist[what] / few[what], `with ${COUNTS[0]}`]
  tell(`wishlist, ${of}: first row`, wishlist.firstRowMs, 'ms', ...beside('firstRowMs'))
  tell(`wishlist, ${of}: longest frame while scrolled`, wishlist.frameMs, 'ms', ...beside('frameMs'))
  tell(`wishlist, ${of}: filter by status`, wishlist.filterMs, 'ms', ...beside('filterMs'))
  tell(`wishlist, ${of}: find a word`, wishlist.findMs, 'ms', ...beside('findMs'))
  tell(`wishlist, ${of}: order by title`, wishlist.orderMs, 'ms', ...beside('orderMs'))
  tell(`wishlist, ${of}: longest task while open`, wishlist.longestMs, 'ms', wishlist.longestMs / 50, '50 ms')
  tellLongest(`wishlist, ${of}: while all answers are worked out anew`, answering)
  tell(`wishlist, ${of}: heap`, wishlist.heapMb, 'MB', ...beside('heapMb'))
  for (const rate of [1, 4]) {
    tell(
      `panel, ${of}: key to verdict at ${rate} × slowdown`,
      typed[`verdict ${rate}`] ?? Number.NaN,
      'ms',
      (typed[`verdict ${rate}`] ?? 0) / 100,
      '100 ms'
    )
    tell(`panel, ${of}: key to chance at ${rate} × slowdown`, typed[`chance ${rate}`] ?? Number.NaN, 'ms')
  }
  few ??= wishlist
}
const most = Math.max(...COUNTS)
const loaded = await importOf(most)
const AGAINST = 'the same rows put bare'
tell(`backup of ${most.toLocaleString('en')} finds, brought in`, loaded.broughtMs, 'ms', loaded.broughtMs / loaded.rawMs, AGAINST)
tell(`the same with its preview`, loaded.plannedMs + loaded.broughtMs, 'ms', (loaded.plannedMs + loaded.broughtMs) / loaded.rawMs, AGAINST)
tellLongest('the same', loaded.longest)
if (process.env.EXTENSION === undefined) writeResults('pages', rows)

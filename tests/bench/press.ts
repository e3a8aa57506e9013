/**
 * From a press of the toolbar button to the painted verdict, beside a popup of the same extension that draws two headings with Preact: the first
 * time in a browser, and later; plain, and on a processor of a quarter of the speed. Compare ratios. Rows go into tests/bench/results.json.
 *
 *   npx tsx tests/bench/press.ts                  (npm run bench; the extension must be built)
 */

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { BUILT } from '../../entrypoints/companion/places.mjs'
import { openShop } from '../browser/rig/shop.ts'
import { introduce } from '../browser/rig/workroom.ts'
import { emptyPopup, Presses } from './pressed.ts'
import { median, telling, writeResults } from './results.ts'

const TIMES = Number(process.env.TIMES ?? 9)
const FIRST_TIMES = Number(process.env.FIRST ?? 3)

const shop = await openShop()
const empty = await emptyPopup()
const first: Record<'ours' | 'empty', number[]> = { ours: [], empty: [] }
const later = new Map([1, 4].map((rate) => [rate, { ours: [] as number[], empty: [] as number[] }]))

for (let n = 0; n < FIRST_TIMES; n++) {
  const ours = await Presses.start()
  const beside = await Presses.start({ extension: empty })
  try {
    await introduce(ours.rig)
    const pages = [
      await ours.rig.tab(shop.item('charcoal-wool-trousers')),
      await beside.rig.tab(shop.item('charcoal-wool-trousers'))
    ] as const
    first.empty.push(await beside.press(pages[1], 1))
    first.ours.push(await ours.press(pages[0], 1))
    if (n > 0) continue
    for (const [rate, times] of later)
      for (let k = 0; k < TIMES; k++) {
        times.empty.push(await beside.press(pages[1], rate))
        times.ours.push(await ours.press(pages[0], rate))
      }
  } finally {
    await ours.close()
    await beside.close()
  }
}
await shop.close()

const { rows, tell } = telling()
const beside = (name: string, { ours, empty }: { ours: number[]; empty: number[] }) =>
  tell(name, median(ours), 'ms', median(ours) / median(empty), 'an empty popup')
beside('press to verdict, the first time', first)
for (const [rate, times] of later) beside(`press to verdict, later, at ${rate} × slowdown`, times)

/** What a page loads before its verdict: its scripts and what they import at once, gzipped as a file each. */
function weightOf(page: string): number {
  const seen = new Set<string>()
  const follow = (file: string): void => {
    if (seen.has(file)) return
    seen.add(file)
    for (const [, name] of readFileSync(join(BUILT.chrome, file), 'utf8').matchAll(/(?:import|from)\s*["']\.{1,2}\/([\w./-]+\.js)["']/g))
      if (name !== undefined) follow(name.startsWith('chunks/') ? name : `chunks/${name}`)
  }
  for (const [, name] of readFileSync(join(BUILT.chrome, page), 'utf8').matchAll(/(?:src|href)="\/([\w./-]+\.js)"/g))
    if (name !== undefined) follow(name)
  return [...seen].reduce((sum, file) => sum + gzipSync(readFileSync(join(BUILT.chrome, file)), { level: 9 }).length, 0) / 1000
}
for (const page of ['popup.html', 'sidepanel.html', 'workroom.html']) tell(`scripts of ${page}, gzipped`, weightOf(page), 'kB')
writeResults('press', rows)

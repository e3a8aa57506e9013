/**
 * Every page in every state, as pictures to look at: narrow to wide, light, dark, forced colours, text twice as large, in one language; and beside them
 * what a machine can tell (screen-checks.ts). Run by hand on the built extension:
 *
 *   npx tsx tests/browser/pictures/every-screen.ts FOLDER en            (or de)
 *   npx tsx tests/browser/pictures/every-screen.ts FOLDER de panel      (the states whose names begin so)
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { loadWords } from '../../../core/words/languages.ts'
import { listingPage, serveListings } from '../rig/listing-pages.ts'
import { Rig } from '../rig/rig.ts'
import { type Picture, sheetOf } from './contact-sheets.ts'
import { axeFaults, layoutFaults, wordFaults } from './screen-checks.ts'
import { LISTINGS } from './screen-seeds.ts'
import { type Drive, type Language, STATES, type State } from './screen-states.ts'

/** How long to wait for what a state needs, ms. */
const PATIENCE_MS = 30_000

interface Mode {
  name: string
  widths: Record<State['surface'], number[]>
  dark?: true
  forced?: true
  /** Text so many times as large. */
  text?: number
}
const WIDTHS = { popup: [320, 360, 380], panel: [320, 360, 400], workroom: [320, 360, 400, 1280] }
const COLOURED = { popup: [380], panel: [360], workroom: [320, 1280] }
const MODES: Mode[] = [
  { name: 'light', widths: WIDTHS },
  { name: 'text200', widths: { popup: [380], panel: [400], workroom: [400, 1280] }, text: 2 },
  // what is laid out is the same in every colour: narrow and wide are enough
  { name: 'dark', widths: COLOURED, dark: true },
  { name: 'forced', widths: COLOURED, forced: true }
]

const [, , folder, language = 'en', begins = ''] = process.argv
if (folder === undefined || (language !== 'en' && language !== 'de')) {
  console.error('Say where the pictures go and the language: every-screen.ts FOLDER en')
  process.exit(2)
}

/** What the loader puts around functions with a name; a page has none. */
const LOADERS_OWN = 'globalThis.__name ??= (made) => made'

async function setUp(page: Page, mode: Mode, width: number, surface: State['surface']): Promise<void> {
  await page.evaluate(LOADERS_OWN)
  await page.emulateMedia({ colorScheme: mode.dark ? 'dark' : 'light', forcedColors: mode.forced ? 'active' : 'none' })
  if (surface === 'popup') await page.evaluate((px) => document.body.style.setProperty('width', `${px}px`), width)
  else await page.setViewportSize({ width, height: 800 })
  await page.evaluate(
    (share) => document.documentElement.style.setProperty('font-size', share === 1 ? '' : `${share * 100}%`),
    mode.text ?? 1
  )
  await page.waitForTimeout(60)
}

/** One state in every mode; gives the pictures, and tells what is wrong. */
async function take(page: Page, { name, surface }: State, tell: (fault: string) => void): Promise<Record<string, Picture[]>> {
  const taken: Record<string, Picture[]> = {}
  for (const mode of MODES) {
    for (const width of mode.widths[surface]) {
      await setUp(page, mode, width, surface)
      const file = join(folder as string, language, `${name}-${mode.name}-${width}.png`)
      await page.screenshot({ path: file, fullPage: true })
      taken[mode.name] = [...(taken[mode.name] ?? []), { name: `${name} ${mode.name} ${width}`, file, width }]
      if (!mode.dark && !mode.forced) for (const fault of await layoutFaults(page)) tell(`${mode.name} ${width}: ${fault}`)
      if (width === mode.widths[surface][0] && mode.name === 'light') for (const fault of await wordFaults(page, language)) tell(fault)
      // the same words in both, so that each language has its colours looked at
      if (width === mode.widths[surface].at(-1) && mode.name === (language === 'en' ? 'light' : 'dark'))
        for (const fault of await axeFaults(page)) tell(`${mode.name}: ${fault}`)
    }
  }
  await setUp(page, MODES[0] as Mode, WIDTHS[surface].at(-1) ?? 380, surface)
  return taken
}

async function main(language: Language): Promise<void> {
  mkdirSync(join(folder as string, language), { recursive: true })
  const pages = await serveListings((page) => {
    const [name = '', by] = page.split('-')
    const listing = LISTINGS[name]?.[by === 'en' || by === 'de' ? by : language]
    return listing === undefined ? undefined : listingPage(listing, language)
  })
  await loadWords(language)
  const rig = await Rig.start(language === 'de' ? { language: 'de' } : {})
  const drive: Drive = { rig, language, listing: pages.address, panel: null, room: null }
  const faults: string[] = []
  const tell =
    ({ name }: State) =>
    (fault: string): void => {
      faults.push(`${name}: ${fault}`)
      console.info(`  ${faults.at(-1)}`)
    }
  rig.context.setDefaultTimeout(PATIENCE_MS)
  try {
    for (const state of STATES) {
      const isWanted = state.name.startsWith(begins)
      if (!isWanted && state.leads !== true) continue
      try {
        const page = await state.open(drive)
        if (!isWanted) continue
        const taken = await take(page, state, tell(state))
        const small = state.surface !== 'workroom'
        const to = join(folder as string, `${language}-${state.name}.png`)
        await sheetOf(rig.context, Object.values(taken).flat(), to, { scale: small ? 0.7 : 0.5, across: small ? 1600 : 1700 })
        console.info(`${state.name}`)
      } catch (error) {
        tell(state)(`not taken: ${error instanceof Error ? error.message.slice(0, 300) : error}`)
      }
    }
  } finally {
    await rig.close()
    await pages.close()
  }
  writeFileSync(join(folder as string, `faults-${language}${begins}.txt`), `${faults.join('\n')}\n`)
  console.info(`${faults.length} faults`)
}
main(language).catch((error) => {
  console.error(error)
  process.exitCode = 1
})

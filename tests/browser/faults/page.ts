/** The workroom as a page of its own, in a browser that can be killed at any moment and is started again with what it had on its disk. */
import { rmSync } from 'node:fs'
import { type BrowserContext, chromium, type Page } from 'playwright-core'
import { build } from 'vite'
import { foundChromiums, QUIET_FLAGS } from '../../../entrypoints/companion/chromium.mjs'
import { inRoot } from '../../../entrypoints/companion/places.mjs'
import { filesOf, portOf, serve, stop } from '../../../entrypoints/companion/serve.mjs'
import { freshFolder } from '../rig/rig.ts'

const DATABASE = 'seam-reckoner'

/** Builds the workroom into a folder of its own; the control build answers before it commits. */
export async function built(control: boolean): Promise<string> {
  const folder = freshFolder(control ? 'control' : 'workroom')
  const early = inRoot('tests/browser/faults/early.ts')
  await build({
    configFile: inRoot('entrypoints/companion/workroom.vite.config.ts'),
    logLevel: 'error',
    build: { outDir: folder, emptyOutDir: true },
    plugins: control
      ? [{ name: 'control', enforce: 'pre', resolveId: (source) => (source.endsWith('core/records/in-one-go.ts') ? early : null) }]
      : []
  })
  return folder
}

export class KillablePage {
  readonly page: Page
  /** What the page said was saved, in its order. */
  readonly acknowledged: string[]
  private readonly context: BrowserContext
  private readonly pid: number

  private constructor(own: { page: Page; acknowledged: string[]; context: BrowserContext; pid: number }) {
    this.page = own.page
    this.acknowledged = own.acknowledged
    this.context = own.context
    this.pid = own.pid
  }

  /** `onSaved` is called with each sentence that says so, as soon as the page shows it. */
  static async open(profile: string, address: string, onSaved: (said: string) => void = () => undefined): Promise<KillablePage> {
    const [executablePath] = await foundChromiums()
    if (executablePath === undefined) throw new Error('No Chromium was found: run npm test once, it installs one.')
    const context = await chromium.launchPersistentContext(profile, {
      executablePath,
      headless: true,
      args: QUIET_FLAGS,
      serviceWorkers: 'block'
    })
    const session = await context.browser()?.newBrowserCDPSession()
    const processes = (await session?.send('SystemInfo.getProcessInfo'))?.processInfo ?? []
    const pid = processes.find(({ type }) => type === 'browser')?.id
    if (pid === undefined) throw new Error('The browser does not tell its process.')
    const acknowledged: string[] = []
    await context.exposeFunction('savedIsSaid', (said: string) => {
      acknowledged.push(said)
      onSaved(said)
    })
    await context.addInitScript(WATCHED)
    const page = await context.newPage()
    await page.goto(address)
    await page.getByRole('heading', { level: 1 }).waitFor()
    return new KillablePage({ page, acknowledged, context, pid })
  }

  /** The process is ended at once, as a crash would; nothing is asked of the page. */
  kill(): void {
    try {
      process.kill(this.pid, 'SIGKILL')
    } catch {
      // it has ended already
    }
  }
  /** Waits until the killed browser is gone. */
  async gone(): Promise<void> {
    await this.context.close().catch(() => undefined)
    for (;;) {
      try {
        process.kill(this.pid, 0)
      } catch {
        return
      }
      await new Promise((done) => setTimeout(done, 20))
    }
  }
  close = (): Promise<void> => this.context.close()

  /** Everything in a table, as it stands in the database, asked past the program. */
  rows(table: string): Promise<{ name?: string; deletedAt?: string | null }[]> {
    return this.page.evaluate(
      ([database, name]) =>
        new Promise((resolve, reject) => {
          const request = indexedDB.open(database)
          request.onerror = () => reject(request.error)
          request.onsuccess = () => {
            const all = request.result.transaction(name, 'readonly').objectStore(name).getAll()
            all.onsuccess = () => {
              request.result.close()
              resolve(all.result)
            }
          }
        }),
      [DATABASE, table] as const
    )
  }
}

/**
 * Runs in the page before it: says each sentence of its status bar; counts what is written, and breaks off the transaction behind the
 * write whose number stands in `failAt`.
 */
const WATCHED = `(() => {
  const watch = () => new MutationObserver(() => {
    const bar = [...document.querySelectorAll('[role=status]')].map((one) => one.textContent).find((text) => / saved\\.| kept\\./.test(text ?? ''))
    if (bar && bar !== watch.last) { watch.last = bar; window.savedIsSaid(bar) }
  }).observe(document, { childList: true, subtree: true, characterData: true })
  watch()
  window.writes = { count: 0, failAt: 0 }
  for (const [of, names] of [[IDBObjectStore.prototype, ['put', 'add', 'delete']], [IDBCursor.prototype, ['update', 'delete']]]) {
    for (const name of names) {
      const write = of[name]
      of[name] = function (...given) {
        const request = write.apply(this, given)
        const transaction = this.transaction ?? request.transaction
        if (++window.writes.count === window.writes.failAt) request.addEventListener('success', () => transaction.abort())
        return request
      }
    }
  }
})()`

/** A served build with a profile of its own; `end` takes both away. */
export async function served(folder: string): Promise<{ address: string; profile: string; end: () => Promise<void> }> {
  const server = await serve({ port: 0, answers: filesOf(folder) })
  const profile = freshFolder('faults')
  const end = async () => {
    await stop(server)
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 })
  }
  return { address: `http://127.0.0.1:${portOf(server)}/`, profile, end }
}

/** Enters somebody, so that garments can be. */
export async function introduced(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Skip, / }).click()
  await page.getByRole('textbox', { name: 'Name' }).fill('Wren')
  await page.getByRole('button', { name: 'Save' }).click()
  await page.getByRole('heading', { name: /^Wren: / }).waitFor()
}

/** Types a garment into its form and sends it. */
export async function sendGarment(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Add a garment' }).click()
  await page.getByRole('textbox', { name: 'Name' }).fill(name)
  await page.getByRole('button', { name: 'Save' }).click()
}

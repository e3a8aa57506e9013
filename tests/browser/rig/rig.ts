/** The built extension in a real browser, driven as a person would: the toolbar button is really pressed, the popup and panel are the real ones. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, type BrowserContext, type CDPSession, chromium, type Page } from 'playwright-core'
import { foundChromiums, QUIET_FLAGS } from '../../../entrypoints/companion/chromium.mjs'
import { BUILT } from '../../../entrypoints/companion/places.mjs'
import { type RequestSeen, requestsIn } from './requests.ts'

const NET_LOG = 'net-log.json'

export type Surface = 'popup' | 'sidepanel'

export interface RigOptions {
  /** A profile that stays when the rig closes; without one a fresh one is made and removed. */
  profile?: string
  extension?: string
  colourScheme?: 'light' | 'dark'
  /** What the browser speaks and asks pages for (two letters of BCP 47); without one British English. */
  language?: string
  /** A screen to show itself on; without one it is headless. */
  display?: string
}

export class Rig {
  readonly context: BrowserContext
  readonly id: string
  private readonly session: CDPSession
  private readonly profile: string
  private readonly keepsProfile: boolean
  private readonly colourScheme: 'light' | 'dark'
  private readonly connected: Browser[] = []

  private constructor(own: {
    context: BrowserContext
    id: string
    session: CDPSession
    profile: string
    keepsProfile: boolean
    colourScheme: 'light' | 'dark'
  }) {
    this.context = own.context
    this.id = own.id
    this.session = own.session
    this.profile = own.profile
    this.keepsProfile = own.keepsProfile
    this.colourScheme = own.colourScheme
  }

  static async start(options: RigOptions = {}): Promise<Rig> {
    const [executablePath] = await foundChromiums()
    if (executablePath === undefined) throw new Error('No Chromium was found: run npm test once, it installs one.')
    const extension = options.extension ?? BUILT.chrome
    const profile = options.profile ?? freshFolder('profile')
    const colourScheme = options.colourScheme ?? 'light'
    const language = options.language ?? 'en-GB'
    const context = await chromium.launchPersistentContext(profile, {
      executablePath,
      headless: options.display === undefined,
      env: { ...process.env, LANGUAGE: language, ...(options.display === undefined ? {} : { DISPLAY: options.display }) },
      colorScheme: colourScheme,
      args: [
        ...QUIET_FLAGS,
        `--lang=${language}`,
        `--accept-lang=${language}`,
        '--remote-debugging-port=0',
        '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
        `--log-net-log=${join(profile, NET_LOG)}`,
        `--disable-extensions-except=${extension}`,
        `--load-extension=${extension}`
      ]
    })
    try {
      const session = await context.browser()?.newBrowserCDPSession()
      if (session === undefined) throw new Error('The browser gives no debugging session.')
      const worker = await until(`the extension in ${extension} to start`, async () => {
        const { targetInfos } = await session.send('Target.getTargets', { filter: [{}] })
        return targetInfos.find(({ type, url }) => type === 'service_worker' && url.startsWith('chrome-extension://'))
      })
      const keepsProfile = options.profile !== undefined
      return new Rig({ context, id: new URL(worker.url).host, session, profile, keepsProfile, colourScheme })
    } catch (error) {
      await context.close()
      throw error
    }
  }

  /** Opens a tab of its own at an address. */
  async tab(address: string): Promise<Page> {
    const page = await this.context.newPage()
    await page.goto(address)
    return page
  }

  address(path: string): string {
    return `chrome-extension://${this.id}/${path}`
  }

  /** Presses the extension's toolbar button over a tab, as a hand would; gives the popup that opens. */
  async press(page: Page): Promise<Page> {
    await page.bringToFront()
    await this.trigger(await this.tabOf(page))
    return this.surface('popup')
  }

  /** Presses the button over the tab of this id, and waits for nothing. */
  async trigger(tab: string): Promise<void> {
    await this.session.send('Extensions.triggerAction', { id: this.id, targetId: tab })
  }

  /** The real popup or side panel, once it is open. They are no tabs: a connection of their own finds them. */
  async surface(name: Surface): Promise<Page> {
    const address = this.address(`${name}.html`)
    await until(`the ${name} to open`, async () => (await this.targets()).some((target) => target.url.startsWith(address)))
    return until(`the ${name} to be reached`, async () => {
      const browser = await chromium.connectOverCDP(`http://127.0.0.1:${this.debuggingPort()}`, { noDefaults: true })
      const found = browser
        .contexts()[0]
        ?.pages()
        .find((page) => page.url().startsWith(address))
      if (found === undefined) {
        await browser.close()
        return undefined
      }
      this.connected.push(browser)
      await found.emulateMedia({ colorScheme: this.colourScheme })
      return found
    })
  }

  async isOpen(name: Surface): Promise<boolean> {
    return (await this.targets()).some((target) => target.url.startsWith(this.address(`${name}.html`)))
  }

  /** Ends the browser; gives every request that it made, with who asked for it. */
  async close(): Promise<RequestSeen[]> {
    for (const browser of this.connected) await browser.close()
    await this.context.close()
    const requests = requestsIn(join(this.profile, NET_LOG))
    if (!this.keepsProfile) rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 })
    return requests
  }

  private async targets() {
    return (await this.session.send('Target.getTargets', { filter: [{}] })).targetInfos
  }

  /** The target of type `tab` around a page: the one that holds the page's own target. */
  async tabOf(page: Page): Promise<string> {
    const session = await this.context.newCDPSession(page)
    const { targetInfo } = await session.send('Target.getTargetInfo')
    await session.detach()
    // a tab and its page share their address, and nothing else that can be asked for
    const tabs = (await this.targets()).filter((target) => target.type === 'tab' && target.url === targetInfo.url)
    if (tabs.length !== 1 || tabs[0] === undefined)
      throw new Error(`${tabs.length} tabs show ${targetInfo.url}: give each its own address.`)
    return tabs[0].targetId
  }

  /** Where the browser listens for a debugger. */
  async debuggingAddress(): Promise<string> {
    const about = await fetch(`http://127.0.0.1:${this.debuggingPort()}/json/version`)
    return String((await about.json()).webSocketDebuggerUrl)
  }

  private debuggingPort(): string {
    return readFileSync(join(this.profile, 'DevToolsActivePort'), 'utf8').split('\n')[0] ?? ''
  }
}

export const freshFolder = (what: string): string => mkdtempSync(join(tmpdir(), `seam-${what}-`))

/** Asks again until there is an answer; says what it waited for when there is none. */
export async function until<T>(what: string, ask: () => Promise<T | undefined | false>, withinMs = 10_000): Promise<T> {
  const end = performance.now() + withinMs
  for (;;) {
    const answer = await ask()
    if (answer !== undefined && answer !== false) return answer
    if (performance.now() > end) throw new Error(`Waited ${withinMs / 1000} s for ${what}.`)
    await new Promise((done) => setTimeout(done, 50))
  }
}

/** How long it takes from a press of the toolbar button until a heading has been painted in the popup, on a processor as slow as one likes. */
import { cpSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { build } from 'vite'
import WebSocket from 'ws'
import { BUILT, inRoot } from '../../entrypoints/companion/places.mjs'
import { freshFolder, Rig, type RigOptions, until } from '../browser/rig/rig.ts'

/** Runs in the popup before it: tells when the first heading of the second level, the verdict, has been painted. */
const WATCHED = `(() => {
  let seen = false
  new MutationObserver(() => {
    if (seen || document.querySelector('h2') === null) return
    seen = true
    requestAnimationFrame(() => setTimeout(() => painted(String(Date.now()))))
  }).observe(document, { childList: true, subtree: true })
})()`

interface Told {
  method?: string
  params?: { sessionId?: string; targetInfo?: { url: string; type: string }; payload?: string }
}

/** A browser whose popups are slowed down and watched before they load. */
export class Presses {
  readonly rig: Rig
  private readonly socket: WebSocket
  private lastId = 0
  private rate = 1
  private painted: (at: number) => void = () => undefined

  private constructor(rig: Rig, socket: WebSocket) {
    this.rig = rig
    this.socket = socket
    socket.on('message', (data) => this.heard(JSON.parse(data.toString())))
  }

  static async start(options: RigOptions = {}): Promise<Presses> {
    const rig = await Rig.start(options)
    const socket = new WebSocket(await rig.debuggingAddress())
    await new Promise<void>((open) => socket.on('open', () => open()))
    const presses = new Presses(rig, socket)
    presses.send('Target.setAutoAttach', { autoAttach: true, waitForDebuggerOnStart: true, flatten: true })
    return presses
  }

  /** Milliseconds from a press over a page to the painted verdict; the popup is closed again. */
  async press(page: Page, rate: number): Promise<number> {
    this.rate = rate
    const painted = new Promise<number>((done) => {
      this.painted = done
    })
    await page.bringToFront()
    const target = await this.rig.tabOf(page)
    const from = Date.now()
    await this.rig.trigger(target)
    const late = new Promise<never>((_, fail) => setTimeout(() => fail(new Error('no verdict in 20 s')), 20_000))
    const at = await Promise.race([painted, late])
    await page.mouse.click(2, 2)
    await until('the popup to close', async () => !(await this.rig.isOpen('popup')))
    // what the popup left running is no part of the next press
    await page.waitForTimeout(400)
    return at - from
  }

  async close(): Promise<void> {
    this.socket.close()
    await this.rig.close()
  }

  private send(method: string, params: object = {}, sessionId?: string): void {
    this.lastId++
    this.socket.send(JSON.stringify({ id: this.lastId, method, params, ...(sessionId === undefined ? {} : { sessionId }) }))
  }

  private heard({ method, params }: Told): void {
    if (method === 'Runtime.bindingCalled') this.painted(Number(params?.payload))
    if (method !== 'Target.attachedToTarget' || params?.sessionId === undefined) return
    const session = params.sessionId
    // a popup has no address yet, and a type of its own
    if (params.targetInfo?.type === 'other') {
      this.send('Emulation.setCPUThrottlingRate', { rate: this.rate }, session)
      this.send('Runtime.enable', {}, session)
      this.send('Runtime.addBinding', { name: 'painted' }, session)
      this.send('Page.enable', {}, session)
      this.send('Page.addScriptToEvaluateOnNewDocument', { source: WATCHED, runImmediately: true }, session)
    }
    this.send('Runtime.runIfWaitingForDebugger', {}, session)
  }
}

/** The built extension with a popup that draws two headings with Preact and does nothing else. */
export async function emptyPopup(): Promise<string> {
  const folder = freshFolder('empty')
  cpSync(BUILT.chrome, folder, { recursive: true })
  const source = join(freshFolder('source'), 'empty.js')
  writeFileSync(
    source,
    `import { h, render } from 'preact'
render(h('main', null, h('h1', null, 'Empty'), h('h2', null, 'Nothing'), h('button', null, 'Close')), document.body)`
  )
  await build({
    configFile: false,
    logLevel: 'error',
    resolve: { alias: { preact: inRoot('node_modules/preact') } },
    build: {
      outDir: folder,
      emptyOutDir: false,
      lib: { entry: source, formats: ['es'], fileName: () => 'empty.js' }
    }
  })
  writeFileSync(
    join(folder, 'popup.html'),
    '<!doctype html><html><head><meta charset="utf-8"><script type="module" src="/empty.js"></script></head><body></body></html>'
  )
  return folder
}

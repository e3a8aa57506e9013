/** Firefox with the built extension, steered over Marionette, the browser's own remote control; absent where there is no Firefox. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process'
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createConnection, type Socket } from 'node:net'
import { join } from 'node:path'
import { BUILT } from '../../../entrypoints/companion/places.mjs'
import { freshFolder, until } from './rig.ts'

/** Firefox gives every installation an address of its own; here it is told which. */
const UUID = '5ea30000-0000-4000-8000-000000028750'

export class Firefox {
  private constructor(own: { process: ChildProcess; socket: Socket; profile: string; id: string }) {
    this.id = own.id
    this.process = own.process
    this.socket = own.socket
    this.profile = own.profile
    this.socket.on('data', (chunk) => this.take(chunk))
  }
  private readonly id: string
  private readonly process: ChildProcess
  private readonly socket: Socket
  private readonly profile: string
  private received = Buffer.alloc(0)
  private lastId = 0
  private readonly waiting = new Map<number, { done: (value: unknown) => void; fail: (error: Error) => void }>()

  static async start(): Promise<Firefox | null> {
    const program = ['firefox-esr', 'firefox'].find((name) => spawnSync(name, ['--version']).error === undefined)
    if (program === undefined) return null
    const { id } = JSON.parse(readFileSync(join(BUILT.firefox, 'manifest.json'), 'utf8')).browser_specific_settings.gecko
    const profile = freshFolder('firefox')
    const settings = {
      'marionette.port': 0,
      'extensions.webextensions.uuids': JSON.stringify({ [id]: UUID }),
      'datareporting.policy.dataSubmissionEnabled': false,
      'browser.shell.checkDefaultBrowser': false,
      'app.update.enabled': false
    }
    const lines = Object.entries(settings).map(([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`)
    writeFileSync(join(profile, 'user.js'), lines.join('\n'))
    const process = spawn(program, ['--headless', '--marionette', '--no-remote', '--profile', profile, '--remote-allow-system-access'], {
      stdio: 'ignore'
    })
    const port = await until('Firefox to start', async () => portIn(join(profile, 'MarionetteActivePort')), 30_000)
    const socket = createConnection(port, '127.0.0.1')
    const firefox = new Firefox({ process, socket, profile, id })
    await firefox.command('WebDriver:NewSession', {})
    await firefox.command('Addon:Install', { path: BUILT.firefox, temporary: true })
    return firefox
  }

  address(path: string): string {
    return `moz-extension://${UUID}/${path}`
  }

  async open(address: string): Promise<void> {
    await this.command('Marionette:SetContext', { value: 'content' })
    await this.command('WebDriver:Navigate', { url: address })
  }

  /** Runs a script's text in the page in front; its last argument is called with the answer. */
  async inPage<T>(script: string): Promise<T> {
    await this.command('Marionette:SetContext', { value: 'content' })
    return this.run<T>(script)
  }

  /** The same in the browser's own window, where its buttons are. */
  async inBrowser<T>(script: string): Promise<T> {
    await this.command('Marionette:SetContext', { value: 'chrome' })
    return this.run<T>(script)
  }

  /** Presses the extension's toolbar button over the page in front, as a hand would; gives what the popup says once `saying` stands in it. */
  press(saying: string): Promise<string> {
    return this.inBrowser<string>(`
      const done = arguments[0]
      const { extension } = WebExtensionPolicy.getByID(${JSON.stringify(this.id)})
      const { ExtensionParent } = ChromeUtils.importESModule('resource://gre/modules/ExtensionParent.sys.mjs')
      ExtensionParent.apiManager.global.browserActionFor(extension).triggerAction(window)
      const popup = () => [...document.querySelectorAll('browser')].find((one) => one.currentURI?.spec.endsWith('/popup.html'))
      const script = 'data:application/javascript,' + encodeURIComponent('sendAsyncMessage("popup-says", content.document.body.innerText)')
      let text = ''
      const ask = (times) => {
        const messages = popup()?.messageManager
        messages?.addMessageListener('popup-says', ({ data }) => { text = data })
        messages?.loadFrameScript(script, false)
        if (text.includes(${JSON.stringify(saying)}) || times === 0) done(text)
        else setTimeout(() => ask(times - 1), 250)
      }
      ask(60)`)
  }

  /** What stands in a surface beside the page (`popup.html`, `sidepanel.html`) once `saying` does; with `button` its button of that name is pressed then. */
  surface(page: string, saying: string, button?: string): Promise<string> {
    return this.inBrowser<string>(`
      const done = arguments[0]
      const browsersIn = (page) => [...(page?.querySelectorAll('browser') ?? [])]
      const all = () => browsersIn(document).concat(browsersIn(document).flatMap((one) => browsersIn(one.contentDocument)))
      const surface = () => all().find((one) => one.currentURI?.spec.endsWith(${JSON.stringify(`/${page}`)}))
      const script = 'data:application/javascript,' + encodeURIComponent(${JSON.stringify(`
        const text = content.document.body.innerText
        const ready = text.includes(${JSON.stringify(saying)})
        const named = ${JSON.stringify(button ?? '')}
        if (ready && named !== '') [...content.document.querySelectorAll('button')].find((one) => one.innerText.trim() === named)?.click()
        sendAsyncMessage('surface-says', { text, ready })`)})
      let said = { text: '', ready: false }
      const ask = (times) => {
        const messages = surface()?.messageManager
        messages?.addMessageListener('surface-says', ({ data }) => { if (!said.ready) said = data })
        if (!said.ready) messages?.loadFrameScript(script, false)
        if (said.ready || times === 0) done(said.text)
        else setTimeout(() => ask(times - 1), 300)
      }
      ask(60)`)
  }

  /** Opens the sidebar, which stands in the side panel's place. */
  async openSidebar(): Promise<void> {
    await this.inBrowser(`
      const done = arguments[0]
      const { extension } = WebExtensionPolicy.getByID(${JSON.stringify(this.id)})
      const sidebar = window.SidebarController ?? window.SidebarUI
      sidebar.show(extension.id.replace(/[^a-z0-9_-]/gi, '_') + '-sidebar-action').then(() => done(true), (error) => done(String(error)))`)
  }

  /** Types into a field of the page in front by its label, or presses a button or a labelled box by its words. */
  async byHand(...actions: ({ field: string; typed: string } | { press: string })[]): Promise<void> {
    for (const doing of actions) {
      const found = await this.inPage<boolean>(`
        const done = arguments[0]
        const doing = ${JSON.stringify(doing)}
        const find = (times) => {
          const labels = [...document.querySelectorAll('label')]
          const target = 'field' in doing
            ? document.getElementById(labels.find((one) => one.innerText.trim() === doing.field)?.htmlFor ?? '')
            : [...document.querySelectorAll('button'), ...labels].find((one) => one.innerText.trim() === doing.press)
          if (target == null) return times === 0 ? done(false) : setTimeout(() => find(times - 1), 200)
          if ('field' in doing) {
            target.focus()
            target.value = doing.typed
            target.dispatchEvent(new InputEvent('input', { bubbles: true }))
          } else target.click()
          done(true)
        }
        find(40)`)
      if (!found) throw new Error(`nothing to do ${JSON.stringify(doing)} with`)
    }
  }

  async close(): Promise<void> {
    await this.command('Marionette:Quit', { flags: ['eForceQuit'] })
    this.socket.destroy()
    await until('Firefox to end', async () => this.process.exitCode !== null, 15_000)
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 })
  }

  private async run<T>(script: string): Promise<T> {
    const answer = await this.command('WebDriver:ExecuteAsyncScript', { script, args: [] })
    return (answer as { value: T }).value
  }

  private command(name: string, parameters: object): Promise<unknown> {
    const id = ++this.lastId
    const message = JSON.stringify([0, id, name, parameters])
    return new Promise((done, fail) => {
      this.waiting.set(id, { done, fail })
      this.socket.write(`${Buffer.byteLength(message)}:${message}`)
    })
  }

  /** Messages come as `length:text`, in pieces of any size. */
  private take(chunk: Buffer): void {
    this.received = Buffer.concat([this.received, chunk])
    for (;;) {
      const colon = this.received.indexOf(':')
      const length = Number(this.received.subarray(0, Math.max(colon, 0)).toString())
      if (colon < 0 || this.received.length < colon + 1 + length) return
      const message = JSON.parse(this.received.subarray(colon + 1, colon + 1 + length).toString())
      this.received = this.received.subarray(colon + 1 + length)
      if (!Array.isArray(message)) continue
      const [, id, error, result] = message
      const waiting = this.waiting.get(id)
      this.waiting.delete(id)
      if (error) waiting?.fail(new Error(`${error.error}: ${error.message}`))
      else waiting?.done(result)
    }
  }
}

function portIn(file: string): number | undefined {
  try {
    return Number(readFileSync(file, 'utf8'))
  } catch {
    // not written yet
    return undefined
  }
}

/** npm start as a person meets it: the addresses, the second start, a taken port, the end, and the workroom without its server. */
import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { createServer } from 'node:net'
import { type Browser, chromium } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { foundChromiums, QUIET_FLAGS } from '../../entrypoints/companion/chromium.mjs'
import { inRoot, ROOT } from '../../entrypoints/companion/places.mjs'
import { until } from './rig/rig.ts'

/** One npm start, with what it has printed so far. */
class Start {
  printed = ''
  private readonly child: ChildProcess
  private readonly ended: Promise<number>

  constructor(...args: string[]) {
    const { DISPLAY: _, WAYLAND_DISPLAY: __, ...env } = process.env
    this.child = spawn(process.execPath, [inRoot('entrypoints/companion/start.mjs'), ...args], { cwd: ROOT, env })
    for (const stream of [this.child.stdout, this.child.stderr]) {
      stream?.on('data', (chunk) => {
        this.printed += chunk
      })
    }
    this.ended = once(this.child, 'close').then(([code]) => code)
  }
  says(words: string): Promise<unknown> {
    return until(`npm start to say "${words}", it said: ${this.printed}`, async () => this.printed.includes(words), 40_000)
  }
  end(): Promise<number> {
    this.child.kill('SIGINT')
    return this.ended
  }
  exitCode(): Promise<number> {
    return this.ended
  }
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const address = server.address()
  server.close()
  await once(server, 'close')
  return typeof address === 'object' && address !== null ? address.port : 0
}

let browser: Browser
beforeAll(async () => {
  const [executablePath = ''] = await foundChromiums()
  browser = await chromium.launch({ executablePath, args: QUIET_FLAGS })
})
afterAll(() => browser.close())

test('it serves both pages; a second start finds the first, says the same and ends well; Ctrl+C ends it', async () => {
  const port = await freePort()
  const first = new Start('--port', String(port))
  await first.says('Ctrl+C ends this.')
  const addresses = first.printed.match(/http:\/\/127\.0\.0\.1:\d+\//g) ?? []
  expect(addresses).toHaveLength(2)
  expect(addresses[0]).toBe(`http://127.0.0.1:${port}/`)
  for (const step of ['chrome://extensions', 'about:debugging', 'own workroom']) expect(first.printed).toContain(step)

  const second = new Start('--port', String(port))
  expect(await second.exitCode()).toBe(0)
  for (const address of addresses) expect(second.printed).toContain(address)

  for (const address of addresses) expect((await fetch(address)).status).toBe(200)
  expect(await first.end()).toBe(0)
})

test('where another program holds the port it says so, offers --port, and says what becomes of the records', async () => {
  const other = createServer((socket) => socket.destroy()).listen(0, '127.0.0.1')
  await once(other, 'listening')
  const address = other.address()
  const port = typeof address === 'object' && address !== null ? address.port : 0
  const start = new Start('--port', String(port))
  expect(await start.exitCode()).toBe(1)
  expect(start.printed).toContain(`Another program holds port ${port}`)
  expect(start.printed).toContain('npm start -- --port')
  expect(start.printed).toContain('records belong to its address')
  other.close()
})

test('a wrong option is answered with the options there are', async () => {
  for (const wrong of [['--prot', '1'], ['--port', 'x'], ['--port', '80'], ['--port']]) {
    const start = new Start(...wrong)
    expect(await start.exitCode(), wrong.join(' ')).toBe(1)
    expect(start.printed, wrong.join(' ')).toContain('--port')
  }
})

test('--once builds, says the addresses and ends', async () => {
  const start = new Start('--once', '--port', String(await freePort()))
  expect(await start.exitCode()).toBe(0)
  expect(start.printed).toContain('Demo shop')
})

test('the workroom asks only its own server, keeps to its policy, and works when the server is gone', async () => {
  const port = await freePort()
  const start = new Start('--port', String(port))
  await start.says('Ctrl+C ends this.')
  const page = await browser.newPage()
  const asked: string[] = []
  const trouble: string[] = []
  page.on('request', (request) => asked.push(new URL(request.url()).origin))
  page.on('pageerror', (error) => trouble.push(String(error)))
  page.on('console', (message) => message.type() === 'error' && trouble.push(message.text()))
  await page.goto(`http://127.0.0.1:${port}/`)
  await page.getByRole('heading', { level: 1 }).waitFor()
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
  expect(await page.evaluate(() => fetch('who-serves.json').then(String, () => 'refused'))).toBe('refused')
  expect(new Set(asked)).toEqual(new Set([`http://127.0.0.1:${port}`]))
  expect(trouble.filter((text) => !text.includes('who-serves.json'))).toEqual([])
  expect(await page.getByText(`What you save stays in this browser, at 127.0.0.1:${port}.`).count()).toBe(1)
  const heading = await page.getByRole('heading', { level: 1 }).textContent()

  expect(await start.end()).toBe(0)
  await page.reload()
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe(heading)
  await page.close()
})

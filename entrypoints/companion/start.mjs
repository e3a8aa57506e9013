/** npm start: installs, builds, serves the workroom and the demo shop on 127.0.0.1, and opens a browser where there is one. */
import { createHash } from 'node:crypto'
import { get } from 'node:http'
import { join } from 'node:path'
import { text as textOf } from 'node:stream/consumers'
import { MARK_NAME } from './build.mjs'
import { BUILT, ROOT, WORKROOM_PORT } from './places.mjs'
import { PAGE_POLICY, WORKER_POLICY } from './policy.mjs'
import { stopWith } from './run-step.mjs'
import { ADDRESS, filesOf, portOf, serve, stop, typeOf } from './serve.mjs'
import * as words from './words.mjs'

/** Where a running server says what it is, so that a second start knows it. */
const GREETING = '/who-serves.json'
const folderMark = createHash('sha256').update(ROOT).digest('hex').slice(0, 16)
const options = readOptions(process.argv.slice(2))

/**
 * @param {string[]} args
 * @returns {{ port: number, once: boolean }}
 */
function readOptions(args) {
  const read = { port: WORKROOM_PORT, once: false }
  for (let i = 0; i < args.length; i++) {
    if (args[i] === '--once') read.once = true
    else if (args[i] === '--port') {
      read.port = Number(args[++i])
      if (!Number.isInteger(read.port) || read.port < 1024 || read.port > 65534) stopWith(words.badPort)
    } else stopWith(words.badOption(String(args[i])))
  }
  return read
}

async function stay() {
  const running = await start()
  if (running === null) return
  const { openBrowser } = await import('./open-browser.mjs')
  const browser = await openBrowser(running.shop)
  console.log(browser === null ? words.howToEnd : `${words.opened(browser)} ${words.howToEnd}`)
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => running.stop().then(() => process.exit(0)))
}

async function once() {
  await (await start())?.stop()
}

/** Starts both servers and prints how to go on; null where this project's own server was running already. */
async function start() {
  const shop = await serveShop(options.port + 1)
  try {
    const shopAddress = addressOf(portOf(shop))
    const workroom = await serve({ port: options.port, answers: workroomAnswers(shopAddress) })
    print({ workroom: addressOf(options.port), shop: shopAddress })
    return { shop: shopAddress, stop: () => Promise.all([stop(shop), stop(workroom)]) }
  } catch (error) {
    await stop(shop)
    if (!isTaken(error)) throw error
    const other = await greet()
    if (other === null) return stopWith(words.portTaken(options.port))
    print({ workroom: addressOf(options.port), shop: other.shop })
    if (other.folder !== folderMark) console.log(words.otherFolder)
    return null
  }
}

/** @param {{ workroom: string, shop: string }} at */
function print(at) {
  console.log(words.addresses(at))
  console.log(words.loading({ chrome: BUILT.chrome, firefox: join(BUILT.firefox, 'manifest.json') }))
}

/** @param {number} port */
const addressOf = (port) => `http://${ADDRESS}:${port}/`

/** @param {unknown} error */
const isTaken = (error) => error instanceof Error && 'code' in error && error.code === 'EADDRINUSE'

/**
 * @param {string} shop
 * @returns {import('./serve.mjs').Answers}
 */
function workroomAnswers(shop) {
  const files = filesOf(BUILT.workroom, (path) => ({
    'Content-Security-Policy': path === '/sw.js' ? WORKER_POLICY : `${PAGE_POLICY}; frame-ancestors 'none'`
  }))
  const greeting = JSON.stringify({ name: MARK_NAME, folder: folderMark, shop })
  return (path, port) => (path === GREETING ? { type: typeOf(GREETING), body: greeting } : files(path, port))
}

/**
 * The shop keeps no records, so any port will do.
 * @param {number} port
 */
async function serveShop(port) {
  const { shopAnswers } = await import('../../tests/demo-shop/shop.mjs')
  const shop = { answers: shopAnswers, alsoAtLocalhost: true }
  try {
    return await serve({ port, ...shop })
  } catch (error) {
    if (!isTaken(error)) throw error
    return serve({ port: 0, ...shop })
  }
}

/**
 * Who holds the port: this project's own server, or null.
 * @returns {Promise<{ folder: string, shop: string } | null>}
 */
async function greet() {
  const text = await textAt(addressOf(options.port) + GREETING.slice(1))
  try {
    const answer = JSON.parse(text)
    return answer?.name === MARK_NAME ? answer : null
  } catch {
    // none of ours
    return null
  }
}

/**
 * What stands at an address of this machine; empty where nothing is answered.
 * @param {string} address
 * @returns {Promise<string>}
 */
const textAt = (address) =>
  new Promise((done) => {
    const asked = get(address, { timeout: 2000 }, async (response) => done(await textOf(response).catch(() => '')))
    asked.on('timeout', () => asked.destroy()).on('error', () => done(''))
  })

const { setUp } = await import('./set-up.mjs')
await setUp()
const { buildWhenStale } = await import('./build.mjs')
await buildWhenStale('chrome', 'firefox', 'workroom')
await (options.once ? once() : stay())

/** Nothing leaves the machine: tried from every page and the worker, and seen in the browser's own record of its requests. */
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { BUILT } from '../../entrypoints/companion/places.mjs'
import { type Answers, portOf, serve, stop, typeOf } from '../../entrypoints/companion/serve.mjs'
import { freshFolder, Rig, until } from './rig/rig.ts'
import { openShop, type Shop } from './rig/shop.ts'

const pages = readdirSync(BUILT.chrome).filter((name) => name.endsWith('.html'))
/** A server that welcomes everybody, so that only the extension's own policy can refuse. */
const BODIES: Record<string, string> = {
  '/x.svg': '<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"/>',
  '/x.css': 'b{}',
  '/x.js': ''
}
const welcome: Answers = (path) => ({
  type: typeOf(path),
  body: BODIES[path] ?? 'here',
  headers: { 'Access-Control-Allow-Origin': '*', 'Cross-Origin-Resource-Policy': 'cross-origin' }
})
let shop: Shop
let outside: Awaited<ReturnType<typeof serve>>
beforeAll(async () => {
  shop = await openShop()
  outside = await serve({ port: 0, answers: welcome })
})
afterAll(() => Promise.all([shop.close(), stop(outside)]))

/** Every way out that a page has; gives those that were not refused. */
async function waysOut(target: string): Promise<string[]> {
  const open: string[] = []
  const attempt = async (name: string, way: () => Promise<unknown>) => {
    try {
      await way()
      open.push(name)
    } catch {
      // refused, as it should be
    }
  }
  const loads = (element: HTMLElement, set: () => void) =>
    new Promise((done, fail) => {
      element.onload = done
      element.onerror = fail
      set()
      setTimeout(fail, 2000)
    })
  await attempt('fetch', () => fetch(`${target}x.txt`))
  if (typeof document === 'undefined') return open
  await attempt('XMLHttpRequest', () => {
    const request = new XMLHttpRequest()
    return new Promise((done, fail) => {
      request.onload = done
      request.onerror = fail
      request.open('GET', `${target}x.txt`)
      request.send()
    })
  })
  await attempt('WebSocket', () => {
    const socket = new WebSocket(target.replace('http', 'ws'))
    return new Promise((done, fail) => {
      socket.onopen = done
      socket.onerror = fail
    })
  })
  const image = new Image()
  await attempt('image', () => loads(image, () => image.setAttribute('src', `${target}x.svg`)))
  const style = document.createElement('link')
  style.rel = 'stylesheet'
  await attempt('style', () =>
    loads(style, () => {
      style.href = `${target}x.css`
      document.head.append(style)
    })
  )
  const script = document.createElement('script')
  await attempt('script', () =>
    loads(script, () => {
      script.src = `${target}x.js`
      document.head.append(script)
    })
  )
  navigator.sendBeacon(target, 'x')
  return open
}

async function tryEveryWay(extension: string) {
  const rig = await Rig.start({ extension })
  const found: Record<string, string[]> = {}
  const target = `http://127.0.0.1:${portOf(outside)}/`
  try {
    const listing = await rig.tab(shop.item('charcoal-wool-trousers'))
    found['the real popup'] = await (await rig.press(listing)).evaluate(waysOut, target)
    for (const name of pages) found[name] = await (await rig.tab(rig.address(name))).evaluate(waysOut, target)
    const worker = await until('the worker', async () => rig.context.serviceWorkers()[0])
    found['the worker'] = await worker.evaluate(waysOut, target)
  } finally {
    const requests = await rig.close()
    found.requests = requests.filter(({ initiator }) => initiator === `chrome-extension://${rig.id}`).map(({ url }) => url)
  }
  return found
}

test('every way out of every page and of the worker is refused, and no request is made', async () => {
  const found = await tryEveryWay(BUILT.chrome)
  expect(Object.keys(found)).toEqual(
    expect.arrayContaining(['the real popup', 'the worker', 'popup.html', 'sidepanel.html', 'workroom.html'])
  )
  for (const [where, open] of Object.entries(found)) expect(open, where).toEqual([])
})

test('the same attempts get through, and are seen, where the policy is taken away', async () => {
  const loose = freshFolder('loose')
  cpSync(BUILT.chrome, loose, { recursive: true })
  const file = join(loose, 'manifest.json')
  const { content_security_policy: _, ...manifest } = JSON.parse(readFileSync(file, 'utf8'))
  writeFileSync(file, JSON.stringify(manifest))
  const found = await tryEveryWay(loose)
  rmSync(loose, { recursive: true, force: true })
  for (const name of ['the real popup', 'the worker', ...pages]) expect(found[name], name).toContain('fetch')
  for (const way of ['fetch', 'XMLHttpRequest', 'image', 'style']) expect(found['the real popup'], way).toContain(way)
  expect(found.requests?.length).toBeGreaterThanOrEqual(pages.length + 2)
})

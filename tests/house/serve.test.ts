/** The companion's server gives the files of one folder to this machine, and nothing else to anybody. */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { filesOf, portOf, serve, stop } from '../../entrypoints/companion/serve.mjs'

const home = mkdtempSync(join(tmpdir(), 'seam-serve-'))
let server: Awaited<ReturnType<typeof serve>>
let port = 0

beforeAll(async () => {
  mkdirSync(join(home, 'open/inner'), { recursive: true })
  writeFileSync(join(home, 'secret.txt'), 'secret')
  writeFileSync(join(home, 'open/index.html'), '<!doctype html>')
  writeFileSync(join(home, 'open/inner/a b.js'), '1')
  symlinkSync(join(home, 'secret.txt'), join(home, 'open/link.txt'))
  server = await serve({ port: 0, answers: filesOf(join(home, 'open'), () => ({ 'Content-Security-Policy': "default-src 'none'" })) })
  port = portOf(server)
})
afterAll(async () => {
  await stop(server)
  rmSync(home, { recursive: true, force: true })
})

/** The path goes out as written: fetch would tidy it first. */
const ask = (path: string, options: { method?: string; host?: string } = {}) =>
  new Promise<{ status: number; headers: Record<string, unknown>; body: string }>((done, fail) => {
    const headers = { Host: options.host ?? `127.0.0.1:${port}` }
    request({ host: '127.0.0.1', port, path, method: options.method ?? 'GET', headers }, (response) => {
      let body = ''
      response.on('data', (chunk) => {
        body += chunk
      })
      response.on('end', () => done({ status: response.statusCode ?? 0, headers: response.headers, body }))
    })
      .on('error', fail)
      .end()
  })

test('files come with their type, the safe headers and the policy', async () => {
  const page = await ask('/?x=1')
  expect(page.status).toBe(200)
  expect(page.headers).toMatchObject({
    'content-type': 'text/html; charset=utf-8',
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'content-security-policy': "default-src 'none'"
  })
  expect(page.headers).not.toHaveProperty('access-control-allow-origin')
  expect((await ask('/inner/a%20b.js')).headers['content-type']).toBe('text/javascript; charset=utf-8')
  expect((await ask('/', { method: 'HEAD' })).body).toBe('')
})

test.each([
  '/../secret.txt',
  '/..%2fsecret.txt',
  '/%2e%2e/secret.txt',
  '/inner/../../secret.txt',
  '/link.txt',
  '/inner',
  '/nothing.html',
  '/%ff',
  '/%00',
  '//secret.txt'
])('%s is not given', async (path) => {
  const answer = await ask(path)
  expect([answer.status, answer.body.includes('secret')]).toEqual([404, false])
})

test('localhost is sent on to 127.0.0.1, where the records are; another name is refused', async () => {
  const sent = await ask('/inner/?x=1', { host: `localhost:${port}` })
  expect([sent.status, sent.headers.location]).toEqual([307, `http://127.0.0.1:${port}/inner/?x=1`])
  expect((await ask('/', { host: `elsewhere.example:${port}` })).status).toBe(421)
})

test('only reading is served, and only on this machine', async () => {
  expect((await ask('/', { method: 'POST' })).status).toBe(405)
  expect(server.address()).toMatchObject({ address: '127.0.0.1' })
})

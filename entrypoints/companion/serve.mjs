/** A small server of files on 127.0.0.1, and nothing else. */
import { readFileSync, realpathSync } from 'node:fs'
import { createServer } from 'node:http'
import { extname, join, sep } from 'node:path'
import { SAFE_HEADERS } from './policy.mjs'

export const ADDRESS = '127.0.0.1'

/** @type {Record<string, string>} */
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.png': 'image/png',
  '.pdf': 'application/pdf',
  '.txt': 'text/plain; charset=utf-8'
}

/**
 * @typedef {{ type: string, body: string | Uint8Array, headers?: Record<string, string> }} Answer
 * @typedef {(path: string, port: number) => Answer | null} Answers a decoded path that begins with "/"
 */

/** @param {string} path */
export const typeOf = (path) => TYPES[extname(path)] ?? 'application/octet-stream'

/**
 * The files of one folder; a link that leads out of it is not followed.
 * @param {string} folder
 * @param {(path: string) => Record<string, string>} [headersFor]
 * @returns {Answers}
 */
export function filesOf(folder, headersFor = () => ({})) {
  return (path) => {
    try {
      const home = realpathSync(folder)
      const file = realpathSync(join(home, path.endsWith('/') ? `${path}index.html` : path))
      if (!file.startsWith(home + sep)) return null
      return { type: typeOf(file), body: readFileSync(file), headers: headersFor(path) }
    } catch {
      // no such file, or a folder
      return null
    }
  }
}

/**
 * Serves until it is closed. `localhost` is sent on to 127.0.0.1 (another origin, with other records), any other name is refused.
 * @param {{ port: number, answers: Answers, alsoAtLocalhost?: boolean }} options port 0: any free one
 * @returns {Promise<import('node:http').Server>} rejects with EADDRINUSE where the port is taken
 */
export function serve({ port, answers, alsoAtLocalhost = false }) {
  const server = createServer((request, response) => {
    const own = portOf(server)
    const origin = `http://${ADDRESS}:${own}`
    /**
     * @param {number} status
     * @param {string} text
     * @param {Record<string, string>} [headers]
     */
    const say = (status, text, headers = {}) => {
      response.writeHead(status, { ...SAFE_HEADERS, 'Content-Type': 'text/plain; charset=utf-8', ...headers }).end(`${text}\n`)
    }
    if (request.method !== 'GET' && request.method !== 'HEAD') return say(405, 'Only reading is served here.', { Allow: 'GET, HEAD' })
    const host = request.headers.host
    const target = request.url?.startsWith('/') ? request.url : '/'
    if (host === `localhost:${own}` && !alsoAtLocalhost) return say(307, origin, { Location: origin + target })
    if (host !== `${ADDRESS}:${own}` && host !== `localhost:${own}`) return say(421, `This is served at ${origin}/ only.`)
    const answer = answers(pathOf(target), own)
    if (answer === null) return say(404, 'There is no such page here.')
    response.writeHead(200, { ...SAFE_HEADERS, 'Content-Type': answer.type, ...answer.headers })
    response.end(request.method === 'HEAD' ? undefined : answer.body)
  })
  return new Promise((done, fail) => {
    server.once('error', fail)
    server.listen(port, ADDRESS, () => done(server))
  })
}

/** @param {string} target */
function pathOf(target) {
  try {
    const path = decodeURIComponent(target.split(/[?#]/, 1)[0] ?? '/')
    return path.includes('\0') ? '/\ufffd' : path
  } catch {
    // a malformed escape is no page of ours
    return '/\ufffd'
  }
}

/** @param {import('node:http').Server} server */
export function portOf(server) {
  const address = server.address()
  return typeof address === 'object' && address !== null ? address.port : 0
}

/**
 * @param {import('node:http').Server} server
 * @returns {Promise<void>}
 */
export const stop = (server) =>
  new Promise((done) => {
    server.close(() => done())
    server.closeAllConnections()
  })

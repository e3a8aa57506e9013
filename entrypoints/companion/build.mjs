/** Builds what is stale. A mark in each built folder holds the digest of the sources it was made from; any other build wipes it. */
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { BUILT, inRoot, ROOT } from './places.mjs'
import { runStep, stopWith } from './run-step.mjs'

/** @typedef {import('./places.mjs').Part} Part */

const SOURCES = ['core', 'components', 'entrypoints', 'public', 'package-lock.json', 'wxt.config.ts']
export const MARK_FILE = 'build-mark.json'
export const MARK_NAME = 'seam-reckoner'

const WXT = inRoot('node_modules/wxt/bin/wxt.mjs')
const VITE = inRoot('node_modules/vite/bin/vite.js')
/** @type {Record<Part, string[]>} */
const BUILDERS = {
  chrome: [WXT, 'build', '-b', 'chrome'],
  firefox: [WXT, 'build', '-b', 'firefox'],
  workroom: [VITE, 'build', '-c', inRoot('entrypoints/companion/workroom.vite.config.ts'), '--logLevel', 'warn']
}

/**
 * @param {string} path
 * @returns {string[]}
 */
function filesUnder(path) {
  if (!statSync(path).isDirectory()) return [path]
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)))
}

/** One digest over the names and contents of all that a build is made from. */
export function sourcesDigest() {
  const digest = createHash('sha256')
  for (const source of SOURCES) {
    for (const file of filesUnder(inRoot(source)))
      digest
        .update(`${file.slice(ROOT.length)}\0`)
        .update(readFileSync(file))
        .update('\0')
  }
  return digest.digest('hex')
}

/** @param {Part} part */
function builtFrom(part) {
  const mark = join(BUILT[part], MARK_FILE)
  return existsSync(mark) ? JSON.parse(readFileSync(mark, 'utf8')).sources : undefined
}

/** @param {Part} part */
async function build(part) {
  // taken before the build: a source changed meanwhile makes the result stale, not fresh
  const sources = sourcesDigest()
  const { code, output } = await runStep(process.execPath, BUILDERS[part], { cwd: ROOT })
  if (code !== 0) stopWith(`${output}\nThe ${part} build failed: mend what is named above and run this again.`)
  writeFileSync(join(BUILT[part], MARK_FILE), JSON.stringify({ name: MARK_NAME, sources }))
}

/** @param {Part[]} parts */
export async function buildWhenStale(...parts) {
  const now = sourcesDigest()
  const stale = parts.filter((part) => builtFrom(part) !== now)
  if (stale.length > 0) console.log(`Building: ${stale.join(', ')} …`)
  for (const part of stale) await build(part)
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { setUp } = await import('./set-up.mjs')
  await setUp()
  const asked = /** @type {Part[]} */ (process.argv.slice(2).filter((part) => part in BUILT))
  for (const part of asked.length > 0 ? asked : /** @type {Part[]} */ (['chrome', 'workroom'])) {
    await build(part)
    console.log(BUILT[part])
  }
}

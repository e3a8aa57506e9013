/** Installs the packages when, and only when, those in node_modules are not the ones that package-lock.json names. */
import { existsSync, readFileSync } from 'node:fs'
import { inRoot, ROOT } from './places.mjs'
import { runStep, stopWith } from './run-step.mjs'

/** @typedef {{ version?: string, optional?: boolean, peer?: boolean, devOptional?: boolean }} Locked */

/** npm leaves its own note of what it put there, and writes it last: after a broken installation there is none. */
export function isSetUp() {
  const note = inRoot('node_modules/.package-lock.json')
  if (!existsSync(note)) return false
  const wanted = packagesIn(inRoot('package-lock.json'))
  const present = packagesIn(note)
  return Object.entries(wanted).every(
    ([path, its]) => path === '' || its.optional === true || its.devOptional === true || present[path]?.version === its.version
  )
}

/**
 * @param {string} file
 * @returns {Record<string, Locked>}
 */
const packagesIn = (file) => JSON.parse(readFileSync(file, 'utf8')).packages

export async function setUp() {
  const major = Number(process.versions.node.split('.')[0])
  if (major < 20) stopWith(`Node ${process.versions.node} is too old: install Node 20 or newer and run this again.`)
  if (isSetUp()) return
  console.log('Installing the packages (once, about half a minute) …')
  const npm = process.env.npm_execpath
  const args = ['ci', '--no-audit', '--no-fund', '--loglevel=error']
  const { code, output } = npm?.endsWith('.js')
    ? await runStep(process.execPath, [npm, ...args], { cwd: ROOT })
    : await runStep('npm', args, { cwd: ROOT })
  if (code !== 0) stopWith(`${output}\nThe packages could not be installed: see npm's message above, then run this again.`)
}

/** Finds, tries or installs a Chromium that runs the built extension. A branded browser is never used: it takes no unpacked extension. */
import { existsSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { inRoot } from './places.mjs'
import { runStep } from './run-step.mjs'

const NAMES = process.platform === 'win32' ? ['chromium.exe'] : ['chromium', 'chromium-browser']
const USUAL = ['/usr/bin', '/usr/local/bin', '/snap/bin', '/Applications/Chromium.app/Contents/MacOS']
const isRoot = process.getuid?.() === 0

/** What every start of a test browser has in common. */
export const QUIET_FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  ...(isRoot ? ['--no-sandbox'] : [])
]

/**
 * Every Chromium found here, the one that CHROMIUM names first.
 * @returns {Promise<string[]>}
 */
export async function foundChromiums() {
  const named = process.env.CHROMIUM ? [process.env.CHROMIUM] : []
  // two names of one folder are one place
  const folders = [...(process.env.PATH ?? '').split(delimiter), ...USUAL].filter(existsSync).map((folder) => realpathSync(folder))
  const inFolders = folders.flatMap((folder) => [...NAMES, 'Chromium'].map((name) => join(folder, name)))
  const { chromium } = await import('playwright-core')
  return [...new Set([...named, ...inFolders, chromium.executablePath()])].filter((path) => path !== '' && existsSync(path))
}

/**
 * Does an unpacked extension start in it, and can its button be pressed? Null when so, else why not.
 * @param {string} executablePath
 * @returns {Promise<string | null>}
 */
export async function whyUnfit(executablePath) {
  const { chromium } = await import('playwright-core')
  const folder = mkdtempSync(join(tmpdir(), 'seam-probe-'))
  try {
    const manifest = {
      manifest_version: 3,
      name: 'probe',
      version: '1',
      action: { default_popup: 'p.html' },
      background: { service_worker: 'w.js' }
    }
    writeFileSync(join(folder, 'manifest.json'), JSON.stringify(manifest))
    writeFileSync(join(folder, 'w.js'), '')
    writeFileSync(join(folder, 'p.html'), '<!doctype html><title>probe</title>')
    const context = await chromium.launchPersistentContext(join(folder, 'profile'), {
      executablePath,
      headless: true,
      args: [...QUIET_FLAGS, `--disable-extensions-except=${folder}`, `--load-extension=${folder}`]
    })
    try {
      const worker = context.serviceWorkers()[0] ?? (await context.waitForEvent('serviceworker', { timeout: 10_000 }))
      const session = await /** @type {import('playwright-core').Browser} */ (context.browser()).newBrowserCDPSession()
      const { targetInfos } = await session.send('Target.getTargets', { filter: [{}] })
      const targetId = targetInfos.find((target) => target.type === 'tab')?.targetId ?? ''
      await session.send('Extensions.triggerAction', { id: new URL(worker.url()).host, targetId })
      return null
    } finally {
      await context.close()
    }
  } catch (error) {
    return error instanceof Error ? (error.message.split('\n')[0] ?? 'it did not start') : String(error)
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 3 })
  }
}

/** @returns {Promise<{ path: string | null, tried: string[] }>} */
async function firstFit() {
  /** @type {string[]} */
  const tried = []
  for (const path of await foundChromiums()) {
    const why = await whyUnfit(path)
    if (why === null) return { path, tried }
    tried.push(`${path}: ${why}`)
  }
  return { path: null, tried }
}

const isDebian = () => existsSync('/etc/os-release') && /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'))

async function install() {
  console.log('Installing Chromium (once) …')
  if (isDebian() && isRoot) {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
    const update = await runStep('apt-get', ['update'], { env })
    const result = await runStep('apt-get', ['install', '-y', 'chromium'], { env })
    return result.code === 0 ? '' : `${update.output}${result.output}`
  }
  const { code, output } = await runStep(process.execPath, [inRoot('node_modules/playwright-core/cli.js'), 'install', 'chromium'])
  return code === 0 ? '' : output
}

/**
 * A Chromium that passes, installed if need be.
 * @returns {Promise<{ path: string } | { sentence: string }>}
 */
export async function ensureChromium() {
  const found = await firstFit()
  if (found.path !== null) return { path: found.path }
  const trouble = await install()
  const after = await firstFit()
  if (after.path !== null) return { path: after.path }
  const saidWhy = trouble.split('\n').find((line) => /error|failed/i.test(line))
  const details = [saidWhy?.trim() ?? '', ...after.tried].filter(Boolean).join('\n')
  return {
    sentence:
      `${details}\nThe browser tests need Chromium and it could not be installed: ` +
      'install it (Debian: apt-get install chromium) or set CHROMIUM to its program, then run npm test again.'
  }
}

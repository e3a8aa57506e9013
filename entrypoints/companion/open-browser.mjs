/** Opens a Chromium with the built extension and a profile of its own that is kept. */
import { spawn } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { homedir } from 'node:os'
import { join } from 'node:path'
import { foundChromiums } from './chromium.mjs'
import { BUILT } from './places.mjs'

const hasDisplay = () => process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY)

function profileFolder() {
  if (process.platform === 'win32') return join(process.env.LOCALAPPDATA ?? homedir(), 'seam-reckoner', 'browser')
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'seam-reckoner', 'browser')
  return join(process.env.XDG_DATA_HOME ?? join(homedir(), '.local', 'share'), 'seam-reckoner', 'browser')
}

/**
 * @param {string} address
 * @returns {Promise<string | null>} the program opened, or null where there is no display or no browser for it
 */
export async function openBrowser(address) {
  if (!hasDisplay()) return null
  const [program] = await foundChromiums()
  if (program === undefined) return null
  const profile = profileFolder()
  mkdirSync(profile, { recursive: true })
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : []
  const child = spawn(program, [`--user-data-dir=${profile}`, `--load-extension=${BUILT.chrome}`, '--no-first-run', ...sandbox, address], {
    stdio: 'ignore'
  })
  const started = await new Promise((done) => child.once('spawn', () => done(true)).once('error', () => done(false)))
  child.unref()
  return started ? program : null
}

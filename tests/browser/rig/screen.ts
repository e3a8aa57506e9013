/** A screen nobody looks at, where keys really reach the browser. Absent where Xvfb and xdotool are not installed. */
import { spawn, spawnSync } from 'node:child_process'

export interface Screen {
  display: string
  /** Presses a key, written as xdotool writes it: `alt+shift+m`. */
  press(key: string): void
  /** Chooses from an open menu by the first letter of the entry. */
  choose(letter: string): void
  close(): void
}

export async function openScreen(): Promise<Screen | null> {
  if (spawnSync('xdotool', ['version']).error !== undefined) return null
  const server = spawn('Xvfb', ['-displayfd', '1', '-screen', '0', '1280x900x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'pipe', 'ignore']
  })
  const number = await new Promise<string | null>((done) => {
    server.once('error', () => done(null))
    server.once('exit', () => done(null))
    server.stdout.once('data', (chunk) => done(String(chunk).trim()))
  })
  if (number === null) return null
  const display = `:${number}`
  const run = (...args: string[]) => {
    const { status, stderr } = spawnSync('xdotool', args, { env: { ...process.env, DISPLAY: display }, encoding: 'utf8' })
    if (status !== 0) throw new Error(`xdotool ${args.join(' ')}: ${stderr}`)
  }
  return {
    display,
    press: (key) => {
      run('search', '--onlyvisible', '--class', 'chromium', 'windowfocus', '--sync')
      run('key', '--clearmodifiers', key)
    },
    choose: (letter) => run('key', letter),
    close: () => server.kill()
  }
}

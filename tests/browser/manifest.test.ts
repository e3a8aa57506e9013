/** What the built extension asks of the browser: all of it, and nothing more. */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { BUILT } from '../../entrypoints/companion/places.mjs'

const manifest = JSON.parse(readFileSync(join(BUILT.chrome, 'manifest.json'), 'utf8'))

test('the permissions are exactly those that are used', () => {
  expect(manifest.permissions.toSorted()).toEqual(['activeTab', 'contextMenus', 'scripting', 'sidePanel'])
  for (const name of [
    'host_permissions',
    'optional_permissions',
    'optional_host_permissions',
    'content_scripts',
    'externally_connectable'
  ]) {
    expect(manifest, name).not.toHaveProperty(name)
  }
  expect(manifest).not.toHaveProperty('web_accessible_resources')
})

test('extension pages may reach nothing outside their package', () => {
  expect(manifest.content_security_policy).toEqual({
    extension_pages:
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; " +
      "connect-src 'none'; form-action 'none'; base-uri 'none'"
  })
})

test('it does not run in private windows, so nothing of them is kept', () => {
  expect(manifest.incognito).toBe('not_allowed')
})

test('a public key fixes the id, and no private key lies in the package', () => {
  const digest = createHash('sha256').update(Buffer.from(manifest.key, 'base64')).digest('hex').slice(0, 32)
  const id = [...digest].map((digit) => String.fromCharCode(97 + Number.parseInt(digit, 16))).join('')
  expect(id).toBe('mgafbffjckcilbdaijkdbcdibfiejjka')
  expect(filesIn(BUILT.chrome).filter((file) => file.endsWith('.pem') || readFileSync(file).includes('PRIVATE KEY'))).toEqual([])
})

test('there are two keyboard commands, a popup, a side panel and a worker', () => {
  const keys = Object.entries<{ suggested_key: { default: string } }>(manifest.commands).map(([name, its]) => [
    name,
    its.suggested_key.default
  ])
  expect(Object.fromEntries(keys)).toEqual({ _execute_action: 'Alt+Shift+M', 'read-this-page': 'Alt+Shift+K' })
  expect(manifest.action.default_popup).toBe('popup.html')
  expect(manifest.side_panel.default_path).toBe('sidepanel.html')
  expect(manifest.background.service_worker).toBe('background.js')
  expect(statSync(join(BUILT.chrome, 'workroom.html')).isFile()).toBe(true)
})

test('the words of the manifest stand in its messages, and fit', () => {
  const messages = JSON.parse(readFileSync(join(BUILT.chrome, '_locales/en/messages.json'), 'utf8'))
  const used = [...JSON.stringify(manifest).matchAll(/__MSG_(\w+)__/g)].map((match) => match[1])
  expect(used.length).toBeGreaterThan(0)
  for (const name of used) expect(messages[name ?? '']?.message, name).toBeTruthy()
  expect(messages.extensionDescription.message.length).toBeLessThanOrEqual(132)
})

test('every icon is a square picture of its named size', () => {
  for (const size of ['16', '32', '48', '128']) {
    const png = readFileSync(join(BUILT.chrome, manifest.icons[size]))
    expect([png.readUInt32BE(16), png.readUInt32BE(20)], size).toEqual([Number(size), Number(size)])
  }
})

function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
}

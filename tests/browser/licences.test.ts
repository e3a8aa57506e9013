/** What is built holds the licence of everything built in, whole; and what it needs to run is what package.json says it does. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { LICENCES_FILE, packageOf } from '../../entrypoints/companion/licences.mjs'
import { BUILT, inRoot } from '../../entrypoints/companion/places.mjs'

const { dependencies, license } = JSON.parse(readFileSync(inRoot('package.json'), 'utf8'))
/** Parts of the builders that run in what they build. */
const OF_BUILDERS = /^(?:wxt|@wxt-dev\/browser|vite|vite-plugin-pwa|workbox-[a-z-]+|rolldown|@oxc-project\/runtime)$/

const texts = (folder: string): Map<string, string> => {
  const file = readFileSync(join(folder, LICENCES_FILE), 'utf8')
  return new Map(
    file
      .split(/^=== /m)
      .slice(1)
      .map((part) => [part.split(' ')[0] ?? '', part])
  )
}

test.each(['chrome', 'workroom'] as const)('%s: each package that is built in, with its text', (part) => {
  const found = texts(BUILT[part])
  expect(found.get('Seam')).toContain('MIT License')
  for (const [name, text] of found) {
    expect(text, name).toMatch(/Permission is hereby granted|Apache License|Redistribution and use|Mozilla Public License/)
    const own = ['LICENSE', 'LICENSE.md', 'license'].map((file) => inRoot(`node_modules/${name}/${file}`)).find(existsSync)
    if (own !== undefined) expect(text).toContain(readFileSync(own, 'utf8').trim())
  }
})

/** Packages with what they depend on themselves. */
function withTheirs(names: readonly string[]): string[] {
  const found = new Set<string>()
  const add = (name: string): void => {
    const file = inRoot(`node_modules/${name}/package.json`)
    if (found.has(name) || !existsSync(file)) return
    found.add(name)
    Object.keys(JSON.parse(readFileSync(file, 'utf8')).dependencies ?? {}).forEach(add)
  }
  names.forEach(add)
  return [...found]
}

test('what is built in is what runs by package.json, and nothing else', () => {
  const built = new Set(
    [BUILT.chrome, BUILT.firefox, BUILT.workroom]
      .flatMap((folder) => [...texts(folder).keys()])
      .filter((name) => name !== 'Seam' && !OF_BUILDERS.test(name))
  )
  // the polyfill's module puts in the polyfill and is itself no code of the bundle
  const declared = withTheirs(Object.keys(dependencies)).filter((name) => name !== '@wxt-dev/webextension-polyfill')
  expect([...built].filter((name) => name !== '@wxt-dev/webextension-polyfill').sort()).toEqual(declared.sort())
})

test('the project has the licence that package.json names', () => {
  expect(license).toBe('MIT')
  expect(readFileSync(inRoot('LICENSE'), 'utf8')).toContain('MIT License')
})

test.each([
  ['/x/node_modules/preact/dist/a.mjs', 'preact'],
  ['/x/node_modules/wxt/node_modules/@wxt-dev/browser/a.mjs', '@wxt-dev/browser'],
  ['\0/x/node_modules/zod/a.js?v=1', 'zod'],
  ['/x/core/reckon.ts', null]
])('%s is of %s', (id, name) => expect(packageOf(id)).toBe(name))

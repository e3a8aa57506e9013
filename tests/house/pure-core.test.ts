/** The core takes data and returns data: no clock, no chance, no browser, no console. Each is passed in by whoever calls. */
import { expect, test } from 'vitest'
import { sourcesIn } from './project.ts'
import { reaches } from './reaches.ts'

test('the core reaches for no clock, chance, browser or console', () => {
  const files = sourcesIn('core')
  expect(files.length).toBeGreaterThan(15)
  expect(files.flatMap(reaches)).toEqual([])
})

test.each([
  ['Date.now()', 'const t = Date.now()'],
  ['new Date()', 'const t = new Date()'],
  ['Math.random', 'const r = Math.random()'],
  ['console', 'console.log(1)'],
  ['document', 'const b = document.body'],
  ['window', 'window.alert(1)'],
  ['globals in an object', 'const o = { fetch }'],
  ['crypto', 'const id = crypto.randomUUID()']
])('%s would be seen', (_, text) => {
  expect(reaches({ path: 'core/x.ts', text })).toHaveLength(1)
})

test('a name of its own, or a field that is called so, is no fault', () => {
  const text = 'const window = 3; const o = { document: window }; const d = o.document; const t = new Date("2020-01-01")'
  expect(reaches({ path: 'core/x.ts', text })).toEqual([])
})

/** No table that is asked by text has anything beneath it: a listing may say “constructor”. tests/law/words-of-objects.test.ts asks them all. */
import { expect, test } from 'vitest'
import { sourcesIn } from './project.ts'
import { openTables } from './text-tables.ts'

/** These are never asked by text: their rows go into a table or a tree that has nothing beneath it (core/words/languages.ts, phrase-trie.ts). */
const PUT_TOGETHER = /^core\/(words\/[a-z]{2}|reading\/languages)\//

test('every table that is asked by text is made with table() of core/ids/table.ts, or is a Map', () => {
  const files = sourcesIn('core', 'components', 'entrypoints').filter(({ path }) => !PUT_TOGETHER.test(path))
  expect(files.length).toBeGreaterThan(100)
  expect(files.flatMap(openTables)).toEqual([])
})

test.each([
  'const LETTERS: Record<string, string> = { small: "S" }',
  'export const A: Readonly<Partial<Record<string, number>>> = { a: 1 }',
  'function f() { const met: Record<string, number> = {} }',
  'const B: { [word: string]: number } = { a: 1 }'
])('%s would be seen', (text) => expect(openTables({ path: 'core/x.ts', text })).toHaveLength(1))

test.each(['const A = table<string>({ a: "b" })', 'const B: Record<Fit, number> = { close: 1 }', 'const C = new Map<string, number>()'])(
  '%s is no fault',
  (text) => expect(openTables({ path: 'core/x.ts', text })).toEqual([])
)

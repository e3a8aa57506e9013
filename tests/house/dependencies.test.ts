/** package.json names what the project imports, and nothing else. */
import { expect, test } from 'vitest'
import { importsOf, projectFiles, read } from './project.ts'

/** Packages that no file imports, each with what uses it. */
const USED_WITHOUT_IMPORT: Record<string, string> = {
  '@biomejs/biome': 'npm run check',
  '@types/node': 'the types of Node',
  '@wxt-dev/webextension-polyfill': 'a module named in wxt.config.ts',
  'happy-dom': 'the environment of the tests that draw a page',
  'schema-dts': 'read as text by tests/reference/reading-vocabulary.test.ts',
  'tsx': 'npm run bench',
  'typescript': 'npm run check',
  'web-ext': 'the checker of Firefox add-ons, run as a program by tests/browser/firefox.test.ts',
  'webextension-polyfill': 'what @wxt-dev/webextension-polyfill puts in'
}

const { dependencies, devDependencies } = JSON.parse(read('package.json'))
const declared = Object.keys({ ...dependencies, ...devDependencies })
/** `@scope/name/part` and `name/part` are of one package. */
const packageOf = (written: string): string => written.split('/', written.startsWith('@') ? 2 : 1).join('/')
const imported = new Map(
  projectFiles
    .filter((path) => /\.(tsx?|mjs)$/.test(path))
    .flatMap((path) => importsOf({ path, text: read(path) }).map((written) => [written, path] as const))
    .filter(([written]) => !written.startsWith('.') && !written.startsWith('node:'))
    .map(([written, path]) => [packageOf(written), path])
)

test('what is imported is declared', () => {
  expect(imported.size).toBeGreaterThan(10)
  const undeclared = [...imported]
    .filter(([name]) => !declared.includes(name))
    .map(([name, path]) => `${path} imports "${name}": add it to package.json, with one version.`)
  expect(undeclared).toEqual([])
})

test('what is declared is used', () => {
  const unused = declared
    .filter((name) => !imported.has(name) && USED_WITHOUT_IMPORT[name] === undefined)
    .map((name) => `"${name}" is imported nowhere: drop it from package.json, or say in USED_WITHOUT_IMPORT what uses it.`)
  expect(unused).toEqual([])
  expect(Object.keys(USED_WITHOUT_IMPORT).filter((name) => !declared.includes(name) || imported.has(name))).toEqual([])
})

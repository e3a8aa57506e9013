/** What may lie where, and what no file may hold. */
import { expect, test } from 'vitest'
import { place, projectFiles, read, sourcesIn, walk } from './project.ts'

const TOP_FOLDERS = ['.ci', 'components', 'core', 'entrypoints', 'public', 'tests']
const TOP_FILES = [
  '.gitignore',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'biome.json',
  'package-lock.json',
  'package.json',
  'tsconfig.json',
  'vitest.config.ts',
  'wxt.config.ts'
]
const TEST_FOLDERS = ['bench', 'browser', 'corpus', 'demo-shop', 'house', 'law', 'reference', 'unit']
const IS_TEXT = /\.(tsx?|mjs|css|html|json|md|svg|csv|txt)$|^\.ci\/run$/

test('nothing new lies at the top of the project', () => {
  const strangers = projectFiles
    .filter((path) => (path.includes('/') ? !TOP_FOLDERS.includes(path.split('/')[0] ?? '') : !TOP_FILES.includes(path)))
    .map((path) => `${path}: put it into one of ${TOP_FOLDERS.join(', ')}, or its setting into package.json.`)
  expect(strangers).toEqual([])
})

test('every folder of tests is one that npm test asks', () => {
  const strangers = projectFiles
    .filter((path) => path.startsWith('tests/') && !TEST_FOLDERS.includes(path.split('/')[1] ?? ''))
    .map((path) => `${path}: it would never run; put it into one of ${TEST_FOLDERS.join(', ')}.`)
  expect(strangers).toEqual([])
})

test('no catch-all folder, and no test left focused or skipped without a reason', () => {
  expect(
    projectFiles
      .filter((path) => /(^|\/)(utils?|helpers?|misc|common)(\/|\.tsx?$)/.test(path))
      .map((path) => `${path}: name it after what it knows.`)
  ).toEqual([])
  const focused = projectFiles
    .filter((path) => /\.test\.tsx?$/.test(path) && path !== 'tests/house/layout.test.ts')
    .filter((path) => /\b(test|it|describe)\.(only|skip|todo)\(/.test(read(path)))
    .map((path) => `${path}: let every test run; one that can't run here says so with context.skip(reason).`)
  expect(focused).toEqual([])
})

test('a thing left to do carries its date and its reason', () => {
  const bare = projectFiles
    .filter((path) => IS_TEXT.test(path) && path !== 'package-lock.json' && path !== 'tests/house/layout.test.ts')
    .flatMap((path) =>
      read(path)
        .split('\n')
        .flatMap((line, index) =>
          /\b(TODO|FIXME|XXX)\b/.test(line) && !/TODO \d{4}-\d{2}-\d{2}: \S.{9,}/.test(line)
            ? [`${path}:${index + 1}: write "TODO 2026-01-31: the reason", or do it.`]
            : []
        )
    )
  expect(bare).toEqual([])
})

test('no silenced check, and no value of any type whatever', () => {
  const sources = sourcesIn('core', 'components', 'entrypoints', 'tests').filter(({ path }) => path !== 'tests/house/layout.test.ts')
  const silenced = sources.flatMap(({ path, text }) =>
    text
      .split('\n')
      .flatMap((line, index) =>
        /@ts-(ignore|expect-error|nocheck)|biome-ignore|eslint-disable/.test(line)
          ? [`${path}:${index + 1}: mend what the check says instead of silencing it.`]
          : []
      )
  )
  for (const file of sources) {
    walk(file, (node) => {
      if (node.type === 'TSAnyKeyword') silenced.push(`${place(file, node.start)}: say the type, or unknown and look.`)
    })
  }
  expect(silenced).toEqual([])
})

test('page text stays text, and nothing is made from a string of HTML or code', () => {
  const made = sourcesIn('core', 'components', 'entrypoints').flatMap(({ path, text }) =>
    text
      .split('\n')
      .flatMap((line, index) =>
        /innerHTML|outerHTML|dangerouslySetInnerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function\(|createContextualFragment/.test(
          line
        )
          ? [`${path}:${index + 1}: set text with textContent or as a child in JSX.`]
          : []
      )
  )
  expect(made).toEqual([])
})

/** Addresses are names here, never places to call: of a standard's namespace, and of sources in tables. */
const NAMES_NOT_PLACES = ['http://www.w3.org/', 'https://schema.org', 'http://schema.org']

test('no address stands in the product, but in tables of sources', () => {
  const found = sourcesIn('core', 'components', 'entrypoints')
    .filter(({ path }) => !/(^|\/)sources?\.ts$|-sources?\.ts$/.test(path) && !path.startsWith('entrypoints/companion/'))
    .flatMap(({ path, text }) =>
      [...text.matchAll(/(?:https?|wss?):\/\/[^\s'"`)]*/g)]
        .filter(([address]) => !NAMES_NOT_PLACES.some((name) => address.startsWith(name)))
        .map(([address]) => `${path} holds ${address}: the product calls nothing; a source belongs into a table named sources.ts.`)
    )
  expect(found).toEqual([])
})

test('versions are exact, so that every clone is the same', () => {
  const { dependencies, devDependencies } = JSON.parse(read('package.json'))
  const loose = Object.entries({ ...dependencies, ...devDependencies })
    .filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(String(version)))
    .map(([name, version]) => `${name} ${version}: write one version.`)
  expect(loose).toEqual([])
})

const LONGEST_LINE = 160
/** Texts as sellers write them are kept in one piece. */
const HOLDS_TEXTS = 'tests/corpus/'

/** The lines of a file that nobody can read beside another, each with its place. */
const longLines = (path: string, text: string): string[] =>
  text
    .split('\n')
    .flatMap((line, index) =>
      line.length > LONGEST_LINE
        ? [`${path}:${index + 1} has ${line.length} characters: break the text or the comment before ${LONGEST_LINE}, a phrase a line.`]
        : []
    )

test('no line is longer than a diff shows', () => {
  const files = projectFiles
    .filter((path) => /^(core|components|entrypoints|tests)\/.*\.(tsx?|mjs|css)$/.test(path) && !path.startsWith(HOLDS_TEXTS))
    .map((path) => ({ path, lines: longLines(path, read(path)) }))
  expect(files.length).toBeGreaterThan(400)
  expect(files.flatMap(({ lines }) => lines)).toEqual([])
})

test('a long line would be seen', () => {
  expect(longLines('core/x.ts', `// short\n// ${'x'.repeat(LONGEST_LINE)}`)).toHaveLength(1)
  expect(longLines('core/x.ts', 'x'.repeat(LONGEST_LINE))).toEqual([])
})

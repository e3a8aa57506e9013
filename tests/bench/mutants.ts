/**
 * Chooses lines of the logic by chance and writes what the mutation tester needs to change them, one change at a time (tests/bench/mutants.md says
 * how it is run: in a copy, for its packages are none of ours). `npx tsx tests/bench/mutants.ts FOLDER ROOMS`, ROOMS of plan,alterations,wearer,reading,records;
 * LINES=80 over all rooms, SEED=7.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { randomFrom } from './simulated/chance.ts'

const LINES = Number(process.env.LINES ?? 80)
const SEED = Number(process.env.SEED ?? 20261130)
const [, , folder = '.', rooms = 'records'] = process.argv

/** Each room with the tests that are asked of it first; laws and whole answers, which are slow, are asked of what survives (WITH_LAWS=1). */
const ROOMS: Readonly<Record<string, readonly string[]>> = {
  plan: ['unit/core/**/*', 'corpus/plans/*', 'corpus/cut/*'],
  alterations: ['unit/core/**/*', 'corpus/plans/*'],
  wearer: ['unit/core/**/*', 'corpus/plans/*', 'corpus/cut/*'],
  reading: ['unit/reading/**/*', 'corpus/*', 'corpus/written/*'],
  records: ['unit/records/*']
}
const chosenRooms = rooms.split(',')
const asked = new Set([
  ...chosenRooms.flatMap((room) => ROOMS[room] ?? []),
  ...(process.env.WITH_LAWS === '1' ? ['law/*', 'corpus/**/*'] : [])
])
/** They measure time, try patterns one by one or draw thousands of sheets, and would say nothing that others do not. */
const LEFT_OUT = ['law/growth', 'law/reading-patterns', 'law/mutated-backups', 'law/templates', 'law/sheet-and-templates']
/** Tables: their rows are held by cases and sources, and a change of a figure in one is no change of logic. */
const TABLES = [
  /^core\/alterations\/(?:bodies|closures|dresses|elastic|knits|leg-length|legs|pleats|shoulders|skirts|sleeves|waist|minutes|one-size)\.ts$/,
  /^core\/wearer\/(?:body|ease|survey|tolerance)\.ts$/,
  /^core\/wearer\/cut\/(?:growth|jackets|legs|shoulders|skirts|tops)\.ts$/,
  /^core\/reading\/languages\//,
  /^core\/reading\/(?:garment\/kind-evidence|garment\/points-by-kind|quantities\/plausible)\.ts$/,
  /^core\/records\/(?:schemas|garment-schemas|migrations)\.ts$/
]
/** Nothing of these runs: what stands in them is a type, a comment, an import or a bracket. */
const NO_CODE = /^\s*(?:$|\/\/|\/?\*|import\b|(?:export )?(?:interface|type)\b|[\])}>(,;]+$)/

const files = Object.keys(ROOMS)
  .map((name) => `core/${name}`)
  .flatMap((within) => readdirSync(within, { recursive: true, encoding: 'utf8' }).map((name) => join(within, name)))
  .filter((path) => path.endsWith('.ts') && !TABLES.some((table) => table.test(path)))
  .sort()
const places = files.flatMap((path) =>
  readFileSync(path, 'utf8')
    .split('\n')
    .flatMap((line, at) => (NO_CODE.test(line) ? [] : [`${path}:${at + 1}-${at + 1}`]))
)

const random = randomFrom(SEED)
const chosen = new Set<string>()
while (chosen.size < Math.min(LINES, places.length)) chosen.add(places[Math.floor(random() * places.length)] ?? '')

const VITEST = `import { defineConfig } from 'vitest/config'
import preact from '@preact/preset-vite'
export default defineConfig({ plugins: [preact()], test: {
  include: ${JSON.stringify([...asked].map((tests) => `tests/${tests}.test.{ts,tsx}`))}, benchmark: { include: [] },
  isolate: false, fileParallelism: false, testTimeout: 120_000,
  exclude: ${JSON.stringify(LEFT_OUT.map((test) => `tests/${test}.test.ts`))} } })
`
const config = {
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'vitest.mutants.config.ts' },
  mutate: [...chosen].filter((place) => chosenRooms.some((room) => place.startsWith(`core/${room}/`))).sort(),
  // types are stripped, never checked: a mutant need not fit them
  tsconfigFile: 'none.json',
  disableTypeChecks: false,
  coverageAnalysis: 'perTest',
  // what is worked out when a file is loaded is a table
  ignoreStatic: true,
  concurrency: Number(process.env.AT_ONCE ?? 1),
  timeoutMS: 90_000,
  dryRunTimeoutMinutes: 60,
  reporters: ['json', 'clear-text'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: `mutants-${chosenRooms[0]}.json` },
  incremental: true,
  incrementalFile: `mutants-before-${chosenRooms[0]}.json`,
  ignorePatterns: ['.output', 'dist', 'test-results', 'mutants*.json'],
  allowEmpty: true
}
writeFileSync(join(folder, 'vitest.mutants.config.ts'), VITEST)
writeFileSync(join(folder, 'stryker.config.json'), JSON.stringify(config, null, 2))
console.log(`seed ${SEED}, ${rooms}: ${config.mutate.length} of ${chosen.size} of ${places.length} lines of logic in ${files.length} files`)

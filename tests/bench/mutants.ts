/**
 * Changes lines of the logic, drawn by chance, one change at a time, and tells which changes no test sees. It runs in a copy (tests/bench/mutants.md), for it
 * writes into the sources, and what makes the changes is none of our packages. `npx tsx tests/bench/mutants.ts LOG`; LINES=80, SEED=7; what stands
 * in the log is not asked again. ONLY=plan,records draws from these rooms alone, FILES=price.ts from this file, with the quick tests alone.
 */
import { spawnSync } from 'node:child_process'
import { appendFileSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import preact from '@preact/preset-vite'
import { createVitest, type TestSpecification } from 'vitest/node'
import { randomFrom } from './simulated/chance.ts'

const LINES = Number(process.env.LINES ?? 80)
const SEED = Number(process.env.SEED ?? 20261130)
const ONLY = process.env.ONLY?.split(',')
const FILES = process.env.FILES?.split(',')
const [, , log = 'mutants.log'] = process.argv
/** A change that makes the tests of its room run longer, ms, is seen. */
const HANGS_MS = FILES === undefined ? 150_000 : 50_000
const HANGS = 'it hangs'
/** What it ends with then, for the tests of it go on: begun again, it goes on behind that change. */
const AGAIN = 3

/** Each room with the tests that are asked of it: those that are quick, and where they see nothing the laws, whole answers and what comes from outside. */
const ROOMS: Readonly<Record<string, { first: RegExp; further: RegExp }>> = {
  plan: {
    first: /unit\/core\/plan\/(?!.*brute)|corpus\/plans\/|corpus\/cut\/words/,
    further:
      /corpus\/(?:told|tailor)|law\/(?:reckon|conditions|verdict|would|doubts|total|brief|odd|worksheet|sheet)|reference\/solver\/(?:second|feas)|brute/
  },
  alterations: {
    first: /unit\/core\/(?!plan\/solve|worksheet)|corpus\/plans\//,
    further:
      /corpus\/(?:told|tailor)|law\/(?:reckon|cut|options|brief|templates|worksheet)|reference\/(?:worked|worksheet|cut)|unit\/core\/worksheet/
  },
  wearer: {
    first: /unit\/core\/[^/]*$|corpus\/plans\/|corpus\/cut\/words/,
    further: /corpus\/(?:told|tailor)|law\/(?:reckon|cut|contra|growth|verdict)|reference\/(?:hand|statistics|cut|likely|garment)/
  },
  reading: {
    first: /unit\/reading\/|corpus\/corpus|corpus\/written/,
    further: /corpus\/(?:told|tailor)|law\/(?:reading\.|contra)|reference\/reading-(?:units|numbers|vocabulary)/
  },
  records: { first: /unit\/records\//, further: /law\/(?:mutated|yes|rows)|unit\/(?:view|workroom|capture)\// }
}
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

interface Place {
  line: number
  column: number
}
interface Mutant {
  file: string
  start: Place
  end: Place
  /** What kind of change, and the text that takes the place of what stands there. */
  kind: string
  replacement: string
}

const random = randomFrom(SEED)

/** Lines with code, some of all, by file. */
function chosenLines(): Map<string, number[]> {
  const files = Object.keys(ROOMS)
    .filter((room) => ONLY?.includes(room) ?? true)
    .flatMap((room) => readdirSync(`core/${room}`, { recursive: true, encoding: 'utf8' }).map((name) => join('core', room, name)))
    .filter((path) => path.endsWith('.ts') && !TABLES.some((table) => table.test(path)))
    .filter((path) => FILES?.some((name) => path.endsWith(name)) ?? true)
    .sort()
  const places = files.flatMap((path) =>
    readFileSync(path, 'utf8')
      .split('\n')
      .flatMap((text, line) => (NO_CODE.test(text) ? [] : [{ path, line }]))
  )
  const chosen = new Map<number, { path: string; line: number }>()
  while (chosen.size < Math.min(LINES, places.length)) {
    const at = Math.floor(random() * places.length)
    const place = places[at]
    if (place !== undefined) chosen.set(at, place)
  }
  console.log(`seed ${SEED}: ${chosen.size} of ${places.length} lines of logic in ${files.length} files`)
  return grouped([...chosen.values()])
}
function grouped(places: readonly { path: string; line: number }[]): Map<string, number[]> {
  const lines = new Map<string, number[]>()
  for (const { path, line } of places) lines.set(path, [...(lines.get(path) ?? []), line])
  return lines
}

/** Every change of these lines that the instrumenter knows, in an order drawn by chance: a part of them is a sample, too. */
async function mutantsOf(lines: ReadonlyMap<string, readonly number[]>): Promise<Mutant[]> {
  const [injecting, tokens, instrumenting] = ['typed-inject', '@stryker-mutator/api/plugin', '@stryker-mutator/instrumenter']
  const { createInjector } = await import(injecting)
  const { commonTokens } = await import(tokens)
  const { createInstrumenter } = await import(instrumenting)
  const silent = new Proxy({}, { get: () => () => false })
  const injector = createInjector().provideValue(commonTokens.logger, silent)
  const instrumenter = injector.provideValue(commonTokens.getLogger, () => silent).injectFunction(createInstrumenter)
  const found: Mutant[] = []
  for (const [file, its] of lines) {
    const content = readFileSync(file, 'utf8')
    const mutate = its.map((line) => ({ start: { line, column: 0 }, end: { line, column: content.split('\n')[line]?.length ?? 0 } }))
    const options = { ignorers: [], excludedMutations: [], plugins: null, noHeader: true }
    const { mutants } = await instrumenter.instrument([{ name: join(process.cwd(), file), content, mutate }], options)
    for (const { location, mutatorName, replacement } of mutants) found.push({ file, ...location, kind: mutatorName, replacement })
  }
  for (let at = found.length - 1; at > 0; at--) {
    const other = Math.floor(random() * (at + 1))
    const [a, b] = [found[at], found[other]]
    if (a !== undefined && b !== undefined) [found[at], found[other]] = [b, a]
  }
  return found
}

const lines = chosenLines()
const mutants = await mutantsOf(lines)
/** The name of the file that is changed: tests of that name are asked first. */
let near = ''
class NearestFirst {
  sort(specs: TestSpecification[]): TestSpecification[] {
    const rank = ({ moduleId }: TestSpecification) =>
      moduleId.includes(near) ? 0 : moduleId.includes('/unit/') ? 1 : moduleId.includes('/corpus/') ? 2 : 3
    return [...specs].sort((a, b) => rank(a) - rank(b))
  }
  shard = (specs: TestSpecification[]): TestSpecification[] => specs
}
const vitest = await createVitest(
  'test',
  {
    ...{ watch: false, config: false, bail: 1, isolate: false, fileParallelism: false, maxWorkers: 1, pool: 'threads' },
    include: ['tests/{unit,corpus,law,reference}/**/*.test.{ts,tsx}'],
    testTimeout: 120_000,
    reporters: [{}],
    sequence: { sequencer: NearestFirst }
  },
  { plugins: [preact()] }
)
const tests = await vitest.globTestSpecifications(['tests/'])

/** What the compiler refuses can't be written, so no test is owed for it. What is unused or unreachable afterwards doesn't count as refused. */
function compiles(): boolean {
  const lenient = ['--noUnusedLocals', 'false', '--noUnusedParameters', 'false', '--allowUnreachableCode', 'true']
  const { status } = spawnSync('node_modules/.bin/tsc', [
    '--noEmit',
    '--incremental',
    '--tsBuildInfoFile',
    'node_modules/.mutants',
    ...lenient
  ])
  return status === 0
}

/** The test that saw it; null: none did; undefined: it can't be compiled, and nothing was asked. */
async function seenBy({ file, start, end, replacement }: Mutant): Promise<string | null | undefined> {
  const content = readFileSync(file, 'utf8')
  const at = ({ line, column }: Place): number =>
    content
      .split('\n')
      .slice(0, line)
      .reduce((sum, text) => sum + text.length + 1, 0) + column
  near = basename(file, '.ts')
  writeFileSync(file, content.slice(0, at(start)) + replacement + content.slice(at(end)))
  vitest.invalidateFile(join(process.cwd(), file))
  // what an earlier change broke is not counted again
  vitest.state.filesMap.clear()
  vitest.state.idMap.clear()
  vitest.state.errorsSet.clear()
  const room = ROOMS[file.split('/')[1] ?? '']
  try {
    if (!compiles()) return undefined
    for (const some of FILES === undefined ? [room?.first, room?.further] : [room?.first]) {
      const asked = tests.filter(({ moduleId }) => some?.test(moduleId))
      const hung = new Promise<'hung'>((done) => setTimeout(() => done('hung'), HANGS_MS))
      if ((await Promise.race([vitest.runTestSpecifications(asked), hung])) === 'hung') return HANGS
      const failed = vitest.state.getFiles().find(({ result }) => result?.state === 'fail')
      if (failed) return failed.name
      if (vitest.state.getUnhandledErrors().length > 0) return 'an error'
    }
    return null
  } catch (error) {
    return String(error)
  } finally {
    writeFileSync(file, content)
    vitest.invalidateFile(join(process.cwd(), file))
  }
}

const nameOf = ({ file, start, end, kind, replacement }: Mutant): string =>
  `${file}:${start.line + 1}:${start.column + 1}-${end.line + 1}:${end.column + 1} ${kind} ${JSON.stringify(replacement.slice(0, 90))}`
const asked = new Map((existsSync(log) ? readFileSync(log, 'utf8') : '').split('\n').map((row) => [row.split('\t')[1], row]))
const counts = { seen: 0, survived: 0, refused: 0 }
for (const mutant of mutants) {
  const name = nameOf(mutant)
  let row = asked.get(name)
  // it ended the whole run when it was asked: nobody overlooks that
  if (row?.startsWith('begun')) row = `seen\t${name}\tit ends the run`
  if (row === undefined) {
    appendFileSync(log, `begun\t${name}\t\n`)
    const by = await seenBy(mutant)
    const outcome = by === undefined ? 'refused' : by === null ? 'survived' : 'seen'
    row = `${outcome}\t${name}\t${by ?? ''}`
    appendFileSync(log, `${row}\n`)
    if (by === HANGS) process.exit(AGAIN)
  }
  counts[row.split('\t')[0] as keyof typeof counts]++
}
const { seen, survived, refused } = counts
const share = Math.round((seen / (seen + survived)) * 100)
console.log(
  `${mutants.length} changes, ${refused} refused by the compiler; of the others ${survived} that no test saw: ${share} in 100 seen`
)
process.exit()

/** npm test: installs, finds a browser, builds, asks every test, and closes with one honest line. */
import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { inRoot, ROOT } from './places.mjs'
import { runStep, stopWith } from './run-step.mjs'
import { sumOf } from './sum.mjs'

const { setUp } = await import('./set-up.mjs')
await setUp()
const { ensureChromium } = await import('./chromium.mjs')
const browser = await ensureChromium()
if ('sentence' in browser) stopWith(browser.sentence)
const { buildWhenStale } = await import('./build.mjs')
await buildWhenStale('chrome', 'firefox', 'workroom')

const REPORTS = inRoot('test-results')
rmSync(REPORTS, { recursive: true, force: true })
mkdirSync(REPORTS, { recursive: true })

/** The browser's tests run alone: they wait for real windows, and a busy machine would make them late. */
const RUNS = [['house', 'unit', 'saved', 'law', 'reference', 'corpus'], ['browser']]
const total = { passed: 0, failed: 0, skipped: 0 }
for (const projects of RUNS) {
  const began = Date.now()
  const sum = await ask(projects)
  console.log(`${projects.join(', ')}: ${sum.passed + sum.failed} tests in ${Math.round((Date.now() - began) / 1000)} s`)
  for (const failure of sum.failures) console.log(failure)
  total.passed += sum.passed
  total.failed += sum.failed
  total.skipped += sum.skipped
}
console.log(`${total.passed} passed, ${total.failed} failed${total.skipped > 0 ? `, ${total.skipped} skipped` : ''}`)
process.exit(total.failed > 0 || total.passed === 0 ? 1 : 0)

/** @param {string[]} projects */
async function ask(projects) {
  const report = join(REPORTS, `${projects[0]}.json`)
  const { code, output } = await runStep(
    process.execPath,
    [
      inRoot('node_modules/vitest/vitest.mjs'),
      'run',
      '--reporter=json',
      `--outputFile=${report}`,
      ...projects.flatMap((name) => ['--project', name])
    ],
    { cwd: ROOT, env: { ...process.env, CHROMIUM: /** @type {{ path: string }} */ (browser).path } }
  )
  return sumOf(readReport(report), code, output)
}

/** @param {string} file */
function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'))
  } catch {
    // the runner ended before it wrote one: sumOf counts that as a failure
    return null
  }
}

import preact from '@preact/preset-vite'
import { defineConfig } from 'vitest/config'

/**
 * One project a kind of question; `npx vitest run --project law` asks one of them. Where only the core and what is drawn are asked, the files of a
 * worker share what they import: to bring the reader and the pages anew for each took longer than the tests.
 */
const project = (name: string, include = [`tests/${name}/**/*.test.{ts,tsx}`], isolate = false) => ({
  extends: true as const,
  test: { name, environment: 'node' as const, isolate, include, benchmark: { include: [] } }
})
/** What is saved and the pages around it: each file has its own database and its own modules. */
const SAVED = '{records,view,workroom,capture}'

export default defineConfig({
  plugins: [preact()],
  test: {
    passWithNoTests: false,
    // by itself it leaves one core alone, and of two that is half
    maxWorkers: '100%',
    projects: [
      project('house'),
      project('unit', [
        `tests/unit/!${SAVED.replace('{', '(').replaceAll(',', '|').replace('}', ')')}/**/*.test.{ts,tsx}`,
        'tests/unit/*.test.{ts,tsx}'
      ]),
      project('saved', [`tests/unit/${SAVED}/**/*.test.{ts,tsx}`], true),
      project('law'),
      project('reference'),
      project('corpus'),
      {
        // the built extension in a real browser: one browser at a time, and time for it to start
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          benchmark: { include: [] },
          fileParallelism: false,
          isolate: false,
          testTimeout: 60_000,
          hookTimeout: 60_000
        }
      }
    ]
  }
})

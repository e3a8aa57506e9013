import preact from '@preact/preset-vite'
import { defineConfig } from 'vitest/config'

/**
 * One project a kind of question; `npx vitest run --project law` asks one of them. Where nothing but the core and files are asked, the files of
 * a worker share what they import: to bring the reader anew for each took longer than most of the tests.
 */
const project = (name: string, isolate = false) => ({
  extends: true as const,
  test: { name, environment: 'node' as const, isolate, include: [`tests/${name}/**/*.test.{ts,tsx}`], benchmark: { include: [] } }
})

export default defineConfig({
  plugins: [preact()],
  test: {
    passWithNoTests: false,
    projects: [
      project('house'),
      project('unit', true),
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
          testTimeout: 60_000,
          hookTimeout: 60_000
        }
      }
    ]
  }
})

import preact from '@preact/preset-vite'
import { defineConfig } from 'vitest/config'

/** One project a kind of question; `npx vitest run --project law` asks one of them. */
const project = (name: string, environment: 'node' | 'happy-dom' = 'node') => ({
  extends: true as const,
  test: { name, environment, include: [`tests/${name}/**/*.test.{ts,tsx}`], benchmark: { include: [] } }
})

export default defineConfig({
  plugins: [preact()],
  test: {
    passWithNoTests: false,
    projects: [
      project('house'),
      project('unit'),
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

/** The closing line of npm test may never be better than what happened. */
import { expect, test } from 'vitest'
import { sumOf } from '../../entrypoints/companion/sum.mjs'

const file = (status: string, ...tests: string[]) => ({
  name: 'a.test.ts',
  status,
  message: 'could not load',
  assertionResults: tests.map((its, index) => ({ status: its, fullName: `test ${index}`, failureMessages: ['because'] }))
})
const counts = ({ passed, failed, skipped }: ReturnType<typeof sumOf>) => [passed, failed, skipped]

test('passes, failures and every manner of skipping are counted apart', () => {
  const report = { testResults: [file('passed', 'passed', 'passed', 'pending', 'todo', 'skipped'), file('failed', 'passed', 'failed')] }
  expect(counts(sumOf(report, 1, ''))).toEqual([3, 1, 3])
})

test('a file that could not be loaded is a failure, and is named', () => {
  const sum = sumOf({ testResults: [file('passed', 'passed'), file('failed')] }, 1, '')
  expect(counts(sum)).toEqual([1, 1, 0])
  expect(sum.failures.join()).toContain('a.test.ts')
})

test('a runner that ends with an error, or without a report, is a failure whatever passed', () => {
  expect(counts(sumOf({ testResults: [file('passed', 'passed')] }, 1, 'unhandled'))).toEqual([1, 1, 0])
  expect(counts(sumOf(null, 0, ''))).toEqual([0, 1, 0])
  expect(counts(sumOf(null, 1, 'out of memory'))).toEqual([0, 1, 0])
})

/**
 * What a vitest JSON report comes to. A file that could not be loaded, and a runner that failed without naming a test, each count as
 * one failure: nothing that went wrong may sum to a pass.
 *
 * @typedef {{ status: string, fullName: string, failureMessages?: string[] }} TestReport
 * @typedef {{ name: string, status: string, message?: string, assertionResults: TestReport[] }} FileReport
 * @typedef {{ passed: number, failed: number, skipped: number, failures: string[] }} Sum
 */

/**
 * @param {{ testResults: FileReport[] } | null} report
 * @param {number} exitCode
 * @param {string} output
 * @returns {Sum}
 */
export function sumOf(report, exitCode, output) {
  /** @type {Sum} */
  const sum = { passed: 0, failed: 0, skipped: 0, failures: [] }
  for (const file of report?.testResults ?? []) {
    let failedHere = 0
    for (const test of file.assertionResults) {
      if (test.status === 'passed') sum.passed++
      else if (test.status === 'failed') {
        failedHere++
        sum.failures.push(failure(`${file.name} › ${test.fullName}`, test.failureMessages?.join('\n') ?? ''))
      } else sum.skipped++
    }
    if (file.status === 'failed' && failedHere === 0) {
      failedHere = 1
      sum.failures.push(failure(`${file.name} could not be run`, file.message ?? ''))
    }
    sum.failed += failedHere
  }
  if (sum.failed === 0 && (exitCode !== 0 || report === null)) {
    sum.failed = 1
    sum.failures.push(failure('The test runner ended with an error', output))
  }
  return sum
}

/**
 * @param {string} title
 * @param {string} details
 */
const failure = (title, details) => `FAILED ${title}\n${details.trim().split('\n').slice(0, 25).join('\n')}\n`

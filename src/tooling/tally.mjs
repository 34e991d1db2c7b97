// Reads the counts out of the runners' own JSON reports.

/** @typedef {{ passed: number, failed: number }} Tally */

/**
 * @param {{ numPassedTests: number, numFailedTests: number,
 *           testResults: { status: string, assertionResults: unknown[] }[] }} report of vitest's JSON reporter
 * @returns {Tally} a file that could not be loaded has no tests to count and stands as one failure
 */
export function tallyUnit(report) {
  const unloaded = report.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0
  );
  return { passed: report.numPassedTests, failed: report.numFailedTests + unloaded.length };
}

/**
 * @param {{ stats: { expected: number, unexpected: number, flaky: number }, errors?: unknown[] }} report of Playwright's JSON reporter
 * @returns {Tally} `errors` are those outside any test, such as a spec that does not load
 */
export function tallyEndToEnd({ stats, errors = [] }) {
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky + errors.length };
}

/**
 * The count of one step. A step that says it failed is never counted as clean, whatever its report says.
 * @param {boolean} succeeded
 * @param {Tally} counted
 * @returns {Tally}
 */
export function tallyStep(succeeded, counted) {
  return { passed: counted.passed, failed: succeeded ? counted.failed : Math.max(1, counted.failed) };
}

/** @param {Tally[]} tallies @returns {Tally} */
export function addTallies(tallies) {
  return tallies.reduce(
    (sum, tally) => ({ passed: sum.passed + tally.passed, failed: sum.failed + tally.failed }),
    { passed: 0, failed: 0 }
  );
}

// Reads the counts, and the names of what failed, out of the runners' own JSON reports.

/** @typedef {{ passed: number, failed: number, names: string[] }} Tally `names` of what failed */

/**
 * @param {{ numPassedTests: number, numFailedTests: number,
 *           testResults: { name: string, status: string,
 *                          assertionResults: { fullName: string, status: string }[] }[] }} report of vitest's JSON reporter
 * @returns {Tally} a file that could not be loaded has no tests to count and stands as one failure
 */
export function tallyUnit(report) {
  const failures = report.testResults.filter(({ status }) => status === 'failed');
  const unloaded = failures.filter(({ assertionResults }) => assertionResults.length === 0);
  const names = failures.flatMap(({ name, assertionResults }) =>
    assertionResults
      .filter(({ status }) => status === 'failed')
      .map(({ fullName }) => `${name} › ${fullName}`)
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded.length,
    names: [...unloaded.map(({ name }) => `${name} could not be loaded`), ...names]
  };
}

/**
 * @typedef {{ title: string, file: string, ok: boolean }} Spec
 * @typedef {{ title: string, specs?: Spec[], suites?: Suite[] }} Suite
 */

/** @param {Suite[]} suites @returns {string[]} */
function failedSpecs(suites) {
  return suites.flatMap(({ specs = [], suites: inner = [] }) => [
    ...specs.filter(({ ok }) => !ok).map(({ file, title }) => `${file} › ${title}`),
    ...failedSpecs(inner)
  ]);
}

/**
 * @param {{ stats: { expected: number, unexpected: number, flaky: number }, suites?: Suite[],
 *           errors?: { message?: string }[] }} report of Playwright's JSON reporter
 * @returns {Tally} `errors` are those outside any test, such as a spec that does not load
 */
export function tallyEndToEnd({ stats, suites = [], errors = [] }) {
  return {
    passed: stats.expected,
    failed: stats.unexpected + stats.flaky + errors.length,
    names: [...failedSpecs(suites), ...errors.map(({ message }) => message ?? 'an error outside any test')]
  };
}

/**
 * The count of one step. A step that says it failed is never counted as clean, whatever its report says.
 * @param {string} name
 * @param {boolean} succeeded
 * @param {Tally} counted
 * @returns {Tally}
 */
export function tallyStep(name, succeeded, counted) {
  if (succeeded || counted.failed > 0) return counted;
  return { ...counted, failed: 1, names: [name] };
}

/** @type {Tally} */
export const NOTHING = { passed: 0, failed: 0, names: [] };

/** @param {Tally[]} tallies @returns {Tally} */
export function addTallies(tallies) {
  return tallies.reduce(
    (sum, tally) => ({
      passed: sum.passed + tally.passed,
      failed: sum.failed + tally.failed,
      names: [...sum.names, ...tally.names]
    }),
    NOTHING
  );
}

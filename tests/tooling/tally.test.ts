import { describe, expect, test } from 'vitest';
import { addTallies, tallyEndToEnd, tallyStep, tallyUnit } from '../../src/tooling/tally.mjs';

describe('counting the runners', () => {
  test('a unit test file that could not be loaded is one failure', () => {
    const report = {
      numPassedTests: 5,
      numFailedTests: 2,
      testResults: [
        { status: 'passed', assertionResults: [{}, {}, {}] },
        { status: 'failed', assertionResults: [{}, {}, {}, {}] },
        { status: 'failed', assertionResults: [] }
      ]
    };
    expect(tallyUnit(report)).toEqual({ passed: 5, failed: 3 });
  });

  test('a flaky end-to-end test and an error outside any test are failures', () => {
    const report = { stats: { expected: 7, unexpected: 1, flaky: 1 }, errors: [{}] };
    expect(tallyEndToEnd(report)).toEqual({ passed: 7, failed: 3 });
  });

  test('a step that says it failed is never counted as clean', () => {
    expect(tallyStep(false, { passed: 3, failed: 0 })).toEqual({ passed: 3, failed: 1 });
    expect(tallyStep(false, { passed: 3, failed: 2 })).toEqual({ passed: 3, failed: 2 });
    expect(tallyStep(true, { passed: 3, failed: 0 })).toEqual({ passed: 3, failed: 0 });
  });

  test('the sum is over all steps', () => {
    const tallies = [
      { passed: 3, failed: 0 },
      { passed: 0, failed: 1 },
      { passed: 4, failed: 2 }
    ];
    expect(addTallies(tallies)).toEqual({ passed: 7, failed: 3 });
    expect(addTallies([])).toEqual({ passed: 0, failed: 0 });
  });
});

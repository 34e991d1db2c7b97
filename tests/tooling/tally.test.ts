import { describe, expect, test } from 'vitest';
import { addTallies, tallyEndToEnd, tallyStep, tallyUnit } from '../../src/tooling/tally.mjs';

describe('counting the runners', () => {
  test('a unit test file that could not be loaded is one failure', () => {
    const passed = { fullName: 'sound', status: 'passed' };
    const failed = { fullName: 'what is wrong', status: 'failed' };
    const report = {
      numPassedTests: 5,
      numFailedTests: 2,
      testResults: [
        { name: 'a.test.ts', status: 'passed', assertionResults: [passed, passed, passed] },
        { name: 'b.test.ts', status: 'failed', assertionResults: [passed, failed, passed, failed] },
        { name: 'c.test.ts', status: 'failed', assertionResults: [] }
      ]
    };
    expect(tallyUnit(report)).toEqual({
      passed: 5,
      failed: 3,
      names: ['c.test.ts could not be loaded', 'b.test.ts › what is wrong', 'b.test.ts › what is wrong']
    });
  });

  test('a flaky end-to-end test and an error outside any test are failures', () => {
    const report = {
      stats: { expected: 7, unexpected: 1, flaky: 1 },
      suites: [
        {
          title: 'a.spec.ts',
          specs: [{ title: 'sound', file: 'a.spec.ts', ok: true }],
          suites: [{ title: 'inner', specs: [{ title: 'wrong', file: 'a.spec.ts', ok: false }] }]
        }
      ],
      errors: [{ message: 'b.spec.ts does not load' }]
    };
    expect(tallyEndToEnd(report)).toEqual({
      passed: 7,
      failed: 3,
      names: ['a.spec.ts › wrong', 'b.spec.ts does not load']
    });
  });

  test('a step that says it failed is never counted as clean', () => {
    const clean = { passed: 3, failed: 0, names: [] };
    expect(tallyStep('lint', false, clean)).toEqual({ passed: 3, failed: 1, names: ['lint'] });
    const unclean = { passed: 3, failed: 2, names: ['one', 'two'] };
    expect(tallyStep('unit tests', false, unclean)).toEqual(unclean);
    expect(tallyStep('lint', true, clean)).toEqual(clean);
  });

  test('the sum is over all steps', () => {
    const tallies = [
      { passed: 3, failed: 0, names: [] },
      { passed: 0, failed: 1, names: ['lint'] },
      { passed: 4, failed: 2, names: ['one', 'two'] }
    ];
    expect(addTallies(tallies)).toEqual({ passed: 7, failed: 3, names: ['lint', 'one', 'two'] });
    expect(addTallies([])).toEqual({ passed: 0, failed: 0, names: [] });
  });
});

import { describe, expect, it } from 'vitest';
import type { Diagnosis } from '#analysis/fault-finding/results';
import { standingOf } from '#ui/field-check/causes/standing';

type Verdict = Diagnosis['figures'][number]['verdict'];

const of = (fits: boolean, ...verdicts: readonly Verdict[]) =>
  standingOf({ fits, figures: verdicts.map((verdict) => ({ verdict })) as unknown as Diagnosis['figures'] });

describe('what stands over the causes', () => {
  it('is that all fits only where no limit is broken', () => {
    expect(of(true, 'fits', 'no expectation')).toBe('fits');
    expect(of(true, 'fits', 'beyond a limit')).toBe('limit');
  });

  it('is a doubt before all else, and nothing where a fault is claimed', () => {
    expect(of(true, 'in doubt', 'beyond a limit')).toBe('doubt');
    expect(of(false, 'in doubt')).toBe('doubt');
    expect(of(false, 'low', 'beyond a limit')).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { listedOf } from '#analysis/listed';
import type { Beat } from '#analysis/results';
import { bigSite } from '../support/big-site';

const assessment = createAssessor().assess(bigSite(8), 'all');
const model = assessment.beats[0]!;

const pairs = (count: number, verdict: Beat['verdict']): Beat[] =>
  Array.from({ length: count }, (_, k) => ({
    ...model,
    a: `${verdict} ${k}`,
    ratio: (k % 97) / 1000,
    verdict
  }));

describe('what a page is told of pairs', () => {
  it('is all of them where there are not many', () => {
    const listed = listedOf(assessment);
    expect(listed.beats).toEqual(assessment.beats);
    expect(listed.weakerBeats).toBe(0);
  });

  it('is every pair that is not clear and the strongest of the others, in their order, and how many are left', () => {
    const clear = pairs(4_000, 'clear');
    const beats = [...clear.slice(0, 2_000), ...pairs(30, 'watch'), ...clear.slice(2_000)];
    const listed = listedOf({ ...assessment, beats });
    expect(listed.beats.length + listed.weakerBeats).toBe(4_030);
    expect(listed.beats.filter(({ verdict }) => verdict === 'watch')).toHaveLength(30);
    expect(listed.beats).toHaveLength(1_000);
    const kept = new Set(listed.beats);
    const weakest = Math.min(...clear.filter((beat) => kept.has(beat)).map(({ ratio }) => ratio));
    const strongest = Math.max(...clear.filter((beat) => !kept.has(beat)).map(({ ratio }) => ratio));
    expect(weakest).toBeGreaterThanOrEqual(strongest);
    expect(listed.beats).toEqual(beats.filter((beat) => kept.has(beat)));
  });

  it('keeps more than that where more are not clear', () => {
    const beats = [...pairs(1_500, 'false calls likely'), ...pairs(10, 'clear')];
    expect(listedOf({ ...assessment, beats })).toMatchObject({ weakerBeats: 10 });
  });
});

import { expect, test } from 'vitest';
import { driftOf } from '#analysis/fault-finding/drift';
import { driftText } from '#ui/field-check/readings/history';
import type { Reading } from '#plan/schema';
import { circuit, loop, siteOf, square } from '../../analysis/support/sites';

const common = { circuit: 'C1', testPoint: 'unit', vehicle: 'car' } as const;
const site = (then: number, now: number) =>
  siteOf({
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'], { channel: null })],
    readings: [
      { ...common, at: '2024-05-04', isCommissioning: true, deltaLOverL: then },
      { ...common, at: '2025-05-04', deltaLOverL: now }
    ] satisfies Reading[]
  });

const told = (then: number, now: number): string => {
  const read = site(then, now);
  return driftText(driftOf(read, 1, 'deltaLOverL')!, 'deltaLOverL', read, (change) =>
    (-100 * change).toFixed(0)
  );
};

test('a drop that has grown smaller has lost a share of itself, and one that has grown has gained', () => {
  // 3 % then, 2 % now: a third less; the other way round a half more
  expect(told(-0.03, -0.02)).toBe('-1 (−33 %)');
  expect(told(-0.02, -0.03)).toBe('1 (+50 %)');
});

import { expect, test } from 'vitest';
import { demoSite } from '#plan/demo';
import type { Reading, Site } from '#plan/schema';
import { groupsOf, lastMeasured } from '#ui/field-check/expected/rows';
import { commissioned, onAxis, seriesOf, timeSpan, valueSpan } from '#ui/field-check/readings/series';

const demo = demoSite();
const circuit = demo.circuits[0]!;
const at = (when: string, rest: Reading): Reading => ({
  circuit: circuit.id,
  testPoint: 'cabinet',
  at: when,
  ...rest
});
const site: Site = {
  ...demo,
  readings: [
    at('2025-01-01T10:00:00+01:00', { inductance_H: 99e-6, overRange: ['insulation_ohm'] }),
    at('2020-01-01T10:00:00+01:00', { inductance_H: 101e-6, insulation_ohm: 5e8, isCommissioning: true }),
    at('2023-01-01T10:00:00+01:00', { testPoint: 'pull-box', inductance_H: 80e-6 }),
    { circuit: circuit.id, testPoint: 'cabinet', inductance_H: 100e-6 },
    { circuit: demo.circuits[1]!.id, testPoint: 'cabinet', inductance_H: 50e-6 }
  ]
};

test('one series a quantity and place, the oldest first, those without a date before all', () => {
  const all = seriesOf(site, circuit.id);
  expect(
    all.map(({ testPoint, quantity, points }) => [testPoint, quantity, points.map(({ place }) => place)])
  ).toEqual([
    ['pull-box', 'inductance_H', [2]],
    ['cabinet', 'inductance_H', [3, 1, 0]],
    ['cabinet', 'insulation_ohm', [1, 0]]
  ]);
  const [, inductance, insulation] = all;
  expect(commissioned(inductance!)).toBe(101e-6);
  expect(insulation!.points.map(({ value }) => value)).toEqual([5e8, null]);
});

test('the axes hold everything that is read, expected and commissioned', () => {
  const inductance = seriesOf(site, circuit.id)[1]!;
  const expected = { low: 90e-6, high: 97e-6, value: 93e-6, limits: [] };
  const [least, most] = valueSpan(inductance, expected as never, 101e-6);
  expect(least).toBeLessThan(90e-6);
  expect(most).toBeGreaterThan(101e-6);
  expect(timeSpan(inductance)![0]).toBe(Date.UTC(2020, 0, 1, 10));
  const insulation = seriesOf(site, circuit.id)[2]!;
  expect(valueSpan(insulation, null, null)[0]).toBeGreaterThan(0);
  expect(timeSpan({ ...inductance, points: [] })).toBeNull();
  const alone = { ...inductance, points: [inductance.points[1]!] };
  const [from, to] = timeSpan(alone)!;
  expect(to).toBeGreaterThan(from);
});

test('an insulation of nought stands at the foot of an axis that has no nought', () => {
  const insulation = seriesOf(site, circuit.id)[2]!;
  const gone = { ...insulation, points: [...insulation.points, { ...insulation.points[0]!, value: 0 }] };
  const ends = valueSpan(gone, null, null);
  expect(onAxis(0, ends)).toBe(ends[0]);
  expect(ends[0]).toBeGreaterThan(0);
  expect(onAxis(5e8, ends)).toBe(5e8);
  expect(onAxis(1e15, ends)).toBe(ends[1]);
});

test('beside what is expected stands what was measured last, there and of that', () => {
  const figure = (testPoint: 'cabinet' | 'pull-box', quantity: 'inductance_H' | 'q') =>
    ({
      ...{ testPoint, quantity, loop: null, value: 1, low: 0, high: 2, contributions: [] },
      ...{ frequency_Hz: null, vehicle: null, limits: [] }
    }) as const;
  const groups = groupsOf(
    circuit,
    [figure('cabinet', 'q'), figure('cabinet', 'inductance_H'), figure('pull-box', 'inductance_H')],
    lastMeasured(site, circuit)
  );
  expect(
    groups.map(({ testPoint, rows }) => [testPoint, rows.map(({ last }) => last?.reading ?? null)])
  ).toEqual([
    ['pull-box', [2]],
    ['cabinet', [0, null]]
  ]);
});
